package inhand

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

// wishRow is one wish of a plan: how many cassettes, of how many exposures, and what
// becomes of it.
type wishRow struct {
	page      *planPage
	whole     *fyne.Container
	asked     *kit.TextBox
	exposures *kit.TextBox
	says      *kit.Text
	wish      reels.Wish
	good      bool // what is typed is a wish
}

func newWishRow(p *planPage, begin reels.Wish) *wishRow {
	w := &wishRow{page: p, asked: kit.NewTextBox(true), exposures: kit.NewTextBox(true), wish: begin, good: true}
	if begin.Asked > 0 {
		w.asked.Set(strconv.FormatInt(begin.Asked, 10))
	}
	w.exposures.Set(strconv.Itoa(begin.Exposures))
	w.says = kit.NewText(kit.SizeText)
	times := kit.NewText(kit.SizeText, kit.Span{Text: words.WishTimes, Color: kit.Muted}).AtMost(1)
	times.Centred = true
	w.asked.Changed, w.exposures.Changed = w.typed, w.typed
	remove := kit.NewLink(words.LinkRemove, func() { p.remove(w) })
	w.whole = container.New(wishLayout{}, w.asked, times, w.exposures, w.says, remove)
	return w
}

// typed reads the wish, and says beside it what is wrong.
func (w *wishRow) typed(string) {
	asked, wrongAsked := w.number(w.asked, reels.MostAsked, true)
	exposures, wrong := w.number(w.exposures, reels.MostExposures, false)
	w.asked.SetFaulty(wrongAsked != "")
	w.exposures.SetFaulty(wrong != "")
	w.good = wrongAsked == "" && wrong == ""
	if w.good {
		w.wish = reels.Wish{Asked: int64(asked), Exposures: exposures}
		w.page.keep()
	} else {
		if wrongAsked != "" {
			wrong = wrongAsked
		}
		w.say(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: wrong, Color: kit.Fault})
	}
	w.page.win.Restock()
}

// number reads a number from 1 to most, or where it may be, nothing.
func (w *wishRow) number(box *kit.TextBox, most int, none bool) (n int, wrong string) {
	text := strings.TrimSpace(box.Entry.Text)
	if none && text == "" {
		return 0, ""
	}
	n, err := form.ReadCount(text, w.page.win.Locale())
	if err != nil || n < 1 || n > most {
		wrong = words.WishBounds(most, none)
	}
	return n, wrong
}

// tell says what becomes of the wish.
func (w *wishRow) tell(text string) { w.say(kit.Span{Text: text, Color: kit.Muted}) }

// say says it, all of it: the row takes the lines that it needs.
func (w *wishRow) say(spans ...kit.Span) {
	if w.says.Set(spans...); w.whole.Size().Height != kit.HeightOf(w.whole, w.whole.Size().Width) {
		w.page.grew()
	}
}

// wishLayout lays a row out: number, times, exposures, what becomes of it, and the link.
// What has no two lines' room between the boxes and the link stands below them.
type wishLayout struct{}

// wishRoom is how wide a room for what becomes of a wish must at least be, as drawn.
const wishRoom = 120

// middle is where the room between boxes and link begins, and how wide it is.
func (wishLayout) middle(o []fyne.CanvasObject, width float32) (x, w float32) {
	x = 2*kit.Scaled(64) + 4*kit.Scaled(8) + kit.Measure(words.WishTimes, kit.SizeText, false) + 2
	return x, width - x - o[4].MinSize().Width - kit.Scaled(8)
}

// below says whether what becomes of the wish stands below the boxes.
func (l wishLayout) below(o []fyne.CanvasObject, width float32) bool {
	_, w := l.middle(o, width)
	says := o[3].(*kit.Text)
	return says.String() != "" && (w < kit.Scaled(wishRoom) || says.HeightFor(w) > kit.RowHeight)
}

func (l wishLayout) HeightFor(o []fyne.CanvasObject, width float32) float32 {
	if width > 0 && l.below(o, width) {
		return kit.RowHeight + kit.HeightOf(o[3], width) + 4
	}
	return kit.RowHeight
}

func (l wishLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	box, gap := kit.Scaled(64), kit.Scaled(8)
	x, w := l.middle(o, size.Width)
	link := o[4].MinSize()
	centre := func(o fyne.CanvasObject, x, w, h float32) { kit.Place(o, x, (kit.RowHeight-h)/2, w, h) }
	centre(o[0], 0, box, kit.FieldHeight)
	centre(o[1], box+gap, x-2*box-4*gap, kit.RowHeight)
	centre(o[2], x-2*gap-box, box, kit.FieldHeight)
	centre(o[4], size.Width-link.Width, link.Width, link.Height)
	if l.below(o, size.Width) {
		kit.Place(o[3], 0, kit.RowHeight, size.Width, kit.HeightOf(o[3], size.Width))
		return
	}
	centre(o[3], x, max(0, w), kit.HeightOf(o[3], w))
}

func (l wishLayout) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(300, kit.RowHeight)
}
