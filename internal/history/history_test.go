package history

import (
	"context"
	"errors"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

func day(text string) scenario.Date {
	d, err := scenario.ParseDate(text)
	if err != nil {
		panic(err)
	}
	return d
}

func read(t testing.TB, csv string) *rates.File {
	t.Helper()
	f, err := rates.Read([]byte(csv))
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func of(t testing.TB, s scenario.Scenario, f *rates.File, span Span) *History {
	t.Helper()
	h, err := Of(context.Background(), s, nil, f, span, nil)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// The European Central Bank's rates of 9 May 2025: 1 EUR = 1.1252 USD = 163.36 JPY.
func TestAHistoryOfOneDayIsTheComparisonOfThatDay(t *testing.T) {
	s := demo()
	f := read(t, "Date,USD,JPY,\n2025-05-09,1.1252,163.36,\n")
	h := of(t, s, f, Span{})
	s.Rates = []scenario.Rate{{One: "EUR", Equals: num("1.1252"), In: "USD"}, {One: "EUR", Equals: num("163.36"), In: "JPY"}}
	c := compare.Compare(s, nil, scenario.Date{})
	for i := range h.Offers {
		o := &h.Offers[i]
		want := c.Find(o.Name).PerRoll.Total
		for _, p := range []Point{o.First, o.Last, o.Low, o.High} {
			if !p.Total.Equal(want) || p.Date != day("2025-05-09") {
				t.Errorf("%s: %s on %s, want %s", o.Name, p.Total, p.Date, want)
			}
		}
		if !o.P10.Equal(want) || !o.P50.Equal(want) || !o.P90.Equal(want) {
			t.Errorf("%s: the ranks of one day are not its total", o.Name)
		}
	}
}

// Seen from Australia: the same day's cross rate, 1 USD = 1.7572/1.1252 AUD, which no
// decimal holds. By hand: a reel of 118.00 USD, nothing else billed, is 184.28 AUD:
// 118 × 1.7572/1.1252 = 184.2780…
func TestAHomeThatIsNotTheEuro(t *testing.T) {
	s := demo()
	s.Home = "AUD"
	s.Rates = []scenario.Rate{{One: "USD", Equals: num("1.5"), In: "AUD"}}
	reel := &s.Offers[2]
	s.Offers, s.Baseline = []scenario.Offer{*reel}, reel.Name
	o := &s.Offers[0]
	o.DiscountPercent, o.Shipping, o.ShippingEachExtra, o.CardFeePercent, o.Import = num("0"), num("0"), num("0"), num("0"), scenario.ImportNone
	h := of(t, s, read(t, "Date,USD,AUD,\n2025-05-09,1.1252,1.7572,\n"), Span{})
	if got := h.Offers[0].landed[0].String(); got != "184.28" {
		t.Errorf("an order costs AUD %s", got)
	}
	if h.Offers[0].DaysCheaper != nil || len(h.AsTyped()) != 0 {
		t.Errorf("%+v", h)
	}
}

func TestADayThatNobodysQuoteUsesSkipsNothing(t *testing.T) {
	s := demo()
	f := read(t, "Date,USD,JPY,CAD,\n2025-05-09,1.1252,163.36,N/A,\n2025-05-08,1.12,163,1.5,\n2025-05-07,N/A,163,1.5,\n")
	s.Rates = append(s.Rates, scenario.Rate{One: "CAD", Equals: num("0.6"), In: "EUR"})
	h := of(t, s, f, Span{})
	if len(h.Dates) != 2 || h.Skipped != 1 || h.From != day("2025-05-08") {
		t.Errorf("%d days, %d skipped, from %s", len(h.Dates), h.Skipped, h.From)
	}
	for i := range s.Offers {
		s.Offers[i].Currency = "EUR"
	}
	if h := of(t, s, f, Span{}); len(h.Dates) != 3 || h.Skipped != 0 || len(h.Quotes) != 0 {
		t.Errorf("at home: %d days, %d skipped", len(h.Dates), h.Skipped)
	}
}

// A currency is in the file if a row of the span has a value for it, not of the whole file.
func TestWhatMovesGoesByTheSpan(t *testing.T) {
	f := read(t, "Date,USD,JPY,\n2025-05-09,1.1,N/A,\n2025-05-08,1.2,N/A,\n2025-05-07,1.2,160,\n")
	h := of(t, demo(), f, Span{From: day("2025-05-08")})
	if got := fmt.Sprint(h.AsTyped()); got != "[rate:EUR/JPY]" || len(h.Dates) != 2 {
		t.Errorf("as typed: %s over %d days", got, len(h.Dates))
	}
	h = of(t, demo(), f, Span{})
	if len(h.AsTyped()) != 0 || len(h.Dates) != 1 || h.Skipped != 2 {
		t.Errorf("as typed: %v over %d days, %d skipped", h.AsTyped(), len(h.Dates), h.Skipped)
	}
}

func TestSpans(t *testing.T) {
	var b strings.Builder
	b.WriteString("Date,USD,JPY,\n")
	for d := day("2024-02-29"); d.Compare(day("2020-02-26")) >= 0; d = d.AddDays(-1) {
		fmt.Fprintf(&b, "%s,1.1,160,\n", d)
	}
	f := read(t, b.String())
	for _, c := range []struct {
		span     Span
		from, to string
	}{
		{Span{}, "2020-02-26", "2024-02-29"},
		{Span{Years: 1}, "2023-02-28", "2024-02-29"},
		{Span{Years: 4}, "2020-02-29", "2024-02-29"},
		{Span{Years: 90}, "2020-02-26", "2024-02-29"},
		{Span{From: day("2021-03-04")}, "2021-03-04", "2024-02-29"},
		{Span{To: day("2021-03-04")}, "2020-02-26", "2021-03-04"},
		{Span{From: day("2021-03-04"), To: day("2021-03-04")}, "2021-03-04", "2021-03-04"},
		{Span{From: day("1999-01-01"), To: day("2030-01-01")}, "2020-02-26", "2024-02-29"},
	} {
		if h := of(t, demo(), f, c.span); h.From != day(c.from) || h.To != day(c.to) {
			t.Errorf("%+v is from %s to %s", c.span, h.From, h.To)
		}
	}
	for _, span := range []Span{{From: day("2024-03-01")}, {To: day("2020-02-25")}, {From: day("2023-01-02"), To: day("2023-01-01")}} {
		_, err := Of(context.Background(), demo(), nil, f, span, nil)
		var empty *Empty
		if !errors.As(err, &empty) || empty.Days != 0 || len(empty.Missing) != 0 {
			t.Errorf("%+v: %v", span, err)
		}
	}
}

func TestASpanWithoutAUsableDaySaysWhatIsMissing(t *testing.T) {
	f := read(t, "Date,USD,JPY,\n2025-05-09,1.1,N/A,\n2025-05-08,N/A,160,\n")
	_, err := Of(context.Background(), demo(), nil, f, Span{}, nil)
	var empty *Empty
	if !errors.As(err, &empty) || empty.Days != 2 || fmt.Sprint(empty.Missing) != "[USD/EUR EUR/JPY]" {
		t.Errorf("%+v", empty)
	}
}

func TestAnOfferWithAFaultIsNamed(t *testing.T) {
	s := demo()
	s.Offers[1].Currency = "CAD"
	h := of(t, s, read(t, "Date,USD,JPY,\n2025-05-09,1.1,N/A,\n"), Span{})
	if len(h.Offers) != 2 || len(h.LeftOut) != 1 || h.LeftOut[0].Fault.Code != compare.FaultNoRate {
		t.Errorf("%d offers, left out %+v", len(h.Offers), h.LeftOut)
	}
	s.Baseline = s.Offers[1].Name
	h = of(t, s, read(t, "Date,USD,JPY,\n2025-05-09,1.1,N/A,\n"), Span{})
	if h.Offers[0].DaysCheaper != nil {
		t.Error("cheaper than an offer that has a fault")
	}
}

func TestTheRangeOfAQuote(t *testing.T) {
	var b strings.Builder
	b.WriteString("Date,USD,\n")
	for i := range 10 {
		fmt.Fprintf(&b, "2025-05-%02d,1.%d,\n", 10+i, (i*7)%10) // 1.0 to 1.9, each once
	}
	s := demo()
	s.Rates = []scenario.Rate{{One: "EUR", Equals: num("1.1"), In: "USD"}, {One: "EUR", Equals: num("160"), In: "JPY"}}
	h := of(t, s, read(t, b.String()), Span{})
	low, high, ok := h.Range(0)
	if !ok || low.String() != "1" || high.String() != "1.8" {
		t.Errorf("from %s to %s", low, high)
	}
	if _, _, ok := h.Range(1); ok {
		t.Error("a quote that stays as typed has a range")
	}
	if got := h.Rate(0, 1).String() + " " + h.Rate(1, 1).String(); got != "1.7 160" {
		t.Errorf("on the second day %s", got)
	}
}

func TestItStopsWhenNobodyWaits(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	f := read(t, years(2))
	told := 0
	_, err := Of(ctx, demo(), nil, f, Span{}, func(done, all int) { told++; cancel() })
	if !errors.Is(err, context.Canceled) || told == 0 || told > 8 {
		t.Errorf("%v after %d tellings", err, told)
	}
	last := 0
	h, err := Of(context.Background(), demo(), nil, f, Span{}, func(done, all int) {
		if done <= last || all != f.Len() {
			t.Errorf("told %d of %d after %d", done, all, last)
		}
		last = done
	})
	if err != nil || last != len(h.Dates) {
		t.Errorf("%v; told %d of %d", err, last, len(h.Dates))
	}
}

// years is a made-up file of so many years, every day a rate that wanders.
func years(n int) string {
	r := rand.New(rand.NewPCG(1, 2))
	usd, jpy, aud := 1.12, 160.0, 1.7
	var rows []string
	for d := day("2000-01-03"); d.Year < 2000+n; d = d.AddDays(1) {
		usd, jpy, aud = usd*(0.995+r.Float64()/100), jpy*(0.995+r.Float64()/100), aud*(0.995+r.Float64()/100)
		if weekday := day("2000-01-03").DaysUntil(d) % 7; weekday < 5 {
			rows = append(rows, fmt.Sprintf("%s,%.4f,%.2f,%.4f,", d, usd, jpy, aud))
		}
	}
	slices.Reverse(rows)
	return "Date,USD,JPY,AUD,\n" + strings.Join(rows, "\n")
}

// six is the demo with six ways to buy, in three currencies.
func six() scenario.Scenario {
	s := demo()
	for i, name := range []string{"four", "five", "six"} {
		o := scenario.CopyOffer(&s, i)
		o.Name, o.SalesTaxPercent = name, num("7.25")
		s.Offers = append(s.Offers, o)
	}
	s.Offers[3].Currency, s.Offers[3].Import, s.Offers[3].CardFeePercent = "AUD", scenario.ImportBorder, num("1.5")
	s.Rates = append(s.Rates, scenario.Rate{One: "AUD", Equals: num("0.57"), In: "EUR"})
	return s
}

func BenchmarkHistory25Years(b *testing.B) {
	f, s := read(b, years(25)), six()
	for b.Loop() {
		if h := of(b, s, f, Span{}); len(h.Offers) != 6 || len(h.Dates) < 6_500 {
			b.Fatalf("%d offers, %d days", len(h.Offers), len(h.Dates))
		}
	}
}
