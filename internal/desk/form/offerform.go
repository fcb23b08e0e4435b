package form

import (
	"fmt"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// offerForm is the form of one way to buy: the seller's page first, in its order.
func (b forms) offerForm(s *scenario.Scenario, i int) *Form {
	o := func(s *scenario.Scenario) *scenario.Offer { return &s.Offers[i] }
	of := offerBindings{i, o}
	f := &Form{
		title: func(s *scenario.Scenario) string { return o(s).Name },
		subtitle: func(s *scenario.Scenario) string {
			if o(s).Seller == "" {
				return string(o(s).Kind)
			}
			return "from " + o(s).Seller
		},
	}
	f.groups = append(f.groups, b.pageGroup(s, of), b.homeGroup(s, of), b.filmGroup(s, of), b.afterGroup(s, of))
	further := b.furtherGroup(s, of)
	f.groups = append(f.groups, further)
	if s.Offers[i].Kind == scenario.KindReel && s.Offers[i].Reel != nil {
		f.groups = append(f.groups, b.cutGroup(of))
		if s.Offers[i].Reel.Remjet {
			f.caution = words.RemjetCaution
		}
	}
	f.groups = append(f.groups, b.offerActions(s, of.i))
	return f
}

// offerActions are what can be done with the whole offer.
func (b forms) offerActions(s *scenario.Scenario, i int) group {
	links := []*kit.Link{kit.NewLink("Duplicate", b.does((*session.Session).DuplicateOffer))}
	if s.Offers[i].Name != s.Baseline {
		links = append(links, kit.NewLink("Compare with it", b.does((*session.Session).CompareWith)))
	}
	if i > 0 {
		links = append(links, kit.NewLink("Up", b.does(func(s *session.Session) { s.MoveOffer(-1) })))
	}
	if i < len(s.Offers)-1 {
		links = append(links, kit.NewLink("Down", b.does(func(s *session.Session) { s.MoveOffer(1) })))
	}
	if len(s.Offers) > 1 {
		links = append(links, kit.NewLink("Remove", b.does((*session.Session).RemoveOffer)))
	}
	return group{actions: kit.Objects(kit.NewLine(14, kit.Objects(links...)...))}
}

// offerBindings makes bindings of the offer at a place.
type offerBindings struct {
	i  int
	at func(*scenario.Scenario) *scenario.Offer
}

func (of offerBindings) key(k string) string { return fmt.Sprintf("offer[%d].%s", of.i+1, k) }

func (of offerBindings) decimal(k, name string, at func(*scenario.Offer) *scenario.Decimal) Binding {
	return decimals(of.key(k), name, func(s *scenario.Scenario) *scenario.Decimal { return at(of.at(s)) })
}

func (of offerBindings) money(k, name string, at func(*scenario.Offer) *scenario.Decimal) Binding {
	return of.decimal(k, name, at).inCurrency(of.currency)
}

func (of offerBindings) maybe(k, name string, at func(*scenario.Offer) *scenario.Maybe) Binding {
	return maybes(of.key(k), name, func(s *scenario.Scenario) *scenario.Maybe { return at(of.at(s)) })
}

func (of offerBindings) count(k, name string, at func(*scenario.Offer) *int) Binding {
	return counts(of.key(k), name, func(s *scenario.Scenario) *int { return at(of.at(s)) })
}

func (of offerBindings) flag(k, name string, at func(*scenario.Offer) *bool) Binding {
	return flags(of.key(k), name, func(s *scenario.Scenario) *bool { return at(of.at(s)) })
}

func (of offerBindings) currency(s *scenario.Scenario) *string { return &of.at(s).Currency }

func (of offerBindings) code(s *scenario.Scenario) string { return of.at(s).Currency }

// unitWord is what one price buys.
func unitWord(o *scenario.Offer) string {
	if o.Kind == scenario.KindReel {
		return "reel"
	}
	if o.Boxed != nil && o.Boxed.RollsPerPack == 1 {
		return "roll"
	}
	return "pack"
}

// pageGroup is what stands on the seller's page.
func (b forms) pageGroup(s *scenario.Scenario, of offerBindings) group {
	unit := unitWord(of.at(s))
	price := of.money("price", "price", func(o *scenario.Offer) *scenario.Decimal { return &o.Price })
	units := of.count("units", "order", func(o *scenario.Offer) *int { return &o.Units })
	discount := of.decimal("discount_percent", "discount", func(o *scenario.Offer) *scenario.Decimal { return &o.DiscountPercent })
	shipping := of.money("shipping", "shipping", func(o *scenario.Offer) *scenario.Decimal { return &o.Shipping })
	extra := of.money("shipping_each_extra", "shipping of further units", func(o *scenario.Offer) *scenario.Decimal { return &o.ShippingEachExtra })
	currency := texts(of.key("currency"), "currency", of.currency)
	plural := map[string]string{"reel": "Reels", "roll": "Rolls", "pack": "Packs"}[unit]
	priced := numberField(b.e, "Price of a "+unit, "", price).withUnit(b.e, AllCurrencies, currency).offering(CurrenciesOf(s)).taking(takesCurrency(of.currency)).means("price")
	priced.prompt = func(s *scenario.Scenario) []kit.Answer {
		key := WantedQuote(s, of.code(s))
		if key == "" {
			return nil
		}
		return []kit.Answer{{Label: "add its rate", Do: func() { b.e.GoTo(key) }}}
	}
	return group{heading: "On the seller's page", fields: []*Field{
		priced,
		numberField(b.e, plural+" per order", "", units).means("units"),
		numberField(b.e, "Discount", "%", discount).means("discount_percent"),
		numberField(b.e, "Shipping", "", shipping).unitOf(of.code).means("shipping"),
		numberField(b.e, "each further "+unit, "", extra).unitOf(of.code).means("shipping_each_extra"),
	}}
}

// homeGroup is what it takes to bring the order home.
func (b forms) homeGroup(s *scenario.Scenario, of offerBindings) group {
	g := group{heading: "Bringing it home"}
	g.fields = append(g.fields, b.quoteFields(s, of.code(s))...)
	var options []kit.Option
	for _, c := range words.ImportChoices() {
		options = append(options, kit.Option{Value: string(c), Label: words.ImportChoice(c)})
	}
	choice := choices(of.key("import"), "import tax", func(s *scenario.Scenario) *scenario.Import { return &of.at(s).Import })
	fee := of.decimal("card_fee_percent", "card fee", func(o *scenario.Offer) *scenario.Decimal { return &o.CardFeePercent })
	g.fields = append(g.fields, choiceField(b.e, "Import tax", kit.WideWidth, options, choice).means("import"))
	if of.code(s) != s.Home {
		g.fields = append(g.fields, numberField(b.e, "Card fee", "%", fee).means("card_fee_percent"))
	}
	return g
}

// afterGroup is what comes after shooting.
func (b forms) afterGroup(s *scenario.Scenario, of offerBindings) group {
	options := []kit.Option{{Value: "", Label: "not counted"}}
	for _, d := range s.Developing {
		options = append(options, kit.Option{Value: d.Name, Label: d.Name})
	}
	dev := texts(of.key("developing"), "developing", func(s *scenario.Scenario) *string { return &of.at(s).Developing })
	return group{heading: "Afterwards", fields: []*Field{
		choiceField(b.e, "Developing", kit.WideWidth, options, dev).means("developing"),
	}}
}

// furtherGroup is what few people change.
func (b forms) furtherGroup(s *scenario.Scenario, of offerBindings) group {
	name := b.rename(of)
	seller := texts(of.key("seller"), "seller", func(s *scenario.Scenario) *string { return &of.at(s).Seller })
	onHand := of.decimal("on_hand", "film already there", func(o *scenario.Offer) *scenario.Decimal { return &o.OnHand })
	free := of.maybe("free_shipping_from", "free shipping", func(o *scenario.Offer) *scenario.Maybe { return &o.FreeShippingFrom }).inCurrency(of.currency)
	tax := of.decimal("sales_tax_percent", "sales tax", func(o *scenario.Offer) *scenario.Decimal { return &o.SalesTaxPercent })
	taxed := of.flag("sales_tax_on_shipping", "sales tax on shipping", func(o *scenario.Offer) *bool { return &o.SalesTaxOnShipping })
	rise := of.decimal("price_rise_percent", "yearly price rise", func(o *scenario.Offer) *scenario.Decimal { return &o.PriceRisePercent })
	return group{heading: "The offer", fold: "Name, sales tax, free shipping, stock …", fields: []*Field{
		wordField(b.e, "Name", name),
		wordField(b.e, "Seller", seller),
		choiceField(b.e, "Kind", kit.WideWidth, []kit.Option{{Value: "reel", Label: "a reel"}, {Value: "boxed", Label: "boxed rolls"}}, of.kind()),
		numberField(b.e, "Sales tax", "%", tax).means("sales_tax_percent"),
		yesNo(b.e, "on shipping too", taxed),
		numberField(b.e, "Free shipping from", "", free).unitOf(of.code).means("free_shipping_from"),
		numberField(b.e, "Already there", unitWord(of.at(s))+"s", onHand).means("on_hand"),
		numberField(b.e, "Price rises a year", "%", rise).means("price_rise_percent"),
	}}
}

// kind is what the offer sells; another kind begins with a table of its own.
func (of offerBindings) kind() Binding {
	kind := choices(of.key("kind"), "kind", func(s *scenario.Scenario) *scenario.Kind { return &of.at(s).Kind })
	return kind.then(func(s *scenario.Scenario) { scenario.SetKind(s, of.at(s), of.at(s).Kind) })
}

// rename keeps a baseline that points at the offer pointing at it.
func (b forms) rename(of offerBindings) Binding {
	name := texts(of.key("name"), "name", func(s *scenario.Scenario) *string { return &of.at(s).Name })
	set := name.set
	name.set = func(s *scenario.Scenario, text string, l money.Locale) error {
		was := of.at(s).Name
		if err := set(s, text, l); err != nil {
			return err
		}
		if s.Baseline == was {
			s.Baseline = text
		}
		return nil
	}
	return name
}
