package scenario

import (
	"strings"
	"testing"

	"github.com/shopspring/decimal"
)

// What is added lacks nothing but the price, which nobody but the user knows.
func TestBeginningsLackOnlyAPrice(t *testing.T) {
	s := Demo().Scenarios[0]
	for range 2 {
		s.Offers = append(s.Offers, priced(NewOffer(&s, KindReel)))
		s.Offers = append(s.Offers, priced(NewOffer(&s, KindBoxed)))
		s.Developing = append(s.Developing, NewProcess(&s, Lab))
		s.Developing = append(s.Developing, NewProcess(&s, Home))
		s.Loading.Equipment = append(s.Loading.Equipment, NewEquipment())
	}
	for _, f := range Check(s) {
		t.Error(f)
	}
	f := File{Schema: Schema, Scenarios: []Scenario{s}}
	if _, faults := Read(Write(f)); len(faults) > 0 {
		t.Error(faults)
	}
}

// priced is an offer with the price that a new one lacks.
func priced(o Offer) Offer {
	if o.Price.IsZero() {
		o.Price = decimal.New(1500, -2)
	}
	return o
}

func TestANewScenarioInventsNothing(t *testing.T) {
	s := New("A new one", "JPY", Month{2027, 3})
	if !s.Shooting.RollsAYear().IsZero() || len(s.Rates) > 0 || len(s.Developing) > 0 {
		t.Errorf("%+v", s)
	}
	var paths []string
	for _, f := range Check(s) {
		paths = append(paths, f.Path)
	}
	if strings.Join(paths, " ") != "offer[1].price offer[2].price" {
		t.Error("faults in", paths)
	}
	for i := range s.Offers {
		if o := s.Offers[i]; !o.Price.IsZero() || !o.Shipping.IsZero() || o.Import != ImportUndecided {
			t.Errorf("%+v", o)
		}
		s.Offers[i] = priced(s.Offers[i])
	}
	for _, f := range Check(s) {
		t.Error(f)
	}
	f := File{Schema: Schema, Scenarios: []Scenario{s}}
	s.Name = FreeName(f, s.Name)
	if s.Name != "A new one (2)" {
		t.Error(s.Name)
	}
	s.Offers = append(s.Offers, CopyOffer(&s, 1))
	SetKind(&s, &s.Offers[2], KindBoxed)
	SetKind(&s, &s.Offers[0], KindReel)
	f.Scenarios = append(f.Scenarios, s)
	if _, faults := Read(Write(f)); len(faults) > 0 {
		t.Error(faults)
	}
}
