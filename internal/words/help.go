package words

// KeysHelp lists the keys.
const KeysHelp = "Tab goes to the next field, Shift+Tab back.\n\n" +
	"In a number: up and down change it.\n\n" +
	"In the left column: up and down go to the next way to buy.\n\n" +
	"In a choice: up and down choose, Space opens the list.\n\n" +
	"F6: the next column. Ctrl+1, 2, 3, 4: charts, receipt, tables, notes.\n\n" +
	"Ctrl+O open, Ctrl+S save, Ctrl+Shift+S save as, Ctrl+E export a chart.\n\n" +
	"Ctrl+Z undo, Ctrl+Y redo. Ctrl+B compares the others with the chosen one."

// About says what the program is.
const About = "Is a long reel that you cut and load yourself worth it, against ready-made boxed rolls?\n\n" +
	"Everything is computed from what you type; prices, rates, taxes and yields are yours. " +
	"Amounts are exact and rounded as they would be billed."
