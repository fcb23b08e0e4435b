package compare

import (
	"slices"
	"testing"

	"reelworth/internal/scenario"
)

func counting(o scenario.Offer, process string) scenario.Offer {
	o.Developing = process
	return o
}

// Boxed rolls at 10 for 18 rolls in one month are 180; a reel gives exactly 18.
func TestVerdictKinds(t *testing.T) {
	boxed := plainBoxed("boxed", "10")
	nameless := plainReel("broken", "1")
	nameless.Currency = "CAD"
	for _, c := range []struct {
		name   string
		rolls  string
		offers []scenario.Offer
		kind   VerdictKind
		reel   string
		boxed  string
	}{
		{"the reel saves", "18", []scenario.Offer{boxed, plainReel("reel", "100")}, VerdictReel, "reel", "boxed"},
		{"the reel costs more", "18", []scenario.Offer{boxed, plainReel("reel", "260")}, VerdictBoxed, "reel", "boxed"},
		{"exactly 5 % saved is no longer close", "18", []scenario.Offer{boxed, plainReel("reel", "171")}, VerdictReel, "reel", "boxed"},
		{"a cent less than 5 % is close", "18", []scenario.Offer{boxed, plainReel("reel", "171.01")}, VerdictClose, "reel", "boxed"},
		{"a cent less than 5 % more is close", "18", []scenario.Offer{boxed, plainReel("reel", "188.99")}, VerdictClose, "reel", "boxed"},
		{"exactly 5 % more is boxed", "18", []scenario.Offer{boxed, plainReel("reel", "189")}, VerdictBoxed, "reel", "boxed"},
		// 9 boxed rolls are 90; the reel at 100 leaves 9 rolls worth 50
		{"the reel saves only with what is left", "9", []scenario.Offer{boxed, plainReel("reel", "100")}, VerdictReelIfKept, "reel", "boxed"},
		{"the same cash does not save cash", "9", []scenario.Offer{boxed, plainReel("reel", "90")}, VerdictReelIfKept, "reel", "boxed"},
		{"a cent of cash saved", "9", []scenario.Offer{boxed, plainReel("reel", "89.99")}, VerdictReel, "reel", "boxed"},
		{"nothing shot, nothing saved: neither", "0", []scenario.Offer{boxed, plainReel("reel", "100")}, VerdictClose, "reel", "boxed"},
		{"one counts developing, the other does not", "18", []scenario.Offer{boxed, counting(plainReel("reel", "100"), "lab")}, VerdictUnlike, "reel", "boxed"},
		{"only boxed", "18", []scenario.Offer{plainBoxed("dear", "12"), boxed}, VerdictOneSided, "", "boxed"},
		{"only reels", "18", []scenario.Offer{plainReel("reel", "100")}, VerdictOneSided, "reel", ""},
		{"the only reel cannot be computed", "18", []scenario.Offer{boxed, nameless}, VerdictOneSided, "", "boxed"},
		{"nothing can be computed", "18", []scenario.Offer{nameless}, VerdictOneSided, "", ""},
		{"the cheapest of each kind", "18",
			[]scenario.Offer{plainReel("dear reel", "120"), plainBoxed("dear", "12"), boxed, plainReel("reel", "100")}, VerdictReel, "reel", "boxed"},
		{"ties go to the first in the file", "18",
			[]scenario.Offer{plainReel("reel", "100"), plainReel("reel again", "100"), boxed, plainBoxed("boxed again", "10")}, VerdictReel, "reel", "boxed"},
		{"those that count developing come first, dearer as they are", "18",
			[]scenario.Offer{boxed, plainReel("reel", "100"), counting(plainBoxed("boxed and lab", "11"), "lab"), counting(plainReel("reel and lab", "110"), "lab")},
			VerdictReel, "reel and lab", "boxed and lab"},
		{"else those that do not", "18",
			[]scenario.Offer{boxed, plainReel("reel", "100"), counting(plainReel("reel and free lab", "1"), "free lab")}, VerdictReel, "reel", "boxed"},
		{"else all", "18",
			[]scenario.Offer{counting(plainBoxed("boxed and lab", "10"), "lab"), plainReel("reel", "100")}, VerdictUnlike, "reel", "boxed and lab"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := plain(c.rolls, 1, c.offers...)
			s.Developing = []scenario.Developing{
				{Name: "lab", Way: scenario.Lab, Price: dec("9")}, {Name: "free lab", Way: scenario.Lab},
			}
			v := Compare(s, nil, scenario.Date{}).Verdict
			if v.Kind != c.kind || v.Reel != c.reel || v.Boxed != c.boxed {
				t.Errorf("%s: %q against %q, want %s: %q against %q", v.Kind, v.Reel, v.Boxed, c.kind, c.reel, c.boxed)
			}
			if (v.Pair == nil) != (v.Kind == VerdictOneSided) {
				t.Errorf("pair %v", v.Pair)
			}
		})
	}
}

func TestVerdictIsOfThePairWhateverTheBaseline(t *testing.T) {
	s := quayside()
	for _, baseline := range []string{s.Offers[0].Name, s.Offers[1].Name, s.Offers[2].Name, "nobody"} {
		s.Baseline = baseline
		c := Compare(s, nil, scenario.Date{})
		sameFigure(t, "saving with baseline "+baseline, c.Verdict.Pair.Saving, "374.35")
		sameFigure(t, "cash with baseline "+baseline, c.Verdict.Pair.SavingCash, "210.84")
		for _, o := range c.Offers {
			if none := baseline == "nobody" || o.Name == baseline; (o.Against == nil) != none {
				t.Errorf("baseline %s: %s is held against it: %v", baseline, o.Name, o.Against != nil)
			}
		}
	}
}

func TestOffersLeftOutAreNamed(t *testing.T) {
	s := quayside()
	s.Rates = s.Rates[1:]
	c := Compare(s, nil, scenario.Date{})
	if want := []string{"Lanternlight 500, 100 ft reel"}; !slices.Equal(c.Verdict.LeftOut, want) {
		t.Errorf("left out %q, want %q", c.Verdict.LeftOut, want)
	}
}
