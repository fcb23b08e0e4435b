package words

import (
	"fmt"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
)

// Summary is a comparison in short, to stand under a talk: at most 12 lines.
type Summary struct {
	Finding string   // the scenario and its headline
	Rolls   []string // what a roll costs, at most 7 lines
	// Closing is the year, what is assumed, the rates, and who said so when; at most 4.
	Closing []string
}

// nextShown is how many ways to buy a summary names beside the best of each kind.
const nextShown = 4

// Summarise is the summary of a comparison, made on a day.
func Summarise(c *compare.Comparison, on scenario.Date, l money.Locale) Summary {
	v := voiceOf(c, l)
	s := Summary{Finding: c.Scenario.Name + ": " + Verdict(c, l).Text}
	best := bestOfEach(c)
	for _, o := range best {
		s.Rolls = append(s.Rolls, fmt.Sprintf("%s, the best %s", v.priced(o), o.Kind))
	}
	others := cheapestFirst(c, best)
	for _, o := range others[:min(nextShown, len(others))] {
		s.Rolls = append(s.Rolls, v.priced(o))
	}
	if more := v.unnamed(c, max(0, len(others)-nextShown)); more != "" {
		s.Rolls = append(s.Rolls, more)
	}
	if len(best) > 0 {
		s.Closing = append(s.Closing, v.yearInShort(best))
	}
	s.Closing = append(s.Closing, join(v.shooting(), v.developing(c), v.border(c)), join(v.ratesUsed(c), ShownIn(c, l)), ComputedOn(on))
	return s
}

// ComputedOn says which version computed something on which day: "Reelworth 0.1.0,
// 20 Nov 2026".
func ComputedOn(on scenario.Date) string {
	text := "Reelworth " + version.String()
	if day := Day(on); day != "" {
		text += ", " + day
	}
	return text
}

// bestOfEach are the verdict's reel and boxed offer, those there are.
func bestOfEach(c *compare.Comparison) (best []*compare.Offer) {
	for _, name := range []string{c.Verdict.Reel, c.Verdict.Boxed} {
		if o := c.Find(name); o != nil {
			best = append(best, o)
		}
	}
	return best
}

// cheapestFirst are the other computed offers, by what a roll costs.
func cheapestFirst(c *compare.Comparison, but []*compare.Offer) (others []*compare.Offer) {
	for i := range c.Offers {
		if o := &c.Offers[i]; o.Fault == nil && !slices.Contains(but, o) {
			others = append(others, o)
		}
	}
	slices.SortStableFunc(others, func(a, b *compare.Offer) int { return a.PerRoll.Total.Cmp(b.PerRoll.Total) })
	return others
}

func (v voice) priced(o *compare.Offer) string {
	return fmt.Sprintf("%s: %s a roll", o.Name, v.amount(o.PerRoll.Total))
}

// unnamed says how many offers are not named, and how many could not be computed.
func (v voice) unnamed(c *compare.Comparison, more int) string {
	out := len(c.Verdict.LeftOut)
	switch {
	case more > 0 && out > 0:
		return fmt.Sprintf("%d more, and %d left out", more, out)
	case more > 0:
		return fmt.Sprintf("%d more", more)
	case out > 0:
		return fmt.Sprintf("%d left out", out)
	}
	return ""
}

// yearInShort is what the best offers' months come to.
func (v voice) yearInShort(best []*compare.Offer) string {
	told := func(o *compare.Offer) string {
		return fmt.Sprintf("%s in cash, %s all counted, for the best %s", v.amount(o.Year.Total), v.amount(o.Year.Cost), o.Kind)
	}
	text := theMonths(v.s) + ": " + told(best[0])
	if len(best) > 1 {
		text += "; " + told(best[1])
	}
	return text + "."
}

// theMonths are the scenario's months at the head of a line: "The year", "The 30 months".
func theMonths(s *scenario.Scenario) string {
	switch s.Months {
	case 1:
		return "The month"
	case 12:
		return "The year"
	}
	return fmt.Sprintf("The %d months", s.Months)
}
