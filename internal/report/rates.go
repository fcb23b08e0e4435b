package report

import (
	"io"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Published is some rates of a day.
type Published struct {
	Date  scenario.Date
	Rates []PublishedRate
}

// PublishedRate is 1 One = Rate In.
type PublishedRate struct {
	One  string
	Rate exact.Fraction
	In   string
}

// RatesOf are the day's rates as the bank has them, 1 EUR in each currency; or the one
// between two currencies, which the day must have both.
func RatesOf(day rates.Day, one, in string) Published {
	p := Published{Date: day.Date()}
	if one != "" {
		rate, _ := day.Cross(one, in)
		p.Rates = []PublishedRate{{one, rate, in}}
		return p
	}
	for _, c := range day.Currencies() {
		if c != rates.Euro {
			rate, _ := day.Rate(c)
			p.Rates = append(p.Rates, PublishedRate{rates.Euro, rate, c})
		}
	}
	return p
}

// RatesJSON writes {"date", "rates": [{"one", "in", "rate"}]}, rates to 20 places.
func RatesJSON(w io.Writer, p Published) error {
	type rate struct {
		One  string `json:"one"`
		In   string `json:"in"`
		Rate number `json:"rate"`
	}
	out := struct {
		Date  string `json:"date"`
		Rates []rate `json:"rates"`
	}{p.Date.String(), []rate{}}
	for _, r := range p.Rates {
		out.Rates = append(out.Rates, rate{r.One, r.In, number(r.Rate)})
	}
	return writeJSON(w, out)
}

// RatesCSV writes one row for each rate under a row of names, in the manner of CSV.
func RatesCSV(w io.Writer, p Published) error {
	out := newCells(w)
	out.row([]string{"date", "one", "in", "rate"})
	for _, r := range p.Rates {
		out.row([]string{p.Date.String(), r.One, r.In, plain(r.Rate)})
	}
	return out.end()
}

// RatesTable writes the rates to read in a terminal, to six figures.
func RatesTable(w io.Writer, p Published, l money.Locale) error {
	text := words.Day(p.Date) + "\n"
	for _, r := range p.Rates {
		text += words.RateReading(r.One, r.Rate, r.In, l) + "\n"
	}
	_, err := io.WriteString(w, spaced(text)+"\n"+words.ForInformation+"\n")
	return err
}
