package main

import (
	"cmp"
	"context"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

func chartCommand() command {
	return command{
		name:  "chart",
		short: "draw a chart: cost per roll, spending, what changes it, sizes, the past",
		long: "Draw a chart of a scenario into a file: cost-per-roll is what a roll costs, part by part; spend\n" +
			"is the cash spent month by month; flip is where the answer changes; swings is how far each figure\n" +
			"moves it; volumes is who is cheaper at how many rolls a year; order-size is what buying several at once\n" +
			"comes to; cut-sizes is what a reel comes to cut\n" +
			"into rolls of 12 to 40 exposures; history is what a roll would have cost at the rates of the past;\n" +
			"side-by-side sets the scenarios of several files beside each other.\n" +
			"The file's ending says the format: .png, .svg or .pdf; \"--out -\" writes to standard output. A file is\n" +
			"written as a whole or not at all.",
		several: true,
		flags: slices.Concat([]flagSpec{
			oneScenarioFlag,
			{name: "figure", value: "CHART", help: strings.Join(allFigures(), ", "), required: true,
				set: oneOf("figure", allFigures(), func(c *call) *string { return &c.figure })},
			{name: "offer", value: "NAME", help: "the offer to stress; the best reel unless said",
				set: func(c *call, value string) error { c.offer = value; return nil }},
			{name: "input", value: "INPUT", help: "of a flip: the figure that moves, such as offer.price; the nearest unless said",
				set: func(c *call, value string) error { c.input = value; return nil }},
			{name: "out", value: "FILE", help: "where to, ending in .png, .svg or .pdf; \"-\" is standard output", required: true, set: setOut},
			{name: "format", value: strings.Join(figure.Formats(), "|"), help: "the format, where the ending is not to say; svg to standard output",
				set: oneOf("format", figure.Formats(), func(c *call) *string { return &c.format })},
			{name: "scale", value: "1|2|3", help: "size of a PNG: 2 has twice the pixels each way", first: "1",
				set: oneOf("scale", []string{"1", "2", "3"}, func(c *call) *string { return &c.scale })},
			{name: "theme", value: "paper|safelight", help: "light or dark", first: "paper",
				set: oneOf("theme", []string{"paper", "safelight"}, func(c *call) *string { return &c.theme })},
			localeFlag, todayFlag, ratesFlag, inFlag, forceFlag,
		}, spanFlags),
		do: doChart,
	}
}

// allFigures are the charts that can be drawn.
func allFigures() []string {
	return slices.Concat(figure.Figures(), figure.OutlookFigures(), []string{figure.FigureHistory, figure.FigureSideBySide})
}

func setOut(c *call, value string) error {
	if value != standardOutput && !slices.Contains(figure.Formats(), ending(value)) {
		return fmt.Errorf("--out takes a file ending in .png, .svg or .pdf, or - for standard output, not %q", value)
	}
	c.out = value
	return nil
}

// standardOutput is what --out calls it.
const standardOutput = "-"

// ending is what a file's name ends in, small and without its dot.
func ending(path string) string {
	return strings.ToLower(strings.TrimPrefix(filepath.Ext(path), "."))
}

func doChart(c call, s stage) int {
	if err := checkChart(c); err != nil {
		return commands["chart"].refuse(s, err)
	}
	if c.figure == figure.FigureSideBySide {
		return chartSideBySide(c, s)
	}
	src, place, status := single(c, s)
	if place < 0 {
		return status
	}
	status = src.report(s, []int{place})
	comparison := src.compare(place, c.today)
	if comparison.Find(comparison.Verdict.Reel) == nil && comparison.Find(comparison.Verdict.Boxed) == nil {
		s.complain("reelworth-cli: no chart of %q: none of its offers could be computed", comparison.Scenario.Name)
		for _, text := range words.LeftOut(&comparison) {
			s.complain("%s", text)
		}
		return statusInput
	}
	if c.offer != "" && comparison.Find(c.offer) == nil {
		s.complain("reelworth-cli: no chart of %q: there is no such offer, or it could not be computed", c.offer)
		return statusInput
	}
	e := export(c, &comparison)
	if c.figure == figure.FigureHistory {
		var ok bool
		if e.History, ok = pastOf(c, s, src, place); !ok {
			return statusInput
		}
	}
	if err := e.Foresee(context.Background(), compare.Input(c.input), true); err != nil {
		s.complain("reelworth-cli: %v", err)
		return statusInput
	}
	return max(status, writeChart(c, s, e))
}

// writeChart writes the export where the call wants it and returns the status that makes.
func writeChart(c call, s stage, e figure.Export) int {
	if c.out == standardOutput {
		if err := e.Write(s.out, cmp.Or(c.format, "svg")); err != nil {
			return statusCall // run says why
		}
		return statusFine
	}
	format := cmp.Or(c.format, ending(c.out))
	return writeWhole(c, s, func(w io.Writer) error { return e.Write(w, format) })
}

// export is the chart a call asks for; comparison is nil where it is of none.
func export(c call, comparison *compare.Comparison) figure.Export {
	best := c.offer
	if best == "" && comparison != nil {
		best = cmp.Or(comparison.Verdict.Reel, comparison.Verdict.Boxed)
	}
	return figure.Export{
		Figure:     c.figure,
		Comparison: comparison,
		Chosen:     best,
		Style:      figure.Style{Theme: themes[c.theme], Locale: c.locale},
		Date:       c.today,
		Scale:      float64(c.scale[0] - '0'),
	}
}

var themes = map[string]palette.Theme{"paper": palette.Paper, "safelight": palette.Safelight}
