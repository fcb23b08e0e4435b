package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"runtime"
	"slices"
	"strconv"
	"strings"
)

// figure is one benchmark's result: the median of its runs.
type figure struct {
	pkg, name string
	nanos     float64 // one operation; for a probe, its longest wait
	bytes     float64 // allocated by one operation
	allocs    float64 // allocations of one operation

	others map[string]float64 // what else it tells, by its unit
}

// runBenchmarks runs all benchmarks three times, one after the other, then those of the
// real window once, where there can be one, and prints their medians beside the aims. A
// missed aim is told, not punished: it may be the machine. The exit code is 1 only if a
// benchmark breaks.
func runBenchmarks() int {
	fmt.Println("Running every benchmark three times; this takes some ten minutes.")
	out, err := benchmark(goHeadless("test", "-tags", headlessTags, "-run", "^$", "-bench", ".", "-benchmem",
		"-benchtime", "0.3s", "-count", "3", "./..."))
	if why := whyNoJourney(runtime.GOOS, provide(windowNeeds(), os.Stdout)); why != "" {
		fmt.Println("Not the real window: " + why + ".")
	} else {
		fmt.Println("Then the real window: its start, its rest, and 5,000 keys. The first time its C takes some minutes.")
		more, failed := benchmark(goWindow("test", "-tags", journeyTags, "-run", "^$", "-bench", ".", "-benchtime", "1x", "-timeout", "30m", "./cmd/reelworth"))
		out, err = out+more, errors.Join(err, failed)
	}
	figures := readFigures(out)
	writeFigures(os.Stdout, figures)
	writeSums(os.Stdout, figures)
	writePairs(os.Stdout, figures)
	writeGrowths(os.Stdout, figures)
	if err != nil {
		fmt.Fprintf(os.Stderr, "\ndev: not every benchmark ran: %v\n%s", err, complaints(out))
		return 1
	}
	return 0
}

// benchmark runs benchmarks and gives what they say.
func benchmark(cmd *exec.Cmd) (string, error) {
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	return string(out), err
}

// windowNeeds are those of building the window and of driving it on a screen of its own.
func windowNeeds() []need {
	if !hasJourney(runtime.GOOS) {
		return nil
	}
	return append(slices.Clone(needsOn(runtime.GOOS)), journeyNeeds...)
}

// ordinary are the lines of a benchmark run in which nothing went wrong.
var ordinary = regexp.MustCompile(`^(Benchmark|ok  \t|\?   \t|goos: |goarch: |pkg: |cpu: |PASS$)`)

// complaints drops from a benchmark run's output what the table shows already.
func complaints(output string) string {
	var kept strings.Builder
	for _, line := range strings.Split(output, "\n") {
		if !ordinary.MatchString(line) {
			kept.WriteString(line + "\n")
		}
	}
	return kept.String()
}

// processors is the "-8" that go test adds to a benchmark's name.
var processors = regexp.MustCompile(`-\d+$`)

// readFigures reads the benchmark format (the proposal "14313-benchmark-format"
// of the Go project): "pkg:" lines, and lines of name, runs, and values with
// their units. Lines of one name are folded into their medians.
func readFigures(output string) []figure {
	runs := map[string][]figure{}
	var order []string
	pkg := ""
	for _, line := range strings.Split(output, "\n") {
		if path, is := strings.CutPrefix(line, "pkg: "); is {
			pkg = short(strings.TrimSpace(path))
			continue
		}
		f, ok := readFigure(line)
		if !ok {
			continue
		}
		f.pkg = pkg
		key := pkg + " " + f.name
		if runs[key] == nil {
			order = append(order, key)
		}
		runs[key] = append(runs[key], f)
	}
	figures := make([]figure, len(order))
	for i, key := range order {
		figures[i] = median(runs[key])
	}
	return figures
}

func readFigure(line string) (figure, bool) {
	fields := strings.Fields(line)
	if len(fields) < 4 || !strings.HasPrefix(fields[0], "Benchmark") {
		return figure{}, false
	}
	f := figure{name: processors.ReplaceAllString(fields[0], "")}
	timed := false
	for i := 2; i+1 < len(fields); i += 2 {
		value, err := strconv.ParseFloat(fields[i], 64)
		if err != nil {
			return figure{}, false
		}
		switch fields[i+1] {
		case "ns/op":
			f.nanos, timed = value, true
		case "B/op":
			f.bytes = value
		case "allocs/op":
			f.allocs = value
		default:
			if f.others == nil {
				f.others = map[string]float64{}
			}
			f.others[fields[i+1]] = value
		}
	}
	return f, timed
}

// median gives the run in the middle by time; of an even number the slower one.
func median(runs []figure) figure {
	slices.SortFunc(runs, func(a, b figure) int { return compareFloats(a.nanos, b.nanos) })
	return runs[len(runs)/2]
}

func compareFloats(a, b float64) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

// named finds a figure by its benchmark's name.
func named(figures []figure, name string) (figure, bool) {
	i := slices.IndexFunc(figures, func(f figure) bool { return f.name == name })
	if i < 0 {
		return figure{}, false
	}
	return figures[i], true
}
