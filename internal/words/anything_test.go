package words

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// anything is the demo with its numbers drawn anew, some far from sense, some offers
// taken out, and some beyond computing.
func anything(t *rapid.T) *compare.Comparison {
	s := scenario.Demo().Scenarios[0].Clone()
	number := func(label string, most int64, places int32) scenario.Decimal {
		return decimal.New(rapid.Int64Range(0, most).Draw(t, label), -places)
	}
	s.Months = rapid.IntRange(1, 60).Draw(t, "months")
	s.RollExposures = rapid.SampledFrom([]int{12, 24, 36}).Draw(t, "roll")
	s.Home = rapid.SampledFrom([]string{"EUR", "EUR", "JPY", "USD", "KWD"}).Draw(t, "home")
	for i := range s.Shooting.RollsPerMonth {
		s.Shooting.RollsPerMonth[i] = decimal.NewFromInt(rapid.SampledFrom([]int64{0, 0, 1, 3, 40}).Draw(t, "rolls"))
	}
	s.Loading.HourlyValue = number("hour", 4000, 2)
	s.Developing[1].ChemistryPrice = number("chemistry", 9000, 2)
	s.Border.DutyFreeUpTo = number("duty free", 20000, 2)
	for i := range s.Offers {
		o := &s.Offers[i]
		o.Price = number("price", 30000, 2).Add(decimal.New(1, -2))
		o.Units = rapid.IntRange(1, 9).Draw(t, "units")
		o.OnHand = number("on hand", 20, 1)
		o.PriceRisePercent = number("rise", 300, 0).Sub(decimal.NewFromInt(150))
		o.Import = rapid.SampledFrom([]scenario.Import{"", "none", "border", "prepaid"}).Draw(t, "import")
		o.Developing = rapid.SampledFrom([]string{"", s.Developing[0].Name, s.Developing[1].Name, "gone"}).Draw(t, "developing")
		o.FreeShippingFrom = scenario.Maybe{Decimal: number("free from", 40000, 2), Set: rapid.Bool().Draw(t, "ships free")}
	}
	s.Offers[2].Reel.SpoiledPercent = number("spoiled", 999, 1)
	s.Offers[2].Reel.Exposures = rapid.IntRange(1, 100).Draw(t, "exposures")
	if out := rapid.IntRange(0, 5).Draw(t, "out"); out < len(s.Offers) {
		s.Offers = append(s.Offers[:out], s.Offers[out+1:]...)
	}
	c := compare.Compare(s, scenario.Check(s), scenario.Date{Year: 2027, Month: 3, Day: 1})
	return &c
}

// odd is what no sentence holds: a verb of formatting gone wrong, a doubled space or
// stop, a nought in a headline, a space before a stop, a lone minus.
var odd = regexp.MustCompile(`%!|  |\.\.|,,| [.,:;]|\x{2212}$|<nil>|\bnil\b`)

// Whatever is compared, there is a headline, what is coloured is part of it, and no
// sentence has a hole.
func TestNoSentenceHasAHole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anything(t)
		l := rapid.SampledFrom(money.Locales()).Draw(t, "locale")
		said := map[string]string{}
		say := func(what, text string) { said[what] = text }
		h := Verdict(c, l)
		if h.Text == "" || !strings.Contains(h.Text, h.Strong) {
			t.Fatalf("headline %q with %q coloured", h.Text, h.Strong)
		}
		say("headline", h.Text)
		say("under", h.Under)
		for i, text := range LeftOut(c) {
			say(fmt.Sprint("left out ", i), text)
		}
		for i, w := range c.Warnings {
			say(fmt.Sprint("warning ", i), Warning(w, c, l))
		}
		for i := range c.Offers {
			for k, r := range Receipt(c, i, l) {
				say(fmt.Sprint("receipt ", i, k), r.Label+"|"+r.Seller+"|"+r.Home+"|"+r.How)
			}
			for key := range meanings {
				say(fmt.Sprint(key, i), Meaning(key, c, i, l))
			}
		}
		for what, text := range said {
			if bad := odd.FindString(spaces(text)); bad != "" {
				t.Errorf("%s holds %q: %s", what, bad, text)
			}
		}
	})
}

// A headline's direction is the engine's: it says the reel saves exactly when it does.
func TestHeadlineSaysWhatTheFiguresSay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anything(t)
		h := Verdict(c, "en")
		pair := c.Verdict.Pair
		if pair == nil || shot(&c.Scenario).IsZero() || c.Verdict.Kind == compare.VerdictUnlike {
			return
		}
		saves := strings.Contains(h.Text, " saves ")
		buysBoxed := strings.HasPrefix(h.Text, "Buy boxed")
		near := pair.Saving.Abs().Less(exact.Ratio(1, 20).Mul(c.Find(c.Verdict.Boxed).Year.Cost))
		if want := !near && pair.Saving.Sign() > 0 && pair.SavingCash.Sign() > 0; saves != want {
			t.Errorf("%q, with saving %s and cash %s", h.Text, pair.Saving, pair.SavingCash)
		}
		if want := !near && pair.Saving.Sign() <= 0; buysBoxed != want {
			t.Errorf("%q, with saving %s and cash %s", h.Text, pair.Saving, pair.SavingCash)
		}
	})
}
