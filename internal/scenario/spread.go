package scenario

import (
	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// mostRolls is the most that a month may have.
const mostRolls = 1000

// Uneven is the error of rolls that cannot be spread over a year: fewer than none, or
// more than Most in a month.
type Uneven struct {
	Negative bool
	Most     int
}

func (e *Uneven) Error() string { return "the rolls cannot be spread over the year" }

// spreadPlaces is how fine a month's share of a year is.
const spreadPlaces = 2

// RollsAYear is the sum of the twelve months.
func (s Shooting) RollsAYear() Decimal {
	var sum Decimal
	for _, r := range s.RollsPerMonth {
		sum = sum.Add(r)
	}
	return Trim(sum)
}

// AMonth is the mean of the twelve months.
func (s Shooting) AMonth() exact.Fraction {
	return exact.FromDecimal(s.RollsAYear()).Quo(exact.Int(12))
}

// RollsShot is what is shot in the scenario's months.
func (s *Scenario) RollsShot() (sum Decimal) {
	for m := range s.Months {
		sum = sum.Add(s.Shooting.RollsPerMonth[m%12])
	}
	return sum
}

// Spread is the same pattern of months with another yearly sum: each month in
// proportion, to hundredths of a roll, and the months' sum exactly rolls. Whole rolls a
// year over whole months give whole months. Twelve equal months where nothing was shot
// before. The error is *Uneven: rolls is negative, or a month would leave 0 to 1,000.
func (s Shooting) Spread(rolls Decimal) (Shooting, error) {
	if rolls.Sign() < 0 {
		return s, &Uneven{Negative: true}
	}
	sum := s.RollsAYear()
	share := s.RollsPerMonth
	if sum.IsZero() {
		for i := range share {
			share[i] = decimal.New(1, 0)
		}
		sum = decimal.New(12, 0)
	}
	// Each month ends where its share of the year so far ends, rounded: so the sum
	// is exact and no month is off by more than one hundredth, or one whole roll.
	places := max(spreadPlaces, -rolls.Exponent())
	if rolls.IsInteger() && s.isWhole() {
		places = 0
	}
	var soFar, given Decimal
	for i, r := range share {
		soFar = soFar.Add(r)
		until := rolls.Mul(soFar).DivRound(sum, places)
		month := until.Sub(given)
		given = until
		if month.GreaterThan(decimal.New(mostRolls, 0)) {
			return s, &Uneven{Most: mostRolls}
		}
		s.RollsPerMonth[i] = Trim(month)
	}
	return s, nil
}

// isWhole says whether every month has whole rolls.
func (s Shooting) isWhole() bool {
	for _, r := range s.RollsPerMonth {
		if !r.IsInteger() {
			return false
		}
	}
	return true
}

// Trim drops trailing zeros behind the point.
func Trim(d Decimal) Decimal {
	for d.Exponent() < 0 && d.Equal(d.Truncate(-d.Exponent()-1)) {
		d = d.Truncate(-d.Exponent() - 1)
	}
	return d
}
