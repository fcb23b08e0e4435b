package compare_test

import (
	"fmt"
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

// A nook is a place in the model that a random scenario may or may not reach. The
// agreement of engine and reference means something only for nooks that are reached.

// fewest is in how many of the scenarios drawn every nook has to occur.
const fewest = 5

func TestRandomScenariosReachEveryNook(t *testing.T) {
	scenarios, answers := drawn()
	reached := map[string]int{}
	for i, s := range scenarios {
		here := nooks{}
		here.ofScenario(s)
		for k, o := range answers[i].Offers {
			here.ofOffer(s, s.Offers[k], o)
		}
		here.ofVerdict(s, answers[i])
		for name, yes := range here {
			if reached[name] += 0; yes {
				reached[name]++
			}
		}
	}
	if len(reached) < 100 {
		t.Errorf("only %d nooks are looked for", len(reached))
	}
	for name, count := range reached {
		if count < fewest {
			t.Errorf("%d of %d scenarios reach %q", count, len(scenarios), name)
		}
		t.Logf("%5d  %s", count, name)
	}
}

// nooks says of each nook looked for whether the scenario reaches it.
type nooks map[string]bool

func (n nooks) see(name string, yes bool) { n[name] = n[name] || yes }

func (n nooks) ofScenario(s scenario.Scenario) {
	for digits := range 4 {
		if digits != 1 {
			n.see(fmt.Sprintf("home with %d digits", digits), minorDigits[s.Home] == digits)
		}
	}
	demand := refMonthlyDemand(s)
	n.see("one month", s.Months == 1)
	n.see("sixty months", s.Months == 60)
	n.see("months that are no whole years", s.Months > 12 && s.Months%12 != 0)
	n.see("no demand", demand.zero())
	n.see("demand only after the last month", !demand.zero() && most(&s).zero())
	n.see("demand later than the first month", !most(&s).zero() && s.Shooting.RollsPerMonth[0].IsZero())
	n.see("several processes", len(s.Developing) > 1)
	n.see("no process", len(s.Developing) == 0)
	for _, o := range s.Offers {
		ways := 0
		for _, third := range currencies {
			_, in := refQuote(s, o.Currency, third)
			_, out := refQuote(s, third, s.Home)
			ways += choose(in && out, 1, 0)
		}
		_, direct := refQuote(s, o.Currency, s.Home)
		n.see("two ways through a third currency", o.Currency != s.Home && !direct && ways > 1)
	}
	n.see("time valued", s.Loading.HourlyValue.IsPositive())
	n.see("time not valued", s.Loading.HourlyValue.IsZero())
}

func (n nooks) ofOffer(s scenario.Scenario, o scenario.Offer, r refOffer) {
	n.see("fault: no rate", strings.Contains(string(r.Fault), "no-rate"))
	n.see("fault: no yield", strings.Contains(string(r.Fault), "no-yield"))
	n.see("fault: unknown developing", strings.Contains(string(r.Fault), "unknown-developing"))
	if r.Fault != "" {
		return
	}
	n.ofOrder(s, o, r.Order)
	n.ofYield(s, o, r)
	n.ofYear(s, o, r)
	if r.Against != nil {
		n.ofAgainst(o, *r.Against)
	}
}

func (n nooks) ofOrder(s scenario.Scenario, o scenario.Offer, r refOrder) {
	b, film := s.Border, r.Home.Film
	imported := o.Import == scenario.ImportBorder || o.Import == scenario.ImportPrepaid
	border, prepaid := o.Import == scenario.ImportBorder, o.Import == scenario.ImportPrepaid
	foreign := o.Currency != s.Home
	for digits := range 4 {
		if digits != 1 {
			n.see(fmt.Sprintf("foreign seller with %d digits", digits), foreign && minorDigits[o.Currency] == digits)
		}
	}
	n.see("quote with", len(r.Route) == 1 && !r.Route[0].Against)
	n.see("quote against", len(r.Route) == 1 && r.Route[0].Against)
	for _, first := range []bool{false, true} {
		for _, second := range []bool{false, true} {
			n.see(fmt.Sprintf("third currency, against: %v, %v", first, second),
				len(r.Route) == 2 && r.Route[0].Against == first && r.Route[1].Against == second)
		}
	}
	for _, choice := range []scenario.Import{scenario.ImportNone, scenario.ImportBorder, scenario.ImportPrepaid, scenario.ImportUndecided} {
		n.see(fmt.Sprintf("import %q abroad", choice), foreign && o.Import == choice)
		n.see(fmt.Sprintf("import %q at home", choice), !foreign && o.Import == choice)
	}
	n.see("film exactly at the duty limit", imported && film.positive() && film.is(typed(b.DutyFreeUpTo)))
	n.see("film exactly at the tax limit", border && film.positive() && film.is(typed(b.TaxFreeUpTo)))
	n.see("film within the duty limit", imported && film.below(typed(b.DutyFreeUpTo)))
	n.see("film over a duty limit above 0", imported && b.DutyFreeUpTo.IsPositive() && film.above(typed(b.DutyFreeUpTo)))
	n.see("film over a tax limit above 0", border && b.TaxFreeUpTo.IsPositive() && film.above(typed(b.TaxFreeUpTo)))
	n.see("duty without tax", border && r.Home.Duty.positive() && r.Home.ImportTax.zero())
	n.see("tax without duty", border && r.Home.Duty.zero() && r.Home.ImportTax.positive())
	n.see("duty and tax at the border", border && r.Home.Duty.positive() && r.Home.ImportTax.positive())
	n.see("duty on a prepaid order", prepaid && r.Home.Duty.positive())
	n.see("prepaid tax without duty", prepaid && r.Home.Duty.zero() && r.Home.ImportTax.positive())
	n.see("handling at the border", border && r.Home.Handling.positive())
	n.see("handling on a prepaid order", prepaid && r.Home.Handling.positive())
	n.see("duty not on shipping", r.Home.Duty.positive() && r.Home.Shipping.positive() && !b.DutyOnShipping)
	n.see("tax not on shipping", r.Home.ImportTax.positive() && r.Home.Shipping.positive() && !b.TaxOnShipping)
	n.see("sales tax on shipping", r.Seller.SalesTax.positive() && r.Seller.Shipping.positive() && o.SalesTaxOnShipping)
	n.see("sales tax on film only", r.Seller.SalesTax.positive() && r.Seller.Shipping.positive() && !o.SalesTaxOnShipping)
	n.see("card fee", r.Home.CardFee.positive())
	n.see("no card fee at home", !foreign && o.CardFeePercent.IsPositive())

	ships := o.FreeShippingFrom.Set && (o.Shipping.IsPositive() || o.Units > 1 && o.ShippingEachExtra.IsPositive())
	from := typed(o.FreeShippingFrom.Decimal)
	n.see("free shipping", ships && !r.Seller.Film.below(from))
	n.see("free shipping just reached", ships && r.Seller.Film.is(from))
	n.see("free shipping not reached", ships && r.Seller.Film.below(from))
	n.see("free shipping from 0", ships && from.zero())
	n.see("discount", o.DiscountPercent.IsPositive() && !o.DiscountPercent.Equal(dec("100")))
	n.see("discount of everything", o.DiscountPercent.Equal(dec("100")))
	n.see("several units", o.Units > 1 && o.ShippingEachExtra.IsPositive())
	n.see("film is not its own conversion", !film.is(refConvert(s, r.Route, r.Seller.Film).billed(s.Home)))
	n.see("film below 0 on the receipt", film.below(rat{}))
	n.see("landed for nothing", r.Landed.zero())
}

func (n nooks) ofYield(s scenario.Scenario, o scenario.Offer, r refOffer) {
	n.see("rolls unlike the standard", o.Kind == scenario.KindBoxed && o.Boxed.Exposures != s.RollExposures)
	n.see("spoiled boxed film", o.Kind == scenario.KindBoxed && o.Boxed.SpoiledPercent.IsPositive())
	n.see("packs of several", o.Kind == scenario.KindBoxed && o.Boxed.RollsPerPack > 1)
	n.see("u below 1", r.UsedShare.below(whole(1)))
	n.see("u exactly 1 though it ages", o.KeepsMonths.Set && r.UsedShare.is(whole(1)))
	if cut := r.Yield.Cut; cut != nil {
		n.see("short roll", cut.ShortRollExposures > 0 && cut.FullRolls > 0)
		n.see("only a short roll", cut.ShortRollExposures > 0 && cut.FullRolls == 0)
		n.see("no short roll", cut.ShortRollExposures == 0)
		n.see("nothing left over", cut.LeftOver.zero())
		n.see("reel rolls unlike the standard", o.Reel.Exposures != s.RollExposures)
		n.see("spoiled", o.Reel.SpoiledPercent.IsPositive())
		n.see("nearly all spoiled", o.Reel.SpoiledPercent.GreaterThan(dec("99")))
		n.see("test exposures", o.Reel.TestExposures > 0)
		n.see("short pitch", o.Reel.Pitch == scenario.ShortPitch)
		n.see("metres", o.Reel.LengthUnit == scenario.Metres)
		n.see("feet", o.Reel.LengthUnit == scenario.Feet)
	}
	d := refProcess(s, o)
	n.see("developing not counted", d == nil)
	if d == nil {
		return
	}
	n.see("lab", d.Way == scenario.Lab)
	n.see("lab with equipment", d.Way == scenario.Lab && len(refNotOwned(d.Equipment)) > 0)
	n.see("developing equipment owned", len(refNotOwned(d.Equipment)) < len(d.Equipment))
	if d.Way == scenario.Home {
		effective := refEffectiveRolls(s, *d, r.Yield)
		n.see("home developing", true)
		n.see("chemistry is used up in time", d.ChemistryKeepsMonth.Set && effective.is(whole(d.ChemistryRolls)))
		n.see("chemistry expires", effective.below(whole(d.ChemistryRolls)) && effective.above(whole(1)))
		n.see("chemistry for one roll", effective.is(whole(1)) && d.ChemistryRolls > 1)
		n.see("home developing of boxed film", o.Kind == scenario.KindBoxed)
	}
}

func (n nooks) ofYear(s scenario.Scenario, o scenario.Offer, r refOffer) {
	y := r.Year
	orders, busiest := int64(0), int64(0)
	for _, k := range y.Orders {
		orders, busiest = orders+k, max(busiest, k)
	}
	shot := !most(&s).zero()
	rise := typed(o.PriceRisePercent)
	stops := whole(100).plus(rise.times(whole(s.Months - 1)).over(whole(12)))
	n.see("price rises", rise.positive() && s.Months > 1 && orders > 0)
	n.see("price falls", rise.below(rat{}) && !stops.below(rat{}) && orders > 0)
	n.see("price falls to 0 and stops", stops.below(rat{}) && y.Orders[s.Months-1] > 0)
	n.see("several orders in a month", busiest > 1)
	n.see("a month without an order", shot && orders > 0 && y.Orders[s.Months-1] == 0)
	n.see("no order at all though film is shot", shot && orders == 0)
	n.see("film thrown away", y.ThrownAwayRolls.positive())
	n.see("film on hand", o.OnHand.IsPositive())
	n.see("half a unit on hand, and film ordered", !o.OnHand.IsInteger() && orders > 0)
	n.see("film on hand too old before it is shot", y.onHandThrownAway)
	n.see("film lasts beyond what is valued", y.Long)
	n.see("film left that will be too old", y.FilmLeftRolls.positive() && o.KeepsMonths.Set && y.filmLeftTooOld)
	n.see("film left worth nothing", y.FilmLeftRolls.positive() && y.FilmLeftValue.zero())
	n.see("film left worth something", y.FilmLeftValue.positive())
	n.see("chemistry thrown away", y.chemistryThrownAway)
	n.see("chemistry left", y.chemistryLeft.positive())
	n.see("loads left", y.loadsLeft.positive())
	n.see("several cassette packs in a month", y.packsInAMonth > 1)
	n.see("cassettes owned suffice", o.Kind == scenario.KindReel && shot && y.packs == 0 && s.Loading.CassettesOwned > 0)
	n.see("cassettes owned do not suffice", y.packs > 0 && s.Loading.CassettesOwned > 0)
	n.see("time counted", y.Time.positive())
	n.see("equipment sold again", y.EquipmentLeftValue.positive())
	n.see("equipment not bought for want of demand", !shot && len(refNeeds(s, o)) > 0)
}

func (n nooks) ofAgainst(o scenario.Offer, a refAgainst) {
	n.see("even from the first month", a.EvenMonth == 1)
	n.see("even later", a.EvenMonth > 1)
	n.see("saves but never even", a.Saving.positive() && a.EvenMonth == 0)
	n.see("no percent of nothing", a.SavingPercent == nil)
	n.see("no payback", a.PaybackExact == nil)
	n.see("payback at once", a.PaybackExact != nil && a.PaybackExact.zero())
	n.see("payback after some rolls", a.PaybackExact != nil && !a.PaybackExact.zero())
	n.see("units to ruin", a.RuinedUnits != nil && o.Units > 1)
	n.see("no units to ruin, as they are free", a.RuinedUnits == nil && a.Saving.positive())
	n.see("no units to ruin, as nothing is saved", a.RuinedUnits == nil && !a.Saving.positive())
	n.see("saving of nothing", a.Saving.zero())
	n.see("developing alone saves", a.SavingDeveloping.positive() && a.SavingFilm.below(rat{}))
}

func (n nooks) ofVerdict(s scenario.Scenario, r refComparison) {
	for _, kind := range []compare.VerdictKind{compare.VerdictReel, compare.VerdictBoxed, compare.VerdictClose,
		compare.VerdictReelIfKept, compare.VerdictUnlike, compare.VerdictOneSided} {
		n.see("verdict "+string(kind), r.Verdict.Kind == kind)
	}
	v := r.Verdict
	n.see("nothing computed", v.Reel == "" && v.Boxed == "")
	n.see("some left out", len(v.LeftOut) > 0 && v.Kind != compare.VerdictOneSided)
	n.see("baseline with a fault", refFind(r, s.Baseline) == nil)
	if v.Pair == nil {
		return
	}
	reel, boxed := *refFind(r, v.Reel), *refFind(r, v.Boxed)
	n.see("pair counts developing", reel.CountsDeveloping && boxed.CountsDeveloping)
	n.see("pair does not count developing", !reel.CountsDeveloping && !boxed.CountsDeveloping)
	cheaper, tie := false, false
	for _, o := range r.Offers {
		if best := choose(o.Kind == scenario.KindReel, reel, boxed); o.Fault == "" {
			cheaper = cheaper || o.Year.Cost.below(best.Year.Cost)
			tie = tie || o.Name != best.Name && o.Year.Cost.is(best.Year.Cost)
		}
	}
	n.see("a cheaper offer is passed over to compare like with like", cheaper)
	n.see("two best offers tie", tie)
	five := boxed.Year.Cost.over(whole(20))
	n.see("exactly on the edge of close, or no cost at all", v.Pair.Saving.magnitude().is(five))
	n.ofSharing(s, reel, boxed)
	for _, o := range r.Offers {
		if base := refFind(r, s.Baseline); base != nil && o.Fault == "" && o.Name != base.Name {
			n.ofSharing(s, o, *base)
		}
	}
}

func (n nooks) ofSharing(s scenario.Scenario, o, base refOffer) {
	mine, theirs := refOfferNamed(s, o.Name), refOfferNamed(s, base.Name)
	loading := len(refNotOwned(s.Loading.Equipment)) > 0
	n.see("two reels share loading", loading && mine.Kind == scenario.KindReel && theirs.Kind == scenario.KindReel)
	n.see("boxed against a reel", mine.Kind == scenario.KindBoxed && theirs.Kind == scenario.KindReel)
	d := refProcess(s, mine)
	if d != nil && len(refNotOwned(d.Equipment)) > 0 {
		n.see("developing equipment shared", mine.Developing == theirs.Developing)
		n.see("developing equipment not shared", theirs.Developing != "" && mine.Developing != theirs.Developing)
	}
}

// What the scenario package finds wrong in a drawn scenario is exactly what the
// reference leaves out; and the engine, told of it, leaves out no more.
func TestRandomScenariosAreValid(t *testing.T) {
	scenarios, answers := drawn()
	for seed, s := range scenarios[:500] {
		faults := scenario.Check(s)
		for _, fault := range faults {
			if fault.Place.Part != scenario.PartOffer || answers[seed].Offers[fault.Place.Index].Fault == "" {
				t.Errorf("seed %d: %s\n%s", seed, fault.Error(), compact(s))
			}
		}
		told := compare.Compare(s, faults, scenario.Date{})
		for i, o := range told.Offers {
			if leftOut := answers[seed].Offers[i].Fault != ""; leftOut != (o.Fault != nil) {
				t.Errorf("seed %d: %s left out: %v, should be %v", seed, o.Name, o.Fault != nil, leftOut)
			}
		}
		if want := answers[seed].Verdict; told.Verdict.Kind != want.Kind || told.Verdict.Reel != want.Reel || told.Verdict.Boxed != want.Boxed {
			t.Errorf("seed %d: verdict %v, should be %v", seed, told.Verdict, want)
		}
		if t.Failed() {
			return
		}
	}
}
