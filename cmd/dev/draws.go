package main

import (
	"fmt"
	"os/exec"
	"slices"
	"strings"
)

// drawing is the library that properties draw their cases with.
const drawing = "pgregory.net/rapid"

// seed is where a build server's draws begin: a commit gives the same answer twice there.
// A person's run draws anew each time, which is what finds cases that nobody thought of.
const seed = "-rapid.seed=20260401"

// drawers lists the packages of which a test draws cases, and the others that have Go files.
func drawers() (draw, others []string, err error) {
	out, err := goHeadless("list", "-tags", headlessTags, "-f", "{{.ImportPath}} {{.TestImports}} {{.XTestImports}}", "reelworth/...").Output()
	if err != nil {
		return nil, nil, fmt.Errorf("go list: %w", err)
	}
	for line := range strings.Lines(string(out)) {
		pkg, imports, _ := strings.Cut(line, " ")
		if slices.Contains(strings.Fields(strings.NewReplacer("[", " ", "]", " ").Replace(imports)), drawing) {
			draw = append(draw, pkg)
		} else {
			others = append(others, pkg)
		}
	}
	return draw, others, nil
}

// testAll runs the tests of every package, on a build server with draws that begin at the seed.
func testAll(command func(...string) *exec.Cmd, args ...string) (report, []error) {
	args = append(args, longest)
	if !inCI() {
		return goTest(command, append(args, "./...")...)
	}
	draw, others, err := drawers()
	if err != nil {
		return report{}, []error{err}
	}
	told, errs := goTest(command, fresh(append(slices.Clone(args), others...)...)...)
	more, worse := goTest(command, fresh(append(append(slices.Clone(args), draw...), seed)...)...)
	return told.and(more), append(errs, worse...)
}

// and is what two runs of one step have to say.
func (r report) and(more report) report {
	return report{brief: r.brief + more.brief, full: r.full + more.full, skipped: append(r.skipped, more.skipped...)}
}
