package main

import "time"

// aim is what a benchmark is to stay below, and why.
type aim struct {
	below time.Duration
	why   string
}

// aims are the times the program sets itself, by the benchmark's name without its
// processor count. They are our own, no source: together they keep an answer and
// its charts well within the tenth of a second a keystroke takes. A benchmark
// that is not listed has no aim; one that is listed and not there is passed over.
var aims = map[string]aim{
	"BenchmarkCompare/6x12":    {time.Millisecond, "six offers, a year: computed at every keystroke"},
	"BenchmarkFigureBoth":      {35 * time.Millisecond, "both charts redrawn at every keystroke"},
	"BenchmarkProbe":           {5 * time.Millisecond, "the interface answers while it computes and draws"},
	"BenchmarkRead1000":        {500 * time.Millisecond, "a file of 1,000 scenarios opened"},
	"BenchmarkWrite1000":       {500 * time.Millisecond, "a file of 1,000 scenarios saved"},
	"BenchmarkOpenAndSave1000": {500 * time.Millisecond, "1,000 scenarios opened and saved"},
}

// pair compares two benchmarks of one run: such a ratio means the same on every
// machine. most is the ratio not to exceed, 0 where it is only told.
type pair struct {
	what       string
	over, base string
	most       float64
}

var pairs = []pair{
	{"five times the months", "BenchmarkCompare/6x60", "BenchmarkCompare/6x12", 8},
	{"twice the pixels each way", "BenchmarkFigureCost/2x", "BenchmarkFigureCost/1x", 5},
	{"twice the pixels each way", "BenchmarkFigureSpend/2x", "BenchmarkFigureSpend/1x", 5},
	{"writing against reading", "BenchmarkWrite1000", "BenchmarkRead1000", 0},
}

// calibration is a fixed piece of work in this package's own tests. Every figure
// is also told as a multiple of it, to compare runs on unlike machines.
const calibration = "BenchmarkCalibration"
