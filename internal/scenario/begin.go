package scenario

import (
	"fmt"

	"github.com/shopspring/decimal"
)

// NewOffer is a sensible beginning for a way to buy in s: priced in the home currency,
// a 100 ft reel or a single roll of 36, with a name of its own.
func NewOffer(s *Scenario, kind Kind) Offer {
	o := Defaults[Offer]()
	o.Kind, o.Currency, o.Import = kind, s.Home, ImportNone
	if kind == KindReel {
		r := Defaults[Reel]()
		r.Length, r.LengthUnit, r.Exposures = decimal.New(100, 0), Feet, s.RollExposures
		o.Reel, o.Name, o.Price = &r, freeName("New reel", offerNames(s)), decimal.New(10000, -2)
		return o
	}
	b := Defaults[Boxed]()
	b.Exposures = s.RollExposures
	o.Boxed, o.Name, o.Price = &b, freeName("New boxed film", offerNames(s)), decimal.New(1000, -2)
	return o
}

// NewProcess is a beginning for a way to develop.
func NewProcess(s *Scenario, way Way) Developing {
	d := Defaults[Developing]()
	d.Way = way
	name := "New lab"
	d.Price = decimal.New(1000, -2)
	if way == Home {
		name = "At home"
		d.Price = Decimal{}
		d.ChemistryPrice, d.ChemistryRolls = decimal.New(3000, -2), 10
	}
	var taken []string
	for _, p := range s.Developing {
		taken = append(taken, p.Name)
	}
	d.Name = freeName(name, taken)
	return d
}

// NewEquipment is a beginning for something bought once.
func NewEquipment() Equipment {
	e := Defaults[Equipment]()
	e.Name, e.Price, e.LastsRolls = "New equipment", decimal.New(2000, -2), 100
	return e
}

func offerNames(s *Scenario) []string {
	var n []string
	for _, o := range s.Offers {
		n = append(n, o.Name)
	}
	return n
}

// freeName is name, or the first of "name 2", "name 3" … that is not taken.
func freeName(name string, taken []string) string {
	used := map[string]bool{}
	for _, t := range taken {
		used[t] = true
	}
	free := name
	for n := 2; used[free]; n++ {
		free = fmt.Sprintf("%s %d", name, n)
	}
	return free
}
