package main

import (
	"context"
	"errors"
	"fmt"

	"reelworth/internal/figure"
	"reelworth/internal/history"
	"reelworth/internal/rates"
	"reelworth/internal/words"
)

// checkChart says what of a call does not go with the chart it is for.
func checkChart(c call) error {
	past, beside := c.figure == figure.FigureHistory, c.figure == figure.FigureSideBySide
	switch {
	case len(c.files) > 1 && !beside:
		return fmt.Errorf("one file at a time: %q and %q are too many", c.files[0], c.files[1])
	case past && c.market.file == "":
		return errors.New("--rates is missing: a history needs a file of rates")
	case c.market.file != "" && !past && !beside:
		return errors.New("--rates goes with --figure history or side-by-side")
	case c.market.span != history.Span{} && !past:
		return errors.New("--years, --from and --to go with --figure history")
	case c.market.in != "" && !beside:
		return errors.New("--in goes with --figure side-by-side")
	case beside && c.named:
		return errors.New("--scenario does not go with --figure side-by-side, which draws them all")
	}
	return checkSpan(c.market.span)
}

// pastOf is the history that a chart is drawn of; it complains where there is none.
func pastOf(c call, s stage, src source, i int) (*history.History, bool) {
	file, err := loadRates(c.market.file)
	if err != nil {
		s.complain("%v", err)
		return nil, false
	}
	h, err := history.Of(context.Background(), src.File.Scenarios[i], src.faultsOf(i), file, c.market.span, nil)
	var empty *history.Empty
	if errors.As(err, &empty) {
		s.complain("%s: %s: %s", c.market.file, src.File.Scenarios[i].Name, words.HistoryEmpty(empty))
		return nil, false
	}
	return h, true
}

// chartSideBySide draws the scenarios of all files.
func chartSideBySide(c call, s stage) int {
	var file *rates.File
	if c.market.file != "" {
		var err error
		if file, err = loadRates(c.market.file); err != nil {
			s.complain("%v", err)
			return statusInput
		}
	}
	e := export(c, nil)
	status := statusFine
	for _, name := range c.files {
		entries, worst := besides(c, s, name, file)
		e.Scenarios, status = append(e.Scenarios, entries...), max(status, worst)
	}
	return max(status, writeChart(c, s, e))
}
