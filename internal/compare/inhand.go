package compare

import (
	"slices"
	"strconv"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// PutInHand is the reel in hand that one unit of a reel offer becomes when it has come:
// cut as the offer says, paid what a unit comes to, landed. It takes the offer's name, or
// with a number where taken says that a reel has it. ok is false for an offer that is no
// reel or could not be computed.
func PutInHand(c *Comparison, offer string, bought scenario.Date, taken func(name string) bool) (r scenario.InHand, ok bool) {
	o, at := c.Find(offer), slices.IndexFunc(c.Scenario.Offers, func(o scenario.Offer) bool { return o.Name == offer })
	if o == nil || at < 0 {
		return r, false
	}
	in := &c.Scenario.Offers[at]
	if in.Kind != scenario.KindReel || in.Reel == nil {
		return r, false
	}
	r = scenario.Defaults[scenario.InHand]()
	r.Reel = *in.Reel
	r.Reel.Extra = nil
	r.Name = freeName(offer, taken)
	r.Offer, r.Process = offer, in.Developing
	r.Bought = bought
	if in.KeepsMonths.Set && bought != (scenario.Date{}) {
		if months, whole := exact.FromDecimal(in.KeepsMonths.Decimal).Floor().Int64(); whole {
			r.KeepsUntil = bought.AddMonths(months)
		}
	}
	r.Paid = o.Order.Landed.Quo(exact.Int(int64(o.Order.Units))).Decimal(money.Places(c.Scenario.Home))
	r.Currency = c.Scenario.Home
	return r, true
}

// freeName is name, or the first of name 2, name 3 … that is not taken.
func freeName(name string, taken func(string) bool) string {
	free := name
	for n := 2; taken(free); n++ {
		number := " " + strconv.Itoa(n)
		free = cutTo(name, scenario.LongestLine-len(number)) + number
	}
	return free
}

// cutTo is text of at most so many letters.
func cutTo(text string, most int) string {
	if letters := []rune(text); len(letters) > most {
		return string(letters[:most])
	}
	return text
}
