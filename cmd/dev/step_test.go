package main

import (
	"errors"
	"strings"
	"testing"
	"time"
)

// aDay has one step of every kind, the failing one in the middle.
func aDay(done *[]string) []step {
	does := func(name string, told report, errs ...error) func() (report, []error) {
		return func() (report, []error) { *done = append(*done, name); return told, errs }
	}
	return []step{
		{name: "first", do: does("first", report{brief: "ok  \tfirst\n", full: "all the noise"})},
		{name: "second", do: does("second", report{brief: "short", full: "the whole complaint"}, errors.New("it broke"))},
		{name: "third", cannot: "this machine lacks a screen", do: does("third", report{})},
		{name: "fourth", do: does("fourth", report{skipped: []string{"TestX: no reader"}})},
	}
}

func TestLaterStepsRunAfterAFailure(t *testing.T) {
	var done []string
	var w strings.Builder
	outcomes := runSteps(aDay(&done), false, &w)
	if got := strings.Join(done, " "); got != "first second fourth" {
		t.Errorf("done: %s", got)
	}
	for _, part := range []string{"ok  \tfirst", "the whole complaint", "it broke", "this machine lacks a screen", "not run: TestX: no reader"} {
		if !strings.Contains(w.String(), part) {
			t.Errorf("%q was not shown:\n%s", part, w.String())
		}
	}
	for _, part := range []string{"all the noise", "short"} {
		if strings.Contains(w.String(), part) {
			t.Errorf("%q was shown and should not be", part)
		}
	}
	w.Reset()
	if summarise(outcomes, &w) {
		t.Error("a failure is called well")
	}
	for _, part := range []string{"Failed:\n  second: it broke\n", "Not done here:\n  third: this machine lacks a screen\n  fourth: not run", "Steps: 2 passed, 1 failed, 1 skipped\n"} {
		if !strings.Contains(w.String(), part) {
			t.Errorf("the summary lacks %q:\n%s", part, w.String())
		}
	}
}

func TestOnABuildServerNothingMayBeSkipped(t *testing.T) {
	var done []string
	var w strings.Builder
	if summarise(runSteps(aDay(&done), true, &w), &w) {
		t.Error("a failure is called well")
	}
	if !strings.Contains(w.String(), "Steps: 1 passed, 3 failed, 0 skipped\n") {
		t.Error(w.String())
	}
}

func TestAllIsWellWhenEverythingPassed(t *testing.T) {
	var w strings.Builder
	if !summarise([]outcome{{name: "one", took: time.Second}}, &w) {
		t.Errorf("not well:\n%s", w.String())
	}
}

func TestTimesReadAsAPersonWritesThem(t *testing.T) {
	for d, want := range map[time.Duration]string{
		0: "0.0 s", 1234 * time.Millisecond: "1.2 s", 125 * time.Second: "2 min 05 s", 60 * time.Second: "1 min 00 s",
	} {
		if got := spell(d); got != want {
			t.Errorf("%v: got %q, want %q", d, got, want)
		}
	}
}
