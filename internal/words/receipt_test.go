package words

import (
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// demo is the built-in scenario, changed and computed.
func demo(change func(s *scenario.Scenario)) *compare.Comparison {
	s := scenario.Demo().Scenarios[0]
	if change != nil {
		change(&s)
	}
	c := compare.Compare(s, scenario.Check(s), scenario.Date{})
	return &c
}

// The places of the demo's offers.
const (
	shopRoll = iota
	pack
	reel
)

// lines are rows as "label | seller | home | how", sums marked with an asterisk.
func lines(rows []ReceiptRow) string {
	var b strings.Builder
	for _, r := range rows {
		line := r.Label + " | " + r.Seller + " | " + r.Home + " | " + r.How
		if r.Strong {
			line = "* " + line
		}
		b.WriteString(spaces(line) + "\n")
	}
	return b.String()
}

func TestReceipt(t *testing.T) {
	for _, test := range []struct {
		name   string
		change func(s *scenario.Scenario)
		offer  int
		want   string
	}{
		{"a reel from overseas", nil, reel, `
Film | 112.10 | 99.49 | 1 × 118.00 less 5 %
Shipping | 34.50 | 30.62 | 
* Charged to the card | 146.60 | 130.11 | 1 USD = 0.8875 EUR, 20 Nov 2026
Card fee |  | 2.28 | 1.75 % of 130.11
Duty |  | 0.00 | film 99.49 is within the free 150.00
Import tax |  | 29.93 | 23 % of 130.11
Handling at the border |  | 6.50 | 
* Landed, one reel |  | 168.82 | 
18 rolls, 628.56 exposures good |  | 9.67 a roll | 168.82 ÷ 17.46 rolls of 36
Cassettes, tape |  | 0.40 | 1.20 ÷ 5 loads + 0.15 each, 18 ÷ 17.46
Equipment |  | 0.26 | Daylight loader, Changing bag, Tank and measures
Developing |  | 3.97 | 3.85 each, 18 ÷ 17.46
* Cost per roll |  | 14.30 | 
`},
		{"two packs, against a quote", nil, pack, `
Film | 16,900 | 103.45 | 2 × 8,450
Shipping | 2,700 | 16.53 | 2,400 and 1 × 300
* Charged to the card | 19,600 | 119.98 | 1 EUR = 163.36 JPY, 20 Nov 2026
Card fee |  | 2.10 | 1.75 % of 119.98
Duty |  | 0.00 | film 103.45 is within the free 150.00
Import tax |  | 27.60 | 23 % of 119.98
Handling at the border |  | 6.50 | 
* Landed, 2 packs |  | 156.18 | 
10 rolls, 360 exposures good |  | 15.62 a roll | 156.18 ÷ 10 rolls of 36
Developing |  | 9.90 | 9.90 each
* Cost per roll |  | 25.52 | 
`},
		{"a roll from the shop", nil, shopRoll, `
Film |  | 14.80 | 1 × 14.80
* Landed, one roll |  | 14.80 | 
1 roll, 36 exposures good |  | 14.80 a roll | 14.80 ÷ 1 roll of 36
Developing |  | 9.90 | 9.90 each
* Cost per roll |  | 24.70 | 
`},
		{"less is shot in time than is bought", func(s *scenario.Scenario) {
			s.Offers[reel].Units, s.Offers[reel].KeepsMonths = 6, scenario.Maybe{Decimal: dec("18"), Set: true}
		}, reel, `
Film | 672.60 | 596.94 | 6 × 118.00 less 5 %
Shipping | 64.50 | 57.24 | 34.50 and 5 × 6.00
* Charged to the card | 737.10 | 654.18 | 1 USD = 0.8875 EUR, 20 Nov 2026
Card fee |  | 11.45 | 1.75 % of 654.18
Duty |  | 27.48 | 4.2 % of 654.18
Import tax |  | 156.78 | 23 % of 681.66
Handling at the border |  | 6.50 | 
* Landed, 6 reels |  | 856.39 | 
108 rolls, 3,771.36 exposures good |  | 13.28 a roll | 856.39 ÷ 64.5 rolls of 36 shot in time, 62 % of 104.76
Cassettes, tape |  | 0.40 | 1.20 ÷ 5 loads + 0.15 each, 18 ÷ 17.46
Equipment |  | 0.26 | Daylight loader, Changing bag, Tank and measures
Developing |  | 3.97 | 3.85 each, 18 ÷ 17.46
* Cost per roll |  | 17.91 | 
`},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := lines(Receipt(demo(test.change), test.offer, "en"))
			if want := strings.TrimPrefix(test.want, "\n"); got != want {
				t.Errorf("got:\n%s\nwant:\n%s", got, want)
			}
		})
	}
}

func TestReceiptColumns(t *testing.T) {
	c := demo(nil)
	for i, want := range []string{"", "JPY", "USD"} {
		if seller, home := ReceiptColumns(c, i); seller != want || home != "EUR" {
			t.Errorf("offer %d: %q and %q, want %q and EUR", i, seller, home, want)
		}
	}
}

func TestAnOfferLeftOutHasNoReceipt(t *testing.T) {
	c := demo(func(s *scenario.Scenario) { s.Rates = s.Rates[1:] })
	if rows := Receipt(c, reel, "en"); rows != nil {
		t.Errorf("got %v", rows)
	}
}

func TestFormula(t *testing.T) {
	s := &scenario.Scenario{Home: "EUR", Rates: []scenario.Rate{
		{One: "CAD", Equals: dec("0.7150"), In: "USD", Date: scenario.Date{Year: 2026, Month: 11, Day: 19}},
		{One: "EUR", Equals: dec("1.1268"), In: "USD", Date: scenario.Date{Year: 2026, Month: 11, Day: 20}},
		{One: "EUR", Equals: dec("1.6"), In: "CAD"},
	}}
	step := func(i int, against bool) money.Step {
		r := s.Rates[i]
		return money.Step{Quote: money.Quote{One: r.One, Equals: r.Equals, In: r.In}, Index: i, Against: against}
	}
	line := func(op compare.FormulaOp, percent, of, limit string, units int) compare.Line {
		return compare.Line{How: compare.Formula{Op: op, Percent: num(percent), Of: num(of), Limit: num(limit), Units: units}}
	}
	billed := func(l compare.Line) compare.Line { l.Billed = true; return l }
	for _, test := range []struct {
		name  string
		line  compare.Line
		route money.Route
		want  string
	}{
		{"nothing to explain", line(compare.OpNone, "0", "0", "0", 0), nil, ""},
		{"a price", billed(line(compare.OpPrice, "0", "14.8", "0", 3)), nil, "3 × 14.80"},
		{"a price less a discount", billed(line(compare.OpPrice, "7.5", "1400", "0", 1)), nil, "1 × 1,400.00 less 7.5 %"},
		{"shipping of one unit", billed(line(compare.OpShipping, "0", "34.5", "6", 1)), nil, ""},
		{"shipping of four", billed(line(compare.OpShipping, "0", "34.5", "6", 4)), nil, "34.50 and 3 × 6.00"},
		{"shipping of four, as one parcel", billed(line(compare.OpShipping, "0", "34.5", "0", 4)), nil, ""},
		{"free shipping", billed(line(compare.OpFree, "0", "160", "150", 0)), nil, "film 160.00 reaches the 150.00 it is free from"},
		{"a percent of the home amount", line(compare.OpPercent, "4.25", "130.11", "0", 0), nil, "4.25 % of 130.11"},
		{"within a limit", line(compare.OpWithin, "0", "99.49", "150", 0), nil, "film 99.49 is within the free 150.00"},
		{"no card fee", line(compare.OpSameCurrency, "0", "0", "0", 0), nil, "none, it is charged in EUR"},
		{"import not decided", line(compare.OpUndecided, "0", "0", "0", 0), nil, "not decided, so not counted"},
		{"nothing due", line(compare.OpNothingDue, "0", "0", "0", 0), nil, "nothing is due at the border"},
		{"a quote without a date", line(compare.OpConverted, "0", "0", "0", 0), money.Route{step(2, true)}, "1 EUR = 1.6 CAD"},
		{"against a quote", line(compare.OpConverted, "0", "0", "0", 0), money.Route{step(1, true)}, "1 EUR = 1.1268 USD, 20 Nov 2026"},
		{"through a third currency", line(compare.OpConverted, "0", "0", "0", 0), money.Route{step(0, false), step(1, true)},
			"1 CAD = 0.7150 USD, 19 Nov 2026; 1 EUR = 1.1268 USD, 20 Nov 2026"},
	} {
		t.Run(test.name, func(t *testing.T) {
			o := &compare.Offer{Order: compare.Order{Route: test.route}}
			same(t, "formula", Formula(test.line, o, scenario.Offer{Currency: "CAD"}, s, "en"), test.want)
		})
	}
	s.Rates[0].Date.Day = 20
	o := &compare.Offer{Order: compare.Order{Route: money.Route{step(0, false), step(1, true)}}}
	same(t, "one date for both", Formula(line(compare.OpConverted, "0", "0", "0", 0), o, scenario.Offer{Currency: "CAD"}, s, "en"),
		"1 CAD = 0.7150 USD; 1 EUR = 1.1268 USD, 20 Nov 2026")
}

func TestUnits(t *testing.T) {
	roll := scenario.Offer{Kind: scenario.KindBoxed, Boxed: &scenario.Boxed{RollsPerPack: 1}}
	five := scenario.Offer{Kind: scenario.KindBoxed, Boxed: &scenario.Boxed{RollsPerPack: 5}}
	long := scenario.Offer{Kind: scenario.KindReel}
	for _, test := range []struct {
		n     int
		offer scenario.Offer
		want  string
	}{{1, long, "one reel"}, {2, long, "2 reels"}, {1, five, "one pack"}, {3, five, "3 packs"}, {1, roll, "one roll"}, {4, roll, "4 rolls"}} {
		same(t, "units", Units(test.n, &test.offer), test.want)
	}
}

// The rows of the receipt that are not sums add up to those that are, in each column.
func TestReceiptAddsUp(t *testing.T) {
	c := demo(func(s *scenario.Scenario) {
		s.Offers[reel].Import, s.Offers[reel].SalesTaxPercent = scenario.ImportPrepaid, dec("7.25")
		s.Border.DutyFreeUpTo = dec("50")
	})
	read := func(text string) exact.Fraction {
		if text == "" {
			return exact.Fraction{}
		}
		return num(text)
	}
	var home, seller exact.Fraction
	for _, r := range Receipt(c, reel, "en") {
		switch {
		case r.Label == "Charged to the card":
			if !read(r.Seller).Equal(seller) || !read(r.Home).Equal(home) {
				t.Errorf("charged %s and %s, above it stand %s and %s", r.Seller, r.Home, seller, home)
			}
		case strings.HasPrefix(r.Label, "Landed"):
			if !read(r.Home).Equal(home) {
				t.Errorf("landed %s, above it stand %s", r.Home, home)
			}
			return
		default:
			home, seller = home.Add(read(r.Home)), seller.Add(read(r.Seller))
		}
	}
	t.Error("no landed row")
}
