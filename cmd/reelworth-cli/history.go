package main

import (
	"context"
	"errors"

	"reelworth/internal/history"
	"reelworth/internal/report"
	"reelworth/internal/words"
)

func historyCommand() command {
	file := ratesFlag
	file.required = true
	flags := append([]flagSpec{file, scenarioFlag}, spanFlags...)
	return command{
		name:  "history",
		short: "what a roll would have cost at the rates of the past",
		long: "Print what a roll of every way to buy would have cost on each day of a file of published rates, the\n" +
			"rest as it is: the lowest, the highest, what lies between, and on how many days it was cheaper\n" +
			"than the offer it is compared with. Rates are moved that the file has; others stay as typed.\n\n" +
			words.ForInformation,
		flags: append(flags,
			flagSpec{name: "format", value: "table|json|csv", help: "how to print it", first: "table",
				set: oneOf("format", []string{"table", "json", "csv"}, func(c *call) *string { return &c.format })},
			localeFlag),
		do: doHistory,
	}
}

func doHistory(c call, s stage) int {
	if err := checkSpan(c.market.span); err != nil {
		return commands["history"].refuse(s, err)
	}
	src, places, status := openChosen(c, s)
	if status != statusFine {
		return status
	}
	file, err := loadRates(c.market.file)
	if err != nil {
		s.complain("%v", err)
		return statusInput
	}
	list := make([]report.Past, len(places))
	for n, i := range places {
		past := &list[n]
		past.Scenario = &src.File.Scenarios[i]
		past.History, err = history.Of(context.Background(), *past.Scenario, src.faultsOf(i), file, c.market.span, nil)
		var empty *history.Empty
		switch {
		case errors.As(err, &empty):
			past.Fault = words.HistoryEmpty(empty)
			s.complain("%s: %s: %s", c.market.file, past.Scenario.Name, past.Fault)
			status = statusInput
		case err == nil:
			for _, out := range past.History.LeftOut {
				s.complain("%s: %s", past.Scenario.Name, words.HistoryLeftOut(past.History, out))
				status = statusInput
			}
		}
	}
	switch c.format {
	case "json":
		err = report.HistoryJSON(s.out, list)
	case "csv":
		err = report.HistoryCSV(s.out, list)
	default:
		err = report.HistoryTable(s.out, list, c.locale)
	}
	if err != nil {
		return statusCall // run says why
	}
	return max(status, src.report(s, reported(c, places)))
}
