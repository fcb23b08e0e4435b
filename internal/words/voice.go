package words

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// voice speaks about one scenario in one locale. Its amounts are in the home currency, or
// in the one that the comparison is shown in.
type voice struct {
	s  *scenario.Scenario
	l  money.Locale
	in compare.Shown
}

// voiceOf speaks about a comparison, in the currency it is shown in.
func voiceOf(c *compare.Comparison, l money.Locale) voice { return voice{&c.Scenario, l, c.Shown} }

// shown is the currency of the amounts.
func (v voice) shown() string {
	if v.in.Currency != "" {
		return v.in.Currency
	}
	return v.s.Home
}

// typed is an amount that the scenario has, in the currency of the others.
func (v voice) typed(d scenario.Decimal) exact.Fraction {
	if v.in.Currency != "" {
		return exact.FromDecimal(d).Mul(v.in.Factor)
	}
	return exact.FromDecimal(d)
}

// whole is an amount at home for a headline: "EUR 211".
func (v voice) whole(f exact.Fraction) string {
	if v.tiny(f) {
		return v.amount(f)
	}
	return v.l.Whole(f, v.shown())
}

// bareWhole is whole without the currency: "211".
func (v voice) bareWhole(f exact.Fraction) string {
	if v.tiny(f) {
		return v.bare(f, v.shown())
	}
	return v.l.Number(f, 0)
}

// tiny says that f would read as nothing in whole units although it is something.
func (v voice) tiny(f exact.Fraction) bool {
	return !f.IsZero() && f.Round(0).IsZero()
}

// amount is an amount at home to the minor unit: "EUR 30.62".
func (v voice) amount(f exact.Fraction) string { return v.l.Amount(f, v.shown()) }

// bare is an amount to the minor unit without its currency: "30.62".
func (v voice) bare(f exact.Fraction, currency string) string {
	return v.l.Number(f, money.Places(currency))
}

// home is bare in the home currency.
func (v voice) home(f exact.Fraction) string { return v.bare(f, v.shown()) }

// plain is a number with the decimals it has, at most most of them.
func (v voice) plain(f exact.Fraction, most int) string {
	places := 0
	for places < most && !f.Round(places).Equal(f) {
		places++
	}
	for places > 0 && f.Round(places).Equal(f.Round(places-1)) {
		places--
	}
	return v.l.Number(f, places)
}

// percent is "4.5 %".
func (v voice) percent(f exact.Fraction) string { return v.plain(f, 4) + " %" }

// share is a part of something in whole percents: "62 %".
func (v voice) share(f exact.Fraction) string {
	return v.l.Number(f.Mul(exact.Int(100)), 0) + " %"
}

// rolls is a number of rolls in whole ones: "9 rolls", "1 roll".
func (v voice) rolls(f exact.Fraction) string { return v.counted(f.Round(0), "roll") }

// counted is a number with its noun: "1 roll", "17.46 rolls".
func (v voice) counted(f exact.Fraction, noun string) string {
	if f.Equal(exact.Int(1)) {
		return v.plain(f, 2) + " " + noun
	}
	return v.plain(f, 2) + " " + noun + "s"
}

// period is when the scenario's months are: "this year", "in 6 months", "in 5 years".
func period(months int) string {
	switch {
	case months == 12:
		return "this year"
	case months == 1:
		return "in 1 month"
	case months%12 == 0:
		return fmt.Sprintf("in %d years", months/12)
	}
	return fmt.Sprintf("in %d months", months)
}

// perPeriod is period for a cost: "a year", "in 6 months".
func perPeriod(months int) string {
	if months == 12 {
		return "a year"
	}
	return period(months)
}

// MonthName names month n of the scenario, counted from 1: "July", or "July 2028" where
// there is more than one July.
func MonthName(s *scenario.Scenario, n int) string {
	m := s.FirstMonth.Add(n - 1)
	if s.Months > 12 {
		return fmt.Sprintf("%s %d", m.Month, m.Year)
	}
	return m.Month.String()
}

// Day is a date for reading: "20 Nov 2026", "" when unset.
func Day(d scenario.Date) string {
	if d == (scenario.Date{}) {
		return ""
	}
	return fmt.Sprintf("%s %d", dayOfYear(d), d.Year)
}

// dayOfYear is a date without its year: "20 Nov".
func dayOfYear(d scenario.Date) string {
	return fmt.Sprintf("%d %s", d.Day, d.Month.String()[:3])
}

// Called is what an offer is called within a sentence: "the reel", "the pack" or "the
// boxed rolls" where it is the only one of its kind, else its name.
func Called(s *scenario.Scenario, name string) string {
	o := offerNamed(s, name)
	if o == nil {
		return name
	}
	same := 0
	for i := range s.Offers {
		if s.Offers[i].Kind == o.Kind {
			same++
		}
	}
	switch {
	case same > 1:
		return name
	case o.Kind == scenario.KindReel:
		return "the reel"
	case o.Boxed != nil && o.Boxed.RollsPerPack > 1:
		return "the pack"
	}
	return "the boxed rolls"
}

// begin is what an offer is called at the start of a sentence. A name keeps the letters
// it was given.
func begin(s *scenario.Scenario, name string) string {
	called := Called(s, name)
	if called == name {
		return name
	}
	return capital(called)
}

// capital is text with a capital first letter.
func capital(text string) string {
	r, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(r)) + text[size:]
}

// sentence is text with one full stop at its end.
func sentence(text string) string {
	return capital(strings.TrimRight(text, " .")) + "."
}

func offerNamed(s *scenario.Scenario, name string) *scenario.Offer {
	for i := range s.Offers {
		if s.Offers[i].Name == name {
			return &s.Offers[i]
		}
	}
	return nil
}

func processNamed(s *scenario.Scenario, name string) *scenario.Developing {
	if name == "" {
		return nil
	}
	for i := range s.Developing {
		if s.Developing[i].Name == name {
			return &s.Developing[i]
		}
	}
	return nil
}

// inputs are the fields of the computed offer at place i, nil when there is none.
func inputs(c *compare.Comparison, i int) *scenario.Offer {
	if i < 0 || i >= len(c.Offers) {
		return nil
	}
	if i < len(c.Scenario.Offers) && c.Scenario.Offers[i].Name == c.Offers[i].Name {
		return &c.Scenario.Offers[i]
	}
	return offerNamed(&c.Scenario, c.Offers[i].Name)
}

// join strings those that say something with single spaces between.
func join(parts ...string) string {
	said := parts[:0:0]
	for _, p := range parts {
		if p != "" {
			said = append(said, p)
		}
	}
	return strings.Join(said, " ")
}
