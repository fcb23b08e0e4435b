package film

import (
	"errors"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/exact"
)

func mm(n int64) exact.Fraction { return exact.Int(n) }

// usual is a reel with the ends and wastes of common practice (no source).
func usual(length exact.Fraction) Reel {
	return Reel{
		Length: length, Pitch: LongPitch, Exposures: 36,
		Leader: mm(160), Trailer: mm(72), Fogged: mm(50), StartWaste: mm(100), EndWaste: mm(200), ShortestRollWanted: 12,
	}
}

func feet(n int64) exact.Fraction { return Foot.Mul(exact.Int(n)) }

func mustDivide(t *testing.T, r Reel) Cut {
	t.Helper()
	c, err := Divide(r)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func sameLength(t *testing.T, what string, got, want exact.Fraction) {
	t.Helper()
	if !got.Equal(want) {
		t.Errorf("%s = %s mm, want %s mm", what, got, want)
	}
}

// SMPTE ST 139 (KS-1870) and ST 93 (BH-1866): pitches 0.1870 in and 0.1866 in, given
// in millimetres as 4.750 and 4.740. 1 in = 25.4 mm, so each is its inch figure to
// three places.
func TestPitchesAreTheStandards(t *testing.T) {
	inch := exact.Ratio(254, 10)
	sameLength(t, "long pitch", exact.Ratio(1870, 10000).Mul(inch).Round(2), LongPitch)
	sameLength(t, "short pitch", exact.Ratio(1866, 10000).Mul(inch).Round(2), ShortPitch)
	sameLength(t, "long frame", Reel{Pitch: LongPitch}.Frame(), mm(38))
	sameLength(t, "short frame", Reel{Pitch: ShortPitch}.Frame(), exact.Ratio(3792, 100))
}

// SMPTE 102-2002: 100 pitches of 35 mm film measure 18.700 ± 0.015 in.
func TestHundredPitchesAreWithinTheTolerance(t *testing.T) {
	inches := LongPitch.Mul(exact.Int(100)).Quo(exact.Ratio(254, 10))
	if off := inches.Sub(exact.Ratio(18700, 1000)).Abs(); exact.Ratio(15, 1000).Less(off) {
		t.Errorf("100 pitches are %s in, more than 0.015 in off 18.700 in", inches)
	}
}

// "64 perforations to the foot" is nominal: they measure 304.0 mm, a foot 304.8 mm.
func TestSixtyFourPerforationsAreNotQuiteAFoot(t *testing.T) {
	sameLength(t, "64 perforations", LongPitch.Mul(exact.Int(64)), mm(304))
	sameLength(t, "a foot", Foot, exact.Ratio(3048, 10))
}

// A working lab cuts 5 ft 3 in = 1600.2 mm for 36 exposures (apug.org, post 1270032):
// 1368.0 of frames and 232.2 of ends. With nothing else lost 100 ft give 19 rolls and
// 3 in, 400 ft give 76 rolls and 12 in.
func TestLabCutLengthDividesAsPublished(t *testing.T) {
	inch := exact.Ratio(254, 10)
	for _, c := range []struct{ feet, rolls, inchesLeft int64 }{{100, 19, 3}, {400, 76, 12}} {
		cut := mustDivide(t, Reel{
			Length: feet(c.feet), Pitch: LongPitch, Exposures: 36, Leader: mm(160), Trailer: exact.Ratio(722, 10), ShortestRollWanted: 12,
		})
		sameLength(t, "cut length", cut.RollLength, exact.Ratio(16002, 10))
		if cut.FullRolls != c.rolls || cut.ShortRollExposures != 0 {
			t.Errorf("%d ft: %d rolls and a short one of %d, want %d", c.feet, cut.FullRolls, cut.ShortRollExposures, c.rolls)
		}
		sameLength(t, "left over", cut.LeftOver, inch.Mul(exact.Int(c.inchesLeft)))
	}
}

// About 18 rolls of 36 from 100 ft with a daylight loader: common practice, no source;
// "appx. 18" also in a bulk-loading FAQ (ccs.neu.edu/home/genie/bulk.html, archived
// 2006-01-27). Loaded in the dark, with no end fogged, 100 ft give the 19th too.
func TestHundredFeetGiveEighteenRolls(t *testing.T) {
	for _, pitch := range []exact.Fraction{LongPitch, ShortPitch} {
		r := usual(feet(100))
		r.Pitch = pitch
		cut := mustDivide(t, r)
		if cut.FullRolls != 18 || cut.ShortRollExposures != 0 || cut.Exposures() != 648 || cut.Cassettes() != 18 {
			t.Errorf("pitch %s: %+v", pitch, cut)
		}
	}
	dark := usual(feet(100))
	dark.Fogged, dark.StartWaste, dark.EndWaste = mm(0), mm(0), mm(0)
	if cut := mustDivide(t, dark); cut.FullRolls != 19 {
		t.Errorf("in the dark: %d rolls, want 19", cut.FullRolls)
	}
}

// Short rolls worked by hand on a reel of 10 mm ends and 38 mm frames, 4 exposures:
// a full roll takes 162 mm.
func TestShortRolls(t *testing.T) {
	for _, c := range []struct {
		name                  string
		length                int64
		test, from            int
		full, short, leftOver int64
	}{
		{"two full rolls and nothing over", 324, 0, 1, 2, 0, 0},
		{"one millimetre short of the second is a short roll", 323, 0, 1, 1, 3, 37},
		{"just a frame over", 324 + 48, 0, 1, 2, 1, 0},
		{"a frame over, but two wanted", 324 + 48, 0, 2, 2, 0, 48},
		{"too little for a frame", 324 + 47, 0, 1, 2, 0, 47},
		{"wanting from 0 on makes no roll of 0 exposures", 324 + 47, 0, 0, 2, 0, 47},
		{"test exposures come off first", 324 + 48, 1, 1, 2, 0, 10},
		{"nothing but a short roll", 10 + 2*38 + 5, 0, 2, 0, 2, 5},
		{"wanting more than a roll holds leaves full rolls", 162 + 150, 0, 9, 1, 0, 150},
	} {
		t.Run(c.name, func(t *testing.T) {
			cut := mustDivide(t, Reel{
				Length: mm(c.length), Pitch: LongPitch, Exposures: 4, Leader: mm(5), Trailer: mm(5), TestExposures: c.test, ShortestRollWanted: c.from,
			})
			if cut.FullRolls != c.full || cut.ShortRollExposures != c.short {
				t.Errorf("%d full and %d exposures, want %d and %d", cut.FullRolls, cut.ShortRollExposures, c.full, c.short)
			}
			sameLength(t, "left over", cut.LeftOver, mm(c.leftOver))
		})
	}
}

func TestTooShortReelSaysHowMuchIsMissing(t *testing.T) {
	for _, c := range []struct {
		name            string
		length, missing int64
		from            int
	}{
		{"a millimetre to the shortest roll wanted", 10 + 2*38 - 1, 1, 2},
		{"wastes ask for more than the reel", 0, 48, 1},
		{"wanting more than a roll holds asks for one full roll", 100, 62, 9},
		{"wanting from 0 on asks for one exposure", 40, 8, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Divide(Reel{Length: mm(c.length), Pitch: LongPitch, Exposures: 4, Leader: mm(10), ShortestRollWanted: c.from})
			var short *TooShort
			if !errors.As(err, &short) {
				t.Fatalf("error %v, want *TooShort", err)
			}
			sameLength(t, "missing", short.Missing, mm(c.missing))
		})
	}
}

// However a reel is cut, its pieces make up its length, nothing left over would have
// been another roll, and what is reported missing is just enough.
func TestPiecesMakeUpTheReel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tenths := func(name string, most int64) exact.Fraction {
			return exact.Ratio(rapid.Int64Range(0, most).Draw(t, name), 10)
		}
		r := Reel{
			Length: tenths("length", 400_000), Pitch: rapid.SampledFrom([]exact.Fraction{LongPitch, ShortPitch}).Draw(t, "pitch"),
			Exposures: rapid.IntRange(1, 100).Draw(t, "exposures"), Leader: tenths("leader", 3000), Trailer: tenths("trailer", 2000), Fogged: tenths("fogged", 1000),
			StartWaste: tenths("start", 2000), EndWaste: tenths("end", 2000),
			TestExposures: rapid.IntRange(0, 5).Draw(t, "test"), ShortestRollWanted: rapid.IntRange(0, 120).Draw(t, "from"),
		}
		cut, err := Divide(r)
		var short *TooShort
		if errors.As(err, &short) {
			r.Length = r.Length.Add(short.Missing)
			if longer, err := Divide(r); err != nil || longer.Cassettes() != 1 || !longer.LeftOver.IsZero() {
				t.Fatalf("with the missing %s mm: %+v, %v", short.Missing, longer, err)
			}
			return
		}
		pieces := exact.Sum(r.StartWaste, r.EndWaste, cut.LeftOver,
			r.Ends().Mul(exact.Int(cut.Cassettes())), r.Frame().Mul(exact.Int(cut.Exposures()+int64(r.TestExposures))))
		if !pieces.Equal(r.Length) {
			t.Fatalf("pieces sum to %s mm of %s mm", pieces, r.Length)
		}
		if cut.LeftOver.Sign() < 0 || !cut.LeftOver.Less(cut.RollLength) {
			t.Fatalf("%s mm left over", cut.LeftOver)
		}
		if s := cut.ShortRollExposures; s != 0 && (s < int64(r.ShortestRollWanted) || s >= int64(r.Exposures)) {
			t.Fatalf("a short roll of %d", s)
		}
	})
}
