package desk

import (
	"fmt"
	"os"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/desk/session"
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

// BorderSets opens the question about sets of border rules, with some kept in a folder for
// the moment.
func (h *Harness) BorderSets() {
	folder, err := os.MkdirTemp("", "border-rules")
	if err != nil {
		panic(err)
	}
	h.shelf = session.NewBorderShelf(folder)
	s := h.session.Current()
	mine, abroad := scenario.BorderSetOf(&s, "By post, from overseas", h.today(), "the customs' leaflet on parcels, page 3"), s.Clone()
	abroad.Home, abroad.Border.TaxPercent = "AUD", scenario.Decimal{}
	dear := s.Clone()
	dear.Border.HandlingFee = dear.Border.HandlingFee.Add(dear.Border.HandlingFee)
	for _, set := range []scenario.BorderSet{
		scenario.BorderSetOf(&abroad, "The harbour abroad", scenario.Date{Year: 2024, Month: 3, Day: 2}, ""),
		scenario.BorderSetOf(&dear, "By courier, whose handling is dear and whose name for a set is long", h.today(), ""), mine,
	} {
		if _, err := h.shelf.Keep(set); err != nil {
			panic(err)
		}
	}
	h.asker.AskBorderSets()
	h.Settle()
	os.RemoveAll(folder)
}
