package words

import (
	"context"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Every number and span that the headline, the line under it and the sentences on what
// changes the answer name is read back from the text and asked of the plain engine: the
// scenario is changed as the sentence says, and compared. A sentence that no reader here
// understands fails too.
func TestWhatIsClaimedHolds(t *testing.T) {
	many := 500
	if testing.Short() {
		many = 25
	}
	asked := map[string]int{}
	for seed := range many {
		s := believable(uint64(seed))
		c := compare.Compare(s, nil, scenario.Date{})
		ahead, err := compare.LookAhead(context.Background(), &c, exact.Int(compare.CeilingPercent))
		if err != nil {
			t.Fatal(err)
		}
		w := witness{t: t, c: ahead, asked: asked, seed: seed}
		w.headline()
		w.pages()
		if t.Failed() {
			t.Fatalf("seed %d: %s\n%s", seed, Verdict(ahead, money.English).Text, Verdict(ahead, money.English).Under)
		}
	}
	for _, what := range []string{"amount", "month", "price", "rate", "developing", "hour", "shipping", "duty", "import tax", "spoiled",
		"crosses back", "all of a range", "about the same", "rolls at a range's end", "changes counted", "ceiling", "payback", "cut", "order size"} {
		if asked[what] < many/40 {
			t.Errorf("of %s only %d claims were asked after", what, asked[what])
		}
	}
	t.Log(asked)
}

// believable draws the demo with other prices, offers and habits. In two of three all money
// is a thousandfold, so that rounding to the cent hides nothing. A year's rolls divide every
// whole number without end of digits, so that a scenario can hold each in proportion.
func believable(seed uint64) scenario.Scenario {
	r := rand.New(rand.NewPCG(seed, 2))
	pick := func(n int) int { return r.IntN(n) }
	s := scenario.Demo().Scenarios[0].Clone()
	s.Months = []int{12, 12, 12, 6, 18, 24, 60}[pick(7)]
	s.Shooting.RollsPerMonth = [12]scenario.Decimal{}
	for range []int{8, 10, 16, 20, 25, 32, 40, 50}[pick(8)] {
		m := pick(12)
		s.Shooting.RollsPerMonth[m] = s.Shooting.RollsPerMonth[m].Add(decimal.NewFromInt(1))
	}
	times := func(d *scenario.Decimal, low, high int) {
		*d = d.Mul(decimal.New(int64(low+pick(high-low+1)), -2)).Round(2)
	}
	var offers []scenario.Offer
	for i, like := range [][]int{{0, 2}, {1, 2}, {0, 1, 2}, {0, 2, 2}, {1, 1, 2}, {0, 1, 2, 2}}[pick(6)] {
		o := s.Clone().Offers[like]
		o.Name = fmt.Sprintf("Way %c", 'A'+i)
		times(&o.Price, 40, 220)
		times(&o.Shipping, 0, 200)
		o.Units = 1 + pick(3)
		o.OnHand = decimal.New(int64(pick(2)*pick(15)), -1)
		o.DiscountPercent = decimal.NewFromInt(int64(pick(3) * 5))
		o.PriceRisePercent = decimal.NewFromInt(int64(pick(2) * (pick(40) - 20)))
		o.Import = []scenario.Import{scenario.ImportNone, scenario.ImportBorder, scenario.ImportBorder, scenario.ImportPrepaid}[pick(4)]
		o.Developing = []string{"", s.Developing[0].Name, s.Developing[1].Name, s.Developing[1].Name, s.Developing[0].Name, s.Developing[0].Name}[pick(6)]
		if pick(3) == 0 {
			o.FreeShippingFrom = scenario.Maybe{Decimal: o.Price.Mul(decimal.New(int64(50+pick(150)), -2)).Round(2), Set: true}
		}
		o.KeepsMonths = scenario.Maybe{Decimal: decimal.NewFromInt(int64(3 + pick(30))), Set: pick(3) > 0}
		if o.Reel != nil {
			o.Reel.SpoiledPercent = decimal.New(int64(pick(2)*pick(300)), -1)
		} else if pick(3) == 0 {
			o.Boxed.SpoiledPercent = decimal.New(int64(1+pick(400)), -1)
		}
		offers = append(offers, o)
	}
	s.Offers, s.Baseline = offers, offers[pick(len(offers))].Name
	times(&s.Developing[0].Price, 30, 150)
	times(&s.Developing[1].ChemistryPrice, 50, 150)
	s.Loading.HourlyValue = decimal.NewFromInt(int64(pick(2) * pick(20)))
	times(&s.Border.DutyFreeUpTo, 30, 150)
	s.Border.TaxFreeUpTo = decimal.NewFromInt(int64(pick(2) * pick(200)))
	if seed%3 > 0 {
		thousandfold(&s)
	}
	return s
}

// thousandfold makes all money a thousand times as much.
func thousandfold(s *scenario.Scenario) {
	times := func(list ...*scenario.Decimal) {
		for _, d := range list {
			*d = d.Mul(decimal.NewFromInt(1000))
		}
	}
	gear := func(list []scenario.Equipment) {
		for i := range list {
			times(&list[i].Price, &list[i].Resale)
		}
	}
	times(&s.Border.DutyFreeUpTo, &s.Border.TaxFreeUpTo, &s.Border.HandlingFee)
	times(&s.Loading.CassettePrice, &s.Loading.ConsumablesPerRoll, &s.Loading.HourlyValue)
	gear(s.Loading.Equipment)
	for i := range s.Developing {
		d := &s.Developing[i]
		times(&d.Price, &d.ChemistryPrice, &d.ExtraPerRoll)
		gear(d.Equipment)
	}
	for i := range s.Offers {
		o := &s.Offers[i]
		times(&o.Price, &o.Shipping, &o.ShippingEachExtra, &o.FreeShippingFrom.Decimal)
	}
}

// witness asks the engine after what is said of a comparison.
type witness struct {
	t     *testing.T
	c     *compare.Comparison
	asked map[string]int
	seed  int
}

func (w *witness) wrong(format string, args ...any) {
	w.t.Helper()
	w.t.Errorf(format, args...)
}

// named is the offer that a text calls so; "" for none.
func (w *witness) named(called string) string {
	for i := range w.c.Offers {
		if name := w.c.Offers[i].Name; strings.EqualFold(Called(&w.c.Scenario, name), called) {
			return name
		}
	}
	return ""
}

// saving is what an offer saves against another in a changed scenario, what the other's
// year costs there, and how far rounding may have moved the saving.
func (w *witness) saving(s scenario.Scenario, offer, other string) (saving, cost, rounding exact.Fraction) {
	s.Baseline = other
	c := compare.Compare(s, nil, scenario.Date{})
	a, b := c.Find(offer), c.Find(other)
	return a.Against.Saving, b.Year.Cost, mayRound(&s, a).Add(mayRound(&s, b))
}

// mayRound is by how much the lines of a year may be rounded in all, generously: ten lines
// an order, and what is bought, paid and left in a month.
func mayRound(s *scenario.Scenario, o *compare.Offer) exact.Fraction {
	lines := 10 * (s.Months + 2)
	for _, orders := range o.Year.Orders {
		lines += 10 * int(orders)
	}
	may := exact.Int(int64(lines)).Mul(exact.Ratio(1, 200))
	if home := o.Order.Home; crosses(s, o.Name) && home.Duty.IsZero() && home.ImportTax.IsZero() {
		// where what is due rounds to nothing, the fee for collecting it falls away too
		fee := exact.FromDecimal(s.Border.HandlingFee)
		for _, orders := range o.Year.Orders {
			may = may.Add(fee.Mul(exact.Int(int64(orders))))
		}
	}
	return may
}

// crosses says whether an offer is taxed at the border.
func crosses(s *scenario.Scenario, name string) bool {
	return slices.ContainsFunc(s.Offers, func(o scenario.Offer) bool { return o.Name == name && o.Import == scenario.ImportBorder })
}

// cheaper holds who is said to be cheaper of two in a changed scenario; evenly says that
// neither is by 5 %.
func (w *witness) cheaper(text string, s scenario.Scenario, offer, other, who string, strictly bool) {
	saving, cost, rounding := w.saving(s, offer, other)
	near := exact.Ratio(1, 20).Mul(cost)
	switch {
	case who == "":
		if near.Add(rounding).Less(saving.Abs()) {
			w.wrong("%q: %s saves %s of %s", text, offer, saving, cost)
		}
	case who == offer && saving.Less(rounding.Neg()), who == other && rounding.Less(saving):
		w.wrong("%q: %s saves %s of %s", text, offer, saving, cost)
	case strictly && saving.Abs().Add(rounding).Less(near):
		w.wrong("%q: it is about the same, %s saves %s of %s", text, offer, saving, cost)
	}
}
