package words

import (
	"regexp"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// spoken is an input as a sentence names it, and how a scenario is changed to another value
// of it.
type spoken struct {
	what  string
	owner string // the offer whose price it is; "" for anything else
	today exact.Fraction
	set   func(s *scenario.Scenario, x scenario.Decimal)
	least exact.Fraction // that it can be
}

// input finds out what a sentence speaks of; ok is false for what is not understood.
func (w *witness) input(subject, offer, other string) (in spoken, ok bool) {
	s := &w.c.Scenario
	of := func(d *scenario.Decimal) exact.Fraction { return exact.FromDecimal(*d) }
	if cut := strings.TrimPrefix(subject, "1 "); cut != subject {
		for i := range s.Rates {
			if s.Rates[i].One == cut {
				return spoken{"rate", "", of(&s.Rates[i].Equals), func(s *scenario.Scenario, x scenario.Decimal) { s.Rates[i].Equals = x }, exact.Fraction{}}, true
			}
		}
		return in, false
	}
	if cut := strings.TrimPrefix(subject, "developing a cassette of "); cut != subject {
		name := w.named(strings.TrimSuffix(cut, " beside chemistry"))
		if name == "" {
			return in, false
		}
		p := processNamed(s, offerNamed(s, name).Developing)
		return spoken{"developing", "", of(priceOf(p)), func(s *scenario.Scenario, x scenario.Decimal) { developAlone(s, name, x) }, exact.Fraction{}}, true
	}
	if cut := strings.TrimPrefix(subject, "shipping of "); cut != subject {
		name := w.named(cut)
		return spoken{"shipping", "", of(&offerNamed(s, name).Shipping), func(s *scenario.Scenario, x scenario.Decimal) { offerNamed(s, name).Shipping = x }, exact.Fraction{}}, name == offer
	}
	switch subject {
	case "an hour of your time":
		return spoken{"hour", "", of(&s.Loading.HourlyValue), func(s *scenario.Scenario, x scenario.Decimal) { s.Loading.HourlyValue = x }, exact.Fraction{}}, true
	case "import tax":
		return spoken{"import tax", "", of(&s.Border.TaxPercent), func(s *scenario.Scenario, x scenario.Decimal) { s.Border.TaxPercent = x }, exact.Fraction{}}, true
	case "duty":
		return spoken{"duty", "", of(&s.Border.DutyPercent), func(s *scenario.Scenario, x scenario.Decimal) { s.Border.DutyPercent = x }, exact.Fraction{}}, true
	}
	name := w.named(strings.Replace(subject, "a boxed roll", "the boxed rolls", 1))
	if name != offer && name != other {
		return in, false
	}
	return spoken{"price", name, of(&offerNamed(s, name).Price), func(s *scenario.Scenario, x scenario.Decimal) { offerNamed(s, name).Price = x }, exact.Fraction{}}, true
}

// priceOf is what a cassette costs in a process, beside chemistry.
func priceOf(d *scenario.Developing) *scenario.Decimal {
	if d.Way == scenario.Lab {
		return &d.Price
	}
	return &d.ExtraPerRoll
}

// developAlone gives an offer a process of its own, like the one it had, at another price.
func developAlone(s *scenario.Scenario, offer string, x scenario.Decimal) {
	o := offerNamed(s, offer)
	d := *processNamed(s, o.Developing)
	d.Name = "a process of its own"
	*priceOf(&d) = x
	s.Developing = append(s.Developing, d)
	o.Developing = d.Name
}

var (
	spoiledSaid = regexp.MustCompile(`^(?:as much as|only) ([\d.]+) % of (.+) is spoiled$`)
	thanSaid    = regexp.MustCompile(`^(.+) (?:costs|is worth|is) (more|less) than (.+?)(?: and (?:less|more) than (.+))?$`)
	nothingSaid = regexp.MustCompile(`^(.+) (?:costs|is worth|is) nothing$`)
	atAllSaid   = regexp.MustCompile(`^(.+) goes (up|down) at all(?:, but (?:less|more) than (.+))?$`)
)

// condition understands what must come about, and returns what asks the engine whether
// then so-and-so is cheaper, and before that still the other.
func (w *witness) condition(said, offer, other string) (ask func(who string), in spoken) {
	at := func(who string, x exact.Fraction) {
		s := w.c.Scenario.Clone()
		in.set(&s, x.Decimal(12))
		w.cheaper(said+" at "+x.Text(12), s, offer, other, who, false)
	}
	opposite := func(who string) string { return choice(who == offer, other, offer) }
	if m := spoiledSaid.FindStringSubmatch(said); m != nil {
		name := w.named(m[2])
		o := offerNamed(&w.c.Scenario, name)
		in = spoken{what: "spoiled", set: func(s *scenario.Scenario, x scenario.Decimal) { *spoiledField(offerNamed(s, name)) = x }}
		in.today = exact.FromDecimal(*spoiledField(o))
		return func(who string) {
			w.asked["spoiled"]++
			x, _ := amount(m[1])
			at(who, x)
		}, in
	}
	subject, claim, end, up := "", "", "", true
	if m := thanSaid.FindStringSubmatch(said); m != nil {
		subject, claim, end, up = m[1], m[3], m[4], m[2] == "more"
	} else if m := nothingSaid.FindStringSubmatch(said); m != nil {
		subject, claim, up = m[1], "0", false
	} else if m := atAllSaid.FindStringSubmatch(said); m != nil {
		subject, end, up = m[1], m[3], m[2] == "up"
	}
	in, ok := w.input(subject, offer, other)
	if !ok {
		w.wrong("nothing here understands %q", said)
		return func(string) {}, in
	}
	return func(who string) {
		w.asked[in.what]++
		from, step := in.today, exact.Fraction{}
		if claim != "" {
			var half exact.Fraction
			from, half = amount(claim)
			step = half.Add(half)
		}
		// Rounding moves where a limit is crossed by some cents: that near nothing is asked.
		near := from.Mul(exact.Ratio(1, 100)).Add(step.Mul(exact.Int(3)))
		if w.seed%3 > 0 {
			near = from.Mul(exact.Ratio(1, 10000)).Add(step.Mul(exact.Int(3)))
		}
		beyond := func(by exact.Fraction) exact.Fraction {
			if up {
				return from.Add(by)
			}
			return from.Sub(by)
		}
		var last *exact.Fraction
		if end != "" {
			w.asked["crosses back"]++
			x, _ := amount(end)
			last = &x
		}
		inside := func(x exact.Fraction) bool {
			return x.Sign() >= 0 && (last == nil || up && x.Add(near).Less(*last) || !up && last.Add(near).Less(x))
		}
		for _, by := range []exact.Fraction{near, near.Mul(exact.Int(2)), from.Quo(exact.Int(10)), from.Quo(exact.Int(2)),
			from.Sub(near), from.Mul(exact.Int(2)), from.Mul(exact.Int(20))} {
			if x := beyond(by); by.Sign() > 0 && inside(x) && !(x.IsZero() && in.what == "price") {
				at(who, x)
			}
		}
		if last != nil && claim != "" {
			at(who, from.Add(*last).Quo(exact.Int(2)))
		}
		if claim == "0" {
			at(who, exact.Fraction{})
		}
		back := in.today.Sub(from).Abs()
		for _, share := range []int64{1, 2, 10} {
			if by := back.Quo(exact.Int(share)); near.Less(by) {
				at(opposite(who), beyond(by.Neg()))
			}
		}
		if near.Less(back) {
			at(opposite(who), beyond(near.Neg()))
		}
	}, in
}

func spoiledField(o *scenario.Offer) *scenario.Decimal {
	if o.Reel != nil {
		return &o.Reel.SpoiledPercent
	}
	return &o.Boxed.SpoiledPercent
}

// volume asks who is cheaper at so many rolls a year, nobody by 5 % where who is "".
func (w *witness) volume(said string, n int, offer, other, who string) {
	s := w.c.Scenario.Clone()
	year := decimal.Decimal{}
	for _, rolls := range s.Shooting.RollsPerMonth {
		year = year.Add(rolls)
	}
	for i := range s.Shooting.RollsPerMonth {
		s.Shooting.RollsPerMonth[i] = s.Shooting.RollsPerMonth[i].Mul(decimal.NewFromInt(int64(n))).Div(year)
	}
	w.cheaper(said+" at "+strconv.Itoa(n), s, offer, other, who, who != "")
}

// between asks at the ends of a range and within it.
func (w *witness) between(said string, from, to int, offer, other, who string) {
	w.asked["rolls at a range's end"]++
	if who == "" {
		w.asked["about the same"]++
	}
	for _, n := range []int{from, from + 1, (from + to) / 2, from + (to-from)*(w.seed%7)/7, to - 1, to} {
		if n >= from && n <= to {
			w.volume(said, n, offer, other, who)
		}
	}
	if to-from < 30 && w.seed%5 == 0 {
		w.asked["all of a range"]++
		for n := from; n <= to; n++ {
			w.volume(said, n, offer, other, who)
		}
	}
}

var (
	lumpsSaid = regexp.MustCompile(`^(?:beyond that the answer changes (\d+) times up to the (\d+) looked at|Up to the (\d+) rolls a year looked at, the answer changes (\d+) times), for orders come in lumps\.$`)
	nowSaid   = regexp.MustCompile(`^now you shoot ([\d.,]+)\.$`)
	spans     = []struct {
		pattern  *regexp.Regexp
		from, to int // group, or −1 for 1
	}{
		{regexp.MustCompile(`(?i)^at any number of rolls a year up to the (\d+) looked at$`), -1, 1},
		{regexp.MustCompile(`(?i)^at (\d+)(?: rolls a year)? or fewer$`), -1, 1},
		{regexp.MustCompile(`(?i)^at (\d+)(?: rolls?(?: a year)?)?$`), 1, 1},
		{regexp.MustCompile(`(?i)^from (\d+) to (\d+)(?: rolls a year)?$`), 1, 2},
		{regexp.MustCompile(`(?i)^from (\d+)(?: rolls a year on,)? up to the (\d+) looked at$`), 1, 2},
	}
)

// volumes asks after a sentence on the rolls a year, part by part.
func (w *witness) volumes(said, offer, other string) {
	if m := lumpsSaid.FindStringSubmatch(said); m != nil {
		w.changes(m, offer, other)
		return
	}
	for part := range strings.SplitSeq(said, "; ") {
		if m := lumpsSaid.FindStringSubmatch(part); m != nil {
			w.changes(m, offer, other)
			continue
		}
		if m := nowSaid.FindStringSubmatch(part); m != nil {
			continue
		}
		comma := strings.LastIndex(part, ", ")
		if comma < 0 {
			w.wrong("nothing here understands %q of %q", part, said)
			return
		}
		who, ok := w.whoIs(part[comma+2:])
		understood := false
		for _, s := range spans {
			if m := s.pattern.FindStringSubmatch(part[:comma]); m != nil {
				from := 1
				if s.from > 0 {
					from, _ = strconv.Atoi(m[s.from])
				}
				to, _ := strconv.Atoi(m[s.to])
				w.between(said, from, to, offer, other, who)
				understood = true
			}
		}
		if !understood || !ok {
			w.wrong("nothing here understands %q of %q", part, said)
		}
	}
}

// whoIs is the offer that a part of a sentence says is cheaper, "" for neither.
func (w *witness) whoIs(text string) (who string, ok bool) {
	text = strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(text, "."), " is cheaper"), " are cheaper")
	if text == AboutTheSame {
		return "", true
	}
	who = w.named(text)
	return who, who != ""
}

// changes counts how often the answer changes; not in every scenario, for it takes long.
func (w *witness) changes(m []string, offer, other string) {
	if w.asked["changes counted"]++; w.asked["changes counted"] > 12 {
		return
	}
	times, _ := strconv.Atoi(m[1] + m[4])
	most, _ := strconv.Atoi(m[2] + m[3])
	p := w.c.Outlook.PairOf(offer)
	if p == nil || p.Offer != offer || p.Other != other {
		p = w.c.Outlook.Pair
	}
	if len(p.Volumes)-1 != times || p.Volumes[times].To != most {
		w.wrong("%q, of %d ranges", m[0], len(p.Volumes))
	}
	for _, r := range p.Volumes {
		who := ""
		switch r.Cheaper {
		case "offer":
			who = offer
		case "other":
			who = other
		}
		for n := r.From; n <= r.To; n++ {
			w.volume(m[0], n, offer, other, who)
		}
	}
}

var titleSpan = regexp.MustCompile(`^(.+?) (?:up to (\d+)|to (\d+)|at (\d+))(?: rolls? a year)?(?: looked at)?$`)

// volumesTitle asks after the ranges as a figure's title says them.
func (w *witness) volumesTitle(title, offer, other string) {
	if strings.Contains(title, "the answer changes") {
		return
	}
	last := 0
	for part := range strings.SplitSeq(title, ", ") {
		m := titleSpan.FindStringSubmatch(strings.Replace(part, "up to the ", "up to ", 1))
		if m == nil {
			w.wrong("nothing here understands %q of %q", part, title)
			return
		}
		who, ok := w.whoIs(strings.Replace(m[1], "About", "about", 1))
		if !ok {
			w.wrong("%q of %q is nobody", m[1], title)
		}
		to, _ := strconv.Atoi(m[2] + m[3] + m[4])
		w.between(title, last+1, to, offer, other, who)
		last = to
	}
}
