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
	"BenchmarkCompare/6_offers,_12_months": {time.Millisecond, "computed at every keystroke"},
	"BenchmarkCompareAtTheLimits":          {time.Second, "the largest scenario a file may hold"},
	"BenchmarkVolumeRanges6":               {100 * time.Millisecond, "6 offers, 12 months: who is cheaper at each number of rolls"},
	"BenchmarkOutlookAtTheLimits":          {3 * time.Second, "all that changes the largest scenario's answer"},
	"BenchmarkOutlookStopped":              {50 * time.Millisecond, "the next key stops what is under way"},
	"BenchmarkKeystroke/3offers":           {35 * time.Millisecond, "from a key to both charts redrawn"},
	"BenchmarkTableOf2500":                 {2 * time.Second, "a long list of scenarios printed as tables"},
	"BenchmarkHistory25Years":              {150 * time.Millisecond, "6 offers at the rates of 25 years of days"},
	"BenchmarkReadReels":                   {time.Second, "500 reels in hand with as long a log as a file holds"},
	"BenchmarkSaveReels":                   {2 * time.Second, "the same saved with a row more"},
	"BenchmarkStandReels":                  {200 * time.Millisecond, "500 reels with 500 loads each"},
	"BenchmarkProbe":                       {5 * time.Millisecond, "the longest the interface waits"},
}

// sum is an aim for several benchmarks together.
type sum struct {
	names []string
	aim
}

var sums = []sum{
	{[]string{"BenchmarkRead1000", "BenchmarkWrite1000"},
		aim{500 * time.Millisecond, "1,000 scenarios opened and saved"}},
}

// pair compares two benchmarks of one run: such a ratio means the same on every
// machine. most is the ratio not to exceed, 0 where it is only told.
type pair struct {
	what       string
	over, base string
	most       float64
}

var pairs = []pair{
	{"five times the months", "BenchmarkCompare/6_offers,_60_months", "BenchmarkCompare/6_offers,_12_months", 8},
	{"four times the pixels", "BenchmarkFigure/cost_at_2×", "BenchmarkFigure/cost_at_1×", 5},
	{"four times the pixels", "BenchmarkFigure/spend_at_2×", "BenchmarkFigure/spend_at_1×", 5},
	{"eight offers for three", "BenchmarkKeystroke/8offers", "BenchmarkKeystroke/3offers", 4},
	{"eight times the letters", "BenchmarkFit/8000_letters", "BenchmarkFit/1000_letters", 12},
	{"our first picture for an empty window", "BenchmarkStart/full", "BenchmarkStart/empty", 1.5},
	{"our rest for an empty window's", "BenchmarkIdle/field", "BenchmarkIdle/empty", 1.2},
	{"a log's saving for its opening", "BenchmarkSaveReels", "BenchmarkReadReels", 4},
	{"twenty times the reels in hand put up", "BenchmarkShowReels/500reels", "BenchmarkShowReels/25reels", 0},
	{"twenty times the reels in hand, turned by the wheel", "BenchmarkScrollReels/500reels", "BenchmarkScrollReels/25reels", 1.5},
	{"saving for opening", "BenchmarkWrite1000", "BenchmarkRead1000", 0},
}

// growths are how much larger something has become within one benchmark, as it tells by a
// unit of its own, and the most it may be.
var growths = []struct {
	what, name, unit string
	most             float64
}{
	{"memory after 5,000 keys for after 100", "BenchmarkTyping", "×memory", 1.3},
	{"live heap after 5,000 keys for after 100", "BenchmarkTyping", "×heap", 1.3},
}

// calibration is a fixed piece of work in this package's own tests. Every figure
// is also told as a multiple of it, to compare runs on unlike machines.
const calibration = "BenchmarkCalibration"
