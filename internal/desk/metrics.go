package desk

// Sizes and edges of the window, in the toolkit's units. setTextSize changes them all
// together, so that a larger text finds its room; the window is then laid out anew.
var (
	textFactor float32 = 1

	// Sizes of type.
	sizeText, sizeSmall, sizeTitle, sizeAnswer, sizeTotal float32

	// Fields and their rows: labels, fields and units stand on the same edges.
	fieldHeight, rowHeight                                         float32
	formWidth, labelWidth, numberWidth, wideWidth, unitChoiceWidth float32
	barePadding                                                    float32 // left and right of the text in a field

	// The columns.
	waysWidth, formColumn, answerEdge, helpHeight float32

	// Cards of the left column.
	cardEdge, cardPad float32

	// The receipt: its rows, and where its columns end or begin.
	ledgerRowHeight, ledgerSeller, ledgerHome, ledgerHow float32
	ledgerNarrow                                         float32 // below, explanations stand under the labels

	tabsHeight float32
)

func init() { setTextSize(1) }

// setTextSize makes everything larger or smaller; 1 is as drawn.
func setTextSize(factor float32) {
	textFactor = factor
	for _, m := range []struct {
		at   *float32
		size float32
	}{
		{&sizeText, 13}, {&sizeSmall, 11}, {&sizeTitle, 17}, {&sizeAnswer, 22}, {&sizeTotal, 15},
		{&fieldHeight, 28}, {&rowHeight, 35},
		{&formWidth, 348}, {&labelWidth, 106}, {&numberWidth, 84}, {&wideWidth, 176}, {&unitChoiceWidth, 60},
		{&barePadding, 5},
		{&waysWidth, 232}, {&formColumn, 388}, {&answerEdge, 20}, {&helpHeight, 60},
		{&cardEdge, 8}, {&cardPad, 7},
		{&ledgerRowHeight, 31}, {&ledgerSeller, 276}, {&ledgerHome, 366}, {&ledgerHow, 386}, {&ledgerNarrow, 540},
		{&tabsHeight, 36},
	} {
		*m.at = m.size * factor
	}
}
