package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"reelworth/internal/words"
)

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

func (l *ledger) heightFor(width float32) float32 {
	var h float32
	for _, r := range l.visible() {
		h += r.heightFor(width)
	}
	return h
}

func (l *ledger) MinSize() fyne.Size {
	l.ExtendBaseWidget(l)
	return fyne.NewSize(0, l.heightFor(l.Size().Width))
}

func (l *ledger) CreateRenderer() fyne.WidgetRenderer { return &ledgerRenderer{l} }

type ledgerRenderer struct{ l *ledger }

func (r *ledgerRenderer) Layout(size fyne.Size) {
	y := float32(0)
	for _, row := range r.l.visible() {
		row.two = r.l.two
		h := row.heightFor(size.Width)
		place(row, 0, y, size.Width, h)
		row.Refresh()
		y += h
	}
}
func (r *ledgerRenderer) MinSize() fyne.Size { return r.l.MinSize() }
func (r *ledgerRenderer) Objects() []fyne.CanvasObject {
	return toObjects(r.l.rows...)
}
func (r *ledgerRenderer) Destroy() {}
func (r *ledgerRenderer) Refresh() {
	r.Layout(r.l.Size())
	canvas.Refresh(r.l)
}

// ledgerRow is one row of the receipt.
type ledgerRow struct {
	widget.BaseWidget
	label, seller, home, how *prose
	rule                     *canvas.Rectangle
	two                      bool
}

func newLedgerRow() *ledgerRow {
	r := &ledgerRow{rule: canvas.NewRectangle(theme.Color(colRule))}
	r.label = newProse(sizeText).atMost(1)
	r.seller = newProse(sizeText).atMost(1).trailing()
	r.home = newProse(sizeText).atMost(1).trailing()
	r.how = newProse(sizeText).atMost(1)
	r.how.centred = true
	r.ExtendBaseWidget(r)
	return r
}

func (r *ledgerRow) set(row words.ReceiptRow, head bool) {
	color := fyne.ThemeColorName(colInk)
	if head {
		color = colMuted
	}
	cell := func(text string) span { return span{text: text, bold: row.Strong, color: color} }
	r.label.set(cell(row.Label))
	r.seller.set(cell(row.Seller))
	r.home.set(cell(row.Home))
	r.how.set(span{text: row.How, color: colMuted})
}

func (r *ledgerRow) CreateRenderer() fyne.WidgetRenderer { return &ledgerRowRenderer{r} }

type ledgerRowRenderer struct{ r *ledgerRow }

func (rr *ledgerRowRenderer) Layout(size fyne.Size) {
	r := rr.r
	if size.Width < ledgerNarrow {
		r.layNarrow(size)
		return
	}
	h := r.label.lineHeight()
	y := (size.Height - h) / 2
	labelTo := ledgerHome - 84*textFactor
	if r.two {
		labelTo = ledgerSeller - 76*textFactor
		if r.seller.text() == "" {
			labelTo = ledgerHome - 84*textFactor
		}
	}
	place(r.label, 0, y, labelTo, h)
	amount := 110 * textFactor
	place(r.seller, ledgerSeller-amount, y, amount, h)
	place(r.home, ledgerHome-amount, y, amount, h)
	r.placeHow(size)
	place(r.rule, 0, size.Height-1, size.Width, 1)
}

func (r *ledgerRow) heightFor(width float32) float32 {
	if width < ledgerNarrow && r.how.text() != "" {
		r.how.size, r.how.maxLines = sizeSmall, 2
		return ledgerRowHeight + r.how.heightFor(width)
	}
	return ledgerRowHeight
}

// layNarrow puts the amounts to the right edge and the explanation under the label.
func (r *ledgerRow) layNarrow(size fyne.Size) {
	h := r.label.lineHeight()
	amount := 92 * textFactor
	left := size.Width - amount
	if r.two && r.seller.text() != "" {
		left -= amount
	}
	place(r.label, 0, 6, left-6, h)
	place(r.seller, size.Width-2*amount, 6, amount-6, h)
	place(r.home, size.Width-amount, 6, amount, h)
	r.how.size, r.how.maxLines = sizeSmall, 2
	place(r.how, 0, 6+h, size.Width, max(0, size.Height-h-8))
	r.how.Refresh()
	place(r.rule, 0, size.Height-1, size.Width, 1)
}

// placeHow sets a long explanation in two small lines.
func (r *ledgerRow) placeHow(size fyne.Size) {
	w := max(0, size.Width-ledgerHow)
	r.how.size, r.how.maxLines = sizeText, 1
	if r.how.naturalWidth() > w {
		r.how.size, r.how.maxLines = sizeSmall, 2
	}
	place(r.how, ledgerHow, 0, w, size.Height-1)
	r.how.Refresh()
}

func (rr *ledgerRowRenderer) MinSize() fyne.Size { return fyne.NewSize(0, ledgerRowHeight) }
func (rr *ledgerRowRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{rr.r.label, rr.r.seller, rr.r.home, rr.r.how, rr.r.rule}
}
func (rr *ledgerRowRenderer) Destroy() {}
func (rr *ledgerRowRenderer) Refresh() {
	rr.r.rule.FillColor = theme.Color(colRule)
	for _, o := range rr.Objects() {
		o.Refresh()
	}
	rr.Layout(rr.r.Size())
}
