package answer

import (
	"context"
	"image"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/scenario"
)

// Room is the room for one figure: in the window's units, and how many pixels
// one unit has.
type Room struct {
	Width, Height, Scale float32
	Text                 float32 // how much larger than drawn text is to be
}

func (c Room) empty() bool { return c.Width < 1 || c.Height < 1 }

// Rooms has the space of each figure, empty for one that is not on the screen.
type Rooms [Figures]Room

// Job is what is to be worked out.
type Job struct {
	Epoch    uint64 // of the session; an answer from an earlier one is stale
	Scenario scenario.Scenario
	Faults   []scenario.Fault
	Today    scenario.Date
	Chosen   string // the offer the figures stress
	In       string // the currency to show it in, "" for home
	Style    figure.Style
	Room     Rooms
}

// The figures of the window.
const (
	Cost = iota
	Spend
	Strip
	Flip
	Swings
	Volumes
	Sizes
	Cuts
	Days
	Figures
)

// Picture is a drawing and what it looks like on the screen.
type Picture struct {
	Drawing *figure.Drawing
	Text    float32 // the window's units in one of the drawing's
	Image   *image.RGBA
}

// Answer is what came of a job.
type Answer struct {
	Job        Job
	Comparison *compare.Comparison // shown in the currency asked for, where there is a way
	NoWay      bool                // there is none from home to it
	Pictures   [Figures]Picture
}

// shelf has the pixels of pictures that the window shows no more.
var shelf figure.Shelf

// Reuse gives a picture's pixels back to be drawn on. Nothing may show it any more; nil
// is none.
func Reuse(picture *image.RGBA) {
	if picture != nil {
		shelf.Give(picture)
	}
}

// Rest lets go of the pixels that lie ready: no picture follows soon.
func Rest() { shelf.Clear() }

// Ready is how many pixels lie ready to be drawn on.
func Ready() int { return shelf.Pixels() }

// Work computes a job and draws what is on the screen.
func Work(_ context.Context, j Job) (*Answer, bool) {
	c, noWay := shown(compare.Compare(j.Scenario, j.Faults, j.Today), j.Faults, j.In)
	a := &Answer{Job: j, Comparison: c, NoWay: noWay}
	a.Pictures = drawAll(j.Room, func(i int, w, h float64) *figure.Drawing {
		switch i {
		case Cost:
			return figure.CostPerRoll(c, j.Chosen, w, h, j.Style)
		case Spend:
			return figure.Spend(c, j.Chosen, w, h, j.Style)
		case Strip:
			if o := c.Find(j.Chosen); o != nil {
				return figure.Strip(o, w, h, j.Style)
			}
		}
		return nil
	})
	return a, true
}

// shown is a comparison in a currency, "" for home; where the scenario's quotes have no way
// there it stays as it is.
func shown(c compare.Comparison, faults []scenario.Fault, in string) (_ *compare.Comparison, noWay bool) {
	if in == "" || in == c.Scenario.Home {
		return &c, false
	}
	factor, fault := compare.Into(c.Scenario, faults, in)
	if fault != nil {
		return &c, true
	}
	return c.In(in, factor), false
}

// drawAll draws the figures that have room and a drawing.
func drawAll(space Rooms, draw func(i int, w, h float64) *figure.Drawing) (pictures [Figures]Picture) {
	for i, room := range space {
		pictures[i] = Draw(room, func(w, h float64) *figure.Drawing { return draw(i, w, h) })
	}
	return pictures
}

// Draw draws a figure in its room; there is no picture where there is none, or no drawing.
func Draw(room Room, draw func(w, h float64) *figure.Drawing) Picture {
	if room.empty() {
		return Picture{}
	}
	d := draw(float64(room.Width/room.Text), float64(room.Height/room.Text))
	if d == nil {
		return Picture{}
	}
	return Picture{d, room.Text, d.ImageOn(&shelf, float64(room.Scale*room.Text))}
}
