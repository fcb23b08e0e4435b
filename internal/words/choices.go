package words

import "reelworth/internal/scenario"

// Choice is something to choose in a form: what the file holds, and a person's words.
type Choice struct{ Value, Label string }

// The answers to a yes-or-no question.
const (
	Yes = "yes"
	No  = "no"
)

// NotCounted is the choice of no developing.
const NotCounted = "not counted"

// Kinds are the kinds of offers.
func Kinds() []Choice {
	return []Choice{{string(scenario.KindReel), "a reel"}, {string(scenario.KindBoxed), "boxed rolls"}}
}

// WaysToDevelop are the ways of developing.
func WaysToDevelop() []Choice {
	return []Choice{{string(scenario.Lab), "at a lab"}, {string(scenario.Home), "at home"}}
}

// LengthUnits are what a reel's length may be told in.
func LengthUnits() []Choice {
	return []Choice{{string(scenario.Feet), "ft"}, {string(scenario.Metres), "m"}}
}

// Pitches are the perforations. The lengths are those of SMPTE ST 139 and ST 93.
func Pitches() []Choice {
	return []Choice{{string(scenario.LongPitch), "long, 4.750 mm"}, {string(scenario.ShortPitch), "short, 4.740 mm"}}
}

// Imports are the choices of the import field, in the order to offer them.
func Imports() []Choice {
	return []Choice{
		{string(scenario.ImportNone), "nothing to pay"},
		{string(scenario.ImportBorder), "paid at the border"},
		{string(scenario.ImportPrepaid), "collected by the seller"},
		{string(scenario.ImportUndecided), "not decided"},
	}
}
