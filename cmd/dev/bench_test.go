package main

import (
	"strings"
	"testing"
)

const someFigures = `goos: linux
goarch: amd64
pkg: reelworth/cmd/dev
BenchmarkCalibration-2         	     556	    400000 ns/op	       0 B/op	       0 allocs/op
pkg: reelworth/internal/compare
cpu: some processor
BenchmarkCompare/6_offers,_12_months-2         	    1234	    900000 ns/op	   45678 B/op	     321 allocs/op
BenchmarkCompare/6_offers,_12_months-2         	    1300	    700000 ns/op	   45678 B/op	     321 allocs/op
BenchmarkCompare/6_offers,_12_months-2         	    1250	    800000 ns/op	   45678 B/op	     321 allocs/op
BenchmarkCompare/6_offers,_60_months-2         	     400	   8000000 ns/op
BenchmarkRead1000               	       2	 300000000 ns/op	 12.5 MB/s
BenchmarkWrite1000-2            	       2	 250000000 ns/op
BenchmarkProbe-2                	       1	   6000000 ns/op
BenchmarkBroken-2
PASS
ok  	reelworth/internal/compare	4.2s
`

func TestFiguresAreMediansWithTheirPackage(t *testing.T) {
	figures := readFigures(someFigures)
	if len(figures) != 6 {
		t.Fatalf("%d figures, want 6: %+v", len(figures), figures)
	}
	f, ok := named(figures, "BenchmarkCompare/6_offers,_12_months")
	if !ok || f.nanos != 800_000 || f.allocs != 321 || f.bytes != 45678 || f.pkg != "internal/compare" {
		t.Errorf("got %+v", f)
	}
}

func TestAFigureBelowANanosecondKeepsItsTime(t *testing.T) {
	f, ok := readFigure("BenchmarkTiny-2 1000000000 0.2500 ns/op")
	if !ok || f.nanos != 0.25 {
		t.Errorf("got %+v", f)
	}
}

func TestTheTableSaysWhichAimsAreMet(t *testing.T) {
	var w strings.Builder
	writeFigures(&w, readFigures(someFigures))
	for name, part := range map[string]string{"Compare/6_offers,_12_months": "met: below 1 ms", "Probe": "MISSED: below 5 ms"} {
		if line := lineWith(w.String(), name); !strings.Contains(line, part) {
			t.Errorf("%s: %q lacks %q", name, line, part)
		}
	}
	// 800 µs are twice the calibration's 400 µs.
	if line := lineWith(w.String(), "Compare/6_offers,_12_months"); !strings.Contains(line, "800 µs  2 ") {
		t.Errorf("the multiple of the calibration is not 2: %q", line)
	}
}

func TestAnAimForSeveralTogetherIsTheirSum(t *testing.T) {
	var w strings.Builder
	writeSums(&w, readFigures(someFigures))
	if want := "Read1000 + Write1000: 550 ms, MISSED: below 500 ms"; !strings.Contains(w.String(), want) {
		t.Errorf("got %q, want %q in it", w.String(), want)
	}
	w.Reset()
	writeSums(&w, readFigures("BenchmarkRead1000 2 300000000 ns/op\n"))
	if w.Len() > 0 {
		t.Errorf("half of a sum is told: %s", w.String())
	}
}

func TestRatiosAreTakenWithinTheRun(t *testing.T) {
	var w strings.Builder
	writePairs(&w, readFigures(someFigures))
	if line := lineWith(w.String(), "6_offers,_60_months"); !strings.Contains(line, "10.00") || !strings.Contains(line, "MISSED: at most 8") {
		t.Errorf("got %q", line)
	}
	if strings.Contains(w.String(), "Figure") {
		t.Error("a ratio is told of figures that are not there")
	}
}

func TestAnAimIsATimeAndAReason(t *testing.T) {
	for name, a := range aims {
		if a.below <= 0 || a.why == "" || !strings.HasPrefix(name, "Benchmark") {
			t.Errorf("%s: %+v", name, a)
		}
	}
}

func TestABrokenBenchmarkIsShown(t *testing.T) {
	got := complaints("BenchmarkX-2 1 5 ns/op\n--- FAIL: BenchmarkY\n    y_test.go:3: no\nok  \treelworth/a\t1s\n")
	if !strings.Contains(got, "y_test.go:3: no") || strings.Contains(got, "BenchmarkX") || strings.Contains(got, "ok  ") {
		t.Errorf("got %q", got)
	}
}

func lineWith(text, part string) string {
	for _, line := range strings.Split(text, "\n") {
		if strings.Contains(line, part) {
			return line
		}
	}
	return ""
}

func TestAGrowthIsToldWithItsLimit(t *testing.T) {
	var w strings.Builder
	writeGrowths(&w, readFigures("BenchmarkTyping-2 1 20000000 ns/op 170.5 MB-after-100 1.450 ×heap 1.100 ×memory\n"))
	for _, want := range []string{"Typing: 1.10, memory after 5,000 keys for after 100, met: at most 1.3", "Typing: 1.45, live heap after 5,000 keys for after 100, MISSED: at most 1.3"} {
		if !strings.Contains(w.String(), want) {
			t.Errorf("got %q, want %q in it", w.String(), want)
		}
	}
}
