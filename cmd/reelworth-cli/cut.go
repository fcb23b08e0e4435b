package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/paper"
	"reelworth/internal/prints"
	"reelworth/internal/reels"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
)

func cutCommand() command {
	only := scenarioFlag
	only.help = "the scenario of the offer; needed where the file has several"
	return command{
		name:  "cut",
		short: "plan how a reel is cut into cassettes",
		long: "Plan how a reel is cut, from what is left of a reel in hand or from a reel that is only offered.\n" +
			"Wishes are served in their order: 6x12 is six cassettes of 12 exposures, 36 is as many as fit of 36.\n" +
			"With --out the cassettes are printed as a sheet with boxes to tick at the loader.",
		flags: []flagSpec{
			reelFlag, only,
			{name: "offer", value: "NAME", help: "the reel that is offered", set: func(c *call, value string) error { c.offer = value; return nil }},
			{name: "wish", value: "NxEXPOSURES|EXPOSURES", help: "a number of cassettes, or as many as fit; may be repeated", required: true, many: true, set: setWish},
			{name: "out", value: "FILE.pdf", help: "a sheet to print, too", set: outEnding(".pdf")},
			forceFlag,
			{name: "paper", value: "a4|letter", help: "of that sheet", first: "a4",
				set: oneOf("paper", []string{"a4", "letter"}, func(c *call) *string { return &c.paper })},
			{name: "format", value: "table|json", help: "how to print it", first: "table",
				set: oneOf("format", []string{"table", "json"}, func(c *call) *string { return &c.format })},
			localeFlag,
		},
		do: doCut,
	}
}

// mostAsked is how many cassettes a wish may ask for.
const mostAsked = 9999

func setWish(c *call, value string) error {
	number, exposures, counted := strings.Cut(strings.ReplaceAll(value, "×", "x"), "x")
	if !counted {
		number, exposures = "", value
	}
	w := reels.Wish{}
	n, err := strconv.Atoi(number)
	e, wrong := strconv.Atoi(exposures)
	if counted && (err != nil || n < 1 || n > mostAsked) || wrong != nil || e < 1 || e > 100 {
		return fmt.Errorf("--wish takes 6x12 for six cassettes of 12 exposures, or 36 for as many as fit of 36 (1 to 100), not %q", value)
	}
	w.Asked, w.Exposures = int64(n), e
	c.loader.wishes = append(c.loader.wishes, w)
	return nil
}

func doCut(c call, s stage) int {
	if (c.loader.reel == "") == (c.offer == "") || c.loader.reel != "" && c.named {
		return commands["cut"].refuse(s, errors.New("name either --reel, or --offer and its --scenario"))
	}
	src, err := open(c, s)
	if err != nil {
		s.complain("%v", err)
		return statusInput
	}
	plan, loaded, status := src.plan(c, s)
	if status != statusFine {
		return status
	}
	if c.format == "json" {
		err = report.PlanJSON(s.out, plan)
	} else {
		err = report.PlanTable(s.out, plan, c.locale)
	}
	if err != nil {
		return statusCall // run says why
	}
	if c.out != "" {
		name := c.loader.reel + c.offer
		pages := prints.LoadingSheet(name, reels.Steps(plan, loaded), paperOf(c))
		return printed(c, s, pages, name, paper.Lacking(name))
	}
	return statusFine
}

func paperOf(c call) paper.Size {
	if c.paper == "letter" {
		return paper.Letter
	}
	return paper.A4
}

// plan divides the reel that a call names; loaded is how many cassettes it gave already.
func (src source) plan(c call, s stage) (p reels.Plan, loaded, status int) {
	if c.loader.reel != "" {
		r, standing, status := src.reelInHand(c, s)
		if status != statusFine {
			return p, 0, status
		}
		h := r.Film()
		return reels.CutPlan(&h, standing.Left, c.loader.wishes), standing.Loaded, statusFine
	}
	h, left, status := src.offered(c, s)
	if status != statusFine {
		return p, 0, status
	}
	return reels.CutPlan(&h, left, c.loader.wishes), 0, statusFine
}

// offered is the reel of the offer that a call names, and its usable length.
func (src source) offered(c call, s stage) (h film.InHand, left exact.Fraction, status int) {
	at, err := 0, error(nil)
	switch {
	case c.named:
		at, err = src.find(c.scenario)
	case len(src.File.Scenarios) != 1:
		err = fmt.Errorf("%s has %d scenarios; name one of them with --scenario", src.name, len(src.File.Scenarios))
	}
	if err != nil {
		if status := src.report(s, nil); status != statusFine && len(src.File.Scenarios) == 0 {
			return h, left, status
		}
		s.complain("reelworth-cli: %v", err)
		return h, left, statusCall
	}
	in := &src.File.Scenarios[at]
	for i := range in.Offers {
		o := &in.Offers[i]
		if o.Name != c.offer {
			continue
		}
		if faults := src.faultsOfOffer(at, i); len(faults) > 0 {
			src.complainOf(s, faults)
			return h, left, statusInput
		}
		if o.Kind != scenario.KindReel || o.Reel == nil {
			s.complain("reelworth-cli: %q is no reel, so there is nothing to cut", c.offer)
			return h, left, statusCall
		}
		h = film.InHand{Reel: o.Reel.Cutting()}
		rest, err := h.Remaining()
		if err != nil {
			s.complain("%s: %q: %v", src.name, c.offer, err)
			return h, left, statusInput
		}
		return h, rest.Left, statusFine
	}
	s.complain("reelworth-cli: %q has no offer named %q", in.Name, c.offer)
	return h, left, statusCall
}

// faultsOfOffer are the faults of one offer.
func (src source) faultsOfOffer(at, offer int) (list []scenario.Fault) {
	for _, f := range src.Faults {
		if f.Place == (scenario.Place{Part: scenario.PartOffer, Scenario: at, Index: offer}) {
			list = append(list, f)
		}
	}
	return list
}
