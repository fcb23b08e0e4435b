package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"reelworth/internal/history"
	"reelworth/internal/money"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// market is what a call says about published rates.
type market struct {
	file    string // of rates; "" for none
	span    history.Span
	on      scenario.Date
	one, in string // currencies; "" where not said
}

// loadRates reads a file of published rates.
func loadRates(name string) (*rates.File, error) {
	f, err := rates.Load(name)
	var fault *rates.Fault
	switch {
	case err == nil:
		return f, nil
	case !errors.As(err, &fault):
		return nil, unreadable(name, err)
	case fault.Line > 0:
		return nil, fmt.Errorf("%s:%s", name, strings.TrimPrefix(words.RatesFault(fault), "line "))
	}
	return nil, fmt.Errorf("%s: %s", name, words.RatesFault(fault))
}

var ratesFlag = flagSpec{name: "rates", value: "RATEFILE", help: "published rates of the euro: .xml, .csv or .zip, as the bank has them",
	set: func(c *call, value string) error { c.market.file = value; return nil }}

// The flags that say a span of days.
var spanFlags = []flagSpec{
	{name: "years", value: "N", help: "so many years back from the newest day of the file", set: func(c *call, value string) error {
		n, err := strconv.Atoi(value)
		if err != nil || n < 1 || n > 1000 {
			return fmt.Errorf("--years takes a whole number from 1 on, not %q", value)
		}
		c.market.span.Years = n
		return nil
	}},
	{name: "from", value: "YYYY-MM-DD", help: "the first day (the oldest of the file)",
		set: setDate("from", func(c *call) *scenario.Date { return &c.market.span.From })},
	{name: "to", value: "YYYY-MM-DD", help: "the last day (the newest of the file)",
		set: setDate("to", func(c *call) *scenario.Date { return &c.market.span.To })},
}

// checkSpan says what does not go together.
func checkSpan(s history.Span) error {
	unset := scenario.Date{}
	switch {
	case s.Years > 0 && (s.From != unset || s.To != unset):
		return errors.New("say --years, or --from and --to, not both")
	case s.From != unset && s.To != unset && s.To.Compare(s.From) < 0:
		return fmt.Errorf("--to %s is before --from %s", s.To, s.From)
	}
	return nil
}

// setDate is a setter for a flag that takes a date.
func setDate(name string, at func(c *call) *scenario.Date) func(*call, string) error {
	return func(c *call, value string) error {
		d, err := scenario.ParseDate(value)
		if err != nil || d == (scenario.Date{}) {
			return fmt.Errorf("--%s takes a date like 2027-01-31, not %q", name, value)
		}
		*at(c) = d
		return nil
	}
}

// setPublished is a setter for a flag that takes a currency of a file of rates, which may
// be one that is no longer paid in.
func setPublished(name string, at func(c *call) *string) func(*call, string) error {
	return func(c *call, value string) error {
		if len(value) != 3 || strings.Trim(value, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") != "" {
			return fmt.Errorf("--%s takes a currency code like USD, not %q", name, value)
		}
		*at(c) = value
		return nil
	}
}

// setPaidIn is a setter for a flag that takes a currency people pay in.
func setPaidIn(name string, at func(c *call) *string) func(*call, string) error {
	return func(c *call, value string) error {
		if _, ok := money.Digits(value); !ok {
			return fmt.Errorf("--%s takes a currency code in use like USD, not %q", name, value)
		}
		*at(c) = value
		return nil
	}
}
