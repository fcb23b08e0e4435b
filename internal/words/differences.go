package words

import (
	"fmt"
	"strings"

	"reelworth/internal/catalogue"
	"reelworth/internal/difference"
	"reelworth/internal/scenario"
)

// MostDifferences is how many differences are told one by one.
const MostDifferences = 20

// Differences says what is other in one file than in another, a sentence each: "Quayside
// year: price of Lanternlight 500: 118.00 → 119.00". Where there are too many the last
// says how many more.
func Differences(from, to scenario.File) []string {
	list, more := difference.Between(from, to, MostDifferences)
	var said []string
	for _, d := range list {
		said = append(said, differenceIn(d)+differenceSaid(d))
	}
	if more > 0 {
		said = append(said, fmt.Sprintf("… and %d more", more))
	}
	return said
}

// differenceIn says in which scenario it is.
func differenceIn(d difference.Difference) string {
	if d.Scenario == "" {
		return ""
	}
	return clip(d.Scenario) + ": "
}

func differenceSaid(d difference.Difference) string {
	noun := tableNouns[d.Key]
	switch d.Kind {
	case difference.Truth:
		yesNo := map[string]string{"true": "yes", "false": "no"}
		return fmt.Sprintf("%s: %s → %s", fieldCalled(d), yesNo[d.Was], yesNo[d.Is])
	case difference.Numbers:
		return fmt.Sprintf("%s: %d of %d numbers are others", fieldCalled(d), d.Have, d.Most)
	case difference.Added:
		return fmt.Sprintf("%s was added%s", noun.one, ofTable(d))
	case difference.Removed:
		return fmt.Sprintf("%s was taken away%s", noun.one, fromTable(d))
	case difference.Joined:
		return fmt.Sprintf("%s was added%s: %s", noun.one, ofTable(d), clip(d.Is))
	case difference.Left:
		return fmt.Sprintf("%s was taken away%s: %s", noun.one, fromTable(d), clip(d.Was))
	case difference.Order:
		return fmt.Sprintf("the %s%s are in another order", noun.many, ofTable(d))
	case difference.Unknown:
		return fmt.Sprintf("unknown key %s%s: %s", clip(d.Key[strings.LastIndex(d.Key, ".")+1:]), ofTable(d), fromTo(d, ""))
	}
	e, _ := catalogue.Of(d.Key)
	name := fieldCalled(d)
	if d.Kind == difference.Unread {
		return name + ": " + fromTo(d, "")
	}
	if d.Number > 0 {
		name += fmt.Sprintf(", no. %d", d.Number)
	}
	return name + ": " + fromTo(d, unitAfter(e.Unit))
}

// fieldCalled is the field with what it is of: "price of Lanternlight 500".
func fieldCalled(d difference.Difference) string {
	e, _ := catalogue.Of(d.Key)
	return e.Called + ofTable(d)
}

func ofTable(d difference.Difference) string {
	if d.Of == "" {
		return ""
	}
	return " of " + clip(d.Of)
}

func fromTable(d difference.Difference) string {
	if d.Of == "" {
		return ""
	}
	return " from " + clip(d.Of)
}

// unitAfter is the unit of numbers that are not money.
func unitAfter(unit catalogue.Unit) string {
	switch unit {
	case catalogue.Percent, catalogue.Months, catalogue.MM, catalogue.Minutes:
		return " " + string(unit)
	}
	return ""
}

// fromTo is what was and what is.
func fromTo(d difference.Difference, unit string) string {
	was, is := unlike(d.Was, d.Is)
	value := func(text string) string {
		if text == "" {
			return "nothing"
		}
		return clip(text) + unit
	}
	return value(was) + " → " + value(is)
}

// unlike leaves out most of what two long texts begin with alike, so that what differs
// is seen.
func unlike(a, b string) (string, string) {
	const long, lead = 40, 10
	x, y := []rune(a), []rune(b)
	same := 0
	for same < min(len(x), len(y)) && x[same] == y[same] {
		same++
	}
	if max(len(x), len(y)) <= long || same <= lead {
		return a, b
	}
	return "…" + string(x[same-lead:]), "…" + string(y[same-lead:])
}

// tableNouns call the tables that may be there or not, or of which there may be several.
var tableNouns = map[string]struct{ one, many string }{
	"scenario":                      {"a scenario", "scenarios"},
	"scenario.rate":                 {"an exchange rate", "exchange rates"},
	"scenario.loading.equipment":    {"a piece of equipment", "pieces of equipment"},
	"scenario.developing":           {"a way to develop", "ways to develop"},
	"scenario.developing.equipment": {"a piece of equipment", "pieces of equipment"},
	"scenario.offer":                {"a way to buy", "ways to buy"},
	"scenario.offer.seen":           {"a price seen", "prices seen"},
	"scenario.offer.reel":           {one: "the reel"},
	"scenario.offer.boxed":          {one: "the pack"},
	"scenario.range":                {"a range", "ranges"},
	"reel":                          {"a reel in hand", "reels in hand"},
	"reel.load":                     {"a load", "loads"},
	"reel.result":                   {"a result", "results"},
	"reel.recount":                  {"a recount", "recounts"},
}
