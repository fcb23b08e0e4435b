package figure

import (
	"cmp"
	"math"
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

const (
	labelGap  = 14.0 // from a line's end to its label; twice that where many are tied to it
	labelRow  = 16.0 // of one line of a label
	noteRow   = 15.0
	noteGap   = 3.0  // below it
	mostLabel = 0.34 // of the width
)

// endLabel is what stands at a line's end.
type endLabel struct {
	line        *spendLine
	total, name string
	note        string // what is left, "" if nothing
	shortNote   string
	y           float64
	height      float64
	want        float64 // the y of the line's end
}

var (
	endTotal = face{bold: true, size: 12}
	endName  = face{size: 12}
)

// labelOf is the label of a line.
func (ch *spendChart) labelOf(l *spendLine) endLabel {
	label := endLabel{
		line: l, total: ch.total(l.offer.Year.Cumulative[ch.months-1]), name: l.short, height: labelRow,
	}
	label.note, label.shortNote = words.LeftAtEnd(ch.c, l.offer, ch.style.Locale)
	return label
}

// total is an amount in whole units, with the minor unit where all are small.
func (ch *spendChart) total(f exact.Fraction) string {
	most := 0.0
	for _, l := range ch.lines {
		most = max(most, math.Abs(l.cash[ch.months-1]))
	}
	places := 0
	if most < 100 {
		places = money.Places(ch.c.Currency())
	}
	return ch.style.Locale.Number(f, places)
}

// labelWidth is how wide the column of end labels is.
func (ch *spendChart) labelWidth() float64 {
	widest, total := 0.0, 0.0
	for i := range ch.lines {
		l := ch.labelOf(&ch.lines[i])
		total = max(total, endTotal.width(l.total))
		widest = max(widest, endTotal.width(l.total)+4+endName.width(l.name), smallFace.width(l.note))
	}
	return math.Ceil(min(widest, max(mostLabel*ch.W, total)))
}

// gap is the space between the lines' ends and their labels.
func (ch *spendChart) gap() float64 {
	if len(ch.lines) > 3 {
		return 2 * labelGap
	}
	return labelGap
}

// endLabels sets the labels beside the lines' ends, pushed apart, the least telling
// left out where there is no room.
func (ch *spendChart) endLabels() {
	labels := ch.roomFor()
	pushApart(labels, ch.plot.Y-8, ch.plot.bottom()+8)
	x := ch.plot.right() + ch.gap()
	width := ch.W - x
	for i := range labels {
		l := &labels[i]
		text := l.line.pen.text
		base := l.y + labelRow/2 + 4
		if middle := l.y + labelRow/2; math.Abs(middle-l.want) > 3 {
			ch.line(l.line.pen.colour, 1, nil, ch.plot.right()+2, l.want, x-3, middle)
		}
		end := ch.write(endTotal, x, base, l.total, text)
		ch.write(endName, end+4, base, endName.fit(l.name, x+width-end-4), text)
		if l.note != "" && l.height > labelRow {
			note := l.note
			if smallFace.width(note) > width {
				note = smallFace.fit(l.shortNote, width)
			}
			ch.write(smallFace, x, base+noteRow, note, ch.style.Theme.Muted)
		}
	}
}

// roomFor are the labels there is room for, with notes as far as there is room for
// them; the most telling first.
func (ch *spendChart) roomFor() []endLabel {
	room := ch.plot.H + 16
	var labels []endLabel
	for i := range ch.lines {
		if room < labelRow {
			break
		}
		l := ch.labelOf(&ch.lines[i])
		l.want = ch.py(ch.lines[i].cash[ch.months-1])
		labels = append(labels, l)
		room -= labelRow
	}
	for i := range labels {
		if labels[i].note != "" && room >= noteRow+noteGap {
			labels[i].height += noteRow + noteGap
			room -= noteRow + noteGap
		}
	}
	return labels
}

// pushApart places labels near where they want to be without overlap, between top and
// bottom, in the order of the lines' ends.
func pushApart(labels []endLabel, top, bottom float64) {
	sortByWant(labels)
	y := top
	for i := range labels {
		labels[i].y = max(labels[i].want-labelRow/2, y)
		y = labels[i].y + labels[i].height
	}
	y = bottom
	for i := len(labels) - 1; i >= 0; i-- {
		labels[i].y = min(labels[i].y, y-labels[i].height)
		y = labels[i].y
	}
}

func sortByWant(labels []endLabel) {
	slices.SortStableFunc(labels, func(a, b endLabel) int { return cmp.Compare(a.want, b.want) })
}
