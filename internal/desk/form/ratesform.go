package form

import (
	"fmt"
	"slices"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// quoteFields are the quote that connects a currency with home: the one there is, or an
// empty field for each direction of one that is missing. There are none where none is
// needed, or the way leads through a third currency.
func (b forms) quoteFields(s *scenario.Scenario, code string) []*Field {
	if code == s.Home {
		return nil
	}
	if i := quoteAt(s, code); i >= 0 {
		return []*Field{b.quote(s, i)}
	}
	if _, err := s.Book().Route(code, s.Home); err == nil {
		return nil
	}
	with, against := b.missingQuote(s, code, s.Home), b.missingQuote(s, s.Home, code)
	with.wanted, against.wanted = "type today's rate", "or the other way round"
	return []*Field{with, against}
}

func quoteAt(s *scenario.Scenario, code string) int {
	return slices.IndexFunc(s.Rates, func(r scenario.Rate) bool {
		return r.One == code && r.In == s.Home || r.One == s.Home && r.In == code
	})
}

// missingQuote is an empty field that becomes a quote when a number is typed.
func (b forms) missingQuote(s *scenario.Scenario, one, in string) *Field {
	place := len(s.Rates)
	key := fmt.Sprintf("rate[%d].equals", place+1)
	if one == s.Home {
		key += " of " + one // the other direction of the same quote
	}
	equals := Binding{
		Key: key, Name: "rate of " + one + " in " + in,
		Get: func(s *scenario.Scenario, l money.Locale) string {
			if place < len(s.Rates) && s.Rates[place].One == one {
				return l.Field(s.Rates[place].Equals)
			}
			return ""
		},
		set: func(s *scenario.Scenario, text string, l money.Locale) error {
			v, err := ReadNumber(text, l)
			if err == nil {
				quote := scenario.Rate{One: one, Equals: v, In: in, Date: b.today, Source: TypedByHand}
				s.Rates = append(s.Rates[:place:place], quote)
			}
			return err
		},
	}
	f := numberField(b.e, "1 "+one+" is", in, equals)
	return f.means(fmt.Sprintf("rate[%d].equals", place+1))
}

// quote is the field of the quote at a place. A quote that is typed is of today.
func (b forms) quote(s *scenario.Scenario, i int) *Field {
	at := func(s *scenario.Scenario) *scenario.Rate { return &s.Rates[i] }
	r := at(s)
	equals := decimals(fmt.Sprintf("rate[%d].equals", i+1), fmt.Sprintf("rate of %s in %s", r.One, r.In),
		func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Equals })
	equals = equals.then(func(s *scenario.Scenario) {
		if src := at(s).Source; src == "" || src == TypedByHand {
			at(s).Date, at(s).Source = b.today, TypedByHand
		}
	})
	f := numberField(b.e, "1 "+r.One+" is", "", equals)
	f.unitOf(func(s *scenario.Scenario) string { return at(s).In })
	return f.means(fmt.Sprintf("rate[%d].equals", i+1))
}

// TypedByHand is the source of a quote that the user typed.
const TypedByHand = "typed"

func (b forms) ratesForm(s *scenario.Scenario) *Form {
	f := &Form{
		title:    always("Exchange rates"),
		subtitle: always("what one unit of a currency is in another"),
	}
	for i := range s.Rates {
		at := func(s *scenario.Scenario) *scenario.Rate { return &s.Rates[i] }
		key := func(k string) string { return fmt.Sprintf("rate[%d].%s", i+1, k) }
		code := func(k string, to func(*scenario.Rate) *string) Binding {
			return texts(key(k), "quote", func(s *scenario.Scenario) *string { return to(at(s)) })
		}
		one, in := s.Rates[i].One, s.Rates[i].In
		f.groups = append(f.groups, group{heading: one + " and " + in, fields: []*Field{
			b.currencyField(s, "One", code("one", func(r *scenario.Rate) *string { return &r.One })),
			b.quote(s, i),
			b.currencyField(s, "in", code("in", func(r *scenario.Rate) *string { return &r.In })),
			wordField(b.e, "Date", dates(key("date"), "date of a quote", func(s *scenario.Scenario) *scenario.Date { return &at(s).Date })),
			wordField(b.e, "Source", code("source", func(r *scenario.Rate) *string { return &r.Source })),
		}, actions: kit.Objects(kit.NewLink("Remove", b.does(func(s *session.Session) { s.RemoveQuote(i) })))})
	}
	if len(s.Rates) == 0 {
		f.subtitle = always("choose another currency for an offer, and its rate is asked for")
	}
	return f
}
