package kit

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"
)

// Reply is a button of a dialog. stay keeps the dialog open: do closes it when it is
// content.
type Reply struct {
	Label string
	Do    func()
	Stay  bool
}

// Dialogs are the questions of one window.
type Dialogs struct {
	Window  fyne.Window
	Open    []*Dialog          // on the screen, the last on top
	chooser *dialog.FileDialog // on the screen, nil for none
}

// NewDialogs asks in a window.
func NewDialogs(win fyne.Window) *Dialogs { return &Dialogs{Window: win} }

// Choose shows the toolkit's own dialog for a file or folder.
func (d *Dialogs) Choose(c *dialog.FileDialog) {
	d.chooser = c
	c.SetOnClosed(func() { d.chooser = nil })
	c.Show()
}

// Dialog is a dialog on the screen.
type Dialog struct {
	dialog  *dialog.CustomDialog
	Buttons []*ReplyButton
	text    *Scroll // that is read in it, nil for none
}

func (p *Dialog) Hide() { p.dialog.Hide() }

// Allow says whether a reply can do something now; else it is greyed.
func (p *Dialog) Allow(reply string, yes bool) {
	if p == nil {
		return // it is being made
	}
	for _, b := range p.Buttons {
		if b.Text != reply || b.Disabled() != yes {
			continue
		}
		if yes {
			b.Enable()
		} else {
			b.Disable()
		}
	}
}

// Fit gives the dialog the height that its content needs now.
func (p *Dialog) Fit() {
	if p != nil {
		p.dialog.Resize(p.dialog.MinSize())
	}
}

// Ask shows a dialog. The first reply is the way out, which Esc takes too; the last is
// the one meant, and has the focus unless something else is given it.
func (d *Dialogs) Ask(title string, content fyne.CanvasObject, focus fyne.Focusable, replies ...Reply) *Dialog {
	p := &Dialog{dialog: dialog.NewCustomWithoutButtons(title, content, d.Window)}
	var row []fyne.CanvasObject
	for _, r := range replies {
		b := newReplyButton(r, p)
		p.Buttons = append(p.Buttons, b)
		row = append(row, b)
	}
	last := p.Buttons[len(p.Buttons)-1]
	if len(replies) > 1 {
		last.Importance = widget.HighImportance
	}
	if focus == nil {
		focus = last
	}
	p.text, _ = content.(*Scroll)
	eachPicker(content, func(c *Picker) { c.Escape = p.Leave })
	d.Open = append(d.Open, p)
	p.dialog.SetOnClosed(func() {
		d.Open = slices.DeleteFunc(d.Open, func(q *Dialog) bool { return q == p })
	})
	p.dialog.SetButtons(row)
	p.dialog.Show()
	d.Window.Canvas().Focus(focus)
	return p
}

// Leave takes the first reply.
func (p *Dialog) Leave() { p.Buttons[0].Press() }

// turn moves through the text by a key; it says whether the key is for that.
func (p *Dialog) turn(key fyne.KeyName) bool { return p.text != nil && p.text.Turn(key) }

// Escape takes the way out of the dialog on top, when no field has the focus.
func (d *Dialogs) Escape(e *fyne.KeyEvent) {
	if d.chooser != nil && e.Name == fyne.KeyEscape {
		d.chooser.Hide()
		return
	}
	if n := len(d.Open); e.Name == fyne.KeyEscape && n > 0 {
		d.Open[n-1].Leave()
	}
}

// Tell shows a text that is read and closed.
func (d *Dialogs) Tell(title, text string) {
	d.Ask(title, pageOf(text), nil, Reply{Label: Labels.Close})
}

// Confirm asks before something that cannot be taken back.
func (d *Dialogs) Confirm(title, text, yes string, then func()) {
	d.Ask(title, Paragraphs(text, 420*TextFactor), nil, Reply{Label: Labels.Cancel}, Reply{Label: yes, Do: then})
}

// eachPicker visits the choices below o.
func eachPicker(o fyne.CanvasObject, visit func(*Picker)) {
	switch w := o.(type) {
	case *fyne.Container:
		for _, c := range w.Objects {
			eachPicker(c, visit)
		}
	case *Row:
		eachPicker(w.Field, visit)
		if w.Choice != nil {
			visit(w.Choice)
		}
	case *Picker:
		visit(w)
	}
}
