package report

import (
	"fmt"
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/words"
)

// changes are the sections on what changes the answer; none until that was asked for.
func (b builder) changes() (list []section) {
	if b.c.Outlook == nil {
		return nil
	}
	for _, s := range []section{b.flips(), b.volumes(), b.swings(), b.sizes(), b.cuts(), b.ceilings()} {
		if len(s.grids) > 0 {
			list = append(list, s)
		}
	}
	return list
}

// flips are the flips of the verdict's pair.
func (b builder) flips() section {
	p := b.c.Outlook.Pair
	if p == nil {
		return section{}
	}
	s := section{title: words.FlipsTitle(p)}
	g := grid{head: words.FlipsHeader()}
	for _, f := range p.Flips {
		if f.Below != nil || f.Above != nil {
			g.rows = append(g.rows, gridRow{cells: []string{
				words.InputName(b.c, p.Offer, p.Other, f.Input), words.InputValue(b.c, p.Offer, p.Other, f.Input, f.Today, b.l),
				words.CrossingValue(b.c, p, f, false, b.l), words.CrossingValue(b.c, p, f, true, b.l)}})
		}
	}
	if len(g.rows) > 0 {
		s.grids = append(s.grids, g)
	}
	return s
}

// volumes are who is cheaper at how many rolls a year: of the verdict's pair, then of each
// offer and the baseline that are another pair.
func (b builder) volumes() section {
	s := section{title: words.VolumesTitle}
	add := func(p *compare.PairOutlook) {
		if p == nil || len(p.Volumes) == 0 {
			return
		}
		g := grid{title: words.Pairing(p), head: words.VolumeHeader(), texts: map[int]bool{1: true}}
		for _, r := range p.Volumes {
			g.rows = append(g.rows, gridRow{cells: []string{words.VolumeSpan(r, b.l), words.VolumeCheaper(p, r)}})
		}
		s.grids = append(s.grids, g)
	}
	verdict := b.c.Outlook.Pair
	add(verdict)
	for i := range b.c.Outlook.Offers {
		if p := b.c.Outlook.Offers[i].Pair; p != nil && (verdict == nil || p.Offer != verdict.Offer || p.Other != verdict.Other) {
			add(p)
		}
	}
	return s
}

// swings are how far each input moves what an offer saves, the furthest first.
func (b builder) swings() section {
	s := section{title: words.SwingsTitle(b.c)}
	base := b.c.Scenario.Baseline
	for i := range b.c.Outlook.Offers {
		o := &b.c.Outlook.Offers[i]
		if o.Pair == nil || len(o.Pair.Swings) == 0 {
			continue
		}
		sorted := slices.Clone(o.Pair.Swings)
		slices.SortStableFunc(sorted, func(a, b compare.Swing) int { return b.Spread().Cmp(a.Spread()) })
		g := grid{title: b.name(i), head: words.SwingsHeader()}
		for _, w := range sorted {
			value := func(x exact.Fraction) string { return words.InputValue(b.c, o.Name, base, w.Input, x, b.l) }
			g.rows = append(g.rows, gridRow{cells: []string{
				words.InputName(b.c, o.Name, base, w.Input), value(w.Low), value(w.High), b.home(w.SavingLow), b.home(w.SavingHigh)}})
		}
		s.grids = append(s.grids, g)
	}
	return s
}

// sizes are the best size of order of each offer.
func (b builder) sizes() section {
	s := section{title: words.SizesTitle(b.c)}
	g := grid{head: words.SizesHeader(), texts: map[int]bool{4: true}}
	for i := range b.c.Outlook.Offers {
		for _, size := range b.c.Outlook.Offers[i].OrderSizes {
			if size.Best {
				g.rows = append(g.rows, gridRow{cells: []string{b.name(i), fmt.Sprint(size.Units), b.home(size.LandedPerUnit),
					b.home(size.TotalPerRoll), words.SizeReason(b.c, size, b.l)}})
			}
		}
	}
	if len(g.rows) > 0 {
		s.grids = append(s.grids, g)
	}
	return s
}

// cuts are what reels cut into cassettes of other exposures come to.
func (b builder) cuts() section {
	s := section{title: words.CutsTitle}
	for i := range b.c.Outlook.Offers {
		o := &b.c.Outlook.Offers[i]
		if len(o.CutSizes) == 0 {
			continue
		}
		k := words.CuttingOf(b.c, o.Name, o.CutSizes, b.l)
		g := grid{title: b.name(i), head: k.Header(), texts: map[int]bool{2: true, 5: true}}
		for n := range o.CutSizes {
			g.rows = append(g.rows, gridRow{cells: k.Row(&o.CutSizes[n])})
		}
		s.grids = append(s.grids, g)
	}
	return s
}

// ceilings are the highest prices at which reels still save.
func (b builder) ceilings() section {
	s := section{title: words.CeilingsTitle}
	g := grid{head: words.CeilingsHeader(), texts: map[int]bool{2: true}}
	for i := range b.c.Outlook.Offers {
		if o := &b.c.Outlook.Offers[i]; o.Ceiling != nil {
			g.rows = append(g.rows, gridRow{cells: []string{b.name(i), b.l.Amount(o.Ceiling.Price, o.Ceiling.Currency),
				words.Ceiling(b.c, o.Name, o.Ceiling, b.l)}})
		}
	}
	if len(g.rows) > 0 {
		s.grids = append(s.grids, g)
	}
	return s
}
