package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/sidebyside"
)

// SideBars is what the figure of scenarios shows.
type SideBars struct {
	Under string
	Rows  []SideRow
}

// SideRow is one scenario: its bars, or why it has none.
type SideRow struct {
	Name string
	Bars []SideBar
	Why  string
}

// SideBar is one bar.
type SideBar struct {
	Name    string
	Value   float64 // for drawing
	Text    string
	Best    bool // set apart
	Readout string
}

// SideBySideBars are the bars of scenarios: cost per roll where all can be in one currency
// (the common one, or the home currency that all share), else what the reel saves a roll
// in percent.
func SideBySideBars(list []sidebyside.Entry, l money.Locale) SideBars {
	currency := commonCurrency(list)
	if currency == "" {
		currency = sharedHome(list)
	}
	bars := SideBars{Under: "saved a roll by the best reel, in % of the best boxed"}
	row := percentBar
	if currency != "" {
		bars.Under = fmt.Sprintf("%s a roll, best reel and best boxed", currency)
		row = func(e *sidebyside.Entry, l money.Locale) SideRow { return rollBars(e, currency, l) }
	}
	for i := range list {
		e := &list[i]
		if e.Comparison == nil {
			name := e.Scenario
			if name == "" {
				name = SideFile(e.File)
			}
			bars.Rows = append(bars.Rows, SideRow{Name: name, Why: sentence(e.Fault)})
			continue
		}
		bars.Rows = append(bars.Rows, row(e, l))
	}
	return bars
}

// sharedHome is the home currency of all scenarios, "" where there are several.
func sharedHome(list []sidebyside.Entry) (home string) {
	for i := range list {
		if c := list[i].Comparison; c != nil {
			if home != "" && home != c.Scenario.Home {
				return ""
			}
			home = c.Scenario.Home
		}
	}
	return home
}

func rollBars(e *sidebyside.Entry, currency string, l money.Locale) SideRow {
	row := SideRow{Name: e.Scenario}
	home := e.Comparison.Scenario.Home
	for _, o := range []*compare.Offer{e.Reel(), e.Boxed()} {
		if o == nil {
			continue
		}
		amount := o.PerRoll.Total
		if home != currency {
			into := e.Into.Of(amount)
			if into == nil {
				row.Bars, row.Why = nil, sentence(NotInto(e))
				return row
			}
			amount = *into
		}
		readout := fmt.Sprintf("%s, %s: %s a roll", e.Scenario, o.Name, l.Amount(amount, currency))
		if home != currency {
			readout += " (" + l.Amount(o.PerRoll.Total, home) + ")"
		}
		row.Bars = append(row.Bars, SideBar{Name: o.Name, Value: amount.Float(), Text: voice{l: l}.bare(amount, currency),
			Best: o == e.Reel(), Readout: readout})
	}
	if len(row.Bars) == 0 {
		row.Why = "Nothing could be computed."
	}
	return row
}

func percentBar(e *sidebyside.Entry, l money.Locale) SideRow {
	row := SideRow{Name: e.Scenario}
	a := e.Against()
	if a == nil || a.SavingPercent == nil {
		row.Why = "There are not both a reel and boxed rolls to compare."
		return row
	}
	text := voice{l: l}.plain(a.SavingPercent.Round(1), 1) + " %"
	row.Bars = []SideBar{{
		Name: e.Reel().Name, Value: a.SavingPercent.Float(), Text: text, Best: a.SavingPercent.Sign() > 0,
		Readout: fmt.Sprintf("%s: %s saves %s a roll against %s", e.Scenario, e.Reel().Name, text, e.Boxed().Name),
	}}
	return row
}

// NoRoomForScenarios says how many are not drawn.
func NoRoomForScenarios(n int) string {
	return fmt.Sprintf("and %s more, for which there is no room here", exact.Int(int64(n)))
}
