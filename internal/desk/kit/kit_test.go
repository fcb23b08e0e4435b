package kit

import (
	"os"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
)

// Widgets ask the theme for their colours when they are made.
func TestMain(m *testing.M) {
	app := test.NewApp()
	app.Settings().SetTheme(Look)
	os.Exit(m.Run())
}

// on puts a widget alone into a window of a size.
func on(t *testing.T, o fyne.CanvasObject, width, height float32) fyne.Window {
	t.Helper()
	app := test.NewApp()
	t.Cleanup(app.Quit)
	app.Settings().SetTheme(Look)
	w := app.NewWindow("")
	w.SetPadded(false)
	w.SetContent(o)
	w.Resize(fyne.NewSize(width, height))
	w.Show()
	return w
}

func key(name fyne.KeyName) *fyne.KeyEvent { return &fyne.KeyEvent{Name: name} }

func mouse(x, y float32) *desktop.MouseEvent {
	return &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, y)}}
}
