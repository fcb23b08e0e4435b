package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"os/exec"
	"slices"
	"strings"
)

// longest is how long a package's tests may take, on a machine that has other work too.
const longest = "-timeout=30m"

// goTest runs a go test command and reads its events: brief are its own closing
// lines ("ok  reelworth/internal/film 0.2s"), full adds all that failing tests
// said. args come after "go test -json".
func goTest(command func(...string) *exec.Cmd, args ...string) (report, []error) {
	cmd := command(append([]string{"test", "-json"}, args...)...)
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	stdout, err := cmd.Output()
	r := readEvents(stdout)
	told := r.report()
	if err == nil {
		if r.run == 0 {
			return told, []error{fmt.Errorf("no test ran: go %s", strings.Join(cmd.Args[1:], " "))}
		}
		return told, nil
	}
	told.full += stderr.String()
	if len(r.failed) == 0 {
		return told, []error{fmt.Errorf("go test ended with %w", err)}
	}
	return told, []error{fmt.Errorf("%s", strings.Join(r.failed, ", "))}
}

// event is one line of go test -json, as `go doc test2json` describes it.
type event struct {
	Action, Package, ImportPath, Test, Output string
}

// testRun is what the events of one go test say.
type testRun struct {
	run     int      // tests and examples that passed or failed
	closing []string // go test's own line for each package with tests
	failed  []string // names of failing tests, or packages that failed without one
	skipped []string // names of tests that skipped themselves, with their reasons
	said    []string // what failing tests and builds said
}

// readEvents reads go test's events. A line that is no event is kept as said:
// it is a complaint from before any test began.
func readEvents(stdout []byte) testRun {
	var r testRun
	output := map[string]string{} // by package and test
	blamed := map[string]bool{}   // packages with a failing test
	lines := bufio.NewScanner(bytes.NewReader(stdout))
	lines.Buffer(nil, 16<<20)
	for lines.Scan() {
		var e event
		if json.Unmarshal(lines.Bytes(), &e) != nil {
			r.said = append(r.said, lines.Text()+"\n")
			continue
		}
		r.take(e, output, blamed)
	}
	return r
}

func (r *testRun) take(e event, output map[string]string, blamed map[string]bool) {
	key, name := e.Package+" "+e.Test, short(e.Package)+"."+e.Test
	switch e.Action {
	case "output":
		if e.Test == "" && (strings.HasPrefix(e.Output, "ok  \t") || strings.HasPrefix(e.Output, "FAIL\t")) {
			r.closing = append(r.closing, e.Output)
			return
		}
		output[key] += e.Output
	case "build-output":
		r.said = append(r.said, e.Output)
	case "pass":
		if e.Test != "" {
			r.run++
			delete(output, key)
		}
	case "fail":
		if e.Test != "" {
			r.run++
			blamed[e.Package] = true
			r.failed = append(r.failed, name)
			r.said = append(r.said, output[key])
			delete(output, key)
			return
		}
		if !blamed[e.Package] {
			r.failed = append(r.failed, short(e.Package))
		}
		r.said = append(r.said, unfinished(output, e.Package))
	case "skip":
		defer delete(output, key)
		// A fuzz target skips inputs that are not its business: that is no gap.
		if e.Test != "" && !strings.HasPrefix(e.Test, "Fuzz") {
			r.skipped = append(r.skipped, name+": "+skipReason(output[key]))
		}
	}
}

// unfinished gives what a failed package said itself, and what those of its tests
// said that never ended: a panic or a time limit cuts them off.
func unfinished(output map[string]string, pkg string) string {
	var said strings.Builder
	for _, key := range slices.Sorted(maps.Keys(output)) {
		if strings.HasPrefix(key, pkg+" ") {
			said.WriteString(output[key])
		}
	}
	return said.String()
}

// skipReason takes from a skipped test's output the line it gave as its reason.
func skipReason(output string) string {
	for _, line := range strings.Split(output, "\n") {
		line = strings.TrimSpace(line)
		if line != "" && !strings.HasPrefix(line, "===") && !strings.HasPrefix(line, "---") {
			return line
		}
	}
	return "no reason given"
}

func (r testRun) report() report {
	brief := strings.Join(r.closing, "")
	if r.run > 0 {
		brief += fmt.Sprintf("%d tests\n", r.run)
	}
	return report{brief: brief, full: strings.Join(r.said, "") + brief, skipped: r.skipped}
}

// short takes the module's name off a package path.
func short(path string) string {
	_, below, found := strings.Cut(path, "/")
	if !found {
		return path
	}
	return below
}
