package desk

import (
	"fmt"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/offers"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

// piece is a text on the screen: what of it can be seen, and what it would need.
type piece struct {
	text       string
	x, y, w, h float32
	sideways   bool    // a clip that can be scrolled sideways
	limit      float32 // where the room of a text ends
}

func (p piece) overlaps(q piece) bool {
	const edge = 1.5 // lines of one block may touch
	return p.x+edge < q.x+q.w && q.x+edge < p.x+p.w && p.y+edge < q.y+q.h && q.y+edge < p.y+p.h
}

// within is what two clips leave.
func (p piece) within(q piece) piece {
	x, y := max(p.x, q.x), max(p.y, q.y)
	return piece{x: x, y: y, w: max(0, min(p.x+p.w, q.x+q.w)-x), h: max(0, min(p.y+p.h, q.y+q.h)-y), sideways: p.sideways || q.sideways}
}

// scrolled is what a scroll in a clip leaves.
func (p piece) scrolled(at fyne.Position, size fyne.Size, d container.ScrollDirection) piece {
	return p.within(piece{x: at.X, y: at.Y, w: size.Width, h: size.Height, sideways: d != container.ScrollVerticalOnly})
}

func inScroll(w fyne.Widget, at fyne.Position, clip piece, found *[]piece) {
	for _, c := range test.WidgetRenderer(w).Objects() {
		textsOn(c, at, clip, found)
	}
}

// textsOn collects what text is on the screen below o, clipped as scrolls clip it.
func textsOn(o fyne.CanvasObject, at fyne.Position, clip piece, found *[]piece) {
	if !o.Visible() {
		return
	}
	at = at.Add(o.Position())
	switch w := o.(type) {
	case *canvas.Text:
		need := fyne.MeasureText(w.Text, w.TextSize, w.TextStyle)
		p := piece{text: w.Text, x: at.X, y: at.Y, w: need.Width, h: need.Height, limit: clip.x + clip.w}
		if strings.TrimSpace(w.Text) != "" && p.y >= clip.y-1 && p.y+p.h <= clip.y+clip.h+1 && p.x >= clip.x-1 && p.x < clip.x+clip.w && !(clip.sideways && p.x+p.w > clip.x+clip.w) {
			*found = append(*found, p)
		}
	case *fyne.Container:
		for _, c := range w.Objects {
			textsOn(c, at, clip, found)
		}
	case *kit.Scroll:
		inScroll(w, at, clip.scrolled(at, w.Size(), w.Direction), found)
	case *container.Scroll: // the toolkit's own, within an entry
		inScroll(w, at, clip.scrolled(at, w.Size(), w.Direction), found)
	case fyne.Widget:
		for _, c := range test.WidgetRenderer(w).Objects() {
			textsOn(c, at, clip, found)
		}
	}
}

func TestNoTextIsCutOrOverlaps(t *testing.T) {
	sizes := []fyne.Size{{Width: 1024, Height: 700}, {Width: 1280, Height: 800}, {Width: 2560, Height: 1440}}
	if testing.Short() {
		sizes = sizes[:1]
	}
	for _, size := range sizes {
		for _, text := range textSizes {
			for name, file := range map[string]scenario.File{"demo": scenario.Demo(), "crowd": Crowd()} {
				t.Run(fmt.Sprintf("%s at %.0f × %.0f, text × %.2f", name, size.Width, size.Height, text.factor), func(t *testing.T) {
					h := open(t)
					h.setText(text.factor)
					t.Cleanup(func() { kit.SetTextSize(1) })
					h.Put(file)
					h.Resize(size.Width, size.Height)
					if got := h.root.MinSize(); got.Width > size.Width || got.Height > size.Height {
						t.Errorf("the window insists on %v", got)
					}
					for page := range h.answer.Tabs.Pages {
						h.Page(page)
						h.inspect(t, fmt.Sprint("page ", h.View().Page))
					}
					for _, topic := range offers.Topics {
						h.choose(session.Selection{Topic: topic.Topic, Offer: 2})
						h.unfoldAll()
						h.inspect(t, topic.Name)
					}
					h.choose(session.Selection{Topic: session.TopicOffer, Offer: 2})
					h.unfoldAll()
					h.mustType(t, "offer[3].shipping", "34..5")
					h.mustType(t, "offer[3].discount_percent", "140")
					h.Settle()
					h.inspect(t, "faults")
				})
			}
		}
	}
}

func (h *Harness) inspect(t *testing.T, what string) {
	t.Helper()
	size := h.win.Canvas().Size() // which large text may have made larger
	var found []piece
	textsOn(h.root, fyne.NewPos(0, 0), piece{w: size.Width, h: size.Height}, &found)
	if len(found) < 20 {
		t.Fatalf("%s: only %d texts on the screen", what, len(found))
	}
	for i, p := range found {
		if p.x+p.w > p.limit+1 || p.y+p.h > size.Height+1 {
			t.Errorf("%s: %q at %.0f,%.0f of %.0f × %.0f leaves its room of %.0f", what, p.text, p.x, p.y, p.w, p.h, p.limit)
		}
		for _, q := range found[i+1:] {
			if p.overlaps(q) {
				t.Errorf("%s: %q at %.0f,%.0f overlaps %q at %.0f,%.0f", what, p.text, p.x, p.y, q.text, q.x, q.y)
			}
		}
	}
}
