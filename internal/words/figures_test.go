package words

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
)

// another adds a second offer of a kind, so that "the reel" is one of several.
func another(c *compare.Comparison, kind scenario.Kind, total string) {
	name := fmt.Sprintf("Second %s", kind)
	c.Scenario.Offers = append(c.Scenario.Offers, scenario.Offer{Name: name, Kind: kind, Currency: "EUR"})
	c.Offers = append(c.Offers, compare.Offer{Name: name, Kind: kind, PerRoll: compare.PerRoll{Total: num(total)}})
}

func TestTitleOverTheCosts(t *testing.T) {
	for name, c := range map[string]struct {
		change func(*compare.Comparison)
		want   string
	}{
		"the reel costs less":           {func(*compare.Comparison) {}, "A roll from the reel costs 10.40 less than a boxed roll"},
		"the reel costs more":           {func(c *compare.Comparison) { c.Verdict.Pair.SavingPerRoll = num("-3.105") }, "A roll from the reel costs 3.11 more than a boxed roll"},
		"they cost the same":            {func(c *compare.Comparison) { c.Verdict.Pair.SavingPerRoll = num("0") }, "A roll from the reel costs as much as a boxed roll"},
		"less than a cent apart":        {func(c *compare.Comparison) { c.Verdict.Pair.SavingPerRoll = num("-0.004") }, "A roll from the reel costs as much as a boxed roll"},
		"several boxed":                 {func(c *compare.Comparison) { another(c, scenario.KindBoxed, "30") }, "A roll from the reel costs 10.40 less than the best boxed roll"},
		"several reels":                 {func(c *compare.Comparison) { another(c, scenario.KindReel, "30") }, "A roll from the best reel costs 10.40 less than a boxed roll"},
		"boxed wins the year":           {func(c *compare.Comparison) { c.Verdict.Kind = compare.VerdictBoxed }, "A roll from the reel costs 10.40 less than a boxed roll"},
		"close":                         {func(c *compare.Comparison) { c.Verdict.Kind = compare.VerdictClose }, "A roll from the reel costs 10.40 less than a boxed roll"},
		"one counts developing":         {func(c *compare.Comparison) { c.Verdict.Kind = compare.VerdictUnlike }, "Not comparable yet: one counts developing, the other does not"},
		"only boxed":                    {onlyBoxed, "A roll costs 24.70"},
		"only several boxed":            {func(c *compare.Comparison) { onlyBoxed(c); another(c, scenario.KindBoxed, "21.5") }, "A roll costs at least 21.50"},
		"a roll that earns money":       {func(c *compare.Comparison) { onlyBoxed(c); c.Offers[0].PerRoll.Total = num("-2") }, "A roll costs −2.00"},
		"nothing could be computed":     {nothingComputed, "No way to buy could be computed"},
		"nothing is there":              {func(c *compare.Comparison) { nothingComputed(c); c.Offers = nil }, "Nothing to compare yet"},
		"no minor unit":                 {func(c *compare.Comparison) { c.Scenario.Home = "JPY"; c.Verdict.Pair.SavingPerRoll = num("1700") }, "A roll from the reel costs 1,700 less than a boxed roll"},
		"a minor unit of three figures": {func(c *compare.Comparison) { c.Scenario.Home = "KWD" }, "A roll from the reel costs 10.400 less than a boxed roll"},
	} {
		t.Run(name, func(t *testing.T) {
			given := year()
			c.change(given)
			same(t, "title", CostTitle(given, "en"), c.want)
		})
	}
}

func onlyBoxed(c *compare.Comparison) {
	c.Verdict = compare.Verdict{Kind: compare.VerdictOneSided, Boxed: "Shop roll"}
	c.Offers[1] = compare.Offer{Name: "100 ft", Kind: scenario.KindReel, Fault: noRate("USD")}
}

func onlyReel(c *compare.Comparison) {
	c.Verdict = compare.Verdict{Kind: compare.VerdictOneSided, Reel: "100 ft"}
	c.Offers, c.Scenario.Offers = c.Offers[1:], c.Scenario.Offers[1:]
}

func nothingComputed(c *compare.Comparison) {
	onlyBoxed(c)
	c.Verdict = compare.Verdict{Kind: compare.VerdictOneSided}
	c.Offers[0] = compare.Offer{Name: "Shop roll", Kind: scenario.KindBoxed, Fault: &compare.Fault{Code: compare.FaultInput, Key: "price", Why: scenario.Fault{Code: scenario.Missing}}}
}

// cash sets what the reel saves in cash and from which month on.
func cash(saving string, month int) func(*compare.Comparison) {
	return func(c *compare.Comparison) {
		c.Verdict.Pair.SavingCash, c.Verdict.Pair.EvenMonth = num(saving), month
	}
}

func TestTitleOverTheSpending(t *testing.T) {
	for name, c := range map[string]struct {
		change func(*compare.Comparison)
		want   string
	}{
		"ahead from July":       {func(*compare.Comparison) {}, "From July on the reel has cost less cash"},
		"ahead from the start":  {cash("200", 1), "The reel has cost less cash from the start"},
		"ahead in a later year": {func(c *compare.Comparison) { cash("200", 19)(c); c.Scenario.Months = 24 }, "From July 2028 on the reel has cost less cash"},
		"even in that month": {func(c *compare.Comparison) {
			for i := range c.Offers {
				c.Offers[i].Year.Cumulative = make([]exact.Fraction, 12)
			}
		}, "From July on the reel has cost no more cash"},
		"several reels":   {func(c *compare.Comparison) { another(c, scenario.KindReel, "30") }, "From July on the best reel has cost less cash"},
		"more cash":       {cash("-30", 0), "The reel costs 30 more cash this year, and leaves 9 rolls"},
		"the same cash":   {cash("0", 0), "The reel costs as much cash this year as the boxed rolls, and leaves 9 rolls"},
		"a little more":   {cash("-0.4", 0), "The reel costs 0.40 more cash this year, and leaves 9 rolls"},
		"nothing is left": {func(c *compare.Comparison) { cash("-30", 0)(c); reelOf(c).Year.FilmLeftRolls = num("0.4") }, "The reel costs 30 more cash this year"},
		"other months":    {func(c *compare.Comparison) { cash("-30", 0)(c); c.Scenario.Months = 18 }, "The reel costs 30 more cash in 18 months, and leaves 9 rolls"},
		"if kept": {func(c *compare.Comparison) { cash("-30", 0)(c); c.Verdict.Kind = compare.VerdictReelIfKept },
			"The reel costs 30 more cash this year, and leaves 9 rolls"},
		"boxed":      {func(c *compare.Comparison) { cash("-300", 0)(c); c.Verdict.Kind = compare.VerdictBoxed }, "The reel costs 300 more cash this year, and leaves 9 rolls"},
		"unlike":     {func(c *compare.Comparison) { c.Verdict.Kind = compare.VerdictUnlike }, "Not comparable yet: one counts developing, the other does not"},
		"only boxed": {onlyBoxed, "The boxed rolls cost 1,062 in cash this year"},
		"only several boxed": {func(c *compare.Comparison) { onlyBoxed(c); another(c, scenario.KindBoxed, "30") },
			"The best boxed offer costs 1,062 in cash this year"},
		"only a reel":      {onlyReel, "The reel costs 851 in cash this year"},
		"nothing computed": {nothingComputed, "No way to buy could be computed"},
		"no demand":        {func(c *compare.Comparison) { c.Scenario.Shooting.RollsPerMonth = rolls("0") }, "Nothing is shot this year"},
	} {
		t.Run(name, func(t *testing.T) {
			given := year()
			c.change(given)
			same(t, "title", SpendTitle(given, "en"), c.want)
		})
	}
}

func TestWhatStandsInTheFigures(t *testing.T) {
	c := year()
	reel := reelOf(c)
	reel.PerRoll.Loading = num("0.402")
	reel.Year.Cumulative = []exact.Fraction{num("317.87"), num("319.42")}
	reel.Year.Cash = []exact.Fraction{num("317.87"), num("1.55")}
	reel.Year.Orders = []int64{2, 0}
	text, short := LeftAtEnd(c, reel, "en")
	for what, pair := range map[string][2]string{
		"under the costs":    {CostUnder(c), "EUR per roll of 36"},
		"under the spending": {SpendUnder(c), "EUR spent so far, month by month; dots are film orders"},
		"what is left":       {text, "and 9 rolls, worth 93, left"},
		"the same in short":  {short, "and 9 rolls left"},
		"ahead":              {AheadFrom(&c.Scenario, 7), "ahead from July"},
		"ahead at once":      {AheadFrom(&c.Scenario, 1), "ahead from the start"},
		"a part":             {PartReadout(c, reel, PartLoading, "en"), "100 ft: cassettes EUR 0.40 of 14.30 a roll"},
		"a roll":             {RollReadout(c, reel, "en"), "100 ft: EUR 14.30 a roll"},
		"a month":            {MonthReadout(c, reel, 1, "en"), "100 ft, January: EUR 317.87 so far, 317.87 of it this month, with 2 film orders"},
		"a quiet month":      {MonthReadout(c, reel, 2, "de"), "100 ft, February: 319,42 EUR so far, 1,55 of it this month"},
		"a fault":            {NotComputed(year(), &compare.Offer{Fault: noRate("CAD")}), "not computed: no rate between CAD and EUR"},
		"one without room":   {NoRoom(1), "and one more, in the table"},
		"without room":       {NoRoom(4), "and 4 more, in the table"},
	} {
		same(t, what, pair[0], pair[1])
	}
	if text, short := LeftAtEnd(c, boxedOf(c), "en"); text != "" || short != "" {
		t.Errorf("nothing left is said as %q and %q", text, short)
	}
}

func TestPartsAreTheEnginesAndAddUpToARoll(t *testing.T) {
	r := compare.PerRoll{
		Film: num("1"), Shipping: num("2"), Tax: num("4"), Fees: num("8"), Loading: num("16"),
		Equipment: num("32"), Developing: num("64"), Time: num("128"),
	}
	var names []string
	sum := exact.Fraction{}
	for _, p := range CostParts() {
		names = append(names, p.Name())
		sum = sum.Add(p.Of(&r))
	}
	same(t, "parts", strings.Join(names, " "), "film shipping tax fees cassettes equipment developing time")
	if !sum.Equal(num("255")) {
		t.Errorf("the parts add up to %s", sum)
	}
}

func TestWhatStandsUnderAnExport(t *testing.T) {
	c := year()
	s := &c.Scenario
	s.Rates = []scenario.Rate{
		{One: "GBP", Equals: dec("1.15"), In: "EUR"},
		{One: "USD", Equals: dec("0.8875"), In: "EUR", Date: scenario.Date{Year: 2026, Month: 11, Day: 20}},
	}
	s.Border = scenario.Border{TaxPercent: dec("23"), DutyPercent: dec("4.2"), DutyFreeUpTo: dec("150"), HandlingFee: dec("6.5")}
	s.Offers[1].Import = scenario.ImportBorder
	reelOf(c).Order.Route = money.Route{{Quote: money.Quote{One: "USD", Equals: dec("0.8875"), In: "EUR"}, Index: 1}}
	same(t, "assumptions", strings.Join(Assumptions(c, "en"), "\n"), strings.Join([]string{
		"36 rolls a year of 36 exposures, 12 months from January 2027 on. Developing is counted.",
		"Import tax 23 %, duty 4.2 % above EUR 150.00, handling EUR 6.50.",
		"Rates: 1 USD = 0.8875 EUR, 20 Nov 2026.",
	}, "\n"))

	s.Offers[1].Import = scenario.ImportUndecided
	boxedOf(c).CountsDeveloping = false
	reelOf(c).Order.Route = nil
	same(t, "other assumptions", strings.Join(Assumptions(c, "en"), "\n"), strings.Join([]string{
		"36 rolls a year of 36 exposures, 12 months from January 2027 on. Developing is counted only for the reel.",
		"No import tax or duty. Import is not decided for the reel.",
		"No exchange rates used.",
	}, "\n"))

	reelOf(c).CountsDeveloping = false
	if got := Assumptions(c, "en")[0]; !strings.HasSuffix(got, "Developing is not counted.") {
		t.Errorf("without developing: %s", got)
	}
	same(t, "date line", DrawnOn(scenario.Date{Year: 2026, Month: 11, Day: 24}), "Drawn by Reelworth "+version.Base+" on 24 Nov 2026")
	same(t, "date line without a date", DrawnOn(scenario.Date{}), "Drawn by Reelworth "+version.Base)
}

func TestWhatStandsAtTheStrip(t *testing.T) {
	cut := &film.Cut{Reel: film.Reel{Length: num("30480"), Exposures: 36}, LeftOver: num("531.84"), ShortRollExposures: 14}
	for what, pair := range map[string][2]string{
		"title":         {StripTitle(cut, "en"), "The reel, 30.48 m"},
		"rolls":         {ExposuresEach(cut), "36 exposures each"},
		"short roll":    {ShortRoll(cut), "short roll of 14"},
		"waste":         {WasteOver(cut, "de"), "waste, 0,53 m over"},
		"no waste":      {WasteOver(&film.Cut{}, "en"), "waste"},
		"a roll":        {RollPiece(7, 36), "roll 7: 36 exposures"},
		"a piece":       {Piece(Leader, num("160"), "en"), "leader, 160 mm"},
		"a small piece": {Piece(TrailerAndFog, num("122.25"), "en"), "trailer and fogged end, 122.3 mm"},
	} {
		same(t, what, pair[0], pair[1])
	}
}

// Whatever is compared, no title has a hole, and none says less where it is more.
func TestTitlesSayWhatTheFiguresSay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anything(t)
		l := rapid.SampledFrom(money.Locales()).Draw(t, "locale")
		cost, spend := CostTitle(c, l), SpendTitle(c, l)
		for _, text := range append(Assumptions(c, l), cost, spend) {
			if bad := odd.FindString(spaces(text)); bad != "" || text == "" {
				t.Errorf("%q holds %q", text, bad)
			}
		}
		pair := c.Verdict.Pair
		if pair == nil || c.Verdict.Kind == compare.VerdictUnlike || shot(&c.Scenario).IsZero() {
			return
		}
		if less := strings.Contains(cost, " less than "); less && pair.SavingPerRoll.Sign() <= 0 {
			t.Errorf("%q with a saving of %s", cost, pair.SavingPerRoll)
		}
		if more := strings.Contains(spend, " more cash") && !strings.Contains(spend, "no more"); more != (pair.SavingCash.Sign() < 0) {
			t.Errorf("%q with a saving of %s in cash", spend, pair.SavingCash)
		}
	})
}
