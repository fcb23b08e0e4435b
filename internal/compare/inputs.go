package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Input names a figure that can change the answer, such as "offer.price" or, for a
// quote as it stands in the file, "rate:USD/EUR" (1 USD = x EUR).
type Input = scenario.Input

// input is an input of a pair: where it stands today, and what another value of it does.
type input struct {
	name  Input
	owner string // the offer it belongs to; "" when it is the scenario's
	quote int    // index of the quote in the file; −1 for anything else
	today exact.Fraction
	moves [2]bool // the sides that go by it
	from  limit   // the least it can be
	// inverse: costs are linear in 1/x, because the quote is divided by.
	inverse bool
	// scale is how the film's value goes by it, for the limits it crosses.
	scale scale
	set   func(t *terms, x exact.Fraction)
	// slope is what 1 more of it adds to the year of a side; nil for what changes the
	// landed cost of an order instead.
	slope func(t *terms) exact.Fraction
}

// limit is the lower end of an input's domain, which is 0.
type limit int

const (
	fromZero  limit = iota // 0 can be had
	aboveZero              // 0 cannot
)

// scale is what an input does to the value of the film in an order.
type scale int

const (
	scaleNone scale = iota
	scalePrice
	scaleRate
)

// inputs are the inputs that apply to a pair and between whose limits the saving is
// linear, in the order of the result.
func (p *pair) inputs() []input {
	list := p.quoteInputs()
	offer, other := &p.terms[offerSide], &p.terms[otherSide]
	both := [2]bool{true, true}
	list = append(list,
		priceInput(scenario.InputOfferPrice, offer, offerSide, p.names[offerSide]),
		priceInput(scenario.InputBaselinePrice, other, otherSide, p.names[otherSide]),
		input{name: scenario.InputOfferShipping, owner: p.names[offerSide], quote: -1, today: offer.asking.shipping, moves: only(offerSide),
			set: func(t *terms, x exact.Fraction) { t.asking.shipping = x }},
	)
	if offer.spendsTime() || other.spendsTime() {
		list = append(list, input{name: scenario.InputHourlyValue, quote: -1, today: offer.hourly, moves: both,
			set:   func(t *terms, x exact.Fraction) { t.hourly = x },
			slope: func(t *terms) exact.Fraction { return t.minutes().Quo(exact.Int(60)) }})
	}
	for s, name := range [2]Input{scenario.InputOfferDeveloping, scenario.InputBaselineDeveloping} {
		if t := &p.terms[s]; t.developing.counted() {
			list = append(list, input{name: name, owner: p.names[s], quote: -1, today: t.developing.perCassette, moves: only(side(s)),
				set:   func(t *terms, x exact.Fraction) { t.developing.perCassette = x },
				slope: (*terms).cassettes})
		}
	}
	if offer.imported() || other.imported() {
		list = append(list,
			input{name: scenario.InputDutyPercent, quote: -1, today: offer.border.duty, moves: both,
				set: func(t *terms, x exact.Fraction) { t.border.duty = x }},
			input{name: scenario.InputTaxPercent, quote: -1, today: offer.border.tax, moves: both,
				set: func(t *terms, x exact.Fraction) { t.border.tax = x }},
		)
	}
	return list
}

func priceInput(name Input, t *terms, s side, owner string) input {
	return input{name: name, owner: owner, quote: -1, today: t.asking.price, moves: only(s), from: aboveZero, scale: scalePrice,
		set: func(t *terms, x exact.Fraction) { t.asking.price = x }}
}

// quoteInputs are the quotes that the two offers go by, in the order of the file. A
// quote that both use moves both, and always the same way round: a way home that
// ends with it, and one that ends against it, would be for one home currency and
// another.
func (p *pair) quoteInputs() (list []input) {
	for i := range p.rates {
		in := input{name: scenario.RateInput(p.rates[i]), quote: i, today: exact.FromDecimal(p.rates[i].Equals), from: aboveZero, scale: scaleRate}
		used := false
		for s := range p.terms {
			for _, step := range p.terms[s].route {
				if step.Index == i {
					used, in.moves[s], in.inverse = true, true, step.Against
				}
			}
		}
		if !used {
			continue
		}
		today, inverse := in.today, in.inverse
		in.set = func(t *terms, x exact.Fraction) {
			if inverse {
				t.rate = t.rate.Mul(today).Quo(x)
			} else {
				t.rate = t.rate.Mul(x).Quo(today)
			}
		}
		list = append(list, in)
	}
	return list
}

func only(s side) (moves [2]bool) {
	moves[s] = true
	return moves
}

// with is a side's terms with the input at x. They share what does not go by it.
func (in *input) with(t *terms, s side, x exact.Fraction) terms {
	c := *t
	if in.moves[s] {
		in.set(&c, x)
	}
	return c
}

// farthest is how far up the input is searched.
func (in *input) farthest() exact.Fraction {
	if in.today.IsZero() {
		return exact.Int(100)
	}
	return in.today.Mul(exact.Int(10))
}

// spendsTime says whether the offer takes minutes of loading or developing.
func (t *terms) spendsTime() bool {
	return t.loading.minutesPerReel.Add(t.minutesPerCassette()).Sign() > 0
}

// imported says whether duty and import tax are settled for the offer.
func (t *terms) imported() bool {
	return t.customs == scenario.ImportBorder || t.customs == scenario.ImportPrepaid
}
