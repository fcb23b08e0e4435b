package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
)

func TestEverythingFollowsTyping(t *testing.T) {
	h := open(t)
	was := h.View().Headline
	h.mustType(t, "offer[3].price", "250")
	h.pipeline.worker.Idle()
	h.drain()
	s := demo()
	s.Offers[2].Price = decimalOf("250")
	_, _, totals := want(s)
	v := h.View()
	if v.Offers[2].PerRoll != totals[2] {
		t.Errorf("the cost is %s, the engine says %s", v.Offers[2].PerRoll, totals[2])
	}
	if v.Headline != was {
		t.Error("the headline changed before the typing had ended")
	}
	h.Settle()
	h.agrees(t, s)
	if v := h.View(); !strings.Contains(v.State, "unsaved") || !strings.HasPrefix(v.Title, "●") {
		t.Error("not marked as unsaved:", v.State, v.Title)
	}
}

// What is typed on the way to a number must leave no trace: the pattern of the months
// would be lost if "5" were spread before "50".
func TestTypingOnTheWayLeavesNoTrace(t *testing.T) {
	h := open(t)
	h.Topic("shooting", 2)
	for _, text := range []string{"", "0", "5", "50", "508", "50"} {
		h.mustType(t, "shooting.rolls_a_year", text)
		h.Settle()
	}
	s := demo()
	var err error
	if s.Shooting, err = s.Shooting.Spread(decimalOf("50")); err != nil {
		t.Fatal(err)
	}
	h.agrees(t, s)
	if got := h.field(t, "shooting.rolls_per_month[6]").Text; got != s.Shooting.RollsPerMonth[5].String() {
		t.Errorf("June has %s rolls, want %s", got, s.Shooting.RollsPerMonth[5])
	}
}

func TestWhatCannotBeReadIsHeldBesideTheLastGoodAnswer(t *testing.T) {
	h := open(t)
	for key, text := range map[string]string{"offer[3].shipping": "34..5", "offer[3].discount_percent": "140", "offer[3].units": "1.5"} {
		h.mustType(t, key, text)
		h.Settle()
		f := h.field(t, key)
		if !f.Faulty || f.Text != text || !strings.HasPrefix(f.Beside, "✗") {
			t.Errorf("%s: %+v", key, f)
		}
	}
	h.agrees(t, demo())
	for _, name := range []string{"shipping", "discount", "order"} {
		if !strings.Contains(h.View().Status, name) {
			t.Errorf("the status does not name %s: %s", name, h.View().Status)
		}
	}
	h.mustType(t, "offer[3].shipping", "30")
	h.mustType(t, "offer[3].discount_percent", "5")
	h.mustType(t, "offer[3].units", "1")
	h.Settle()
	if v := h.View(); v.Status != "" {
		t.Error("all is mended, but:", v.Status)
	}
	s := demo()
	s.Offers[2].Shipping = decimalOf("30")
	h.agrees(t, s)
}

func TestUndoNamesAndTakesBackOneFieldAtATime(t *testing.T) {
	h := open(t)
	for _, text := range []string{"1", "12", "120"} {
		h.mustType(t, "offer[3].price", text)
	}
	h.mustType(t, "offer[3].shipping", "40")
	h.Settle()
	h.Window().Canvas().Unfocus()
	if plain(h.menu.undo.Label) != "Undo shipping of Lanternlight 500, 100 ft reel" {
		t.Error(h.menu.undo.Label)
	}
	h.undo()
	h.undo()
	h.Settle()
	h.agrees(t, demo())
	if v := h.View(); strings.Contains(v.State, "unsaved") || h.field(t, "offer[3].price").Text != "118.00" {
		t.Error("undone to the start, but", v.State, h.field(t, "offer[3].price").Text)
	}
	h.redo()
	h.Settle()
	s := demo()
	s.Offers[2].Price = decimalOf("120")
	h.agrees(t, s)
}

func TestNudgingAndKeys(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "118.00")
	box := h.Window().Canvas().Focused().(*kit.Entry)
	box.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	h.Settle()
	s := demo()
	s.Offers[2].Price = decimalOf("119.00")
	h.agrees(t, s)
	if box.Text != "119.00" || box.SelectedText() != "119.00" {
		t.Error(box.Text, box.SelectedText())
	}
}

func TestNumbersOfAnotherCountry(t *testing.T) {
	h := open(t)
	h.setNumbers("de")
	h.Settle()
	if got := h.field(t, "offer[3].price").Text; got != "118,00" {
		t.Error("the price is shown as", got)
	}
	h.mustType(t, "offer[3].price", "1.234,50")
	h.Settle()
	if got := h.session.Current().Offers[2].Price.String(); got != "1234.5" {
		t.Error("1.234,50 is read as", got)
	}
	h.mustType(t, "offer[3].price", "1.234")
	h.Settle()
	f := h.form.Fields()[0]
	if got := h.session.Current().Offers[2].Price.String(); got == "1.234" || len(f.Row.Answers) != 2 {
		t.Fatalf("1.234 is read as %s, %d answers are offered", got, len(f.Row.Answers))
	}
	if !strings.Contains(h.View().Status, "price") {
		t.Error("not marked:", h.View().Status)
	}
	f.Row.Answers[1].Do()
	h.Settle()
	if got := h.session.Current().Offers[2].Price.String(); got != "1.234" && got != "1234" || f.Problem != "" {
		t.Error("answered, but", got, f.Problem)
	}
	h.setNumbers("en")
}

// Every letter may lay the form out anew; the letters must add up all the same.
func TestLettersFindACurrency(t *testing.T) {
	h := open(t)
	h.reach(t, where{session.Selection{Topic: session.TopicOffer, Offer: 2}, "offer[3].currency"})
	for _, r := range "sek" {
		h.Window().Canvas().Focused().TypedRune(r)
		h.Settle()
	}
	if got := h.session.Current().Offers[2].Currency; got != "SEK" {
		t.Error("sek finds", got)
	}
}
