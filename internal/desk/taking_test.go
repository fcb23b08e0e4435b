package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/driver/desktop"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
)

// typeRunes types into the field that has the focus, key by key.
func (h *Harness) typeRunes(t *testing.T, text string) {
	t.Helper()
	for _, r := range text {
		f := h.Window().Canvas().Focused()
		if f == nil {
			t.Fatalf("the focus was lost before %q", r)
		}
		f.TypedRune(r)
	}
	h.Settle()
}

func TestACurrencyTypedWithAPriceIsTaken(t *testing.T) {
	h := open(t)
	h.form.GoTo("offer[3].price")
	h.typeRunes(t, "CAD 110")
	o := h.session.Current().Offers[2]
	if o.Currency != "CAD" || o.Price.String() != "110" {
		t.Fatalf("%s %s", o.Currency, o.Price)
	}
	f := h.field(t, "offer[3].price")
	if f.Text != "CAD 110" || f.Beside != "taken in CAD" || !f.Focused {
		t.Errorf("%+v", f)
	}
	if got := h.field(t, "offer[3].currency").Text; got != "CAD" {
		t.Error("the currency shown is", got)
	}
	h.field(t, "rate[3].equals") // is asked for
	h.Window().Canvas().FocusNext()
	h.Settle()
	if f := h.field(t, "offer[3].price"); f.Text != "110" || f.Beside == "taken in CAD" {
		t.Errorf("left: %+v", f)
	}
	if plain(h.menu.undo.Label) != "Undo price and currency of Lanternlight 500, 100 ft reel" {
		t.Error(h.menu.undo.Label)
	}
	h.undo()
	h.Settle()
	h.agrees(t, demo())
	if h.session.Draft.Modified() {
		t.Error("it took more than one step to undo")
	}
}

// The currency goes again with the letters that brought it.
func TestATypedCurrencyGoesWithItsLetters(t *testing.T) {
	h := open(t)
	h.form.GoTo("offer[3].price")
	h.typeRunes(t, "48 JPY")
	if got := h.session.Current().Offers[2].Currency; got != "JPY" {
		t.Error("48 JPY is in", got)
	}
	h.mustType(t, "offer[3].price", "48")
	h.Settle()
	if o := h.session.Current().Offers[2]; o.Currency != "USD" || o.Price.String() != "48" {
		t.Error(o.Currency, o.Price)
	}
	h.mustType(t, "offer[3].price", "48 €")
	h.Settle()
	if o := h.session.Current().Offers[2]; o.Currency != "EUR" {
		t.Error("48 € is in", o.Currency)
	}
}

// Which number is meant is asked, and what it is in is not forgotten over it.
func TestAnUnclearAmountKeepsItsCurrency(t *testing.T) {
	h := open(t)
	h.form.GoTo("offer[3].price")
	h.typeRunes(t, "KWD 1,234")
	answers := h.answers("offer[3].price")
	if len(answers) != 2 {
		t.Fatal(len(answers), "answers")
	}
	answers[0].Do()
	h.Settle()
	if o := h.session.Current().Offers[2]; o.Currency != "KWD" || h.field(t, "offer[3].price").Faulty {
		t.Error(o.Currency, o.Price)
	}
}

func TestALengthTakesItsUnit(t *testing.T) {
	h := open(t)
	for _, c := range []struct{ text, length, unit string }{
		{"30.5 m", "30.5", "m"}, {"30.5m", "30.5", "m"}, {"100 ft", "100", "ft"}, {"100'", "100", "ft"},
		{"122 metres", "122", "m"}, {"400 feet", "400", "ft"}, {"50", "50", "ft"},
	} {
		h.form.GoTo("offer[3].reel.length")
		h.mustType(t, "offer[3].reel.length", c.text)
		h.Settle()
		r := h.session.Current().Offers[2].Reel
		if r.Length.String() != c.length || string(r.LengthUnit) != c.unit {
			t.Errorf("%s is taken as %s %s", c.text, r.Length, r.LengthUnit)
		}
		if got := h.field(t, "offer[3].reel.length_unit").Text; got != c.unit {
			t.Errorf("%s: the unit shown is %s", c.text, got)
		}
	}
	h.setNumbers("de")
	h.mustType(t, "offer[3].reel.length", "30.5 m")
	h.Settle()
	answers := h.answers("offer[3].reel.length")
	if len(answers) == 0 {
		t.Fatal("what 30.5 means in German is not asked")
	}
	answers[0].Do()
	h.Settle()
	if r := h.session.Current().Offers[2].Reel; r.LengthUnit != "m" || r.Length.String() != "30.5" {
		t.Error("answered, it is", r.Length, r.LengthUnit)
	}
	h.setNumbers("en")
}

func TestSharesAndUnitsAreRead(t *testing.T) {
	h := open(t)
	for _, c := range []struct{ key, text, shown, beside string }{
		{"offer[3].reel.spoiled_percent", "3 of 10", "30", "30 %"},
		{"offer[3].reel.spoiled_percent", "1/3", "33.3333", "33.3333 %"},
		{"offer[3].reel.spoiled_percent", "4 %", "4", ""},
		{"offer[3].discount_percent", "5%", "5", ""},
		{"offer[3].keeps_months", "24 months", "24", ""},
		{"offer[3].keeps_months", "1 month", "1", ""},
	} {
		h.mustType(t, c.key, c.text)
		h.Settle()
		if f := h.field(t, c.key); f.Faulty || c.beside != "" && f.Beside != c.beside {
			t.Errorf("%s: %+v", c.text, f)
		}
		h.Window().Canvas().Unfocus()
		if f := h.field(t, c.key); f.Text != c.shown {
			t.Errorf("%s is shown as %s", c.text, f.Text)
		}
	}
	for _, bad := range []string{"3 of 0", "11 of 10", "of 10"} {
		h.mustType(t, "offer[3].reel.spoiled_percent", bad)
		h.Settle()
		if !h.field(t, "offer[3].reel.spoiled_percent").Faulty {
			t.Error(bad, "was taken")
		}
	}
}

func TestReadShare(t *testing.T) {
	for text, want := range map[string]string{"3 of 10": "30", " 1 OUT OF 8 ": "12.5", "2/3": "66.6667", "0 of 5": "0"} {
		if got, ok := form.ReadShare(text); !ok || got.String() != want {
			t.Errorf("%q is %s, %v", text, got, ok)
		}
	}
	for _, text := range []string{"", "3", "3 of", "-3 of 10", "3.5 of 10", "1 of 0"} {
		if got, ok := form.ReadShare(text); ok {
			t.Errorf("%q is %s", text, got)
		}
	}
}

func TestACountIsNoAmountOfMoney(t *testing.T) {
	h := open(t)
	for _, key := range []string{"offer[3].units", "offer[3].discount_percent", "offer[3].reel.exposures"} {
		h.mustType(t, key, "3 €")
		h.Settle()
		if f := h.field(t, key); !f.Faulty || !strings.Contains(f.Beside, "money") {
			t.Errorf("%s took 3 €: %+v", key, f)
		}
	}
	h.mustType(t, "rate[1].equals", "0.9 USD")
	h.Settle()
	if !h.field(t, "rate[1].equals").Faulty {
		t.Error("1 USD is 0.9 USD")
	}
}

// A year that was tried out and put back has the same months again.
func TestTheYearsFigureBringsTheMonthsBack(t *testing.T) {
	h := open(t)
	h.Topic("shooting", 2)
	for _, text := range []string{"48", "5", "48"} {
		h.mustType(t, "shooting.rolls_a_year", text)
		h.Window().Canvas().Unfocus() // each a step of its own
		h.Settle()
	}
	s := demo()
	var err error
	if s.Shooting, err = s.Shooting.Spread(decimalOf("48")); err != nil {
		t.Fatal(err)
	}
	h.agrees(t, s)
	for m, r := range h.session.Current().Shooting.RollsPerMonth {
		if !r.IsInteger() || !r.Equal(s.Shooting.RollsPerMonth[m]) {
			t.Errorf("month %d has %s rolls, want %s", m+1, r, s.Shooting.RollsPerMonth[m])
		}
	}
	h.mustType(t, "shooting.rolls_a_year", "43")
	h.Window().Canvas().Unfocus()
	h.Settle()
	h.agrees(t, demo())
	if got := h.field(t, "shooting.rolls_a_year").Text; got != "43" {
		t.Error("shown as", got)
	}
}

// A click beside the text of the field that is being typed in, as the toolkit does it.
func TestClickingIntoTheFieldAgainKeepsWhatIsTyped(t *testing.T) {
	h := open(t)
	h.form.GoTo("offer[3].price")
	h.typeRunes(t, "30.")
	for _, f := range h.form.Fields() {
		if box, ok := f.Input.(*kit.TextBox); ok && f.Key == "offer[3].price" {
			box.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary})
			h.Window().Canvas().Unfocus()
			box.MouseUp(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary})
			box.Tapped(nil)
		}
	}
	h.typeRunes(t, "5")
	if got := h.session.Current().Offers[2].Price.String(); got != "30.5" {
		t.Error("the price is", got)
	}
	h.undo()
	h.Settle()
	h.agrees(t, demo())
}
