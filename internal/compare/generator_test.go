package compare_test

import (
	"fmt"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/scenario"
)

// anyScenario draws valid scenarios that look into every nook of the model. Most
// offers can be computed; a few lack a rate, a yield or their developing.
var anyScenario = rapid.Custom(drawScenario)

// currencies are those with two, no and three digits that offers are priced in, and
// roughly what one euro buys of each.
var currencies = []string{"EUR", "USD", "JPY", "KWD", "GBP"}

var perEuro = map[string]decimal.Decimal{"EUR": dec("1"), "USD": dec("1.1"), "JPY": dec("163"), "KWD": dec("0.34"), "GBP": dec("0.85")}

func drawScenario(t *rapid.T) scenario.Scenario {
	s := scenario.Scenario{
		Name:          "drawn",
		Home:          pick(t, "home", "EUR", "USD", "JPY", "KWD", "GBP", "EUR"),
		FirstMonth:    scenario.Month{Year: 2027, Month: 1},
		Months:        pick(t, "months", 12, 1, 2, 3, 6, 11, 13, 18, 24, 25, 37, 60),
		RollExposures: pick(t, "roll exposures", 36, 24, 1, 12, 40, 72, 100),
	}
	s.Shooting = drawShooting(t)
	s.Border = drawBorder(t, s.Home)
	s.Loading = drawLoading(t, s.Home)
	for i := range rapid.IntRange(0, 3).Draw(t, "processes") {
		s.Developing = append(s.Developing, drawDeveloping(t, s.Home, fmt.Sprintf("process %d", i+1)))
	}
	for i := range pick(t, "offers", 2, 3, 4, 5, 1) {
		s.Offers = append(s.Offers, drawOffer(t, s, fmt.Sprintf("offer %d", i+1)))
	}
	s.Rates = drawRates(t, s)
	s.Baseline = s.Offers[rapid.IntRange(0, len(s.Offers)-1).Draw(t, "baseline")].Name
	setLimitsNearAmounts(t, &s)
	keepItShort(&s)
	if once(t, "nearly balanced", 3) {
		balance(&s)
	}
	return s
}

// pick draws one of the choices; the first is what shrinking goes for.
func pick[T any](t *rapid.T, label string, choices ...T) T {
	return rapid.SampledFrom(choices).Draw(t, label)
}

// once in n draws it is true.
func once(t *rapid.T, label string, n int) bool {
	return rapid.IntRange(0, n-1).Draw(t, label) == n-1
}

func numbers(t *rapid.T, label string, choices ...string) decimal.Decimal {
	return dec(pick(t, label, choices...))
}

// amount draws money worth up to so many euros, often with a digit more than can be
// paid, for roundings to have something to decide.
func amount(t *rapid.T, label, currency string, euros int) decimal.Decimal {
	places := int32(minorDigits[currency])
	if once(t, label+" finer", 3) {
		places++
	}
	most := perEuro[currency].Mul(decimal.New(int64(euros), places)).IntPart()
	// Two draws, since one over a wide range is nearly always small.
	n := most*int64(rapid.IntRange(0, 99).Draw(t, label+", hundredths"))/100 + int64(rapid.IntRange(0, int(most/100)).Draw(t, label))
	return decimal.New(n, -places)
}

func drawShooting(t *rapid.T) scenario.Shooting {
	var shooting scenario.Shooting
	habit := pick(t, "habit", "few", "steady", "fits and starts", "late start", "fractions", "many", "none")
	steady := rapid.IntRange(1, 9).Draw(t, "rolls")
	for i := range shooting.RollsPerMonth {
		label := fmt.Sprintf("rolls in month %d", i+1)
		rolls := decimal.NewFromInt(int64(steady))
		switch habit {
		case "few":
			rolls = decimal.NewFromInt(int64(rapid.IntRange(0, 6).Draw(t, label)))
		case "fits and starts":
			rolls = numbers(t, label, "0", "5", "0", "0.25", "12", "0")
		case "late start":
			rolls = decimal.NewFromInt(int64(choose(i < 4, 0, steady)))
		case "fractions":
			rolls = decimal.New(int64(rapid.IntRange(0, 4000).Draw(t, label)), -3)
		case "many":
			rolls = numbers(t, label, "40", "0", "75.5", "220", "33")
		case "none":
			rolls = decimal.Decimal{}
		}
		shooting.RollsPerMonth[i] = rolls
	}
	return shooting
}

func drawBorder(t *rapid.T, home string) scenario.Border {
	return scenario.Border{
		DutyPercent:    numbers(t, "duty", "4.2", "0", "5", "12.5", "33.333"),
		DutyOnShipping: rapid.Bool().Draw(t, "duty on shipping"),
		TaxPercent:     numbers(t, "tax", "23", "0", "19", "7.7", "25"),
		TaxOnShipping:  rapid.Bool().Draw(t, "tax on shipping"),
		HandlingFee:    amount(t, "handling fee", home, 9),
	}
}

func drawLoading(t *rapid.T, home string) scenario.Loading {
	return scenario.Loading{
		CassettePrice:      amount(t, "cassette price", home, 4),
		CassetteLoads:      pick(t, "cassette loads", 5, 1, 2, 3, 20),
		CassettePack:       pick(t, "cassette pack", 1, 10, 3, 25),
		CassettesOwned:     pick(t, "cassettes owned", 0, 4, 1, 30, 300),
		ConsumablesPerRoll: amount(t, "consumables", home, 1),
		MinutesPerReel:     numbers(t, "minutes a reel", "12", "0", "7.5", "90"),
		MinutesPerRoll:     numbers(t, "minutes a roll loaded", "4", "0", "0.333"),
		HourlyValue:        choose(rapid.Bool().Draw(t, "time counts"), amount(t, "hourly value", home, 30), decimal.Decimal{}),
		Equipment:          drawEquipment(t, home, "loading"),
	}
}

func drawEquipment(t *rapid.T, home, of string) []scenario.Equipment {
	var list []scenario.Equipment
	for i := range rapid.IntRange(0, 3).Draw(t, of+" equipment") {
		e := scenario.Equipment{
			Name:       fmt.Sprintf("%s tool %d", of, i+1),
			Price:      amount(t, of+" tool price", home, 80),
			LastsRolls: pick(t, of+" tool lasts", 200, 1, 30, 1000),
			Owned:      once(t, of+" tool owned", 4),
		}
		if e.Resale = amount(t, of+" tool resale", home, 40); e.Resale.GreaterThan(e.Price) {
			e.Resale = e.Price
		}
		list = append(list, e)
	}
	return list
}

func drawDeveloping(t *rapid.T, home, name string) scenario.Developing {
	d := scenario.Developing{Name: name, Way: scenario.Lab, ChemistryRolls: 1}
	if once(t, name+" has equipment", 2) {
		d.Equipment = drawEquipment(t, home, name)
	}
	if rapid.Bool().Draw(t, name+" at a lab") {
		d.Price = amount(t, name+" price", home, 15)
		return d
	}
	d.Way = scenario.Home
	d.ChemistryPrice = amount(t, name+" chemistry price", home, 50)
	d.ChemistryRolls = pick(t, name+" chemistry rolls", 16, 1, 4, 10, 60)
	d.ChemistryKeepsMonth = age(t, name+" chemistry keeps", "3", "1", "0.5", "2.5", "12", "0.05")
	d.ExtraPerRoll = amount(t, name+" extra", home, 2)
	d.MinutesPerRoll = numbers(t, name+" minutes a roll", "35", "0", "12.25")
	return d
}

// age draws how many months something keeps: for good, or one of the choices.
func age(t *rapid.T, label string, choices ...string) scenario.Maybe {
	if rapid.Bool().Draw(t, label+" for good") {
		return scenario.Maybe{}
	}
	return scenario.Maybe{Decimal: numbers(t, label, choices...), Set: true}
}

func drawOffer(t *rapid.T, s scenario.Scenario, name string) scenario.Offer {
	currency := choose(rapid.Bool().Draw(t, name+" at home"), s.Home, pick(t, name+" currency", currencies...))
	o := scenario.Offer{
		Name:               name,
		Currency:           currency,
		Units:              pick(t, name+" units", 1, 2, 3, 5, 12, 100),
		OnHand:             numbers(t, name+" on hand", "0", "0.5", "1", "0.125", "2.7", "20"),
		DiscountPercent:    numbers(t, name+" discount", "0", "5", "0", "12.5", "33.333", "0", "100"),
		Shipping:           amount(t, name+" shipping", currency, 40),
		ShippingEachExtra:  amount(t, name+" shipping each extra", currency, 6),
		SalesTaxPercent:    numbers(t, name+" sales tax", "0", "8.25", "20"),
		SalesTaxOnShipping: rapid.Bool().Draw(t, name+" sales tax on shipping"),
		CardFeePercent:     numbers(t, name+" card fee", "0", "1.75", "3"),
		PriceRisePercent:   numbers(t, name+" price rise", "0", "6", "-6", "33.3", "-50", "-150", "-1200"),
		Import:             pick(t, name+" import", scenario.ImportNone, scenario.ImportBorder, scenario.ImportPrepaid, scenario.ImportUndecided),
		KeepsMonths:        age(t, name+" keeps", "18", "24", "6", "3", "1", "2.5", "0.5", "0.01", "120"),
	}
	o.Price = amount(t, name+" price", currency, 150).Add(decimal.New(1, -int32(minorDigits[currency])))
	if len(s.Developing) > 0 && !once(t, name+" without developing", 4) {
		o.Developing = s.Developing[rapid.IntRange(0, len(s.Developing)-1).Draw(t, name+" process")].Name
	}
	if once(t, name+" developing unknown", 40) {
		o.Developing = "a process nobody wrote down"
	}
	if rapid.Bool().Draw(t, name+" is boxed") {
		o.Kind = scenario.KindBoxed
		o.Boxed = &scenario.Boxed{
			RollsPerPack: pick(t, name+" rolls a pack", 1, 5, 3, 20),
			Exposures:    pick(t, name+" exposures", 36, 24, 12, 27, 72),
		}
		if once(t, name+" is old film", 4) {
			o.Boxed.SpoiledPercent = numbers(t, name+" spoiled", "10", "0.5", "33.3", "60", "99.9")
		}
		return o
	}
	o.Kind = scenario.KindReel
	o.Reel = drawReel(t, name)
	return o
}

func drawReel(t *rapid.T, name string) *scenario.Reel {
	length := pick(t, name+" length", [2]string{"100", "ft"}, [2]string{"17", "m"}, [2]string{"30.5", "m"}, [2]string{"5.9", "ft"},
		[2]string{"4.75", "ft"}, [2]string{"400", "ft"}, [2]string{"3.333", "m"})
	r := &scenario.Reel{
		Length:         dec(length[0]),
		LengthUnit:     scenario.LengthUnit(length[1]),
		Pitch:          pick(t, name+" pitch", scenario.LongPitch, scenario.ShortPitch),
		Exposures:      pick(t, name+" exposures", 36, 24, 12, 40, 1, 100),
		LeaderMM:       numbers(t, name+" leader", "160", "0", "155.5"),
		TrailerMM:      numbers(t, name+" trailer", "72", "0"),
		FoggedMM:       numbers(t, name+" fogged", "50", "0"),
		StartWasteMM:   numbers(t, name+" start waste", "100", "0", "33.3"),
		EndWasteMM:     numbers(t, name+" end waste", "200", "0"),
		TestExposures:  pick(t, name+" test exposures", 0, 3, 10),
		ShortRollFrom:  pick(t, name+" short roll from", 12, 0, 1, 20, 36),
		SpoiledPercent: numbers(t, name+" spoiled", "0", "3", "10", "33.3", "50", "99.9"),
		Remjet:         rapid.Bool().Draw(t, name+" remjet"),
	}
	if once(t, name+" yields nothing", 25) {
		r.Length, r.LengthUnit = numbers(t, name+" too short", "0.05", "0.4"), scenario.Metres
		r.ShortRollFrom = 20
	} else if _, enough := refYieldOf(scenario.Offer{Kind: scenario.KindReel, Reel: r}); !enough {
		r.Length, r.LengthUnit = dec("20"), scenario.Feet
	}
	return r
}

// drawRates quotes the offers' currencies: either way round, directly or through a
// third currency, and once in a while not at all. No pair is quoted twice.
func drawRates(t *rapid.T, s scenario.Scenario) []scenario.Rate {
	var rates []scenario.Rate
	quoted := map[[2]string]bool{}
	quote := func(a, b string) {
		if a == b || quoted[[2]string{a, b}] || quoted[[2]string{b, a}] {
			return
		}
		quoted[[2]string{a, b}] = true
		if rapid.Bool().Draw(t, a+"/"+b+" the other way") {
			a, b = b, a
		}
		market := perEuro[b].DivRound(perEuro[a], 6)
		moved := market.Mul(decimal.New(int64(rapid.IntRange(900, 1100).Draw(t, a+"/"+b)), -3)).Round(int32(pick(t, a+"/"+b+" places", 6, 4)))
		if moved.Sign() <= 0 {
			moved = market
		}
		rates = append(rates, scenario.Rate{One: a, Equals: moved, In: b})
	}
	for _, c := range currencies {
		if c == s.Home || once(t, c+" not quoted", 12) {
			continue
		}
		if third := pick(t, c+" through", currencies...); third != s.Home && third != c {
			quote(c, third)
			quote(third, s.Home)
			if other := pick(t, c+" also through", currencies...); other != s.Home && other != c && other != third {
				quote(other, s.Home)
				quote(other, c)
				quote(third, other)
			}
		} else {
			quote(c, s.Home)
		}
	}
	return rapid.Permutation(rates).Draw(t, "order of quotes")
}

// setLimitsNearAmounts puts the free limits at, just below and just above what the
// offers come to, where a comparison the wrong way round shows.
func setLimitsNearAmounts(t *rapid.T, s *scenario.Scenario) {
	for i := range s.Offers {
		o := &s.Offers[i]
		if once(t, o.Name+" ships free from somewhere", 2) {
			film := refLand(*s, *o, typed(o.Price)).Seller.Film
			o.FreeShippingFrom = scenario.Maybe{Decimal: near(t, o.Name+" free shipping", film, o.Currency), Set: true}
		}
	}
	s.Border.DutyFreeUpTo = limitNearSomeOffer(t, *s, "duty free limit")
	s.Border.TaxFreeUpTo = limitNearSomeOffer(t, *s, "tax free limit")
}

func limitNearSomeOffer(t *rapid.T, s scenario.Scenario, label string) decimal.Decimal {
	if rapid.Bool().Draw(t, label+" of nothing") {
		return decimal.Decimal{}
	}
	o := s.Offers[rapid.IntRange(0, len(s.Offers)-1).Draw(t, label+" near offer")]
	if _, ok := refRoute(s, o.Currency); !ok {
		return decimal.Decimal{}
	}
	return near(t, label, refLand(s, o, typed(o.Price)).Home.Film, s.Home)
}

// near is an amount at, or a little beside, another; never below 0.
func near(t *rapid.T, label string, at rat, currency string) decimal.Decimal {
	places := int32(minorDigits[currency])
	d := dec(at.toPlaces(int(places)).plain())
	switch pick(t, label, "at", "a step below", "a step above", "4 % above", "6 % above", "far below") {
	case "a step below":
		d = d.Sub(decimal.New(1, -places))
	case "a step above":
		d = d.Add(decimal.New(1, -places))
	case "4 % above":
		d = d.Mul(dec("1.04"))
	case "6 % above":
		d = d.Mul(dec("1.06"))
	case "far below":
		d = d.Mul(dec("0.5"))
	}
	if d.IsNegative() {
		return decimal.Decimal{}
	}
	return d
}

// keepItShort halves what is shot until no offer orders, loads and mixes more often
// than a slow loop bears.
func keepItShort(s *scenario.Scenario) {
	for _, o := range s.Offers {
		y, ok := refYieldOf(o)
		if !ok {
			continue
		}
		for most(s).times(whole(y.Cassettes)).over(y.Good).above(whole(4000)) {
			for m := range s.Shooting.RollsPerMonth {
				s.Shooting.RollsPerMonth[m] = s.Shooting.RollsPerMonth[m].Mul(dec("0.5")).Truncate(3)
			}
		}
	}
}

// most is what is shot in the months of the scenario, in exposures.
func most(s *scenario.Scenario) (exposures rat) {
	for m := range s.Months {
		exposures = exposures.plus(typed(s.Shooting.RollsPerMonth[m%12]).times(whole(s.RollExposures)))
	}
	return exposures
}

// balance sets the best boxed offer's price so that its year comes to about what the
// best reel's does.
func balance(s *scenario.Scenario) {
	v := reference(*s)
	reel, boxed := refFind(v, v.Verdict.Reel), refFind(v, v.Verdict.Boxed)
	if reel == nil || boxed == nil || !reel.Year.Cost.positive() || !boxed.Year.Cost.positive() {
		return
	}
	for i := range s.Offers {
		o := &s.Offers[i]
		if o.Name == boxed.Name {
			price := typed(o.Price).times(reel.Year.Cost).over(boxed.Year.Cost)
			o.Price = dec(price.toPlaces(minorDigits[o.Currency]).plain()).Add(decimal.New(1, -int32(minorDigits[o.Currency])))
		}
	}
}
