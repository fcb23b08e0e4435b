package scenario

import (
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

func TestSpread(t *testing.T) {
	var s Shooting
	for i, r := range []int64{2, 2, 3, 4, 4, 5, 6, 6, 4, 3, 2, 2} {
		s.RollsPerMonth[i] = decimal.New(r, 0)
	}
	double, err := s.Spread(decimal.New(86, 0))
	if err != nil || double.RollsPerMonth[5].String() != "10" || double.RollsPerMonth[0].String() != "4" {
		t.Error(double, err)
	}
	same, _ := s.Spread(decimal.New(43, 0))
	for i := range s.RollsPerMonth {
		if s.RollsPerMonth[i].String() != same.RollsPerMonth[i].String() {
			t.Error("spreading today's sum changes month", i+1, same.RollsPerMonth[i])
		}
	}
	flat, _ := Shooting{}.Spread(decimal.New(24, 0))
	if flat.RollsPerMonth[11].String() != "2" {
		t.Error(flat)
	}
	for _, bad := range []int64{-1, 100000} {
		if _, err := s.Spread(decimal.New(bad, 0)); err == nil {
			t.Error(bad, "rolls a year were taken")
		}
	}
}

func TestSpreadKeepsTheSum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s Shooting
		for i := range s.RollsPerMonth {
			s.RollsPerMonth[i] = decimal.New(rapid.Int64Range(0, 300).Draw(t, "month"), -1)
		}
		rolls := decimal.New(rapid.Int64Range(0, 99999).Draw(t, "rolls"), -2)
		got, err := s.Spread(rolls)
		if err != nil {
			t.Fatal(err)
		}
		if !got.RollsAYear().Equal(rolls) {
			t.Fatalf("%s instead of %s", got.RollsAYear(), rolls)
		}
		for _, r := range got.RollsPerMonth {
			if r.Sign() < 0 {
				t.Fatalf("a month has %s rolls", r)
			}
		}
	})
}

func TestWholeRollsStayWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s Shooting
		for i := range s.RollsPerMonth {
			s.RollsPerMonth[i] = decimal.New(rapid.Int64Range(0, 30).Draw(t, "month"), 0)
		}
		rolls := decimal.New(rapid.Int64Range(0, 500).Draw(t, "rolls"), 0)
		got, err := s.Spread(rolls)
		if err != nil {
			t.Fatal(err)
		}
		year := s.RollsAYear()
		for i, r := range got.RollsPerMonth {
			share := decimal.New(0, 0)
			if !year.IsZero() {
				share = s.RollsPerMonth[i].Mul(rolls).DivRound(year, 9)
			}
			if !r.IsInteger() || !year.IsZero() && r.Sub(share).Abs().GreaterThan(decimal.New(1, 0)) {
				t.Fatalf("month %d has %s rolls, its share is %s", i+1, r, share)
			}
		}
	})
}

func TestAYearIsWrittenWithoutZerosBehindThePoint(t *testing.T) {
	var s Shooting
	s.RollsPerMonth[0], s.RollsPerMonth[1] = decimal.New(225, -2), decimal.New(275, -2)
	if got := s.RollsAYear(); got.Exponent() < 0 {
		t.Error(got.Exponent(), "places")
	}
}
