package words

import (
	"fmt"
	"slices"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
)

// What is said of how many rolls are shot in a year claims no more than the ranges say:
// every whole number looked at belongs to one of them.

// mostRangesSaid is how many ranges a sentence lists before it says only where today is.
const mostRangesSaid = 4

// volumes speaks about the ranges of a pair, the lowest first.
type volumes struct {
	rivals
	list []compare.VolumeRange
}

// volumes are the ranges of the two offers.
func (r rivals) volumes(list []compare.VolumeRange) volumes { return volumes{r, list} }

// most is the greatest number looked at.
func (v volumes) most() int { return v.list[len(v.list)-1].To }

// span is a range within a sentence: "at 13 rolls a year or fewer", "from 14 to 16 rolls a
// year", "from 17 rolls a year on, up to the 430 looked at". unit is " rolls a year", or ""
// where that has been said.
func (v volumes) span(r compare.VolumeRange, unit string) string {
	switch {
	case r.From == 1 && r.To == v.most():
		return fmt.Sprintf("at any number%s up to the %d looked at", strings.Replace(unit, " rolls", " of rolls", 1), r.To)
	case r.From == r.To && r.From == 1:
		return "at 1 roll" + strings.TrimPrefix(unit, " rolls")
	case r.From == r.To:
		return fmt.Sprintf("at %d%s", r.From, unit)
	case r.From == 1:
		return fmt.Sprintf("at %d%s or fewer", r.To, unit)
	case r.To == v.most() && unit == "":
		return fmt.Sprintf("from %d up to the %d looked at", r.From, r.To)
	case r.To == v.most():
		return fmt.Sprintf("from %d%s on, up to the %d looked at", r.From, unit, r.To)
	}
	return fmt.Sprintf("from %d to %d%s", r.From, r.To, unit)
}

const rollsAYear = " rolls a year"

// is says who is cheaper, or that it is about the same.
func (v volumes) is(cheaper compare.Cheaper) string {
	switch cheaper {
	case compare.CheaperOffer:
		return v.rivals.is(v.offer) + " cheaper"
	case compare.CheaperOther:
		return v.rivals.is(v.other) + " cheaper"
	}
	return AboutTheSame
}

// who names the cheaper one within a sentence, or says that it is about the same.
func (v volumes) who(cheaper compare.Cheaper) string {
	switch cheaper {
	case compare.CheaperOffer:
		return Called(v.s, v.offer)
	case compare.CheaperOther:
		return Called(v.s, v.other)
	}
	return AboutTheSame
}

// sentence lists the ranges, or where there are many says the one that today is in; "" for
// a single one, which today's answer says already.
func (v volumes) sentence() string {
	if len(v.list) < 2 {
		return ""
	}
	if len(v.list) > mostRangesSaid {
		at, ok := v.todays()
		if !ok {
			return fmt.Sprintf("Up to the %d rolls a year looked at, the answer changes %d times, for orders come in lumps.", v.most(), len(v.list)-1)
		}
		r := v.list[at]
		return fmt.Sprintf("%s, %s; beyond that the answer changes %d times up to the %d looked at, for orders come in lumps.",
			capital(v.span(r, rollsAYear)), v.is(r.Cheaper), len(v.list)-1, v.most())
	}
	var parts []string
	said := false // that somebody is cheaper, which then goes for the next too
	for i, r := range v.list {
		who := v.is(r.Cheaper)
		if said {
			who = v.who(r.Cheaper)
		}
		said = said || r.Cheaper != compare.CheaperEven
		parts = append(parts, v.span(r, choice(i == 0, rollsAYear, ""))+", "+who)
	}
	return capital(strings.Join(parts, "; ")) + "."
}

// todays is the place of the range that today's rolls are in; false where they are in none,
// being no whole number between two ranges, or below 1.
func (v volumes) todays() (int, bool) {
	today := yearShot(v.s)
	i := slices.IndexFunc(v.list, func(r compare.VolumeRange) bool {
		return !today.Less(exact.Int(int64(r.From))) && !exact.Int(int64(r.To)).Less(today)
	})
	return i, i >= 0
}

// crossing says what a crossing of the rolls a year brings: from the range it is in, where
// that is even also the next beyond it.
func (v volumes) crossing(x compare.Crossing) string {
	at := slices.IndexFunc(v.list, func(r compare.VolumeRange) bool {
		n, _ := x.At.Int64()
		return int64(r.From) <= n && n <= int64(r.To)
	})
	if at < 0 {
		return ""
	}
	text := v.span(v.list[at], rollsAYear) + ", " + v.is(v.list[at].Cheaper)
	next := at + 1
	if !x.Up {
		next = at - 1
	}
	if v.list[at].Cheaper == compare.CheaperEven && next >= 0 && next < len(v.list) {
		text += "; " + v.span(v.list[next], "") + ", " + v.is(v.list[next].Cheaper)
	}
	return fmt.Sprintf("%s; now you shoot %s.", capital(text), v.plain(x.Today, 2))
}

// title says the ranges as the finding of a figure, without a full stop.
func (v volumes) title() string {
	who := func(i int) string {
		called := v.who(v.list[i].Cheaper)
		if i == 0 && called != v.offer && called != v.other {
			return capital(called) // a name keeps the letters it was given
		}
		return called
	}
	switch {
	case len(v.list) == 1:
		return fmt.Sprintf("%s up to the %d rolls a year looked at", who(0), v.most())
	case len(v.list) > mostRangesSaid:
		return fmt.Sprintf("Up to %d rolls a year the answer changes %d times", v.most(), len(v.list)-1)
	}
	var parts []string
	for i, r := range v.list {
		unit := choice(i == 0, rollsAYear, "")
		switch {
		case r.From == r.To:
			if r.From == 1 {
				unit = strings.Replace(unit, "rolls", "roll", 1)
			}
			parts = append(parts, fmt.Sprintf("%s at %d%s", who(i), r.From, unit))
		case i == 0:
			parts = append(parts, fmt.Sprintf("%s up to %d%s", who(i), r.To, unit))
		default:
			parts = append(parts, fmt.Sprintf("%s to %d", who(i), r.To))
		}
	}
	return strings.Join(parts, ", ")
}

// VolumeLines say of every range who is cheaper in it: "1 to 15: the pack", "16 to 18: about
// the same". nil where nothing is shot.
func VolumeLines(c *compare.Comparison, p *compare.PairOutlook, l money.Locale) (said []string) {
	v := rivals{voiceOf(c, l), p.Offer, p.Other}.volumes(p.Volumes)
	for _, r := range p.Volumes {
		said = append(said, VolumeSpan(r, l)+": "+v.who(r.Cheaper))
	}
	return said
}

// VolumesTitle heads the tables of ranges, Pairing each of them.
const VolumesTitle = "Who is cheaper, by rolls a year"

// Pairing names the two sides of a pair.
func Pairing(p *compare.PairOutlook) string { return p.Offer + " against " + p.Other }

// VolumeHeader heads a table of ranges.
func VolumeHeader() []string { return []string{"rolls a year", "cheaper"} }

// VolumeSpan is a range of rolls a year in a table: "1 to 13", "17".
func VolumeSpan(r compare.VolumeRange, l money.Locale) string {
	from := l.Number(exact.Int(int64(r.From)), 0)
	if r.From == r.To {
		return from
	}
	return from + " to " + l.Number(exact.Int(int64(r.To)), 0)
}

// AboutTheSame is what a range is in which neither is cheaper by much.
const AboutTheSame = "about the same"

// VolumeCheaper is who is cheaper in a range, in a table.
func VolumeCheaper(p *compare.PairOutlook, r compare.VolumeRange) string {
	switch r.Cheaper {
	case compare.CheaperOffer:
		return p.Offer
	case compare.CheaperOther:
		return p.Other
	}
	return AboutTheSame
}
