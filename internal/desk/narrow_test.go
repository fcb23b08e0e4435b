package desk

import (
	"testing"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
)

// With the largest text a window of 1024 × 700 stays as it is, and shows the form or the
// answer: whatever is gone to, it comes into sight.
func TestTheLargestTextInASmallWindow(t *testing.T) {
	h := open(t)
	h.LargestText()
	t.Cleanup(func() { kit.SetTextSize(1) })
	h.Resize(1024, 700)
	if size := h.Window().Canvas().Size(); size.Width != 1024 || size.Height != 700 || !h.panes.narrow {
		t.Fatal("the window is", size)
	}
	sees := func(what string, form bool) {
		t.Helper()
		if h.form.Content.Visible() != form || h.hand.right.Visible() == form {
			t.Errorf("%s: the form is in sight: %v", what, h.form.Content.Visible())
		}
	}
	sees("at first", true)
	h.Page(pages.Receipt)
	sees("a page", false)
	h.choose(session.Selection{Topic: session.TopicOffer, Offer: 2})
	sees("the chosen way to buy", true)
	h.jump(1)
	h.jump(1)
	for h.columnOfFocus() != 2 {
		h.jump(1)
	}
	sees("the answer's column", false)
	h.jump(-1)
	sees("the form's column", true)
	h.panes.look(atAnswer)
	h.form.GoTo("offer[3].price")
	sees("a field", true)
	if !h.field(t, "offer[3].price").Focused {
		t.Error("the field is not entered")
	}
	h.Resize(1400, 800)
	if !h.form.Content.Visible() || !h.hand.right.Visible() || h.panes.seen.Visible() {
		t.Error("not both in a wide window")
	}
}

// With eight ways to buy each has its bar, however small the window: the page scrolls.
func TestNoBarIsLeftOutInASmallWindow(t *testing.T) {
	h := open(t)
	h.LargestText()
	t.Cleanup(func() { kit.SetTextSize(1) })
	h.Put(Crowd())
	h.Resize(1024, 700)
	h.Page(pages.Charts)
	bars := map[string]bool{}
	for _, hit := range h.pipeline.shown.Pictures[answer.Cost].Drawing.Hits() {
		bars[hit.Offer] = true
	}
	for _, o := range h.session.Current().Offers {
		if !bars[o.Name] {
			t.Errorf("%s has no bar", o.Name)
		}
	}
}
