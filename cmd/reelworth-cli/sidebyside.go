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
	list = make([]sidebyside.Entry, len(src.File.Scenarios))
	_ = parallel.Each(parallel.All(), len(list), func(i int) error {
		list[i] = beside(c, src, i, file)
		list[i].File = name
		return nil
	})
	if len(list) == 0 {
		entry := sidebyside.Entry{File: name, Fault: "there is no scenario in it"}
		if len(src.Faults) > 0 {
			entry.Fault = words.FaultLine(src.name, src.Faults[0])
		}
		list = append(list, entry)
	}
	return list, status
}

// beside is the entry of the scenario at place i.
func beside(c call, src source, i int, file *rates.File) sidebyside.Entry {
	faults := src.faultsOf(i)
	if f := unreadableFault(faults); f != nil {
		return sidebyside.Entry{Scenario: src.File.Scenarios[i].Name, Fault: words.FaultLine(src.name, *f)}
	}
	comparison := src.compare(i, c.today)
	// Nothing stops it, so that it has no error to tell.
	entry, _ := sidebyside.Of(context.Background(), &comparison, faults, c.market.in, file)
	return entry
}

// unreadableFault is the first fault that leaves nothing of a scenario to compute.
func unreadableFault(faults []scenario.Fault) *scenario.Fault {
	for i := range faults {
		if p := faults[i].Place.Part; p == scenario.PartFile || p == scenario.PartWhole {
			return &faults[i]
		}
	}
	return nil
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
