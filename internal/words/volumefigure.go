package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
)

// Ranging is what is said of who of a pair is cheaper at how many rolls a year.
type Ranging struct {
	v    volumes
	pair *compare.PairOutlook
}

// RangingOf speaks about the ranges of a pair of a comparison, which has some.
func RangingOf(c *compare.Comparison, p *compare.PairOutlook, l money.Locale) Ranging {
	return Ranging{rivals{voiceOf(c, l), p.Offer, p.Other}.volumes(p.Volumes), p}
}

// What stands in the figure of ranges.
const (
	NoVolumes  = "Nothing to hold against each other at other numbers of rolls" // its title where there are none
	RollsAYear = "rolls a year"
	KeyReel    = "reel cheaper" // in its legend
	KeyBoxed   = "boxed cheaper"
)

// VolumesUnder is the line under the title: what is drawn.
func VolumesUnder(c *compare.Comparison) string {
	return fmt.Sprintf("who costs less in %s, all counted, by the rolls shot in a year",
		wholePeriod(c.Scenario.Months))
}

// NoRoomForPairs says how many pairs there was no room for.
func NoRoomForPairs(n int) string {
	if n == 1 {
		return "and one more pair, in the table"
	}
	return fmt.Sprintf("and %d more pairs, in the table", n)
}

// Title is the finding, without a full stop.
func (r Ranging) Title() string { return r.v.title() }

// Name names the two.
func (r Ranging) Name() string { return Pairing(r.pair) }

// Offer is the one of the two whose question it is.
func (r Ranging) Offer() string { return r.pair.Offer }

// Other is the one it is held against.
func (r Ranging) Other() string { return r.pair.Other }

// Ranges are the spans, the lowest first.
func (r Ranging) Ranges() []compare.VolumeRange { return r.v.list }

// Most is the greatest number looked at.
func (r Ranging) Most() int { return r.v.most() }

// Rolls are today's, for drawing.
func (r Ranging) Rolls() float64 { return yearShot(r.v.s).Float() }

// Today marks them: "today 43".
func (r Ranging) Today() string { return TodaysSize + " " + r.v.plain(yearShot(r.v.s), 1) }

// Number is a number of rolls on the axis.
func (r Ranging) Number(n int) string { return r.v.l.Number(exact.Int(int64(n)), 0) }

// Label is who is cheaper in a range, where there is hardly room: "reel", or what the
// offer is called in short.
func (r Ranging) Label(span compare.VolumeRange, short map[string]string) string {
	switch span.Cheaper {
	case compare.CheaperOffer:
		return LabelName(r.v.s, r.v.offer, short[r.v.offer])
	case compare.CheaperOther:
		return LabelName(r.v.s, r.v.other, short[r.v.other])
	}
	return AboutTheSame
}

// Readout says who is cheaper in a range.
func (r Ranging) Readout(span compare.VolumeRange) string {
	return capital(r.v.span(span, rollsAYear)) + ", " + r.v.is(span.Cheaper)
}

// RangingHeader heads the table of the ranges.
func RangingHeader() []string { return append(append([]string{"compared"}, VolumeHeader()...), "") }

// Rows are the ranges in the table, today's marked.
func (r Ranging) Rows() (rows [][]string) {
	at, within := r.v.todays()
	for i, span := range r.v.list {
		rows = append(rows, []string{r.Name(), VolumeSpan(span, r.v.l), VolumeCheaper(r.pair, span), choice(within && i == at, TodaysSize, "")})
	}
	return rows
}
