package main

import (
	"slices"
	"strings"
)

// race is what of a package runs under the race detector: tests in which several goroutines
// meet. What only computes is left out, for it takes ten times as long there and meets
// nobody.
type race struct {
	pkg  string
	only string // the tests to run, as go test -run takes them; "" for all
}

// raced are the packages that begin goroutines, or are promised to bear those of others.
var raced = []race{
	{pkg: "./internal/parallel"},
	{pkg: "./internal/desk/jobs"},
	{pkg: "./internal/history"},
	{pkg: "./internal/sidebyside"},
	{pkg: "./internal/scenario", only: "SeveralScenarios"},
	{pkg: "./internal/compare", only: "SideBySide|StoppedSearch|FlipsWorkedOutByHand"},
	{pkg: "./internal/figure", only: "SideBySide|Shelf"},
	{pkg: "./internal/report", only: "Golden|Summary"},
	{pkg: "./internal/rates", only: "Answer|Asked|Redirects"},
	{pkg: "./internal/library", only: "AtOnce|AtOneInstant|Windows|TwoWho|Claim|Lock"},
	{pkg: "./internal/desk", only: strings.Join(meetings, "|")},
}

// meetings are the window's tests in which its thread meets others: jobs that are overtaken
// or given up, files opened and saved behind it, what is kept for a crash, exports, rates.
// What lays out, reads texts or goes over every control meets nobody.
var meetings = []string{
	"AnyEdits", "FirstStart", "FollowsTyping", "ChartsAreAlive", "UndoAfterSaving", "Deal",
	"Saving", "SavesOver", "ClosingAsks", "ClosingAfter", "AFileChangedOutside", "EndedFromOutside", "OutlivesACrash", "CleanEnd", "TwoWindows", "AFileIsRemembered",
	"LastFileOpens", "AnotherFileOpens", "BeforeAFileHasOpened",
	"SideBySide", "FallOnScenarios", "DaysRates", "BadFileOfRates", "ThePast", "GivesTheDaysUp",
	"ExportingAChart", "PutInHand", "StandingAtTheLoader", "PlanOfAnOffer",
}

// meeting is how many goroutines run at once, whatever machine it is: with one processor to
// spare some work would not be shared out at all.
const meeting = "4"

// args are those of go test; draw are the packages that draw cases.
func (r race) args(draw []string) []string {
	args := []string{"-race", longest, "-short", "-cpu", meeting, "-tags", headlessTags}
	if r.only != "" {
		args = append(args, "-run", r.only)
	}
	args = append(args, r.pkg)
	if inCI() && slices.ContainsFunc(draw, func(pkg string) bool { return "./"+short(pkg) == r.pkg }) {
		args = append(args, seed)
	}
	return fresh(args...)
}

// watchRaces runs them. A package of which no test ran is a failure.
func watchRaces() (report, []error) {
	draw, _, err := drawers()
	if err != nil {
		return report{}, []error{err}
	}
	var whole report
	var errs []error
	for _, r := range raced {
		told, failed := goTest(goWindow, r.args(draw)...)
		whole = whole.and(told)
		errs = append(errs, failed...)
	}
	return whole, errs
}
