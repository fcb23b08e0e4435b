package main

import (
	"strings"
	"testing"
	"time"
)

const someFigures = `goos: linux
goarch: amd64
pkg: reelworth/cmd/dev
BenchmarkCalibration-2         	     556	    400000 ns/op	       0 B/op	       0 allocs/op
pkg: reelworth/internal/compare
cpu: some processor
BenchmarkCompare/6x12-2         	    1234	    900000 ns/op	   45678 B/op	     321 allocs/op
BenchmarkCompare/6x12-2         	    1300	    700000 ns/op	   45678 B/op	     321 allocs/op
BenchmarkCompare/6x12-2         	    1250	    800000 ns/op	   45678 B/op	     321 allocs/op
BenchmarkCompare/6x60-2         	     400	   8000000 ns/op
BenchmarkRead1000               	       2	 600000000 ns/op	 12.5 MB/s
BenchmarkBroken-2
PASS
ok  	reelworth/internal/compare	4.2s
`

func TestFiguresAreMediansWithTheirPackage(t *testing.T) {
	figures := readFigures(someFigures)
	if len(figures) != 4 {
		t.Fatalf("%d figures, want 4: %+v", len(figures), figures)
	}
	f, ok := named(figures, "BenchmarkCompare/6x12")
	if !ok || f.each != 800*time.Microsecond || f.allocs != 321 || f.bytes != 45678 || f.pkg != "internal/compare" {
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
	for name, part := range map[string]string{"Compare/6x12": "met: below 1 ms", "Read1000": "MISSED: below 500 ms"} {
		if line := lineWith(w.String(), name); !strings.Contains(line, part) {
			t.Errorf("%s: %q lacks %q", name, line, part)
		}
	}
	// 800 µs are twice the calibration's 400 µs.
	if line := lineWith(w.String(), "Compare/6x12"); !strings.Contains(line, "800 µs  2 ") {
		t.Errorf("the multiple of the calibration is not 2: %q", line)
	}
}

func TestRatiosAreTakenWithinTheRun(t *testing.T) {
	var w strings.Builder
	writePairs(&w, readFigures(someFigures))
	if line := lineWith(w.String(), "6x60"); !strings.Contains(line, "10.00") || !strings.Contains(line, "MISSED: at most 8") {
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
