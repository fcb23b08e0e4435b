package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// ReplyButton is a button that Enter presses and Esc leaves by the way out. The keys that
// move through a text move through the one it stands under.
type ReplyButton struct {
	widget.Button
	of leavable
}

// leavable is what a button stands on: it can be closed, and left by its way out.
type leavable interface {
	Hide()
	Leave()
}

func newReplyButton(r Reply, of leavable) *ReplyButton {
	b := &ReplyButton{of: of}
	b.Text = r.Label
	b.OnTapped = func() {
		if !r.Stay {
			of.Hide()
		}
		if r.Do != nil {
			r.Do()
		}
	}
	b.ExtendBaseWidget(b)
	return b
}

func (b *ReplyButton) Press() { b.Tapped(nil) }

func (b *ReplyButton) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyEscape:
		b.of.Leave()
	case fyne.KeyReturn, fyne.KeyEnter:
		b.Press()
	default:
		if text, ok := b.of.(interface{ turn(fyne.KeyName) bool }); !ok || !text.turn(e.Name) {
			b.Button.TypedKey(e)
		}
	}
}
