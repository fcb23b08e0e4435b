package sidebyside

import (
	"context"
	"math/big"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

func published(t testing.TB) *rates.File {
	t.Helper()
	// European Central Bank, reference rates of 9 May 2025.
	f, err := rates.Read([]byte("Date,USD,JPY,AUD,GBP,\n2025-05-09,1.1252,163.36,1.7572,N/A,\n2025-05-08,1.1,160,1.7,0.85,\n"))
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func entry(t testing.TB, s scenario.Scenario, faults []scenario.Fault, currency string, f *rates.File) Entry {
	t.Helper()
	c := compare.Compare(s, faults, scenario.Date{})
	e, err := Of(context.Background(), &c, faults, currency, f)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

func demo() scenario.Scenario { return scenario.Demo().Scenarios[0] }

func TestTheWayIntoTheCommonCurrency(t *testing.T) {
	unsound := []scenario.Fault{{Place: scenario.Place{Part: scenario.PartRate, Index: 0}}}
	for _, c := range []struct {
		name, currency string
		faults         []scenario.Fault
		file           bool
		want           *big.Rat // nil for none
		day            string
		missing        Missing
	}{
		{"home itself", "EUR", nil, false, big.NewRat(1, 1), "", ""},
		{"by the scenario's quote, backwards", "USD", nil, true, big.NewRat(10_000, 8_875), "", ""},
		{"by the scenario's quote", "JPY", nil, true, big.NewRat(16_336, 100), "", ""},
		{"by the file, since the quote is unsound", "USD", unsound, true, big.NewRat(11_252, 10_000), "2025-05-09", ""},
		{"by the file", "AUD", nil, true, big.NewRat(17_572, 10_000), "2025-05-09", ""},
		{"by the newest day that has both", "GBP", nil, true, big.NewRat(85, 100), "2025-05-08", ""},
		{"by nothing", "AUD", nil, false, nil, "", MissingQuote},
		{"by nothing, though there is a file", "KWD", nil, true, nil, "", MissingRate},
		{"not at all", "", nil, true, nil, "", ""},
	} {
		var f *rates.File
		if c.file {
			f = published(t)
		}
		w := entry(t, demo(), c.faults, c.currency, f).Into
		if w.Currency != c.currency || w.Missing != c.missing || w.Day.String() != c.day || (w.Factor == nil) != (c.want == nil) {
			t.Errorf("%s: %+v", c.name, w)
		} else if c.want != nil && w.Factor.Rat().Cmp(c.want) != 0 {
			t.Errorf("%s: %s, want %s", c.name, w.Factor, c.want)
		}
	}
}

func TestWhatAnEntryCarries(t *testing.T) {
	e := entry(t, demo(), nil, "AUD", published(t))
	if e.Reel().Name != "Lanternlight 500, 100 ft reel" || e.Boxed().Name != "Marigold 400, shop roll" || e.Against() == nil || e.Pair == nil {
		t.Errorf("%+v", e)
	}
	s := demo()
	s.Offers = s.Offers[:2]
	e = entry(t, s, nil, "AUD", published(t))
	if e.Reel() != nil || e.Boxed() == nil || e.Against() != nil || e.Pair != nil {
		t.Errorf("one kind only: %+v", e)
	}
	e = Entry{File: "nowhere.toml", Fault: "there is no such file"}
	if e.Reel() != nil || e.Boxed() != nil || e.Against() != nil {
		t.Error("a file that cannot be read has a winner")
	}
}

// Whatever the rate, the offers stand in the same order in the common currency, and their
// difference is the saving in it.
func TestConvertingNeverChangesWhoWins(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := demo()
		for i := range s.Offers {
			s.Offers[i].Price = decimal.New(rapid.Int64Range(1, 3_000_000).Draw(t, "price"), -2)
		}
		rate := decimal.New(rapid.Int64Range(1, 99_999_999).Draw(t, "rate"), -rapid.Int32Range(0, 8).Draw(t, "places"))
		home := compare.Compare(s, nil, scenario.Date{})
		s.Rates = append(s.Rates, scenario.Rate{One: "AUD", Equals: rate, In: "EUR"})
		c := compare.Compare(s, nil, scenario.Date{})
		e, err := Of(context.Background(), &c, nil, "AUD", nil)
		if err != nil || e.Into.Factor == nil {
			t.Fatalf("%+v, %v", e.Into, err)
		}
		if c.Verdict.Kind != home.Verdict.Kind || c.Verdict.Reel != home.Verdict.Reel || c.Verdict.Boxed != home.Verdict.Boxed {
			t.Fatalf("%s of %s and %s has become %s of %s and %s", home.Verdict.Kind, home.Verdict.Reel, home.Verdict.Boxed,
				c.Verdict.Kind, c.Verdict.Reel, c.Verdict.Boxed)
		}
		reel, boxed := e.Reel().PerRoll.Total, e.Boxed().PerRoll.Total
		inReel, inBoxed := e.Into.Of(reel).Rat(), e.Into.Of(boxed).Rat()
		if inReel.Cmp(inBoxed) != reel.Cmp(boxed) {
			t.Fatal("the other one is cheaper in the common currency")
		}
		back := new(big.Rat).Mul(inReel, rate.Rat())
		if back.Cmp(reel.Rat()) != 0 {
			t.Fatalf("there and back %s is %s", reel, back)
		}
	})
}
