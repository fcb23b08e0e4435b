package scenario

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

func TestCopiesAreCountedOn(t *testing.T) {
	s := Demo().Scenarios[0]
	s.Offers[0].Name = "reel"
	s.Offers = s.Offers[:1]
	for _, want := range []string{"reel (2)", "reel (3)", "reel (4)"} {
		s.Offers = append(s.Offers, CopyOffer(&s, len(s.Offers)-1))
		if got := s.Offers[len(s.Offers)-1].Name; got != want {
			t.Errorf("%q, not %q", got, want)
		}
	}
	for name, want := range map[string]string{"reel (2)": "reel (5)", "roll (1)": "roll (1)", "new": "new"} {
		if got := FreeOfferName(&s, name); got != want {
			t.Errorf("%q is called %q, not %q", name, got, want)
		}
	}
}

func TestAnyCopyHasANameThatMayStand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Demo().Scenarios[0]
		s.Offers[1].Name = rapid.StringOfN(rapid.SampledFrom([]rune("ab é(2)")), 1, LongestLine, -1).Draw(t, "name")
		for range rapid.IntRange(1, 12).Draw(t, "copies") {
			s.Offers = append(s.Offers, CopyOffer(&s, 1))
		}
		seen := map[string]bool{}
		for _, o := range s.Offers {
			if seen[o.Name] || utf8.RuneCountInString(o.Name) > LongestLine {
				t.Fatalf("%q", o.Name)
			}
			seen[o.Name] = true
		}
	})
}

func TestWhatPointsAtAnOfferFollowsItsName(t *testing.T) {
	s := Demo().Scenarios[0].Clone()
	was := s.Offers[0].Name
	s.Baseline = was
	s.Ranges = []Range{{Input: "offer.price", Offer: was}, {Input: "offer.price", Offer: s.Offers[1].Name}, {Input: "border.tax_percent"}}
	RenameOffer(&s, 0, "Corner shop")
	if s.Baseline != "Corner shop" || s.Ranges[0].Offer != "Corner shop" || s.Ranges[1].Offer != s.Offers[1].Name || s.Ranges[2].Offer != "" {
		t.Errorf("%q %+v", s.Baseline, s.Ranges)
	}
}

// A name that tells the length does not go on telling the old one.
func TestANameFollowsTheLength(t *testing.T) {
	for _, c := range []struct {
		name   string
		length string
		unit   LengthUnit
		want   string
	}{
		{"Lanternlight 500, 100 ft reel", "50", Feet, "Lanternlight 500, 50 ft reel"},
		{"Lanternlight 100, 100ft", "30.5", Metres, "Lanternlight 100, 30.5m"},
		{"100 feet of film", "17", Feet, "17 feet of film"},
		{"100-ft reel (2)", "200", Feet, "200-ft reel (2)"},
		{"1100 ft reel", "50", Feet, "1100 ft reel"},
		{"1.100 ft reel", "50", Feet, "1.100 ft reel"},
		{"100 frames", "50", Feet, "100 frames"},
		{"100 m reel", "50", Feet, "100 m reel"},
		{"the reel", "50", Feet, "the reel"},
		{"Marigold 400, shop roll", "50", Feet, "Marigold 400, shop roll"},
	} {
		before := Demo().Scenarios[0].Clone()
		before.Offers[2].Name, before.Baseline = c.name, c.name
		if c.name == before.Offers[0].Name {
			before.Offers[0].Name = "another"
		}
		next := before.Clone()
		next.Offers[2].Reel.Length, next.Offers[2].Reel.LengthUnit = decimal.RequireFromString(c.length), c.unit
		FollowLengths(&before, &next)
		if got := next.Offers[2].Name; got != c.want || next.Baseline != got {
			t.Errorf("%q of %s %s is called %q", c.name, c.length, c.unit, got)
		}
	}
	before := Demo().Scenarios[0].Clone()
	before.Offers[0].Name, before.Offers[2].Name = "50 ft", "100 ft"
	next := before.Clone()
	next.Offers[2].Reel.Length = decimal.New(50, 0)
	if FollowLengths(&before, &next); next.Offers[2].Name != "50 ft (2)" {
		t.Error("two of a name:", strings.Join(offerNames(&next), ", "))
	}
}
