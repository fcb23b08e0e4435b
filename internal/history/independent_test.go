package history

import (
	"context"
	"errors"
	"fmt"
	"math/big"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// The second making of a history: every day a whole comparison of a scenario whose quotes
// were written anew, in plain big.Rat, with ranks found by counting.

func num(text string) decimal.Decimal { return decimal.RequireFromString(text) }

// market is a made-up file: the day's rates as text, by currency.
type market struct {
	dates []scenario.Date // oldest first
	rate  []map[string]string
}

// marketCurrencies: rates of the dollar are powers of 2 and 5, so that a cross rate with
// it comes out even and can be typed.
var marketCurrencies = []string{"USD", "JPY", "AUD"}

func drawMarket(t *rapid.T) market {
	var m market
	date := scenario.Date{Year: 2024, Month: 2, Day: rapid.IntRange(20, 29).Draw(t, "first")}
	for range rapid.IntRange(1, 25).Draw(t, "days") {
		day := map[string]string{}
		for _, c := range marketCurrencies {
			if rapid.IntRange(0, 9).Draw(t, c+" missing") == 0 {
				continue
			}
			switch c {
			case "USD":
				day[c] = rapid.SampledFrom([]string{"0.8", "1.25", "1", "1.28", "1.6", "0.64"}).Draw(t, c)
			case "JPY":
				day[c] = num(fmt.Sprint(rapid.IntRange(9_000, 19_000).Draw(t, c))).Shift(-2).String()
			default:
				day[c] = num(fmt.Sprint(rapid.IntRange(14_000, 19_000).Draw(t, c))).Shift(-4).String()
			}
		}
		m.dates, m.rate = append(m.dates, date), append(m.rate, day)
		date = date.AddDays(rapid.IntRange(1, 40).Draw(t, "later"))
	}
	return m
}

// csv is the market as the bank would publish it.
func (m market) csv() string {
	var b strings.Builder
	b.WriteString("Date," + strings.Join(marketCurrencies, ",") + ",\n")
	for i := len(m.dates) - 1; i >= 0; i-- {
		b.WriteString(m.dates[i].String())
		for _, c := range marketCurrencies {
			if r, ok := m.rate[i][c]; ok {
				b.WriteString("," + r)
			} else {
				b.WriteString(",N/A")
			}
		}
		b.WriteString(",\n")
	}
	return b.String()
}

func (m market) file(t interface{ Fatal(...any) }) *rates.File {
	f, err := rates.Read([]byte(m.csv()))
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// drawScenario is the demo's year with other homes, currencies and quotes.
func drawScenario(t *rapid.T) scenario.Scenario {
	s := demo()
	s.Home = rapid.SampledFrom([]string{"EUR", "AUD", "KWD", "JPY"}).Draw(t, "home")
	s.Rates = nil
	quote := func(one, equals, in string) {
		s.Rates = append(s.Rates, scenario.Rate{One: one, Equals: num(equals), In: in})
	}
	switch s.Home {
	case "EUR":
		quote("USD", "0.8875", "EUR")
		quote("EUR", "163.36", "JPY")
	case "AUD": // the yen through the dollar, the dollar directly
		quote("USD", "1.5617", "AUD")
		quote("USD", "145", "JPY")
	case "KWD": // which the market does not have: what is quoted in it stays as typed
		quote("EUR", "0.345", "KWD")
		quote("USD", "0.8875", "EUR")
		quote("EUR", "163.36", "JPY")
	case "JPY":
		quote("USD", "145", "JPY")
		quote("EUR", "163.36", "JPY")
	}
	if rapid.Bool().Draw(t, "more quotes") {
		quote("GBP", "1.17", "CHF") // nobody uses it
	}
	for i := range s.Offers {
		o := &s.Offers[i]
		o.Currency = rapid.SampledFrom([]string{"EUR", "USD", "JPY"}).Draw(t, "currency")
		o.Import = rapid.SampledFrom([]scenario.Import{"", "none", "border", "prepaid"}).Draw(t, "import")
		o.Price = decimal.New(rapid.Int64Range(500, 20_000).Draw(t, "price"), -2)
		o.CardFeePercent = decimal.New(rapid.Int64Range(0, 400).Draw(t, "fee"), -2)
		if rapid.IntRange(0, 4).Draw(t, "faulty") == 0 {
			o.Developing = "nobody's"
		}
	}
	s.Baseline = s.Offers[rapid.IntRange(0, len(s.Offers)-1).Draw(t, "baseline")].Name
	return s
}

func demo() scenario.Scenario {
	return scenario.Demo().Scenarios[0]
}

// onDay is the scenario with its quotes written anew for a day; ok is false where the day
// lacks one. A quote in euros is written the other way round, where it comes out even.
func (m market) onDay(s scenario.Scenario, moved map[int]bool, day map[string]string) (scenario.Scenario, bool) {
	s = s.Clone()
	for i := range s.Rates {
		q := &s.Rates[i]
		if !moved[i] {
			continue
		}
		one, hasOne := day[q.One]
		in, hasIn := day[q.In]
		switch {
		case q.One == "EUR" && hasIn:
			q.Equals = num(in)
		case q.In == "EUR" && hasOne:
			q.One, q.In, q.Equals = q.In, q.One, num(one)
		case hasOne && hasIn:
			q.Equals = num(in).DivRound(num(one), 12) // one is the dollar: it comes out even
		default:
			return s, false
		}
	}
	return s, true
}

func TestAgainstAComparisonOfEachDay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, s := drawMarket(t), drawScenario(t)
		f := m.file(t)
		span := drawSpan(t, m)
		h, err := Of(context.Background(), s, nil, f, span, nil)

		// Which quotes move, told from the comparison's routes.
		plain := compare.Compare(s, nil, scenario.Date{})
		inSpan := m.within(span)
		known := map[string]bool{"EUR": true}
		for _, i := range inSpan {
			for c := range m.rate[i] {
				known[c] = true
			}
		}
		moved, asTyped := map[int]bool{}, map[int]bool{}
		for i := range plain.Offers {
			for _, step := range plain.Offers[i].Order.Route {
				q := s.Rates[step.Index]
				moved[step.Index] = known[q.One] && known[q.In]
				asTyped[step.Index] = !moved[step.Index]
			}
		}
		var days []compare.Comparison
		var dates []scenario.Date
		for _, i := range inSpan {
			if on, ok := m.onDay(s, moved, m.rate[i]); ok {
				days, dates = append(days, compare.Compare(on, nil, scenario.Date{})), append(dates, m.dates[i])
			}
		}
		var empty *Empty
		if len(days) == 0 {
			if !errors.As(err, &empty) || empty.Days != len(inSpan) {
				t.Fatalf("no day, yet %v", err)
			}
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		if len(h.Dates) != len(days) || h.Skipped != len(inSpan)-len(days) || h.From != dates[0] || h.To != dates[len(dates)-1] {
			t.Fatalf("%d days, %d skipped, %s to %s; want %d of %d, %s to %s",
				len(h.Dates), h.Skipped, h.From, h.To, len(days), len(inSpan), dates[0], dates[len(dates)-1])
		}
		var typed []scenario.Input
		for i, q := range s.Rates {
			if asTyped[i] {
				typed = append(typed, scenario.RateInput(q))
			}
		}
		if fmt.Sprint(typed) != fmt.Sprint(h.AsTyped()) {
			t.Fatalf("as typed: %v, want %v", h.AsTyped(), typed)
		}
		if len(h.Offers)+len(h.LeftOut) != len(s.Offers) {
			t.Fatalf("%d offers and %d left out", len(h.Offers), len(h.LeftOut))
		}
		for i := range h.Offers {
			hold(t, &h.Offers[i], s.Baseline, &plain, days, dates)
		}
	})
}

// hold holds one offer against its days.
func hold(t *rapid.T, o *Offer, baseline string, plain *compare.Comparison, days []compare.Comparison, dates []scenario.Date) {
	total := func(c *compare.Comparison, name string) *big.Rat { return c.Find(name).PerRoll.Total.Rat() }
	same := func(what string, got interface{ Rat() *big.Rat }, want *big.Rat) {
		if got.Rat().Cmp(want) != 0 {
			t.Fatalf("%s: %s is %s, want %s", o.Name, what, got.Rat().FloatString(8), want.FloatString(8))
		}
	}
	same("today", o.Today, total(plain, o.Name))
	values := make([]*big.Rat, len(days))
	low, high, cheaper := 0, 0, 0
	for d := range days {
		values[d] = total(&days[d], o.Name)
		same("a day", o.Total(d), values[d])
		if values[d].Cmp(values[low]) < 0 {
			low = d
		}
		if values[d].Cmp(values[high]) > 0 {
			high = d
		}
		if days[d].Baseline() != nil && values[d].Cmp(total(&days[d], baseline)) < 0 {
			cheaper++
		}
	}
	last := len(days) - 1
	for _, p := range []struct {
		what string
		got  Point
		want int
	}{{"first", o.First, 0}, {"last", o.Last, last}, {"low", o.Low, low}, {"high", o.High, high}} {
		same(p.what, p.got.Total, values[p.want])
		if p.got.Date != dates[p.want] {
			t.Fatalf("%s: %s on %s, want %s", o.Name, p.what, p.got.Date, dates[p.want])
		}
	}
	same("10 %", o.P10, byCounting(values, 10))
	same("50 %", o.P50, byCounting(values, 50))
	same("90 %", o.P90, byCounting(values, 90))
	switch {
	case o.Name == baseline || plain.Baseline() == nil:
		if o.DaysCheaper != nil {
			t.Fatalf("%s is cheaper than nothing on %d days", o.Name, *o.DaysCheaper)
		}
	case *o.DaysCheaper != cheaper:
		t.Fatalf("%s is cheaper on %d days, want %d", o.Name, *o.DaysCheaper, cheaper)
	}
}

// byCounting is the least value that at least so many percent of all are not above.
func byCounting(values []*big.Rat, percent int) (found *big.Rat) {
	for _, v := range values {
		n := 0
		for _, w := range values {
			if w.Cmp(v) <= 0 {
				n++
			}
		}
		if n*100 >= percent*len(values) && (found == nil || v.Cmp(found) < 0) {
			found = v
		}
	}
	return found
}

func drawSpan(t *rapid.T, m market) Span {
	pick := func(name string) scenario.Date {
		if rapid.Bool().Draw(t, name+" said") {
			return rapid.SampledFrom(m.dates).Draw(t, name).AddDays(rapid.IntRange(-2, 2).Draw(t, "off"))
		}
		return scenario.Date{}
	}
	if rapid.IntRange(0, 2).Draw(t, "span") == 0 {
		return Span{Years: rapid.IntRange(1, 3).Draw(t, "years")}
	}
	return Span{From: pick("from"), To: pick("to")}
}

// within are the days of the market in a span, told by their text.
func (m market) within(s Span) (list []int) {
	from, to := s.From.String(), s.To.String()
	if s.Years > 0 {
		newest := m.dates[len(m.dates)-1]
		newest.Year -= s.Years
		from = fmt.Sprintf("%04d-%02d-%02d", newest.Year, newest.Month, newest.Day)
		if strings.HasSuffix(from, "-02-29") && newest.Year%4 != 0 {
			from = strings.Replace(from, "-02-29", "-02-28", 1)
		}
	}
	for i, d := range m.dates {
		if d.String() >= from && (to == "" || d.String() <= to) {
			list = append(list, i)
		}
	}
	return list
}
