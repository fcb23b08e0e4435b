package main

import (
	"fmt"
	"strconv"

	"reelworth/internal/paper"
	"reelworth/internal/prints"
	"reelworth/internal/reels"
	"reelworth/internal/report"
	"reelworth/internal/words"
)

func speedCodeCommand() command {
	return command{
		name:    "speed-code",
		operand: "SPEED",
		short:   "print the code by which cameras sense the speed",
		long: "Print the conductive code of a cassette by which cameras sense the speed of film, from the exposure\n" +
			"index to set, the exposures loaded and the tolerance in stops: 0.5 is ±½, 1 is ±1, 2 is +2 −1, 3 is\n" +
			"+3 −1. With --out it is drawn as a template, with what to know before it goes on a cassette.",
		flags: []flagSpec{
			{name: "exposures", value: "N", help: "of the cassette", first: "36", set: setExposures},
			{name: "tolerance", value: "0.5|1|2|3", help: "in stops", first: "1", set: setTolerance},
			{name: "out", value: "FILE.pdf", help: "a template to print, too", set: outEnding(".pdf")},
			forceFlag,
			{name: "paper", value: "a4|letter", help: "of the template", first: "a4",
				set: oneOf("paper", []string{"a4", "letter"}, func(c *call) *string { return &c.paper })},
			{name: "format", value: "table|json", help: "how to print it", first: "table",
				set: oneOf("format", []string{"table", "json"}, func(c *call) *string { return &c.format })},
		},
		do: doSpeedCode,
	}
}

// mostSpeed is the greatest exposure index a reel may be set to.
const mostSpeed = 25000

func setExposures(c *call, value string) error {
	n, err := strconv.Atoi(value)
	if err != nil || n < 1 || n > 100 {
		return fmt.Errorf("--exposures takes a number from 1 to 100, not %q", value)
	}
	c.loader.exposures = n
	return nil
}

func setTolerance(c *call, value string) error {
	var known []string
	for _, t := range reels.Tolerances() {
		known = append(known, string(t))
		if string(t) == value {
			c.loader.tolerance = t
			return nil
		}
	}
	return fmt.Errorf("--tolerance takes %s, not %q", listed(known, "or"), value)
}

func doSpeedCode(c call, s stage) int {
	speed, err := strconv.Atoi(c.file)
	if err != nil || speed < 1 || speed > mostSpeed {
		return commands["speed-code"].refuse(s, fmt.Errorf("the speed is an exposure index from 1 to %d, not %q", mostSpeed, c.file))
	}
	code := reels.Code(speed, c.loader.exposures, c.loader.tolerance)
	if c.format == "json" {
		err = report.SpeedCodeJSON(s.out, code)
	} else {
		err = report.SpeedCodeTable(s.out, code)
	}
	if err != nil {
		return statusCall // run says why
	}
	if c.out == "" {
		return statusFine
	}
	page := prints.CodeTemplate(code, prints.UsualAreas, paperOf(c))
	if page == nil {
		s.complain("reelworth-cli: %s", words.SpeedCodeNote(code))
		return statusInput
	}
	return printed(c, s, []*paper.Page{page}, words.SpeedCodeTitle(code), nil)
}
