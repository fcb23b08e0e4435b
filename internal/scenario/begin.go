package scenario

import "github.com/shopspring/decimal"

// NewOffer is a sensible beginning for a way to buy in s: a 100 ft reel or a single roll of
// 36 in the home currency, with a name of its own, developed as all the others are. It has
// no price: that is the user's to type, and a fault until then.
func NewOffer(s *Scenario, kind Kind) Offer {
	o := Defaults[Offer]()
	o.Kind, o.Currency, o.Developing = kind, s.Home, sharedDeveloping(s)
	if kind == KindReel {
		r := Defaults[Reel]()
		r.Length, r.LengthUnit, r.Exposures = decimal.New(100, 0), Feet, s.RollExposures
		o.Reel, o.Name = &r, freeName("New reel", offerNames(s))
		return o
	}
	b := Defaults[Boxed]()
	b.Exposures = s.RollExposures
	o.Boxed, o.Name = &b, freeName("New boxed film", offerNames(s))
	return o
}

// sharedDeveloping is the process that every offer names, "" where they differ.
func sharedDeveloping(s *Scenario) string {
	for _, o := range s.Offers {
		if o.Developing != s.Offers[0].Developing {
			return ""
		}
	}
	if len(s.Offers) == 0 {
		return ""
	}
	return s.Offers[0].Developing
}

// SetKind makes an offer of s one of another kind: what the kind needs begins sensibly.
func SetKind(s *Scenario, o *Offer, kind Kind) {
	o.Kind = kind
	begin := NewOffer(s, kind)
	if kind == KindReel && o.Reel == nil {
		o.Reel = begin.Reel
	}
	if kind == KindBoxed && o.Boxed == nil {
		o.Boxed = begin.Boxed
	}
	if kind == KindReel {
		o.Boxed = nil
	} else {
		o.Reel = nil
	}
}

// New is a scenario to begin with: a reel and a boxed roll at home, without prices, and
// nothing shot yet. No figure in it is invented.
func New(name, home string, first Month) Scenario {
	s := Defaults[Scenario]()
	s.Name, s.Home, s.FirstMonth = name, home, first
	s.Border, s.Loading = Defaults[Border](), Defaults[Loading]()
	boxed := NewOffer(&s, KindBoxed)
	boxed.Name = "Boxed roll"
	s.Offers = append(s.Offers, boxed)
	reel := NewOffer(&s, KindReel)
	reel.Name = "100 ft reel"
	s.Offers = append(s.Offers, reel)
	s.Baseline = boxed.Name
	return s
}

// NewProcess is a beginning for a way to develop.
func NewProcess(s *Scenario, way Way) Developing {
	d := Defaults[Developing]()
	d.ChemistryRolls = 10
	SetWay(&d, way)
	name := "New lab"
	if way == Home {
		name = "At home"
	}
	var taken []string
	for _, p := range s.Developing {
		taken = append(taken, p.Name)
	}
	d.Name = freeName(name, taken)
	return d
}

// SetWay makes a process one of another way: the price it needs begins sensibly, and
// what it had stays.
func SetWay(d *Developing, way Way) {
	d.Way = way
	if way == Lab && d.Price == (Decimal{}) {
		d.Price = decimal.New(1000, -2)
	}
	if way == Home && d.ChemistryPrice == (Decimal{}) {
		d.ChemistryPrice = decimal.New(3000, -2)
	}
}

// NewEquipment is a beginning for something bought once.
func NewEquipment() Equipment {
	e := Defaults[Equipment]()
	e.Name, e.Price, e.LastsRolls = "New equipment", decimal.New(2000, -2), 100
	return e
}
