package form

import (
	"errors"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// decimals is a binding for a number.
func decimals(key string, at func(*scenario.Scenario) *scenario.Decimal) Binding {
	return Binding{
		Key: key, Name: calledIn(key),
		Get: func(s *scenario.Scenario, l money.Locale) string { return l.Field(*at(s)) },
		set: func(s *scenario.Scenario, text string, l money.Locale) error {
			v, err := ReadNumber(text, l)
			if err == nil {
				*at(s) = v
			}
			return err
		},
	}
}

// maybes is a binding for a number that may be left empty.
func maybes(key string, at func(*scenario.Scenario) *scenario.Maybe) Binding {
	return Binding{
		Key: key, Name: calledIn(key),
		Get: func(s *scenario.Scenario, l money.Locale) string {
			if m := *at(s); m.Set {
				return l.Field(m.Decimal)
			}
			return ""
		},
		set: func(s *scenario.Scenario, text string, l money.Locale) error {
			if strings.TrimSpace(text) == "" {
				*at(s) = scenario.Maybe{}
				return nil
			}
			v, err := ReadNumber(text, l)
			if err == nil {
				*at(s) = scenario.Maybe{Decimal: v, Set: true}
			}
			return err
		},
	}
}

// counts is a binding for a whole number.
func counts(key string, at func(*scenario.Scenario) *int) Binding {
	return Binding{
		Key: key, Name: calledIn(key),
		Get: func(s *scenario.Scenario, _ money.Locale) string { return strconv.Itoa(*at(s)) },
		set: func(s *scenario.Scenario, text string, l money.Locale) error {
			v, err := ReadNumber(text, l)
			if err != nil {
				return err
			}
			if !v.IsInteger() || v.Abs().GreaterThan(decimal.New(1, 9)) {
				return errors.New(words.TypeWhole)
			}
			*at(s) = int(v.IntPart())
			return nil
		},
	}
}

// texts is a binding for words.
func texts(key string, at func(*scenario.Scenario) *string) Binding {
	return choices(key, at)
}

// choices is a binding for a value of a string type.
func choices[T ~string](key string, at func(*scenario.Scenario) *T) Binding {
	return Binding{
		Key: key, Name: calledIn(key),
		Get: func(s *scenario.Scenario, _ money.Locale) string { return string(*at(s)) },
		set: func(s *scenario.Scenario, text string, _ money.Locale) error {
			*at(s) = T(text)
			return nil
		},
	}
}

// The values of a yes-or-no binding.
const (
	yes = words.Yes
	no  = words.No
)

// flags is a binding for yes or no.
func flags(key string, at func(*scenario.Scenario) *bool) Binding {
	return Binding{
		Key: key, Name: calledIn(key),
		Get: func(s *scenario.Scenario, _ money.Locale) string {
			if *at(s) {
				return yes
			}
			return no
		},
		set: func(s *scenario.Scenario, text string, _ money.Locale) error {
			*at(s) = text == yes
			return nil
		},
	}
}

// months is a binding for a month of a year.
func months(key string, at func(*scenario.Scenario) *scenario.Month) Binding {
	return Binding{
		Key: key, Name: calledIn(key),
		Get: func(s *scenario.Scenario, _ money.Locale) string { return at(s).String() },
		set: func(s *scenario.Scenario, text string, _ money.Locale) error {
			m, err := scenario.ParseMonth(strings.TrimSpace(text))
			if err != nil {
				return errors.New(words.TypeMonth)
			}
			*at(s) = m
			return nil
		},
	}
}

// dates is a binding for a day that may be left empty.
func dates(key string, at func(*scenario.Scenario) *scenario.Date) Binding {
	return Binding{
		Key: key, Name: calledIn(key),
		Get: func(s *scenario.Scenario, _ money.Locale) string { return at(s).String() },
		set: func(s *scenario.Scenario, text string, _ money.Locale) error {
			if text = strings.TrimSpace(text); text == "" {
				*at(s) = scenario.Date{}
				return nil
			}
			d, err := scenario.ParseDate(text)
			if err != nil {
				return errors.New(words.TypeDay)
			}
			*at(s) = d
			return nil
		},
	}
}
