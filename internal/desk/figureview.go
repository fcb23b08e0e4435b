package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
)

// figureView shows a figure and, under the pointer, what it says there.
type figureView struct {
	*kit.ImageView
	drawing *figure.Drawing
	chosen  func(offer string)
	picked  func(units int) // an order of so many units was pointed at; nil where there are none
}

func newFigureView(resized func(), chosen func(string)) *figureView {
	return &figureView{ImageView: kit.NewImageView(resized), chosen: chosen}
}

// put shows a picture; where there is none, what is there stays.
func (v *figureView) put(p picture) {
	if p.drawing == nil {
		return
	}
	v.drawing = p.drawing
	v.Put(p.image, func(at fyne.Position) (kit.Reading, bool) {
		hit, ok := p.drawing.At(float64(at.X/p.text), float64(at.Y/p.text))
		return kit.Reading{Text: hit.Text, Press: v.pressed(hit)}, ok
	})
}

// pressed is what a click on a place of the figure does, nil for nothing.
func (v *figureView) pressed(hit figure.Hit) func() {
	switch {
	case v.picked != nil && hit.Units > 0:
		return func() { v.picked(hit.Units) }
	case hit.Offer != "" && v.chosen != nil:
		return func() { v.chosen(hit.Offer) }
	}
	return nil
}

// putOrHide shows a picture, or takes the one that is there down.
func (v *figureView) putOrHide(p picture) {
	v.put(p)
	if p.drawing == nil {
		v.Clear()
		v.drawing = nil
	}
}

func (v *figureView) room(scale float32) canvasSize {
	if !v.Visible() {
		return canvasSize{}
	}
	s := v.Size()
	return canvasSize{s.Width, s.Height, scale, kit.TextFactor}
}
