package main

import (
	"fmt"

	"reelworth/internal/report"
)

func summaryCommand() command {
	return command{
		name:  "summary",
		short: "the finding in at most 12 lines, to paste into a talk",
		long: "Print each scenario's finding in at most 12 lines, to stand under a talk or in a forum: what a roll\n" +
			"costs from the best reel, the best boxed and the next four, the year, what is assumed, and the rates.",
		flags: []flagSpec{
			scenarioFlag,
			{name: "format", value: "text|markdown", help: "how to print it", first: "text",
				set: oneOf("format", []string{"text", "markdown"}, func(c *call) *string { return &c.format })},
			localeFlag, todayFlag,
		},
		do: doSummary,
	}
}

func doSummary(c call, s stage) int {
	src, err := open(c, s)
	if err != nil {
		s.complain("%v", err)
		return statusInput
	}
	places, status := chosen(src, c, s)
	if status != statusFine {
		return status
	}
	summary := report.Summary
	if c.format == "markdown" {
		summary = report.SummaryMarkdown
	}
	for n, i := range places {
		if n > 0 {
			fmt.Fprintln(s.out)
		}
		comparison := src.compare(i, c.today)
		fmt.Fprint(s.out, summary(&comparison, c.today, c.locale))
	}
	return src.report(s, reported(c, places))
}
