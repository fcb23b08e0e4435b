package pages

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// ReceiptPage is what an offer costs item by item, and how its reel is cut.
type ReceiptPage struct {
	Table   *ReceiptTable
	Off     *kit.Text // that the lines as printed do not quite add up
	Seen    *kit.Text // the lowest and the highest price that was seen
	Strip   *FigureView
	StripOf *fyne.Container
	list    *fyne.Container
	scroll  *kit.Scroll
}

func newReceiptPage(act Actions) *ReceiptPage {
	p := &ReceiptPage{Table: newReceiptTable(), Off: kit.NewText(kit.SizeSmall + 1), Seen: kit.NewText(kit.SizeSmall + 1), Strip: newFigureView(act.Redraw, nil)}
	p.StripOf = kit.Inset(kit.NewStack(0, 0, kit.FixedHeight(p.Strip, kit.Scaled(116))), 0, 16, 0, 0)
	p.list = kit.Inset(kit.NewStack(0, 8, p.Table, p.Off, p.Seen, p.StripOf), 0, 6, 14, 12)
	p.scroll = kit.NewScroll(p.list)
	return p
}

func (p *ReceiptPage) name(View) string          { return words.PageReceipt }
func (p *ReceiptPage) object() fyne.CanvasObject { return p.scroll }

func (p *ReceiptPage) put(an *answer.Answer) { p.Strip.put(an.Pictures[answer.Strip]) }

func (p *ReceiptPage) fill(v View) {
	c, offer := v.answer.Comparison, v.offer
	seller, home := words.ReceiptColumns(c, offer)
	p.Table.show(seller, home, words.Receipt(c, offer, v.locale))
	isReel := offer < len(c.Offers) && c.Offers[offer].Fault == nil && c.Offers[offer].Kind == scenario.KindReel
	seen := ""
	if offer < len(c.Scenario.Offers) {
		seen = words.SeenFinding(&c.Scenario.Offers[offer], v.locale)
	}
	whisper(p.Off, words.ReceiptRounding(c, offer, v.locale))
	whisper(p.Seen, seen)
	if isReel {
		p.StripOf.Show()
	} else {
		p.StripOf.Hide()
	}
	p.list.Refresh()
}

// whisper says something quietly, or takes no room where there is nothing to say.
func whisper(line *kit.Text, text string) {
	line.Set(kit.Span{Text: text, Color: kit.Muted})
	show(line, text != "")
}

func (p *ReceiptPage) rooms(scale float32) (r answer.Rooms) {
	r[answer.Strip] = p.Strip.room(scale)
	return r
}
