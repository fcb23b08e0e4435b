package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// The receipt's rows, and where its columns end or begin.
func ledgerRowHeight() float32 { return kit.Scaled(31) }
func ledgerSeller() float32    { return kit.Scaled(276) }
func ledgerHome() float32      { return kit.Scaled(366) }
func ledgerHow() float32       { return kit.Scaled(386) }

// ledgerNarrow is the width below which explanations stand under the labels.
func ledgerNarrow() float32 { return kit.Scaled(540) }

// ledger shows the receipt: label, the seller's amount, the amount at home, and how it
// came about, with a rule under each row.
type ledger struct {
	widget.BaseWidget
	rows []*ledgerRow
	two  bool // the seller's column is there
}

func newLedger() *ledger {
	l := &ledger{}
	l.ExtendBaseWidget(l)
	return l
}

// show puts up rows under the currencies of the two columns.
func (l *ledger) show(seller, home string, rows []words.ReceiptRow) {
	l.two = seller != ""
	lines := append([]words.ReceiptRow{{Seller: seller, Home: home}}, rows...)
	if len(rows) == 0 {
		lines = nil
	}
	for len(l.rows) < len(lines) {
		l.rows = append(l.rows, newLedgerRow())
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

func (l *ledger) visible() []*ledgerRow {
	var v []*ledgerRow
	for _, r := range l.rows {
		if r.Visible() {
			v = append(v, r)
		}
	}
	return v
}

func (l *ledger) HeightFor(width float32) float32 {
	var h float32
	for _, r := range l.visible() {
		h += r.HeightFor(width)
	}
	return h
}

func (l *ledger) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(0, l.HeightFor(l.Size().Width))
}

func (l *ledger) CreateRenderer() fyne.WidgetRenderer { return &ledgerRenderer{l} }

type ledgerRenderer struct{ l *ledger }

func (r *ledgerRenderer) Layout(size fyne.Size) {
	y := float32(0)
	for _, row := range r.l.visible() {
		row.two = r.l.two
		h := row.HeightFor(size.Width)
		kit.Place(row, 0, y, size.Width, h)
		row.Refresh()
		y += h
	}
}
func (r *ledgerRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *ledgerRenderer) Objects() []fyne.CanvasObject {
	return kit.Objects(r.l.rows...)
}
func (r *ledgerRenderer) Destroy() {}
func (r *ledgerRenderer) Refresh() {
	r.Layout(r.l.Size())
	canvas.Refresh(r.l)
}

// ledgerRow is one row of the receipt.
type ledgerRow struct {
	widget.BaseWidget
	label, seller, home, how *kit.Text
	rule                     *canvas.Rectangle
	two                      bool
}

func newLedgerRow() *ledgerRow {
	r := &ledgerRow{rule: canvas.NewRectangle(theme.Color(kit.Rule))}
	r.label = kit.NewText(kit.SizeText).AtMost(1)
	r.seller = kit.NewText(kit.SizeText).AtMost(1).Trailing()
	r.home = kit.NewText(kit.SizeText).AtMost(1).Trailing()
	r.how = kit.NewText(kit.SizeText).AtMost(1)
	r.how.Centred = true
	r.ExtendBaseWidget(r)
	return r
}

func (r *ledgerRow) set(row words.ReceiptRow, head bool) {
	color := fyne.ThemeColorName(kit.Ink)
	if head {
		color = kit.Muted
	}
	cell := func(text string) kit.Span { return kit.Span{Text: text, Bold: row.Strong, Color: color} }
	r.label.Set(cell(row.Label))
	r.seller.Set(cell(row.Seller))
	r.home.Set(cell(row.Home))
	r.how.Set(kit.Span{Text: row.How, Color: kit.Muted})
}

func (r *ledgerRow) CreateRenderer() fyne.WidgetRenderer { return &ledgerRowRenderer{r} }

type ledgerRowRenderer struct{ r *ledgerRow }

func (rr *ledgerRowRenderer) Layout(size fyne.Size) {
	r := rr.r
	if size.Width < ledgerNarrow() {
		r.layNarrow(size)
		return
	}
	h := r.label.LineHeight()
	y := (size.Height - h) / 2
	labelTo := ledgerHome() - 84*kit.TextFactor
	if r.two {
		labelTo = ledgerSeller() - 76*kit.TextFactor
		if r.seller.String() == "" {
			labelTo = ledgerHome() - 84*kit.TextFactor
		}
	}
	kit.Place(r.label, 0, y, labelTo, h)
	amount := 110 * kit.TextFactor
	kit.Place(r.seller, ledgerSeller()-amount, y, amount, h)
	kit.Place(r.home, ledgerHome()-amount, y, amount, h)
	r.placeHow(size)
	kit.Place(r.rule, 0, size.Height-1, size.Width, 1)
}

func (r *ledgerRow) HeightFor(width float32) float32 {
	if width < ledgerNarrow() && r.how.String() != "" {
		r.how.FontSize, r.how.MaxLines = kit.SizeSmall, 2
		return ledgerRowHeight() + r.how.HeightFor(width)
	}
	return ledgerRowHeight()
}

// layNarrow puts the amounts to the right edge and the explanation under the label.
func (r *ledgerRow) layNarrow(size fyne.Size) {
	h := r.label.LineHeight()
	amount := 92 * kit.TextFactor
	left := size.Width - amount
	if r.two && r.seller.String() != "" {
		left -= amount
	}
	kit.Place(r.label, 0, 6, left-6, h)
	kit.Place(r.seller, size.Width-2*amount, 6, amount-6, h)
	kit.Place(r.home, size.Width-amount, 6, amount, h)
	r.how.FontSize, r.how.MaxLines = kit.SizeSmall, 2
	kit.Place(r.how, 0, 6+h, size.Width, max(0, size.Height-h-8))
	r.how.Refresh()
	kit.Place(r.rule, 0, size.Height-1, size.Width, 1)
}

// placeHow sets a long explanation in two small lines.
func (r *ledgerRow) placeHow(size fyne.Size) {
	w := max(0, size.Width-ledgerHow())
	r.how.FontSize, r.how.MaxLines = kit.SizeText, 1
	if r.how.NaturalWidth() > w {
		r.how.FontSize, r.how.MaxLines = kit.SizeSmall, 2
	}
	kit.Place(r.how, ledgerHow(), 0, w, size.Height-1)
	r.how.Refresh()
}

func (rr *ledgerRowRenderer) MinSize() fyne.Size { return fyne.NewSize(0, ledgerRowHeight()) }
func (rr *ledgerRowRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{rr.r.label, rr.r.seller, rr.r.home, rr.r.how, rr.r.rule}
}
func (rr *ledgerRowRenderer) Destroy() {}
func (rr *ledgerRowRenderer) Refresh() {
	rr.r.rule.FillColor = theme.Color(kit.Rule)
	for _, o := range rr.Objects() {
		o.Refresh()
	}
	rr.Layout(rr.r.Size())
}
