package main

import "slices"

// race is what of a package runs under the race detector: tests in which several goroutines
// meet. What only computes is left out, for it takes ten times as long there and meets
// nobody.
type race struct {
	pkg  string
	only string // the tests to run, as go test -run takes them; "" for all
	but  string // the tests to leave out, as -skip takes them
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
	{pkg: "./internal/desk", but: "NoTextIsCut|EveryField|EveryNumber|EveryControl|Memory|Fonts|Exact|TabOrder|Sizes?Of"},
}

// meeting is how many goroutines run at once, whatever machine it is: with one processor to
// spare some work would not be shared out at all.
const meeting = "4"

// args are those of go test; draw are the packages that draw cases.
func (r race) args(draw []string) []string {
	args := []string{"-race", "-short", "-cpu", meeting, "-tags", headlessTags}
	if r.only != "" {
		args = append(args, "-run", r.only)
	}
	if r.but != "" {
		args = append(args, "-skip", r.but)
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
