package main

import (
	"context"
	"errors"
	"strings"

	"reelworth/internal/handout"
	"reelworth/internal/paper"
	"reelworth/internal/reels"
)

func reportCommand() command {
	return command{
		name:  "report",
		short: "print a comparison on two pages",
		long: "Write a scenario's comparison as a PDF of two pages: the finding with both charts and the ways to\n" +
			"buy, then the receipts of the two best, what would change the answer, what is assumed, and the rates.\n" +
			"Reels in hand are told too. With more than 8 ways to buy or 8 rates the tables go on. The file is written as a whole or not at all.",
		flags: []flagSpec{
			oneScenarioFlag,
			{name: "out", value: "FILE", help: "where to, ending in .pdf", required: true, set: outEnding(".pdf")},
			{name: "paper", value: "a4|letter", help: "the sheets it is printed on", first: "a4",
				set: oneOf("paper", []string{"a4", "letter"}, func(c *call) *string { return &c.paper })},
			inFlag, localeFlag, todayFlag, forceFlag,
		},
		do: doReport,
	}
}

func doReport(c call, s stage) int {
	return handOn(c, s, func(place int, src source) ([]byte, error) {
		a := answered(c, src, place, false)
		if a.complaint != "" {
			return nil, errors.New(a.complaint)
		}
		h, err := handout.Make(context.Background(), a.comparison, handout.Options{
			Paper:  map[string]paper.Size{"a4": paper.A4, "letter": paper.Letter}[c.paper],
			Locale: c.locale, On: c.today, InHand: reels.StandAll(src.File.Reels, src.Faults),
		})
		if err != nil {
			return nil, err
		}
		if len(h.Lacking) > 0 {
			s.complain("reelworth-cli: the typeface lacks %s; a box stands in each one's place", strings.Join(strings.Split(string(h.Lacking), ""), " "))
		}
		return h.PDF()
	})
}
