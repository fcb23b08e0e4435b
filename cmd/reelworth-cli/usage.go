package main

import (
	"errors"
	"fmt"
	"strings"
)

// command is one thing the program does.
type command struct {
	name  string
	short string // one line for the overview
	long  string // for the help of its own
	flags []flagSpec
	do    func(c call, s stage) int

	several  bool   // it takes several files
	ofRates  bool   // its file is one of published rates
	fileless bool   // it takes none
	operand  string // what it takes instead of a file; "" for a file
}

// commands are all commands by name; order is how the overview lists them.
var (
	commands map[string]command
	order    []string
)

func init() {
	commands = map[string]command{}
	for _, cmd := range []command{
		compareCommand(),
		summaryCommand(),
		historyCommand(),
		sideBySideCommand(),
		ratesCommand(),
		chartCommand(),
		reportCommand(),
		spreadsheetCommand(),
		reelsCommand(),
		cutCommand(),
		labelsCommand(),
		speedCodeCommand(),
		checkCommand(),
		exampleCommand(),
		versionCommand(),
		helpCommand(),
	} {
		commands[cmd.name] = cmd
		order = append(order, cmd.name)
	}
}

// run takes the arguments apart and does the command.
func (cmd command) run(args []string, s stage) int {
	c, err := cmd.parse(args, s.today)
	switch {
	case errors.Is(err, errHelp):
		fmt.Fprint(s.out, cmd.help())
		return statusFine
	case err != nil:
		return cmd.refuse(s, err)
	}
	return cmd.do(c, s)
}

// refuse says what is wrong with the call, and how it goes.
func (cmd command) refuse(s stage, err error) int {
	s.complain("reelworth-cli %s: %v", cmd.name, err)
	fmt.Fprint(s.err, "\n"+cmd.usage())
	return statusCall
}

// overview is the help of the whole program.
func overview() string {
	var b strings.Builder
	b.WriteString("Compare film on long reels that you load yourself with ready-made rolls.\n\nUsage: reelworth-cli COMMAND FILE [flags]\n\n")
	for _, name := range order {
		fmt.Fprintf(&b, "  %-14s%s\n", name, commands[name].short)
	}
	b.WriteString("\nFILE is a scenario file; \"-\" reads standard input. Flags stand before or after it.\n" +
		"Exit status: 0 fine, 1 the input is at fault, 2 the call is at fault or the output\ncannot be written.\n")
	return b.String()
}

func (cmd command) usage() string {
	var b strings.Builder
	fmt.Fprintf(&b, "Usage: reelworth-cli %s%s\n", cmd.name, cmd.operands())
	if len(cmd.flags) > 0 {
		b.WriteByte('\n')
	}
	for _, f := range cmd.flags {
		help := f.help
		if f.first != "" {
			help += fmt.Sprintf(" (%s)", f.first)
		}
		fmt.Fprintf(&b, "  %-40s%s\n", strings.TrimSpace("--"+f.name+" "+f.value), help)
	}
	return b.String()
}

// operands are what to write after the command's name.
func (cmd command) operands() string {
	switch {
	case cmd.name == "help":
		return " [COMMAND]"
	case cmd.fileless:
		return ""
	case cmd.operand != "":
		return " " + cmd.operand + " [flags]"
	case cmd.several:
		return " FILE… [flags]"
	}
	return " FILE [flags]"
}

func (cmd command) help() string { return cmd.long + "\n\n" + cmd.usage() }

// The flags that several commands take.
var (
	scenarioFlag = flagSpec{name: "scenario", value: "NAME", help: "only the scenario of that name", set: setScenario}
	// oneScenarioFlag is for commands that make one file of one scenario.
	oneScenarioFlag = flagSpec{name: "scenario", value: "NAME", help: "the scenario to show; needed where the file has several", set: setScenario}
	todayFlag       = flagSpec{name: "today", value: "YYYY-MM-DD", help: "the day to judge the age of rates by (today)", set: setToday}
	localeFlag      = flagSpec{name: "locale", value: "TAG", help: "how to write numbers: en, de, fr, es, pt, pl, sv, de-CH, ja", first: "en", set: setLocale}
)
