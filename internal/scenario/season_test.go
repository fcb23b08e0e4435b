package scenario

import (
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

func monthly(rolls ...int64) (s Shooting) {
	for i, r := range rolls {
		s.RollsPerMonth[i] = decimal.New(r, 0)
	}
	return s
}

func TestSeasonOfAYear(t *testing.T) {
	for _, c := range []struct {
		s           Shooting
		first, last int
		ok          bool
	}{
		{monthly(), 0, 11, true},
		{monthly(2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2), 0, 11, true},
		{monthly(0, 0, 0, 1, 2, 3, 3, 2, 1), 3, 8, true},
		{monthly(1, 1, 1, 0, 0, 0, 0, 0, 0, 2, 2, 2), 9, 2, true},
		{monthly(0, 0, 0, 0, 5), 4, 4, true},
	} {
		if first, last, ok := c.s.Season(); first != c.first || last != c.last || ok != c.ok {
			t.Errorf("%v: %d to %d, %v", c.s.RollsPerMonth, first, last, ok)
		}
	}
	if _, _, ok := monthly(1, 0, 1).Season(); ok {
		t.Error("a gap is a season")
	}
}

// "Only April to September" is one step, and what was shot a month there stays.
func TestOnlyASeason(t *testing.T) {
	s := Shooting{}.Evenly(decimal.New(2, 0)).Only(3, 8)
	if rolls, ok := s.RollsAMonth(); !ok || rolls.String() != "2" || s.RollsAYear().String() != "12" {
		t.Error(s.RollsPerMonth)
	}
	if back := s.Only(0, 11); back.RollsAYear().String() != "24" {
		t.Error(back.RollsPerMonth)
	}
	if three := s.Evenly(decimal.New(3, 0)); three.RollsAYear().String() != "18" {
		t.Error(three.RollsPerMonth)
	}
}

func TestAnySeason(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s Shooting
		for i := range s.RollsPerMonth {
			s.RollsPerMonth[i] = decimal.New(rapid.Int64Range(0, 3).Draw(t, "month"), rapid.Int32Range(-2, 0).Draw(t, "places"))
		}
		first, last := rapid.IntRange(0, 11).Draw(t, "first"), rapid.IntRange(0, 11).Draw(t, "last")
		got := s.Only(first, last)
		if s.RollsAYear().IsZero() {
			if !got.RollsAYear().IsZero() {
				t.Fatal("rolls from nothing:", got)
			}
			return
		}
		f, l, ok := got.Season()
		all := (last+1)%12 == first
		if !ok || !all && (f != first || l != last) || all && (f != 0 || l != 11) {
			t.Fatalf("asked for %d to %d, got %d to %d, %v: %v", first, last, f, l, ok, got.RollsPerMonth)
		}
		for i, r := range got.RollsPerMonth {
			if !s.RollsPerMonth[i].IsZero() && !r.IsZero() && !r.Equal(s.RollsPerMonth[i]) {
				t.Fatalf("month %d had %s rolls, now %s", i, s.RollsPerMonth[i], r)
			}
		}
	})
}
