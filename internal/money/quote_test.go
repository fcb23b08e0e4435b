package money

import (
	"errors"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/exact"
)

func quote(one, equals, in string) Quote {
	return Quote{One: one, Equals: decimal.RequireFromString(equals), In: in}
}

// convert takes an amount through the book's own route, rounded to places.
func convert(t *testing.T, b Book, amount, from, to string, places int) string {
	t.Helper()
	r, err := b.Route(from, to)
	if err != nil {
		t.Fatal(err)
	}
	return r.Convert(exactly(amount)).Decimal(places).StringFixed(int32(places))
}

// Council Regulation (EC) No 1103/97, articles 4 and 5: rates of six significant figures
// with the euro as the one; inverse rates shall not be used; between two national
// currencies through the euro; an exact half goes up.
func TestEuroChangeoverConversions(t *testing.T) {
	b := Book{Home: "EUR", Quotes: []Quote{quote("EUR", "239.640", "SIT"), quote("EUR", "1.95583", "DEM"), quote("EUR", "6.55957", "FRF")}}
	for _, c := range []struct{ amount, from, to, want string }{
		{"500", "SIT", "EUR", "2.09"},
		{"1000", "SIT", "EUR", "4.17"},
		{"1000", "DEM", "FRF", "3353.85"},
	} {
		if got := convert(t, b, c.amount, c.from, c.to, 2); got != c.want {
			t.Errorf("%s %s = %s %s, want %s", c.amount, c.from, got, c.to, c.want)
		}
	}
	for in, want := range map[string]string{"24.784": "24.78", "24.785": "24.79"} {
		if got := Round(exactly(in), "EUR").String(); got != want {
			t.Errorf("%s rounds to %s, want %s", in, got, want)
		}
	}
}

// The inverse of 1.95583 to six figures, 0.511292, would make 511,292.00 of a million.
func TestNoInverseRateIsMade(t *testing.T) {
	b := Book{Home: "EUR", Quotes: []Quote{quote("EUR", "1.95583", "DEM")}}
	if got := convert(t, b, "1000000", "DEM", "EUR", 2); got != "511291.88" {
		t.Errorf("1,000,000 DEM = %s EUR, want 511,291.88", got)
	}
}

// European Central Bank, euro foreign exchange reference rates of 9 May 2025, and the
// cross rates that follow from them.
func TestReferenceRatesOfTheCentralBank(t *testing.T) {
	b := Book{Home: "EUR", Quotes: []Quote{
		quote("EUR", "1.1252", "USD"), quote("EUR", "0.8477", "GBP"), quote("EUR", "1.7572", "AUD"),
		quote("EUR", "1.5658", "CAD"), quote("EUR", "163.36", "JPY"),
	}}
	for _, c := range []struct {
		amount, from, to string
		places           int
		want             string
	}{
		{"100", "USD", "AUD", 2, "156.17"},
		{"1", "GBP", "AUD", 7, "2.0729031"},
		{"1", "USD", "JPY", 6, "145.183079"},
		{"163.36", "JPY", "EUR", 2, "1.00"},
		{"1", "EUR", "CAD", 4, "1.5658"},
	} {
		if got := convert(t, b, c.amount, c.from, c.to, c.places); got != c.want {
			t.Errorf("%s %s = %s %s, want %s", c.amount, c.from, got, c.to, c.want)
		}
	}
}

func TestRoutes(t *testing.T) {
	usd, gbp, jpy := quote("EUR", "1.25", "USD"), quote("GBP", "1.2", "EUR"), quote("USD", "150", "JPY")
	gbpUSD, gbpJPY := quote("GBP", "1.5", "USD"), quote("JPY", "0.005", "GBP")
	for _, c := range []struct {
		name     string
		home     string
		quotes   []Quote
		from, to string
		want     string // of 100; empty for an error
		steps    []Step
	}{
		{"the same currency", "EUR", nil, "SEK", "SEK", "100", nil},
		{"with the quote", "EUR", []Quote{gbp, usd}, "EUR", "USD", "125", []Step{{usd, 1, false}}},
		{"against the quote", "EUR", []Quote{gbp, usd}, "USD", "EUR", "80", []Step{{usd, 1, true}}},
		{"directly rather than through home", "EUR", []Quote{gbp, usd, gbpUSD}, "GBP", "USD", "150", []Step{{gbpUSD, 2, false}}},
		{"through home", "EUR", []Quote{usd, gbp}, "GBP", "USD", "150", []Step{{gbp, 1, false}, {usd, 0, false}}},
		{"through home, back", "EUR", []Quote{usd, gbp}, "USD", "GBP", "66.66666666666666666667", []Step{{usd, 0, true}, {gbp, 1, true}}},
		{"through another than home", "EUR", []Quote{usd, jpy}, "EUR", "JPY", "18750", []Step{{usd, 0, false}, {jpy, 1, false}}},
		{"through the first in order", "CHF", []Quote{gbpJPY, gbp, usd, jpy}, "EUR", "JPY", "16666.66666666666666666667", []Step{{gbp, 1, true}, {gbpJPY, 0, true}}},
		{"through the first in another order", "CHF", []Quote{usd, jpy, gbpJPY, gbp}, "EUR", "JPY", "18750", []Step{{usd, 0, false}, {jpy, 1, false}}},
		{"home before the first in order", "USD", []Quote{gbpJPY, gbp, usd, jpy}, "EUR", "JPY", "18750", []Step{{usd, 2, false}, {jpy, 3, false}}},
		{"through two others", "CHF", []Quote{gbp, usd, jpy}, "GBP", "JPY", "", nil},
		{"no quotes", "EUR", nil, "EUR", "USD", "", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			r, err := Book{c.home, c.quotes}.Route(c.from, c.to)
			var none *NoRate
			if c.want == "" {
				if !errors.As(err, &none) || none.From != c.from || none.To != c.to || err.Error() == "" {
					t.Errorf("%v, want no rate between %s and %s", err, c.from, c.to)
				}
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			if got := r.Convert(exact.Int(100)).String(); got != c.want {
				t.Errorf("100 %s = %s %s, want %s", c.from, got, c.to, c.want)
			}
			if len(r) != len(c.steps) {
				t.Fatalf("%d steps, want %d", len(r), len(c.steps))
			}
			for i, s := range r {
				if s.Index != c.steps[i].Index || s.Against != c.steps[i].Against || s.Quote.One != c.steps[i].Quote.One {
					t.Errorf("step %d is %+v, want %+v", i, s, c.steps[i])
				}
			}
		})
	}
}

func TestAPairQuotedTwiceIsAFault(t *testing.T) {
	usd, again, back := quote("EUR", "1.25", "USD"), quote("EUR", "1.26", "USD"), quote("USD", "0.8", "EUR")
	jpy := quote("EUR", "163.36", "JPY")
	for _, c := range []struct {
		name         string
		quotes       []Quote
		from, to     string
		first, other string
	}{
		{"the same way", []Quote{usd, again}, "EUR", "USD", "EUR", "USD"},
		{"either way", []Quote{usd, back}, "USD", "EUR", "USD", "EUR"},
		{"on the way in", []Quote{usd, jpy, again}, "USD", "JPY", "USD", "EUR"},
		{"on the way out", []Quote{usd, jpy, again}, "JPY", "USD", "EUR", "USD"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Book{"EUR", c.quotes}.Route(c.from, c.to)
			var two *TwoRates
			if !errors.As(err, &two) || two.From != c.first || two.To != c.other || err.Error() == "" {
				t.Errorf("%v, want two rates between %s and %s", err, c.first, c.other)
			}
		})
	}
	if _, err := (Book{"EUR", []Quote{usd, again, jpy}}).Route("EUR", "JPY"); err != nil {
		t.Errorf("a pair quoted twice elsewhere is in the way: %v", err)
	}
}

// There and back again is the same amount, exactly, along every route.
func TestConvertingThereAndBackLosesNothing(t *testing.T) {
	all := []string{"EUR", "USD", "GBP", "JPY", "SEK"}
	rapid.Check(t, func(t *rapid.T) {
		b := Book{Home: rapid.SampledFrom(all).Draw(t, "home")}
		for i := range all {
			for j := range i {
				if rapid.Bool().Draw(t, "quoted") {
					rate := decimal.New(rapid.Int64Range(1, 999_999_999).Draw(t, "rate"), int32(-rapid.IntRange(0, 8).Draw(t, "places")))
					b.Quotes = append(b.Quotes, Quote{all[i], rate, all[j]})
				}
			}
		}
		from, to := rapid.SampledFrom(all).Draw(t, "from"), rapid.SampledFrom(all).Draw(t, "to")
		there, err := b.Route(from, to)
		back, errBack := b.Route(to, from)
		if (err == nil) != (errBack == nil) {
			t.Fatalf("%s to %s: %v, back: %v", from, to, err, errBack)
		}
		if err != nil {
			return
		}
		amount := exact.FromDecimal(anyDecimal(t))
		if got := back.Convert(there.Convert(amount)); !got.Equal(amount) {
			t.Fatalf("%s %s became %s", amount, from, got)
		}
		at := from
		for _, s := range there {
			ends := []string{s.Quote.One, s.Quote.In}
			if s.Against {
				ends[0], ends[1] = ends[1], ends[0]
			}
			if ends[0] != at {
				t.Fatalf("a step from %s while at %s", ends[0], at)
			}
			at = ends[1]
		}
		if at != to {
			t.Fatalf("the route ends at %s, not %s", at, to)
		}
	})
}
