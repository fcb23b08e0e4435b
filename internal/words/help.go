package words

// KeysHelp lists the keys.
const KeysHelp = "Tab goes to the next field, Shift+Tab back. Ctrl+J goes to the next column, Ctrl+Shift+J back.\n\n" +
	"In a number: up and down change it. In the left column: up and down go to the next way to buy.\n\n" +
	"In a choice: up and down choose, letters find, Space opens the list. Esc leaves a question, and the tour.\n\n" +
	"Ctrl+1 to Ctrl+7: the pages of the answer.\n\n" +
	"Ctrl+O open, Ctrl+S save, Ctrl+Shift+S save as. Ctrl+E exports what the page shows, Ctrl+Shift+E a report; Ctrl+Shift+C copies the summary.\n\n" +
	"Ctrl+Z undo, Ctrl+Y redo.\n\n" +
	"Ctrl+R adds a reel, Ctrl+Shift+R boxed film. Ctrl+D duplicates the chosen one, F2 or Ctrl+Shift+T renames it, Ctrl+Shift+Up and Down move it, " +
	"Ctrl+B compares the others with it. Ctrl+I asks whether something offered is a deal.\n\n" +
	"Ctrl+L writes down what was loaded of the reel in hand that is chosen, Ctrl+Shift+L what was developed. At the loader Space logs a cassette, Backspace takes it back, Esc leaves.\n\n" +
	"Ctrl+N a new scenario, Ctrl+T its name, Ctrl+Page Down and Page Up the next and previous one. " +
	"Ctrl+Shift+B sets all of them side by side; there Enter opens the chosen one and Esc leaves.\n\n" +
	"Ctrl+M shows all figures in another currency.\n\n" +
	"F10 opens the menu, Alt with its first letter the one of that name, Esc closes it. Ctrl+K shows this list."

// RatesHelp is where rates come from, what the bank's is and is not, and what a card adds.
const RatesHelp = "A rate is what one unit of a currency is in another. The scenario counts with the rates that stand in it, and with no others.\n\n" +
	"Type one from where you saw it, or work it out from a card statement: what the shop asked and what the card took. That is the rate you really paid.\n\n" +
	"The European Central Bank publishes reference rates of the euro on working days. They can be opened from a file, or fetched when you ask; " +
	"nothing else is ever asked of the network. They say what money was worth that day between banks. They are for information only: " +
	"nobody need trade at them, and no shop or card does.\n\n" +
	"A card adds to them: a fee that the statement names, a worse rate, or both. Take the bank's rate together with a card fee, or the rate of a statement with none; " +
	"never both, or the fee counts twice."

// CautionsHelp is what the program cannot judge.
const CautionsHelp = ChemistryCaution + "\n\n" + RemjetCaution + "\n\n" + BorderCaution + "\n\n" + NoScreenIsSafe + "\n\n" + FoilCaution

// Program is what the program is called.
const Program = "Reelworth"

// About says what the program is.
const About = "Is a long reel that you cut and load yourself worth it, against ready-made boxed rolls?\n\n" +
	"Everything is computed from what you type; prices, rates, taxes and yields are yours. " +
	"Amounts are exact and rounded as they would be billed."
