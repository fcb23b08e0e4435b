package main

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"reelworth/internal/catalogue"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
	"reelworth/internal/words"
)

func helpCommand() command {
	return command{
		name:  "help",
		short: "explain a command: help compare",
		long: "Explain the program or one of its commands. There is also help on\n\n" +
			"  file      the keys of a scenario file\n" +
			"  model     how the figures come about, and what they are checked against\n" +
			"  glossary  the words of the trade\n" +
			"  csv       the columns of a CSV",
	}
}

// help explains the program or one of its commands.
func help(args []string, s stage) int {
	if len(args) == 0 {
		fmt.Fprint(s.out, overview())
		return statusFine
	}
	if text, ok := subjects[args[0]]; ok {
		fmt.Fprint(s.out, text())
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

// subjects are what help explains beside the commands.
var subjects = map[string]func() string{
	"csv":      columnHelp,
	"file":     keyHelp,
	"model":    func() string { return folded(words.Plain(append(words.ModelHelp(), words.SourcesHelp()))) },
	"glossary": func() string { return folded(words.WordsHelp()) },
}

// folded breaks the lines of a text for a terminal.
func folded(text string) string {
	const most = 100
	var b strings.Builder
	for _, paragraph := range strings.Split(text, "\n") {
		at := 0
		for i, word := range strings.Fields(paragraph) {
			switch n := utf8.RuneCountInString(word); {
			case i == 0:
				at = n
			case at+1+n > most:
				b.WriteByte('\n')
				at = n
			default:
				b.WriteByte(' ')
				at += 1 + n
			}
			b.WriteString(word)
		}
		b.WriteByte('\n')
	}
	return b.String()
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
