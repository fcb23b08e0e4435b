package main

import (
	"context"
	"io"
	"strings"

	"reelworth/internal/parallel"
	"reelworth/internal/rates"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
	"reelworth/internal/words"
)

// inFlag is the currency that results are shown in.
var inFlag = flagSpec{name: "in", value: "CURRENCY", help: "show amounts in this currency",
	set: setPaidIn("in", func(c *call) *string { return &c.market.in })}

func sideBySideCommand() command {
	return command{
		name:  "side-by-side",
		short: "set the scenarios of several files beside each other",
		long: "Set every scenario of one or more files beside the others: its best reel and best boxed offer, what\n" +
			"the reel saves, from when on it is ahead, and what it is worth in one currency for all. That is\n" +
			"worked out by a scenario's own rates, else by the newest day of a file of published rates.\n" +
			"Converting never changes who wins.\n\n" + words.ForInformation,
		flags: []flagSpec{
			inFlag, ratesFlag,
			{name: "format", value: "table|json|csv|markdown", help: "how to print it", first: "table",
				set: oneOf("format", []string{"table", "json", "csv", "markdown"}, func(c *call) *string { return &c.format })},
			localeFlag, todayFlag,
		},
		do:      doSideBySide,
		several: true,
	}
}

func doSideBySide(c call, s stage) int {
	var file *rates.File
	if c.market.file != "" {
		var err error
		if file, err = loadRates(c.market.file); err != nil {
			s.complain("%v", err)
			return statusInput
		}
	}
	var list []sidebyside.Entry
	status := statusFine
	for _, name := range c.files {
		entries, worst := besides(c, s, name, file)
		list, status = append(list, entries...), max(status, worst)
	}
	if err := writeSideBySide(s.out, c, list); err != nil {
		return statusCall // run says why
	}
	return status
}

// besides are the entries of one file; it complains of what is wrong with it.
func besides(c call, s stage, name string, file *rates.File) (list []sidebyside.Entry, status int) {
	c.file = name
	src, err := open(c, s)
	if err != nil {
		s.complain("%v", err)
		return []sidebyside.Entry{{File: name, Fault: strings.TrimPrefix(err.Error(), name+": ")}}, statusInput
	}
	status = src.report(s, nil)
	q := sidebyside.Question{
		Today: c.today, Currency: c.market.in, Rates: file, Empty: "there is no scenario in it",
		Word: func(_ sidebyside.Source, f scenario.Fault) string { return words.FaultLine(src.name, f) },
	}
	// Nothing stops it, so that it has no error to tell.
	list, _ = q.Of(context.Background(), parallel.All(), sidebyside.Source{Name: name, File: src.File, Faults: src.Faults})
	return list, status
}

func writeSideBySide(w io.Writer, c call, list []sidebyside.Entry) error {
	switch c.format {
	case "json":
		return report.SideBySideJSON(w, list)
	case "csv":
		return report.SideBySideCSV(w, list)
	case "markdown":
		return report.SideBySideMarkdown(w, list, c.locale)
	}
	return report.SideBySideTable(w, list, c.locale)
}
