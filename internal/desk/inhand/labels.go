package inhand

import (
	"io"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/stock"
	"reelworth/internal/paper"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

// labelsPage shows a reel's labels and its speed code as they will print, and writes them.
type labelsPage struct {
	win      Window
	sheet    *kit.Picker
	of       *kit.Picker
	free     *kit.TextBox
	freeRow  *kit.Row
	measures *measures
	wrong    *kit.Text
	preview  *canvas.Image
	number   *kit.TextBox
	codeOf   *kit.Picker
	code     *fyne.Container
	codeSays *kit.Text
	seen     *canvas.Image
	whole    *fyne.Container
	scroll   *kit.Scroll
	shown    *stock.Stock
}

// Which labels are printed.
const (
	printLoaded = "loaded"
	printToCome = "coming"
)

// Heights of the previews, as drawn.
const previewHeight = 430

func newLabelsPage(win Window) *labelsPage {
	p := &labelsPage{win: win, wrong: kit.NewText(kit.SizeText).AtMost(2), free: kit.NewTextBox(true), number: kit.NewTextBox(true)}
	var sheets []kit.Option
	for _, g := range paper.Grids() {
		sheets = append(sheets, kit.Option{Value: g.Name, Label: g.Name})
	}
	sheets = append(sheets, kit.Option{Value: words.OwnSheet, Label: words.OwnSheet})
	p.sheet = kit.NewPicker(sheets, p.chooseSheet)
	p.of = kit.NewPicker([]kit.Option{{Value: printLoaded, Label: words.LabelsLoaded}, {Value: printToCome, Label: words.LabelsToCome}}, func(v string) {
		p.change(func(s *stock.Sheet) { s.ToCome = v == printToCome })
	})
	p.free.Changed = func(text string) {
		if n, err := form.ReadCount(text, win.Locale()); err == nil {
			p.change(func(s *stock.Sheet) { s.FirstFree = n })
		}
	}
	p.freeRow = kit.NewRow(words.FirstFreeLabel, p.free, kit.NumberWidth, "")
	p.measures = newMeasures(win, func(g paper.Grid) { p.change(func(s *stock.Sheet) { s.Grid = g }) })
	p.number.Set("1")
	var tolerances []kit.Option
	for _, t := range reels.Tolerances() {
		tolerances = append(tolerances, kit.Option{Value: string(t), Label: words.ToleranceName(t)})
	}
	p.codeOf = kit.NewPicker(tolerances, func(v string) { p.change(func(s *stock.Sheet) { s.Tolerance = reels.Tolerance(v) }) })
	p.preview, p.seen = newPreview(), newPreview()
	p.lay()
	return p
}

// lay puts the parts of the page under one another.
func (p *labelsPage) lay() {
	p.codeSays = kit.NewText(kit.SizeText)
	cautions := kit.NewStack(0, 4)
	for _, text := range append(words.SpeedCodeCautions(), words.SpeedCodeSource) {
		cautions.Add(kit.Small(text))
	}
	p.code = kit.NewStack(0, 8, kit.Heading(words.HeadingCode), kit.NewRow(words.CodeTolerance, p.codeOf, kit.WideWidth, ""), p.codeSays,
		kit.FixedHeight(p.seen, kit.Scaled(previewHeight)), kit.NewLink(words.LinkCodePDF, p.writeCode), cautions)
	p.whole = kit.Inset(kit.NewStack(0, 6,
		kit.NewRow(words.LabelSheet, p.sheet, kit.WideWidth, ""), p.measures.content,
		kit.NewRow(words.LabelsOf, p.of, kit.WideWidth, ""), p.freeRow, p.wrong,
		kit.FixedHeight(p.preview, kit.Scaled(previewHeight)),
		kit.NewLink(words.LinkLabelsPDF, p.writeSheets),
		kit.NewRow(words.LabelNumberOf, p.number, kit.NumberWidth, ""), kit.NewLink(words.LinkLabelPNG, p.writeOne),
		kit.Small(words.LabelsClear), kit.Space(12), p.code), 0, 12, 14, 12)
	p.scroll = kit.NewScroll(p.whole)
}

func newPreview() *canvas.Image {
	return &canvas.Image{FillMode: canvas.ImageFillContain, ScaleMode: canvas.ImageScaleSmooth}
}

func (p *labelsPage) name() string              { return words.PageLabels }
func (p *labelsPage) which() stock.Page         { return stock.Labels }
func (p *labelsPage) object() fyne.CanvasObject { return p.scroll }

// change changes how labels are printed, and draws them again.
func (p *labelsPage) change(do func(*stock.Sheet)) {
	s := p.win.Sheet()
	do(&s)
	p.win.SetSheet(s)
	p.win.Restock()
}

// chooseSheet takes one of the sheets to begin with, or the user's own.
func (p *labelsPage) chooseSheet(name string) {
	p.change(func(s *stock.Sheet) {
		for _, g := range paper.Grids() {
			if g.Name == name {
				s.Grid = g
				return
			}
		}
		s.Grid.Name = words.OwnSheet
	})
}

func (p *labelsPage) fill(s *stock.Stock) {
	p.shown = s
	sheet := s.Job.Sheet
	p.sheet.Set(sheet.Grid.Name)
	p.measures.show(sheet.Grid)
	if !p.free.Entry.Inside() {
		p.free.Set(strconv.Itoa(sheet.FirstFree))
	}
	p.of.Set(map[bool]string{false: printLoaded, true: printToCome}[sheet.ToCome])
	p.codeOf.Set(string(sheet.Tolerance))
	p.show(s.Labels)
	p.whole.Refresh()
}

// show puts up what will print.
func (p *labelsPage) show(l *stock.Printed) {
	p.wrong.Set()
	p.preview.Image, p.seen.Image = nil, nil
	if l == nil {
		p.code.Hide()
		return
	}
	switch {
	case l.Fault != paper.GridFine:
		p.wrong.Set(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: words.GridWrong(l.Fault), Color: kit.Fault})
	case len(l.Labels) == 0:
		p.wrong.Set(kit.Span{Text: words.NoLabels, Color: kit.Muted})
	case len(l.Lacking) > 0:
		p.wrong.Set(kit.Span{Text: "! ", Bold: true, Color: kit.Accent}, kit.Span{Text: words.LettersLacking(l.Lacking)})
	}
	if l.Preview != nil {
		p.preview.Image = l.Preview
	}
	p.preview.Refresh()
	p.code.Hide()
	if l.Code != nil {
		p.code.Show()
		p.codeSays.Set(kit.Span{Text: words.SpeedCodeNote(*l.Code)})
		if l.Seen != nil {
			p.seen.Image = l.Seen
		}
		p.seen.Refresh()
	}
}

// writeSheets writes the labels as a PDF.
func (p *labelsPage) writeSheets() {
	if s := p.shown; s != nil && s.Labels != nil && len(s.Labels.Pages) > 0 {
		title, pages, today := words.LabelsTitle(s.Name), s.Labels.Pages, p.win.Today()
		p.win.Export(title, title, []string{".pdf"}, func(w io.Writer) error { return stock.WritePages(w, title, pages, today) })
	}
}

// writeOne writes the label of a number as a picture.
func (p *labelsPage) writeOne() {
	n, err := form.ReadCount(p.number.Entry.Text, p.win.Locale())
	if s := p.shown; err == nil && s != nil && s.Labels != nil {
		for _, label := range s.Labels.Labels {
			if label.Number == n {
				title, grid := words.LabelTitle(s.Name, n), s.Job.Sheet.Grid
				p.win.Export(title, title, []string{".png"}, func(w io.Writer) error { return stock.WriteLabel(w, label, grid) })
				p.wrong.Set()
				return
			}
		}
	}
	p.wrong.Set(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: words.NoSuchLabel, Color: kit.Fault})
}

// writeCode writes the speed code's template as a PDF.
func (p *labelsPage) writeCode() {
	if s := p.shown; s != nil && s.Labels != nil && s.Labels.Drawn != nil {
		title, pages, today := words.SpeedCodeTitle(*s.Labels.Code), []*paper.Page{s.Labels.Drawn}, p.win.Today()
		p.win.Export(title, title, []string{".pdf"}, func(w io.Writer) error { return stock.WritePages(w, title, pages, today) })
	}
}
