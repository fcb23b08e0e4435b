package desk

import (
	"strings"
	"testing"

	"reelworth/internal/desk/form"
	"reelworth/internal/scenario"
)

func TestImportChoiceAndQuote(t *testing.T) {
	h := open(t)
	h.pick(t, "offer[3].import", "none")
	s := demo()
	s.Offers[2].Import = scenario.ImportNone
	h.agrees(t, s)
	h.mustType(t, "rate[1].equals", "1.05")
	h.Settle()
	s.Rates[0].Equals = decimalOf("1.05")
	h.agrees(t, s)
	if got := h.session.Current().Rates[0].Date; got != scenario.DateOf(noon) {
		t.Error("a quote typed today is dated", got)
	}
}

func TestANewCurrencyAsksForItsQuote(t *testing.T) {
	h := open(t)
	h.pick(t, "offer[3].currency", "CAD")
	if v := h.View(); v.Offers[2].PerRoll != "–" || !strings.Contains(v.Status, "CAD") {
		t.Errorf("%+v %q", v.Offers[2], v.Status)
	}
	if f := h.field(t, "rate[3].equals"); f.Text != "" || f.Label != "1 CAD is" {
		t.Errorf("%+v", f)
	}
	for _, text := range []string{"0", "0.", "0.6", "0.64"} {
		h.mustType(t, "rate[3].equals", text)
	}
	h.Settle()
	s := demo()
	s.Offers[2].Currency = "CAD"
	s.Rates = append(s.Rates, scenario.Rate{One: "CAD", Equals: decimalOf("0.64"), In: "EUR", Date: scenario.DateOf(noon), Source: form.TypedByHand})
	h.agrees(t, s)
	if got := len(h.session.Current().Rates); got != 3 {
		t.Error(got, "quotes")
	}
}

// A price takes the currency it is written with; what is sent along with it does not make
// the price another, so it is asked.
func TestAPastedCurrencyIsTakenOrOffered(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "118,00 €")
	h.Settle()
	if o := h.session.Current().Offers[2]; o.Currency != "EUR" || o.Price.String() != "118" {
		t.Error("not taken:", o.Currency, o.Price)
	}
	h.mustType(t, "offer[3].shipping", "US$20")
	h.Settle()
	answers := h.answers("offer[3].shipping")
	if len(answers) != 1 || answers[0].Label.String() != "in USD?" {
		t.Fatalf("%d answers", len(answers))
	}
	answers[0].Do()
	h.Settle()
	if o := h.session.Current().Offers[2]; o.Currency != "USD" {
		t.Error("still in", o.Currency)
	}
	h.Topic("border", 2)
	h.mustType(t, "border.handling_fee", "¥500")
	h.Settle()
	if f := h.field(t, "border.handling_fee"); !f.Faulty || !strings.Contains(f.Beside, "EUR") {
		t.Errorf("%+v", f)
	}
}
