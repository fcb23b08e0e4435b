package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Entry is an entry that selects all when it is entered, as a form's fields do, and
// hands on the keys that mean something beside typing.
type Entry struct {
	widget.Entry
	Entered func(bool)
	Nudge   func(step int) // up and down keys; nil leaves them to the entry
	Escape  func()
	Called  called // by what stands beside it, nil for nothing
	Wheel   *Wheel // over the text, where the toolkit would keep the wheel to itself
	inside  bool
	lent    bool   // the focus is lent to a click beside the text
	Before  string // the text when the field was entered
}

func newEntry() *Entry {
	t := &Entry{Wheel: NewWheel(nil)}
	t.ExtendBaseWidget(t)
	return t
}

func (t *Entry) FocusGained() {
	t.Entry.FocusGained()
	if t.lent {
		t.lent = false // nothing was left
		return
	}
	t.inside, t.Before = true, t.Text
	t.SelectAll()
	if t.Entered != nil {
		t.Entered(true)
	}
}

func (t *Entry) FocusLost() {
	t.Entry.FocusLost()
	if !t.lent {
		t.leave()
	}
}

// Inside says whether the entry is being typed in.
func (t *Entry) Inside() bool { return t.inside }

func (t *Entry) leave() {
	t.inside, t.lent = false, false
	if t.Entered != nil {
		t.Entered(false)
	}
}

// MouseDown selects all when the press is what enters the field: the entry itself
// would put the cursor there and drop the selection.
func (t *Entry) MouseDown(m *desktop.MouseEvent) {
	was := t.inside
	t.Entry.MouseDown(m)
	if !was && m.Button == desktop.MouseButtonPrimary {
		t.SelectAll()
	}
}

// Resume puts what was being typed elsewhere into the entry, which takes over from there
// when it is given the focus: nothing is selected, and nobody told that it was entered.
func (t *Entry) Resume(from *Entry) {
	tell := t.OnChanged
	t.OnChanged = nil
	t.SetText(from.Text)
	t.OnChanged = tell
	t.CursorColumn = from.CursorColumn
	t.inside, t.lent, t.Before = true, true, from.Before
}

func (t *Entry) SelectAll() { t.Entry.TypedShortcut(&fyne.ShortcutSelectAll{}) }

func (t *Entry) TypedKey(e *fyne.KeyEvent) {
	switch {
	case e.Name == fyne.KeyUp && t.Nudge != nil:
		t.Nudge(1)
	case e.Name == fyne.KeyDown && t.Nudge != nil:
		t.Nudge(-1)
	case e.Name == fyne.KeyEscape && t.Escape != nil:
		t.Escape()
	case e.Name == fyne.KeyF10:
		handOn(t, e)
	default:
		t.Entry.TypedKey(e)
	}
}

// TypedShortcut leaves Alt with a letter to the window, which opens a menu by it: an entry
// knows nothing to do with it, and tells nobody.
func (t *Entry) TypedShortcut(s fyne.Shortcut) {
	if k, ok := s.(*desktop.CustomShortcut); ok && k.Modifier == fyne.KeyModifierAlt && len(k.KeyName) == 1 {
		if c, ok := fyne.CurrentApp().Driver().CanvasForObject(t).(fyne.Shortcutable); ok {
			c.TypedShortcut(s)
		}
		return
	}
	t.Entry.TypedShortcut(s)
}

// CreateRenderer leaves out the toolkit's box: the field draws its own. Another theme
// around the entry would do that too, but the toolkit reads all fonts again for each
// theme around something, each time that it is refreshed, and never lets go of them.
func (t *Entry) CreateRenderer() fyne.WidgetRenderer {
	return &bareRenderer{WidgetRenderer: t.Entry.CreateRenderer(), wheel: t.Wheel}
}

type bareRenderer struct {
	fyne.WidgetRenderer
	wheel   *Wheel
	objects []fyne.CanvasObject
}

func (r *bareRenderer) Layout(size fyne.Size) {
	r.WidgetRenderer.Layout(size)
	r.wheel.Resize(size)
}

// Objects are the entry's but its ground and its edge.
func (r *bareRenderer) Objects() []fyne.CanvasObject {
	r.objects = r.objects[:0]
	for _, o := range r.WidgetRenderer.Objects() {
		if _, box := o.(*canvas.Rectangle); !box {
			r.objects = append(r.objects, o)
		}
	}
	r.objects = append(r.objects, r.wheel)
	return r.objects
}

// entryPadding is the room around the text that the toolkit keeps in an entry.
func entryPadding() float32 { return Look.Size(theme.SizeNameInnerPadding) }
