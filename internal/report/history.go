package report

import (
	"bufio"
	"io"
	"strconv"

	"reelworth/internal/exact"
	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Past is a scenario with its history, or why it has none.
type Past struct {
	Scenario *scenario.Scenario
	History  *history.History // nil with a Fault
	Fault    string
}

type jsonPast struct {
	Scenario string `json:"scenario"`
	Home     string `json:"home"`
	Baseline string `json:"baseline"`
	*jsonHistory
	Fault string `json:"fault,omitempty"`
}

type jsonHistory struct {
	From    string             `json:"from"`
	To      string             `json:"to"`
	Days    int                `json:"days"`
	Skipped int                `json:"skipped"`
	AsTyped []scenario.Input   `json:"as_typed"`
	Offers  []jsonHistoryOffer `json:"offers"`
}

type jsonHistoryOffer struct {
	Name        string          `json:"name"`
	Today       number          `json:"today"`
	First       jsonPoint       `json:"first"`
	Last        jsonPoint       `json:"last"`
	Low         jsonPoint       `json:"low"`
	High        jsonPoint       `json:"high"`
	Percentiles jsonPercentiles `json:"percentiles"`
	DaysCheaper *int            `json:"days_cheaper"`
}

type jsonPoint struct {
	Date  string `json:"date"`
	Total number `json:"total"`
}

type jsonPercentiles struct {
	P10 number `json:"10"`
	P50 number `json:"50"`
	P90 number `json:"90"`
}

// HistoryJSON writes a list with one entry for each scenario, in the manner of JSON. One
// without a usable day has a fault in place of its figures.
func HistoryJSON(w io.Writer, list []Past) error {
	out := make([]jsonPast, len(list))
	for i, p := range list {
		out[i] = jsonPast{Scenario: p.Scenario.Name, Home: p.Scenario.Home, Baseline: p.Scenario.Baseline, Fault: p.Fault}
		if p.History != nil {
			out[i].jsonHistory = historyOf(p.History)
		}
	}
	return writeJSON(w, out)
}

func historyOf(h *history.History) *jsonHistory {
	j := &jsonHistory{
		From: h.From.String(), To: h.To.String(), Days: len(h.Dates), Skipped: h.Skipped,
		AsTyped: append([]scenario.Input{}, h.AsTyped()...), Offers: make([]jsonHistoryOffer, len(h.Offers)),
	}
	point := func(p history.Point) jsonPoint { return jsonPoint{p.Date.String(), number(p.Total)} }
	for i := range h.Offers {
		o := &h.Offers[i]
		j.Offers[i] = jsonHistoryOffer{
			Name: o.Name, Today: number(o.Today),
			First: point(o.First), Last: point(o.Last), Low: point(o.Low), High: point(o.High),
			Percentiles: jsonPercentiles{number(o.P10), number(o.P50), number(o.P90)},
			DaysCheaper: o.DaysCheaper,
		}
	}
	return j
}

// historyColumns are the columns of HistoryCSV.
var historyColumns = []string{
	"scenario", "offer", "kind", "home", "is_baseline", "from", "to", "days", "skipped", "today",
	"first", "last", "low", "low_date", "high", "high_date", "percentile_10", "percentile_50", "percentile_90", "days_cheaper",
}

// HistoryCSV writes one row for each computed offer under a row of names, in the manner of
// CSV. Totals are of one standard roll in the home currency.
func HistoryCSV(w io.Writer, list []Past) error {
	out := newCells(w)
	out.row(historyColumns)
	for _, p := range list {
		if p.History == nil {
			continue
		}
		for i := range p.History.Offers {
			out.row(historyRow(p.History, &p.History.Offers[i]))
		}
	}
	return out.end()
}

func historyRow(h *history.History, o *history.Offer) []string {
	baseline, cheaper := "no", ""
	if o.Name == h.Scenario.Baseline {
		baseline = "yes"
	}
	if o.DaysCheaper != nil {
		cheaper = strconv.Itoa(*o.DaysCheaper)
	}
	return []string{
		text(h.Scenario.Name), text(o.Name), text(string(o.Kind)), text(h.Scenario.Home), baseline,
		h.From.String(), h.To.String(), strconv.Itoa(len(h.Dates)), strconv.Itoa(h.Skipped), plain(o.Today),
		plain(o.First.Total), plain(o.Last.Total), plain(o.Low.Total), o.Low.Date.String(), plain(o.High.Total), o.High.Date.String(),
		plain(o.P10), plain(o.P50), plain(o.P90), cheaper,
	}
}

// HistoryTable writes histories to read in a terminal.
func HistoryTable(w io.Writer, list []Past, l money.Locale) error {
	out := bufio.NewWriter(w)
	for i, p := range list {
		if i > 0 {
			out.WriteString("\n\n")
		}
		out.WriteString(plainText(historyDocument(p, l)))
	}
	return out.Flush()
}

func historyDocument(p Past, l money.Locale) document {
	d := document{title: p.Scenario.Name, headline: p.Fault}
	if h := p.History; h != nil {
		d.headline = words.HistoryFinding(h, l)
		g := grid{head: words.HistoryColumns(), texts: map[int]bool{6: true, 8: true}}
		amount := func(f exact.Fraction) string { return builder{l: l}.inCurrency(f, h.Scenario.Home) }
		for i := range h.Offers {
			o := &h.Offers[i]
			g.rows = append(g.rows, gridRow{cells: []string{
				o.Name, amount(o.Today), amount(o.P10), amount(o.P50), amount(o.P90),
				amount(o.Low.Total), o.Low.Date.String(), amount(o.High.Total), o.High.Date.String(), words.DaysCheaper(h, o, l),
			}})
		}
		d.sections = []section{{words.HistoryUnder(h), []grid{g}}}
		for _, out := range h.LeftOut {
			d.under = append(d.under, words.HistoryLeftOut(h, out))
		}
		d.worth = words.HistoryNotes(h)
	}
	d.mapTexts(func(text string) string { return Line(spaced(text)) })
	return d
}
