package main

import (
	"context"
	"strings"

	"reelworth/internal/handout"
	"reelworth/internal/paper"
)

func reportCommand() command {
	return command{
		name:  "report",
		short: "print a comparison on two pages",
		long: "Write a scenario's comparison as a PDF of two pages: the finding with both charts and the ways to\n" +
			"buy, then the receipts of the two best, what would change the answer, what is assumed, and the rates.\n" +
			"With more than 8 ways to buy or 8 rates their tables go on. The file is written as a whole or not at all.",
		flags: []flagSpec{
			oneScenarioFlag,
			{name: "out", value: "FILE", help: "where to, ending in .pdf", required: true, set: outEnding(".pdf")},
			{name: "paper", value: "a4|letter", help: "the sheets it is printed on", first: "a4",
				set: oneOf("paper", []string{"a4", "letter"}, func(c *call) *string { return &c.paper })},
			localeFlag, todayFlag, forceFlag,
		},
		do: doReport,
	}
}

func doReport(c call, s stage) int {
	return handOn(c, s, func(place int, src source) ([]byte, error) {
		comparison := src.compare(place, c.today)
		size := map[string]paper.Size{"a4": paper.A4, "letter": paper.Letter}[c.paper]
		h, err := handout.Make(context.Background(), &comparison, handout.Options{Paper: size, Locale: c.locale, On: c.today})
		if err != nil {
			return nil, err
		}
		if len(h.Lacking) > 0 {
			s.complain("reelworth-cli: the typeface lacks %s; a box stands in each one's place", strings.Join(strings.Split(string(h.Lacking), ""), " "))
		}
		return h.PDF()
	})
}
