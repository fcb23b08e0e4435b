package compare

import (
	"slices"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

func cashOf(o Offer) (list []string) {
	for _, f := range o.Year.Cash {
		list = append(list, f.String())
	}
	return list
}

func checkCash(t *testing.T, o Offer, want ...string) {
	t.Helper()
	if got := cashOf(o); !slices.Equal(got, want) {
		t.Errorf("%s: cash %q, want %q", o.Name, got, want)
	}
}

// everythingReel is a reel of 18 rolls at 90 with every supply and tool to buy, and 5
// rolls a month to shoot.
func everythingReel(months int) scenario.Scenario {
	reel := plainReel("reel", "90")
	reel.Developing = "bath"
	s := plain("5", months, reel)
	s.Loading = scenario.Loading{
		CassettePrice: dec("1.25"), CassetteLoads: 2, CassettePack: 3, ConsumablesPerRoll: dec("0.151"),
		MinutesPerReel: dec("18"), MinutesPerRoll: dec("4"), HourlyValue: dec("6"),
		Equipment: []scenario.Equipment{
			{Name: "loader", Price: dec("40.005"), Resale: dec("20.004"), LastsRolls: 100},
			{Name: "bag", Price: dec("25"), LastsRolls: 100, Owned: true},
		},
	}
	s.Developing = []scenario.Developing{{
		Name: "bath", Way: scenario.Home, ChemistryPrice: dec("30.04"), ChemistryRolls: 8, ChemistryKeepsMonth: maybe("2"),
		ExtraPerRoll: dec("0.40"), MinutesPerRoll: dec("30"),
		Equipment: []scenario.Equipment{{Name: "tank", Price: dec("35"), Resale: dec("10"), LastsRolls: 100}},
	}}
	return s
}

// The receipt of one month, written by hand:
//
//	loader 40.01 (a half cent rounds up) and tank 35.00     75.01
//	one reel                                                90.00
//	1 pack of 3 cassettes, 2 loads each, for 5 loads         3.75
//	1 set of chemistry                                      30.04
//	5 × (0.151 + 0.40) = 2.755                               2.76
//	                                                       201.56
//
// Left: 13 of 18 rolls of 90, all shot in 3 months: 65.00; 1 load of 6 of 3.75, 0.625:
// 0.63; 3 of 8 rolls of chemistry of 30.04, used next month, 11.265: 11.27; loader 20.00,
// tank 10.
// Time: 5 rolls of 4 + 30 minutes and 5/18 of 18 minutes are 175 minutes at 6 an hour.
func TestYearOfOneMonthIsItsReceipt(t *testing.T) {
	y := Compare(everythingReel(1), nil, scenario.Date{}).Offers[0].Year
	for _, f := range []struct {
		name string
		got  exact.Fraction
		want string
	}{
		{"cash", y.Cash[0], "201.56"}, {"cumulative", y.Cumulative[0], "201.56"}, {"total", y.Total, "201.56"},
		{"film left, rolls", y.FilmLeftRolls, "13"}, {"film left", y.FilmLeftValue, "65"},
		{"supplies left", y.SuppliesLeftValue, "11.90"}, {"equipment left", y.EquipmentLeftValue, "30"},
		{"time", y.Time, "17.50"}, {"cost", y.Cost, "112.16"},
		// 5 × 0.40, chemistry 30.04 − 11.27, tank 35 − 10, 5 × 30 minutes at 6 an hour
		{"developing side", y.DevelopingCost, "60.77"}, {"film side", y.FilmCost, "51.39"},
	} {
		sameFigure(t, f.name, f.got, f.want)
	}
	if y.Orders[0] != 1 {
		t.Errorf("%d orders", y.Orders[0])
	}
}

// Chemistry that keeps 2 months is thrown away at the beginning of the third: in
// month 2 what is left of month 0's set is gone, and a new one is mixed.
func TestSuppliesAreToppedUpOldestFirst(t *testing.T) {
	c := Compare(everythingReel(3), nil, scenario.Date{})
	// month 1: 1 load left, 4 more from 1 pack; 3 rolls of chemistry left, 1 set
	// month 2: 2 loads left, 3 more from 1 pack; 6 rolls of chemistry left, none bought
	checkCash(t, c.Offers[0], "201.56", "36.55", "6.51")

	s := everythingReel(3)
	s.Shooting.RollsPerMonth[1] = dec("1")
	c = Compare(s, nil, scenario.Date{})
	// month 1: 1 roll, from the load and the 3 rolls of chemistry that are left
	// month 2: the 2 rolls of chemistry left are too old; 1 pack, 1 set
	checkCash(t, c.Offers[0], "201.56", "0.55", "36.55")
}

func TestOwnedCassettesAndFilmOnHandCostNothing(t *testing.T) {
	s := everythingReel(2)
	s.Loading.CassettesOwned = 3 // 6 loads
	s.Offers[0].OnHand = dec("0.5")
	c := Compare(s, nil, scenario.Date{})
	// month 0: nothing but tools, chemistry and what each roll takes
	// month 1: 1 load left, 4 more from 1 pack; 4 of 9 rolls left, so one reel
	checkCash(t, c.Offers[0], "107.81", "126.55")
	if got := c.Offers[0].Year.Orders; !slices.Equal(got, []int64{0, 1}) {
		t.Errorf("orders %v", got)
	}
	// of the 17 rolls left all come from the reel paid for
	sameFigure(t, "film left", c.Offers[0].Year.FilmLeftValue, "85")
}

// Film that keeps 2 months, 6 rolls a pack, 4 rolls on hand, 1 roll a month: the film
// on hand is too old in month 2, of which 2 rolls are left.
func TestFilmTooOldIsThrownAway(t *testing.T) {
	pack := plainBoxed("pack", "60")
	pack.Boxed.RollsPerPack, pack.OnHand, pack.KeepsMonths = 6, dec("0.75"), maybe("2")
	s := plain("1", 5, pack)
	c := Compare(s, nil, scenario.Date{})
	o := c.Offers[0]
	checkCash(t, o, "0", "0", "60", "0", "60")
	// 4.5 − 2 on hand, then 6 − 2
	sameFigure(t, "thrown away", o.Year.ThrownAwayRolls, "6.5")
	sameFigure(t, "left", o.Year.FilmLeftRolls, "5")
	// the second pack at 60 is borne by the roll used and the one used before it is too old
	sameFigure(t, "worth one more month", o.Year.FilmLeftValue, "30")
	// 2 months of 1 roll out of 6
	sameFigure(t, "used share", o.UsedShare.Mul(exact.Int(3)), "1")
	sameFigure(t, "film a roll", o.PerRoll.Film, "30")
}

func TestFilmKeptForGoodIsWorthTwoYearsOfShooting(t *testing.T) {
	for _, c := range []struct {
		rolls int
		value string
		long  bool
	}{{25, "240", false}, {26, "249.6", true}} { // 24 of the 25 rolls that are ever used bear 250, then 260
		pack := plainBoxed("pack", "10")
		pack.Boxed.RollsPerPack, pack.Price = c.rolls, decimal.NewFromInt(int64(10*c.rolls))
		y := Compare(plain("1", 1, pack), nil, scenario.Date{}).Offers[0].Year
		sameFigure(t, "film left", y.FilmLeftValue, c.value)
		if y.Long != c.long {
			t.Errorf("%d rolls: lasts long %v", c.rolls, y.Long)
		}
	}
}

// What is left counts along the same calendar: shot in January only, months 1 to 24
// after a first January hold two more. The three of them bear the 60.
func TestWhatIsLeftFollowsTheCalendar(t *testing.T) {
	pack := plainBoxed("pack", "60")
	pack.Boxed.RollsPerPack = 6
	s := plain("0", 1, pack)
	s.Shooting.RollsPerMonth[0] = dec("1")
	o := Compare(s, nil, scenario.Date{}).Offers[0]
	sameFigure(t, "film left", o.Year.FilmLeftValue, "40")
}

// Two rolls in January and one in February: of a pack that keeps 2 months, begun in
// January, one more is shot in February before it is too old in March. The three of them
// bear the 60.
func TestWhatIsLeftStartsAfterTheLastMonth(t *testing.T) {
	pack := plainBoxed("pack", "60")
	pack.Boxed.RollsPerPack, pack.KeepsMonths = 6, maybe("2")
	s := plain("0", 1, pack)
	s.Shooting.RollsPerMonth[0], s.Shooting.RollsPerMonth[1] = dec("2"), dec("1")
	o := Compare(s, nil, scenario.Date{}).Offers[0]
	sameFigure(t, "film left", o.Year.FilmLeftValue, "20")
}

// An order's price rises with the month, and all that hangs on it: 12 % a year is 1 %
// a month. In month 2 film at 102.00 passes the free limit of 101, with 10 % duty.
func TestPriceRiseIsLandedAnew(t *testing.T) {
	roll := plainBoxed("roll", "100")
	roll.PriceRisePercent, roll.Import = dec("12"), scenario.ImportBorder
	s := plain("1", 3, roll)
	s.Border = scenario.Border{DutyPercent: dec("10"), DutyFreeUpTo: dec("101")}
	checkCash(t, Compare(s, nil, scenario.Date{}).Offers[0], "100", "101", "112.2")

	s.Offers[0].PriceRisePercent = dec("-900")
	checkCash(t, Compare(s, nil, scenario.Date{}).Offers[0], "100", "25", "0")
}

func TestNothingShotBuysNothing(t *testing.T) {
	s := everythingReel(3)
	s.Shooting.RollsPerMonth = rolls("0")
	y := Compare(s, nil, scenario.Date{}).Offers[0].Year
	sameFigure(t, "cost", y.Cost, "0")

	s.Shooting.RollsPerMonth[2] = dec("5")
	checkCash(t, Compare(s, nil, scenario.Date{}).Offers[0], "0", "0", "201.56")
}

// Demand past the twelfth month begins the calendar anew.
func TestLongScenariosRepeatTheCalendar(t *testing.T) {
	s := plain("0", 26, plainBoxed("roll", "10"))
	s.Shooting.RollsPerMonth[1] = dec("2")
	y := Compare(s, nil, scenario.Date{}).Offers[0].Year
	for m, orders := range y.Orders {
		if want := map[bool]int64{true: 2}[m%12 == 1]; orders != want {
			t.Errorf("month %d: %d orders, want %d", m, orders, want)
		}
	}
}

func TestEvenMonth(t *testing.T) {
	list := func(values ...int64) (fs []exact.Fraction) {
		for _, v := range values {
			fs = append(fs, exact.Int(v))
		}
		return fs
	}
	for _, c := range []struct {
		name         string
		offer, other []exact.Fraction
		want         int
	}{
		{"from the start", list(1, 2, 3), list(1, 2, 4), 1},
		{"equal counts", list(9, 5, 6), list(1, 5, 7), 2},
		{"a month ahead that is lost again does not count", list(5, 1, 9, 9), list(1, 2, 3, 9), 4},
		{"never", list(5, 5), list(1, 2), 0},
		{"no months", nil, nil, 0},
	} {
		if got := evenMonth(c.offer, c.other); got != c.want {
			t.Errorf("%s: %d, want %d", c.name, got, c.want)
		}
	}
}

// Two reels share what loading needs, two offers of one process what developing needs.
func TestPaybackCountsOnlyEquipmentOfItsOwn(t *testing.T) {
	s := everythingReel(12)
	dear := plainReel("dear reel", "180")
	dear.Developing = "bath"
	lab := plainBoxed("boxed", "20")
	lab.Developing = "lab"
	boxed := plainBoxed("boxed at home", "20")
	boxed.Developing = "bath"
	s.Developing = append(s.Developing, scenario.Developing{Name: "lab", Way: scenario.Lab, Price: dec("9")})
	s.Offers = append(s.Offers, dear, boxed, lab)
	s.Loading.HourlyValue = dec("0")
	for _, c := range []struct{ baseline, equipment string }{
		{"dear reel", "0"}, {"boxed at home", "40.01"}, {"boxed", "75.01"},
	} {
		s.Baseline = c.baseline
		got := Compare(s, nil, scenario.Date{})
		reel, base := got.Find("reel"), got.Find(c.baseline)
		each := reel.Against.SavingPerRoll.Add(reel.PerRoll.Equipment).Sub(base.PerRoll.Equipment)
		sameFigure(t, "equipment beyond "+c.baseline, reel.Against.PaybackExact.Mul(each), c.equipment)
	}
	s.Baseline = "reel"
	got := Compare(s, nil, scenario.Date{})
	if p := got.Find("dear reel").Against.PaybackExact; p != nil {
		t.Errorf("a dearer reel pays back after %s rolls", p)
	}
}

// At 20 rolls a year: what is spoiled must make film dearer, never
// what is left of it worth more. Worked out by hand: a reel of 3,600 exposures at 360,
// 720 shot in the year and 1,440 in the two years after, so that 2,160 bear the 360, or
// all there are where fewer are good.
func TestSpoiltFilmIsBorneByTheGood(t *testing.T) {
	for _, c := range []struct{ spoiled, left string }{{"0", "240"}, {"30", "240"}, {"50", "216"}, {"60", "180"}} {
		reel := plainBoxed("pack of a hundred", "360")
		reel.Boxed.RollsPerPack, reel.Boxed.SpoiledPercent = 100, dec(c.spoiled)
		s := plain("0", 12, reel)
		for i := range s.Shooting.RollsPerMonth {
			s.Shooting.RollsPerMonth[i] = dec("20")
			if i > 0 {
				s.Shooting.RollsPerMonth[i] = dec("0")
			}
		}
		y := Compare(s, nil, scenario.Date{}).Offers[0].Year
		sameFigure(t, c.spoiled+" % spoiled, left", y.FilmLeftValue, c.left)
	}
}
