package desk

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"
)

// reply is a button of a dialog. stay keeps the dialog open: do closes it when it is
// content.
type reply struct {
	label string
	do    func()
	stay  bool
}

// posed is a dialog on the screen.
type posed struct {
	dialog  *dialog.CustomDialog
	buttons []*replyButton
}

func (p *posed) hide() { p.dialog.Hide() }

// pose shows a dialog. The first reply is the way out, which Esc takes too; the last is
// the one meant, and has the focus unless something else is given it.
func (d *Desk) pose(title string, content fyne.CanvasObject, focus fyne.Focusable, replies ...reply) *posed {
	p := &posed{dialog: dialog.NewCustomWithoutButtons(title, content, d.win)}
	var row []fyne.CanvasObject
	for _, r := range replies {
		b := newReplyButton(r, p)
		p.buttons = append(p.buttons, b)
		row = append(row, b)
	}
	last := p.buttons[len(p.buttons)-1]
	if len(replies) > 1 {
		last.Importance = widget.HighImportance
	}
	if focus == nil {
		focus = last
	}
	eachPicker(content, func(c *picker) { c.escape = p.wayOut })
	d.dialogs = append(d.dialogs, p)
	p.dialog.SetOnClosed(func() {
		d.dialogs = slices.DeleteFunc(d.dialogs, func(q *posed) bool { return q == p })
	})
	p.dialog.SetButtons(row)
	p.dialog.Show()
	d.win.Canvas().Focus(focus)
	return p
}

// wayOut takes the first reply.
func (p *posed) wayOut() { p.buttons[0].tap() }

// escape takes the way out of the dialog on top, when no field has the focus.
func (d *Desk) escape(e *fyne.KeyEvent) {
	if d.chooser != nil && e.Name == fyne.KeyEscape {
		d.chooser.Hide()
		return
	}
	if n := len(d.dialogs); e.Name == fyne.KeyEscape && n > 0 {
		d.dialogs[n-1].wayOut()
	}
}

// replyButton is a button that Enter presses and Esc leaves by the way out.
type replyButton struct {
	widget.Button
	of *posed
}

func newReplyButton(r reply, of *posed) *replyButton {
	b := &replyButton{of: of}
	b.Text = r.label
	b.OnTapped = func() {
		if !r.stay {
			of.hide()
		}
		if r.do != nil {
			r.do()
		}
	}
	b.ExtendBaseWidget(b)
	return b
}

func (b *replyButton) tap() { b.Tapped(nil) }

func (b *replyButton) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyEscape:
		b.of.wayOut()
	case fyne.KeyReturn, fyne.KeyEnter:
		b.tap()
	default:
		b.Button.TypedKey(e)
	}
}

// tell shows a text that is read and closed.
func (d *Desk) tell(title, text string) { d.pose(title, d.pageOf(text), nil, reply{label: "Close"}) }

// confirm asks before something that cannot be taken back.
func (d *Desk) confirm(title, text, yes string, then func()) {
	d.pose(title, paragraphs(text, 420*textFactor), nil, reply{label: "Cancel"}, reply{label: yes, do: then})
}

// report says that something failed, plainly.
func (d *Desk) report(title string, err error) { d.tell(title, err.Error()) }

// eachPicker visits the choices below o.
func eachPicker(o fyne.CanvasObject, visit func(*picker)) {
	switch w := o.(type) {
	case *fyne.Container:
		for _, c := range w.Objects {
			eachPicker(c, visit)
		}
	case *row:
		eachPicker(w.field, visit)
		if w.choice != nil {
			visit(w.choice)
		}
	case *picker:
		visit(w)
	}
}
