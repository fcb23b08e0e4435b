package form

import (
	"fmt"
	"slices"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// TypedByHand is the source of a quote that the user typed.
const TypedByHand = words.TypedByHand

// pair is two currencies between which a quote is wanted.
type pair struct{ one, in string }

// missingPairs are the currencies of offers that no quote brings home.
func missingPairs(s *scenario.Scenario) (list []pair) {
	for _, o := range s.Offers {
		p := pair{o.Currency, s.Home}
		if lacksQuote(s, p) && !slices.Contains(list, p) {
			list = append(list, p)
		}
	}
	return list
}

// lacksQuote says whether nothing leads from one currency to the other.
func lacksQuote(s *scenario.Scenario, p pair) bool {
	if p.one == p.in || quoteAt(s, p) >= 0 { // one that is twice there is not missing
		return false
	}
	_, err := s.Book().Route(p.one, p.in)
	return err != nil
}

// quoteAt is the place of the quote between two currencies, −1 for none.
func quoteAt(s *scenario.Scenario, p pair) int {
	return slices.IndexFunc(s.Rates, func(r scenario.Rate) bool {
		return r.One == p.one && r.In == p.in || r.One == p.in && r.In == p.one
	})
}

// quoteFields are the quote that connects a currency with home: the one there is, or an
// empty field for each direction of one that is missing. There are none where none is
// needed, or the way leads through a third currency.
func (b forms) quoteFields(s *scenario.Scenario, code string) []*Field {
	p := pair{code, s.Home}
	if i := quoteAt(s, p); i >= 0 && code != s.Home {
		return []*Field{b.quote(s, i)}
	}
	if !lacksQuote(s, p) {
		return nil
	}
	return b.wantedQuote(p, WantedQuote(s, code))
}

// WantedQuote is the key of the field for the rate that an offer's currency lacks; "" where
// it lacks none. The form of the rates has it, and the offer's own.
func WantedQuote(s *scenario.Scenario, code string) string {
	n := slices.Index(missingPairs(s), pair{code, s.Home})
	if n < 0 {
		return ""
	}
	return wantedKey(s, n)
}

// wantedKey is the key of the quote that is wanted n-th: the place that the first of them
// will have. Of the others only a typed one gets a place.
func wantedKey(s *scenario.Scenario, n int) string {
	return fmt.Sprintf("rate[%d].equals", len(s.Rates)+1+n)
}

// wantedQuote is an empty field for each direction of a quote that is missing.
func (b forms) wantedQuote(p pair, key string) []*Field {
	with := b.newQuote(p, key)
	against := b.newQuote(pair{p.in, p.one}, key+" of "+p.in)
	with.wanted, against.wanted = words.WantedRate, words.WantedOtherWay
	return []*Field{with, against}
}

// newQuote is an empty field that becomes a quote when a number is typed.
func (b forms) newQuote(p pair, key string) *Field {
	equals := Binding{
		Key: key, Name: words.Of(calledIn("rate.equals"), words.RateIn(p.one, p.in)),
		Get: func(s *scenario.Scenario, l money.Locale) string {
			if i := quoteAt(s, p); i >= 0 && s.Rates[i].One == p.one {
				return l.Field(s.Rates[i].Equals)
			}
			return ""
		},
		set: func(s *scenario.Scenario, text string, l money.Locale) error {
			v, err := ReadNumber(text, l)
			if err != nil {
				return err
			}
			quote := scenario.Rate{One: p.one, Equals: v, In: p.in, Date: b.today, Source: TypedByHand}
			if i := quoteAt(s, p); i >= 0 {
				s.Rates[i] = quote
			} else {
				s.Rates = append(s.Rates, quote)
			}
			return nil
		},
	}
	equals.fixed = func(*scenario.Scenario) string { return p.in }
	return numberField(b.e, words.OneIs(p.one), p.in, equals).means(quoteMeaning(p))
}

// quote is the field of the quote at a place. A quote that is typed is of today.
func (b forms) quote(s *scenario.Scenario, i int) *Field {
	at := func(s *scenario.Scenario) *scenario.Rate { return &s.Rates[i] }
	r := at(s)
	equals := decimals(fmt.Sprintf("rate[%d].equals", i+1), func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Equals }).
		of(words.RateIn(r.One, r.In))
	equals = equals.then(func(s *scenario.Scenario) {
		if src := at(s).Source; src == "" || src == TypedByHand {
			at(s).Date, at(s).Source = b.today, TypedByHand
		}
	})
	equals.fixed = func(s *scenario.Scenario) string { return at(s).In }
	f := numberField(b.e, words.OneIs(r.One), "", equals)
	f.unitOf(func(s *scenario.Scenario) string { return at(s).In })
	return f.means(fmt.Sprintf("rate[%d].equals", i+1))
}

// quoteMeaning is what to ask for beside a quote that has no place yet.
func quoteMeaning(p pair) string { return "quote " + p.one + " " + p.in }

// quoteMeant is the quote that a meaning is asked of; ok is false where it is of
// something else. The quote may be at no place yet: −1.
func quoteMeant(s *scenario.Scenario, meaning string) (i int, ok bool) {
	if n, _ := fmt.Sscanf(meaning, "rate[%d].equals", &i); n == 1 {
		return i - 1, true
	}
	var p pair
	if n, _ := fmt.Sscanf(meaning, "quote %s %s", &p.one, &p.in); n != 2 {
		return -1, false
	}
	i = quoteAt(s, p)
	if i >= 0 && s.Rates[i].One != p.one {
		i = -1 // it stands in the other direction's field
	}
	return i, true
}
