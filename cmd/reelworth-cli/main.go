package main

import (
	"fmt"
	"io"
	"os"
	"time"

	"reelworth/internal/report"
	"reelworth/internal/scenario"
)

// The exit statuses.
const (
	statusFine  = 0
	statusInput = 1 // the input is at fault
	statusCall  = 2 // the call is at fault, or its output cannot be written
)

func main() {
	os.Exit(run(os.Args[1:], stage{os.Stdin, os.Stdout, os.Stderr, scenario.DateOf(time.Now())}))
}

// stage is what a command works on.
type stage struct {
	in    io.Reader
	out   io.Writer
	err   io.Writer
	today scenario.Date
}

// complain prints one line on standard error.
func (s stage) complain(format string, args ...any) {
	fmt.Fprintln(s.err, report.Line(fmt.Sprintf(format, args...)))
}

// run is the whole program; it returns the exit status.
func run(args []string, s stage) (status int) {
	out := &outlet{to: s.out}
	s.out = out
	defer func() {
		if problem := recover(); problem != nil {
			s.complain("reelworth-cli: the program itself failed (%v). Please report it together with the file.", problem)
			status = statusInput
		}
		if out.err != nil {
			s.complain("reelworth-cli: the output could not be written (%v)", out.err)
			status = statusCall
		}
	}()
	if len(args) == 0 {
		fmt.Fprint(s.err, overview())
		return statusCall
	}
	switch args[0] {
	case "help", "-h", "-help", "--help":
		return help(args[1:], s)
	case "-version", "--version":
		return commands["version"].run(args[1:], s)
	}
	cmd, ok := commands[args[0]]
	if !ok {
		s.complain("reelworth-cli: there is no command %q", args[0])
		fmt.Fprint(s.err, "\n"+overview())
		return statusCall
	}
	return cmd.run(args[1:], s)
}
