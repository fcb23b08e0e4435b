package main

import (
	"context"
	"fmt"
	"io"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/parallel"
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
			"help csv explains the columns. " + fmt.Sprintf("Of more than %d scenarios a table and markdown leave out what would\n", report.MostAhead) +
			"change the answer; --scenario shows it for one.",
		flags: []flagSpec{
			scenarioFlag,
			{name: "format", value: "table|json|csv|markdown", help: "how to print it", first: "table",
				set: oneOf("format", []string{"table", "json", "csv", "markdown"}, func(c *call) *string { return &c.format })},
			{name: "ceiling", value: "PERCENT", help: "the percent of a roll that a reel must save at its highest price", first: "10", set: setCeiling},
			inFlag, localeFlag, todayFlag,
		},
		do: doCompare,
	}
}

func doCompare(c call, s stage) int {
	src, places, status := openChosen(c, s)
	if status != statusFine {
		return status
	}
	ahead := c.format == "json" || c.format != "csv" && len(places) <= report.MostAhead
	comparisons, status := compareAll(c, s, src, places, ahead)
	if err := write(s.out, c, comparisons); err != nil {
		return statusCall // run says why
	}
	return max(status, src.report(s, reported(c, places)))
}

// compareAll compares the scenarios at some places as the call wants them shown, side by
// side, and complains of those that there is no way for.
func compareAll(c call, s stage, src source, places []int, ahead bool) (comparisons []compare.Comparison, status int) {
	answers := make([]answer, len(places))
	_ = parallel.Each(parallel.All(), len(places), func(n int) error {
		answers[n] = answered(c, src, places[n], ahead)
		return nil
	})
	for _, a := range answers {
		if a.complaint != "" {
			s.complain("reelworth-cli: %s", a.complaint)
			status = statusInput
			continue
		}
		comparisons = append(comparisons, *a.comparison)
	}
	return comparisons, status
}

// answer is a scenario's comparison, or why there is none to show.
type answer struct {
	comparison *compare.Comparison
	complaint  string
}

// answered compares the scenario at place i as the call wants it shown; ahead adds what
// would change the answer.
func answered(c call, src source, i int, ahead bool) answer {
	home := src.compare(i, c.today)
	comparison := &home
	if c.market.in != "" {
		factor, fault := compare.Into(src.File.Scenarios[i], src.faultsOf(i), c.market.in)
		if fault != nil {
			return answer{complaint: words.NoWayInto(comparison, c.market.in)}
		}
		comparison = home.In(c.market.in, factor)
	}
	if ahead {
		// Nothing stops it, so that it has no error to tell.
		comparison, _ = compare.LookAhead(context.Background(), comparison, exact.FromDecimal(c.ceiling))
	}
	return answer{comparison: comparison}
}

// openChosen opens the file of a call, and finds the places of the scenarios it is about.
// The status is not fine, and why was said, where there is nothing to go on with.
func openChosen(c call, s stage) (src source, places []int, status int) {
	src, err := open(c, s)
	if err != nil {
		s.complain("%v", err)
		return src, nil, statusInput
	}
	places, status = chosen(src, c, s)
	return src, places, status
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
