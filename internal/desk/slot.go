package desk

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// locale is how the user writes numbers.
type locale = money.Locale

// slot is one value of a scenario as a form shows and changes it.
type slot struct {
	key  string // as faults name it: "offer[3].price"
	name string // for the menu: "price of the reel"
	get  func(s *scenario.Scenario, l locale) string
	set  func(s *scenario.Scenario, text string, l locale) error
	// currency is where an amount's currency stands, for amounts pasted with one.
	currency func(s *scenario.Scenario) *string
	// fixed is an amount's currency where it cannot be chosen.
	fixed func(s *scenario.Scenario) string
}

// decimals is a slot for a number.
func decimals(key, name string, at func(*scenario.Scenario) *scenario.Decimal) slot {
	return slot{
		key: key, name: name,
		get: func(s *scenario.Scenario, l locale) string { return l.Field(*at(s)) },
		set: func(s *scenario.Scenario, text string, l locale) error {
			v, err := readNumber(text, l)
			if err == nil {
				*at(s) = v
			}
			return err
		},
	}
}

// maybes is a slot for a number that may be left empty.
func maybes(key, name string, at func(*scenario.Scenario) *scenario.Maybe) slot {
	return slot{
		key: key, name: name,
		get: func(s *scenario.Scenario, l locale) string {
			if m := *at(s); m.Set {
				return l.Field(m.Decimal)
			}
			return ""
		},
		set: func(s *scenario.Scenario, text string, l locale) error {
			if strings.TrimSpace(text) == "" {
				*at(s) = scenario.Maybe{}
				return nil
			}
			v, err := readNumber(text, l)
			if err == nil {
				*at(s) = scenario.Maybe{Decimal: v, Set: true}
			}
			return err
		},
	}
}

// counts is a slot for a whole number.
func counts(key, name string, at func(*scenario.Scenario) *int) slot {
	return slot{
		key: key, name: name,
		get: func(s *scenario.Scenario, _ locale) string { return strconv.Itoa(*at(s)) },
		set: func(s *scenario.Scenario, text string, l locale) error {
			v, err := readNumber(text, l)
			if err != nil {
				return err
			}
			if !v.IsInteger() || v.Abs().GreaterThan(decimal.New(1, 9)) {
				return errors.New("a whole number, such as 2")
			}
			*at(s) = int(v.IntPart())
			return nil
		},
	}
}

// texts is a slot for words.
func texts(key, name string, at func(*scenario.Scenario) *string) slot {
	return wordsSlot(key, name, at)
}

// wordsSlot is a slot for a value of a string type.
func wordsSlot[T ~string](key, name string, at func(*scenario.Scenario) *T) slot {
	return slot{
		key: key, name: name,
		get: func(s *scenario.Scenario, _ locale) string { return string(*at(s)) },
		set: func(s *scenario.Scenario, text string, _ locale) error {
			*at(s) = T(text)
			return nil
		},
	}
}

// The values of a yes-or-no slot.
const (
	yes = "yes"
	no  = "no"
)

// flags is a slot for yes or no.
func flags(key, name string, at func(*scenario.Scenario) *bool) slot {
	return slot{
		key: key, name: name,
		get: func(s *scenario.Scenario, _ locale) string {
			if *at(s) {
				return yes
			}
			return no
		},
		set: func(s *scenario.Scenario, text string, _ locale) error {
			*at(s) = text == yes
			return nil
		},
	}
}

// months is a slot for a month of a year.
func months(key, name string, at func(*scenario.Scenario) *scenario.Month) slot {
	return slot{
		key: key, name: name,
		get: func(s *scenario.Scenario, _ locale) string { return at(s).String() },
		set: func(s *scenario.Scenario, text string, _ locale) error {
			m, err := scenario.ParseMonth(strings.TrimSpace(text))
			if err != nil {
				return errors.New("a month as 2027-01")
			}
			*at(s) = m
			return nil
		},
	}
}

// dates is a slot for a day that may be left empty.
func dates(key, name string, at func(*scenario.Scenario) *scenario.Date) slot {
	return slot{
		key: key, name: name,
		get: func(s *scenario.Scenario, _ locale) string { return at(s).String() },
		set: func(s *scenario.Scenario, text string, _ locale) error {
			if text = strings.TrimSpace(text); text == "" {
				*at(s) = scenario.Date{}
				return nil
			}
			d, err := scenario.ParseDate(text)
			if err != nil {
				return errors.New("a day as 2026-11-20")
			}
			*at(s) = d
			return nil
		},
	}
}

// then does more after a value has been set, as part of the same change.
func (s slot) then(do func(*scenario.Scenario)) slot {
	set := s.set
	s.set = func(sc *scenario.Scenario, text string, l locale) error {
		if err := set(sc, text, l); err != nil {
			return err
		}
		do(sc)
		return nil
	}
	return s
}

// inCurrency says where the amount's currency stands.
func (s slot) inCurrency(at func(*scenario.Scenario) *string) slot {
	s.currency = at
	return s
}

// atHome says that the amount is in the home currency.
func (s slot) atHome() slot {
	s.fixed = home
	return s
}

// readNumber reads a number as the locale writes them, without a currency.
func readNumber(text string, l locale) (scenario.Decimal, error) {
	if strings.TrimSpace(text) == "" {
		return decimal.Zero, errors.New("a number is missing; 0 for none")
	}
	r, err := l.Read(text)
	if err != nil {
		return decimal.Zero, err
	}
	if r.Value.Exponent() > 0 {
		return decimal.Zero, fmt.Errorf("write %s in full", text)
	}
	return r.Value, nil
}
