package form

import (
	"errors"
	"strings"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// bound is the binding of a value of a scenario.
func bound(key string, v value[scenario.Scenario]) Binding {
	return Binding{Key: key, Name: calledIn(key), Get: v.get, set: v.set}
}

// decimals is a binding for a number.
func decimals(key string, at func(*scenario.Scenario) *scenario.Decimal) Binding {
	return bound(key, decimalIn(at))
}

// maybes is a binding for a number that may be left empty.
func maybes(key string, at func(*scenario.Scenario) *scenario.Maybe) Binding {
	return bound(key, maybeIn(at))
}

// counts is a binding for a whole number.
func counts(key string, at func(*scenario.Scenario) *int) Binding { return bound(key, countIn(at)) }

// texts is a binding for words.
func texts(key string, at func(*scenario.Scenario) *string) Binding { return bound(key, choiceIn(at)) }

// choices is a binding for a value of a string type.
func choices[S ~string](key string, at func(*scenario.Scenario) *S) Binding {
	return bound(key, choiceIn(at))
}

// flags is a binding for yes or no.
func flags(key string, at func(*scenario.Scenario) *bool) Binding { return bound(key, flagIn(at)) }

// dates is a binding for a day that may be left empty.
func dates(key string, at func(*scenario.Scenario) *scenario.Date) Binding {
	return bound(key, dateIn(at))
}

// months is a binding for a month of a year.
func months(key string, at func(*scenario.Scenario) *scenario.Month) Binding {
	return bound(key, value[scenario.Scenario]{
		get: func(s *scenario.Scenario, _ money.Locale) string { return at(s).String() },
		set: func(s *scenario.Scenario, text string, _ money.Locale) error {
			m, err := scenario.ParseMonth(strings.TrimSpace(text))
			if err != nil {
				return errors.New(words.TypeMonth)
			}
			*at(s) = m
			return nil
		},
	})
}
