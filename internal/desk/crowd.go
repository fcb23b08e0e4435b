package desk

import (
	"fmt"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

// Crowd is the demo with eight ways to buy whose names have 60 characters.
func Crowd() scenario.File {
	f := scenario.Demo()
	s := f.Scenarios[0].Clone()
	for i := 0; len(s.Offers) < 8; i++ {
		o := s.Offers[i%3]
		o.Price = o.Price.Add(decimal.New(int64(i), 0))
		s.Offers = append(s.Offers, o)
	}
	for i := range s.Offers {
		was := s.Offers[i].Name
		name := fmt.Sprintf("%d %s %s", i+1, was, strings.Repeat("a name that goes on ", 4))[:60]
		if i < 3 && s.Baseline == was {
			s.Baseline = name
		}
		s.Offers[i].Name = name
	}
	f.Scenarios = []scenario.Scenario{s}
	return f
}
