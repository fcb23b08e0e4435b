package main

import (
	"fmt"
	"strings"

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
			inFlag, localeFlag, todayFlag,
		},
		do: doSummary,
	}
}

func doSummary(c call, s stage) int {
	src, places, status := openChosen(c, s)
	if status != statusFine {
		return status
	}
	summary := report.Summary
	if c.format == "markdown" {
		summary = report.SummaryMarkdown
	}
	comparisons, status := compareAll(c, s, src, places, false)
	texts := make([]string, len(comparisons))
	for i := range comparisons {
		texts[i] = summary(&comparisons[i], c.today, c.locale)
	}
	fmt.Fprint(s.out, strings.Join(texts, "\n"))
	return max(status, src.report(s, reported(c, places)))
}
