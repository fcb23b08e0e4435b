package desk

import (
	"os"
	"path/filepath"
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

// The currency that a file is shown in is remembered for it alone, and forgotten once its
// rates do not lead there any more.
func TestTheCurrencyShownIsRememberedForEachFile(t *testing.T) {
	h := open(t)
	dir := t.TempDir()
	save := func(name string, f scenario.File) string {
		path := filepath.Join(dir, name)
		if err := os.WriteFile(path, scenario.Write(f), 0o600); err != nil {
			t.Fatal(err)
		}
		return path
	}
	one, other := save("one.toml", scenario.Demo()), save("other.toml", scenario.Demo())
	shownIn := func(path string) string {
		next := NewHarness(h.settings.app, noon)
		next.Open(path)
		next.Settle()
		return next.pipeline.shown.Comparison.Currency()
	}
	h.Open(one)
	h.Settle()
	h.ShowIn("USD")
	if a, b := shownIn(one), shownIn(other); a != "USD" || b != "EUR" {
		t.Errorf("next time one is shown in %s, the other in %s", a, b)
	}
	alone := scenario.Demo()
	alone.Scenarios[0].Rates, alone.Scenarios[0].Offers = nil, alone.Scenarios[0].Offers[:1]
	save("one.toml", alone)
	if got := shownIn(one); got != "EUR" {
		t.Error("without a rate it is shown in", got)
	}
	save("one.toml", scenario.Demo())
	if got := shownIn(one); got != "EUR" {
		t.Error("what was forgotten comes back:", got)
	}
	h.ShowIn("JPY")
	h.ShowIn("")
	if got := shownIn(one); got != "EUR" {
		t.Error("as it is, yet shown in", got)
	}
}
