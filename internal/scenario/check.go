package scenario

import (
	"errors"
	"reflect"

	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
)

// Check reports what is wrong with a scenario that did not come from a file, by the
// same rules. Lines are 0.
func Check(s Scenario) []Fault {
	var faults tally
	r := &reporter{faults: &faults}
	for _, l := range []struct {
		key       string
		have, max int
	}{{"rate", len(s.Rates), MaxRates}, {"offer", len(s.Offers), MaxOffers}, {"range", len(s.Ranges), MaxRanges}} {
		if l.have > l.max {
			r.fault([]step{element(l.key, l.max)}, TooMany, Args{Have: l.have, Most: l.max})
		}
	}
	check(&s, r)
	return faults.inOrder()
}

// check holds a scenario to the rules of its fields, then to what only makes sense
// together. A key with a fault gets no second one.
func check(s *Scenario, r *reporter) {
	c := checker{reporter: r}
	c.table(tableOf(reflect.TypeFor[Scenario]()), reflect.ValueOf(s).Elem())
	checkRates(s, r)
	checkEquipment(s.Loading.Equipment, []step{key("loading")}, r)
	for i := range s.Developing {
		checkEquipment(s.Developing[i].Equipment, []step{element("developing", i)}, r)
	}
	checkProcessNames(s, r)
	checkOfferNames(s, r)
	routes := map[string]error{}
	for i := range s.Offers {
		checkOffer(s, i, r, routes)
	}
	checkBaseline(s, r)
	checkRanges(s, r)
}

func checkRates(s *Scenario, r *reporter) {
	type pair [2]string
	pairs := make(map[pair][]int, len(s.Rates))
	for i, q := range s.Rates {
		at := []step{element("rate", i)}
		if q.One == q.In {
			r.fault(sub(at, key("in")), SameCurrencies, Args{Got: q.In})
			continue
		}
		p := pair{min(q.One, q.In), max(q.One, q.In)}
		pairs[p] = append(pairs[p], i)
	}
	for i, q := range s.Rates {
		same := pairs[pair{min(q.One, q.In), max(q.One, q.In)}]
		if len(same) < 2 || q.One == "" || q.In == "" {
			continue
		}
		other := same[0]
		if other == i {
			other = same[1]
		}
		r.fault([]step{element("rate", i)}, TwoRates, Args{From: q.One, To: q.In, Other: other + 1})
	}
}

func checkEquipment(list []Equipment, in []step, r *reporter) {
	for i, e := range list {
		at := sub(in, element("equipment", i))
		if e.Resale.Cmp(e.Price) > 0 && !r.has(sub(at, key("price"))) {
			r.fault(sub(at, key("resale")), AbovePrice, Args{Number: e.Resale, Bound: e.Price})
		}
	}
}

// checkProcessNames faults every process of a name that another has, because an
// offer that names it could mean either.
func checkProcessNames(s *Scenario, r *reporter) {
	named := map[string][]int{}
	for i, d := range s.Developing {
		named[d.Name] = append(named[d.Name], i)
	}
	for i, d := range s.Developing {
		if same := named[d.Name]; len(same) > 1 && d.Name != "" {
			other := same[0]
			if other == i {
				other = same[1]
			}
			r.fault([]step{element("developing", i), key("name")}, NameTaken, Args{Got: d.Name, Table: "developing", Other: other + 1})
		}
	}
}

// checkOfferNames faults the later offers of a name; the first can stand.
func checkOfferNames(s *Scenario, r *reporter) {
	first := make(map[string]int, len(s.Offers))
	for i, o := range s.Offers {
		j, taken := first[o.Name]
		if taken && o.Name != "" {
			r.fault([]step{element("offer", i), key("name")}, NameTaken, Args{Got: o.Name, Table: "offer", Other: j + 1})
		} else {
			first[o.Name] = i
		}
	}
}

func checkScenarioNames(list []Scenario, reporters []reporter) {
	first := make(map[string]int, len(list))
	for i, s := range list {
		j, taken := first[s.Name]
		if taken && s.Name != "" {
			reporters[i].fault([]step{key("name")}, NameTaken, Args{Got: s.Name, Table: "scenario", Other: j + 1})
		} else {
			first[s.Name] = i
		}
	}
}

func checkBaseline(s *Scenario, r *reporter) {
	for _, o := range s.Offers {
		if o.Name == s.Baseline {
			return
		}
	}
	there := ""
	if len(s.Offers) > 0 {
		there = s.Offers[0].Name
	}
	r.fault([]step{key("baseline")}, NoBaseline, Args{Got: s.Baseline, Name: there})
}

// checkOffer checks what an offer refers to and what kind it is. routes remembers
// the currencies already looked up.
func checkOffer(s *Scenario, i int, r *reporter, routes map[string]error) {
	o, at := &s.Offers[i], element("offer", i)
	if o.Developing != "" && !hasProcess(s, o.Developing) {
		there := ""
		if len(s.Developing) > 0 {
			there = s.Developing[0].Name
		}
		r.fault([]step{at, key("developing")}, NoProcess, Args{Got: o.Developing, Name: there})
	}
	if have := len(o.Seen); have > MaxSeen {
		r.fault([]step{at, element("seen", MaxSeen)}, TooMany, Args{Have: have, Most: MaxSeen})
	}
	checkRoute(s, o, at, r, routes)
	checkKind(o, at, r)
	if o.Kind == KindReel && o.Reel != nil {
		checkYield(o.Reel, []step{at, key("reel")}, r)
	}
}

func hasProcess(s *Scenario, name string) bool {
	for i := range s.Developing {
		if s.Developing[i].Name == name {
			return true
		}
	}
	return false
}

// checkRoute looks for the way from the seller's currency to the home currency. A
// pair quoted twice is a fault of its quotes, not of the offer.
func checkRoute(s *Scenario, o *Offer, at step, r *reporter, routes map[string]error) {
	_, known := money.Digits(o.Currency)
	_, home := money.Digits(s.Home)
	if !known || !home {
		return
	}
	err, looked := routes[o.Currency]
	if !looked {
		_, err = s.Book().Route(o.Currency, s.Home)
		routes[o.Currency] = err
	}
	var none *money.NoRate
	if errors.As(err, &none) {
		r.fault([]step{at, key("currency")}, NoRate, Args{From: none.From, To: none.To})
	}
}

// Book is the scenario's quotes, in their order.
func (s *Scenario) Book() money.Book {
	b := money.Book{Home: s.Home, Quotes: make([]money.Quote, len(s.Rates))}
	for i, q := range s.Rates {
		b.Quotes[i] = money.Quote{One: q.One, Equals: q.Equals, In: q.In}
	}
	return b
}

// checkKind sees that an offer has the table of its kind and no other.
func checkKind(o *Offer, at step, r *reporter) {
	have := map[Kind]bool{KindReel: o.Reel != nil, KindBoxed: o.Boxed != nil}
	if o.Kind != KindReel && o.Kind != KindBoxed {
		return
	}
	for _, k := range []Kind{KindReel, KindBoxed} {
		switch p := []step{at, key(string(k))}; {
		case k == o.Kind && !have[k]:
			r.fault(p, MissingTable, Args{Example: "[scenario.offer." + string(k) + "]", Keys: kindTables[k].needed()})
		case k != o.Kind && have[k]:
			r.fault(p, WrongTable, Args{Got: string(o.Kind), Guess: string(k)})
		}
	}
}

// kindTables are the tables that the kinds of offers have.
var kindTables = map[Kind]*table{
	KindReel:  tableOf(reflect.TypeFor[Reel]()),
	KindBoxed: tableOf(reflect.TypeFor[Boxed]()),
}

// checkYield faults a reel that fills no cassette.
func checkYield(reel *Reel, at []step, r *reporter) {
	if r.isBad(at) {
		return
	}
	_, err := film.Divide(reel.Cutting())
	var short *film.TooShort
	if errors.As(err, &short) {
		r.fault(sub(at, key("length")), NoRoll, Args{Missing: short.Missing})
	}
}

// Cutting is the reel as it is divided into cassettes, in millimetres.
func (r *Reel) Cutting() film.Reel {
	unit, pitch := film.Metre, film.LongPitch
	if r.LengthUnit == Feet {
		unit = film.Foot
	}
	if r.Pitch == ShortPitch {
		pitch = film.ShortPitch
	}
	return film.Reel{
		Length:             exact.FromDecimal(r.Length).Mul(unit),
		Pitch:              pitch,
		Exposures:          r.Exposures,
		Leader:             exact.FromDecimal(r.LeaderMM),
		Trailer:            exact.FromDecimal(r.TrailerMM),
		Fogged:             exact.FromDecimal(r.FoggedMM),
		StartWaste:         exact.FromDecimal(r.StartWasteMM),
		EndWaste:           exact.FromDecimal(r.EndWasteMM),
		TestExposures:      r.TestExposures,
		ShortestRollWanted: r.ShortRollFrom,
	}
}
