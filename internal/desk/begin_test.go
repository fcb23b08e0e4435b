package desk

import (
	"strings"
	"testing"

	"reelworth/internal/catalogue"
	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

// A scenario from nothing says nothing that nobody typed.
func TestNewBeginsWithoutAFigure(t *testing.T) {
	h := open(t)
	h.begin()
	h.Settle()
	v := h.View()
	if strings.ContainsAny(v.Headline+v.Under, "0123456789") || v.Form != "New scenario" {
		t.Errorf("%q %q, form %q", v.Headline, v.Under, v.Form)
	}
	for _, o := range v.Offers {
		if o.PerRoll != "–" {
			t.Errorf("%s costs %s a roll", o.Name, o.PerRoll)
		}
	}
	if h.pipeline.shown.Comparison.Verdict.Pair != nil {
		t.Error("something is compared")
	}
	if home := h.field(t, "home"); !home.Focused || home.Text != "EUR" {
		t.Errorf("home is not asked first: %+v", home)
	}
	if v.Status != "" {
		t.Errorf("left out: %q", v.Status)
	}
	for _, f := range v.Fields {
		if f.Faulty {
			t.Errorf("a fault before anything was typed: %+v", f)
		}
	}
}

// entries counts what a person enters to get an answer, each field or choice once.
type entries struct {
	*Harness
	t *testing.T
	n int
}

func (e *entries) choose(key, value string) { e.pick(e.t, key, value); e.n++ }
func (e *entries) enter(key, text string) {
	e.t.Helper()
	if x, _ := e.Where(key); x < 0 {
		e.t.Fatalf("%s is not on the screen", key)
	}
	e.mustType(e.t, key, text)
	e.Settle()
	e.n++
}

func TestTwoPricesAndARateGiveTheAnswer(t *testing.T) {
	h := open(t)
	h.begin()
	h.Settle()
	e := &entries{Harness: h, t: t}
	e.choose("home", "AUD")
	e.enter(catalogue.RollsAMonth, "2")
	e.enter("offer[1].price", "15.90")
	if v := h.View(); !strings.Contains(strings.ReplaceAll(v.Headline, "\u00a0", " "), "AUD 15.90 a roll") {
		t.Error("what can be computed is not:", v.Headline)
	}
	e.enter("offer[2].price", "USD 110")
	e.enter("rate[1].equals", "1.52")
	e.enter("offer[2].shipping", "28")
	if e.n > 12 {
		t.Error(e.n, "entries")
	}
	s := scenario.New("New scenario", "AUD", scenario.Month{Year: noon.Year(), Month: noon.Month()})
	s.Shooting = s.Shooting.Evenly(decimalOf("2"))
	s.Offers[0].Price, s.Offers[1].Price, s.Offers[1].Shipping, s.Offers[1].Currency = decimalOf("15.90"), decimalOf("110"), decimalOf("28"), "USD"
	s.Rates = []scenario.Rate{{One: "USD", Equals: decimalOf("1.52"), In: "AUD", Date: scenario.DateOf(noon), Source: "typed"}}
	h.agrees(t, s)
	if v := h.pipeline.shown.Comparison.Verdict; v.Pair == nil || v.Kind == compare.VerdictOneSided {
		t.Error("no answer but", v.Kind)
	}
	if v := h.View(); v.Status != "" {
		t.Error(v.Status)
	}
}

// Offers follow home while they have no price, and stay where they are once they have.
func TestHomeMovesOffersWithoutAPrice(t *testing.T) {
	h := open(t)
	h.begin()
	h.Settle()
	h.mustType(t, "offer[1].price", "12")
	h.Settle()
	h.pick(t, "home", "SEK")
	s := h.session.Current()
	if s.Offers[0].Currency != "EUR" || s.Offers[1].Currency != "SEK" {
		t.Error(s.Offers[0].Currency, s.Offers[1].Currency)
	}
	h.undo()
	h.Settle()
	if s := h.session.Current(); s.Home != "EUR" || s.Offers[1].Currency != "EUR" {
		t.Error("undone:", s.Home, s.Offers[1].Currency)
	}
}

func TestAnAddedOfferAsksForItsPrice(t *testing.T) {
	h := open(t)
	h.addOffer(scenario.KindBoxed)
	h.Settle()
	f := h.field(t, "offer[4].price")
	if f.Text != "" || !f.Focused || f.Faulty || f.Beside != "type the price" {
		t.Errorf("%+v", f)
	}
	if v := h.View(); !strings.Contains(v.Status, "no price yet") || v.Offers[3].PerRoll != "–" {
		t.Error(v.Status)
	}
	h.mustType(t, "offer[4].price", "0")
	h.Settle()
	if f := h.field(t, "offer[4].price"); !f.Faulty {
		t.Errorf("a price of 0: %+v", f)
	}
	h.mustType(t, "offer[4].price", "13")
	h.Settle()
	if v := h.View(); v.Status != "" || v.Offers[3].PerRoll == "–" {
		t.Errorf("%+v", v.Offers[3])
	}
}

// A length in the name goes with the length, at each key, and comes back with it.
func TestTheNameFollowsTheLengthTyped(t *testing.T) {
	h := open(t)
	was := h.session.Current()
	for _, c := range [][2]string{{"50", "Lanternlight 500, 50 ft reel"}, {"30.5 m", "Lanternlight 500, 30.5 m reel"}} {
		text, want := c[0], c[1]
		h.mustType(t, "offer[3].reel.length", text)
		h.Settle()
		if v := h.View(); v.Offers[2].Name != want || v.Form != want {
			t.Errorf("%s: %q, form %q", text, v.Offers[2].Name, v.Form)
		}
	}
	h.Window().Canvas().Unfocus()
	h.undo()
	h.Settle()
	h.agrees(t, was)
}

func TestRollsAMonthAndASeason(t *testing.T) {
	h := open(t)
	h.Topic("shooting", 2)
	if f := h.field(t, catalogue.RollsAMonth); f.Text != "" || f.Beside != "the same in each" {
		t.Errorf("%+v", f) // the demo's months differ
	}
	h.mustType(t, catalogue.RollsAMonth, "3")
	h.Settle()
	if got := h.field(t, catalogue.RollsAYear).Text; got != "36" {
		t.Error(got, "rolls a year")
	}
	h.pick(t, catalogue.SeasonFrom, "4")
	h.pick(t, catalogue.SeasonUntil, "9")
	if got := h.field(t, catalogue.RollsAYear).Text; got != "18" {
		t.Error(got, "rolls a year from April until September")
	}
	for m, r := range h.session.Current().Shooting.RollsPerMonth {
		if inside := m >= 3 && m <= 8; inside != !r.IsZero() {
			t.Errorf("month %d has %s rolls", m+1, r)
		}
	}
	h.mustType(t, "first_month", "2027-06")
	h.Settle()
	h.pick(t, catalogue.SeasonFrom, "10")
	h.pick(t, catalogue.SeasonUntil, "3")
	s := h.session.Current()
	for m, r := range s.Shooting.RollsPerMonth {
		month := int(s.FirstMonth.Add(m).Month)
		if inside := month >= 10 || month <= 3; inside != !r.IsZero() {
			t.Errorf("%s has %s rolls", s.FirstMonth.Add(m).Month, r)
		}
	}
}

func TestOneDevelopingForAll(t *testing.T) {
	h := open(t)
	was := h.session.Current()
	h.Topic("offer", 2)
	h.click(t, "Use this developing for all")
	for _, o := range h.session.Current().Offers {
		if o.Developing != was.Offers[2].Developing {
			t.Error(o.Name, "is developed", o.Developing)
		}
	}
	h.undo()
	h.Settle()
	h.agrees(t, was)
}

// What is asked first stands in the other forms too, and undo finds it in the one that is
// open.
func TestTheFirstQuestionsAreFoundAgain(t *testing.T) {
	h := open(t)
	h.begin()
	h.Settle()
	h.mustType(t, "offer[2].price", "96.50")
	h.Window().Canvas().Unfocus()
	h.undo()
	h.Settle()
	if v := h.View(); v.Form != "New scenario" || !h.field(t, "offer[2].price").Focused {
		t.Error(v.Form)
	}
	h.redo()
	h.choose(session.Selection{Topic: session.TopicOffer, Offer: 1})
	h.Settle()
	if f := h.field(t, "offer[2].price"); f.Text != "96.50" {
		t.Errorf("%+v", f)
	}
	if _, ok := h.form.First().(*kit.Entry); !ok {
		t.Error("the form has no first field")
	}
}
