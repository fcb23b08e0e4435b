package figure

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
)

const demoPack = "Marigold 400, pack of 5 by post"

// demoAhead is the demo with its outlook, and an offer's part of it.
func demoAhead(offer string) (*compare.Comparison, *compare.OfferOutlook) {
	c := compared(demo())
	all := ahead(c)
	for i := range all.Offers {
		if all.Offers[i].Name == offer {
			return c, &all.Offers[i]
		}
	}
	panic(offer)
}

// demoFlip is an offer of the demo over one input.
func demoFlip(offer string, input scenario.Input, from, to string, w, h float64, s Style) *Drawing {
	c := compared(demo())
	return Flip(c, demoCurve(c, offer, input, from, to), w, h, s)
}

func demoCurve(c *compare.Comparison, offer string, input scenario.Input, from, to string) *compare.Curve {
	n := func(text string) exact.Fraction { return exact.FromDecimal(decimal.RequireFromString(text)) }
	curve, err := compare.CurveOf(context.Background(), c, offer, c.Scenario.Baseline, input, n(from), n(to), 80)
	if err != nil || curve == nil {
		panic(fmt.Sprint(input, err))
	}
	return curve
}

func writes(d *Drawing, text string) bool {
	return slices.ContainsFunc(d.Texts(), func(b TextBox) bool { return spaces.Replace(b.Text) == text })
}

// The demo's flips are published with it: 1.6398 for the rate, 15 for the rolls a year.
func TestAFlipSaysWhatItShows(t *testing.T) {
	for name, test := range map[string]struct {
		d     *Drawing
		texts []string
	}{
		"rate": {demoFlip(demoReel, "rate:USD/EUR", "0.4", "2", 640, 300, english(palette.Paper)), []string{
			"The reel is cheaper unless 1 USD costs more than 1.6398 EUR",
			"EUR of the whole year, all counted, against 1 USD in EUR",
			"today 0.8875", "1.6398", "reel", "shop roll", "reel cheaper", "shop roll cheaper", "EUR", "0.6", "1.6"}},
		"rolls": {demoFlip(demoReel, scenario.InputRollsAYear, "1", "80", 640, 300, english(palette.Safelight)), []string{
			"Marigold 400, shop roll up to 13 rolls a year, about the same to 16, the reel to 430",
			"EUR of the whole year, all counted, against rolls a year", "today 43", "15", "rolls"}},
		"pack": {demoFlip(demoPack, scenario.InputOfferPrice, "6000", "10000", 960, 300, english(palette.Paper)), []string{
			"Marigold 400, shop roll is cheaper unless Marigold 400, pack of 5 by post costs less than JPY 7,914",
			"today 8,450", "7,914", "pack of 5 by post cheaper", "JPY"}},
		"duty": {demoFlip(demoReel, scenario.InputDutyPercent, "0", "20", 640, 300, english(palette.Paper)), []string{
			"The reel is cheaper at every value drawn", "today 4.2", "%"}},
		"nothing": {Flip(compared(demo()), nil, 640, 300, english(palette.Paper)), []string{"This figure has no say in these two"}},
	} {
		for _, text := range test.texts {
			if !writes(test.d, text) {
				t.Errorf("%s: %q is not written", name, text)
			}
		}
	}
}

func TestAFlipsRingIsWhereItsLinesCross(t *testing.T) {
	c := compared(demo())
	curve := demoCurve(c, demoReel, "rate:USD/EUR", "0.4", "2")
	d := Flip(c, curve, 640, 300, english(palette.Paper))
	ring := d.Hits()[0]
	if !strings.HasPrefix(spaces.Replace(ring.Text), "If 1 USD costs more than 1.6398 EUR") {
		t.Fatalf("the first region says %q", ring.Text)
	}
	x, left, right := ring.Rect.X+6, d.Hits()[1].Rect.X, d.Hits()[len(d.Hits())-1].Rect.right()
	if want := left + (curve.Flip.Above.Float()-0.4)/(2-0.4)*(right-left); math.Abs(x-want) > 1 {
		t.Errorf("the ring is at %.1f, the lines cross at %.1f", x, want)
	}
}

func TestEveryPlaceOfAFlipIsReadOut(t *testing.T) {
	d := demoFlip(demoReel, "rate:USD/EUR", "0.4", "2", 640, 300, english(palette.Paper))
	const today = "1 USD, 0.8875 EUR: the reel EUR 688, Marigold 400, shop roll 1,062; the reel saves 374"
	if !slices.ContainsFunc(d.Hits(), func(h Hit) bool { return spaces.Replace(h.Text) == today }) {
		t.Errorf("nothing says %q", today)
	}
	end := d.Hits()[1].Rect.X
	for _, h := range d.Hits()[1:] {
		if math.Abs(h.Rect.X-end) > 0.01 {
			t.Errorf("a gap before %q", h.Text)
		}
		end = h.Rect.right()
	}
}

func TestBothSidesOfAJumpAreTold(t *testing.T) {
	d := demoFlip(demoReel, scenario.InputOfferPrice, "100", "300", 640, 300, english(palette.Paper))
	below, above := 0, 0
	for _, row := range d.Table().Rows {
		if strings.HasPrefix(row[0], "just below") {
			below++
		}
		if strings.HasPrefix(row[0], "just above") {
			above++
		}
	}
	if below == 0 || below != above { // duty sets in above EUR 150 of film
		t.Errorf("%d places just below a jump, %d just above one", below, above)
	}
}

func TestSwingsAreSortedAndSayWhatTheyShow(t *testing.T) {
	c, o := demoAhead(demoReel)
	d := Swings(c, demoReel, swingsAgainst(o), 640, 300, english(palette.Paper))
	for _, text := range []string{
		"The reel saves in every case: at least 311, at most 438",
		"EUR saved by the reel this year, all counted, each figure alone at both ends of its range",
		"today 374", "price of shop roll", "311", "at 13.32", "438", "at 16.28", "price of the reel, in USD", "at 129.80",
	} {
		if !writes(d, text) {
			t.Errorf("%q is not written", text)
		}
	}
	if writes(d, "no saving") || writes(d, "costs more") {
		t.Error("a loss is named where there is none")
	}
	rows := d.Table().Rows
	if len(rows) != len(swingsAgainst(o)) || spaces.Replace(strings.Join(rows[3], "|")) != "1 USD|0.8875 EUR|0.79875 EUR|414.87|0.97625 EUR|333.86|" {
		t.Errorf("the table is %q", rows)
	}
	// The published savings of the demo's swings, the widest first.
	want := []string{"Price of Marigold 400, shop roll", "Rolls a year", "Developing Marigold", "1 USD", "Spoiled share of the reel", "Price of the reel"}
	for i, h := range d.Hits()[:len(want)] {
		if !strings.HasPrefix(h.Text, want[i]) {
			t.Errorf("row %d says %q, want %q", i+1, h.Text, want[i])
		}
	}
}

func TestALossIsToldWithoutColour(t *testing.T) {
	c, o := demoAhead(demoPack)
	d := Swings(c, demoPack, swingsAgainst(o), 640, 300, english(palette.Safelight))
	for _, text := range []string{"5 of 8 figures can each turn the answer alone", "no saving", "costs more", "today −35"} {
		if !writes(d, text) {
			t.Errorf("%q is not written", text)
		}
	}
	strokes := 0
	for _, s := range d.shapes {
		if s.width > 0 && s.colour == palette.Safelight.Muted && len(s.dash) == 0 {
			strokes++
		}
	}
	if strokes < 20 {
		t.Errorf("only %d strokes hatch what costs more", strokes)
	}
}

func TestRowsThatDoNotFitAreDroppedFromTheNarrowest(t *testing.T) {
	c, o := demoAhead(demoReel)
	d := Swings(c, demoReel, swingsAgainst(o), 640, 170, english(palette.Paper))
	if !writes(d, "price of shop roll") || writes(d, "import tax, in %") {
		t.Error("the widest row is missing, or a narrow one is there")
	}
	if !slices.ContainsFunc(d.Texts(), func(b TextBox) bool { return strings.HasSuffix(b.Text, "that move it less, in the table") }) {
		t.Error("nothing says that rows are missing")
	}
	if len(d.Table().Rows) != len(swingsAgainst(o)) {
		t.Error("the table lacks rows")
	}
}

func TestSizesSayWhatTheyShow(t *testing.T) {
	c, o := demoAhead(demoReel)
	d := Sizes(c, demoReel, o.OrderSizes, 640, 300, english(palette.Paper))
	for _, text := range []string{
		"An order of 2 reels is best: a roll costs 0.74 less than today", "EUR per roll of 36 from the reel, by the reels in one order",
		"best", "today", "13.56", "155.85", "9.7", "reels", "months to shoot", "lasts too long", "30.58",
	} {
		if !writes(d, text) {
			t.Errorf("%q is not written", text)
		}
	}
	const second = "2 reels in one order: EUR 13.56 a roll, 155.85 landed a reel, 9.7 months to shoot; best: shipping is shared by more of them"
	if got := spaces.Replace(d.Hits()[1].Text); got != second {
		t.Errorf("the second bar says %q", got)
	}
	if row := d.Table().Rows[1]; !slices.Equal(row[:5], []string{"2", "155.85", "13.56", "9.7", "best"}) {
		t.Errorf("the second row is %q", row)
	}
	filled := func(d *Drawing) (n int) { // bars, not lines
		for _, s := range d.shapes {
			if s.width == 0 && s.colour == palette.Paper.Quiet && math.Abs(float64(s.path[1].Pos.X-s.path[0].Pos.X)) > 10 &&
				math.Abs(float64(s.path[2].Pos.Y-s.path[1].Pos.Y)) > 10 {
				n++
			}
		}
		return n
	}
	if n := filled(d); n != 1 { // one reel; two are the best, three and more last too long
		t.Errorf("%d bars are filled as neither best nor too long", n)
	}
}

func TestExportsOfWhatChangesTheAnswerStandAlone(t *testing.T) {
	c, o := demoAhead(demoReel)
	e := Export{Comparison: c, Chosen: demoReel, Style: english(palette.Paper), Date: scenario.Date{Year: 2026, Month: 11, Day: 24},
		Curve: demoCurve(c, demoReel, "rate:USD/EUR", "0.4", "2"), Swings: swingsAgainst(o), Sizes: o.OrderSizes}
	e.Comparison = withOutlook(c)
	for _, e.Figure = range OutlookFigures() {
		d, err := e.Drawing()
		if err != nil {
			t.Fatal(err)
		}
		for _, text := range []string{d.Title(), "Quayside year, colour", "Drawn by Reelworth " + version.Base + " on 24 Nov 2026"} {
			if !writes(d, spaces.Replace(text)) {
				t.Errorf("%s does not say %q", e.Figure, text)
			}
		}
		for _, format := range Formats() {
			var first, second bytes.Buffer
			if err := errors.Join(e.Write(&first, format), e.Write(&second, format)); err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(first.Bytes(), second.Bytes()) {
				t.Errorf("%s as %s differs from call to call", e.Figure, format)
			}
		}
	}
}
