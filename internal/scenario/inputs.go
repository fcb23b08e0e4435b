package scenario

import "strings"

// Input names a figure whose change may change the answer, such as "offer.price" or
// "rate:USD/EUR", the quote as it stands in the file (1 USD = x EUR).
type Input string

// The inputs beside the quotes. "Offer" is whichever offer is compared with the
// baseline.
const (
	InputOfferPrice         Input = "offer.price"
	InputBaselinePrice      Input = "baseline.price"
	InputOfferShipping      Input = "offer.shipping"
	InputSpoiledPercent     Input = "offer.spoiled_percent"
	InputHourlyValue        Input = "loading.hourly_value"
	InputOfferDeveloping    Input = "offer.developing"    // a lab's price, or what a cassette costs at home beside chemistry
	InputBaselineDeveloping Input = "baseline.developing" // likewise
	InputDutyPercent        Input = "border.duty_percent"
	InputTaxPercent         Input = "border.tax_percent"
	InputRollsAYear         Input = "shooting.rolls_a_year"
)

// RatePrefix is how the name of a quote begins.
const RatePrefix = "rate:"

// RateInput names a quote.
func RateInput(r Rate) Input { return Input(RatePrefix + r.One + "/" + r.In) }

// Inputs are the inputs of a scenario: its quotes, then the others.
func (s *Scenario) Inputs() []Input {
	var list []Input
	for _, r := range s.Rates {
		list = append(list, RateInput(r))
	}
	return append(list,
		InputOfferPrice, InputBaselinePrice, InputOfferShipping, InputSpoiledPercent, InputHourlyValue,
		InputOfferDeveloping, InputBaselineDeveloping, InputDutyPercent, InputTaxPercent, InputRollsAYear)
}

// Allows says whether an input can have that value.
func (i Input) Allows(d Decimal) bool {
	code, _ := i.Rule().Broken(d)
	return code == ""
}

// What the values of inputs keep to.
var (
	aboveNothing   = Rule{Above: bound("0")}
	partOfHundred  = Rule{Min: bound("0"), Below: bound("100")}
	nothingOrAbove = Rule{Min: bound("0")}
)

// Rule is what an input's value must keep to.
func (i Input) Rule() *Rule {
	switch {
	case strings.HasPrefix(string(i), RatePrefix), i == InputOfferPrice, i == InputBaselinePrice:
		return &aboveNothing
	case i == InputSpoiledPercent:
		return &partOfHundred
	}
	return &nothingOrAbove
}

// Quote is the pair of an input that is a quote: "USD/EUR".
func (i Input) Quote() (pair string, ok bool) { return strings.CutPrefix(string(i), RatePrefix) }
