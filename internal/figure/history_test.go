package figure

import (
	"context"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/history"
	"reelworth/internal/palette"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
)

// wandering is a made-up file of rates with so many days, the last on 9 May 2025: dollar
// and yen go up and down in waves of their own.
func wandering(days int) *rates.File {
	var b strings.Builder
	b.WriteString("Date,USD,JPY,\n")
	date := scenario.Date{Year: 2025, Month: 5, Day: 9}
	for i := range days {
		x := float64(i)
		usd := 1.13 + 0.13*math.Sin(x/700) + 0.05*math.Sin(x/90) + 0.01*math.Sin(x/7)
		jpy := 140 + 22*math.Sin(x/1500) + 6*math.Cos(x/130) + math.Sin(x/5)
		fmt.Fprintf(&b, "%s,%.4f,%.2f,\n", date, usd, jpy)
		for date = date.AddDays(-1); date.DaysUntil(scenario.Date{Year: 2025, Month: 5, Day: 9})%7 > 4; {
			date = date.AddDays(-1)
		}
	}
	f, err := rates.Read([]byte(b.String()))
	if err != nil {
		panic(err)
	}
	return f
}

func past(s scenario.Scenario, days int, span history.Span) *history.History {
	h, err := history.Of(context.Background(), s, nil, wandering(days), span, nil)
	if err != nil {
		panic(err)
	}
	return h
}

// manyAbroad are n offers, in turn at home, in dollars and in yen.
func manyAbroad(n int) scenario.Scenario {
	s := demo()
	models := s.Offers
	s.Offers = nil
	for i := range n {
		o := models[i%3]
		o.Name = longName(i, 40)
		o.Price = o.Price.Mul(decimal.NewFromInt(int64(20 + i))).Div(decimal.NewFromInt(20)).Round(2)
		s.Offers = append(s.Offers, o)
	}
	s.Baseline = s.Offers[0].Name
	return s
}

var historySizes = [][2]float64{{300, 420}, {400, 200}, {600, 130}, {640, 300}, {960, 600}, {2400, 260}}

func TestAHistoryHoldsItsLayout(t *testing.T) {
	histories := map[string]*history.History{"none": nil}
	for _, days := range []int{1, 2, 3, 30, 260, 1300, 6600} {
		histories[fmt.Sprint(days, " days")] = past(demo(), days, history.Span{})
	}
	histories["eight offers"] = past(manyAbroad(8), 1300, history.Span{Years: 3})
	histories["fourteen offers"] = past(manyAbroad(14), 300, history.Span{})
	atHome := demo()
	atHome.Offers = atHome.Offers[:1]
	histories["one offer at home"] = past(atHome, 300, history.Span{})
	for name, h := range histories {
		for _, size := range historySizes {
			for _, s := range []Style{{Theme: palette.Paper, Locale: "en"}, {Theme: palette.Safelight, Locale: "pl"}} {
				d := History(h, demoReel, size[0], size[1], s)
				name := fmt.Sprintf("history of %s, %s, %v", name, s.Theme.Name, size)
				checkLayout(t, name, d)
				checkTwin(t, name, d)
			}
		}
	}
}

func TestAHistorySaysItsFinding(t *testing.T) {
	d := History(past(demo(), 1300, history.Span{Years: 3}), demoReel, 960, 400, english(palette.Paper))
	if got := d.Title(); !strings.HasPrefix(got, "The reel was cheaper than Marigold 400, shop roll on every day of the last 3 years; dearest in ") {
		t.Error(got)
	}
	said := map[string]bool{}
	for _, x := range d.Texts() {
		said[x.Text] = true
	}
	h := past(demo(), 1300, history.Span{Years: 3})
	for _, p := range []history.Point{h.Find(demoReel).High, h.Find(demoReel).Low} {
		day := fmt.Sprintf("%d %s %d: EUR", p.Date.Day, p.Date.Month.String()[:3], p.Date.Year)
		found := false
		for text := range said {
			found = found || strings.HasPrefix(strings.ReplaceAll(text, "\u00a0", " "), day)
		}
		if !found {
			t.Errorf("%s is not marked", day)
		}
	}
	if !said["a roll today"] {
		t.Error("today is not marked")
	}
}

// Every line's every stretch can be read out, and says what the history says of its day.
func TestAHistoryIsReadOut(t *testing.T) {
	h := past(demo(), 260, history.Span{})
	d := History(h, demoReel, 960, 400, english(palette.Paper))
	seen := map[string]int{}
	for _, hit := range d.Hits() {
		seen[hit.Offer]++
		if !strings.HasPrefix(hit.Text, hit.Offer+": ") {
			t.Errorf("%s is read out as %q", hit.Offer, hit.Text)
		}
	}
	for i := range h.Offers {
		if seen[h.Offers[i].Name] < 100 {
			t.Errorf("%s: %d regions", h.Offers[i].Name, seen[h.Offers[i].Name])
		}
	}
	if rows := len(d.Table().Rows); rows != 7+13 {
		t.Errorf("%d rows: seven facts and the last day of thirteen months", rows)
	}
}

func besides(t testing.TB, currency string, f *rates.File) []sidebyside.Entry {
	t.Helper()
	var list []sidebyside.Entry
	for i, s := range []scenario.Scenario{demo(), manyAbroad(6), manyOffers(4, 50, "JPY"), demo(), demo()} {
		s.Name = fmt.Sprintf("%s, number %d", s.Name, i+1)
		switch i {
		case 3:
			s.Offers = s.Offers[:2] // boxed alone
		case 4:
			s.Offers[2].Price = decimal.NewFromInt(900) // boxed is cheaper
		}
		c := compare.Compare(s, nil, scenario.Date{})
		e, err := sidebyside.Of(context.Background(), &c, nil, currency, f)
		if err != nil {
			t.Fatal(err)
		}
		e.File = "a.toml"
		list = append(list, e)
	}
	return append(list, sidebyside.Entry{File: "nowhere.toml", Fault: "there is no such file"})
}

func TestScenariosSideBySideHoldTheirLayout(t *testing.T) {
	lists := map[string][]sidebyside.Entry{
		"in one currency": besides(t, "EUR", wandering(3)), "without a way": besides(t, "EUR", nil), "in percent": besides(t, "", nil),
		"at one home": besides(t, "", nil)[:2], "nothing": nil,
	}
	for i := 0; i < 4; i++ {
		lists["many"] = append(lists["many"], lists["in one currency"]...)
	}
	for name, list := range lists {
		for _, size := range historySizes {
			for _, s := range []Style{{Theme: palette.Paper, Locale: "en"}, {Theme: palette.Safelight, Locale: "pl"}} {
				d := SideBySide(list, size[0], size[1], s)
				name := fmt.Sprintf("%s, %s, %v", name, s.Theme.Name, size)
				checkLayout(t, name, d)
				checkTwin(t, name, d)
			}
		}
	}
}

func TestExportsOfTheNewFigures(t *testing.T) {
	for _, e := range []Export{
		{Figure: FigureHistory, History: past(demo(), 1300, history.Span{Years: 3}), Chosen: demoReel},
		{Figure: FigureHistory},
		{Figure: FigureSideBySide, Scenarios: besides(t, "EUR", wandering(3))},
		{Figure: FigureSideBySide},
	} {
		e.Style = english(palette.Paper)
		d, err := e.Drawing()
		if err != nil {
			t.Fatal(err)
		}
		checkLayout(t, "export of "+e.Figure, d)
		informs := false
		for _, x := range d.Texts() {
			informs = informs || strings.Contains(x.Text, "published for information only")
		}
		if used := e.History != nil || e.Scenarios != nil; used != informs {
			t.Errorf("%s: says what published rates are: %v", e.Figure, informs)
		}
	}
}
