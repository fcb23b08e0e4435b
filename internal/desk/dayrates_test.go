package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// may2025 is the European Central Bank's reference rates of 9 May 2025, in the bank's form.
const may2025 = "Date,USD,JPY,AUD,CAD,\n2025-05-09,1.1252,163.36,1.7572,1.5651,\n2025-05-08,1.1297,N/A,1.7579,1.5664,\n"

func published(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "rates.csv")
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestADaysRatesAreTakenInOneStep(t *testing.T) {
	h := open(t)
	h.Topic("rates", 2)
	h.Rates(published(t, may2025))
	was := h.session.Current()
	asForm{h.Desk}.AskDayRates()
	if text := h.dialogText(); !strings.Contains(text, "0.888731") || !strings.Contains(text, words.ForInformation) {
		t.Error(text)
	}
	h.press(t, words.DayRatesTake)
	now := h.session.Current()
	// 1 USD = 1/1.1252 EUR, to six figures.
	for _, r := range now.Rates {
		if r.Source != rates.SourceBank || r.Date != (scenario.Date{Year: 2025, Month: 5, Day: 9}) {
			t.Errorf("%+v", r)
		}
	}
	if !now.Rates[0].Equals.Equal(decimalOf("0.888731")) || now.Rates[0].One != "USD" {
		t.Errorf("%+v", now.Rates[0])
	}
	h.undo()
	if back := h.session.Current(); !back.Rates[0].Equals.Equal(was.Rates[0].Equals) || !back.Rates[1].Equals.Equal(was.Rates[1].Equals) {
		t.Error("it is not one step to take back")
	}
}

func TestADayThatLacksWhatIsNeededChangesNothing(t *testing.T) {
	h := open(t)
	h.Rates(published(t, may2025))
	h.pick(t, "offer[3].currency", "CAD") // its rate is missing now
	was := string(scenario.Write(h.session.Draft.File()))
	asForm{h.Desk}.AskDayRates()
	h.panel(t, words.DayRatesDay).Entry.SetText("2025-05-10")
	h.press(t, words.DayRatesTake)
	if !h.View().Asking || string(scenario.Write(h.session.Draft.File())) != was {
		t.Error("a closing day was taken")
	}
	h.panel(t, words.DayRatesDay).Entry.SetText("2025-05-08")
	h.press(t, words.DayRatesTake)
	s := h.session.Current()
	last := s.Rates[len(s.Rates)-1]
	if last.One != "CAD" || last.In != "EUR" || len(s.Rates) != 3 {
		t.Errorf("the missing rate is not taken: %+v", s.Rates)
	}
	for _, r := range s.Rates {
		if r.One == "JPY" && r.Source == rates.SourceBank {
			t.Error("the day has no yen")
		}
	}
}

// A file that is none changes nothing: neither the rates in use nor the scenario.
func TestABadFileOfRatesChangesNothing(t *testing.T) {
	h := open(t)
	h.Rates(published(t, may2025))
	file, was := h.market.File, string(scenario.Write(h.session.Draft.File()))
	for _, bad := range []string{"", "Date,USD,\n2025-05-09,dear,\n", "<html>", "PK\x03\x04", may2025 + "2025-05-09,1,1,1,1,\n"} {
		h.Rates(published(t, bad))
		if h.market.File != file || h.market.Wrong == "" || string(scenario.Write(h.session.Draft.File())) != was {
			t.Errorf("%q changes something, or nothing is said: %q", bad, h.market.Wrong)
		}
	}
}

func TestARateIsWorkedOutFromAStatement(t *testing.T) {
	h := open(t)
	h.Rates(published(t, may2025))
	asForm{h.Desk}.AskStatement()
	h.panel(t, words.StatementAsked).Entry.SetText("118.00")
	h.panel(t, words.StatementTook).Entry.SetText("107")
	h.panel(t, words.StatementDay).Entry.SetText("2025-05-11") // a Sunday
	// 107/118 = 0.906779…; against 1/1.1252 that is 2.0308… % more.
	if text := h.dialogText(); !strings.Contains(text, "0.90678") || !strings.Contains(text, "added 2.03 %") {
		t.Error(text)
	}
	h.press(t, words.StatementApart)
	s := h.session.Current()
	if q := s.Rates[0]; !q.Equals.Equal(decimalOf("0.888731")) || q.Source != rates.SourceBank {
		t.Errorf("%+v", q)
	}
	for _, o := range s.Offers {
		if o.Currency == "USD" && !o.CardFeePercent.Round(2).Equal(decimalOf("2.03")) {
			t.Errorf("%s: card fee %s", o.Name, o.CardFeePercent)
		}
	}
	h.undo()
	asForm{h.Desk}.AskStatement()
	h.panel(t, words.StatementAsked).Entry.SetText("118")
	h.press(t, words.StatementAlone)
	if !h.View().Asking {
		t.Error("half a statement was taken")
	}
	h.panel(t, words.StatementTook).Entry.SetText("107")
	h.press(t, words.StatementAlone)
	s = h.session.Current()
	if q := s.Rates[0]; !q.Equals.Equal(decimalOf("0.90678")) || q.Source != rates.SourceStatement {
		t.Errorf("%+v", q)
	}
	for _, o := range s.Offers {
		if o.Currency == "USD" && !o.CardFeePercent.IsZero() {
			t.Errorf("%s: the card fee counts twice", o.Name)
		}
	}
}
