package desk

import (
	"strings"
	"testing"

	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/stock"
	"reelworth/internal/words"
)

// greyed says whether a reply of the open dialog cannot be given.
func (h *Harness) greyed(t *testing.T, reply string) bool {
	t.Helper()
	open := h.dialogs.Open
	for _, b := range open[len(open)-1].Buttons {
		if b.Text == reply {
			return b.Disabled()
		}
	}
	t.Fatalf("there is no reply %q", reply)
	return false
}

// A reply that would do nothing is greyed, from the dialog's first moment, and the dialog
// says why; it can be given as soon as it does something.
func TestAReplyThatDoesNothingIsGreyed(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Rates(published(t, may2025))
	h.Reel(1, stock.Log)
	for _, c := range []struct {
		name, reply   string
		ask           func()
		field, no     string
		why           string
		also, itsText string // another field, and what it takes
		yes           string
	}{
		{"a day's rates", words.DayRatesTake, asForm{h.Desk}.AskDayRates, words.DayRatesDay, "2025-05-10", "no rates of 10 May 2025", "", "", "2025-05-09"},
		{"a statement", words.StatementAlone, asForm{h.Desk}.AskStatement, words.StatementAsked, "x", words.StatementAmounts, words.StatementTook, "107", "118"},
		{"a deal", words.DealKeep, h.asker.AskDeal, dialogs.DealPrice, "x", "✗", "", "", "7"},
		{"a counter", words.ReplySet, h.hand.column.MeasureCounter, "Counts", "x", words.CounterWaits, "Length", "760", "20"},
	} {
		c.ask()
		h.Settle()
		if c.also != "" {
			if !h.greyed(t, c.reply) {
				t.Errorf("%s: empty, and yet there is something to take", c.name)
			}
			h.panel(t, c.also).Entry.SetText(c.itsText)
		}
		h.panel(t, c.field).Entry.SetText(c.no)
		h.Settle()
		if !h.greyed(t, c.reply) || !strings.Contains(h.dialogText(), c.why) {
			t.Errorf("%s, %s: greyed is %v, beside stands %q", c.name, c.no, h.greyed(t, c.reply), h.dialogText())
		}
		h.panel(t, c.field).Entry.SetText(c.yes)
		h.Settle()
		if h.greyed(t, c.reply) {
			t.Errorf("%s, %s: greyed", c.name, c.yes)
		}
		h.dialogs.Open[0].Leave()
	}
}

// The bank's rate and the fee can be taken only where both are known.
func TestTheFeeOfAStatementIsGreyedWhereItIsNotKnown(t *testing.T) {
	h := open(t)
	h.Rates(published(t, may2025))
	asForm{h.Desk}.AskStatement()
	h.panel(t, words.StatementAsked).Entry.SetText("118.00")
	for _, c := range []struct {
		took, day, says string
		greyed          bool
	}{
		{"107", "2025-05-09", "the card added", false},
		{"100", "2025-05-09", "no fee to take with it", true},
		{"107", "2020-05-09", words.StatementNoMarket, true},
	} {
		h.panel(t, words.StatementTook).Entry.SetText(c.took)
		h.panel(t, words.StatementDay).Entry.SetText(c.day)
		if h.greyed(t, words.StatementApart) != c.greyed || h.greyed(t, words.StatementAlone) || !strings.Contains(h.dialogText(), c.says) {
			t.Errorf("%+v: greyed is %v, said is %q", c, h.greyed(t, words.StatementApart), h.dialogText())
		}
	}
}
