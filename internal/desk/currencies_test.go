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

func TestAPastedCurrencyIsOffered(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "118,00 €")
	h.Settle()
	f := h.form.Fields()[0]
	if len(f.Row.Answers) != 1 || f.Row.Answers[0].Label.String() != "in EUR?" || h.session.Current().Offers[2].Price.String() != "118" {
		t.Fatalf("%d answers, price %s", len(f.Row.Answers), h.session.Current().Offers[2].Price)
	}
	f.Row.Answers[0].Do()
	h.Settle()
	if o := h.session.Current().Offers[2]; o.Currency != "EUR" {
		t.Error("still in", o.Currency)
	}
	h.Topic("border", 2)
	h.mustType(t, "border.handling_fee", "¥500")
	h.Settle()
	if f := h.field(t, "border.handling_fee"); !f.Faulty || !strings.Contains(f.Beside, "EUR") {
		t.Errorf("%+v", f)
	}
}
