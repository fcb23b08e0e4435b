package words

import (
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// rivals are the two offers that a flip or a swing is about.
type rivals struct {
	voice
	offer, other string
}

// InputName names an input in a table, for an offer compared with another: "price of the
// reel", "1 USD".
func InputName(c *compare.Comparison, offer, other string, input scenario.Input) string {
	return rivals{voiceOf(c, ""), offer, other}.name(input)
}

// InputValue is an input's value with its unit: "USD 118.00", "4.2 %", "43",
// "0.8875 EUR".
func InputValue(c *compare.Comparison, offer, other string, input scenario.Input, x exact.Fraction, l money.Locale) string {
	return rivals{voiceOf(c, l), offer, other}.value(input, x)
}

func (r rivals) name(input scenario.Input) string {
	switch input {
	case scenario.InputOfferPrice:
		return "price of " + Called(r.s, r.offer)
	case scenario.InputBaselinePrice:
		return "price of " + Called(r.s, r.other)
	case scenario.InputOfferShipping:
		return "shipping of " + Called(r.s, r.offer)
	case scenario.InputSpoiledPercent:
		return "spoiled share of " + Called(r.s, r.offer)
	case scenario.InputHourlyValue:
		return "an hour of your time"
	case scenario.InputOfferDeveloping:
		return "developing " + Called(r.s, r.offer) + ", a cassette" + r.besides(r.offer)
	case scenario.InputBaselineDeveloping:
		return "developing " + Called(r.s, r.other) + ", a cassette" + r.besides(r.other)
	case scenario.InputDutyPercent:
		return "duty"
	case scenario.InputTaxPercent:
		return "import tax"
	case scenario.InputRollsAYear:
		return "rolls a year"
	}
	one, _ := pairOfRate(input)
	return "1 " + one
}

// besides says that developing at home has other costs too, which stay.
func (r rivals) besides(name string) string {
	if o := offerNamed(r.s, name); o != nil {
		if d := processNamed(r.s, o.Developing); d != nil && d.Way == scenario.Home {
			return " beside chemistry"
		}
	}
	return ""
}

func pairOfRate(input scenario.Input) (one, in string) {
	pair, _ := input.Quote()
	one, in, _ = strings.Cut(pair, "/")
	return one, in
}

// currency is what an input is priced in; "" for percents, rolls and quotes.
func (r rivals) currency(input scenario.Input) string {
	of := r.offer
	switch input {
	case scenario.InputHourlyValue, scenario.InputOfferDeveloping, scenario.InputBaselineDeveloping:
		return r.shown()
	case scenario.InputBaselinePrice:
		of = r.other
	case scenario.InputOfferPrice, scenario.InputOfferShipping:
	default:
		return ""
	}
	if o := offerNamed(r.s, of); o != nil {
		return o.Currency
	}
	return r.s.Home
}

func (r rivals) value(input scenario.Input, x exact.Fraction) string {
	if currency := r.currency(input); currency != "" {
		return r.l.Amount(x, currency)
	}
	switch input {
	case scenario.InputSpoiledPercent, scenario.InputDutyPercent, scenario.InputTaxPercent:
		return r.plain(x, 2) + " %"
	case scenario.InputRollsAYear:
		return r.plain(x, 2)
	}
	_, in := pairOfRate(input)
	return r.l.Field(scenario.Trim(significant(x))) + noBreak + in
}
