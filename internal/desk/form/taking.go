package form

import (
	"errors"
	"regexp"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// taken is what was written in a field beside its number, and what it says.
type taken struct {
	number string                   // what is left to be read as one
	also   func(*scenario.Scenario) // what more is set, nil for nothing
	said   string                   // what was understood, "" where that needs no word
	behind string                   // belongs behind the number if that must be asked about
}

// taker understands what some people write in a field; ok is false for all else.
type taker func(s *scenario.Scenario, text string, l money.Locale) (t taken, ok bool)

// take has what was written understood by the first who does.
func (f *Field) take(s *scenario.Scenario, text string, l money.Locale) taken {
	for _, understand := range f.takers {
		if t, ok := understand(s, text, l); ok {
			return t
		}
	}
	return taken{number: text}
}

// taking adds a taker.
func (f *Field) taking(t taker) *Field {
	f.takers = append(f.takers, t)
	return f
}

// takesCurrency takes the currency that an amount is written with as the one it is in.
func takesCurrency(at func(*scenario.Scenario) *string) taker {
	return func(s *scenario.Scenario, text string, l money.Locale) (taken, bool) {
		r, err := l.Read(text)
		code := r.Currency
		if unclear := (*money.Unclear)(nil); errors.As(err, &unclear) {
			code = unclear.Currency
		}
		if code == "" || code == *at(s) {
			return taken{}, false
		}
		return taken{
			number: text, said: words.TakenIn(code), behind: " " + code,
			also: func(s *scenario.Scenario) { *at(s) = code },
		}, true
	}
}

// lengthUnits are the units of length as people write them behind a number.
var lengthUnits = map[string]scenario.LengthUnit{
	"m": scenario.Metres, "metre": scenario.Metres, "metres": scenario.Metres, "meter": scenario.Metres, "meters": scenario.Metres,
	"ft": scenario.Feet, "ft.": scenario.Feet, "foot": scenario.Feet, "feet": scenario.Feet, "'": scenario.Feet, "′": scenario.Feet,
}

// withWord is a number with a word or sign behind it.
var withWord = regexp.MustCompile(`^(.*[0-9０-９][.,]?)\s*([^0-9０-９\s]+)$`)

// takesLengthUnit takes the unit that a length is written with.
func takesLengthUnit(at func(*scenario.Scenario) *scenario.LengthUnit) taker {
	return func(s *scenario.Scenario, text string, _ money.Locale) (taken, bool) {
		m := withWord.FindStringSubmatch(strings.TrimSpace(text))
		if m == nil {
			return taken{}, false
		}
		unit, ok := lengthUnits[strings.ToLower(m[2])]
		if !ok {
			return taken{}, false
		}
		t := taken{number: m[1], behind: " " + string(unit), also: func(s *scenario.Scenario) { *at(s) = unit }}
		if unit != *at(s) {
			t.said = words.TakenIn(string(unit))
		}
		return t, true
	}
}

// takesUnit lets the unit that stands beside the field be written behind the number.
func takesUnit(unit string) taker {
	plain := func(word string) string { return strings.TrimSuffix(strings.ToLower(word), "s") }
	return func(_ *scenario.Scenario, text string, _ money.Locale) (taken, bool) {
		m := withWord.FindStringSubmatch(strings.TrimSpace(text))
		if m == nil || plain(m[2]) != plain(unit) {
			return taken{}, false
		}
		return taken{number: m[1]}, true
	}
}

// aShare is "3 of 10", or "3/10".
var aShare = regexp.MustCompile(`^\s*([0-9]{1,9})\s*(?:(?i:out of|of)|/)\s*([0-9]{1,9})\s*$`)

// ReadShare reads "3 of 10" as 30 percent, to four places; ok is false for anything else.
func ReadShare(text string) (percent scenario.Decimal, ok bool) {
	m := aShare.FindStringSubmatch(text)
	if m == nil {
		return decimal.Zero, false
	}
	of := exact.FromDecimal(decimal.RequireFromString(m[2]))
	if of.IsZero() {
		return decimal.Zero, false
	}
	share := exact.FromDecimal(decimal.RequireFromString(m[1])).Quo(of)
	return scenario.Trim(share.Mul(exact.Int(100)).Decimal(4)), true
}

// takesShare takes a count of all for a percentage.
func takesShare(_ *scenario.Scenario, text string, l money.Locale) (taken, bool) {
	percent, ok := ReadShare(text)
	if !ok {
		return taken{}, false
	}
	number := l.Field(percent)
	return taken{number: number, said: number + " %"}, true
}
