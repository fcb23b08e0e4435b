package words

import (
	"fmt"
	"strings"

	"reelworth/internal/reels"
)

// SpeedCodeNote says what a code is not, and what simple cameras make of it.
func SpeedCodeNote(c reels.SpeedCode) string {
	if c.Speed == 0 {
		return fmt.Sprintf("The code begins at %d: there is none for %d. Set the speed by hand.", reels.LeastSpeed, c.Asked)
	}
	var said []string
	switch {
	case c.Exact():
	case c.Speed == reels.MostSpeed:
		said = append(said, fmt.Sprintf("The code ends at %d, %s below %d.", c.Speed, stops(c.ThirdsOff), c.Asked))
	default:
		said = append(said, fmt.Sprintf("The code has no %d; it says %d, the nearest below, %s off.", c.Asked, c.Speed, stops(c.ThirdsOff)))
	}
	if c.Exposures == 0 {
		said = append(said, `The length is coded as "other".`)
	} else {
		said = append(said, fmt.Sprintf("The length is coded as %d exposures.", c.Exposures))
	}
	if c.Simple == c.Speed {
		said = append(said, fmt.Sprintf("Cameras that read only the first two speed areas set %d too.", c.Simple))
	} else {
		said = append(said, fmt.Sprintf("Cameras that read only the first two speed areas set %d.", c.Simple))
	}
	return strings.Join(said, " ")
}

// stops is a number of thirds of a stop in words.
func stops(thirds int) string {
	whole, part := thirds/3, [...]string{"", "⅓", "⅔"}[thirds%3]
	switch {
	case thirds == 0:
		return "less than ⅓ stop"
	case thirds < 3:
		return "about " + part + " stop"
	case thirds == 3:
		return "about 1 stop"
	}
	return fmt.Sprintf("about %d%s stops", whole, part)
}

// ToleranceName is a tolerance for reading: "+2 −1 stops".
func ToleranceName(t reels.Tolerance) string {
	return map[reels.Tolerance]string{
		reels.ToleranceHalf: "±½ stop", reels.ToleranceOne: "±1 stop",
		reels.ToleranceTwo: "+2 −1 stops", reels.ToleranceThree: "+3 −1 stops",
	}[t]
}

// SpeedCodeCautions are what to know before a code is put on a cassette (common practice,
// no source, but for the code itself).
func SpeedCodeCautions() []string {
	return []string{
		"Cut the pattern from one sheet of foil, or use the bare metal of the shell, and cover the zeros: patches by themselves are joined to nothing and conduct nowhere.",
		"A bare metal cassette reads as 5000, 72 exposures. A reused cassette still carries its old code.",
		"A camera without a code to read assumes a speed of its own. Few read length or tolerance.",
		"Keep foil off the film's mouth, and flat: a loose edge can short a camera's contacts.",
		"Size and place of the areas differ between cassettes: measure yours.",
	}
}

// SpeedCodeSource says where the pattern is from.
const SpeedCodeSource = "The pattern is that of ISO 1007:2000, read in a general-purpose library (Photography::DX 0.02) and in encyclopedias, not in the standard itself."
