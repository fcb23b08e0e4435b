package main

import (
	"fmt"
	"strings"

	"reelworth/internal/parallel"
	"reelworth/internal/report"
)

func summaryCommand() command {
	return command{
		name:  "summary",
		short: "the finding in at most 12 lines, to paste into a talk",
		long: "Print each scenario's finding in at most 12 lines, to paste under a talk or into a forum: what a roll\n" +
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
	texts := make([]string, len(places))
	_ = parallel.Each(parallel.All(), len(places), func(n int) error {
		comparison := src.compare(places[n], c.today)
		texts[n] = summary(&comparison, c.today, c.locale)
		return nil
	})
	fmt.Fprint(s.out, strings.Join(texts, "\n"))
	return src.report(s, reported(c, places))
}
