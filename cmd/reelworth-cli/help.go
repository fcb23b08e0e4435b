package main

import (
	"fmt"
	"strings"

	"reelworth/internal/catalogue"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
)

func helpCommand() command {
	return command{
		name:  "help",
		short: "explain a command: help compare",
		long:  "Explain the program, one of its commands, or with \"help csv\" the columns of a CSV, with \"help file\" the keys\nof a scenario file.",
	}
}

// help explains the program or one of its commands.
func help(args []string, s stage) int {
	if len(args) == 0 {
		fmt.Fprint(s.out, overview())
		return statusFine
	}
	if args[0] == "csv" {
		fmt.Fprint(s.out, columnHelp())
		return statusFine
	}
	if args[0] == "file" {
		fmt.Fprint(s.out, keyHelp())
		return statusFine
	}
	cmd, ok := commands[args[0]]
	if !ok {
		s.complain("reelworth-cli: there is no command %q to explain", args[0])
		fmt.Fprint(s.err, "\n"+overview())
		return statusCall
	}
	fmt.Fprint(s.out, cmd.help())
	return statusFine
}

// keyHelp explains the keys of a scenario file.
func keyHelp() string {
	return "The keys of a scenario file, table by table; in brackets the unit, and what counts where a key is left out.\n" +
		"Decimals are in quotation marks: \"14.80\".\n\n" + catalogue.Plaintext() +
		"\nThe input of a range is one of\n\n  " + strings.Join(inputNames(), "\n  ") + "\n\n" +
		"or a rate as it stands in the file, such as rate:USD/EUR.\n"
}

// inputNames are the inputs that every scenario has.
func inputNames() (names []string) {
	for _, input := range (&scenario.Scenario{}).Inputs() {
		names = append(names, string(input))
	}
	return names
}

// columnHelp explains the columns of the CSV.
func columnHelp() string {
	var b strings.Builder
	b.WriteString("The columns of compare --format csv. Numbers have a decimal point and no grouping; what there is none\n" +
		"of is empty. A name that a spreadsheet would take for a formula has an apostrophe before it.\n\n")
	for _, c := range report.Columns() {
		fmt.Fprintf(&b, "  %-22s%s\n", c.Name, c.Says)
	}
	return b.String()
}

func versionCommand() command {
	return command{
		name:  "version",
		short: "print the program's version",
		long: "Print the program's version. Between releases it ends in the day and the revision that the program\n" +
			"was built from, and in \"changed\" where that had changes of its own.",
		fileless: true,
		do: func(_ call, s stage) int {
			fmt.Fprintln(s.out, "reelworth-cli "+version.String())
			return statusFine
		},
	}
}

func exampleCommand() command {
	return command{
		name:  "example",
		short: "print a scenario file to begin with",
		long: "Print a whole scenario file, which may be compared as it is: the program's built-in example. Put your\n" +
			"own figures in place of its invented ones:\n\n" +
			"  reelworth-cli example > mine.reelworth.toml\n" +
			"  reelworth-cli compare mine.reelworth.toml",
		fileless: true,
		do: func(_ call, s stage) int {
			fmt.Fprint(s.out, scenario.Example())
			return statusFine
		},
	}
}
