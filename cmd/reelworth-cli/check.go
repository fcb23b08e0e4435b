package main

import (
	"fmt"

	"reelworth/internal/report"
	"reelworth/internal/words"
)

func checkCommand() command {
	return command{
		name:  "check",
		short: "say what is wrong with a scenario file, or worth knowing",
		long: "Say what is wrong with a scenario file and which keys are unknown, on standard error, and what\n" +
			"is worth knowing about its comparisons. Prints \"fine\" when there is nothing to say.",
		flags: []flagSpec{scenarioFlag, localeFlag, todayFlag},
		do:    doCheck,
	}
}

func doCheck(c call, s stage) int {
	src, places, status := openChosen(c, s)
	if status != statusFine {
		return status
	}
	status = src.report(s, reported(c, places))
	said := status != statusFine || len(src.Notices) > 0
	for _, i := range places {
		comparison := src.compare(i, c.today)
		for _, w := range comparison.Warnings {
			said = true
			fmt.Fprintln(s.out, report.Line(fmt.Sprintf("%s: %s: %s",
				comparison.Scenario.Name, w.Code, words.Warning(w, &comparison, c.locale))))
		}
	}
	if !said {
		fmt.Fprintln(s.out, "fine")
	}
	return status
}
