package compare_test

import (
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

// refWarnings says of each computed offer which warnings about it are due.
func refWarnings(s scenario.Scenario, o scenario.Offer, r refOffer) map[compare.WarningCode]bool {
	d := refProcess(s, o)
	atLab, atHome := d != nil && d.Way == scenario.Lab, d != nil && d.Way == scenario.Home
	return map[compare.WarningCode]bool{
		compare.WarnRemjetToLab:      o.Kind == scenario.KindReel && o.Reel.Remjet && atLab,
		compare.WarnImportUndecided:  o.Currency != s.Home && o.Import == scenario.ImportUndecided,
		compare.WarnChemistryExpires: atHome && refEffectiveRolls(s, *d, r.Yield).below(whole(d.ChemistryRolls)),
		compare.WarnFilmExpires:      r.Year.ThrownAwayRolls.positive() || r.UsedShare.below(whole(1)),
		compare.WarnLeftLastsLong:    r.Year.Long,
		compare.WarnOnHandFree:       o.OnHand.IsPositive(),
		compare.WarnNearLimit:        refNearLimit(s, o, r.Order),
	}
}

// refNearLimit says whether some free limit that counts for the offer is missed, or
// kept, by at most 5 % of the limit. A limit beyond which nothing is to pay, or to
// save, counts for nobody.
func refNearLimit(s scenario.Scenario, o scenario.Offer, r refOrder) bool {
	within := func(film rat, limit scenario.Decimal) bool {
		l := typed(limit)
		return l.positive() && !film.below(l.times(whole(95)).over(whole(100))) && !film.above(l)
	}
	border := o.Import == scenario.ImportBorder
	duty := s.Border.DutyPercent.IsPositive() && (border || o.Import == scenario.ImportPrepaid) && within(r.Home.Film, s.Border.DutyFreeUpTo)
	tax := s.Border.TaxPercent.IsPositive() && border && within(r.Home.Film, s.Border.TaxFreeUpTo)
	free := o.FreeShippingFrom.Set && r.Seller.Shipping.positive() && within(r.Seller.Film, o.FreeShippingFrom.Decimal) && r.Seller.Film.below(typed(o.FreeShippingFrom.Decimal))
	return duty || tax || free
}

func TestEngineWarnsAsTheReference(t *testing.T) {
	scenarios, answers := drawn()
	seen := map[compare.WarningCode]int{}
	wrong := map[compare.WarningCode]int{}
	for seed, s := range scenarios {
		got := map[string]map[compare.WarningCode]bool{}
		c := compare.Compare(s, nil, scenario.Date{})
		for _, w := range c.Warnings {
			if got[w.Offer] == nil {
				got[w.Offer] = map[compare.WarningCode]bool{}
			}
			got[w.Offer][w.Code] = true
		}
		for i, r := range answers[seed].Offers {
			if r.Fault != "" {
				continue
			}
			for code, due := range refWarnings(s, s.Offers[i], r) {
				if due {
					seen[code]++
				}
				if due == got[r.Name][code] {
					continue
				}
				if wrong[code]++; wrong[code] == 1 {
					t.Errorf("seed %d, %s: %s due: %v, given: %v\n%s", seed, r.Name, code, due, !due, compact(s))
				}
			}
		}
	}
	for _, code := range []compare.WarningCode{compare.WarnRemjetToLab, compare.WarnImportUndecided, compare.WarnChemistryExpires,
		compare.WarnFilmExpires, compare.WarnLeftLastsLong, compare.WarnOnHandFree, compare.WarnNearLimit} {
		t.Logf("%5d due, %d wrong: %s", seen[code], wrong[code], code)
		if seen[code] < fewest {
			t.Errorf("%s is due only %d times", code, seen[code])
		}
	}
}
