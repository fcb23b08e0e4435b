package pages

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// The receipt's rows, and where its columns end or begin.
func receiptRowHeight() float32 { return kit.Scaled(31) }
func sellerEdge() float32       { return kit.Scaled(276) }
func homeEdge() float32         { return kit.Scaled(366) }
func howEdge() float32          { return kit.Scaled(386) }

// narrowReceipt is the width below which explanations stand under the labels.
func narrowReceipt() float32 { return kit.Scaled(540) }

// ReceiptTable shows the receipt: label, the seller's amount, the amount at home, and how it
// came about, with a rule under each row.
type ReceiptTable struct {
	widget.BaseWidget
	rows []*receiptRow
	two  bool // the seller's column is there
}

func newReceiptTable() *ReceiptTable {
	l := &ReceiptTable{}
	l.ExtendBaseWidget(l)
	return l
}

// show puts up rows under the currencies of the two columns.
func (l *ReceiptTable) show(seller, home string, rows []words.ReceiptRow) {
	l.two = seller != ""
	lines := append([]words.ReceiptRow{{Seller: seller, Home: home}}, rows...)
	if len(rows) == 0 {
		lines = nil
	}
	for len(l.rows) < len(lines) {
		l.rows = append(l.rows, newReceiptRow())
	}
	for i, r := range l.rows {
		if i < len(lines) {
			r.set(lines[i], i == 0)
			r.Show()
		} else {
			r.Hide()
		}
	}
	l.Refresh()
}

func (l *ReceiptTable) Shown() []*receiptRow {
	var v []*receiptRow
	for _, r := range l.rows {
		if r.Visible() {
			v = append(v, r)
		}
	}
	return v
}

func (l *ReceiptTable) HeightFor(width float32) float32 {
	var h float32
	for _, r := range l.Shown() {
		h += r.HeightFor(width)
	}
	return h
}

func (l *ReceiptTable) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(0, l.HeightFor(l.Size().Width))
}

func (l *ReceiptTable) CreateRenderer() fyne.WidgetRenderer { return &receiptRenderer{l} }

type receiptRenderer struct{ l *ReceiptTable }

func (r *receiptRenderer) Layout(size fyne.Size) {
	y := float32(0)
	for _, row := range r.l.Shown() {
		row.two = r.l.two
		h := row.HeightFor(size.Width)
		kit.Place(row, 0, y, size.Width, h)
		row.Refresh()
		y += h
	}
}
func (r *receiptRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *receiptRenderer) Objects() []fyne.CanvasObject {
	return kit.Objects(r.l.rows...)
}
func (r *receiptRenderer) Destroy() {}
func (r *receiptRenderer) Refresh() {
	r.Layout(r.l.Size())
	canvas.Refresh(r.l)
}

// receiptRow is one row of the receipt.
type receiptRow struct {
	widget.BaseWidget
	label, Seller, Home, how *kit.Text
	rule                     *canvas.Rectangle
	two                      bool
}

func newReceiptRow() *receiptRow {
	r := &receiptRow{rule: canvas.NewRectangle(theme.Color(kit.Rule))}
	r.label = kit.NewText(kit.SizeText).AtMost(1)
	r.Seller = kit.NewText(kit.SizeText).AtMost(1).Trailing()
	r.Home = kit.NewText(kit.SizeText).AtMost(1).Trailing()
	r.how = kit.NewText(kit.SizeText).AtMost(1)
	r.how.Centred = true
	r.ExtendBaseWidget(r)
	return r
}

func (r *receiptRow) set(row words.ReceiptRow, head bool) {
	color := fyne.ThemeColorName(kit.Ink)
	if head {
		color = kit.Muted
	}
	cell := func(text string) kit.Span { return kit.Span{Text: text, Bold: row.Strong, Color: color} }
	r.label.Set(cell(row.Label))
	r.Seller.Set(cell(row.Seller))
	r.Home.Set(cell(row.Home))
	r.how.Set(kit.Span{Text: row.How, Color: kit.Muted})
}

func (r *receiptRow) CreateRenderer() fyne.WidgetRenderer { return &receiptRowRenderer{r} }

type receiptRowRenderer struct{ r *receiptRow }

func (rr *receiptRowRenderer) Layout(size fyne.Size) {
	r := rr.r
	if size.Width < narrowReceipt() {
		r.layNarrow(size)
		return
	}
	h := r.label.LineHeight()
	y := (size.Height - h) / 2
	labelTo := homeEdge() - 84*kit.TextFactor
	if r.two {
		labelTo = sellerEdge() - 76*kit.TextFactor
		if r.Seller.String() == "" {
			labelTo = homeEdge() - 84*kit.TextFactor
		}
	}
	kit.Place(r.label, 0, y, labelTo, h)
	amount := 110 * kit.TextFactor
	kit.Place(r.Seller, sellerEdge()-amount, y, amount, h)
	kit.Place(r.Home, homeEdge()-amount, y, amount, h)
	r.placeHow(size)
	kit.Place(r.rule, 0, size.Height-1, size.Width, 1)
}

func (r *receiptRow) HeightFor(width float32) float32 {
	if width < narrowReceipt() && r.how.String() != "" {
		r.how.FontSize, r.how.MaxLines = kit.SizeSmall, 2
		return receiptRowHeight() + r.how.HeightFor(width)
	}
	return receiptRowHeight()
}

// layNarrow puts the amounts to the right edge and the explanation under the label.
func (r *receiptRow) layNarrow(size fyne.Size) {
	h := r.label.LineHeight()
	amount := 92 * kit.TextFactor
	left := size.Width - amount
	if r.two && r.Seller.String() != "" {
		left -= amount
	}
	kit.Place(r.label, 0, 6, left-6, h)
	kit.Place(r.Seller, size.Width-2*amount, 6, amount-6, h)
	kit.Place(r.Home, size.Width-amount, 6, amount, h)
	r.how.FontSize, r.how.MaxLines = kit.SizeSmall, 2
	kit.Place(r.how, 0, 6+h, size.Width, max(0, size.Height-h-8))
	r.how.Refresh()
	kit.Place(r.rule, 0, size.Height-1, size.Width, 1)
}

// placeHow sets a long explanation in two small lines.
func (r *receiptRow) placeHow(size fyne.Size) {
	w := max(0, size.Width-howEdge())
	r.how.FontSize, r.how.MaxLines = kit.SizeText, 1
	if r.how.NaturalWidth() > w {
		r.how.FontSize, r.how.MaxLines = kit.SizeSmall, 2
	}
	kit.Place(r.how, howEdge(), 0, w, size.Height-1)
	r.how.Refresh()
}

func (rr *receiptRowRenderer) MinSize() fyne.Size { return fyne.NewSize(0, receiptRowHeight()) }
func (rr *receiptRowRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{rr.r.label, rr.r.Seller, rr.r.Home, rr.r.how, rr.r.rule}
}
func (rr *receiptRowRenderer) Destroy() {}
func (rr *receiptRowRenderer) Refresh() {
	rr.r.rule.FillColor = theme.Color(kit.Rule)
	for _, o := range rr.Objects() {
		o.Refresh()
	}
	rr.Layout(rr.r.Size())
}
