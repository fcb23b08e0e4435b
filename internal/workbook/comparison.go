package workbook

import (
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/words"
)

// The columns of the comparison; the parts of a roll's cost come between the kind and
// the rest.
const (
	compareName = iota + 1
	compareKind
	compareParts
	compareTotal = compareParts + 8
	compareCash  = iota + 8
	compareCost
	compareSavedRoll
	compareSavedCash
	compareSaved
	compareProgramRoll
	compareProgramCost
	compareCheck
)

// addComparison fills the first sheet.
func (b *book) addComparison(s *sheet, offers []*offer) {
	s.widths = map[int]float64{compareName: 40, compareKind: 8, compareCheck: 26}
	for c := compareParts; c < compareCheck; c++ {
		s.widths[c] = 14
	}
	b.addFinding(s)
	head := s.next() + 1
	for i, part := range words.CostParts() {
		s.text(compareParts+i, head, part.Name(), style{kind: wrapped})
	}
	for i, text := range words.SheetComparisonHead() {
		s.text(compareTotal+i, head, text, style{kind: wrapped})
	}
	var base *offer
	for _, o := range offers {
		if o.scenario.Name == b.s.Baseline {
			base = o
		}
	}
	for i, o := range offers {
		b.compareRow(s, head+1+i, o, base)
	}
	for _, text := range words.LeftOut(b.c) {
		s.text(compareName, s.next(), text, style{kind: noted})
	}
	b.addCharts(s, offers, head)
}

// addFinding places what the program found, and whether that still stands.
func (b *book) addFinding(s *sheet) {
	h := words.Verdict(b.c, b.options.Locale)
	s.text(compareName, 1, b.s.Name, style{kind: titled})
	s.text(compareName, 2, words.SheetFinding, style{kind: headed})
	s.text(compareName, 3, h.Text, style{kind: labelled, bold: true})
	s.text(compareName, 4, h.Under, style{kind: labelled})
	s.textFormula(compareName, 5, fmt.Sprintf("IF(%s=0,%s,%s)", changesName, quoted(words.SheetKept), quoted(words.SheetNoLonger)),
		words.SheetKept, style{kind: noted})
	s.alarms = append(s.alarms, alarm{place(compareName, 5), words.SheetKept})
	s.text(compareName, 6, words.ComputedOn(b.options.On), style{kind: noted})
	if b.elsewhere != "" {
		s.text(compareName, 7, words.SheetStaysHome(b.home, b.elsewhere), style{kind: noted})
	}
}

// compareRow places an offer's figures, what it saves, and the check.
func (b *book) compareRow(s *sheet, row int, o, base *offer) {
	home := b.inHome()
	s.text(compareName, row, o.scenario.Name, style{kind: labelled})
	s.text(compareKind, row, string(o.scenario.Kind), style{kind: noted})
	for i, part := range words.CostParts() {
		s.formula(compareParts+i, row, o.perRoll[part], home)
	}
	total := s.formula(compareTotal, row, o.total, home.strong())
	s.formula(compareCash, row, o.year.cash, home)
	cost := s.formula(compareCost, row, o.year.cost, home.strong())
	if base != nil && base != o {
		s.formula(compareSavedRoll, row, base.total.minus(o.total), home)
		s.formula(compareSavedCash, row, base.year.cash.minus(o.year.cash), home)
		s.formula(compareSaved, row, base.year.cost.minus(o.year.cost), home)
	}
	roll := b.programs(s, compareProgramRoll, row, o.computed.PerRoll.Total)
	year := b.programs(s, compareProgramCost, row, o.computed.Year.Cost)
	same := func(a, b term) string { return "ABS(" + a.text + "-" + b.text + ")<0.000001" }
	s.textFormula(compareCheck, row, fmt.Sprintf("IF(AND(%s,%s),%s,%s)", same(total, roll), same(cost, year),
		quoted(words.SheetKept), quoted(words.SheetChanged)), words.SheetKept, style{kind: noted})
	s.alarms = append(s.alarms, alarm{place(compareCheck, row), words.SheetKept})
}

// programs places a figure of the program's, which stays as it is.
func (b *book) programs(s *sheet, column, row int, f exact.Fraction) term {
	st := b.inHome()
	s.put(column, row, cell{style: st, value: f})
	return term{s.reference(column, row), bindsWhole, f}
}
