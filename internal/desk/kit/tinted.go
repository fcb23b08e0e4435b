package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// tinted is a rectangle in a colour of the theme, whichever theme that is.
type tinted struct {
	widget.BaseWidget
	color fyne.ThemeColorName
	box   *canvas.Rectangle
}

func newTinted(color fyne.ThemeColorName) *tinted {
	t := &tinted{color: color, box: canvas.NewRectangle(theme.Color(color))}
	t.ExtendBaseWidget(t)
	return t
}

func (t *tinted) CreateRenderer() fyne.WidgetRenderer { return &tintedRenderer{t} }

type tintedRenderer struct{ t *tinted }

func (r *tintedRenderer) Layout(s fyne.Size)           { r.t.box.Resize(s) }
func (r *tintedRenderer) MinSize() fyne.Size           { return fyne.NewSize(1, 1) }
func (r *tintedRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.t.box} }
func (r *tintedRenderer) Destroy()                     {}
func (r *tintedRenderer) Refresh() {
	r.t.box.FillColor = theme.Color(r.t.color)
	r.t.box.Refresh()
}

// NewRule is a hairline.
func NewRule() fyne.CanvasObject { return newTinted(Rule) }
