package scenario

import (
	"bytes"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// inHand is a small sound file of one reel; line 3 is its first.
const inHand = `schema = 1

[[reel]]
name = "Tidewater 2"
paid = "94.20"
currency = "EUR"
length = "100"
length_unit = "ft"
exposures = 36
speed = 250
counter_mm = "38.0"
counter_wraps = 36

  [[reel.load]]
  date = 2027-01-09
  cassettes = 4
  exposures = 36
  counts = 43

  [[reel.load]]
  date = 2027-01-02
  cassettes = 2
  exposures = 12

  [[reel.result]]
  date = 2027-02-01
  cassettes = 3
  exposures = 36
  good = 105

  [[reel.recount]]
  date = 2027-01-05
  left_mm = "28000"
`

// withScenario puts a sound scenario behind reels.
func withScenario(reels string) []byte {
	_, one, _ := strings.Cut(small, "\n")
	return []byte(reels + one)
}

func TestReelsInHandAreRead(t *testing.T) {
	f, faults := Read(withScenario(inHand))
	if len(faults) > 0 || len(f.Reels) != 1 || len(f.Scenarios) != 1 {
		t.Fatalf("%v, %d reels, %d scenarios", faults, len(f.Reels), len(f.Scenarios))
	}
	r := f.Reels[0]
	if r.Paid.String() != "94.2" || r.LeaderMM.String() != "160" || r.Pitch != LongPitch || r.ShortRollFrom != 12 ||
		r.Speed != (MaybeWhole{250, true}) || !r.CounterMM.Set || r.CounterWraps.Int != 36 || len(r.Loads) != 2 ||
		r.Loads[0].Counts != (MaybeWhole{43, true}) || r.Loads[1].Counts.Set || r.Results[0].Good != 105 || r.Recounts[0].LeftMM.String() != "28000" {
		t.Errorf("%+v", r)
	}
	// A reel may stand behind the scenarios as well, or among them.
	_, tables, _ := strings.Cut(inHand, "\n")
	behind, faults := Read([]byte(small + tables))
	if len(faults) > 0 || !reflect.DeepEqual(behind.Reels, f.Reels) {
		t.Errorf("behind the scenarios: %v, %+v", faults, behind.Reels)
	}
}

// Every rule of a reel in hand: what is wrong, on the line it stands in, without touching
// the scenario.
func TestReelsInHandAreHeldToTheirRules(t *testing.T) {
	for _, c := range []struct {
		name, old, new string
		path           string
		code           Code
	}{
		{"no name", `name = "Tidewater 2"`, "", "reel[1].name", Missing},
		{"no length", `length = "100"`, "", "reel[1].length", Missing},
		{"paid in no currency", `currency = "EUR"`, "", "reel[1].currency", Missing},
		{"a speed of 0", "speed = 250", "speed = 0", "reel[1].speed", BelowMin},
		{"too high a speed", "speed = 250", "speed = 25001", "reel[1].speed", AboveMax},
		{"a counter that winds nothing", `counter_mm = "38.0"`, "counter_mm = 0", "reel[1].counter_mm", NotAbove},
		{"a counter too fine", `counter_mm = "38.0"`, `counter_mm = "0.000000000001"`, "reel[1].counter_mm", CounterTooFine},
		{"a dial of one count", "counter_wraps = 36", "counter_wraps = 1", "reel[1].counter_wraps", BelowMin},
		{"negative growth", "speed = 250", "counter_growth_mm = \"-1\"", "reel[1].counter_growth_mm", BelowMin},
		{"an unloaded day", "date = 2027-01-09\n", "", "reel[1].load[1].date", Missing},
		{"no cassette", "cassettes = 4", "cassettes = 0", "reel[1].load[1].cassettes", BelowMin},
		{"too many cassettes", "cassettes = 4", "cassettes = 1000", "reel[1].load[1].cassettes", AboveMax},
		{"negative counts", "counts = 43", "counts = -1", "reel[1].load[1].counts", BelowMin},
		{"more good than three a cassette over", "good = 105", "good = 118", "reel[1].result[1].good", TooGood},
		{"more developed than loaded", "cassettes = 3", "cassettes = 5", "reel[1].result[1].cassettes", NotLoaded},
		{"others developed than loaded", "exposures = 36\n  good", "exposures = 24\n  good", "reel[1].result[1].cassettes", NotLoaded},
		{"a recount longer than the reel", `left_mm = "28000"`, `left_mm = "30481"`, "reel[1].recount[1].left_mm", RecountBeyond},
		{"wastes beyond the reel", `length = "100"`, `length = "0.5"`, "reel[1].length", WastesBeyond},
		{"the same name twice", "[[reel]]\n", "[[reel]]\nname = \"Tidewater 2\"\nlength = 1\nlength_unit = \"m\"\nexposures = 36\n[[reel]]\n", "reel[2].name", NameTaken},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, faults := Read(withScenario(strings.Replace(inHand, c.old, c.new, 1)))
			if len(faults) == 0 {
				t.Fatal("no fault")
			}
			got := faults[0]
			if got.Path != c.path || got.Code != c.code || got.Line < 3 || got.Place.Part != PartInHand || len(f.Scenarios) != 1 {
				t.Errorf("%v at %+v", got, got.Place)
			}
			if i := got.Place.Index; len(FaultsOfReel(faults, i)) == 0 || len(FaultsOfReel(faults, i+1)) > 0 {
				t.Errorf("faults %v are not those of reel %d", faults, i)
			}
		})
	}
}

// The load that goes beyond the reel is the first by date, and is named on its line.
func TestLoadsBeyondTheReelAreNamed(t *testing.T) {
	text := strings.Replace(inHand, `left_mm = "28000"`, `left_mm = "1"`, 1)
	text = text[:strings.Index(text, "  [[reel.recount]]")]
	text = strings.Replace(text, "cassettes = 4", "cassettes = 18", 1)
	_, faults := Read(withScenario(text))
	if len(faults) != 1 || faults[0].Code != LoadsBeyond || faults[0].Path != "reel[1].load[1]" || faults[0].Line != 14 {
		t.Fatalf("%v", faults)
	}
	// 43 counts of 38 mm are 1634 mm, and a roll of 12 is 20 counts, 760 mm:
	// 100 + 2×760 + 18×1634 − 30,480 mm.
	if got := faults[0].Missing.Text(3); got != "552" {
		t.Errorf("%s mm", got)
	}
}

func TestReelsInHandAreLimited(t *testing.T) {
	var b bytes.Buffer
	b.WriteString("schema = 1\n")
	for i := range MaxReels + 1 {
		fmt.Fprintf(&b, "[[reel]]\nname = \"%d\"\nlength = 30\nlength_unit = \"m\"\nexposures = 36\n", i)
	}
	f, faults := Read(withScenario(b.String()))
	if len(faults) != 1 || faults[0].Code != TooMany || faults[0].Have != MaxReels+1 || len(f.Reels) != MaxReels {
		t.Errorf("%d reels: %v", len(f.Reels), faults)
	}
	rows := inHand + strings.Repeat("  [[reel.load]]\n  date = 2027-01-01\n  cassettes = 1\n  exposures = 1\n", MaxRows-1)
	if _, faults := Read(withScenario(rows)); len(faults) != 1 || faults[0].Code != TooMany || faults[0].Place.Part != PartInHand {
		t.Errorf("rows: %v", faults)
	}
}

func TestReelClonesShareNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := anyInHand(t, 0)
		was := fmt.Sprintf("%#v", r)
		again := r.Clone()
		if !reflect.DeepEqual(r, again) {
			t.Fatal("the clone differs")
		}
		scribble(reflect.ValueOf(&again).Elem())
		if fmt.Sprintf("%#v", r) != was {
			t.Fatal("a change of the clone shows in the reel")
		}
	})
}

func TestMonthsAreAddedWithinTheMonth(t *testing.T) {
	for _, c := range []struct {
		from   string
		months int64
		want   string
	}{
		{"2027-01-31", 1, "2027-02-28"}, {"2027-01-31", 13, "2028-02-29"}, {"2027-05-31", 1, "2027-06-30"}, {"2027-12-15", 1, "2028-01-15"},
		{"2027-01-31", 0, "2027-01-31"}, {"2027-01-31", 1e15, ""}, {"9999-12-01", 1, ""},
	} {
		d, err := ParseDate(c.from)
		if err != nil {
			t.Fatal(err)
		}
		if got := d.AddMonths(c.months).String(); got != c.want {
			t.Errorf("%s and %d months is %s, want %s", c.from, c.months, got, c.want)
		}
	}
}
