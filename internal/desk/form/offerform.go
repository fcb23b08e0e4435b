package form

import (
	"slices"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// offerForm is the form of one way to buy: the seller's page first, in its order.
func (b forms) offerForm(s *scenario.Scenario, i int) *Form {
	o := func(s *scenario.Scenario) *scenario.Offer { return &s.Offers[i] }
	of := offerBindings{i, o, words.UnitName(o(s))}
	f := &Form{
		title: func(s *scenario.Scenario) string { return o(s).Name },
		subtitle: func(s *scenario.Scenario) string {
			if o(s).Seller == "" {
				return string(o(s).Kind)
			}
			return words.FromSeller(o(s).Seller)
		},
	}
	f.groups = append(f.groups, b.pageGroup(s, of), b.seenGroup(s, of), b.homeGroup(s, of), b.filmGroup(s, of), b.afterGroup(s, of))
	further := b.furtherGroup(of)
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
	links := []*kit.Link{kit.NewLink(words.LinkDuplicate, b.does((*session.Session).DuplicateOffer))}
	if s.Offers[i].Name != s.Baseline {
		links = append(links, kit.NewLink(words.LinkCompareWith, b.does((*session.Session).CompareWith)))
	}
	if i > 0 {
		links = append(links, kit.NewLink(words.LinkUp, b.does(func(s *session.Session) { s.MoveOffer(-1) })))
	}
	if i < len(s.Offers)-1 {
		links = append(links, kit.NewLink(words.LinkDown, b.does(func(s *session.Session) { s.MoveOffer(1) })))
	}
	if len(s.Offers) > 1 {
		links = append(links, kit.NewLink(words.LinkRemove, b.does((*session.Session).RemoveOffer)))
	}
	g := group{actions: kit.Objects(kit.NewLine(14, kit.Objects(links...)...))}
	if s.Offers[i].Reel != nil && s.Offers[i].Kind == scenario.KindReel {
		g.actions = append(kit.Objects(kit.NewLine(14, kit.NewLink(words.LinkPutInHand, b.acts.PutInHand), kit.NewLink(words.LinkPlanCut, b.acts.PlanCut))), g.actions...)
	}
	return g
}

// pageGroup is what stands on the seller's page.
func (b forms) pageGroup(s *scenario.Scenario, of offerBindings) group {
	units := of.count("units", func(o *scenario.Offer) *int { return &o.Units })
	discount := of.decimal("discount_percent", func(o *scenario.Offer) *scenario.Decimal { return &o.DiscountPercent })
	extra := of.decimal("shipping_each_extra", func(o *scenario.Offer) *scenario.Decimal { return &o.ShippingEachExtra })
	return group{heading: words.GroupPage, fields: []*Field{
		b.priceField(s, of),
		b.number(units),
		b.number(discount),
		b.shippingField(of),
		b.number(extra),
	}}
}

// homeGroup is what it takes to bring the order home.
func (b forms) homeGroup(s *scenario.Scenario, of offerBindings) group {
	g := group{heading: words.GroupHome}
	g.fields = append(g.fields, b.quoteFields(s, of.code(s))...)
	g.fields = append(g.fields, b.importField(of))
	if of.code(s) != s.Home {
		g.fields = append(g.fields, b.number(of.decimal("card_fee_percent", func(o *scenario.Offer) *scenario.Decimal { return &o.CardFeePercent })))
	}
	return g
}

// afterGroup is what comes after shooting.
func (b forms) afterGroup(s *scenario.Scenario, of offerBindings) group {
	ways := []kit.Option{{Value: "", Label: words.NotCounted}}
	for _, d := range s.Developing {
		ways = append(ways, kit.Option{Value: d.Name, Label: d.Name})
	}
	dev := texts(of.key("developing"), func(s *scenario.Scenario) *string { return &of.at(s).Developing })
	g := group{heading: words.GroupAfterwards, fields: []*Field{b.choice(kit.WideWidth, ways, dev)}}
	if now := of.at(s).Developing; slices.ContainsFunc(s.Offers, func(o scenario.Offer) bool { return o.Developing != now }) {
		g.actions = kit.Objects(kit.NewLink(words.LinkDevelopAll, b.does(func(s *session.Session) { s.DevelopAll(now) })))
	}
	return g
}

// furtherGroup is what few people change.
func (b forms) furtherGroup(of offerBindings) group {
	return group{heading: words.GroupOffer, fold: words.FoldOffer, fields: []*Field{
		b.text(b.rename(of)),
		b.text(texts(of.key("seller"), func(s *scenario.Scenario) *string { return &of.at(s).Seller })),
		b.choice(kit.WideWidth, Options(words.Kinds()), of.kind()),
		b.number(of.decimal("sales_tax_percent", func(o *scenario.Offer) *scenario.Decimal { return &o.SalesTaxPercent })),
		b.flag(of.flag("sales_tax_on_shipping", func(o *scenario.Offer) *bool { return &o.SalesTaxOnShipping })),
		b.number(of.maybe("free_shipping_from", func(o *scenario.Offer) *scenario.Maybe { return &o.FreeShippingFrom })),
		b.number(of.decimal("on_hand", func(o *scenario.Offer) *scenario.Decimal { return &o.OnHand })),
		b.number(of.decimal("price_rise_percent", func(o *scenario.Offer) *scenario.Decimal { return &o.PriceRisePercent })),
	}}
}

// kind is what the offer sells; another kind begins with a table of its own.
func (of offerBindings) kind() Binding {
	kind := choices(of.key("kind"), func(s *scenario.Scenario) *scenario.Kind { return &of.at(s).Kind })
	return kind.then(func(s *scenario.Scenario) { scenario.SetKind(s, of.at(s), of.at(s).Kind) })
}

// rename has what points at the offer follow.
func (b forms) rename(of offerBindings) Binding {
	name := texts(of.key("name"), func(s *scenario.Scenario) *string { return &of.at(s).Name })
	name.set = func(s *scenario.Scenario, text string, _ money.Locale) error {
		scenario.RenameOffer(s, of.i, text)
		return nil
	}
	return name
}
