package main

import (
	"slices"
	"strings"
	"testing"
)

// What go test -json says of a passing, a failing, a skipping and a fuzz test,
// and of a package that does not build; taken from a run of Go 1.26, shortened.
const someEvents = `{"Action":"start","Package":"reelworth/internal/film"}
{"Action":"run","Package":"reelworth/internal/film","Test":"TestGood"}
{"Action":"output","Package":"reelworth/internal/film","Test":"TestGood","Output":"    a_test.go:5: quiet\n"}
{"Action":"pass","Package":"reelworth/internal/film","Test":"TestGood","Elapsed":0}
{"Action":"run","Package":"reelworth/internal/film","Test":"TestSkips"}
{"Action":"output","Package":"reelworth/internal/film","Test":"TestSkips","Output":"=== RUN   TestSkips\n"}
{"Action":"output","Package":"reelworth/internal/film","Test":"TestSkips","Output":"    a_test.go:9: no reader of PDF\n"}
{"Action":"output","Package":"reelworth/internal/film","Test":"TestSkips","Output":"--- SKIP: TestSkips (0.00s)\n"}
{"Action":"skip","Package":"reelworth/internal/film","Test":"TestSkips","Elapsed":0}
{"Action":"skip","Package":"reelworth/internal/film","Test":"FuzzCut/seed#3","Elapsed":0}
{"Action":"output","Package":"reelworth/internal/film","Output":"ok  \treelworth/internal/film\t0.2s\n"}
{"Action":"pass","Package":"reelworth/internal/film","Elapsed":0.2}
{"Action":"output","Package":"reelworth/internal/money","Test":"TestBad","Output":"    b_test.go:7: 1 is not 2\n"}
{"Action":"fail","Package":"reelworth/internal/money","Test":"TestBad","Elapsed":0}
{"Action":"output","Package":"reelworth/internal/money","Output":"FAIL\treelworth/internal/money\t0.1s\n"}
{"Action":"fail","Package":"reelworth/internal/money","Elapsed":0.1}
{"ImportPath":"reelworth/internal/exact","Action":"build-output","Output":"fraction.go:9:2: undefined: x\n"}
{"Action":"output","Package":"reelworth/internal/exact","Output":"FAIL\treelworth/internal/exact [build failed]\n"}
{"Action":"fail","Package":"reelworth/internal/exact","Elapsed":0}
{"Action":"skip","Package":"reelworth/internal/palette","Elapsed":0}
{"Action":"output","Package":"reelworth/internal/words","Test":"TestEndless","Output":"panic: test timed out after 8m0s\n"}
{"Action":"output","Package":"reelworth/internal/words","Output":"FAIL\treelworth/internal/words\t480.0s\n"}
{"Action":"fail","Package":"reelworth/internal/words","Elapsed":480}
no event at all
`

func TestEventsAreRead(t *testing.T) {
	r := readEvents([]byte(someEvents))
	if r.run != 2 {
		t.Errorf("%d tests counted, 2 ran", r.run)
	}
	if want := []string{"internal/money.TestBad", "internal/exact", "internal/words"}; !slices.Equal(r.failed, want) {
		t.Errorf("failed: %v, want %v", r.failed, want)
	}
	if want := []string{"internal/film.TestSkips: a_test.go:9: no reader of PDF"}; !slices.Equal(r.skipped, want) {
		t.Errorf("skipped: %v, want %v", r.skipped, want)
	}
	told := r.report()
	for _, part := range []string{"1 is not 2", "undefined: x", "timed out", "no event at all", "FAIL\treelworth/internal/money"} {
		if !strings.Contains(told.full, part) {
			t.Errorf("the full report lacks %q:\n%s", part, told.full)
		}
	}
	if strings.Count(told.full, "FAIL\treelworth/internal/money") != 1 {
		t.Error("a package's closing line is told twice")
	}
	if strings.Contains(told.full, "quiet") {
		t.Error("a passing test's words are in the full report")
	}
	if !strings.Contains(told.brief, "ok  \treelworth/internal/film\t0.2s\n") || !strings.Contains(told.brief, "2 tests\n") {
		t.Errorf("the brief report is:\n%s", told.brief)
	}
}

func TestASkipWithoutAReasonSaysSo(t *testing.T) {
	if got := skipReason("=== RUN   TestX\n--- SKIP: TestX (0.00s)\n"); got != "no reason given" {
		t.Error(got)
	}
}

func TestFuzzTargetsAreFoundWithTheirPackages(t *testing.T) {
	const listing = "FuzzRead\nFuzzCheck\nok  \treelworth/internal/scenario\t0.01s\n" +
		"?   \treelworth/internal/hold\t[no test files]\nFuzzLost\nFAIL\treelworth/internal/film [build failed]\n" +
		"ok  \treelworth/internal/exact\t0.01s\nFuzzNumber\nok  \treelworth/internal/money\t0.02s\n"
	want := []fuzzTarget{{"./internal/scenario", "FuzzRead"}, {"./internal/scenario", "FuzzCheck"}, {"./internal/money", "FuzzNumber"}}
	if got := readTargets(listing); !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

func TestOnlyAnEmptyHandedHuntIsRepeated(t *testing.T) {
	if !ranOutOfTime("--- FAIL: FuzzRead (5.01s)\n    context deadline exceeded\nFAIL\n") {
		t.Error("a hunt that ran out of time is called a find")
	}
	if ranOutOfTime("    context deadline exceeded\n    Failing input written to testdata/fuzz/FuzzRead/1a\n") {
		t.Error("a find is called out of time")
	}
}

func TestAStepNamesItsOwnGapsOnly(t *testing.T) {
	lacking := needsNamed(t, "X11 cursors", "ImageMagick")
	if got := without(lacking, journeyNeeds); got != "" {
		t.Errorf("the journey is kept back: %s", got)
	}
	if got := without(lacking, readerNeeds); got != "this machine lacks ImageMagick" {
		t.Error(got)
	}
	if got := whyNoJourney("darwin", nil); !strings.Contains(got, "darwin") {
		t.Error(got)
	}
	if got := whyNoJourney("linux", lacking); got != "this machine lacks X11 cursors" {
		t.Error(got)
	}
}
