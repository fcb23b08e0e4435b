package film

import (
	"fmt"

	"reelworth/internal/exact"
)

// Lengths in millimetres.
var (
	// LongPitch is the perforation pitch KS-1870, 0.1870 in (SMPTE ST 139).
	LongPitch = exact.Ratio(4750, 1000)
	// ShortPitch is the perforation pitch BH-1866, 0.1866 in (SMPTE ST 93).
	ShortPitch = exact.Ratio(4740, 1000)
	// Foot is the international foot.
	Foot = exact.Ratio(3048, 10)
	// Metre is a thousand millimetres.
	Metre = exact.Int(1000)
)

// PerforationsPerFrame is the advance of a 35 mm still frame (SMPTE ST 139 and ST
// 93 give 8 perforations to a still frame).
const PerforationsPerFrame = 8

// Reel is a long film and the way it is cut. Lengths in millimetres.
type Reel struct {
	Length             exact.Fraction
	Pitch              exact.Fraction
	Exposures          int            // per full cassette
	Leader             exact.Fraction // per cassette
	Trailer            exact.Fraction // per cassette
	Fogged             exact.Fraction // per cassette: lit while the cassette was loaded
	StartWaste         exact.Fraction // per reel
	EndWaste           exact.Fraction // per reel
	TestExposures      int            // per reel
	ShortestRollWanted int            // exposures; a shorter last roll is not loaded
}

// Frame is the length of one exposure.
func (r Reel) Frame() exact.Fraction { return r.Pitch.Mul(exact.Int(PerforationsPerFrame)) }

// Ends is what a cassette needs besides its exposures.
func (r Reel) Ends() exact.Fraction { return exact.Sum(r.Leader, r.Trailer, r.Fogged) }

// Cut is how a reel divides.
type Cut struct {
	Reel               Reel
	Usable             exact.Fraction // mm: the length less wastes and test exposures
	RollLength         exact.Fraction // mm of one full cassette
	FullRolls          int64
	ShortRollExposures int64          // 0 when there is no short roll
	LeftOver           exact.Fraction // mm beyond the last cassette
}

// Exposures is how many exposures the reel gives.
func (c Cut) Exposures() int64 {
	return c.FullRolls*int64(c.Reel.Exposures) + c.ShortRollExposures
}

// Cassettes is how many cassettes the reel fills, the short one included.
func (c Cut) Cassettes() int64 {
	if c.ShortRollExposures > 0 {
		return c.FullRolls + 1
	}
	return c.FullRolls
}

// TooShort is the error of a reel that fills no cassette.
type TooShort struct {
	Missing exact.Fraction // mm to the shortest roll allowed
}

func (e *TooShort) Error() string {
	return fmt.Sprintf("the reel gives no roll: %s mm are missing to the shortest roll allowed", e.Missing.Text(2))
}

// Divide cuts r into cassettes. It returns *TooShort when not one can be filled.
func Divide(r Reel) (Cut, error) {
	frame := r.Frame()
	test := exact.Int(int64(r.TestExposures)).Mul(frame)
	c := Cut{Reel: r}
	c.Usable = r.Length.Sub(r.StartWaste).Sub(r.EndWaste).Sub(test)
	c.RollLength = r.Ends().Add(exact.Int(int64(r.Exposures)).Mul(frame))
	c.LeftOver = c.Usable
	if c.Usable.Sign() > 0 {
		c.FullRolls, _ = c.Usable.Quo(c.RollLength).Floor().Int64()
		c.LeftOver = c.Usable.Sub(exact.Int(c.FullRolls).Mul(c.RollLength))
	}
	c.ShortRollExposures = r.shortRoll(c.LeftOver)
	if c.ShortRollExposures > 0 {
		c.LeftOver = c.LeftOver.Sub(r.Ends()).Sub(exact.Int(c.ShortRollExposures).Mul(frame))
	}
	if c.Cassettes() == 0 {
		return c, &TooShort{Missing: r.shortest().Sub(c.Usable)}
	}
	return c, nil
}

// shortRoll is how many exposures a last cassette gets out of left mm, 0 when they
// are too few to be worth one.
func (r Reel) shortRoll(left exact.Fraction) int64 {
	n, _ := left.Sub(r.Ends()).Quo(r.Frame()).Floor().Int64()
	n = min(max(n, 0), int64(r.Exposures)-1)
	if n < int64(r.ShortestRollWanted) {
		return 0
	}
	return n
}

// shortest is the length of the shortest roll that would be loaded.
func (r Reel) shortest() exact.Fraction {
	n := min(max(r.ShortestRollWanted, 1), r.Exposures)
	return r.Ends().Add(exact.Int(int64(n)).Mul(r.Frame()))
}
