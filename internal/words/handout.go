package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

// What the sections of a printed comparison are called.
const (
	HandoutWays     = "Ways to buy"
	HandoutFlips    = "What would change the answer"
	HandoutVolumes  = VolumesTitle
	HandoutAssumed  = "What is assumed"
	HandoutRates    = "Rates"
	HandoutInHand   = "Reels in hand"
	HandoutCautions = "Worth knowing"
)

// HandoutTitle is a printed comparison's title: the scenario and its finding.
func HandoutTitle(c *compare.Comparison, l money.Locale) string {
	return c.Scenario.Name + ": " + Verdict(c, l).Text
}

// More says that so many things are not named: "3 more".
func More(n int) string { return fmt.Sprintf("%d more", n) }

// MoreLeftOut says that so many further offers could not be computed.
func MoreLeftOut(n int) string { return fmt.Sprintf("%d more left out", n) }

// MoreCautions says where cautions stand that found no room.
func MoreCautions(n int) string {
	return fmt.Sprintf("%d more: the program tells them all under Notes.", n)
}

// Way is one way to buy in a table.
type Way struct {
	Cells []string // under WaysHead
	Best  bool     // of its kind
}

// WaysHead heads the table of the ways to buy.
func WaysHead(c *compare.Comparison) []string {
	home := c.Currency()
	return []string{"", home + " a roll", "cash", "all counted", "saved, cash", "saved, all counted"}
}

// Ways are the computed ways to buy, in the order of the file.
func Ways(c *compare.Comparison, l money.Locale) (ways []Way) {
	v := voiceOf(c, l)
	for i := range c.Offers {
		o := &c.Offers[i]
		if o.Fault != nil {
			continue
		}
		cells := []string{o.Name, v.home(o.PerRoll.Total), v.home(o.Year.Total), v.home(o.Year.Cost), "", ""}
		switch {
		case o.Against != nil:
			cells[4], cells[5] = v.home(o.Against.SavingCash), v.home(o.Against.Saving)
		case o.Name == c.Scenario.Baseline:
			cells[5] = ComparedWith
		}
		ways = append(ways, Way{cells, o.Name == c.Verdict.Reel || o.Name == c.Verdict.Boxed})
	}
	return ways
}

// AssumedInShort is what is shot, developed and due at the border, a sentence or two each.
func AssumedInShort(c *compare.Comparison, l money.Locale) (said []string) {
	v := voiceOf(c, l)
	for _, text := range []string{v.shooting(), v.developing(c), v.border(c), v.hour()} {
		if text != "" {
			said = append(said, text)
		}
	}
	return said
}

// hour says what time is worth, where it is worth something.
func (v voice) hour() string {
	h := v.typed(v.s.Loading.HourlyValue)
	if h.IsZero() {
		return ""
	}
	return fmt.Sprintf("An hour of work is counted as %s.", v.amount(h))
}

// ReelsInHand are the reels in hand, a line each: what is left of one, what that gives, and
// what is loaded; or why that cannot be told.
func ReelsInHand(list []reels.Standing, l money.Locale) (said []string) {
	for i := range list {
		s := &list[i]
		text := ReelHeadline(s, l) + " " + ReelStock(s, l)
		if s.Fault != nil {
			text = sentence(ReelFault(s))
		}
		said = append(said, s.Name+" – "+text)
	}
	return said
}

// RateLines are the quotes of a scenario, each with its day and source.
func RateLines(c *compare.Comparison, l money.Locale) (said []string) {
	v := voiceOf(c, l)
	for _, r := range c.Scenario.Rates {
		text := v.quote(r.One, r.Equals, r.In)
		if r.Date != (scenario.Date{}) {
			text += ", " + Day(r.Date)
		}
		if r.Source != "" {
			text += ", " + r.Source
		}
		said = append(said, text)
	}
	return said
}
