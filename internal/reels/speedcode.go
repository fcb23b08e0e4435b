package reels

import (
	"strings"

	"reelworth/internal/exact"
)

// The speed code is the conductive pattern of ISO 1007:2000 (before: ANSI PH1.14, NAPM
// IT1.14) by which cameras sense the film: two rows of six areas, counted from the
// spool's post; 1 is metal, 0 covered. The tables below were read in a general-purpose
// Perl library, Photography::DX 0.02, and in copies of encyclopedias, not in the standard.

// Areas is how many areas a row of the code has.
const Areas = 6

// speedPattern is areas 2 to 6 of row 1, by exposure index, in rising order.
var speedPattern = []struct {
	speed int
	areas string
}{
	{25, "00010"}, {32, "00001"}, {40, "00011"}, {50, "10010"}, {64, "10001"}, {80, "10011"},
	{100, "01010"}, {125, "01001"}, {160, "01011"}, {200, "11010"}, {250, "11001"}, {320, "11011"},
	{400, "00110"}, {500, "00101"}, {640, "00111"}, {800, "10110"}, {1000, "10101"}, {1250, "10111"},
	{1600, "01110"}, {2000, "01101"}, {2500, "01111"}, {3200, "11110"}, {4000, "11101"}, {5000, "11111"},
}

// lengthPattern is areas 8 to 10 of row 2, by exposures, in rising order; 0 is any other.
var lengthPattern = []struct {
	exposures int
	areas     string
}{{0, "000"}, {12, "100"}, {20, "010"}, {24, "110"}, {36, "001"}, {48, "101"}, {60, "011"}, {72, "111"}}

// Tolerance is how far off a film may be exposed.
type Tolerance string

// The tolerances that the code knows, in stops.
const (
	ToleranceHalf  Tolerance = "0.5" // ±½
	ToleranceOne   Tolerance = "1"   // ±1
	ToleranceTwo   Tolerance = "2"   // +2 −1
	ToleranceThree Tolerance = "3"   // +3 −1
)

// Tolerances are those that the code knows.
func Tolerances() []Tolerance {
	return []Tolerance{ToleranceHalf, ToleranceOne, ToleranceTwo, ToleranceThree}
}

// tolerancePattern is areas 11 and 12 of row 2.
var tolerancePattern = map[Tolerance]string{ToleranceHalf: "00", ToleranceOne: "10", ToleranceTwo: "01", ToleranceThree: "11"}

// simpleSpeeds is what a camera takes the film for that reads areas 2 and 3 only (common
// practice, no source): of the speeds that share a pattern, the one most sold.
var simpleSpeeds = map[string]int{"01": 100, "11": 200, "00": 400, "10": 800}

// SpeedCode is a code to put on a cassette, and what is to be known about it.
type SpeedCode struct {
	Asked int // the exposure index wanted
	Speed int // that the code says; 0 where there is none, and then no rows either
	// Row1 and Row2 are the areas from the post on, "1" for metal.
	Row1, Row2 string
	Exposures  int // that the code says; 0 for other
	Tolerance  Tolerance
	Simple     int // what a camera sets that reads the first two speed areas only
	// ThirdsOff is how far Asked is above Speed, in thirds of a stop, rounded.
	ThirdsOff int
}

// The most and the least that the code can say.
var (
	LeastSpeed = speedPattern[0].speed
	MostSpeed  = speedPattern[len(speedPattern)-1].speed
)

// Code is the code for an exposure index and a length in exposures. A speed between two
// takes the nearest listed below, above the last that; below the first there is none. The
// length is the longest that is not above what is loaded. It panics on a tolerance that
// the code does not know.
func Code(speed, exposures int, t Tolerance) SpeedCode {
	c := SpeedCode{Asked: speed, Tolerance: t}
	row1, row2 := "", ""
	for _, p := range speedPattern {
		if p.speed <= speed {
			c.Speed, row1 = p.speed, p.areas
		}
	}
	if c.Speed == 0 {
		return c
	}
	for _, p := range lengthPattern {
		if p.exposures <= exposures {
			c.Exposures, row2 = p.exposures, p.areas
		}
	}
	last, ok := tolerancePattern[t]
	if !ok {
		panic("reels: the speed code has no tolerance " + t)
	}
	c.Row1, c.Row2 = "1"+row1, "1"+row2+last
	c.Simple = simpleSpeeds[row1[:2]]
	c.ThirdsOff = thirds(speed, c.Speed)
	return c
}

// Exact says whether the code says the speed that was asked for.
func (c SpeedCode) Exact() bool { return c.Speed == c.Asked }

// thirds is how many thirds of a stop a is above b, rounded to the nearest: a/b is
// nearest to 2^(n/3) where (a/b)⁶ is below 2^(2n+1).
func thirds(a, b int) (n int) {
	ratio := exact.Ratio(int64(a), int64(b))
	cube := ratio.Mul(ratio).Mul(ratio)
	power, limit := cube.Mul(cube), exact.Int(2)
	for !power.Less(limit) {
		n++
		limit = limit.Mul(exact.Int(4))
	}
	return n
}

// Decode reads a code back; ok is false where the rows are no code. A bare metal cassette
// reads as the greatest of all.
func Decode(row1, row2 string) (speed, exposures int, t Tolerance, ok bool) {
	speed, exposures = -1, -1
	areas1, metal1 := strings.CutPrefix(row1, "1")
	areas2, metal2 := strings.CutPrefix(row2, "1")
	if !metal1 || !metal2 || len(areas2) != Areas-1 {
		return 0, 0, "", false
	}
	for _, p := range speedPattern {
		if p.areas == areas1 {
			speed = p.speed
		}
	}
	for _, p := range lengthPattern {
		if p.areas == areas2[:3] {
			exposures = p.exposures
		}
	}
	for of, p := range tolerancePattern {
		if p == areas2[3:] {
			t = of
		}
	}
	return speed, exposures, t, speed > 0 && exposures >= 0 && t != ""
}
