package rates

import (
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

func of(text string) exact.Fraction { return exact.FromDecimal(decimal.RequireFromString(text)) }

// Council Regulation (EC) No 1103/97, article 4 (1): conversion rates have six significant
// figures; article 5: an exact half goes up. The irrevocable rates of 1999 have six.
func TestSixFigures(t *testing.T) {
	for in, want := range map[string]string{
		"1.95583": "1.95583", "6.559571": "6.55957", "1936.274": "1936.27", "0.7875645": "0.787565", "239.640": "239.64",
		"24.78455": "24.7846", "24.78445": "24.7845", // a half goes up, also where half to even would not
		"1.000005": "1.00001", "999999.5": "1000000", "1234567": "1234570", "0.0000123456789": "0.0000123457", "0.00000000123456": "0.000000001235", "999999.4": "999999",
	} {
		if got, ok := SixFigures(of(in)); !ok || got.String() != want {
			t.Errorf("%s to six figures is %s, want %s", in, got, want)
		}
	}
	for _, in := range []string{"0", "-1", "1000000000000", "0.0000000000004", "999999999999.6"} {
		if got, ok := SixFigures(of(in)); ok {
			t.Errorf("%s to six figures is %s: no scenario could hold it", in, got)
		}
	}
}

// By hand: a shop asked 118.00 USD, the card took 107.50 EUR on 9 May 2025, when the bank
// said 1 EUR = 1.1252 USD. 107.50/118 = 0.9110169…; × 1.1252 = 1.02507627…
func TestAStatementIsWorkedOut(t *testing.T) {
	f := mustRead(t, string(shared(t, "history.csv")))
	s := Statement{Asked: of("118.00"), Currency: "USD", Took: of("107.50"), Card: "EUR", Date: may}
	w, ok := s.Work(f)
	if !ok || w.Alone.Quote.Equals.String() != "0.911017" || w.Alone.Quote.Source != "from a statement" || w.Alone.Quote.Date != may {
		t.Fatalf("%+v", w)
	}
	if !w.Alone.CardFeePercent.IsZero() {
		t.Error("the fee is in the quote and beside it")
	}
	r := w.Reference
	if r == nil || r.Day != may || r.Markup.Text(6) != "2.507627" {
		t.Fatalf("%+v", r)
	}
	if !r.Rate.Equal(of("1").Quo(of("1.1252"))) {
		t.Errorf("the bank's rate is %s", r.Rate)
	}
	if a := r.Apart; a == nil || a.Quote.Equals.String() != "0.888731" || a.CardFeePercent.String() != "2.5076" || a.Quote.Source != SourceBank {
		t.Errorf("apart: %+v", a)
	}
}

func TestAStatementOfASunday(t *testing.T) {
	f := mustRead(t, string(shared(t, "history.csv")))
	s := Statement{Asked: of("100"), Currency: "USD", Took: of("80"), Card: "GBP", Date: may.AddDays(2)}
	w, _ := s.Work(f)
	if w.Reference == nil || w.Reference.Day != may || w.Alone.Quote.Date != may.AddDays(2) {
		t.Errorf("%+v", w.Reference)
	}
	s.Date = may.AddDays(8)
	if w, ok := s.Work(f); !ok || w.Reference != nil {
		t.Errorf("a rate of more than a week before was taken: %+v", w.Reference)
	}
	if w, ok := s.Work(nil); !ok || w.Reference != nil {
		t.Error("without a file there is a reference")
	}
}

func TestACardThatTookLess(t *testing.T) {
	f := mustRead(t, string(shared(t, "history.csv")))
	w, ok := Statement{Asked: of("112.52"), Currency: "USD", Took: of("99"), Card: "EUR", Date: may}.Work(f)
	if !ok || w.Reference.Markup.String() != "-1" || w.Reference.Apart != nil {
		t.Errorf("%+v", w.Reference)
	}
	w, _ = Statement{Asked: of("112.52"), Currency: "USD", Took: of("100"), Card: "EUR", Date: may}.Work(f)
	if !w.Reference.Markup.IsZero() || w.Reference.Apart == nil || !w.Reference.Apart.CardFeePercent.IsZero() {
		t.Errorf("nothing added: %+v", w.Reference)
	}
}

func TestAStatementThatSaysNothing(t *testing.T) {
	for _, s := range []Statement{
		{Asked: of("0"), Currency: "USD", Took: of("1"), Card: "EUR"},
		{Asked: of("1"), Currency: "USD", Took: of("0"), Card: "EUR"},
		{Asked: of("1"), Currency: "EUR", Took: of("1"), Card: "EUR"},
		{Asked: of("999999999999"), Currency: "USD", Took: of("0.01"), Card: "EUR"},
	} {
		if w, ok := s.Work(nil); ok {
			t.Errorf("%+v was worked out: %+v", s, w)
		}
	}
}

func TestADaysRatesAreTaken(t *testing.T) {
	day := mustRead(t, string(shared(t, "day.xml"))).Newest()
	typed := decimal.RequireFromString("0.5")
	s := scenario.Scenario{Rates: []scenario.Rate{
		{One: "USD", Equals: typed, In: "EUR"}, {One: "EUR", Equals: typed, In: "AUD", Source: "seen"},
		{One: "GBP", Equals: typed, In: "AUD"}, {One: "KWD", Equals: typed, In: "EUR", Source: "kept"},
	}}
	taken, places := day.Take(s)
	for i, want := range []string{"0.888731", "1.7572", "2.0729", "0.5"} {
		if got := taken.Rates[i].Equals.String(); got != want {
			t.Errorf("quote %d is %s, want %s", i, got, want)
		}
	}
	if len(places) != 3 || taken.Rates[1].Source != SourceBank || taken.Rates[1].Date != may || taken.Rates[3].Source != "kept" {
		t.Errorf("%v: %+v", places, taken.Rates)
	}
	if !s.Rates[0].Equals.Equal(typed) {
		t.Error("the scenario itself was changed")
	}
	if q, ok := day.Quote("EUR", "USD"); !ok || q.Equals.String() != "1.1252" {
		t.Errorf("%+v", q)
	}
	if _, ok := day.Quote("EUR", "KWD"); ok {
		t.Error("a quote of a currency the day does not have")
	}
}

// A quote turned round twice is what it was, whatever was typed: to six figures, as the
// bank has its rates, it always can be.
func TestTurningAQuoteRoundTwiceChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		digits := rapid.Int64Range(1, 999_999).Draw(t, "digits")
		places := rapid.Int32Range(2, 8).Draw(t, "places")
		q := scenario.Rate{One: "USD", Equals: decimal.New(digits, -places), In: "EUR", Source: "a page", Date: may}
		turned, ok := TurnRound(q)
		if !ok {
			t.Fatalf("%s cannot be turned round", q.Equals)
		}
		product := exact.FromDecimal(q.Equals).Mul(exact.FromDecimal(turned.Equals)).Sub(exact.Int(1)).Abs()
		if turned.One != "EUR" || turned.In != "USD" || exact.Ratio(1, 100_000).Less(product) {
			t.Fatalf("%s turned round is %s %s", q.Equals, turned.Equals, turned.In)
		}
		back, ok := TurnRound(turned)
		if !ok || !back.Equals.Equal(q.Equals) || back.One != "USD" || back.Source != q.Source || back.Date != q.Date {
			t.Fatalf("%s became %s", q.Equals, back.Equals)
		}
	})
}

func TestNoQuoteIsTurnedRoundToAnother(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := scenario.Rate{Equals: decimal.New(rapid.Int64Range(-5, 999_999_999_999).Draw(t, "digits"), -rapid.Int32Range(0, 12).Draw(t, "places"))}
		turned, ok := TurnRound(q)
		if !ok {
			return
		}
		if back, ok := TurnRound(turned); !ok || !back.Equals.Equal(q.Equals) {
			t.Fatalf("%s became %s", q.Equals, back.Equals)
		}
	})
}
