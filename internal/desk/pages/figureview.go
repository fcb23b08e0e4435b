package pages

import (
	"image"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
)

// FigureView shows a figure and, under the pointer, what it says there.
type FigureView struct {
	*kit.ImageView
	Drawing *figure.Drawing
	chosen  func(offer string)
	picked  func(units int) // an order of so many units was pointed at; nil where there are none
	shown   *image.RGBA     // the picture that is up, nil for none
}

func newFigureView(resized func(), chosen func(string)) *FigureView {
	return &FigureView{ImageView: kit.NewImageView(resized), chosen: chosen}
}

// NewFigureView is a view for pages elsewhere; resized is called when its room changes.
func NewFigureView(resized func()) *FigureView { return newFigureView(resized, nil) }

// Display shows a picture; without a drawing the one that is there is taken down.
func (v *FigureView) Display(p answer.Picture) { v.putOrHide(p) }

// Room is the space for the picture.
func (v *FigureView) Room(scale float32) answer.Room { return v.room(scale) }

// put shows a picture; where there is none, what is there stays.
func (v *FigureView) put(p answer.Picture) {
	if p.Drawing == nil {
		return
	}
	v.Drawing, v.Caption = p.Drawing, p.Drawing.Title()
	was := v.shown
	v.shown = p.Image
	v.Put(p.Image, func(at fyne.Position) (kit.Reading, bool) {
		hit, ok := p.Drawing.At(float64(at.X/p.Text), float64(at.Y/p.Text))
		return kit.Reading{Text: hit.Text, Press: v.pressed(hit)}, ok
	})
	if was != v.shown {
		answer.Reuse(was)
	}
}

// pressed is what a click on a place of the figure does, nil for nothing.
func (v *FigureView) pressed(hit figure.Hit) func() {
	switch {
	case v.picked != nil && hit.Units > 0:
		return func() { v.picked(hit.Units) }
	case hit.Offer != "" && v.chosen != nil:
		return func() { v.chosen(hit.Offer) }
	}
	return nil
}

// putOrHide shows a picture, or takes the one that is there down.
func (v *FigureView) putOrHide(p answer.Picture) {
	v.put(p)
	if p.Drawing == nil {
		v.Clear()
		v.Drawing, v.Caption = nil, ""
	}
}

func (v *FigureView) room(scale float32) answer.Room {
	if !v.Visible() {
		return answer.Room{}
	}
	s := v.Size()
	return answer.Room{Width: s.Width, Height: s.Height, Scale: scale, Text: kit.TextFactor}
}
