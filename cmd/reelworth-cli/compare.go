package main

import (
	"context"
	"io"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/report"
	"reelworth/internal/words"
)

func compareCommand() command {
	return command{
		name:  "compare",
		short: "print what every way to buy costs",
		long: "Print what every way to buy film of a scenario file costs: a roll, the year month by month,\n" +
			"the landed cost line by line, whether the reel is worth it, and what would change that.\n\n" +
			"json is for other programs, csv has one row for each way to buy, markdown is for notes.\n" +
			"help csv explains the columns.",
		flags: []flagSpec{
			scenarioFlag,
			{name: "format", value: "table|json|csv|markdown", help: "how to print it", first: "table",
				set: oneOf("format", []string{"table", "json", "csv", "markdown"}, func(c *call) *string { return &c.format })},
			{name: "ceiling", value: "PERCENT", help: "what a reel must save a roll at its highest price", first: "10", set: setCeiling},
			inFlag, localeFlag, todayFlag,
		},
		do: doCompare,
	}
}

func doCompare(c call, s stage) int {
	src, err := open(c, s)
	if err != nil {
		s.complain("%v", err)
		return statusInput
	}
	places, status := chosen(src, c, s)
	if status != statusFine {
		return status
	}
	var comparisons []compare.Comparison
	for _, i := range places {
		home := src.compare(i, c.today)
		comparison := &home
		if c.market.in != "" {
			factor, fault := compare.Into(src.File.Scenarios[i], src.faultsOf(i), c.market.in)
			if fault != nil {
				s.complain("reelworth-cli: %s", words.NoWayInto(comparison, c.market.in))
				status = statusInput
				continue
			}
			comparison = home.In(c.market.in, factor)
		}
		if c.format != "csv" {
			comparison = lookAhead(comparison, c)
		}
		comparisons = append(comparisons, *comparison)
	}
	if err := write(s.out, c, comparisons); err != nil {
		return statusCall // run says why
	}
	return max(status, src.report(s, reported(c, places)))
}

// lookAhead is a comparison with what would change its answer.
func lookAhead(comparison *compare.Comparison, c call) *compare.Comparison {
	// Nothing stops it, so that it has no error to tell.
	ahead, _ := compare.LookAhead(context.Background(), comparison, exact.FromDecimal(c.ceiling))
	return ahead
}

// chosen are the places of the scenarios a call is about. The status is not fine when
// the one named is not there.
func chosen(src source, c call, s stage) (places []int, status int) {
	if !c.named {
		for i := range src.File.Scenarios {
			places = append(places, i)
		}
		return places, statusFine
	}
	i, err := src.find(c.scenario)
	if err == nil {
		return []int{i}, statusFine
	}
	if src.report(s, nil) != statusFine && len(src.File.Scenarios) == 0 {
		return nil, statusInput // the file gave no scenario at all
	}
	s.complain("reelworth-cli: %v", err)
	return nil, statusCall
}

// reported are the places whose faults to print: none for all.
func reported(c call, places []int) []int {
	if c.named {
		return places
	}
	return nil
}

func write(w io.Writer, c call, comparisons []compare.Comparison) error {
	switch c.format {
	case "json":
		return report.JSON(w, comparisons)
	case "csv":
		return report.CSV(w, comparisons)
	case "markdown":
		return report.Markdown(w, comparisons, c.locale)
	}
	return report.Table(w, comparisons, c.locale)
}
