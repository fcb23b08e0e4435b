package desk

import (
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// inDollars is what the engine says of the demo in its dollars: 1 USD = 0.8875 EUR.
func inDollars(s scenario.Scenario) *compare.Comparison {
	c := compare.Compare(s, scenario.Check(s), scenario.DateOf(noon))
	return c.In("USD", exact.Ratio(10_000, 8_875))
}

func TestFiguresAreShownInAnotherCurrency(t *testing.T) {
	h := open(t)
	h.asker.AskShowIn()
	h.win.Canvas().Focused().(*kit.Picker).Choose("USD")
	h.press(t, words.ShowInDo)
	h.Settle()
	c := inDollars(demo())
	v := h.View()
	if want := words.Verdict(c, "en").Text; v.Headline != want {
		t.Errorf("%q, want %q", v.Headline, want)
	}
	for i, o := range v.Offers {
		if want := money.English.Number(c.Offers[i].PerRoll.Total, 2); o.PerRoll != want {
			t.Errorf("%s: %s, want %s", o.Name, o.PerRoll, want)
		}
	}
	for _, text := range []string{v.Status, v.State, v.Headline} {
		if !strings.Contains(text, "USD") {
			t.Errorf("%q does not say the currency", text)
		}
	}
	modified := h.session.Draft.Modified()
	h.mustType(t, "offer[3].price", "150")
	h.Settle()
	h.undo()
	h.Settle()
	if got := words.Verdict(c, "en").Text; h.View().Headline != got || modified {
		t.Errorf("undo disturbs it: %q, or it is a change of the file", h.View().Headline)
	}
	h.showIn("")
	h.Settle()
	if h.View().Headline != words.Verdict(c.AtHome(), "en").Text {
		t.Error("not at home again:", h.View().Headline)
	}
}

func TestARateThatIsMissingForShowingIsSaid(t *testing.T) {
	h := open(t)
	h.asker.AskShowIn()
	h.win.Canvas().Focused().(*kit.Picker).Choose("AUD")
	h.press(t, words.ShowInDo)
	if !h.View().Asking || !strings.Contains(h.dialogText(), words.NoWayTo("EUR", "AUD")) {
		t.Error(h.dialogText())
	}
	h.press(t, "Cancel")
	h.showIn("AUD") // as when the rate is taken away later
	h.Settle()
	v := h.View()
	if v.Status != "! "+words.NotShownIn("EUR", "AUD") || !strings.Contains(v.Headline, "EUR") {
		t.Error(v.Status, v.Headline)
	}
	h.mend()
	h.Settle()
	if _, ok := h.View().Field("rate[3].equals"); !ok || h.View().Form != words.TopicRates {
		t.Errorf("%q is open", h.View().Form)
	}
	h.mustType(t, "rate[3].equals", "0.6")
	h.Settle()
	if v := h.View(); !strings.Contains(v.Headline, "AUD") {
		t.Error(v.Headline)
	}
}
