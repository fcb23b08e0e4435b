package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// TextBox is a field: a box of ours with an entry inside, set to the right for
// numbers.
type TextBox struct {
	widget.BaseWidget
	Entry    *Entry
	Trailing bool
	Faulty   bool
	Changed  func(text string)
	Entered  func(in bool)
	frame    *frame
}

// NewTextBox is an empty field, its text to the right when it is trailing.
func NewTextBox(trailing bool) *TextBox {
	b := &TextBox{Entry: newEntry(), Trailing: trailing, frame: newFrame()}
	b.Entry.OnChanged = func(text string) {
		b.Refresh()
		if b.Changed != nil {
			b.Changed(text)
		}
	}
	b.Entry.Entered = func(in bool) {
		b.Refresh()
		if b.Entered != nil {
			b.Entered(in)
		}
	}
	b.ExtendBaseWidget(b)
	return b
}

// Set puts text into the field without telling anyone.
func (b *TextBox) Set(text string) {
	if b.Entry.Text == text {
		return
	}
	tell := b.Entry.OnChanged
	b.Entry.OnChanged = nil
	b.Entry.SetText(text)
	b.Entry.OnChanged = tell
	b.Refresh()
}

func (b *TextBox) SetFaulty(f bool) {
	if b.Faulty != f {
		b.Faulty = f
		b.Refresh()
	}
}

// Tapped in the room beside the entry enters the field.
func (b *TextBox) Tapped(*fyne.PointEvent) { b.enter() }

func (b *TextBox) enter() {
	if c := fyne.CurrentApp().Driver().CanvasForObject(b); c != nil {
		c.Focus(b.Entry)
	}
}

// MouseDown beside the text of a field that is entered already does not leave it, though
// the toolkit takes the focus away: what is typed next goes where the cursor was.
func (b *TextBox) MouseDown(*desktop.MouseEvent) { b.Entry.lent = b.Entry.inside }

// MouseUp gives the focus back.
func (b *TextBox) MouseUp(*desktop.MouseEvent) {
	if b.Entry.lent {
		b.enter()
	}
}

// MouseOut leaves the field if the button was pressed in it and is not let go there.
func (b *TextBox) MouseOut() {
	if b.Entry.lent {
		b.Entry.leave()
	}
}

func (b *TextBox) MouseIn(*desktop.MouseEvent)    {}
func (b *TextBox) MouseMoved(*desktop.MouseEvent) {}

func (b *TextBox) Cursor() desktop.Cursor { return desktop.TextCursor }

func (b *TextBox) MinSize() fyne.Size { return fyne.NewSize(60, FieldHeight) }

func (b *TextBox) CreateRenderer() fyne.WidgetRenderer {
	return &textBoxRenderer{b: b, objects: append(b.frame.objects(), b.Entry)}
}

type textBoxRenderer struct {
	b       *TextBox
	objects []fyne.CanvasObject
}

func (r *textBoxRenderer) Layout(size fyne.Size) {
	b := r.b
	b.frame.layout(size)
	const edge = 2
	beside := entryPadding() - fieldPadding // reaches over the box's edge
	width := size.Width - 2*edge + 2*beside
	if b.Trailing {
		const cursor = 6
		width = min(width, Measure(b.Entry.Text, SizeText, false)+2*entryPadding()+cursor)
	}
	height := LineHeight(SizeText) + 2*entryPadding()
	Place(b.Entry, size.Width-edge+beside-width, (size.Height-height)/2, width, height)
}

func (r *textBoxRenderer) MinSize() fyne.Size           { return r.b.MinSize() }
func (r *textBoxRenderer) Objects() []fyne.CanvasObject { return r.objects }
func (r *textBoxRenderer) Destroy()                     {}
func (r *textBoxRenderer) Refresh() {
	r.b.frame.paint(r.b.Entry.inside, r.b.Faulty)
	r.Layout(r.b.Size())
	r.b.Entry.Refresh()
}
