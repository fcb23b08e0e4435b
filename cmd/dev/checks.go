package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
)

// staticcheck is fetched and built by the go command, at one version, so that it
// finds the same faults everywhere. v0.8.2 knows Go 1.26.
const staticcheck = "honnef.co/go/tools/cmd/staticcheck@v0.8.2"

// runTests does every check and gives the exit code.
func runTests() int {
	needs := append(slices.Clone(needsOn(runtime.GOOS)), readerNeeds...)
	if hasJourney(runtime.GOOS) {
		needs = append(needs, journeyNeeds...)
	}
	lacking := provide(needs, os.Stdout)
	steps, err := allSteps(lacking)
	if err != nil {
		fmt.Fprintln(os.Stderr, "dev: the packages cannot be listed:", err)
		return 1
	}
	if !summarise(runSteps(steps, inCI(), os.Stdout), os.Stdout) {
		return 1
	}
	return 0
}

// hasJourney says whether the real window can be driven: that takes X.
func hasJourney(goos string) bool { return goos != "darwin" && goos != "windows" }

// allSteps lists the steps in order, cheapest first; what is still lacking
// decides which cannot be done.
func allSteps(lacking []need) ([]step, error) {
	targets, told, errs := fuzzTargets()
	steps := []step{
		{name: "form: gofmt", do: checkForm},
		{name: "walls: who may import whom", do: func() (report, []error) {
			return goTest(goHeadless, fresh("./internal/walls")...)
		}},
		{name: "readers: other programs that read our exports", cannot: without(lacking, readerNeeds), do: nothing},
		{name: "vet, without C", do: vet(goHeadless, headlessTags)},
		{name: "staticcheck", do: checkStatically},
		{name: "tests: units, properties, the window in memory", do: func() (report, []error) {
			return testAll(goHeadless, "-tags", headlessTags)
		}},
		{name: "races: the tests in which goroutines meet", cannot: without(lacking, buildNeeds[:2]), do: watchRaces},
		{name: "fuzz targets, listed", do: func() (report, []error) { return told, errs }},
	}
	for _, t := range targets {
		steps = append(steps, step{name: fmt.Sprintf("fuzz %s, %s of %s", fuzzTime, t.name, t.pkg), do: t.fuzz})
	}
	return append(steps,
		step{name: "vet, the real window (its C takes minutes the first time)", cannot: without(lacking, needsOn(runtime.GOOS)), do: vet(goWindow, journeyTags)},
		step{name: "journey: the real window on a screen of its own", cannot: whyNoJourney(runtime.GOOS, lacking), do: func() (report, []error) {
			return goTest(goWindow, "-count=1", "-tags", journeyTags, "./cmd/reelworth/...")
		}}), nil
}

func nothing() (report, []error) { return report{}, nil }

// fresh has a build server run tests anew, where a person may reuse results.
func fresh(args ...string) []string {
	if inCI() {
		return append([]string{"-count=1"}, args...)
	}
	return args
}

// without says which of the needed things are lacking, "" if none is.
func without(lacking, needed []need) string {
	var gaps []need
	for _, n := range lacking {
		if slices.ContainsFunc(needed, func(m need) bool { return m.what == n.what }) {
			gaps = append(gaps, n)
		}
	}
	if len(gaps) == 0 {
		return ""
	}
	return "this machine lacks " + inWords(gaps)
}

func whyNoJourney(goos string, lacking []need) string {
	if !hasJourney(goos) {
		return "the journey needs an X server of its own, which " + goos + " does not have"
	}
	return without(lacking, append(slices.Clone(needsOn(goos)), journeyNeeds...))
}

// checkForm asks gofmt, which sits beside the go command or in its root.
func checkForm() (report, []error) {
	program := "gofmt"
	if root, err := exec.Command("go", "env", "GOROOT").Output(); err == nil {
		beside := filepath.Join(strings.TrimSpace(string(root)), "bin", "gofmt")
		if anyProgram([]string{beside}) {
			program = beside
		}
	}
	out, err := exec.Command(program, "-l", "cmd", "internal", "assets").CombinedOutput()
	told := report{full: string(out)}
	if err != nil {
		return told, []error{fmt.Errorf("gofmt: %w", err)}
	}
	if files := strings.Fields(string(out)); len(files) > 0 {
		return told, []error{fmt.Errorf("not in gofmt's form: %s; run gofmt -w on them", strings.Join(files, " "))}
	}
	return told, nil
}

// vet runs go vet over everything with one set of tags.
func vet(command func(...string) *exec.Cmd, tags string) func() (report, []error) {
	return func() (report, []error) { return plain(command("vet", "-tags", tags, "./...")) }
}

// checkStatically runs staticcheck, which the go command fetches first.
func checkStatically() (report, []error) {
	if told, errs := plain(goHeadless("run", staticcheck, "-version")); len(errs) > 0 {
		if !inCI() {
			return report{skipped: []string{"staticcheck: it cannot be fetched or built here"}}, nil
		}
		return told, errs
	}
	return plain(goHeadless("run", staticcheck, "-tags", headlessTags, "./..."))
}

// plain runs a command that is quiet when all is well.
func plain(cmd *exec.Cmd) (report, []error) {
	out, err := cmd.CombinedOutput()
	told := report{full: string(out)}
	if err != nil {
		return told, []error{fmt.Errorf("%s: %w", strings.Join(cmd.Args, " "), err)}
	}
	return told, nil
}
