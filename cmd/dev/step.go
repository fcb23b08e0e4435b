package main

import (
	"fmt"
	"io"
	"strings"
	"time"
)

// step is one thing that test does: either it is done, or there is a reason why
// it cannot be on this machine.
type step struct {
	name   string
	cannot string                   // why it cannot be done here, "" if it can
	do     func() (report, []error) // no errors: passed
}

// report is what a step has to say: brief when it passed, in full when it failed.
type report struct {
	brief, full string
	skipped     []string // single tests that were not run, with their reasons
}

// state is how a step ended.
type state int

const (
	passed state = iota
	failed
	skipped
)

func (s state) String() string { return [...]string{"passed", "FAILED", "skipped"}[s] }

// outcome is a step that is over.
type outcome struct {
	name  string
	state state
	took  time.Duration
	why   []string // of a failure, or of what was not run
}

// runSteps does every step, whatever became of the earlier ones, and says on w
// how each went. Under strict (a build server) what cannot be done is a failure.
func runSteps(steps []step, strict bool, w io.Writer) []outcome {
	var outcomes []outcome
	for i, s := range steps {
		fmt.Fprintf(w, "\n[%d/%d] %s\n", i+1, len(steps), s.name)
		o := runStep(s, strict, w)
		fmt.Fprintf(w, "        %s in %s\n", o.state, spell(o.took))
		for _, why := range o.why {
			fmt.Fprintf(w, "        %s\n", why)
		}
		outcomes = append(outcomes, o)
	}
	return outcomes
}

func runStep(s step, strict bool, w io.Writer) outcome {
	o := outcome{name: s.name}
	if s.cannot != "" {
		o.state, o.why = skipped, []string{s.cannot}
		if strict {
			o.state = failed
		}
		return o
	}
	start := time.Now()
	told, errs := s.do()
	o.took = time.Since(start)
	for _, err := range errs {
		o.state, o.why = failed, append(o.why, err.Error())
	}
	for _, single := range told.skipped {
		if o.why = append(o.why, "not run: "+single); strict {
			o.state = failed
		}
	}
	text := told.brief
	if len(errs) > 0 {
		text = told.full
	}
	if text = strings.TrimRight(text, "\n"); text != "" {
		fmt.Fprintln(w, text)
	}
	return o
}

// summarise writes what came of all steps, failures last so that they are what
// stays on the screen, and says whether all is well.
func summarise(outcomes []outcome, w io.Writer) bool {
	count := map[state]int{}
	var whole time.Duration
	fmt.Fprintf(w, "\nSummary\n")
	for _, o := range outcomes {
		count[o.state]++
		whole += o.took
		fmt.Fprintf(w, "  %-8s %8s  %s\n", o.state, spell(o.took), o.name)
	}
	fmt.Fprintf(w, "  %-8s %8s\n", "in all", spell(whole))
	list(w, "Not done here:", outcomes, func(o outcome) bool { return o.state != failed && len(o.why) > 0 })
	list(w, "Failed:", outcomes, func(o outcome) bool { return o.state == failed })
	fmt.Fprintf(w, "\nSteps: %d passed, %d failed, %d skipped\n", count[passed], count[failed], count[skipped])
	return count[failed] == 0
}

func list(w io.Writer, title string, outcomes []outcome, wanted func(outcome) bool) {
	for _, o := range outcomes {
		if !wanted(o) {
			continue
		}
		if title != "" {
			fmt.Fprintf(w, "\n%s\n", title)
			title = ""
		}
		fmt.Fprintf(w, "  %s: %s\n", o.name, strings.Join(o.why, "; "))
	}
}

// spell writes a time as a person reads it: "0.3 s", "2 min 05 s".
func spell(d time.Duration) string {
	if d < time.Minute {
		return fmt.Sprintf("%.1f s", d.Seconds())
	}
	seconds := int(d.Round(time.Second).Seconds())
	return fmt.Sprintf("%d min %02d s", seconds/60, seconds%60)
}
