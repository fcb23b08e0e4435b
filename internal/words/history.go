package words

import (
	"fmt"
	"strings"

	"reelworth/internal/exact"
	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// HistoryTitle is the finding about one offer over the days: "The reel was cheaper than
// Marigold on 94 % of the days of the last 5 years; dearest in September 2022 at EUR 16.10".
func HistoryTitle(h *history.History, offer string, l money.Locale) string {
	v := voice{s: &h.Scenario, l: l}
	o, base := h.Find(offer), h.Baseline()
	switch {
	case o == nil:
		return "No day to tell of"
	case len(h.Dates) == 1:
		return fmt.Sprintf("%s: %s a roll at the rates of %s", begin(v.s, o.Name), v.amount(o.Low.Total), Day(h.From))
	case o.Low.Total.Equal(o.High.Total):
		return fmt.Sprintf("%s: %s a roll on every day %s", begin(v.s, o.Name), v.amount(o.Low.Total), spanWords(h))
	case o.DaysCheaper == nil:
		return fmt.Sprintf("%s: from %s a roll in %s to %s in %s", begin(v.s, o.Name),
			v.amount(o.Low.Total), monthOf(o.Low.Date), v.amount(o.High.Total), monthOf(o.High.Date))
	}
	return fmt.Sprintf("%s was cheaper than %s on %s %s; dearest in %s at %s", begin(v.s, o.Name), Called(v.s, base.Name),
		shareOfDays(*o.DaysCheaper, len(h.Dates)), spanWords(h), monthOf(o.High.Date), v.amount(o.High.Total))
}

// HistoryFinding is HistoryTitle about the offer that says most: the first reel, or the
// first offer, that is not the baseline.
func HistoryFinding(h *history.History, l money.Locale) string {
	return sentence(HistoryTitle(h, MostTelling(h), l))
}

// MostTelling is the offer a history is told of unless one is chosen: the first reel that
// is not the baseline, else the first offer that is not, else the first.
func MostTelling(h *history.History) string {
	pick := ""
	for i := range h.Offers {
		o := &h.Offers[i]
		switch {
		case o.Name == h.Scenario.Baseline:
		case o.Kind == scenario.KindReel:
			return o.Name
		case pick == "":
			pick = o.Name
		}
	}
	if pick == "" && len(h.Offers) > 0 {
		pick = h.Offers[0].Name
	}
	return pick
}

// shareOfDays is how many days of all: "94 % of the days". No share is rounded to none or
// to all.
func shareOfDays(days, of int) string {
	switch {
	case days == 0:
		return "no day"
	case days == of:
		return "every day"
	}
	percent, _ := exact.Ratio(int64(100*days), int64(of)).Round(0).Int64()
	switch percent {
	case 0:
		return "less than 1 % of the days"
	case 100:
		return "more than 99 % of the days"
	}
	return fmt.Sprintf("%d %% of the days", percent)
}

// spanWords says which days a history is of: "of the last 5 years".
func spanWords(h *history.History) string {
	switch n := h.Span.Years; {
	case n == 1:
		return "of the last year"
	case n > 1:
		return fmt.Sprintf("of the last %d years", n)
	}
	return fmt.Sprintf("from %s to %s", Day(h.From), Day(h.To))
}

// monthOf is a day's month for reading: "September 2022".
func monthOf(d scenario.Date) string { return fmt.Sprintf("%s %d", d.Month, d.Year) }

// HistoryUnder is the line under the title: what is drawn.
func HistoryUnder(h *history.History) string {
	days := fmt.Sprintf("%d days, %s to %s", len(h.Dates), Day(h.From), Day(h.To))
	if len(h.Dates) == 1 {
		days = "one day, " + Day(h.From)
	}
	return fmt.Sprintf("%s for a roll of %d exposures at the rates of %s", h.Scenario.Home, h.Scenario.RollExposures, days)
}

// HistoryDrawn is HistoryUnder with what the band in the figure is.
func HistoryDrawn(h *history.History) string {
	if len(h.Dates) == 1 {
		return HistoryUnder(h)
	}
	return HistoryUnder(h) + "; the band: 10 to 90 % of them"
}

// HistoryNotes are the sentences beside a history: which days and quotes stand out, and
// what the bank's rates are.
func HistoryNotes(h *history.History) []string {
	var notes []string
	switch h.Skipped {
	case 0:
	case 1:
		notes = append(notes, "1 day is left out: it lacks a rate that is needed.")
	default:
		notes = append(notes, fmt.Sprintf("%d days are left out: they lack a rate that is needed.", h.Skipped))
	}
	var typed, charged []string
	for _, q := range h.Quotes {
		pair, _ := q.Input.Quote()
		if !q.Moved {
			typed = append(typed, pair)
		} else if q.FromStatement {
			charged = append(charged, pair)
		}
	}
	if len(typed) > 0 {
		notes = append(notes, fmt.Sprintf("As typed on every day, since the file has no rates of it: %s.", listing(typed)))
	}
	if len(charged) > 0 {
		notes = append(notes, fmt.Sprintf("Worked out from a statement: %s. What the card adds may be in that rate; the bank's rates are without it, "+
			"so that the past looks cheaper than today.", listing(charged)))
	}
	if len(h.Quotes) > len(typed) {
		notes = append(notes, ForInformation)
	}
	return notes
}

// HistoryLeftOut says why an offer is not in a history.
func HistoryLeftOut(h *history.History, out history.LeftOut) string {
	in := offerNamed(&h.Scenario, out.Name)
	if in == nil {
		in = &scenario.Offer{Kind: out.Kind}
	}
	return fmt.Sprintf("Without %s: %s.", out.Name, Reason(out.Fault, in))
}

// HistoryEmpty says why a span has no day to tell of, and what would do.
func HistoryEmpty(e *history.Empty) string {
	if e.Days == 0 {
		return fmt.Sprintf("there are no days of the span in it: it goes from %s to %s", Day(e.Oldest), Day(e.Newest))
	}
	return fmt.Sprintf("none of the %s of the span has every rate that is needed: %s %s missing on some day or other; take a shorter span, or another file",
		dayCount(e.Days), listing(e.Missing), isOrAre(len(e.Missing)))
}

func dayCount(n int) string {
	if n == 1 {
		return "1 day"
	}
	return fmt.Sprintf("%d days", n)
}

func isOrAre(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

// listing is items as "a, b and c".
func listing(items []string) string {
	n := len(items)
	if n < 2 {
		return strings.Join(items, "")
	}
	return strings.Join(items[:n-1], ", ") + " and " + items[n-1]
}

// HistoryColumns head the table of a history.
func HistoryColumns() []string {
	return []string{"", "today", "10 % of days below", "half of them", "90 %", "lowest", "", "highest", "", "days cheaper"}
}

// DaysCheaper is on how many days an offer was cheaper than the baseline: "1,203 of
// 1,280"; ComparedWith on the baseline, "" where there is none.
func DaysCheaper(h *history.History, o *history.Offer, l money.Locale) string {
	if o.DaysCheaper == nil {
		if b := h.Baseline(); b != nil && b.Name == o.Name {
			return ComparedWith
		}
		return ""
	}
	n := func(n int) string { return l.Number(exact.Int(int64(n)), 0) }
	return n(*o.DaysCheaper) + " of " + n(len(h.Dates))
}
