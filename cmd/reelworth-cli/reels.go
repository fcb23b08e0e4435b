package main

import (
	"fmt"

	"reelworth/internal/reels"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
)

// atLoader are the arguments of the commands at the loader.
type atLoader struct {
	reel      string
	wishes    []reels.Wish
	exposures int
	tolerance reels.Tolerance
	sheet     string
	firstFree int
	numbers   span
}

// span is from one number to another, both counted; 0, 0 for all.
type span struct{ from, to int }

var reelFlag = flagSpec{name: "reel", value: "NAME", help: "the reel in hand",
	set: func(c *call, value string) error { c.loader.reel = value; return nil }}

func reelsCommand() command {
	return command{
		name:  "reels",
		short: "print what is left of the reels in hand",
		long: "Print what is left of the reels in hand of a scenario file, what the rest gives, what is loaded and\n" +
			"undeveloped, what was spoiled, and what film comes to per roll, planned and so far.",
		flags: []flagSpec{
			{name: "format", value: "table|json", help: "how to print it", first: "table",
				set: oneOf("format", []string{"table", "json"}, func(c *call) *string { return &c.format })},
			localeFlag,
		},
		do: doReels,
	}
}

func doReels(c call, s stage) int {
	src, err := open(c, s)
	if err != nil {
		s.complain("%v", err)
		return statusInput
	}
	list := reels.StandAll(src.File.Reels, src.Faults)
	if c.format == "json" {
		err = report.ReelsJSON(s.out, list)
	} else {
		err = report.ReelsTable(s.out, list, c.locale)
	}
	if err != nil {
		return statusCall // run says why
	}
	return src.reportReels(s)
}

// stand is where the reel at place i stands.
func (src source) stand(i int) reels.Standing {
	return reels.Stand(&src.File.Reels[i], scenario.FaultsOfReel(src.Faults, i))
}

// findReel is the place of the reel in hand of that name.
func (src source) findReel(name string) (int, error) {
	var names []string
	for i := range src.File.Reels {
		if src.File.Reels[i].Name == name {
			return i, nil
		}
		names = append(names, src.File.Reels[i].Name)
	}
	return 0, fmt.Errorf("%s has no reel in hand named %q; it has %s", src.name, name, quotedNames(names))
}

// reelInHand is the reel that a call names and where it stands; the status is not fine,
// and why was said, where there is none or it has a fault.
func (src source) reelInHand(c call, s stage) (*scenario.InHand, reels.Standing, int) {
	i, err := src.findReel(c.loader.reel)
	if err != nil {
		if status := src.reportReels(s); status != statusFine && len(src.File.Reels) == 0 {
			return nil, reels.Standing{}, status // the file gave no reel at all
		}
		s.complain("reelworth-cli: %v", err)
		return nil, reels.Standing{}, statusCall
	}
	standing := src.stand(i)
	if standing.Fault != nil {
		src.complainOf(s, scenario.FaultsOfReel(src.Faults, i))
		return nil, standing, statusInput
	}
	return &src.File.Reels[i], standing, statusFine
}
