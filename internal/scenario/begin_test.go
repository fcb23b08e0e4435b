package scenario

import "testing"

// What is added must be a way to buy at once: no fault until the user makes one.
func TestBeginningsHaveNoFaults(t *testing.T) {
	s := Demo().Scenarios[0]
	for range 2 {
		s.Offers = append(s.Offers, NewOffer(&s, KindReel))
		s.Offers = append(s.Offers, NewOffer(&s, KindBoxed))
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

func TestANewScenarioHasNoFaults(t *testing.T) {
	s := New("A new one", "JPY", Month{2027, 3})
	for _, f := range Check(s) {
		t.Error(f)
	}
	f := File{Schema: Schema, Scenarios: []Scenario{s}}
	s.Name = FreeName(f, s.Name)
	if s.Name != "A new one 2" {
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
