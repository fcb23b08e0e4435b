package words

import (
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

func TestHeadline(t *testing.T) {
	for _, test := range []struct {
		name   string
		change func(c *compare.Comparison)
		text   string
		strong string
		under  string
	}{
		{"the reel saves, with rolls left over", func(c *compare.Comparison) {},
			"The reel saves EUR 211 in cash this year and leaves 9 rolls over. It is ahead from July on.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home. Equipment paid after 11 rolls."},
		{"one roll left over, ahead from the first month", func(c *compare.Comparison) {
			reelOf(c).Year.FilmLeftRolls = num("0.9")
			c.Verdict.Pair.EvenMonth = 1
			c.Verdict.Pair.PaybackRolls = ptr("1")
		},
			"The reel saves EUR 211 in cash this year and leaves 1 roll over. It is ahead from the start.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home. Equipment paid after 1 roll."},
		{"no roll left over, all equipment owned", func(c *compare.Comparison) {
			reelOf(c).Year.FilmLeftRolls = num("0.4")
			c.Verdict.Pair.PaybackExact, c.Verdict.Pair.PaybackRolls = ptr("0"), ptr("0")
		},
			"The reel saves EUR 211 in cash this year. It is ahead from July on.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home."},
		{"half a year", func(c *compare.Comparison) { c.Scenario.Months = 6 },
			"The reel saves EUR 211 in cash in 6 months and leaves 9 rolls over. It is ahead from July on.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home. Equipment paid after 11 rolls."},
		{"five years name the year of the month", func(c *compare.Comparison) {
			c.Scenario.Months = 60
			c.Verdict.Pair.EvenMonth = 19
		},
			"The reel saves EUR 211 in cash in 5 years and leaves 9 rolls over. It is ahead from July 2028 on.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home. Equipment paid after 11 rolls."},
		{"cash saved is less than half a unit", func(c *compare.Comparison) { c.Verdict.Pair.SavingCash = num("0.31") },
			"The reel saves EUR 0.31 in cash this year and leaves 9 rolls over. It is ahead from July on.",
			"EUR 0.31 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home. Equipment paid after 11 rolls."},
		{"developing at home costs more", func(c *compare.Comparison) {
			c.Verdict.Pair.SavingFilm, c.Verdict.Pair.SavingDeveloping = num("400"), num("-40.37")
		},
			"The reel saves EUR 211 in cash this year and leaves 9 rolls over. It is ahead from July on.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: loading yourself saves 400, developing at home costs 40 more. Equipment paid after 11 rolls."},
		{"loading costs more", func(c *compare.Comparison) {
			c.Verdict.Pair.SavingFilm, c.Verdict.Pair.SavingDeveloping = num("-40.37"), num("400")
		},
			"The reel saves EUR 211 in cash this year and leaves 9 rolls over. It is ahead from July on.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: developing at home saves 400, loading yourself costs 40 more. Equipment paid after 11 rolls."},
		{"the same developing costs the same", func(c *compare.Comparison) {
			c.Scenario.Offers[1].Developing = "Town lab"
			c.Verdict.Pair.SavingFilm, c.Verdict.Pair.SavingDeveloping = num("359.63"), num("0")
		},
			"The reel saves EUR 211 in cash this year and leaves 9 rolls over. It is ahead from July on.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: all of it by loading yourself. Equipment paid after 11 rolls."},
		{"two labs", func(c *compare.Comparison) { c.Scenario.Offers[1].Developing = "Other lab" },
			"The reel saves EUR 211 in cash this year and leaves 9 rolls over. It is ahead from July on.",
			"EUR 211 in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing differently. Equipment paid after 11 rolls."},
		{"developing counted by neither", func(c *compare.Comparison) {
			boxedOf(c).CountsDeveloping, reelOf(c).CountsDeveloping = false, false
			c.Verdict.Pair.SavingFilm, c.Verdict.Pair.SavingDeveloping = num("359.63"), num("0")
		},
			"The reel saves EUR 211 in cash this year and leaves 9 rolls over. It is ahead from July on.",
			"EUR 211 in cash", "All counted, the reel costs EUR 360 less than the boxed rolls. Equipment paid after 11 rolls."},
		{"of several reels the best is named", func(c *compare.Comparison) {
			c.Scenario.Offers = append(c.Scenario.Offers, scenario.Offer{Name: "400 ft", Kind: scenario.KindReel})
		},
			"100 ft saves EUR 211 in cash this year and leaves 9 rolls over. It is ahead from July on.",
			"EUR 211 in cash",
			"All counted, 100 ft costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home. Equipment paid after 11 rolls."},

		{"boxed, in cash and all counted", func(c *compare.Comparison) {
			c.Verdict = compare.Verdict{Kind: compare.VerdictBoxed, Reel: "100 ft", Boxed: "Shop roll", Pair: &compare.Against{
				SavingPerRoll: num("1.20"), SavingCash: num("-120.4"), Saving: num("-80.1"),
				SavingFilm: num("-95.1"), SavingDeveloping: num("15"), PaybackRolls: ptr("60")}}
		},
			"Buy boxed: the reel would cost EUR 120 more this year.", "EUR 120 more",
			"That is cash, with 9 rolls over. All counted, the reel costs EUR 80 more than the boxed rolls: developing at home saves 15, loading yourself costs 95 more. " +
				"In the long run a roll from the reel costs EUR 1.20 less, and its equipment is paid after 60 rolls."},
		{"boxed, and no volume of one roll after another turns it", func(c *compare.Comparison) {
			reelOf(c).Year.FilmLeftRolls = num("0")
			c.Verdict = compare.Verdict{Kind: compare.VerdictBoxed, Reel: "100 ft", Boxed: "Shop roll", Pair: &compare.Against{
				SavingPerRoll: num("-0.3"), SavingCash: num("-80.1"), Saving: num("-80.1"),
				SavingFilm: num("-60.1"), SavingDeveloping: num("-20")}}
		},
			"Buy boxed: the reel would cost EUR 80 more this year.", "EUR 80 more",
			"That is cash. All counted, the reel costs EUR 80 more than the boxed rolls: loading yourself costs 60 more, developing at home 20 more. " +
				"Roll for roll, the reel is no cheaper either."},
		{"boxed, although the reel saves cash", func(c *compare.Comparison) {
			c.Scenario.Months = 18
			c.Verdict = compare.Verdict{Kind: compare.VerdictBoxed, Reel: "100 ft", Boxed: "Shop roll", Pair: &compare.Against{
				SavingPerRoll: num("-3"), SavingCash: num("50"), Saving: num("-80"), SavingFilm: num("-80")}}
		},
			"Buy boxed: the reel would save EUR 50 in cash in 18 months, but all counted cost EUR 80 more.", "EUR 80 more",
			"All counted, the reel costs EUR 80 more than the boxed rolls: all of it by loading yourself. Roll for roll, the reel is no cheaper either."},
		{"boxed, at the same cash, one boxed offer of several", func(c *compare.Comparison) {
			c.Scenario.Offers = append(c.Scenario.Offers, scenario.Offer{Name: "Pack", Kind: scenario.KindBoxed})
			boxedOf(c).CountsDeveloping, reelOf(c).CountsDeveloping = false, false
			c.Verdict = compare.Verdict{Kind: compare.VerdictBoxed, Reel: "100 ft", Boxed: "Shop roll", Pair: &compare.Against{
				SavingPerRoll: num("3"), Saving: num("-80"), SavingFilm: num("-80")}}
		},
			"Buy boxed: the reel would cost the same in cash this year, all counted EUR 80 more.", "EUR 80 more",
			"All counted, the reel costs EUR 80 more than Shop roll. In the long run a roll from the reel costs EUR 3.00 less. The cheapest boxed is Shop roll."},

		{"close", func(c *compare.Comparison) {
			c.Verdict.Kind = compare.VerdictClose
			c.Verdict.Pair.Saving, c.Verdict.Pair.SavingCash = num("32"), num("-12.2")
		},
			"About the same: EUR 1,062 either way. Decide by effort and taste.", "EUR 1,062",
			"All counted, the reel costs EUR 32 less than the boxed rolls this year; in cash, EUR 12 more."},
		{"close to the cent", func(c *compare.Comparison) {
			c.Verdict.Kind = compare.VerdictClose
			c.Scenario.Months = 1
			c.Verdict.Pair.Saving, c.Verdict.Pair.SavingCash = num("0"), num("0.2")
		},
			"About the same: EUR 1,062 either way. Decide by effort and taste.", "EUR 1,062",
			"All counted, the reel costs the same as the boxed rolls in 1 month; in cash, EUR 0.20 less."},

		{"the reel pays if what is left is shot", func(c *compare.Comparison) {
			c.Verdict.Kind = compare.VerdictReelIfKept
			c.Verdict.Pair.SavingCash = num("-39.6")
			c.Verdict.Pair.EvenMonth = 0
		},
			"The reel only pays if you shoot what is left: EUR 40 in cash more this year, 9 rolls over.", "EUR 40 in cash more",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home. Equipment paid after 11 rolls."},
		{"the reel pays if what is left is sold", func(c *compare.Comparison) {
			c.Verdict.Kind = compare.VerdictReelIfKept
			c.Verdict.Pair.SavingCash = num("0")
			reelOf(c).Year.FilmLeftRolls = num("0")
		},
			"The reel only pays if what is left gets used or sold: the same in cash this year, supplies and equipment worth EUR 55 over.",
			"the same in cash",
			"All counted, the reel costs EUR 360 less than the boxed rolls: 158 of it by loading yourself, 202 by developing at home. Equipment paid after 11 rolls."},

		{"unlike, the boxed rolls lack developing", func(c *compare.Comparison) {
			c.Verdict.Kind = compare.VerdictUnlike
			boxedOf(c).CountsDeveloping = false
		},
			"Not comparable yet: one counts developing, the other does not.", "",
			"Choose Developing for the boxed rolls, or leave it out for the reel too."},
		{"unlike, the reel lacks developing", func(c *compare.Comparison) {
			c.Verdict.Kind = compare.VerdictUnlike
			c.Scenario.Offers[0].Boxed.RollsPerPack = 5
			reelOf(c).CountsDeveloping = false
		},
			"Not comparable yet: one counts developing, the other does not.", "",
			"Choose Developing for the reel, or leave it out for the pack too."},

		{"only boxed", func(c *compare.Comparison) {
			c.Scenario.Offers, c.Offers = c.Scenario.Offers[:1], c.Offers[:1]
			c.Verdict = compare.Verdict{Kind: compare.VerdictOneSided, Boxed: "Shop roll"}
		},
			"EUR 24.70 a roll, EUR 1,062 a year. Add a reel to compare.", "EUR 24.70 a roll", ""},
		{"only a reel, for half a year", func(c *compare.Comparison) {
			c.Scenario.Months = 6
			c.Scenario.Offers, c.Offers = c.Scenario.Offers[1:], c.Offers[1:]
			c.Verdict = compare.Verdict{Kind: compare.VerdictOneSided, Reel: "100 ft"}
		},
			"EUR 14.30 a roll, EUR 851 in 6 months. Add boxed rolls to compare.", "EUR 14.30 a roll",
			"That is cash. All counted, EUR 702, with 9 rolls over."},
		{"the reel is there but left out", func(c *compare.Comparison) {
			reelOf(c).Fault = &compare.Fault{Code: compare.FaultNoRate}
			c.Verdict = compare.Verdict{Kind: compare.VerdictOneSided, Boxed: "Shop roll", LeftOut: []string{"100 ft"}}
		},
			"EUR 24.70 a roll, EUR 1,062 a year. Complete the reel to compare.", "EUR 24.70 a roll", ""},
		{"nothing could be computed", func(c *compare.Comparison) {
			reelOf(c).Fault, boxedOf(c).Fault = &compare.Fault{}, &compare.Fault{}
			c.Verdict = compare.Verdict{Kind: compare.VerdictOneSided}
		},
			"Nothing to compare yet.", "", "No way to buy could be computed: correct the fields named."},
		{"no offers", func(c *compare.Comparison) {
			c.Scenario.Offers, c.Offers = nil, nil
			c.Verdict = compare.Verdict{Kind: compare.VerdictOneSided}
		},
			"Nothing to compare yet. Add a reel and boxed rolls.", "", ""},

		{"nothing is shot", func(c *compare.Comparison) {
			c.Scenario.Shooting.RollsPerMonth = rolls("0")
			c.Verdict.Kind, c.Verdict.Pair = compare.VerdictBoxed, &compare.Against{}
		},
			"Nothing is shot yet: enter the rolls you shoot in a month.", "",
			"In the long run a roll from the reel costs EUR 14.30, boxed EUR 24.70."},
		{"nothing is shot in these months, but later", func(c *compare.Comparison) {
			c.Scenario.Months = 3
			for m := range 3 {
				c.Scenario.Shooting.RollsPerMonth[m] = dec("0")
			}
			c.Verdict.Kind, c.Verdict.Pair = compare.VerdictBoxed, &compare.Against{}
		},
			"Nothing is shot yet in 3 months: enter rolls, or compare more months.", "",
			"In the long run a roll from the reel costs EUR 14.30, boxed EUR 24.70."},
	} {
		t.Run(test.name, func(t *testing.T) {
			c := year()
			test.change(c)
			h := Verdict(c, "en")
			same(t, "headline", h.Text, test.text)
			same(t, "coloured", h.Strong, test.strong)
			same(t, "under it", h.Under, test.under)
			if saves := strings.Contains(h.Text, " saves "+h.Strong) && h.Strong != ""; h.Saves != saves {
				t.Errorf("%q has the colour of a saving: %v", h.Strong, h.Saves)
			}
			if !strings.Contains(h.Text, h.Strong) {
				t.Errorf("what is coloured, %q, is no part of %q", h.Strong, h.Text)
			}
		})
	}
}

func TestHeadlineInOtherNumbers(t *testing.T) {
	c := year()
	c.Verdict.Pair.SavingCash = num("1210.84")
	h := Verdict(c, "de")
	same(t, "headline", h.Text, "The reel saves 1.211 EUR in cash this year and leaves 9 rolls over. It is ahead from July on.")
	same(t, "coloured", h.Strong, "1.211 EUR in cash")
}

// A headline must come for every verdict the engine knows, and none may panic on what a
// hand-made comparison leaves out.
func TestEveryVerdictHasAHeadline(t *testing.T) {
	for _, kind := range []compare.VerdictKind{
		compare.VerdictReel, compare.VerdictBoxed, compare.VerdictClose, compare.VerdictReelIfKept,
		compare.VerdictUnlike, compare.VerdictOneSided,
	} {
		if headlines[kind] == nil {
			t.Errorf("no headline for %s", kind)
		}
		c := year()
		c.Verdict.Kind, c.Verdict.Pair = kind, nil
		if Verdict(c, "en").Text == "" {
			t.Errorf("an empty headline for %s", kind)
		}
	}
}
