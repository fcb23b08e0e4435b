package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"
	"github.com/shopspring/decimal"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

// click does what a link on the screen does.
func (h *Harness) click(t *testing.T, label string) {
	t.Helper()
	for _, o := range test.LaidOutObjects(h.Window().Content()) {
		if l, ok := o.(*kit.Link); ok && l.Visible() && strings.HasPrefix(l.Label.String(), label) {
			l.Do()
			h.Settle()
			return
		}
	}
	t.Fatalf("there is no link %q", label)
}

func (h *Harness) answers(key string) []*kit.Link {
	for _, f := range h.form.Fields() {
		if f.Key == key {
			return f.Row.Answers
		}
	}
	return nil
}

func TestTurningARateRoundKeepsWhatItMeans(t *testing.T) {
	h := open(t)
	h.Topic("rates", 2)
	was := h.View()
	h.click(t, "Turn round: 1 EUR in USD")
	r := h.session.Current().Rates[0]
	if r.One != "EUR" || r.In != "USD" || r.Equals.String() != "1.12676056338" || r.Source != "typed" || r.Date.String() != "2026-11-20" {
		t.Errorf("%+v", r)
	}
	if v := h.View(); v.Headline != was.Headline || v.Offers[2].PerRoll != was.Offers[2].PerRoll {
		t.Error("turned round, the answer is another:", v.Headline, v.Offers)
	}
	h.click(t, "Turn round: 1 USD in EUR")
	if r := h.session.Current().Rates[0]; !r.Equals.Equal(demo().Rates[0].Equals) || r.One != "USD" {
		t.Errorf("turned round twice: %+v", r)
	}
}

func TestARangeTurnsRoundWithItsRate(t *testing.T) {
	h := open(t)
	d := decimal.RequireFromString
	kept := scenario.Range{Input: scenario.RateInput(demo().Rates[0]), Low: d("0.8"), High: d("0.95")}
	h.session.SetRange(kept)
	h.Settle()
	h.Topic("rates", 2)
	h.click(t, "Turn round: 1 EUR in USD")
	if g := h.session.Current().Ranges; len(g) != 1 || g[0].Input != "rate:EUR/USD" || g[0].High.String() != "1.25" {
		t.Errorf("%+v", g)
	}
	h.click(t, "Turn round: 1 USD in EUR")
	if g := h.session.Current().Ranges; len(g) != 1 || g[0].Input != kept.Input || !g[0].Low.Equal(kept.Low) || !g[0].High.Equal(kept.High) {
		t.Errorf("twice: %+v", g)
	}
}

func TestChoosingTheSameCurrencyTwiceProposesTheSwap(t *testing.T) {
	h := open(t)
	h.Topic("rates", 2)
	h.pick(t, "rate[1].one", "EUR")
	answers := h.answers("rate[1].one")
	if len(answers) != 1 || answers[0].Label.String() != "swap the two?" {
		t.Fatal("the swap is not proposed")
	}
	h.agrees(t, demo())
	answers[0].Do()
	h.Settle()
	if r := h.session.Current().Rates[0]; r.One != "EUR" || r.In != "USD" {
		t.Errorf("%+v", r)
	}
	h.undo()
	h.Settle()
	h.agrees(t, demo())
}

func TestARateIsAddedWhereItIsAskedFor(t *testing.T) {
	for name, way := range map[string]func(h *Harness){
		"beside the currency": func(h *Harness) { h.answers("offer[3].price")[0].Do() },
		"in the left-out line": func(h *Harness) {
			h.Topic("shooting", 2)
			h.click(t, "Add the rate")
		},
		"in the rates' form": func(h *Harness) { h.Topic("rates", 2); h.form.GoTo("rate[3].equals") },
	} {
		h := open(t)
		h.pick(t, "offer[3].currency", "CAD")
		way(h)
		box, ok := h.Window().Canvas().Focused().(*kit.Entry)
		if !ok || !h.field(t, "rate[3].equals").Focused {
			t.Fatalf("%s: the focus is not in the rate's field", name)
		}
		box.SetText("0.64")
		h.Settle()
		s := h.session.Current()
		if len(s.Rates) != 3 || s.Rates[2].One != "CAD" || s.Rates[2].In != "EUR" {
			t.Errorf("%s: %+v", name, s.Rates)
		}
		if v := h.View(); v.Status != "" || v.Offers[2].PerRoll == "–" {
			t.Errorf("%s: %+v", name, v)
		}
		if len(h.answers("offer[3].price")) > 0 || h.answer.Mend.Visible() {
			t.Errorf("%s: it is still asked for", name)
		}
	}
}

func TestTwoMissingRatesDoNotTakeEachOthersPlace(t *testing.T) {
	h := open(t)
	h.pick(t, "offer[3].currency", "CAD")
	h.Topic("offer", 1)
	h.pick(t, "offer[2].currency", "SEK")
	h.Topic("rates", 1)
	h.mustType(t, "rate[4].equals", "0.64")         // of CAD, asked for second
	h.mustType(t, "rate[3].equals of EUR", "10.99") // of SEK, the other way round
	h.Settle()
	s := h.session.Current()
	if len(s.Rates) != 4 || s.Rates[2].One != "CAD" || s.Rates[3].One != "EUR" || s.Rates[3].In != "SEK" {
		t.Errorf("%+v", s.Rates)
	}
	if v := h.View(); v.Status != "" {
		t.Error(v.Status)
	}
}

func TestARateOfAnyCurrencyCanBeAdded(t *testing.T) {
	h := open(t)
	h.Topic("rates", 2)
	h.pick(t, "rate[3].one", "NOK")
	h.mustType(t, "rate[3].equals", "0.085")
	h.Settle()
	if r := h.session.Current().Rates; len(r) != 3 || r[2].One != "NOK" || r[2].In != "EUR" || r[2].Equals.String() != "0.085" {
		t.Errorf("%+v", r)
	}
}

// Undoing inside the field must not forget what is to be made again.
func TestRedoBringsBackANewRate(t *testing.T) {
	h := open(t)
	h.pick(t, "offer[3].currency", "CAD")
	for _, text := range []string{"0", "0.", "0.6", "0.64"} {
		h.mustType(t, "rate[3].equals", text)
	}
	h.Settle()
	h.undo()
	h.Settle()
	if n := len(h.session.Current().Rates); n != 2 || h.field(t, "rate[3].equals").Text != "" {
		t.Errorf("undone, but %d rates, %+v", n, h.field(t, "rate[3].equals"))
	}
	h.redo()
	h.Settle()
	if r := h.session.Current().Rates; len(r) != 3 || r[2].Equals.String() != "0.64" {
		t.Errorf("%+v", r)
	}
	if !h.field(t, "rate[3].equals").Focused {
		t.Error("the rate is back, but not looked at")
	}
}

func TestUndoShowsWhereItActed(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].shipping", "40")
	h.Topic("border", 2)
	h.mustType(t, "border.handling_fee", "7")
	h.Topic("offer", 0)
	h.unfoldAll()
	h.mustType(t, "offer[1].on_hand", "2") // under a fold
	h.Topic("loading", 0)
	h.change(func(s *session.Session) { s.AddOffer(scenario.KindReel) })
	h.Topic("shooting", 0)
	h.Settle()
	for _, want := range []struct {
		form, field string
	}{
		{"Lanternlight 500, 100 ft reel", ""}, // the last one left
		{"Marigold 400, shop roll", "offer[1].on_hand"},
		{"At the border", "border.handling_fee"},
		{"Lanternlight 500, 100 ft reel", "offer[3].shipping"},
	} {
		h.undo()
		h.Settle()
		v := h.View()
		if v.Form != want.form {
			t.Errorf("undone in %q, want %q", v.Form, want.form)
		}
		if want.field != "" {
			if x, _ := h.Where(want.field); !h.field(t, want.field).Focused || x < 0 {
				t.Errorf("undone, but %s is not entered", want.field)
			}
		}
	}
	h.Topic("shooting", 0)
	h.redo()
	h.Settle()
	if !h.field(t, "offer[3].shipping").Focused {
		t.Error("redone, but shipping is not entered")
	}
}

func TestWhatIsWrongIsALinkAway(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].shipping", "34..5")
	h.Window().Canvas().Unfocus()
	h.Settle()
	h.click(t, "Show it")
	if !h.field(t, "offer[3].shipping").Focused {
		t.Error("not entered")
	}
}
