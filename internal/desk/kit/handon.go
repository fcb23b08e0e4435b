package kit

import "fyne.io/fyne/v2"

// handOn gives the window a key that means nothing to the widget that has the focus: the
// toolkit gives it to one of them only.
func handOn(from fyne.CanvasObject, e *fyne.KeyEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(from); c != nil && c.OnTypedKey() != nil {
		c.OnTypedKey()(e)
	}
}
