package palette

import "image/color"

// Theme is one set of colours. All are opaque.
type Theme struct {
	Name string

	// Grounds: behind everything, behind what is typed, behind what is chosen.
	Ground, Field, Chosen color.NRGBA
	// Texts, and Rule for hairlines.
	Ink, Muted, Rule color.NRGBA
	// Accent is for what is chosen, Good for a saving, Fault for faults alone.
	Accent, Good, Fault color.NRGBA
	// The parts of a roll's cost.
	Film, Shipping, Tax, Fees, Loading, Equipment, Time, Developing color.NRGBA
	// Quiet is for the lines of offers that are not in question.
	Quiet color.NRGBA
}

// Paper is the light theme. Time and Quiet are as light as they can be: they just
// reach 3:1 on the chosen ground.
var Paper = Theme{
	Name:   "paper",
	Ground: rgb(0xF4F6F5), Field: rgb(0xFFFFFF), Chosen: rgb(0xE8EBE9),
	Ink: rgb(0x1C1A21), Muted: rgb(0x5F6068), Rule: rgb(0xD5D8D9),
	Accent: rgb(0x8A5A00), Good: rgb(0x1F6B4A), Fault: rgb(0xB3261E),
	Film: rgb(0x1E3A5C), Shipping: rgb(0x3D679A), Tax: rgb(0x5E86B4), Fees: rgb(0x7089A4),
	Loading: rgb(0x6E4A0C), Equipment: rgb(0x98701F), Time: rgb(0xA7812F), Developing: rgb(0x6C6A72),
	Quiet: rgb(0x84868D),
}

// Safelight is the dark theme.
var Safelight = Theme{
	Name:   "safelight",
	Ground: rgb(0x141011), Field: rgb(0x241D1E), Chosen: rgb(0x261E1F),
	Ink: rgb(0xEFE9E4), Muted: rgb(0xAFA6A3), Rule: rgb(0x3A3233),
	Accent: rgb(0xFFB547), Good: rgb(0x7FCB9E), Fault: rgb(0xFF7B70),
	Film: rgb(0xB7D2F2), Shipping: rgb(0x82AEE0), Tax: rgb(0x5B8CC4), Fees: rgb(0x5F7C9C),
	Loading: rgb(0xF0C271), Equipment: rgb(0xC2933C), Time: rgb(0x8F6D2E), Developing: rgb(0x9A979F),
	Quiet: rgb(0x8A8285),
}

// Themes are all of them.
var Themes = []Theme{Paper, Safelight}

// Find is the theme of that name.
func Find(name string) (Theme, bool) {
	for _, t := range Themes {
		if t.Name == name {
			return t, true
		}
	}
	return Theme{}, false
}

// darkest is the theme's ink or its ground, whichever is dark.
func (t Theme) darkest() color.NRGBA {
	if luminance(t.Ink) < luminance(t.Ground) {
		return t.Ink
	}
	return t.Ground
}

func rgb(hex uint32) color.NRGBA {
	return color.NRGBA{R: uint8(hex >> 16), G: uint8(hex >> 8), B: uint8(hex), A: 255}
}
