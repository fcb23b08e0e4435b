package kit

// Sizes and edges of the widgets, in the toolkit's units. setTextSize changes them all
// together, so that a larger text finds its room; the window is then laid out anew.
var (
	TextFactor float32 = 1

	// Sizes of type.
	SizeText, SizeSmall, SizeTitle, SizeAnswer, SizeTotal float32

	// Fields and their rows: labels, fields and units stand on the same edges.
	FieldHeight, RowHeight                                         float32
	FormWidth, LabelWidth, NumberWidth, WideWidth, unitChoiceWidth float32
	fieldPadding                                                   float32 // left and right of the text in a field

	// Cards.
	CardEdge, cardPad float32

	tabsHeight float32
)

func init() { SetTextSize(1) }

// SetTextSize makes everything larger or smaller; 1 is as drawn.
func SetTextSize(factor float32) {
	TextFactor = factor
	for _, m := range []struct {
		at   *float32
		size float32
	}{
		{&SizeText, 13}, {&SizeSmall, 11}, {&SizeTitle, 17}, {&SizeAnswer, 22}, {&SizeTotal, 15},
		{&FieldHeight, 28}, {&RowHeight, 35},
		{&FormWidth, 348}, {&LabelWidth, 106}, {&NumberWidth, 84}, {&WideWidth, 176}, {&unitChoiceWidth, 60},
		{&fieldPadding, 5},
		{&CardEdge, 8}, {&cardPad, 7},
		{&tabsHeight, 36},
	} {
		*m.at = m.size * factor
	}
}

// Scaled is a length as drawn in the size that the text has now.
func Scaled(length float32) float32 { return length * TextFactor }
