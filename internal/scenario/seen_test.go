package scenario

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

const withSeen = `schema = 1
[[scenario]]
name = "Prices seen"
home = "EUR"
first_month = "2027-01"
baseline = "Shop roll"
shooting.rolls_per_month = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1]
[[scenario.offer]]
name = "Shop roll"
kind = "boxed"
currency = "EUR"
price = "14.80"
boxed.exposures = 36
`

func TestPricesSeenAreRead(t *testing.T) {
	f, faults := Read([]byte(withSeen + "[[scenario.offer.seen]]\ndate = 2026-11-01\nprice = \"13.90\"\nnote = \"in a sale\"\n" +
		"[[scenario.offer.seen]]\ndate = 2026-11-20\nprice = \"15.20\"\n"))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	seen := f.Scenarios[0].Offers[0].Seen
	if got := fmt.Sprintln(len(seen), seen[0].Date, seen[0].Price.StringFixed(2), seen[0].Note, seen[1].Date, seen[1].Price.StringFixed(2)); got != "2 2026-11-01 13.90 in a sale 2026-11-20 15.20\n" {
		t.Error(got)
	}
	if f.Scenarios[0].Offers[0].Price.StringFixed(2) != "14.80" {
		t.Error("a price that was only seen is in use")
	}
}

func TestFaultsOfPricesSeenAreLocated(t *testing.T) {
	for text, want := range map[string]string{
		"[[scenario.offer.seen]]\nprice = \"13.90\"\n":                                       "offer[1].seen[1].date missing 14",
		"[[scenario.offer.seen]]\ndate = 2026-11-01\nprice = 0\n":                            "offer[1].seen[1].price not-above 16",
		"[[scenario.offer.seen]]\ndate = \"2026-11-01\"\nprice = 1\n":                        "offer[1].seen[1].date wrong-kind 15",
		strings.Repeat("[[scenario.offer.seen]]\ndate = 2026-11-01\nprice = 1\n", MaxSeen+1): fmt.Sprintf("offer[1].seen[%d] too-many %d", MaxSeen+1, 14+3*MaxSeen),
	} {
		_, faults := Read([]byte(withSeen + text))
		got := ""
		for _, f := range faults {
			got += fmt.Sprintf("%s %s %d", f.Path, f.Code, f.Line)
		}
		if got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// However they come, prices seen stand in the order of their days, and those of one day
// in the order they came.
func TestPricesSeenStandInTheOrderOfTheirDays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var o Offer
		var want []Seen
		for i, day := range rapid.SliceOf(rapid.IntRange(1, 9)).Draw(t, "days") {
			p := Seen{Date: Date{2026, 11, day}, Note: fmt.Sprint(i)}
			was := slices.Clone(o.Seen)
			before := o
			o.See(p)
			if !slices.EqualFunc(before.Seen, was, func(a, b Seen) bool { return a.Note == b.Note }) {
				t.Fatal("what a copy of the offer holds has changed")
			}
			want = append(want, p)
		}
		slices.SortStableFunc(want, func(a, b Seen) int { return a.Date.Compare(b.Date) })
		for i, place := range o.SeenPlaces() {
			if place != i || o.Seen[i].Note != want[i].Note {
				t.Fatalf("place %d holds %s, want %s", i, o.Seen[i].Note, want[i].Note)
			}
		}
	})
}
