package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// call is a command's arguments, taken apart.
type call struct {
	command  string
	file     string
	scenario string // "" for none named
	named    bool   // a scenario was named
	format   string
	figure   string
	offer    string
	input    string
	out      string
	force    bool // replace a file that is protected
	scale    string
	theme    string
	paper    string
	locale   money.Locale
	today    scenario.Date
	ceiling  scenario.Decimal // percent
	files    []string         // all that are named; file is the first
	market   market
	loader   atLoader
}

// errHelp is asked for by --help.
var errHelp = errors.New("help")

// parse takes arguments apart; flags may stand before and after the file, as "--name
// value" or "--name=value", with one dash or two. After "--" nothing is a flag.
func (cmd command) parse(args []string, today scenario.Date) (call, error) {
	c := call{command: cmd.name, today: today, locale: money.English}
	for _, f := range cmd.flags {
		if f.first != "" {
			if err := f.set(&c, f.first); err != nil {
				return c, err
			}
		}
	}
	var files []string
	given := map[string]bool{}
	for i := 0; i < len(args); i++ {
		arg := args[i]
		if arg == "--" {
			files = append(files, args[i+1:]...)
			break
		}
		if arg == "-" || !strings.HasPrefix(arg, "-") {
			files = append(files, arg)
			continue
		}
		name, value, joined := strings.Cut(strings.TrimPrefix(strings.TrimPrefix(arg, "-"), "-"), "=")
		if name == "help" || name == "h" {
			return c, errHelp
		}
		f := cmd.flag(name)
		switch {
		case f == nil:
			return c, fmt.Errorf("there is no --%s here", name)
		case given[name] && !f.many:
			return c, fmt.Errorf("--%s is given twice", name)
		case f.bare && joined:
			return c, fmt.Errorf("--%s takes nothing after it", name)
		case f.bare:
		case !joined && i+1 == len(args):
			return c, fmt.Errorf("--%s needs %s after it", name, f.value)
		case !joined:
			i++
			value = args[i]
		}
		given[name] = true
		if err := f.set(&c, value); err != nil {
			return c, err
		}
	}
	for _, f := range cmd.flags {
		if f.required && !given[f.name] {
			return c, fmt.Errorf("--%s is missing", f.name)
		}
	}
	switch {
	case cmd.fileless && len(files) > 0:
		return c, fmt.Errorf("%q is too much: it takes no file", files[0])
	case cmd.fileless:
		return c, nil
	case len(files) == 0 && cmd.operand != "":
		return c, fmt.Errorf("the %s is missing", strings.ToLower(cmd.operand))
	case len(files) == 0 && cmd.ofRates:
		return c, errors.New("no file of rates is named")
	case len(files) == 0:
		return c, errors.New(`no scenario file is named; "-" reads standard input`)
	case len(files) > 1 && cmd.operand != "":
		return c, fmt.Errorf("one %s at a time: %q and %q are too many", strings.ToLower(cmd.operand), files[0], files[1])
	case len(files) > 1 && !cmd.several:
		return c, fmt.Errorf("one file at a time: %q and %q are too many", files[0], files[1])
	}
	c.file, c.files = files[0], files
	return c, nil
}

func (cmd command) flag(name string) *flagSpec {
	for i := range cmd.flags {
		if cmd.flags[i].name == name {
			return &cmd.flags[i]
		}
	}
	return nil
}

// flagSpec is one flag a command takes.
type flagSpec struct {
	name     string
	value    string // what to write after it
	help     string
	first    string // the value where none is given; "" for none
	required bool
	many     bool // it may be repeated
	bare     bool // there is nothing to write after it
	set      func(c *call, value string) error
}

// oneOf is a setter for a flag that takes one of some words.
func oneOf(name string, words []string, at func(c *call) *string) func(*call, string) error {
	return func(c *call, value string) error {
		if !slices.Contains(words, value) {
			return fmt.Errorf("--%s takes %s, not %q", name, listed(words, "or"), value)
		}
		*at(c) = value
		return nil
	}
}

func setScenario(c *call, value string) error {
	c.scenario, c.named = value, true
	return nil
}

// outEnding is a setter for a file to write, by its ending.
func outEnding(endings ...string) func(*call, string) error {
	return func(c *call, value string) error {
		if !slices.Contains(endings, strings.ToLower(filepath.Ext(value))) {
			return fmt.Errorf("--out takes a file ending in %s, not %q", listed(endings, "or"), value)
		}
		c.out = value
		return nil
	}
}

func setToday(c *call, value string) error {
	d, err := scenario.ParseDate(value)
	if err != nil {
		return fmt.Errorf("--today takes a date like 2027-01-31, not %q", value)
	}
	c.today = d
	return nil
}

// mostDigits is how many digits a number of the call may have; more say nothing.
const mostDigits = 24

func setCeiling(c *call, value string) error {
	plain := len(value) <= mostDigits && strings.Trim(value, "0123456789.") == ""
	d, err := decimal.NewFromString(value)
	if err != nil || !plain || d.GreaterThan(decimal.New(100, 0)) {
		return fmt.Errorf("--ceiling takes a percent from 0 to 100 like 10 or 12.5, not %q", value)
	}
	c.ceiling = d
	return nil
}

func setLocale(c *call, value string) error {
	if !slices.Contains(money.Locales(), money.Locale(value)) {
		var known []string
		for _, l := range money.Locales() {
			known = append(known, string(l))
		}
		return fmt.Errorf("--locale takes %s, not %q", listed(known, "or"), value)
	}
	c.locale = money.Locale(value)
	return nil
}

// listed is words as "a, b or c".
func listed(words []string, last string) string {
	n := len(words)
	if n < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:n-1], ", ") + " " + last + " " + words[n-1]
}
