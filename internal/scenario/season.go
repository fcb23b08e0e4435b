package scenario

import (
	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// RollsAMonth is how many rolls each month has in which anything is shot; ok is false
// where they differ. It is 0 where nothing is shot.
func (s Shooting) RollsAMonth() (rolls Decimal, ok bool) {
	for _, r := range s.RollsPerMonth {
		switch {
		case r.IsZero():
		case rolls.IsZero():
			rolls = r
		case !r.Equal(rolls):
			return Decimal{}, false
		}
	}
	return rolls, true
}

// Evenly has so many rolls in each month in which anything was shot, in all twelve where
// nothing was.
func (s Shooting) Evenly(rolls Decimal) Shooting {
	idle := s.RollsAYear().IsZero()
	for i, r := range s.RollsPerMonth {
		if idle || !r.IsZero() {
			s.RollsPerMonth[i] = rolls
		}
	}
	return s
}

// Season is the months from the first in which anything is shot to the last, which may be
// in the next year: 9 to 2 of twelve from 0. ok is false where months between them are
// idle. Where nothing is shot, or something in each month, it is the whole year.
func (s Shooting) Season() (first, last int, ok bool) {
	starts := 0
	for i, r := range s.RollsPerMonth {
		before, after := s.RollsPerMonth[(i+11)%12], s.RollsPerMonth[(i+1)%12]
		if !r.IsZero() && before.IsZero() {
			first = i
			starts++
		}
		if !r.IsZero() && after.IsZero() {
			last = i
		}
	}
	if starts == 0 {
		return 0, 11, true
	}
	return first, last, starts == 1
}

// Only shoots from one month to another, which may be in the next year. Months of the
// season keep their rolls; one that had none gets what a month with rolls had on the
// average, to hundredths of a roll, or whole rolls where the others are whole.
func (s Shooting) Only(first, last int) Shooting {
	usual := s.usualMonth()
	inside := [12]bool{}
	for i := first; ; i = (i + 1) % 12 {
		inside[i] = true
		if i == last {
			break
		}
	}
	for i, r := range s.RollsPerMonth {
		switch {
		case !inside[i]:
			s.RollsPerMonth[i] = Decimal{}
		case r.IsZero():
			s.RollsPerMonth[i] = usual
		}
	}
	return s
}

// usualMonth is the mean of the months with rolls, 0 where there are none.
func (s Shooting) usualMonth() Decimal {
	months := 0
	for _, r := range s.RollsPerMonth {
		if !r.IsZero() {
			months++
		}
	}
	if months == 0 {
		return Decimal{}
	}
	places := spreadPlaces
	if s.isWhole() {
		places = 0
	}
	mean := exact.FromDecimal(s.RollsAYear()).Quo(exact.Int(int64(months)))
	if usual := Trim(mean.Decimal(places)); !usual.IsZero() {
		return usual
	}
	return decimal.New(1, -spreadPlaces) // of very few rolls, still some
}
