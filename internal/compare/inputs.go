package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Input names a figure that can change the answer, such as "offer.price" or, for a
// quote as it stands in the file, "rate:USD/EUR" (1 USD = x EUR).
type Input = scenario.Input

// side is one of the two offers held against each other.
type side int

const (
	offerSide side = iota
	otherSide
)

// duel is an offer held against another, the terms of both free to be changed.
type duel struct {
	names [2]string
	terms [2]terms
	rates []scenario.Rate
}

// knob is an input of a duel: where it stands today, and what turning it does.
type knob struct {
	input Input
	owner string // the offer it belongs to; "" when it is the scenario's
	quote int    // index of the quote in the file; −1 for anything else
	today exact.Fraction
	moves [2]bool // the sides that go by it
	from  limit   // the least it can be
	// inverse: costs are linear in 1/x, because the quote is divided by.
	inverse bool
	// scale is how the film's value goes by it, for the limits it crosses.
	scale scale
	turn  func(t *terms, x exact.Fraction)
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

// knobs are the inputs that apply to a duel and between whose limits the saving is
// linear, in the order of the result.
func (d *duel) knobs() []knob {
	list := d.quoteKnobs()
	offer, other := &d.terms[offerSide], &d.terms[otherSide]
	both := [2]bool{true, true}
	list = append(list,
		priceKnob(scenario.InputOfferPrice, offer, offerSide, d.names[offerSide]),
		priceKnob(scenario.InputBaselinePrice, other, otherSide, d.names[otherSide]),
		knob{input: scenario.InputOfferShipping, owner: d.names[offerSide], quote: -1, today: offer.asking.shipping, moves: only(offerSide),
			turn: func(t *terms, x exact.Fraction) { t.asking.shipping = x }},
	)
	if offer.spendsTime() || other.spendsTime() {
		list = append(list, knob{input: scenario.InputHourlyValue, quote: -1, today: offer.hourly, moves: both,
			turn:  func(t *terms, x exact.Fraction) { t.hourly = x },
			slope: func(t *terms) exact.Fraction { return t.minutes().Quo(exact.Int(60)) }})
	}
	for s, input := range [2]Input{scenario.InputOfferDeveloping, scenario.InputBaselineDeveloping} {
		if t := &d.terms[s]; t.developing.counted() {
			list = append(list, knob{input: input, owner: d.names[s], quote: -1, today: t.developing.perCassette, moves: only(side(s)),
				turn:  func(t *terms, x exact.Fraction) { t.developing.perCassette = x },
				slope: (*terms).cassettes})
		}
	}
	if offer.imported() || other.imported() {
		list = append(list,
			knob{input: scenario.InputDutyPercent, quote: -1, today: offer.border.duty, moves: both,
				turn: func(t *terms, x exact.Fraction) { t.border.duty = x }},
			knob{input: scenario.InputTaxPercent, quote: -1, today: offer.border.tax, moves: both,
				turn: func(t *terms, x exact.Fraction) { t.border.tax = x }},
		)
	}
	return list
}

func priceKnob(input Input, t *terms, s side, owner string) knob {
	return knob{input: input, owner: owner, quote: -1, today: t.asking.price, moves: only(s), from: aboveZero, scale: scalePrice,
		turn: func(t *terms, x exact.Fraction) { t.asking.price = x }}
}

// quoteKnobs are the quotes that the two offers go by, in the order of the file. A
// quote that both use moves both, and always the same way round: a way home that
// ends with it, and one that ends against it, would be for one home currency and
// another.
func (d *duel) quoteKnobs() (list []knob) {
	for i := range d.rates {
		k := knob{input: scenario.RateInput(d.rates[i]), quote: i, today: exact.FromDecimal(d.rates[i].Equals), from: aboveZero, scale: scaleRate}
		used := false
		for s := range d.terms {
			for _, step := range d.terms[s].route {
				if step.Index == i {
					used, k.moves[s], k.inverse = true, true, step.Against
				}
			}
		}
		if !used {
			continue
		}
		today, inverse := k.today, k.inverse
		k.turn = func(t *terms, x exact.Fraction) {
			if inverse {
				t.rate = t.rate.Mul(today).Quo(x)
			} else {
				t.rate = t.rate.Mul(x).Quo(today)
			}
		}
		list = append(list, k)
	}
	return list
}

func only(s side) (moves [2]bool) {
	moves[s] = true
	return moves
}

// turned is a side's terms with the input at x. They share what is not turned.
func (k *knob) turned(t *terms, s side, x exact.Fraction) terms {
	c := *t
	if k.moves[s] {
		k.turn(&c, x)
	}
	return c
}

// farthest is how far up the input is searched.
func (k *knob) farthest() exact.Fraction {
	if k.today.IsZero() {
		return exact.Int(100)
	}
	return k.today.Mul(exact.Int(10))
}

// spendsTime says whether the offer takes minutes of loading or developing.
func (t *terms) spendsTime() bool {
	return t.loading.minutesPerReel.Add(t.minutesPerCassette()).Sign() > 0
}

// imported says whether duty and import tax are settled for the offer.
func (t *terms) imported() bool {
	return t.customs == scenario.ImportBorder || t.customs == scenario.ImportPrepaid
}
