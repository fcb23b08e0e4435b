package words

import (
	"context"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// reader understands one kind of sentence and asks after it.
type reader struct {
	pattern *regexp.Regexp
	ask     func(w *witness, said []string)
}

func reads(pattern string, ask func(w *witness, said []string)) reader {
	return reader{regexp.MustCompile("^(?:" + pattern + ")$"), ask}
}

// told reads every sentence of a text by the first reader that understands it.
func (w *witness) told(text string, readers []reader) {
	w.t.Helper()
	for _, s := range strings.SplitAfter(strings.ReplaceAll(text, noBreak, " "), ". ") {
		if s = strings.TrimSpace(s); s == "" {
			continue
		}
		understood := false
		for _, r := range readers {
			if said := r.pattern.FindStringSubmatch(s); said != nil {
				r.ask(w, said)
				understood = true
				break
			}
		}
		if !understood {
			w.wrong("nothing here understands %q", s)
		}
	}
}

// amount is a number as it is said, and half of its last digit's unit.
func amount(said string) (n, half exact.Fraction) {
	digits := strings.ReplaceAll(regexp.MustCompile(`[\d,.]*\d`).FindString(said), ",", "")
	d := decimal.RequireFromString(digits)
	return exact.FromDecimal(d), exact.FromDecimal(decimal.New(5, d.Exponent()-1))
}

// holds asks whether a number said is the engine's, rounded.
func (w *witness) holds(what, said string, is exact.Fraction) {
	w.t.Helper()
	w.asked[what]++
	n, half := amount(said)
	if half.Less(n.Sub(is).Abs()) {
		w.wrong("%q is said, it is %s", said, is)
	}
}

// pair are the verdict's two, the reel held against the boxed by a comparison of its own.
func (w *witness) pair() (reel, boxed *compare.Offer) {
	s := w.c.Scenario
	s.Baseline = w.c.Verdict.Boxed
	c := compare.Compare(s, nil, scenario.Date{})
	return c.Find(w.c.Verdict.Reel), c.Find(w.c.Verdict.Boxed)
}

const (
	amt     = `([A-Z]{3} [\d.,]*\d)`
	some    = `(.+?)`
	when    = `(?:this year|in \d+ months?|in \d+ years?)`
	inRolls = `([\d.,]*\d) rolls?`
)

// magnitude is a saving without its sign.
func magnitude(f exact.Fraction) exact.Fraction { return f.Abs() }

// moreOrLess holds "EUR 12 more", "EUR 3 less" or "the same" of what a saving comes to.
func (w *witness) moreOrLess(said string, saving exact.Fraction) {
	want := map[int]string{-1: "more", 0: "same", 1: "less"}[saving.Sign()]
	if !strings.HasSuffix(said, want) {
		w.wrong("%q is said of a saving of %s", said, saving)
	}
	if want != "same" {
		w.holds("amount", said, magnitude(saving))
	}
}

// headlineReaders understand the headline and the line under it.
var headlineReaders = []reader{
	reads(some+` saves `+amt+` in cash `+when+`(?: and leaves `+inRolls+` over)?\.`, func(w *witness, said []string) {
		reel, _ := w.pair()
		w.is(said[1], reel.Name)
		w.moreOrLess(said[2]+" less", reel.Against.SavingCash)
		w.over(said[3], reel)
	}),
	reads(`It is ahead from the start\.|It is ahead from (.+) on\.`, func(w *witness, said []string) {
		w.ahead(said[1])
	}),
	reads(`Buy boxed: `+some+` would cost `+amt+` more `+when+`\.`, func(w *witness, said []string) {
		reel, _ := w.pair()
		w.is(said[1], reel.Name)
		w.moreOrLess(said[2]+" more", reel.Against.SavingCash)
	}),
	reads(`Buy boxed: `+some+` would cost the same in cash `+when+`, all counted `+amt+` more\.`, func(w *witness, said []string) {
		reel, _ := w.pair()
		w.moreOrLess("the same", reel.Against.SavingCash)
		w.moreOrLess(said[2]+" more", reel.Against.Saving)
	}),
	reads(`Buy boxed: `+some+` would save `+amt+` in cash `+when+`, but all counted cost `+amt+` more\.`, func(w *witness, said []string) {
		reel, _ := w.pair()
		w.moreOrLess(said[2]+" less", reel.Against.SavingCash)
		w.moreOrLess(said[3]+" more", reel.Against.Saving)
	}),
	reads(`About the same: `+amt+` either way\.`, func(w *witness, said []string) {
		reel, boxed := w.pair()
		w.holds("amount", said[1], boxed.Year.Cost)
		if exact.Ratio(1, 20).Mul(boxed.Year.Cost).Less(reel.Against.Saving.Abs()) {
			w.wrong("about the same, and it saves %s of %s", reel.Against.Saving, boxed.Year.Cost)
		}
	}),
	reads(`Decide by effort and taste\.|Not comparable yet: one counts developing, the other does not\.|Choose Developing for .*`, func(*witness, []string) {}),
	reads(some+` only pays if (?:you shoot what is left|what is left gets used or sold): (?:`+amt+` in cash more|the same in cash) `+when+
		`, (?:`+inRolls+`|supplies and equipment worth `+amt+`) over\.`, func(w *witness, said []string) {
		reel, _ := w.pair()
		w.is(said[1], reel.Name)
		if said[2] != "" {
			w.moreOrLess(said[2]+" more", reel.Against.SavingCash)
		}
		if said[3] != "" {
			w.over(said[3], reel)
		} else {
			w.holds("amount", said[4], reel.Year.SuppliesLeftValue.Add(reel.Year.EquipmentLeftValue))
		}
	}),
	reads(`That is cash(?:, with `+inRolls+` over)?\.`, func(w *witness, said []string) {
		reel, _ := w.pair()
		w.over(said[1], reel)
	}),
	reads(`All counted, `+some+` costs (`+amt+` (?:more|less) than|the same as) (.+) `+when+`; in cash, (.+)\.`, func(w *witness, said []string) {
		reel, boxed := w.pair()
		w.is(said[1], reel.Name)
		w.is(said[4], boxed.Name)
		w.moreOrLess(strings.NewReplacer(" than", "", " as", "").Replace(said[2]), reel.Against.Saving)
		w.moreOrLess(said[5], reel.Against.SavingCash)
	}),
	reads(`All counted, `+some+` costs (`+amt+` (?:more|less) than|the same as) ([^:]+)(?:: (.+))?\.`, func(w *witness, said []string) {
		reel, boxed := w.pair()
		w.is(said[1], reel.Name)
		w.is(said[4], boxed.Name)
		w.moreOrLess(strings.NewReplacer(" than", "", " as", "").Replace(said[2]), reel.Against.Saving)
		w.parts(said[5], reel.Against)
	}),
	reads(`Roll for roll, `+some+` is no cheaper either\.`, func(w *witness, said []string) {
		reel, _ := w.pair()
		w.is(said[1], reel.Name)
		if reel.Against.SavingPerRoll.Sign() > 0 {
			w.wrong("it is cheaper by %s", reel.Against.SavingPerRoll)
		}
	}),
	reads(`In the long run a roll from `+some+` costs `+amt+` less(?:, and its equipment is paid after `+inRolls+`)?\.`, func(w *witness, said []string) {
		reel, boxed := w.pair()
		w.is(said[1], reel.Name)
		w.moreOrLess(said[2]+" less", reel.Against.SavingPerRoll)
		if said[3] != "" {
			w.paid(said[3], reel, boxed)
		}
	}),
	reads(`Equipment paid after `+inRolls+`\.`, func(w *witness, said []string) {
		reel, boxed := w.pair()
		w.paid(said[1], reel, boxed)
	}),
	reads(`The cheapest boxed is (.+)\.`, func(w *witness, said []string) {
		_, boxed := w.pair()
		w.is(said[1], boxed.Name)
		for _, o := range w.c.Offers {
			if o.Kind == scenario.KindBoxed && o.CountsDeveloping == boxed.CountsDeveloping && o.Year.Cost.Less(boxed.Year.Cost) {
				w.wrong("%s is cheaper than %s", o.Name, boxed.Name)
			}
		}
	}),
}

// changeReaders understand what would change the answer of the verdict's pair.
func changeReaders(offer, other string) []reader {
	return []reader{
		reads(`(?:At|From|Up to) .+`, func(w *witness, said []string) { w.volumes(said[0], offer, other) }),
		reads(`If (.+), (.+?) (?:is|are) cheaper(?:; today (.+))?\.`, func(w *witness, said []string) {
			what, in := w.condition(said[1], offer, other)
			who := w.named(said[2])
			if said[2] == "it" {
				who = in.owner
			}
			if who != offer && who != other {
				w.wrong("%q: who is cheaper?", said[0])
				return
			}
			what(who)
			if said[3] != "" {
				w.holds("today", said[3], in.today)
			}
		}),
	}
}

// is holds that a text names the offer.
func (w *witness) is(called, name string) {
	if w.named(called) != name {
		w.wrong("%q is not what %q is called", called, name)
	}
}

// over holds the rolls left, none where none are said.
func (w *witness) over(said string, o *compare.Offer) {
	if said == "" {
		said = "0"
	}
	w.holds("rolls over", said, o.Year.FilmLeftRolls)
}

// parts holds where a saving comes from.
func (w *witness) parts(said string, a *compare.Against) {
	numbers := regexp.MustCompile(`\d[\d,]*(\.\d+)?`).FindAllString(said, -1)
	if len(numbers) < 2 {
		return
	}
	film, dev := numbers[0], numbers[1]
	if !strings.Contains(said, "of it by") && !strings.HasPrefix(said, "loading yourself") {
		film, dev = dev, film
	}
	w.holds("part", dev, magnitude(a.SavingDeveloping))
	// The film's part is said such that both add up: it may be a unit off.
	n, half := amount(film)
	if half.Add(exact.Int(1)).Less(n.Sub(magnitude(a.SavingFilm)).Abs()) {
		w.wrong("%q: %s of it is film", said, a.SavingFilm)
	}
	if all, _ := amount(w.whole(a.Saving.Abs())); !strings.Contains(said, "saves") && half.Equal(exact.Ratio(1, 2)) {
		if d, h := amount(dev); h.Equal(half) && !n.Add(d).Equal(all) {
			w.wrong("%q does not add up to %s", said, all)
		}
	}
}

func (w *witness) whole(f exact.Fraction) string {
	return voiceOf(w.c, money.English).whole(f)
}

// ahead holds the month from which on the reel has cost no more cash; "" for the first.
func (w *witness) ahead(said string) {
	w.asked["month"]++
	reel, boxed := w.pair()
	from := 1
	for said != "" && MonthName(&w.c.Scenario, from) != said {
		if from++; from > w.c.Scenario.Months {
			w.wrong("there is no %q", said)
			return
		}
	}
	dearer := func(m int) bool { return boxed.Year.Cumulative[m-1].Less(reel.Year.Cumulative[m-1]) }
	for m := from; m <= w.c.Scenario.Months; m++ {
		if dearer(m) {
			w.wrong("ahead from %q on, but not in month %d", said, m)
		}
	}
	if from > 1 && !dearer(from-1) {
		w.wrong("ahead before %q", said)
	}
}

// paid holds after how many rolls the equipment that only the reel needs is paid.
func (w *witness) paid(said string, reel, boxed *compare.Offer) {
	w.asked["payback"]++
	s := &w.c.Scenario
	var equipment exact.Fraction
	add := func(list []scenario.Equipment) {
		for _, e := range list {
			if !e.Owned {
				equipment = equipment.Add(exact.FromDecimal(e.Price).Round(2))
			}
		}
	}
	add(s.Loading.Equipment)
	if p := processNamed(s, offerNamed(s, reel.Name).Developing); p != nil && p.Name != offerNamed(s, boxed.Name).Developing {
		add(p.Equipment)
	}
	each := boxed.PerRoll.Total.Sub(boxed.PerRoll.Equipment).Sub(reel.PerRoll.Total.Sub(reel.PerRoll.Equipment))
	n, _ := amount(said)
	if n.Mul(each).Less(equipment) || !n.Sub(exact.Int(1)).Mul(each).Less(equipment) {
		w.wrong("%s rolls at %s pay %s", said, each, equipment)
	}
}

// headline asks after the headline and what stands under it.
func (w *witness) headline() {
	h := Verdict(w.c, money.English)
	p := w.c.Verdict
	w.told(h.Text, headlineReaders)
	w.told(h.Under, append(slices.Clone(headlineReaders), changeReaders(p.Reel, p.Boxed)...))
}

// pages asks after the sentences and titles on what changes the answer, of every offer.
func (w *witness) pages() {
	for i := range w.c.Outlook.Offers {
		o := &w.c.Outlook.Offers[i]
		if p := o.Pair; p != nil {
			for _, text := range Flips(w.c, p, money.English) {
				w.told(text, changeReaders(p.Offer, p.Other))
			}
			w.titles(p)
			w.ceiling(o)
			w.payback(p)
		}
		w.cuts(o)
		w.sizes(o)
	}
}

// titles asks after the titles of the pair's figures.
func (w *witness) titles(p *compare.PairOutlook) {
	for _, f := range p.Flips {
		look, err := w.c.LookAt(context.Background(), p.Offer, f.Input, w.seed%2 == 0)
		if err != nil {
			w.t.Fatal(err)
		}
		if look.Curve == nil {
			continue
		}
		title := strings.ReplaceAll(FlippingOf(w.c, look.Curve, money.English).Title(p.Saving.Sign()), noBreak, " ")
		unless := regexp.MustCompile(`^(.+?) (?:is|are) cheaper(?: at every value drawn| unless (.+))$`).FindStringSubmatch(title)
		switch {
		case title == "Both cost the same today":
		case unless != nil:
			then := p.Offer
			if w.is(unless[1], choice(p.Saving.Sign() > 0, p.Offer, p.Other)); p.Saving.Sign() > 0 {
				then = p.Other
			}
			for _, c := range strings.Split(unless[2], ", or ") {
				if c != "" {
					what, _ := w.condition(c, p.Offer, p.Other)
					what(then)
				}
			}
		default:
			w.volumesTitle(title, p.Offer, p.Other)
		}
	}
}

// ceiling asks after the highest price.
func (w *witness) ceiling(o *compare.OfferOutlook) {
	text := strings.ReplaceAll(Ceiling(w.c, o.Name, o.Ceiling, money.English), noBreak, " ")
	if text == "" {
		return
	}
	said := regexp.MustCompile(`^Roll for roll, in the long run, (.+) saves 10 % up to a price of ` + amt + `\.$`).FindStringSubmatch(text)
	if said == nil {
		w.wrong("nothing here understands %q", text)
		return
	}
	w.asked["ceiling"]++
	w.is(said[1], o.Name)
	price, half := amount(said[2])
	for step, most := range map[int64]bool{0: true, -1: false, 1: false, 2: false, 10: false, 1000: false, 100000: false} {
		at := price.Add(half.Mul(exact.Int(2 * step)))
		s := w.c.Scenario.Clone()
		offerNamed(&s, o.Name).Price = at.Decimal(4)
		if at.Sign() <= 0 || step < 0 {
			continue
		}
		c := compare.Compare(s, nil, scenario.Date{})
		a := c.Find(o.Name).Against
		saves := !a.SavingPerRoll.Less(c.Baseline().PerRoll.Total.Mul(exact.Ratio(1, 10)))
		if saves != most {
			w.wrong("%q, and at %s it saves %s of %s", text, at, a.SavingPerRoll, c.Baseline().PerRoll.Total)
		}
	}
}

// payback asks after the month in which the equipment is paid.
func (w *witness) payback(p *compare.PairOutlook) {
	a := w.c.Find(p.Offer).Against
	said := regexp.MustCompile(`^Equipment paid after ([\d,]+) rolls?, in (\w+ \d+) at this pace\.$`).FindStringSubmatch(Payback(&w.c.Scenario, a, money.English))
	if said == nil {
		return
	}
	w.asked["month"]++
	want, _ := amount(said[1])
	var shot exact.Fraction
	for m := 1; ; m++ {
		shot = shot.Add(exact.FromDecimal(w.c.Scenario.Shooting.RollsPerMonth[(m-1)%12]))
		if !shot.Less(want) {
			if is := MonthAndYear(&w.c.Scenario, m); is != said[2] {
				w.wrong("%q, it is %s", said[0], is)
			}
			return
		}
	}
}

// cuts asks after the title of the cut sizes.
func (w *witness) cuts(o *compare.OfferOutlook) {
	if len(o.CutSizes) == 0 {
		return
	}
	title := strings.ReplaceAll(CuttingOf(w.c, o.Name, o.CutSizes, money.English).Title(), noBreak, " ")
	said := regexp.MustCompile(`^(?:Up to (\d+) exposures, rolls|Rolls) of (\d+)(?:, as today,)?(?: and of (\d+), as today,)? cost (?:least|about the same): ` + amt +
		`(?: for \d+ exposures)?(?:, of (\d+) as today ([\d.,]+))?$`).FindStringSubmatch(title)
	if said == nil {
		w.wrong("nothing here understands %q", title)
		return
	}
	w.asked["cut"]++
	most := 40
	if said[1] != "" {
		most, _ = strconv.Atoi(said[1])
	}
	cost := func(n int) *exact.Fraction {
		s := w.c.Scenario.Clone()
		offerNamed(&s, o.Name).Reel.Exposures = n
		c := compare.Compare(s, nil, scenario.Date{})
		if found := c.Find(o.Name); found != nil {
			return &found.PerRoll.Total
		}
		return nil
	}
	best, _ := strconv.Atoi(said[2])
	w.holds("amount", said[4], *cost(best))
	if said[3] != "" { // nothing is claimed of the others
		n, _ := strconv.Atoi(said[3])
		w.holds("amount", said[4], *cost(n))
		return
	}
	for n := 12; n <= most; n++ {
		if other := cost(n); other != nil && other.Less(*cost(best)) {
			w.wrong("%q, and %d cost %s, not %s", title, n, other, cost(best))
		}
	}
	if said[5] != "" {
		n, _ := strconv.Atoi(said[5])
		w.holds("amount", said[6], *cost(n))
	}
}

// sizes asks after the title of the order sizes.
func (w *witness) sizes(o *compare.OfferOutlook) {
	title := strings.ReplaceAll(SizingOf(w.c, o.Name, o.OrderSizes, money.English).Title(), noBreak, " ")
	said := regexp.MustCompile(`^(?:An|Today's) order of (\d+) \w+ is best(?:: a roll costs ([\d.,]+) less than today)?`).FindStringSubmatch(title)
	if said == nil {
		return
	}
	w.asked["order size"]++
	at := func(units int) *compare.Offer {
		s := w.c.Scenario.Clone()
		offerNamed(&s, o.Name).Units = units
		c := compare.Compare(s, nil, scenario.Date{})
		return c.Find(o.Name)
	}
	n, _ := strconv.Atoi(said[1])
	best := at(n).PerRoll.Total
	var year exact.Fraction
	for _, rolls := range w.c.Scenario.Shooting.RollsPerMonth {
		year = year.Add(exact.FromDecimal(rolls))
	}
	for units := 1; units <= compare.MostUnits; units++ {
		other := at(units)
		lasts := other.Yield.Good.Mul(exact.Int(int64(units))).Quo(exact.Int(int64(w.c.Scenario.RollExposures))).Mul(exact.Int(12)).Quo(year)
		if !exact.Int(int64(w.c.Scenario.Months)).Less(lasts) && other.PerRoll.Total.Less(best) {
			w.wrong("%q, and %d make a roll %s, not %s", title, units, other.PerRoll.Total, best)
		}
	}
	if said[2] != "" {
		w.holds("amount", said[2], w.c.Find(o.Name).PerRoll.Total.Sub(best))
	}
}
