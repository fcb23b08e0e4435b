package desk

import (
	"fmt"
	"slices"

	"github.com/shopspring/decimal"

	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// forms builds the forms; e is told what is typed.
type forms struct {
	e     editor
	today scenario.Date
	acts  actions
}

// actions are what the links in a form do.
type actions interface {
	duplicateOffer()
	compareWith()
	moveOffer(by int)
	removeOffer()
	removeQuote(i int)
	removeProcess(i int)
	addEquipment(list func(*scenario.Scenario) *[]scenario.Equipment)
	removeEquipment(list func(*scenario.Scenario) *[]scenario.Equipment, i int)
	addProcess(way scenario.Way)
}

// build makes the form of a selection.
func (b forms) build(s *scenario.Scenario, sel selection) *form {
	switch sel.topic {
	case topicShooting:
		return b.shootingForm(s)
	case topicLoading:
		return b.loadingForm(s)
	case topicDeveloping:
		return b.developingForm(s)
	case topicBorder:
		return b.borderForm()
	case topicRates:
		return b.ratesForm(s)
	}
	if sel.offer < len(s.Offers) {
		return b.offerForm(s, sel.offer)
	}
	return b.shootingForm(s)
}

func always(text string) func(*scenario.Scenario) string {
	return func(*scenario.Scenario) string { return text }
}

func home(s *scenario.Scenario) string { return s.Home }

// currencyField is a choice among all currencies, those of the scenario first in its
// list.
func (b forms) currencyField(s *scenario.Scenario, label string, to slot) *field {
	f := choiceField(b.e, label, kit.NumberWidth, allCurrencies, to)
	f.input.(*kit.Picker).First = currenciesOf(s)
	return f
}

// allCurrencies are the codes to choose from, in alphabetical order, so that stepping
// through them does not change the order.
var allCurrencies = func() (list []kit.Option) {
	for _, c := range money.Codes() {
		list = append(list, kit.Option{Value: c, Label: c})
	}
	return list
}()

// currenciesOf are the codes in use in the scenario.
func currenciesOf(s *scenario.Scenario) []string {
	list := []string{s.Home}
	for _, r := range s.Rates {
		list = append(list, r.One, r.In)
	}
	for _, o := range s.Offers {
		list = append(list, o.Currency)
	}
	slices.Sort(list[1:])
	return slices.Compact(list)
}

// quoteFields are the quote that connects a currency with home: the one there is, or an
// empty field for each direction of one that is missing. There are none where none is
// needed, or the way leads through a third currency.
func (b forms) quoteFields(s *scenario.Scenario, code string) []*field {
	if code == s.Home {
		return nil
	}
	if i := quoteAt(s, code); i >= 0 {
		return []*field{b.quote(s, i)}
	}
	if _, err := s.Book().Route(code, s.Home); err == nil {
		return nil
	}
	with, against := b.missingQuote(s, code, s.Home), b.missingQuote(s, s.Home, code)
	with.wanted, against.wanted = "type today's rate", "or the other way round"
	return []*field{with, against}
}

func quoteAt(s *scenario.Scenario, code string) int {
	return slices.IndexFunc(s.Rates, func(r scenario.Rate) bool {
		return r.One == code && r.In == s.Home || r.One == s.Home && r.In == code
	})
}

// missingQuote is an empty field that becomes a quote when a number is typed.
func (b forms) missingQuote(s *scenario.Scenario, one, in string) *field {
	place := len(s.Rates)
	key := fmt.Sprintf("rate[%d].equals", place+1)
	if one == s.Home {
		key += " of " + one // the other direction of the same quote
	}
	equals := slot{
		key: key, name: "rate of " + one + " in " + in,
		get: func(s *scenario.Scenario, l locale) string {
			if place < len(s.Rates) && s.Rates[place].One == one {
				return l.Field(s.Rates[place].Equals)
			}
			return ""
		},
		set: func(s *scenario.Scenario, text string, l locale) error {
			v, err := readNumber(text, l)
			if err == nil {
				quote := scenario.Rate{One: one, Equals: v, In: in, Date: b.today, Source: typedByHand}
				s.Rates = append(s.Rates[:place:place], quote)
			}
			return err
		},
	}
	f := numberField(b.e, "1 "+one+" is", in, equals)
	return f.means(fmt.Sprintf("rate[%d].equals", place+1))
}

// quote is the field of the quote at a place. A quote that is typed is of today.
func (b forms) quote(s *scenario.Scenario, i int) *field {
	at := func(s *scenario.Scenario) *scenario.Rate { return &s.Rates[i] }
	r := at(s)
	equals := decimals(fmt.Sprintf("rate[%d].equals", i+1), fmt.Sprintf("rate of %s in %s", r.One, r.In),
		func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Equals })
	equals = equals.then(func(s *scenario.Scenario) {
		if src := at(s).Source; src == "" || src == typedByHand {
			at(s).Date, at(s).Source = b.today, typedByHand
		}
	})
	f := numberField(b.e, "1 "+r.One+" is", "", equals)
	f.unitOf(func(s *scenario.Scenario) string { return at(s).In })
	return f.means(fmt.Sprintf("rate[%d].equals", i+1))
}

// typedByHand is the source of a quote that the user typed.
const typedByHand = "typed"

func (b forms) ratesForm(s *scenario.Scenario) *form {
	f := &form{
		title:    always("Exchange rates"),
		subtitle: always("what one unit of a currency is in another"),
	}
	for i := range s.Rates {
		at := func(s *scenario.Scenario) *scenario.Rate { return &s.Rates[i] }
		key := func(k string) string { return fmt.Sprintf("rate[%d].%s", i+1, k) }
		code := func(k string, to func(*scenario.Rate) *string) slot {
			return texts(key(k), "quote", func(s *scenario.Scenario) *string { return to(at(s)) })
		}
		one, in := s.Rates[i].One, s.Rates[i].In
		f.groups = append(f.groups, group{heading: one + " and " + in, fields: []*field{
			b.currencyField(s, "One", code("one", func(r *scenario.Rate) *string { return &r.One })),
			b.quote(s, i),
			b.currencyField(s, "in", code("in", func(r *scenario.Rate) *string { return &r.In })),
			wordField(b.e, "Date", dates(key("date"), "date of a quote", func(s *scenario.Scenario) *scenario.Date { return &at(s).Date })),
			wordField(b.e, "Source", code("source", func(r *scenario.Rate) *string { return &r.Source })),
		}, actions: kit.Objects(kit.NewLink("Remove", func() { b.acts.removeQuote(i) }))})
	}
	if len(s.Rates) == 0 {
		f.subtitle = always("choose another currency for an offer, and its rate is asked for")
	}
	return f
}

func (b forms) borderForm() *form {
	at := func(s *scenario.Scenario) *scenario.Border { return &s.Border }
	dec := func(k, name string, to func(*scenario.Border) *scenario.Decimal) slot {
		return decimals("border."+k, name, func(s *scenario.Scenario) *scenario.Decimal { return to(at(s)) })
	}
	flag := func(k, name string, to func(*scenario.Border) *bool) slot {
		return flags("border."+k, name, func(s *scenario.Scenario) *bool { return to(at(s)) })
	}
	return &form{
		title:    always("At the border"),
		subtitle: always("for what is imported"),
		caution:  words.BorderCaution,
		groups: []group{
			{heading: "Import tax", fields: []*field{
				numberField(b.e, "Import tax", "%", dec("tax_percent", "import tax", func(r *scenario.Border) *scenario.Decimal { return &r.TaxPercent })),
				homeField(b.e, "Free up to", dec("tax_free_up_to", "free limit of the import tax", func(r *scenario.Border) *scenario.Decimal { return &r.TaxFreeUpTo })),
				yesNo(b.e, "on shipping too", flag("tax_on_shipping", "import tax on shipping", func(r *scenario.Border) *bool { return &r.TaxOnShipping })),
			}},
			{heading: "Duty", fields: []*field{
				numberField(b.e, "Duty", "%", dec("duty_percent", "duty", func(r *scenario.Border) *scenario.Decimal { return &r.DutyPercent })),
				homeField(b.e, "Free up to", dec("duty_free_up_to", "free limit of the duty", func(r *scenario.Border) *scenario.Decimal { return &r.DutyFreeUpTo })),
				yesNo(b.e, "on shipping too", flag("duty_on_shipping", "duty on shipping", func(r *scenario.Border) *bool { return &r.DutyOnShipping })),
			}},
			{heading: "Whoever collects it takes", fields: []*field{
				homeField(b.e, "Handling fee", dec("handling_fee", "handling fee", func(r *scenario.Border) *scenario.Decimal { return &r.HandlingFee })),
			}},
		},
	}
}

func (b forms) loadingForm(s *scenario.Scenario) *form {
	at := func(s *scenario.Scenario) *scenario.Loading { return &s.Loading }
	dec := func(k, name string, to func(*scenario.Loading) *scenario.Decimal) slot {
		return decimals("loading."+k, name, func(s *scenario.Scenario) *scenario.Decimal { return to(at(s)) })
	}
	count := func(k, name string, to func(*scenario.Loading) *int) slot {
		return counts("loading."+k, name, func(s *scenario.Scenario) *int { return to(at(s)) })
	}
	f := &form{
		title:    always("Loading"),
		subtitle: always("for every reel"),
		groups: []group{
			{heading: "Cassettes", fields: []*field{
				homeField(b.e, "Price of one", dec("cassette_price", "price of a cassette", func(r *scenario.Loading) *scenario.Decimal { return &r.CassettePrice })),
				numberField(b.e, "sold by", "", count("cassette_pack", "pack of cassettes", func(r *scenario.Loading) *int { return &r.CassettePack })),
				numberField(b.e, "Loads of each", "", count("cassette_loads", "loads of a cassette", func(r *scenario.Loading) *int { return &r.CassetteLoads })),
				numberField(b.e, "Already there", "", count("cassettes_owned", "cassettes already there", func(r *scenario.Loading) *int { return &r.CassettesOwned })),
				homeField(b.e, "Tape, a roll", dec("consumables_per_roll", "tape", func(r *scenario.Loading) *scenario.Decimal { return &r.ConsumablesPerRoll })),
			}},
			{heading: "Time", fields: []*field{
				numberField(b.e, "For a reel", "min", dec("minutes_per_reel", "time for a reel", func(r *scenario.Loading) *scenario.Decimal { return &r.MinutesPerReel })),
				numberField(b.e, "For a roll", "min", dec("minutes_per_roll", "time for a roll", func(r *scenario.Loading) *scenario.Decimal { return &r.MinutesPerRoll })),
				homeField(b.e, "An hour is worth", dec("hourly_value", "worth of an hour", func(r *scenario.Loading) *scenario.Decimal { return &r.HourlyValue })),
			}},
		},
	}
	list := func(s *scenario.Scenario) *[]scenario.Equipment { return &s.Loading.Equipment }
	f.groups = append(f.groups, b.equipmentGroups(s, "loading", list)...)
	return f
}

// equipmentGroups are what is bought once, one group a piece.
func (b forms) equipmentGroups(s *scenario.Scenario, key string, list func(*scenario.Scenario) *[]scenario.Equipment) []group {
	var gs []group
	for i, e := range *list(s) {
		at := func(s *scenario.Scenario) *scenario.Equipment { return &(*list(s))[i] }
		k := func(name string) string { return fmt.Sprintf("%s.equipment[%d].%s", key, i+1, name) }
		gs = append(gs, group{heading: e.Name, fields: []*field{
			wordField(b.e, "Name", texts(k("name"), "name of equipment", func(s *scenario.Scenario) *string { return &at(s).Name })),
			homeField(b.e, "Price", decimals(k("price"), "price of "+e.Name, func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Price })),
			homeField(b.e, "Sells for later", decimals(k("resale"), "resale of "+e.Name, func(s *scenario.Scenario) *scenario.Decimal { return &at(s).Resale })),
			numberField(b.e, "Lasts", "rolls", counts(k("lasts_rolls"), "life of "+e.Name, func(s *scenario.Scenario) *int { return &at(s).LastsRolls })),
			yesNo(b.e, "Already there", flags(k("owned"), "owning "+e.Name, func(s *scenario.Scenario) *bool { return &at(s).Owned })),
		}, actions: kit.Objects(kit.NewLink("Remove", func() { b.acts.removeEquipment(list, i) }))})
	}
	return append(gs, group{actions: kit.Objects(kit.NewLink("+ equipment", func() { b.acts.addEquipment(list) }))})
}

func (b forms) developingForm(s *scenario.Scenario) *form {
	f := &form{title: always("Developing"), subtitle: always("an offer names the process it is for")}
	for i, d := range s.Developing {
		g := b.processGroup(i, d)
		g.actions = kit.Objects(kit.NewLink("Remove this process", func() { b.acts.removeProcess(i) }))
		f.groups = append(f.groups, g)
		if d.Way == scenario.Home {
			f.caution = words.ChemistryCaution
			list := func(s *scenario.Scenario) *[]scenario.Equipment { return &s.Developing[i].Equipment }
			f.groups = append(f.groups, b.equipmentGroups(s, fmt.Sprintf("developing[%d]", i+1), list)...)
		}
	}
	f.groups = append(f.groups, group{actions: kit.Objects(
		kit.NewLink("+ lab", func() { b.acts.addProcess(scenario.Lab) }),
		kit.NewLink("+ at home", func() { b.acts.addProcess(scenario.Home) }),
	)})
	return f
}

func (b forms) processGroup(i int, d scenario.Developing) group {
	at := func(s *scenario.Scenario) *scenario.Developing { return &s.Developing[i] }
	key := func(k string) string { return fmt.Sprintf("developing[%d].%s", i+1, k) }
	dec := func(k, name string, to func(*scenario.Developing) *scenario.Decimal) slot {
		return decimals(key(k), name, func(s *scenario.Scenario) *scenario.Decimal { return to(at(s)) })
	}
	name := texts(key("name"), "name of a process", func(s *scenario.Scenario) *string { return &at(s).Name })
	way := wordsSlot(key("way"), "way of developing", func(s *scenario.Scenario) *scenario.Way { return &at(s).Way })
	way = way.then(func(s *scenario.Scenario) { scenario.SetWay(at(s), at(s).Way) })
	g := group{heading: d.Name, fields: []*field{
		wordField(b.e, "Name", followName(i, name)),
		choiceField(b.e, "Where", kit.WideWidth, []kit.Option{{Value: "lab", Label: "at a lab"}, {Value: "home", Label: "at home"}}, way),
	}}
	if d.Way == scenario.Lab {
		g.fields = append(g.fields, homeField(b.e, "Price, a cassette", dec("price", "price of developing", func(d *scenario.Developing) *scenario.Decimal { return &d.Price })))
		return g
	}
	rolls := counts(key("chemistry_rolls"), "rolls of a set", func(s *scenario.Scenario) *int { return &at(s).ChemistryRolls })
	keeps := maybes(key("chemistry_keeps_months"), "how long chemistry keeps", func(s *scenario.Scenario) *scenario.Maybe { return &at(s).ChemistryKeepsMonth })
	g.fields = append(g.fields,
		homeField(b.e, "A set of chemistry", dec("chemistry_price", "price of chemistry", func(d *scenario.Developing) *scenario.Decimal { return &d.ChemistryPrice })),
		numberField(b.e, "develops", "rolls", rolls),
		numberField(b.e, "Keeps", "months", keeps),
		homeField(b.e, "Extra, a roll", dec("extra_per_roll", "extra of developing", func(d *scenario.Developing) *scenario.Decimal { return &d.ExtraPerRoll })),
		numberField(b.e, "Time, a roll", "min", dec("minutes_per_roll", "time of developing", func(d *scenario.Developing) *scenario.Decimal { return &d.MinutesPerRoll })),
	)
	return g
}

// followName keeps the offers that name a process naming it.
func followName(i int, name slot) slot {
	set := name.set
	name.set = func(s *scenario.Scenario, text string, l locale) error {
		was := s.Developing[i].Name
		if err := set(s, text, l); err != nil {
			return err
		}
		for j := range s.Offers {
			if s.Offers[j].Developing == was {
				s.Offers[j].Developing = text
			}
		}
		return nil
	}
	return name
}

func (b forms) shootingForm(s *scenario.Scenario) *form {
	year := slot{
		key: "shooting.rolls_a_year", name: "rolls a year",
		get: func(s *scenario.Scenario, l locale) string { return l.Field(s.Shooting.RollsAYear()) },
		set: func(s *scenario.Scenario, text string, l locale) error {
			v, err := readNumber(text, l)
			if err == nil {
				s.Shooting, err = s.Shooting.Spread(v)
			}
			return err
		},
	}
	f := &form{title: always("The year's shooting"), subtitle: always("each way to buy serves all of it")}
	exposures := counts("roll_exposures", "exposures of a roll", func(s *scenario.Scenario) *int { return &s.RollExposures })
	horizon := counts("months", "months to look at", func(s *scenario.Scenario) *int { return &s.Months })
	first := months("first_month", "first month", func(s *scenario.Scenario) *scenario.Month { return &s.FirstMonth })
	f.groups = append(f.groups,
		group{heading: "All year", fields: []*field{
			numberField(b.e, "Rolls a year", "", year).means("shooting.rolls_a_year"),
			numberField(b.e, "A roll is", "exposures", exposures),
			numberField(b.e, "Look ahead", "months", horizon),
			numberField(b.e, "First month", "", first),
		}},
	)
	g := group{heading: "Month by month"}
	for m := range s.Shooting.RollsPerMonth {
		key := fmt.Sprintf("shooting.rolls_per_month[%d]", m+1)
		rolls := decimals(key, "rolls of a month", func(s *scenario.Scenario) *decimal.Decimal { return &s.Shooting.RollsPerMonth[m] })
		f := numberField(b.e, s.FirstMonth.Add(m).Month.String(), "rolls", rolls)
		f.label = func(s *scenario.Scenario) string { return s.FirstMonth.Add(m).Month.String() }
		g.fields = append(g.fields, f)
	}
	f.groups = append(f.groups, g)
	about := group{heading: "The scenario", fields: []*field{
		wordField(b.e, "Name", texts("name", "name of the scenario", func(s *scenario.Scenario) *string { return &s.Name })),
		wordField(b.e, "Note", texts("note", "note", func(s *scenario.Scenario) *string { return &s.Note })),
		b.currencyField(s, "Home currency", texts("home", "home currency", func(s *scenario.Scenario) *string { return &s.Home })),
	}}
	var offers []kit.Option
	for _, o := range s.Offers {
		offers = append(offers, kit.Option{Value: o.Name, Label: o.Name})
	}
	about.fields = append(about.fields, choiceField(b.e, "Compared with", kit.FormWidth-kit.LabelWidth, offers,
		texts("baseline", "what the others are compared with", func(s *scenario.Scenario) *string { return &s.Baseline })))
	f.groups = append(f.groups, about)
	return f
}
