package form

import (
	"strconv"
	"strings"
	"time"

	"reelworth/internal/catalogue"
	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// monthField is the rolls of each month in which anything is shot; empty where they
// differ.
func (b forms) monthField() *Field {
	f := b.number(Binding{
		Key: catalogue.RollsAMonth, Name: calledIn(catalogue.RollsAMonth),
		Get: func(s *scenario.Scenario, l money.Locale) string {
			if rolls, ok := s.Shooting.RollsAMonth(); ok && !rolls.IsZero() {
				return l.Field(rolls)
			}
			return ""
		},
		set: func(s *scenario.Scenario, text string, l money.Locale) error {
			if rolls, ok := s.Shooting.RollsAMonth(); strings.TrimSpace(text) == "" && (!ok || rolls.IsZero()) {
				return nil // it was empty
			}
			rolls, err := ReadNumber(text, l)
			if err == nil {
				s.Shooting = s.Shooting.Evenly(rolls)
			}
			return err
		},
	})
	f.wanted = words.WantedMonth
	return f
}

// seasonField is the month in which shooting begins or ends, by its key.
func (b forms) seasonField(end string) *Field {
	var months []kit.Option
	for m := time.January; m <= time.December; m++ {
		months = append(months, kit.Option{Value: strconv.Itoa(int(m)), Label: m.String()})
	}
	return b.choice(kit.WideWidth, months, Binding{
		Key: end, Name: calledIn(end),
		Get: func(s *scenario.Scenario, _ money.Locale) string {
			first, last, ok := s.Shooting.Season()
			switch {
			case !ok:
				return words.SeasonBroken
			case (last+1)%12 == first%12:
				first, last = placeOfMonth(s, time.January), placeOfMonth(s, time.December)
			}
			at := map[string]int{catalogue.SeasonFrom: first, catalogue.SeasonUntil: last}[end]
			return strconv.Itoa(int(s.FirstMonth.Add(at).Month))
		},
		set: func(s *scenario.Scenario, text string, _ money.Locale) error {
			m, err := strconv.Atoi(text)
			if err != nil {
				return err
			}
			first, last, ok := s.Shooting.Season()
			if !ok || (last+1)%12 == first%12 {
				first, last = placeOfMonth(s, time.January), placeOfMonth(s, time.December)
			}
			if end == catalogue.SeasonFrom {
				first = placeOfMonth(s, time.Month(m))
			} else {
				last = placeOfMonth(s, time.Month(m))
			}
			s.Shooting = s.Shooting.Only(first, last)
			return nil
		},
	})
}

// placeOfMonth is which of the scenario's twelve months a month of the calendar is.
func placeOfMonth(s *scenario.Scenario, m time.Month) int {
	return (int(m) - int(s.FirstMonth.Month) + 12) % 12
}
