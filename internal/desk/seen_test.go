package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/words"
)

// link taps a link that is on the screen.
func (h *Harness) link(t *testing.T, label string) {
	t.Helper()
	over := h.Window().Canvas().Overlays().Top()
	if over == nil {
		over = h.Window().Canvas().Content()
	}
	for _, o := range test.LaidOutObjects(over) {
		if l, ok := o.(*kit.Link); ok && l.Visible() && l.Label.String() == label {
			l.Do()
			h.Settle()
			return
		}
	}
	t.Fatalf("there is no link %q", label)
}

func TestPricesSeenAreKeptAndPutInUse(t *testing.T) {
	h := open(t)
	h.Topic("offer", 2)
	saw := func(price, day string) {
		h.link(t, words.SawIt)
		h.panel(t, "Saw it at").Entry.SetText(price)
		h.panel(t, "on").Entry.SetText(day)
		h.press(t, "Keep it")
		h.press(t, "Close")
	}
	before := h.View().Offers[2].PerRoll
	saw("129.00", "2026-11-01")
	saw("99", "2026-05-03")
	if now := h.View().Offers[2].PerRoll; now != before {
		t.Errorf("a price that was only seen moves the cost from %s to %s", before, now)
	}
	const said = "Seen 2 times, USD 99.00 (3 May 2026) to 129.00 (1 Nov 2026); 1 was lower than 118.00, 1 higher."
	h.Page(pages.Receipt)
	if got := strings.ReplaceAll(h.answer.Receipt.Seen.String(), "\u00a0", " "); got != said {
		t.Errorf("the receipt's page says %q, want %q", got, said)
	}
	h.link(t, words.SawIt)
	h.panel(t, "on").Entry.SetText("yesterday")
	h.press(t, "Keep it")
	if !strings.Contains(h.dialogText(), words.SeenNoDay) || len(h.session.Current().Offers[2].Seen) != 2 {
		t.Error("a day that is none is not complained of")
	}
	h.link(t, "Put in use") // of the newest
	if got := h.session.Current().Offers[2].Price; !got.Equal(decimalOf("129")) || len(h.session.Current().Offers[2].Seen) != 2 {
		t.Errorf("the price is %s", got)
	}
	h.undo()
	if got := h.session.Current().Offers[2].Price; !got.Equal(decimalOf("118")) {
		t.Error("it is not one step to take back")
	}
	h.Settle()
	h.link(t, words.SawIt)
	h.link(t, "Forget")
	h.press(t, "Close")
	if seen := h.session.Current().Offers[2].Seen; len(seen) != 1 || !seen[0].Price.Equal(decimalOf("99")) {
		t.Errorf("%+v", seen)
	}
}
