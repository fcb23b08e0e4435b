package report

import (
	"strings"
	"unicode"
)

// Line is text on one line that does nothing to a terminal but stand in it: line ends
// become spaces, signs that steer a terminal or turn the direction of writing become
// the sign for an unreadable one.
func Line(text string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t' || r == '\u2028' || r == '\u2029':
			return ' '
		case steers(r):
			return unicode.ReplacementChar
		}
		return r
	}, text)
}

// steers says whether a sign steers a terminal (the control characters, DEL and C1
// among them) or turns the direction of writing.
func steers(r rune) bool { return unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r) }

// spaced is text with plain spaces for no-break ones, which not every terminal and no
// search takes for spaces.
func spaced(text string) string { return plainSpaces.Replace(text) }

var plainSpaces = strings.NewReplacer("\u00a0", " ", "\u202f", " ")
