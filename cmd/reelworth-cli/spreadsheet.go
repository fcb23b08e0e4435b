package main

import (
	"context"
	"io"

	"reelworth/internal/workbook"
)

func spreadsheetCommand() command {
	return command{
		name:  "spreadsheet",
		short: "rebuild a comparison with live formulas, to follow and to change",
		long: "Write a scenario's comparison as a spreadsheet (.xlsx) with live formulas: a sheet of the inputs,\n" +
			"which may be changed, a sheet for each way to buy, one of the months, and a comparison with charts.\n" +
			"The file is written as a whole or not at all.",
		flags: []flagSpec{
			oneScenarioFlag,
			{name: "out", value: "FILE", help: "where to, ending in .xlsx", required: true, set: outEnding(".xlsx")},
			localeFlag, todayFlag, forceFlag,
		},
		do: doSpreadsheet,
	}
}

func doSpreadsheet(c call, s stage) int {
	return handOn(c, s, func(place int, src source) ([]byte, error) {
		comparison := src.compare(place, c.today)
		return workbook.Make(context.Background(), &comparison, workbook.Options{On: c.today, Locale: c.locale})
	})
}

// handOn writes what is made of the one scenario a call is about into its file.
func handOn(c call, s stage, make func(place int, src source) ([]byte, error)) int {
	src, place, status := single(c, s)
	if place < 0 {
		return status
	}
	status = src.report(s, []int{place})
	data, err := make(place, src)
	if err != nil {
		s.complain("reelworth-cli: %v", err)
		return statusInput
	}
	return max(status, writeWhole(c, s, func(w io.Writer) error { _, err := w.Write(data); return err }))
}
