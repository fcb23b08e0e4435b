package figure

import (
	"strconv"
	"time"

	"reelworth/internal/scenario"
)

// yearsMarked says whether the months run over a year's end.
func (ch *spendChart) yearsMarked() bool {
	first := ch.c.Scenario.FirstMonth
	return ch.months > 0 && first.Add(ch.months-1).Year != first.Year
}

// monthSteps are how many months apart labels may stand.
var monthSteps = []int{1, 2, 3, 6, 12}

// calendar labels the months under the lines, as many as there is room for, and the
// years where they change.
func (ch *spendChart) calendar() {
	t := ch.style.Theme
	y := ch.plot.bottom() + 16
	width := ch.plot.W / float64(ch.months)
	step := monthSteps[len(monthSteps)-1]
	for _, s := range monthSteps {
		if float64(s)*width >= smallFace.width("May")+5 {
			step = s
			break
		}
	}
	for m := range ch.months {
		month := ch.c.Scenario.FirstMonth.Add(m)
		if (int(month.Month)-1)%step != 0 {
			continue
		}
		name := month.Month.String()[:3]
		x := ch.plot.X + (float64(m)+0.5)*width - smallFace.width(name)/2
		if step > 1 { // the label begins with its month
			x = ch.plot.X + float64(m)*width + 1
		}
		if x+smallFace.width(name) <= ch.W && step < 12 {
			ch.write(smallFace, x, y, name, t.Muted)
		}
	}
	if ch.yearsMarked() {
		ch.years(width, y+14)
	}
}

// years writes each year where it begins and marks the place.
func (ch *spendChart) years(width, y float64) {
	t, end := ch.style.Theme, 0.0
	for m := range ch.months {
		month := ch.c.Scenario.FirstMonth.Add(m)
		begins := month.Month == time.January
		if m > 0 && !begins {
			continue
		}
		if begins && m > 0 {
			ch.box(Rect{ch.px(m), ch.plot.Y, 1, ch.plot.H + 6}, t.Rule)
		}
		year := strconv.Itoa(month.Year)
		x := ch.plot.X + float64(m)*width + 1
		if next := untilJanuary(month); m == 0 && float64(next)*width < smallFace.width(year)+6 {
			continue
		}
		if x >= end && x+smallFace.width(year) <= ch.W {
			end = ch.write(smallFace, x, y, year, t.Muted) + 6
		}
	}
}

// untilJanuary is how many months of its year a month begins.
func untilJanuary(m scenario.Month) int { return 13 - int(m.Month) }
