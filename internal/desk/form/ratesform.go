package form

import (
	"fmt"
	"slices"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func (b forms) ratesForm(s *scenario.Scenario) *Form {
	f := &Form{
		title:    always(words.TopicRates),
		subtitle: always(words.UnderRates),
	}
	f.groups = append(f.groups, group{actions: kit.Objects(kit.NewLine(20,
		kit.NewLink(words.LinkDayRates, b.e.AskDayRates), kit.NewLink(words.LinkStatement, b.e.AskStatement)))})
	for n, p := range missingPairs(s) {
		f.groups = append(f.groups, group{heading: words.CurrencyPair(p.one, p.in), fields: b.wantedQuote(p, wantedKey(s, n))})
	}
	for i := range s.Rates {
		f.groups = append(f.groups, b.rateGroup(s, i))
	}
	if g, ok := b.furtherRate(s); ok {
		f.groups = append(f.groups, g)
	}
	return f
}

// rateGroup is the quote at a place with all that is known of it.
func (b forms) rateGroup(s *scenario.Scenario, i int) group {
	at := func(s *scenario.Scenario) *scenario.Rate { return &s.Rates[i] }
	key := func(k string) string { return fmt.Sprintf("rate[%d].%s", i+1, k) }
	code := func(k string, to func(*scenario.Rate) *string) Binding {
		return texts(key(k), func(s *scenario.Scenario) *string { return to(at(s)) })
	}
	r := s.Rates[i]
	one := b.currencyField(s, code("one", func(r *scenario.Rate) *string { return &r.One }))
	in := b.currencyField(s, code("in", func(r *scenario.Rate) *string { return &r.In }))
	one.instead, in.instead = b.swapped(r, i), b.swapped(r, i)
	var links []*kit.Link
	if _, ok := rates.TurnRound(r); ok {
		links = append(links, kit.NewLink(words.LinkTurnRound(r.In, r.One), b.does(turnRound(i))))
	}
	links = append(links, kit.NewLink(words.LinkRemove, b.does(func(s *session.Session) { s.RemoveQuote(i) })))
	return group{heading: words.CurrencyPair(r.One, r.In), fields: []*Field{
		one,
		b.quote(s, i),
		in,
		b.text(dates(key("date"), func(s *scenario.Scenario) *scenario.Date { return &at(s).Date })),
		b.text(texts(key("source"), func(s *scenario.Scenario) *string { return &at(s).Source })),
	}, actions: kit.Objects(kit.NewLine(14, kit.Objects(links...)...))}
}

// turnRound puts the quote at a place the other way round, and how far it swings with it.
func turnRound(i int) func(*session.Session) {
	return func(s *session.Session) {
		s.Alter(words.StepTurnRate, func(s *scenario.Scenario) {
			was := s.Rates[i]
			if turned, ok := rates.TurnRound(was); ok {
				s.Rates[i] = turned
				rates.TurnRanges(s, was, turned)
			}
		})
	}
}

// swapped asks whether the two are to change places, where one of them was chosen to be
// the same as the other.
func (b forms) swapped(was scenario.Rate, i int) func(*scenario.Scenario) *question {
	return func(next *scenario.Scenario) *question {
		if _, ok := rates.TurnRound(was); !ok || next.Rates[i].One != next.Rates[i].In {
			return nil
		}
		return &question{
			why:     words.SameOnBothSides(next.Rates[i].One),
			answers: []kit.Answer{{Label: words.AnswerSwap, Do: b.does(turnRound(i))}},
		}
	}
}

// furtherRate is an empty field for the rate of a currency that no offer needs yet; ok is
// false where all have one.
func (b forms) furtherRate(s *scenario.Scenario) (g group, ok bool) {
	wanted := missingPairs(s)
	var free []kit.Option
	for _, o := range AllCurrencies {
		p := pair{o.Value, s.Home}
		if o.Value != s.Home && quoteAt(s, p) < 0 && !slices.Contains(wanted, p) {
			free = append(free, o)
		}
	}
	if len(free) == 0 {
		return group{}, false
	}
	if !slices.ContainsFunc(free, func(o kit.Option) bool { return o.Value == *b.further }) {
		*b.further = commonest(free)
	}
	choice := Binding{
		Key: fmt.Sprintf("rate[%d].one", len(s.Rates)+1+len(wanted)), Name: calledIn("rate.one"),
		Get: func(*scenario.Scenario, money.Locale) string { return *b.further },
		set: func(_ *scenario.Scenario, code string, _ money.Locale) error {
			*b.further = code
			return nil
		},
	}
	f := b.newQuote(pair{*b.further, s.Home}, wantedKey(s, len(wanted)))
	f.wanted = words.WantedFurther
	return group{heading: words.GroupFurtherRate, fields: []*Field{
		b.choice(kit.NumberWidth, free, choice), f,
	}}, true
}

// commonest is the likeliest currency to be added.
func commonest(free []kit.Option) string {
	for _, code := range []string{"USD", "EUR", "GBP", "JPY"} {
		if slices.ContainsFunc(free, func(o kit.Option) bool { return o.Value == code }) {
			return code
		}
	}
	return free[0].Value
}
