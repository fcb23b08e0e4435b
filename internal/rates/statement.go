package rates

import (
	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// The sources of quotes that this package makes, as they stand in a scenario.
const (
	SourceStatement = "from a statement"
	SourceBank      = "European Central Bank, reference rate"
)

// daysBack is how many days before a statement's the reference rate may be of: the bank
// is closed at weekends and on holidays.
const daysBack = 7

// Statement is a purchase as a card statement has it: the shop asked Asked of Currency,
// the card took Took of Card.
type Statement struct {
	Asked    exact.Fraction // above 0
	Currency string
	Took     exact.Fraction // above 0
	Card     string         // the currency of the card
	Date     scenario.Date
}

// Worked is what a statement says of a rate.
type Worked struct {
	Rate      exact.Fraction // 1 Currency = Rate Card
	Alone     Taking         // the quote with all the card added in it, and no card fee
	Reference *Reference     // nil without a published rate of that day or the week before
}

// Reference is a statement compared with a published rate.
type Reference struct {
	Day    scenario.Date
	Rate   exact.Fraction // 1 Currency = Rate Card
	Markup exact.Fraction // what the card added, in percent; below 0 where it took less
	// Apart is the published rate as the quote, and what the card added as its fee; nil
	// where the card took less.
	Apart *Taking
}

// Taking is one way to take a statement into a scenario: a quote, and the card fee of the
// offers in that currency. The two ways would count the fee twice together.
type Taking struct {
	Quote          scenario.Rate
	CardFeePercent decimal.Decimal
}

// feePlaces are the decimals of a card fee in percent that is worked out.
const feePlaces = 4

// Work works out the rate that a statement was charged at, and, with a file (nil for
// none), what the card added to the bank's rate. ok is false where the statement's
// amounts are not above 0, its currencies are one, or the rate has no six figures that a
// scenario could hold.
func (s Statement) Work(f *File) (w Worked, ok bool) {
	if s.Asked.Sign() <= 0 || s.Took.Sign() <= 0 || s.Currency == s.Card {
		return w, false
	}
	w.Rate = s.Took.Quo(s.Asked)
	equals, ok := SixFigures(w.Rate)
	if !ok {
		return w, false
	}
	w.Alone = Taking{Quote: s.quote(equals, s.Date, SourceStatement)}
	if f != nil {
		w.Reference = s.against(f, w.Rate)
	}
	return w, true
}

func (s Statement) quote(equals decimal.Decimal, date scenario.Date, source string) scenario.Rate {
	return scenario.Rate{One: s.Currency, Equals: equals, In: s.Card, Date: date, Source: source}
}

// against compares the statement's rate with the bank's of that day.
func (s Statement) against(f *File, charged exact.Fraction) *Reference {
	day, ok := f.WithBoth(s.Currency, s.Card, s.Date, daysBack)
	if !ok {
		return nil
	}
	r := &Reference{Day: day.Date()}
	r.Rate, _ = day.Cross(s.Currency, s.Card)
	r.Markup = markup(charged, r.Rate)
	if equals, ok := asTyped(r.Rate); ok && r.Markup.Sign() >= 0 {
		fee := exact.Max(exact.Fraction{}, markup(charged, exact.FromDecimal(equals))) // of the quote as it is written
		r.Apart = &Taking{s.quote(equals, day.Date(), SourceBank), fee.Decimal(feePlaces)}
	}
	return r
}

// markup is how much more charged is than rate, in percent.
func markup(charged, rate exact.Fraction) exact.Fraction {
	return charged.Quo(rate).Sub(exact.Int(1)).Mul(exact.Int(100))
}
