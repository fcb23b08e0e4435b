package main

import (
	"fmt"
	"io"
	"strings"
	"text/tabwriter"
)

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

// writeGrowths prints what benchmarks tell of their own growth.
func writeGrowths(w io.Writer, figures []figure) {
	for _, g := range growths {
		if f, ok := named(figures, g.name); ok {
			if ratio, has := f.others[g.unit]; has {
				fmt.Fprintf(w, "%s: %.2f, %s%s\n", strings.TrimPrefix(g.name, "Benchmark"), ratio, g.what, limit(ratio, g.most))
			}
		}
	}
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
