package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// typing is an entry that selects all when it is entered, as a form's fields do, and
// hands on the keys that mean something beside typing.
type typing struct {
	widget.Entry
	entered func(bool)
	nudge   func(step int) // up and down keys; nil leaves them to the entry
	escape  func()
	inside  bool
	before  string // the text when the field was entered
}

func newTyping() *typing {
	t := &typing{}
	t.ExtendBaseWidget(t)
	return t
}

func (t *typing) FocusGained() {
	t.Entry.FocusGained()
	t.inside, t.before = true, t.Text
	t.selectAll()
	if t.entered != nil {
		t.entered(true)
	}
}

func (t *typing) FocusLost() {
	t.Entry.FocusLost()
	t.inside = false
	if t.entered != nil {
		t.entered(false)
	}
}

// MouseDown selects all when the press is what enters the field: the entry itself
// would put the cursor there and drop the selection.
func (t *typing) MouseDown(m *desktop.MouseEvent) {
	was := t.inside
	t.Entry.MouseDown(m)
	if !was && m.Button == desktop.MouseButtonPrimary {
		t.selectAll()
	}
}

func (t *typing) selectAll() { t.Entry.TypedShortcut(&fyne.ShortcutSelectAll{}) }

func (t *typing) TypedKey(e *fyne.KeyEvent) {
	switch {
	case e.Name == fyne.KeyUp && t.nudge != nil:
		t.nudge(1)
	case e.Name == fyne.KeyDown && t.nudge != nil:
		t.nudge(-1)
	case e.Name == fyne.KeyEscape && t.escape != nil:
		t.escape()
	default:
		t.Entry.TypedKey(e)
	}
}

// textBox is a field: a box of ours with an entry inside, set to the right for
// numbers.
type textBox struct {
	widget.BaseWidget
	entry    *typing
	holder   *container.ThemeOverride
	trailing bool
	faulty   bool
	changed  func(text string)
	entered  func(in bool)
	frame    *frame
}

func newTextBox(trailing bool) *textBox {
	b := &textBox{entry: newTyping(), trailing: trailing, frame: newFrame()}
	b.holder = container.NewThemeOverride(b.entry, bareLook)
	b.entry.OnChanged = func(text string) {
		b.Refresh()
		if b.changed != nil {
			b.changed(text)
		}
	}
	b.entry.entered = func(in bool) {
		b.Refresh()
		if b.entered != nil {
			b.entered(in)
		}
	}
	b.ExtendBaseWidget(b)
	return b
}

// show puts text into the field without telling anyone.
func (b *textBox) show(text string) {
	if b.entry.Text == text {
		return
	}
	tell := b.entry.OnChanged
	b.entry.OnChanged = nil
	b.entry.SetText(text)
	b.entry.OnChanged = tell
	b.Refresh()
}

func (b *textBox) setFaulty(f bool) {
	if b.faulty != f {
		b.faulty = f
		b.Refresh()
	}
}

// Tapped in the room beside the entry enters the field.
func (b *textBox) Tapped(*fyne.PointEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(b); c != nil {
		c.Focus(b.entry)
	}
}

func (b *textBox) Cursor() desktop.Cursor { return desktop.TextCursor }

func (b *textBox) MinSize() fyne.Size { return fyne.NewSize(60, fieldHeight) }

func (b *textBox) CreateRenderer() fyne.WidgetRenderer {
	return &textBoxRenderer{b: b, objects: append(b.frame.objects(), b.holder)}
}

type textBoxRenderer struct {
	b       *textBox
	objects []fyne.CanvasObject
}

func (r *textBoxRenderer) Layout(size fyne.Size) {
	b := r.b
	b.frame.layout(size)
	width := size.Width - 4
	if b.trailing {
		room := 2*barePadding + 6 // and the cursor
		width = min(width, measure(b.entry.Text, sizeText, false)+room)
	}
	b.holder.Resize(fyne.NewSize(width, size.Height))
	b.holder.Move(fyne.NewPos(size.Width-2-width, 0))
}

func (r *textBoxRenderer) MinSize() fyne.Size           { return r.b.MinSize() }
func (r *textBoxRenderer) Objects() []fyne.CanvasObject { return r.objects }
func (r *textBoxRenderer) Destroy()                     {}
func (r *textBoxRenderer) Refresh() {
	r.b.frame.paint(r.b.entry.inside, r.b.faulty)
	r.Layout(r.b.Size())
	r.b.holder.Refresh()
}
