package words

import (
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Every figure of the worked example is read back from its text and held against the
// engine's, and what is said to add up adds up as it is said.
func TestTheWorkedExampleIsTheEngines(t *testing.T) {
	many := 300
	if testing.Short() {
		many = 40
	}
	asked := map[string]int{}
	for seed := range many {
		s := believable(uint64(seed))
		c := compare.Compare(s, nil, scenario.Date{})
		list := Worked(&c, money.English)
		if c.Verdict.Pair == nil {
			if len(list) != 1 || list[0].Paragraphs[0] != NoPair {
				t.Fatalf("seed %d: no pair, and %v", seed, list)
			}
			continue
		}
		w := &witness{t: t, c: &c, asked: asked, seed: seed}
		reel, boxed := w.pair()
		for i, o := range []*compare.Offer{reel, boxed} {
			workedOffer{w, o, offerNamed(&s, o.Name), map[string]exact.Fraction{}}.hold(list[i])
		}
		w.told(strings.Join(list[2].Paragraphs, " "), againstReaders(reel, boxed))
		if t.Failed() {
			t.Fatalf("seed %d:\n%s", seed, Plain(list))
		}
	}
	for _, what := range []string{"price", "discount", "free shipping", "sales tax", "prepaid", "converted", "card fee", "duty", "import tax",
		"within", "handling", "landed", "good", "in time", "per roll", "saving", "payback"} {
		if asked[what] == 0 && what != "sales tax" { // the demo's sellers add none
			t.Errorf("nothing was asked after the %s", what)
		}
	}
}

// workedOffer reads the example of one offer; said collects its amounts for the sums.
type workedOffer struct {
	*witness
	o    *compare.Offer
	in   *scenario.Offer
	said map[string]exact.Fraction
}

func (e workedOffer) hold(p Passage) {
	e.t.Helper()
	if p.Heading != e.o.Name {
		e.wrong("the example of %s is headed %s", e.o.Name, p.Heading)
	}
	e.told(strings.Join(p.Paragraphs, " "), e.readers())
	e.sum("charged by the seller", "charged", "film", "shipping", "sales tax", "prepaid")
	if _, paid := e.said["statement"]; !paid {
		e.said["statement"] = e.said["charged"]
	}
	e.sum("landed", "landed", "statement", "card fee", "duty", "import tax", "handling")
}

// sum holds a total said against the parts said, to the last digit: each is somebody's bill.
func (e workedOffer) sum(what, total string, parts ...string) {
	e.t.Helper()
	var sum exact.Fraction
	for _, p := range parts {
		sum = sum.Add(e.said[p])
	}
	if !sum.Equal(e.said[total]) {
		e.wrong("%s of %s: the parts make %s, %s is said", what, e.o.Name, sum, e.said[total])
	}
}

// one holds an amount said, and remembers it.
func (e workedOffer) one(what, said string, is exact.Fraction) {
	e.t.Helper()
	e.holds(what, said, is)
	e.said[what], _ = amount(said)
}

// of holds "4.2 % of EUR 130.11: EUR 5.46" by reckoning it again.
func (e workedOffer) of(what, percent, of, said string, is exact.Fraction) {
	e.t.Helper()
	e.one(what, said, is)
	p, _ := amount(percent)
	base, _ := amount(of)
	cents := money.Places(strings.Fields(said)[0])
	if got := p.Percent().Mul(base).Round(cents); !got.Equal(e.said[what]) {
		e.wrong("%s %% of %s is %s, %q is said", percent, of, got, said)
	}
}

const num1 = `([\d.,]*\d)`

func (e workedOffer) readers() []reader {
	order, units := &e.o.Order, exact.Int(int64(e.o.Order.Units))
	one := func(pattern, what string, is exact.Fraction) reader {
		return reads(pattern, func(_ *witness, said []string) { e.one(what, said[1], is) })
	}
	due := func(name, what string, is exact.Fraction) reader {
		return reads(name+` is `+num1+` % of `+amt+`: `+amt+`\.`, func(_ *witness, said []string) { e.of(what, said[1], said[2], said[3], is) })
	}
	silent := func(pattern string, fits bool) reader {
		return reads(pattern, func(_ *witness, said []string) {
			if !fits {
				e.wrong("%q is said", said[0])
			}
		})
	}
	typed := exact.FromDecimal
	return []reader{
		reads(`One order is (one|\d+) [a-z]+ at `+amt+`\.`, func(_ *witness, said []string) {
			e.holds("price", said[2], typed(e.in.Price))
			if n := strings.Replace(said[1], "one", "1", 1); n != units.String() {
				e.wrong("%s units are said, it is %s", n, units)
			}
		}),
		reads(`Less the discount of `+num1+` % the film is `+amt+`\.`, func(_ *witness, said []string) {
			e.holds("discount", said[1], typed(e.in.DiscountPercent))
			e.one("film", said[2], order.Seller.Film)
		}),
		one(`The film is `+amt+`\.`, "film", order.Seller.Film),
		reads(`From `+amt+` on shipping is free\.`, func(_ *witness, said []string) {
			e.holds("free shipping", said[1], typed(e.in.FreeShippingFrom.Decimal))
			if !order.Seller.Shipping.IsZero() {
				e.wrong("it is not free: %s", order.Seller.Shipping)
			}
		}),
		one(`Shipping adds `+amt+`\.`, "shipping", order.Seller.Shipping),
		one(`Sales tax of `+`[\d.,]*\d`+` % adds `+amt+`\.`, "sales tax", order.Seller.SalesTax),
		one(`Import tax of `+`[\d.,]*\d`+` %, which the seller collects, adds `+amt+`\.`, "prepaid", order.Seller.ImportTax),
		one(`The seller charges `+amt+`\.`, "charged", exact.Sum(order.Seller.Film, order.Seller.Shipping, order.Seller.SalesTax, order.Seller.ImportTax)),
		silent(`That is in [A-Z]{3} already, and nothing is converted\.`, e.in.Currency == e.c.Scenario.Home),
		reads(`At 1 ([A-Z]{3}) = `+num1+` [A-Z]{3}[^:]* the card statement says `+amt+`, of which `+amt+` is for the film\.`, func(_ *witness, said []string) {
			e.one("statement", said[3], order.Charged)
			e.holds("converted", said[4], order.Home.Film)
			rate, _ := amount(said[2])
			want := e.said["charged"].Mul(rate)
			if said[1] != e.in.Currency {
				want = e.said["charged"].Quo(rate)
			}
			if !want.Round(2).Equal(e.said["statement"]) {
				e.wrong("%q: by hand it is %s", said[0], want)
			}
		}),
		reads(`The card's fee is `+num1+` % of `+amt+`: `+amt+`\.`, func(_ *witness, said []string) { e.of("card fee", said[1], said[2], said[3], order.Home.CardFee) }),
		due("Duty", "duty", order.Home.Duty),
		due("Import tax", "import tax", order.Home.ImportTax),
		reads(`(Duty|Import tax): film for `+amt+` is within the free `+amt+`, so none\.`, func(_ *witness, said []string) {
			free := map[string]scenario.Decimal{"Duty": e.c.Scenario.Border.DutyFreeUpTo, "Import tax": e.c.Scenario.Border.TaxFreeUpTo}[said[1]]
			e.holds("within", said[2], order.Home.Film)
			e.holds("within", said[3], typed(free))
			if typed(free).Less(order.Home.Film) {
				e.wrong("%q", said[0])
			}
		}),
		one(`For handling it the carrier takes `+amt+`\.`, "handling", order.Home.Handling),
		silent(`Nothing is due at a border\.`, e.in.Import == scenario.ImportNone),
		silent(`Nothing more is due at the border\.`, order.Home.Duty.IsZero() && order.Home.Handling.IsZero()),
		silent(`No duty and no import tax is set for the border\.`, order.Home.AtBorder().IsZero()),
		one(`Landed, the order is `+amt+`\.`, "landed", order.Landed),
		reads(`The order gives `+inRolls+` with `+num1+` exposures?(?:, of which `+num1+` are good)?: `+inRolls+` of 36\.`, func(_ *witness, said []string) {
			e.holds("good", said[1], exact.Int(int64(e.o.Yield.Cassettes)).Mul(units))
			e.holds("good", said[2], exact.Int(int64(e.o.Yield.Exposures)).Mul(units))
			if said[3] != "" {
				e.holds("good", said[3], e.o.Yield.Good.Mul(units))
			} else if !e.o.Yield.Good.Equal(exact.Int(int64(e.o.Yield.Exposures))) {
				e.wrong("%q: not all are good", said[0])
			}
			e.holds("good", said[4], e.o.Yield.Good.Mul(units).Quo(exact.Int(36)))
		}),
		reads(`Of these `+num1+` % are shot before the film is too old, and bear the cost of all\.`, func(_ *witness, said []string) {
			e.holds("in time", said[1], e.o.UsedShare.Mul(exact.Int(100)))
		}),
		one(`Landed, a roll of 36 comes to `+amt+`\.`, "per roll", order.Landed.Quo(e.o.Yield.Good.Mul(units).Quo(exact.Int(36)).Mul(e.o.UsedShare))),
		one(`Loading adds `+amt+`\.`, "loading", e.o.PerRoll.Loading),
		one(`Equipment worn adds `+amt+`\.`, "equipment", e.o.PerRoll.Equipment),
		one(`Developing adds `+amt+`\.`, "developing a roll", e.o.PerRoll.Developing),
		one(`Your time adds `+amt+`\.`, "time", e.o.PerRoll.Time),
		one(`In all, a roll costs `+amt+`\.`, "total", e.o.PerRoll.Total),
	}
}

// againstReaders understand how the reel is held against the boxed film.
func againstReaders(reel, boxed *compare.Offer) []reader {
	const than = `(the same|` + `[A-Z]{3} [\d.,]*\d (?:less|more))`
	a := reel.Against
	two := func(pattern string, one, other, saving exact.Fraction) reader {
		return reads(pattern+than+`\.`, func(w *witness, said []string) {
			w.holds("saving", said[1], one)
			w.holds("saving", said[2], other)
			if end := said[len(said)-1]; end != "the same" || saving.Sign() == 0 {
				w.moreOrLess(end, saving)
			} else if !saving.Round(2).IsZero() {
				w.wrong("the same, and it saves %s", saving)
			}
			if !saving.Equal(other.Sub(one)) {
				w.wrong("%s is not %s less than %s", one, saving, other)
			}
		})
	}
	return []reader{
		two(`A roll costs `+amt+` from .+ and `+amt+` from .+: `, reel.PerRoll.Total, boxed.PerRoll.Total, a.SavingPerRoll),
		two(`(?:This year|In \d+ months?|In \d+ years?), `+amt+` leaves your wallet for .+ and `+amt+` for .+: `, reel.Year.Total, boxed.Year.Total, a.SavingCash),
		two(`All counted, less what is left over and with your time, it is `+amt+` and `+amt+`: `, reel.Year.Cost, boxed.Year.Cost, a.Saving),
		reads(`The reel needs no equipment to buy that boxed film does not, so there is nothing to pay back\.`, func(w *witness, said []string) {
			if a.PaybackRolls != nil && !a.PaybackRolls.IsZero() {
				w.wrong("%q, and it is paid after %s rolls", said[0], a.PaybackRolls)
			}
		}),
		reads(`Equipment that only the reel needs costs `+amt+`\.`, func(w *witness, said []string) {
			gear := toBuy(&w.c.Scenario, reel.Name).Sub(sharedGear(&w.c.Scenario, reel.Name, boxed.Name))
			w.holds("payback", said[1], gear)
		}),
		reads(`Its wear left out, a roll saves nothing, so it is never paid back\.`, func(w *witness, said []string) {
			if a.PaybackRolls != nil {
				w.wrong("%q, and it is paid after %s rolls", said[0], a.PaybackRolls)
			}
		}),
		reads(`Its wear left out, a roll saves `+amt+`, so it is paid back after `+inRolls+`\.`, func(w *witness, said []string) {
			each := a.SavingPerRoll.Add(reel.PerRoll.Equipment).Sub(boxed.PerRoll.Equipment)
			w.holds("payback", said[1], each)
			gear := toBuy(&w.c.Scenario, reel.Name).Sub(sharedGear(&w.c.Scenario, reel.Name, boxed.Name))
			w.holds("payback", said[2], gear.Quo(each).Ceil())
		}),
	}
}

// toBuy is the price of what an offer needs and is not owned.
func toBuy(s *scenario.Scenario, name string) (sum exact.Fraction) {
	o := offerNamed(s, name)
	add := func(list []scenario.Equipment) {
		for _, g := range list {
			if !g.Owned {
				sum = sum.Add(exact.FromDecimal(g.Price))
			}
		}
	}
	if o.Kind == scenario.KindReel {
		add(s.Loading.Equipment)
	}
	if d := processNamed(s, o.Developing); d != nil {
		add(d.Equipment)
	}
	return sum
}

// sharedGear is what of it the other needs too: that of one process.
func sharedGear(s *scenario.Scenario, name, other string) exact.Fraction {
	if offerNamed(s, name).Developing != offerNamed(s, other).Developing {
		return exact.Fraction{}
	}
	return toBuy(s, other)
}

// Shown in another currency the example stays at home, and without a pair it says so.
func TestTheWorkedExampleStaysAtHome(t *testing.T) {
	s := scenario.Demo().Scenarios[0]
	c := compare.Compare(s, nil, scenario.Date{})
	at := Plain(Worked(&c, money.English))
	in := c.In("GBP", exact.Ratio(9, 10))
	if got := Plain(Worked(in, money.English)); got != at {
		t.Errorf("%s", got)
	}
	s.Offers = s.Offers[:1]
	one := compare.Compare(s, nil, scenario.Date{})
	for _, c := range []*compare.Comparison{nil, &one} {
		if got := Plain(Worked(c, money.English)); got != NoPair {
			t.Errorf("%s", got)
		}
	}
}

// The parts of the model's text stand in the program and nowhere twice.
func TestTheModelIsTold(t *testing.T) {
	seen := map[string]bool{}
	for _, p := range append(ModelHelp(), SourcesHelp()) {
		if p.Heading == "" || len(p.Paragraphs) == 0 || seen[p.Heading] {
			t.Errorf("%+v", p)
		}
		seen[p.Heading] = true
		for _, text := range p.Paragraphs {
			if bad := odd.FindString(text); bad != "" || !strings.HasSuffix(text, ".") {
				t.Errorf("%q in %q", bad, text)
			}
		}
	}
}
