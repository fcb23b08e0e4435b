package film

import (
	"errors"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/exact"
)

// Worked by hand: a dial that counts frames of 38 mm, and one whose turns wind 100 mm and
// 2 mm more for each turn: n × 100 + n² × 1 (the nth turn winds 100 + 2n − 1).
func TestCountsByHand(t *testing.T) {
	frames := Counter{PerCount: mm(38)}
	turns := Counter{PerCount: mm(100), Growth: mm(1), Zero: mm(50), Wraps: 10}
	for _, c := range []struct {
		name  string
		dial  Counter
		roll  exact.Fraction
		n     int64
		wound exact.Fraction
	}{
		{"36 frames and 282 mm of ends", frames, mm(1650), 44, mm(1672)},
		{"a roll that ends on a count", frames, mm(1672), 44, mm(1672)},
		{"a hair more takes one more", frames, exact.Ratio(16720001, 10000), 45, mm(1710)},
		// 13 turns: 1300 + 169 + 50 = 1519; 14: 1400 + 196 + 50 = 1646; 15: 1500 + 225 + 50 = 1775.
		{"growing turns", turns, mm(1650), 15, mm(1775)},
		{"growing turns that end on a count", turns, mm(1646), 14, mm(1646)},
		{"what is wound before 0 is enough", turns, mm(50), 0, mm(50)},
	} {
		t.Run(c.name, func(t *testing.T) {
			n, ok := c.dial.Counts(c.roll)
			if !ok || n != c.n {
				t.Fatalf("%d counts, %v, want %d", n, ok, c.n)
			}
			sameLength(t, "wound", c.dial.Wound(n), c.wound)
		})
	}
	if rounds, rest := turns.Rounds(15); rounds != 1 || rest != 5 {
		t.Errorf("15 counts are %d rounds and %d", rounds, rest)
	}
	if rounds, rest := frames.Rounds(44); rounds != 0 || rest != 44 {
		t.Errorf("44 counts without a mark are %d rounds and %d", rounds, rest)
	}
}

func TestNoCounterCountsNothing(t *testing.T) {
	if n, ok := (Counter{Zero: mm(10)}).Counts(mm(1650)); ok {
		t.Errorf("%d counts", n)
	}
	fine := Counter{PerCount: exact.Ratio(1, 1_000_000_000_000)}
	if n, ok := fine.Counts(mm(1650)); ok {
		t.Errorf("%d counts", n)
	}
}

// Counts are the least that reach the roll.
func TestCountsAreTheLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := counterOf(t)
		roll := exact.Ratio(rapid.Int64Range(1, 5_000_000).Draw(t, "roll"), 1000)
		n, ok := c.Counts(roll)
		if !ok {
			t.Fatal("no counts")
		}
		if c.Wound(n).Less(roll) || n > 0 && !c.Wound(n-1).Less(roll) {
			t.Fatalf("%d counts wind %s mm, one less %s, of %s", n, c.Wound(n), c.Wound(n-1), roll)
		}
	})
}

func counterOf(t *rapid.T) Counter {
	return Counter{
		PerCount: exact.Ratio(rapid.Int64Range(1, 200_000).Draw(t, "per count"), 1000),
		Growth:   exact.Ratio(rapid.Int64Range(0, 5000).Draw(t, "growth"), 1000),
		Zero:     exact.Ratio(rapid.Int64Range(0, 100_000).Draw(t, "zero"), 1000),
	}
}

// A counter is found again from what it winds, exactly: from one scrap where it does not
// grow, else from two.
func TestCalibrateFindsTheCounter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := counterOf(t)
		n := rapid.Int64Range(1, 60).Draw(t, "n")
		m := n + rapid.Int64Range(1, 60).Draw(t, "more")
		scraps := []Scrap{{n, c.length(n)}, {m, c.length(m)}}
		if rapid.Bool().Draw(t, "turned") {
			scraps[0], scraps[1] = scraps[1], scraps[0]
		}
		if c.Growth.IsZero() && rapid.Bool().Draw(t, "one") {
			scraps = scraps[:1]
		}
		got, err := Calibrate(scraps...)
		if err != nil || !got.PerCount.Equal(c.PerCount) || !got.Growth.Equal(c.Growth) {
			t.Fatalf("%s and %s, %v; want %s and %s", got.PerCount, got.Growth, err, c.PerCount, c.Growth)
		}
	})
}

func TestCalibrateSaysWhatIsMismeasured(t *testing.T) {
	for _, c := range []struct {
		name   string
		scraps []Scrap
		want   Mismeasured
	}{
		{"nothing measured", nil, NoScrap},
		{"no counts", []Scrap{{0, mm(100)}}, NoScrap},
		{"no length", []Scrap{{5, mm(0)}}, NoScrap},
		{"the same counts twice", []Scrap{{5, mm(190)}, {5, mm(195)}}, SameCounts},
		{"less film per count in the longer", []Scrap{{5, mm(200)}, {10, mm(390)}}, ShrinkingTurns},
		{"the same, the longer first", []Scrap{{10, mm(390)}, {5, mm(200)}}, ShrinkingTurns},
		{"nothing for the first count", []Scrap{{5, mm(25)}, {10, mm(100)}}, NoFirstCount},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Calibrate(c.scraps...)
			var got Mismeasured
			if !errors.As(err, &got) || got != c.want {
				t.Errorf("error %v, want %v", err, c.want)
			}
		})
	}
}
