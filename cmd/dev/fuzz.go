package main

import (
	"fmt"
	"os/exec"
	"strings"
)

// fuzzTime is how long each fuzz target hunts: enough to notice a target that
// breaks at once. A longer hunt: go test -fuzz NAME -fuzztime 10m PACKAGE.
const fuzzTime = "5s"

// fuzzTarget is one fuzz test, of one package.
type fuzzTarget struct{ pkg, name string }

// fuzzTargets asks every package's tests for the fuzz targets among them; the
// report and the errors are those of the asking.
func fuzzTargets() ([]fuzzTarget, report, []error) {
	told, errs := plain(goHeadless("test", "-tags", headlessTags, "-list", "^Fuzz", "./..."))
	targets := readTargets(told.full)
	told.brief = fmt.Sprintf("%d found\n", len(targets))
	if len(errs) == 0 && len(targets) == 0 {
		errs = []error{fmt.Errorf("there are none, and there should be")}
	}
	return targets, told, errs
}

// readTargets reads the output of go test -list: a package's targets come
// before the line that names it.
func readTargets(output string) []fuzzTarget {
	var targets []fuzzTarget
	var names []string
	for _, line := range strings.Split(output, "\n") {
		fields := strings.Fields(line)
		switch {
		case len(fields) == 1 && strings.HasPrefix(fields[0], "Fuzz"):
			names = append(names, fields[0])
		case len(fields) > 1 && fields[0] == "ok":
			for _, name := range names {
				targets = append(targets, fuzzTarget{"./" + short(fields[1]), name})
			}
			names = nil
		case len(fields) > 1 && fields[0] == "FAIL":
			names = nil
		}
	}
	return targets
}

// fuzz hunts for fuzzTime. A hunt that only ran out of time while closing down
// is hunted once more: the go command reports that as a failure now and then,
// and it found nothing.
func (t fuzzTarget) fuzz() (report, []error) {
	told, errs := plain(t.command())
	if len(errs) > 0 && ranOutOfTime(told.full) {
		told, errs = plain(t.command())
	}
	told.brief = lastLines(told.full, "fuzz: elapsed", "ok  \t")
	return told, errs
}

func (t fuzzTarget) command() *exec.Cmd {
	return goHeadless("test", "-tags", headlessTags, "-run", "^$", "-fuzz", "^"+t.name+"$", "-fuzztime", fuzzTime, t.pkg)
}

func ranOutOfTime(output string) bool {
	return strings.Contains(output, "context deadline exceeded") && !strings.Contains(output, "Failing input written")
}

// lastLines keeps, for each beginning, the last line that begins with it.
func lastLines(output string, beginnings ...string) string {
	var kept string
	for _, beginning := range beginnings {
		last := ""
		for _, line := range strings.Split(output, "\n") {
			if strings.HasPrefix(line, beginning) {
				last = line + "\n"
			}
		}
		kept += last
	}
	return kept
}
