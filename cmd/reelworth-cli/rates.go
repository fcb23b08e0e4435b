package main

import (
	"errors"
	"io"

	"reelworth/internal/rates"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func ratesCommand() command {
	return command{
		name:  "rates",
		short: "a day's published rates, or what one currency was in another",
		long: "Print the rates of a day from a file of published rates, FILE, or what one currency was in another:\n" +
			"the day's rate of the one over that of the other, never rounded on the way.\n\n" + words.ForInformation,
		flags: []flagSpec{
			{name: "on", value: "YYYY-MM-DD", help: "the day (the newest of the file)", set: setDate("on", func(c *call) *scenario.Date { return &c.market.on })},
			{name: "one", value: "CURRENCY", help: "1 of this currency", set: setPublished("one", func(c *call) *string { return &c.market.one })},
			{name: "in", value: "CURRENCY", help: "in this one", set: setPublished("in", func(c *call) *string { return &c.market.in })},
			{name: "format", value: "table|json|csv", help: "how to print it", first: "table",
				set: oneOf("format", []string{"table", "json", "csv"}, func(c *call) *string { return &c.format })},
			localeFlag,
		},
		do:      doRates,
		ofRates: true,
	}
}

func doRates(c call, s stage) int {
	m := c.market
	if (m.one == "") != (m.in == "") {
		return commands["rates"].refuse(s, errors.New("--one and --in go together"))
	}
	file, err := loadRates(c.file)
	if err != nil {
		s.complain("%v", err)
		return statusInput
	}
	day := file.Newest()
	if m.on != (scenario.Date{}) {
		on, ok := file.On(m.on)
		if !ok {
			s.complain("%s: %s", c.file, words.NoRatesOn(file, m.on))
			return statusInput
		}
		day = on
	}
	if m.one != "" && !day.HasBoth(m.one, m.in) {
		s.complain("%s: %s", c.file, words.NoPairOn(day, m.one, m.in))
		return statusInput
	}
	if err := writeRates(s.out, c, day); err != nil {
		return statusCall // run says why
	}
	return statusFine
}

func writeRates(w io.Writer, c call, day rates.Day) error {
	list := report.RatesOf(day, c.market.one, c.market.in)
	switch c.format {
	case "json":
		return report.RatesJSON(w, list)
	case "csv":
		return report.RatesCSV(w, list)
	}
	return report.RatesTable(w, list, c.locale)
}
