package words

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
)

// SideBySideName is what scenarios beside each other are called.
const SideBySideName = "Side by side"

// SideBySideTitle is the finding over all scenarios: "The reel is worth it in 2 of 3; it
// saves most a roll in Harbour year: 41 %".
func SideBySideTitle(list []sidebyside.Entry, l money.Locale) string {
	pairs, won := 0, 0
	var most *sidebyside.Entry
	for i := range list {
		e := &list[i]
		a := e.Against()
		if a == nil {
			continue
		}
		pairs++
		switch e.Comparison.Verdict.Kind {
		case compare.VerdictReel:
			won++
		case compare.VerdictUnlike:
			continue // no winner is named
		}
		if a.SavingPercent != nil && a.SavingPercent.Sign() > 0 && (most == nil || most.Against().SavingPercent.Less(*a.SavingPercent)) {
			most = e
		}
	}
	if pairs == 0 {
		return "Nothing to set side by side yet"
	}
	title := fmt.Sprintf("The reel is worth it in %s of %d", numberOrNone(won), pairs)
	if pairs == 1 {
		title = "The reel is worth it"
		if won == 0 {
			title = "The reel is not clearly worth it"
		}
	}
	if most != nil {
		v := voice{l: l}
		title += fmt.Sprintf("; it saves most a roll in %s: %s %%", most.Scenario, v.plain(*most.Against().SavingPercent, 0))
	}
	return title
}

func numberOrNone(n int) string {
	if n == 0 {
		return "none"
	}
	return fmt.Sprint(n)
}

// SideBySideUnder is the line under the title: what is set side by side.
func SideBySideUnder(list []sidebyside.Entry) string {
	under := "cost of a roll, best reel and best boxed, in each scenario's home currency"
	if c := commonCurrency(list); c != "" {
		under += " and in " + c
	}
	return under
}

// commonCurrency is the one that is asked for, "" for none.
func commonCurrency(list []sidebyside.Entry) string {
	for i := range list {
		if c := list[i].Into.Currency; c != "" {
			return c
		}
	}
	return ""
}

// sideColumn is a column of the table of scenarios.
type sideColumn struct {
	name  string
	text  bool
	into  bool // only there with a common currency
	value func(e *sidebyside.Entry, v voice) string
}

var sideColumns = []sideColumn{
	{"", true, false, func(e *sidebyside.Entry, _ voice) string { return e.Scenario }},
	{"home", true, false, func(e *sidebyside.Entry, v voice) string { return v.s.Home }},
	{"best reel", true, false, func(e *sidebyside.Entry, _ voice) string { return nameOf(e.Reel()) }},
	{"a roll", false, false, func(e *sidebyside.Entry, v voice) string { return rollOf(e.Reel(), v) }},
	{"in", false, true, func(e *sidebyside.Entry, v voice) string { return rollInto(e, e.Reel(), v) }},
	{"best boxed", true, false, func(e *sidebyside.Entry, _ voice) string { return nameOf(e.Boxed()) }},
	{"a roll", false, false, func(e *sidebyside.Entry, v voice) string { return rollOf(e.Boxed(), v) }},
	{"in", false, true, func(e *sidebyside.Entry, v voice) string { return rollInto(e, e.Boxed(), v) }},
	{"saved a roll", false, false, func(e *sidebyside.Entry, v voice) string {
		if a := e.Against(); a != nil && a.SavingPercent != nil {
			return v.l.Number(*a.SavingPercent, 1) + " %"
		}
		return ""
	}},
	{"saved in all", false, false, func(e *sidebyside.Entry, v voice) string {
		if a := e.Against(); a != nil {
			return v.home(a.Saving)
		}
		return ""
	}},
	{"in", false, true, func(e *sidebyside.Entry, v voice) string {
		if a := e.Against(); a != nil {
			return amountInto(e, a.Saving, v)
		}
		return ""
	}},
	{"ahead from", true, false, func(e *sidebyside.Entry, v voice) string {
		if a := e.Against(); a != nil && a.EvenMonth > 0 {
			return MonthName(v.s, a.EvenMonth)
		}
		return ""
	}},
	{"worth it", true, false, func(e *sidebyside.Entry, _ voice) string { return VerdictName(e.Comparison.Verdict.Kind) }},
	{"by rolls a year", true, false, func(e *sidebyside.Entry, _ voice) string { return VolumesInShort(e.Volumes()) }},
}

// VolumesInShort says who is cheaper at how many rolls a year: "1–15 boxed, 16–430 the
// reel".
func VolumesInShort(ranges []compare.VolumeRange) string {
	called := map[compare.Cheaper]string{compare.CheaperOffer: "the reel", compare.CheaperOther: "boxed", compare.CheaperEven: "about the same"}
	var said []string
	for _, r := range ranges {
		span := fmt.Sprintf("%d–%d", r.From, r.To)
		if r.From == r.To {
			span = fmt.Sprint(r.From)
		}
		said = append(said, span+" "+called[r.Cheaper])
	}
	return strings.Join(said, ", ")
}

// VerdictName is a verdict in a word or two.
func VerdictName(kind compare.VerdictKind) string {
	switch kind {
	case compare.VerdictReel:
		return "the reel"
	case compare.VerdictBoxed:
		return "boxed"
	case compare.VerdictClose:
		return "about the same"
	case compare.VerdictReelIfKept:
		return "the reel, if what is left is shot"
	case compare.VerdictUnlike:
		return "not comparable"
	}
	return "one kind only"
}

func nameOf(o *compare.Offer) string {
	if o == nil {
		return ""
	}
	return o.Name
}

func rollOf(o *compare.Offer, v voice) string {
	if o == nil {
		return ""
	}
	return v.home(o.PerRoll.Total)
}

func rollInto(e *sidebyside.Entry, o *compare.Offer, v voice) string {
	if o == nil {
		return ""
	}
	return amountInto(e, o.PerRoll.Total, v)
}

func amountInto(e *sidebyside.Entry, amount exact.Fraction, v voice) string {
	if shown := e.Into.Of(amount); shown != nil {
		return v.bare(*shown, e.Into.Currency)
	}
	return ""
}

// columnsOf are the columns that a table of these scenarios has.
func columnsOf(common string) []sideColumn {
	var list []sideColumn
	for _, c := range sideColumns {
		if c.into && common == "" {
			continue
		}
		if c.into {
			c.name += " " + common
		}
		list = append(list, c)
	}
	return list
}

// SideBySideColumns head the table of scenarios; text says of each whether it is text.
func SideBySideColumns(list []sidebyside.Entry) (heads []string, text map[int]bool) {
	text = map[int]bool{}
	for n, c := range columnsOf(commonCurrency(list)) {
		heads = append(heads, c.name)
		text[n] = c.text
	}
	return heads, text
}

// SideBySideRow is a scenario in the table; it must have been compared.
func SideBySideRow(e *sidebyside.Entry, l money.Locale) []string {
	v := voice{s: &e.Comparison.Scenario, l: l}
	var cells []string
	for _, c := range columnsOf(e.Into.Currency) {
		cells = append(cells, c.value(e, v))
	}
	return cells
}

// NotInto is why a scenario is not shown in the common currency.
func NotInto(e *sidebyside.Entry) string {
	text := fmt.Sprintf("no rate between %s and %s in the scenario", e.Comparison.Scenario.Home, e.Into.Currency)
	if e.Into.Missing == sidebyside.MissingRate {
		return text + ", and no day with both in the file of rates"
	}
	return text
}

// NoWayInto says that a comparison cannot be shown in a currency, and what would do.
func NoWayInto(c *compare.Comparison, currency string) string {
	return fmt.Sprintf("%s is not shown in %s: no rate between %s and %s in it; add one under Exchange rates",
		c.Scenario.Name, currency, c.Scenario.Home, currency)
}

// SideBySideFault says why nothing can be said of a file or a scenario.
func SideBySideFault(e *sidebyside.Entry) string {
	if e.Scenario == "" {
		return sentence(e.Fault)
	}
	return sentence(e.Scenario + ": " + e.Fault)
}

// SideBySideNotes are the sentences beside the scenarios: what could not be converted, and
// at whose rates the others were.
func SideBySideNotes(list []sidebyside.Entry) (notes []string) {
	published := map[scenario.Date]bool{}
	for i := range list {
		e := &list[i]
		switch {
		case e.Comparison == nil || e.Into.Currency == "":
		case e.Into.Factor == nil:
			notes = append(notes, sentence(e.Scenario+": "+NotInto(e)))
		case e.Into.Day != scenario.Date{} && !published[e.Into.Day]:
			published[e.Into.Day] = true
			notes = append(notes, fmt.Sprintf("Brought to %s at the rates of %s where a scenario has none of its own.", e.Into.Currency, Day(e.Into.Day)))
		}
	}
	if len(published) > 0 {
		notes = append(notes, ForInformation)
	}
	return notes
}
