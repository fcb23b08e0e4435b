package reels

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// The code of every speed, as read in a general-purpose Perl library (Photography::DX
// 0.02) and in copies of encyclopedias: areas 2 to 6.
const publishedSpeeds = `25 00010  32 00001  40 00011  50 10010  64 10001  80 10011
100 01010  125 01001  160 01011  200 11010  250 11001  320 11011
400 00110  500 00101  640 00111  800 10110  1000 10101  1250 10111
1600 01110  2000 01101  2500 01111  3200 11110  4000 11101  5000 11111`

const publishedLengths = `12 100, 20 010, 24 110, 36 001, 48 101, 60 011, 72 111`

func TestCodeIsThePublishedOne(t *testing.T) {
	words := strings.Fields(publishedSpeeds)
	if len(words) != 2*24 {
		t.Fatal(len(words))
	}
	for i := 0; i < len(words); i += 2 {
		speed := atoi(t, words[i])
		c := Code(speed, 36, ToleranceOne)
		if c.Row1 != "1"+words[i+1] || c.Row2 != "100110" || !c.Exact() || c.ThirdsOff != 0 {
			t.Errorf("%d: %+v", speed, c)
		}
	}
	for _, pair := range strings.Split(publishedLengths, ", ") {
		exposures, areas, _ := strings.Cut(pair, " ")
		if c := Code(100, atoi(t, exposures), ToleranceHalf); c.Row2 != "1"+areas+"00" {
			t.Errorf("%s exposures: %s", exposures, c.Row2)
		}
	}
	for tolerance, areas := range map[Tolerance]string{"0.5": "00", "1": "10", "2": "01", "3": "11"} {
		if c := Code(100, 5, tolerance); c.Row2 != "1000"+areas {
			t.Errorf("tolerance %s: %s", tolerance, c.Row2)
		}
	}
}

func atoi(t *testing.T, s string) (n int) {
	t.Helper()
	for _, r := range s {
		n = 10*n + int(r-'0')
	}
	return n
}

func TestCodeTakesTheNearestBelow(t *testing.T) {
	for _, c := range []struct{ asked, exposures, speed, says, thirds, simple int }{
		{450, 36, 400, 36, 1, 400},
		{399, 35, 320, 24, 1, 200},
		{26, 100, 25, 72, 0, 400},
		{50, 11, 50, 0, 0, 800}, // some cameras read 50 as 800
		{6400, 12, 5000, 12, 1, 200},
		{10000, 37, 5000, 36, 3, 200},
		{25000, 36, 5000, 36, 7, 200}, // log2(5) is 2.32 stops
		{1600, 36, 1600, 36, 0, 100},
	} {
		got := Code(c.asked, c.exposures, ToleranceOne)
		if got.Speed != c.speed || got.Exposures != c.says || got.ThirdsOff != c.thirds || got.Simple != c.simple {
			t.Errorf("%d, %d exposures: %+v", c.asked, c.exposures, got)
		}
	}
	if c := Code(24, 36, ToleranceOne); c.Speed != 0 || c.Row1 != "" || c.Row2 != "" {
		t.Errorf("below all: %+v", c)
	}
}

// What a code says is what is read back; every pattern is read as one thing only.
func TestCodesAreReadBack(t *testing.T) {
	seen := map[string]bool{}
	for _, p := range speedPattern {
		for _, l := range lengthPattern {
			for _, tolerance := range Tolerances() {
				c := Code(p.speed, l.exposures, tolerance)
				speed, exposures, back, ok := Decode(c.Row1, c.Row2)
				if !ok || speed != p.speed || exposures != l.exposures || back != tolerance || seen[c.Row1+c.Row2] {
					t.Errorf("%+v reads as %d, %d, %s, %v", c, speed, exposures, back, ok)
				}
				seen[c.Row1+c.Row2] = true
			}
		}
	}
	// A bare metal cassette reads 5000, 72 exposures.
	if speed, exposures, _, ok := Decode("111111", "111111"); !ok || speed != 5000 || exposures != 72 {
		t.Errorf("bare metal reads %d, %d, %v", speed, exposures, ok)
	}
}

func TestNonsenseIsNoCode(t *testing.T) {
	for _, rows := range [][2]string{{"", ""}, {"010010", "100110"}, {"100110", "000110"}, {"100000", "100110"}, {"1001101", "100110"}, {"100110", "10011"}} {
		if speed, exposures, _, ok := Decode(rows[0], rows[1]); ok {
			t.Errorf("%v reads %d, %d", rows, speed, exposures)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		Decode(rapid.StringOfN(rapid.RuneFrom([]rune("01x")), 0, 8, -1).Draw(t, "row 1"), rapid.StringOfN(rapid.RuneFrom([]rune("01")), 0, 8, -1).Draw(t, "row 2"))
	})
}
