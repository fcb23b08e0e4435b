package desk

import (
	"context"
	"image"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/scenario"
)

// canvasSize is the room for one figure: in the window's units, and how many pixels
// one unit has.
type canvasSize struct {
	width, height, scale float32
	text                 float32 // how much larger than drawn text is to be
}

func (c canvasSize) empty() bool { return c.width < 1 || c.height < 1 }

// job is what is to be worked out.
type job struct {
	epoch    uint64 // of the session; an answer from an earlier one is stale
	scenario scenario.Scenario
	faults   []scenario.Fault
	today    scenario.Date
	chosen   string // the offer the figures stress
	style    figure.Style
	room     [figureCount]canvasSize // empty for a figure that is not on the screen
}

// The figures of the window.
const (
	figureCost = iota
	figureSpend
	figureStrip
	figureFlip
	figureSwings
	figureSizes
	figureCount
)

// picture is a drawing and what it looks like on the screen.
type picture struct {
	drawing *figure.Drawing
	text    float32 // the window's units in one of the drawing's
	image   image.Image
}

// answer is what came of a job.
type answer struct {
	job        job
	comparison *compare.Comparison
	pictures   [figureCount]picture
}

// work computes a job and draws what is on the screen.
func work(_ context.Context, j job) (*answer, bool) {
	c := compare.Compare(j.scenario, j.faults, j.today)
	a := &answer{job: j, comparison: &c}
	a.pictures = drawAll(j.room, func(i int, w, h float64) *figure.Drawing {
		switch i {
		case figureCost:
			return figure.CostPerRoll(&c, j.chosen, w, h, j.style)
		case figureSpend:
			return figure.Spend(&c, j.chosen, w, h, j.style)
		case figureStrip:
			if o := c.Find(j.chosen); o != nil {
				return figure.Strip(o, w, h, j.style)
			}
		}
		return nil
	})
	return a, true
}

// drawAll draws the figures that have room and a drawing.
func drawAll(rooms [figureCount]canvasSize, draw func(i int, w, h float64) *figure.Drawing) (pictures [figureCount]picture) {
	for i, room := range rooms {
		if room.empty() {
			continue
		}
		if d := draw(i, float64(room.width/room.text), float64(room.height/room.text)); d != nil {
			pictures[i] = picture{d, room.text, d.Image(float64(room.scale * room.text))}
		}
	}
	return pictures
}
