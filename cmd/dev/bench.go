package main

import (
	"fmt"
	"io"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"text/tabwriter"
)

// figure is one benchmark's result: the median of its runs.
type figure struct {
	pkg, name string
	nanos     float64 // one operation; for a probe, its longest wait
	bytes     float64 // allocated by one operation
	allocs    float64 // allocations of one operation
}

// runBenchmarks runs all benchmarks three times, one after the other, and prints
// their medians beside the aims. A missed aim is told, not punished: it may be
// the machine. The exit code is 1 only if a benchmark breaks.
func runBenchmarks() int {
	fmt.Println("Running every benchmark three times; this takes a few minutes.")
	cmd := goHeadless("test", "-tags", headlessTags, "-run", "^$", "-bench", ".", "-benchmem",
		"-benchtime", "0.3s", "-count", "3", "./...")
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	figures := readFigures(string(out))
	writeFigures(os.Stdout, figures)
	writeSums(os.Stdout, figures)
	writePairs(os.Stdout, figures)
	if err != nil {
		fmt.Fprintf(os.Stderr, "\ndev: not every benchmark ran: %v\n%s", err, complaints(string(out)))
		return 1
	}
	return 0
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

// writeFigures prints the table of all benchmarks, aims beside.
func writeFigures(w io.Writer, figures []figure) {
	fixed, calibrated := named(figures, calibration)
	table := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintln(table, "\npackage\tbenchmark\ttime\t× calibration\tallocated\taim")
	for _, f := range figures {
		ratio := "–"
		if calibrated && fixed.nanos > 0 {
			ratio = fmt.Sprintf("%.3g", f.nanos/fixed.nanos)
		}
		fmt.Fprintf(table, "%s\t%s\t%s\t%s\t%s in %.0f\t%s\n", f.pkg, strings.TrimPrefix(f.name, "Benchmark"),
			spellShort(f.nanos), ratio, spellBytes(f.bytes), f.allocs, verdict(f))
	}
	table.Flush()
}

// verdict says how a figure stands to its aim, "" where it has none.
func verdict(f figure) string {
	a, has := aims[f.name]
	if !has {
		return ""
	}
	return a.judge(f.nanos)
}

// judge says whether a time in nanoseconds meets the aim.
func (a aim) judge(nanos float64) string {
	word := "met"
	if nanos >= float64(a.below) {
		word = "MISSED"
	}
	return fmt.Sprintf("%s: below %s (%s)", word, spellShort(float64(a.below)), a.why)
}

// writeSums prints the aims of several benchmarks together, if all are there.
func writeSums(w io.Writer, figures []figure) {
	for _, s := range sums {
		whole, all := 0.0, true
		for _, name := range s.names {
			f, ok := named(figures, name)
			whole, all = whole+f.nanos, all && ok
		}
		if all {
			names := strings.ReplaceAll(strings.Join(s.names, " + "), "Benchmark", "")
			fmt.Fprintf(w, "\n%s: %s, %s\n", names, spellShort(whole), s.judge(whole))
		}
	}
}

// writePairs prints the ratios within this run whose two figures are there.
func writePairs(w io.Writer, figures []figure) {
	table := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintln(table, "\nratios within this run\t\t")
	for _, p := range pairs {
		over, ok := named(figures, p.over)
		base, also := named(figures, p.base)
		if !ok || !also || base.nanos == 0 {
			continue
		}
		ratio := over.nanos / base.nanos
		fmt.Fprintf(table, "%s ÷ %s\t%.2f\t%s%s\n", strings.TrimPrefix(p.over, "Benchmark"),
			strings.TrimPrefix(p.base, "Benchmark"), ratio, p.what, limit(ratio, p.most))
	}
	table.Flush()
}

func limit(ratio, most float64) string {
	switch {
	case most == 0:
		return ""
	case ratio > most:
		return fmt.Sprintf(", MISSED: at most %g", most)
	}
	return fmt.Sprintf(", met: at most %g", most)
}

// spellShort writes nanoseconds in the unit that fits.
func spellShort(nanos float64) string {
	switch {
	case nanos < 1e3:
		return fmt.Sprintf("%.3g ns", nanos)
	case nanos < 1e6:
		return fmt.Sprintf("%.3g µs", nanos/1e3)
	case nanos < 1e9:
		return fmt.Sprintf("%.3g ms", nanos/1e6)
	}
	return fmt.Sprintf("%.3g s", nanos/1e9)
}

func spellBytes(b float64) string {
	switch {
	case b < 1e3:
		return fmt.Sprintf("%.0f B", b)
	case b < 1e6:
		return fmt.Sprintf("%.3g kB", b/1e3)
	}
	return fmt.Sprintf("%.3g MB", b/1e6)
}
