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
	w.says = kit.NewText(kit.SizeText).AtMost(1)
	w.says.Centred = true
	times := kit.NewText(kit.SizeText, kit.Span{Text: words.WishTimes, Color: kit.Muted}).AtMost(1)
	times.Centred = true
	w.asked.Changed, w.exposures.Changed = w.typed, w.typed
	remove := kit.NewLink(words.LinkRemove, func() { p.remove(w) })
	w.whole = container.New(wishLayout{}, w.asked, times, w.exposures, w.says, remove)
	return w
}

// mostAsked is how many cassettes a wish may ask for, and mostExposures of how many
// exposures.
const (
	mostAsked     = 9999
	mostExposures = 100
)

// typed reads the wish, and says beside it what is wrong.
func (w *wishRow) typed(string) {
	asked, wrongAsked := w.number(w.asked, mostAsked, true)
	exposures, wrong := w.number(w.exposures, mostExposures, false)
	w.asked.SetFaulty(wrongAsked != "")
	w.exposures.SetFaulty(wrong != "")
	w.good = wrongAsked == "" && wrong == ""
	if w.good {
		w.wish = reels.Wish{Asked: int64(asked), Exposures: exposures}
	} else {
		if wrongAsked != "" {
			wrong = wrongAsked
		}
		w.says.Set(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: wrong, Color: kit.Fault})
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
func (w *wishRow) tell(text string) { w.says.Set(kit.Span{Text: text, Color: kit.Muted}) }

// wishLayout lays a row out: number, times, exposures, what becomes of it, and the link.
type wishLayout struct{}

func (wishLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	box, gap := kit.Scaled(64), kit.Scaled(8)
	times := kit.Measure(words.WishTimes, kit.SizeText, false) + 2
	link := o[4].MinSize()
	y := (size.Height - kit.FieldHeight) / 2
	kit.Place(o[0], 0, y, box, kit.FieldHeight)
	kit.Place(o[1], box+gap, 0, times, size.Height)
	kit.Place(o[2], box+2*gap+times, y, box, kit.FieldHeight)
	x := 2*box + 4*gap + times
	kit.Place(o[4], size.Width-link.Width, (size.Height-link.Height)/2, link.Width, link.Height)
	kit.Place(o[3], x, 0, max(0, size.Width-x-link.Width-gap), size.Height)
}

func (wishLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(300, kit.RowHeight) }
