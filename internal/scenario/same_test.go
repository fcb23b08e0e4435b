package scenario

import (
	"slices"
	"testing"

	"github.com/shopspring/decimal"
)

func TestAZeroThatWasTypedIsTheZeroThatWasNot(t *testing.T) {
	was := Demo().Scenarios[0]
	typed := was.Clone()
	typed.Offers[0].OnHand = decimal.RequireFromString("0")
	if !Same(was, typed) {
		t.Error("0 is said to be another 0")
	}
	for name, change := range map[string]func(*Scenario){
		"five":    func(s *Scenario) { s.Offers[0].OnHand = decimal.RequireFromString("5") },
		"places":  func(s *Scenario) { s.Offers[2].Price = decimal.RequireFromString("118.0") },
		"name":    func(s *Scenario) { s.Name = "x" },
		"unknown": func(s *Scenario) { s.Extra = Extra{"colour": "red"} },
	} {
		next := was.Clone()
		if change(&next); Same(was, next) {
			t.Error(name, "is not seen")
		}
	}
	f := Demo()
	g := File{Schema: f.Schema, Scenarios: f.Scenarios}
	g.Reels = []InHand{{Name: "Reel 1"}}
	if SameFile(f, g) || !SameFile(f, f) || SameFile(f, File{}) {
		t.Error("files")
	}
}

func TestRangesGoWithWhatTheyAreOf(t *testing.T) {
	before := Demo().Scenarios[0].Clone()
	rate := RateInput(before.Rates[0])
	low, high := decimal.New(1, 0), decimal.New(2, 0)
	before.Ranges = []Range{
		{Input: rate, Low: low, High: high},
		{Input: InputOfferPrice, Low: low, High: high},
		{Input: InputOfferPrice, Offer: before.Offers[1].Name, Low: low, High: high},
		{Input: "rate:XAU/EUR", Low: low, High: high}, // at fault before: not for this to judge
	}
	next := before.Clone()
	next.Rates = next.Rates[1:]
	if Follow(&before, &next); len(next.Ranges) != 3 || next.Ranges[0].Input == rate {
		t.Error(next.Ranges)
	}
	next = before.Clone()
	next.Offers = append(next.Offers[:1], next.Offers[2:]...)
	if Follow(&before, &next); len(next.Ranges) != 3 || next.Ranges[2].Offer != "" {
		t.Error(next.Ranges)
	}
	next = before.Clone()
	RenameOffer(&next, 1, "Another")
	if Follow(&before, &next); len(next.Ranges) != 4 || next.Ranges[2].Offer != "Another" {
		t.Error(next.Ranges)
	}
	if len(before.Ranges) != 4 || before.Ranges[2].Offer != before.Offers[1].Name {
		t.Error("the state before was changed")
	}
}

// Reels in hand that share nothing, that share all, and one that was changed.
func TestSameComparesReelsInHand(t *testing.T) {
	a, _ := Read(withScenario(inHand))
	b, _ := Read(withScenario(inHand))
	if !SameFile(a, b) || !SameFile(a, a) {
		t.Error("the same is not the same")
	}
	b.Reels = slices.Clone(a.Reels)
	if !SameFile(a, b) {
		t.Error("reels that share their logs are not the same")
	}
	b.Reels[0].Loads = slices.Clone(a.Reels[0].Loads)
	b.Reels[0].Loads[1].Cassettes++
	if SameFile(a, b) {
		t.Error("a changed row is not seen")
	}
	if b.Reels = nil; SameFile(a, b) {
		t.Error("a reel that is gone is not seen")
	}
}
