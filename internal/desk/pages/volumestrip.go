package pages

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
)

// volumeStrip shows who is cheaper at how many rolls a year: filled for the reel, thin for boxed,
// in between where they are about the same. Strips of one width and one most are to one
// scale, on which equal factors are equal lengths. A line marks the year as it is.
type volumeStrip struct {
	widget.BaseWidget
	ranges []compare.VolumeRange
	most   int     // the number of rolls at its right end
	today  float64 // rolls a year
	parts  []*canvas.Rectangle
	mark   *canvas.Rectangle
}

func newVolumeStrip(ranges []compare.VolumeRange, most int, today float64) *volumeStrip {
	s := &volumeStrip{ranges: ranges, most: most, today: today, mark: canvas.NewRectangle(kit.Palette().Ink)}
	for range ranges {
		s.parts = append(s.parts, canvas.NewRectangle(kit.Palette().Quiet))
	}
	s.ExtendBaseWidget(s)
	return s
}

// at is where a number of rolls stands on the strip, from 0 to 1.
func (s *volumeStrip) at(rolls float64) float32 {
	if s.most < 2 {
		return 1
	}
	return float32(math.Log(max(rolls, 1)) / math.Log(float64(s.most)+1))
}

func (s *volumeStrip) MinSize() fyne.Size {
	s.ExtendBaseWidget(s)
	return fyne.NewSize(kit.Scaled(60), kit.Scaled(12))
}

// AccessibilityLabel of a strip is nothing: what it shows stands in words under it.
func (s *volumeStrip) AccessibilityLabel() string             { return "" }
func (s *volumeStrip) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleContainer }

func (s *volumeStrip) CreateRenderer() fyne.WidgetRenderer { return &volumeStripRenderer{s} }

type volumeStripRenderer struct{ s *volumeStrip }

func (r *volumeStripRenderer) Layout(size fyne.Size) {
	s, middle := r.s, size.Height/2
	for i, v := range s.ranges {
		from, to := s.at(float64(v.From))*size.Width, s.at(float64(v.To)+1)*size.Width
		high := map[compare.Cheaper]float32{compare.CheaperOffer: 10, compare.CheaperEven: 6, compare.CheaperOther: 3}[v.Cheaper] * kit.TextFactor
		kit.Place(s.parts[i], from, middle-high/2, max(1, to-from-1), high)
	}
	kit.Place(s.mark, s.at(s.today)*size.Width-1, middle-8*kit.TextFactor, 2, 16*kit.TextFactor)
}
func (r *volumeStripRenderer) MinSize() fyne.Size { return r.s.MinSize() }
func (r *volumeStripRenderer) Objects() []fyne.CanvasObject {
	if len(r.s.parts) == 0 {
		return nil
	}
	return append(kit.Objects(r.s.parts...), r.s.mark)
}
func (r *volumeStripRenderer) Destroy() {}
func (r *volumeStripRenderer) Refresh() {
	p := kit.Palette()
	for i, v := range r.s.ranges {
		r.s.parts[i].FillColor = p.Quiet
		if v.Cheaper == compare.CheaperOffer {
			r.s.parts[i].FillColor = p.Accent
		}
	}
	r.s.mark.FillColor = p.Ink
	r.Layout(r.s.Size())
	canvas.Refresh(r.s)
}
