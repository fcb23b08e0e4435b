package words

import (
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

func TestDeal(t *testing.T) {
	s := scenario.Demo().Scenarios[0]
	c := compare.Compare(s, nil, scenario.Date{})
	offer := func(price string, currency string) compare.Deal {
		o := scenario.NewOffer(&s, scenario.KindBoxed)
		o.Currency, o.Price = currency, dec(price)
		return compare.Deal{Offer: o, Other: s.Baseline, SavingPercent: exact.Int(10)}
	}
	box := func(rolls int, price, bad, other string) compare.Deal {
		d := offer(price, "EUR")
		d.Offer.Boxed.RollsPerPack, d.Offer.Boxed.SpoiledPercent, d.Other = rolls, dec(bad), other
		return d
	}
	reel := offer("60", "EUR")
	scenario.SetKind(&s, &reel.Offer, scenario.KindReel)
	for _, d := range []struct {
		deal    compare.Deal
		verdict string
		has     []string
	}{
		// At the lab price of 9.90 either way: 7.40 + 9.90 against 14.80 + 9.90.
		{offer("7.40", "EUR"), "Worth it.", []string{"EUR 17.30 a roll", "It saves EUR 7.40 a roll, 30 %", "Up to EUR 12.33 it saves 10 %"}},
		{offer("14.80", "EUR"), "Not worth it.", []string{"costs the same as"}},
		{offer("20", "EUR"), "Not worth it.", []string{"EUR 5.20, 21 % more"}},
		{offer("14", "EUR"), "Cheaper, but not by as much as you want.", []string{"EUR 0.80"}},
		// Against the reel's 14.30, with its chemistry.
		{box(1, "7.40", "0", ""), "Worth it.", []string{"EUR 11.41 a roll, developing (At home, with a remjet bath) included, with 1 roll good", "saves EUR 2.89 a roll, 20 %, against the reel"}},
		// Ten rolls at 9.90 developed: 24.70 × 7 good are 172.90, and 172.90 − 99 = 73.90.
		{box(10, "73.90", "0", s.Baseline), "Worth it.", []string{"Up to 3 of its 10 rolls may be bad; with more, a roll costs more than from"}},
		{box(10, "73.91", "0", s.Baseline), "Worth it.", []string{"Up to 2 of its 10 rolls may be bad"}},
		{box(10, "148", "10", s.Baseline), "Not worth it.", []string{"None of it may be bad, or a roll costs more than from"}},
		{box(10, "148.01", "10", s.Baseline), "Not worth it.", []string{"With none of it bad, a roll would still cost more than from"}},
		{reel, "Worth it.", []string{" % of it may be bad; with more"}},
		{offer("14", "CAD"), "", []string{"Not computed: no rate"}},
	} {
		a := compare.Weigh(&c, d.deal)
		text := strings.NewReplacer("\u00a0", " ").Replace(strings.Join(Deal(&c, d.deal, a, "en"), " "))
		if got := DealVerdict(a.Verdict); got != d.verdict {
			t.Errorf("%s %s: %q, want %q", d.deal.Offer.Price, d.deal.Offer.Currency, got, d.verdict)
		}
		for _, want := range d.has {
			if !strings.Contains(text, want) {
				t.Errorf("%s %s: %q does not say %q", d.deal.Offer.Price, d.deal.Offer.Currency, text, want)
			}
		}
	}
}
