package figure

import (
	"image/color"
	"math"

	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// bars draws every row: name, parts, total, or why there is none.
func (ch *costChart) bars() {
	t := ch.style.Theme
	for i := range ch.rows {
		r := &ch.rows[i]
		ch.rowName(r)
		if r.offer.Fault != nil {
			ch.leftOut(ch.c, r.offer, ch.left, r.y+ch.plan.height/2+4, ch.W-ch.left, words.NotComputed(ch.c, r.offer))
			continue
		}
		if ch.axis.low < 0 || r.low == r.high {
			ch.box(Rect{math.Round(ch.x(0)), r.y, 1, ch.plan.height}, t.Muted)
		}
		ch.segments(r)
		ch.rowTotal(r)
	}
	if ch.plan.dropped > 0 {
		ch.write(smallFace, 0, ch.plan.end+11, words.NoRoom(ch.plan.dropped), t.Muted)
	}
}

// twoLines is the height from which on a name beside its bar may take two lines.
const twoLines = 30

func (ch *costChart) rowName(r *costRow) {
	f, t := ch.nameFace(*r), ch.style.Theme
	colour := t.Ink
	if f.bold {
		colour = t.Accent
	}
	name := tidy(r.offer.Name)
	if ch.plan.inline {
		middle, room := r.y+ch.plan.height/2, ch.left-12
		if f.width(name) <= room || ch.plan.pitch < twoLines {
			ch.write(f, 0, middle+f.size*0.36, f.fit(name, room), colour)
			return
		}
		f.size = smallFace.size
		ch.writeTwo(f, middle, f.wrap(name, room, 2), colour)
		return
	}
	ch.write(f, 0, r.y-5, f.fit(name, ch.W), colour)
}

// writeTwo sets two lines, or one, about a middle.
func (ch *costChart) writeTwo(f face, middle float64, lines []string, colour color.NRGBA) {
	pitch, up := 13.0, 0.0
	if len(lines) == 2 {
		_, below := f.ink(lines[0])
		above, _ := f.ink(lines[1])
		pitch = max(pitch, below+above+1)
		up = pitch / 2
	}
	for i, line := range lines {
		ch.write(f, 0, middle+f.size*0.36-up+pitch*float64(i), line, colour)
	}
}

// segments draws a row's parts from the zero line, the negative ones to its left.
func (ch *costChart) segments(r *costRow) {
	up, down := 0.0, 0.0
	for _, part := range ch.parts {
		v := part.Of(&r.offer.PerRoll)
		if v.IsZero() {
			continue
		}
		from, to := up, up+v.Float()
		if v.Sign() < 0 {
			from, to = down+v.Float(), down
			down = from
		} else {
			up = to
		}
		seg := Rect{math.Round(ch.x(from)), r.y, 0, ch.plan.height}
		seg.W = math.Round(ch.x(to)) - seg.X
		ch.segment(r, part, seg, ch.style.Locale.Number(v, money.Places(ch.c.Currency())))
	}
}

// litHeight is the height of the mark under a lit part. The others keep their colours,
// which have to be told apart.
const litHeight = 3

// segment draws one part, with its value where that fits and reads.
func (ch *costChart) segment(r *costRow, part words.CostPart, seg Rect, value string) {
	ch.hits = append(ch.hits, Hit{
		Rect: seg, Offer: r.offer.Name, Part: part,
		Text: words.PartReadout(ch.c, r.offer, part, ch.style.Locale),
	})
	colour := partColour(ch.style.Theme, part)
	drawn := seg
	if drawn.W >= 3 {
		drawn.W-- // the gap to the next
	}
	ch.box(drawn, colour)
	if part == ch.style.Lit {
		ch.box(Rect{drawn.X, drawn.bottom() + 1, max(drawn.W, litHeight), litHeight}, ch.style.Theme.Accent)
	}
	label, reads := palette.Label(colour, ch.style.Theme)
	f := smallFace
	switch {
	case ch.plan.height < 13:
		return
	case ch.plan.height > 30:
		f = nameFace
	}
	if reads && f.width(value)+10 <= drawn.W {
		ch.write(f, seg.X+6, r.y+ch.plan.height/2+4, value, label)
	}
}

// rowTotal sets the total after the bar, beyond the line of comparison if it would
// stand on it.
func (ch *costChart) rowTotal(r *costRow) {
	f := ch.plan.total
	x := ch.x(r.high) + afterBar
	if base := ch.c.Baseline(); ch.compares() && base != nil && base != r.offer {
		if at := ch.x(base.PerRoll.Total.Float()); x-4 < at && at < x+f.width(r.total)+4 {
			x = at + afterBar
		}
	}
	ch.write(f, x, r.y+ch.plan.height/2+f.size*0.36, r.total, ch.style.Theme.Ink)
	ch.hits = append(ch.hits, Hit{
		Rect:  Rect{x, r.y, f.width(r.total), ch.plan.height},
		Offer: r.offer.Name, Text: words.RollReadout(ch.c, r.offer, ch.style.Locale),
	})
}

// compareLine is the dotted line at the total the others are compared with. It leaves
// out what is written.
func (ch *costChart) compareLine() {
	base := ch.c.Baseline()
	if !ch.compares() || base == nil {
		return
	}
	t := ch.style.Theme
	x := math.Round(ch.x(base.PerRoll.Total.Float())) + 0.5
	end := ch.plan.end
	if ch.plan.dropped > 0 {
		end += inlineRow
	}
	label := words.ComparedWith
	width := smallFace.width(label)
	ch.write(smallFace, min(max(x-width/2, 0), ch.W-width), end+14, label, t.Muted)
	for y := ch.rows[0].y - 3; y < end+1; y += 4 {
		dot := Rect{x - 0.75, y, 1.5, 2}
		if !ch.clear(dot.grow(2)) {
			continue
		}
		ch.box(dot.grow(1), t.Ground)
		ch.box(dot, t.Ink)
	}
}
