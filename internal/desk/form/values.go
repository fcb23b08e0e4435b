package form

import (
	"errors"
	"strconv"
	"strings"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// A value is how something of T is shown in a form and taken from it.
type value[T any] struct {
	get func(*T, money.Locale) string
	set func(t *T, text string, l money.Locale) error
}

// decimalIn is the value of a number.
func decimalIn[T any](at func(*T) *scenario.Decimal) value[T] {
	return value[T]{
		get: func(t *T, l money.Locale) string { return l.Field(*at(t)) },
		set: func(t *T, text string, l money.Locale) error {
			v, err := ReadNumber(text, l)
			if err == nil {
				*at(t) = v
			}
			return err
		},
	}
}

// maybeIn is the value of a number that may be left empty.
func maybeIn[T any](at func(*T) *scenario.Maybe) value[T] {
	return value[T]{
		get: func(t *T, l money.Locale) string {
			if m := *at(t); m.Set {
				return l.Field(m.Decimal)
			}
			return ""
		},
		set: func(t *T, text string, l money.Locale) error {
			if strings.TrimSpace(text) == "" {
				*at(t) = scenario.Maybe{}
				return nil
			}
			v, err := ReadNumber(text, l)
			if err == nil {
				*at(t) = scenario.Maybe{Decimal: v, Set: true}
			}
			return err
		},
	}
}

// countIn is the value of a whole number.
func countIn[T any](at func(*T) *int) value[T] {
	return value[T]{
		get: func(t *T, _ money.Locale) string { return strconv.Itoa(*at(t)) },
		set: func(t *T, text string, l money.Locale) error {
			n, err := ReadCount(text, l)
			if err == nil {
				*at(t) = n
			}
			return err
		},
	}
}

// maybeCountIn is the value of a whole number that may be left empty.
func maybeCountIn[T any](at func(*T) *scenario.MaybeWhole) value[T] {
	return value[T]{
		get: func(t *T, _ money.Locale) string {
			if m := *at(t); m.Set {
				return strconv.Itoa(m.Int)
			}
			return ""
		},
		set: func(t *T, text string, l money.Locale) error {
			if strings.TrimSpace(text) == "" {
				*at(t) = scenario.MaybeWhole{}
				return nil
			}
			n, err := ReadCount(text, l)
			if err == nil {
				*at(t) = scenario.MaybeWhole{Int: n, Set: true}
			}
			return err
		},
	}
}

// choiceIn is a value of a string type.
func choiceIn[T any, S ~string](at func(*T) *S) value[T] {
	return value[T]{
		get: func(t *T, _ money.Locale) string { return string(*at(t)) },
		set: func(t *T, text string, _ money.Locale) error {
			*at(t) = S(text)
			return nil
		},
	}
}

// The values of a yes-or-no binding.
const (
	yes = words.Yes
	no  = words.No
)

// flagIn is the value of a yes or no.
func flagIn[T any](at func(*T) *bool) value[T] {
	return value[T]{
		get: func(t *T, _ money.Locale) string {
			if *at(t) {
				return yes
			}
			return no
		},
		set: func(t *T, text string, _ money.Locale) error {
			*at(t) = text == yes
			return nil
		},
	}
}

// dateIn is the value of a day that may be left empty.
func dateIn[T any](at func(*T) *scenario.Date) value[T] {
	return value[T]{
		get: func(t *T, _ money.Locale) string { return at(t).String() },
		set: func(t *T, text string, _ money.Locale) error {
			d, err := scenario.Date{}, error(nil)
			if strings.TrimSpace(text) != "" {
				d, err = ReadDay(text)
			}
			if err == nil {
				*at(t) = d
			}
			return err
		},
	}
}

// ReadDay reads a day.
func ReadDay(text string) (scenario.Date, error) {
	d, err := scenario.ParseDate(strings.TrimSpace(text))
	if err != nil {
		return d, errors.New(words.TypeDay)
	}
	return d, nil
}
