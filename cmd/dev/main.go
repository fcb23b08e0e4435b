package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

const usage = `Reelworth's workbench. Run it from the project's folder:

  go run ./cmd/dev run [FILE]    open the window, on the built-in demo or on FILE
  go run ./cmd/dev test          every check: form, walls, tests, races, fuzzing, the real window
  go run ./cmd/dev bench         the benchmarks, beside their aims
  go run ./cmd/dev shots [DIR]   pictures of the window in both themes, into DIR
  go run ./cmd/dev package [DIR] packages to hand on, of the committed revision, into DIR
  go run ./cmd/dev package-test  packages made twice, unpacked, started, judged
  go run ./cmd/dev help          this text

It looks first for what the machine lacks, installs it with apt-get where it may
(as root, or with a sudo that asks nothing), and prints the command where it may not.
With CI=true, test skips nothing: what is missing is a failure.
`

func main() {
	if err := enterProject(); err != nil {
		fmt.Fprintln(os.Stderr, "dev:", err)
		os.Exit(1)
	}
	os.Exit(dispatch(os.Args[1:]))
}

// dispatch runs one command and gives the exit code: 0 done, 1 failed, 2 misused.
func dispatch(args []string) int {
	if len(args) == 0 {
		fmt.Fprint(os.Stderr, usage)
		return 2
	}
	name, rest := args[0], args[1:]
	switch name {
	case "run":
		return runWindow(rest)
	case "test":
		return misusedOr(rest, 0, runTests)
	case "bench":
		return misusedOr(rest, 0, runBenchmarks)
	case "shots":
		return misusedOr(rest, 1, func() int { return takeShots(rest) })
	case "package":
		return misusedOr(rest, 1, func() int { return makePackages(rest) })
	case "package-test":
		return misusedOr(rest, 0, testPackages)
	case "help", "-h", "-help", "--help":
		fmt.Print(usage)
		return 0
	}
	fmt.Fprintf(os.Stderr, "dev: there is no command %q\n\n%s", name, usage)
	return 2
}

// misusedOr refuses more than most arguments, else does the work.
func misusedOr(rest []string, most int, work func() int) int {
	if len(rest) > most {
		fmt.Fprintf(os.Stderr, "dev: too many arguments: %s\n\n%s", strings.Join(rest, " "), usage)
		return 2
	}
	return work()
}

// enterProject changes to the folder that holds go.mod, so that every path
// below may be written from there.
func enterProject() error {
	out, err := exec.Command("go", "env", "GOMOD").Output()
	if err != nil {
		return fmt.Errorf("the go command does not answer (%w); is Go on the PATH?", err)
	}
	mod := strings.TrimSpace(string(out))
	if mod == "" || mod == os.DevNull {
		return fmt.Errorf("no go.mod here or above; run this from the project's folder")
	}
	return os.Chdir(filepath.Dir(mod))
}

// inCI says whether a build server asks: then nothing may be skipped.
func inCI() bool {
	ci := os.Getenv("CI")
	return ci != "" && ci != "0" && ci != "false"
}
