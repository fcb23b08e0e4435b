package compare

import (
	"context"
	"math"

	"reelworth/internal/exact"
)

// VolumeRange is a span of whole rolls a year, both ends in it, at each of which the same
// side costs less in the year, with no rounding anywhere.
type VolumeRange struct {
	From, To int
	Cheaper  Cheaper
}

// Cheaper says which of two sides costs less in the year.
type Cheaper string

// The sides. They are even where the verdict would call them close: the saving is 0, or
// below closePercent of what the other side costs.
const (
	CheaperOffer Cheaper = "offer"
	CheaperOther Cheaper = "other"
	CheaperEven  Cheaper = "even"
)

// mostVolume is the most rolls a year that are looked at: so many times today's, in whole
// rolls, and never more than mostRollsAYear; 0 where not even one is in reach.
func (s *shooting) mostVolume() int {
	most := exact.Min(exact.Int(mostRollsAYear), s.rollsAYear().Mul(exact.Int(farthestRollsAYear)))
	return int(toInt64(most.Floor()))
}

// rollsAYear is the rolls of the scenario's twelve months.
func (s *shooting) rollsAYear() exact.Fraction {
	return exact.Sum(s.demand[:]...).Quo(s.rollExposures)
}

// lookAtVolumes fills in what the year roughly costs at every whole number of rolls, once
// for all whom the offer is compared with.
func (o *outlay) lookAtVolumes(ctx context.Context) error {
	most := o.terms.shooting.mostVolume()
	today := o.terms.shooting.rollsAYear()
	o.volumes = make([]roughly, 0, most)
	for n := 1; n <= most; n++ {
		if err := ctx.Err(); err != nil {
			return err
		}
		o.volumes = append(o.volumes, o.roughYear(o.terms.yield.Good, exact.Int(int64(n)).Quo(today)))
	}
	return nil
}

// volumeRanges is who is cheaper at every whole number of rolls a year; nil where there is
// none to look at.
func (p *pair) volumeRanges(ctx context.Context) (list []VolumeRange, err error) {
	in := rollsInput(&p.terms[offerSide])
	for i := range p.out[offerSide].volumes {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		n := i + 1
		cheaper := p.cheaperAt(&in, n)
		if last := len(list) - 1; last >= 0 && list[last].Cheaper == cheaper {
			list[last].To = n
		} else {
			list = append(list, VolumeRange{n, n, cheaper})
		}
	}
	return list, nil
}

// cheaperAt is who is cheaper at n rolls a year: by the rough reckoning where that is
// sure, else by the years themselves.
func (p *pair) cheaperAt(in *input, n int) Cheaper {
	offer, other := p.out[offerSide].volumes[n-1], p.out[otherSide].volumes[n-1]
	saving, slack := other.cost-offer.cost, roughSlack*(offer.gross+other.gross)
	decided := math.Abs(saving) - closePercent/100.*other.cost
	if offer.sure && other.sure {
		switch {
		case decided < -slack:
			return CheaperEven
		case decided > slack && saving > slack:
			return CheaperOffer
		case decided > slack && saving < -slack:
			return CheaperOther
		}
	}
	x := exact.Int(int64(n))
	otherCost := p.costAt(in, otherSide, x)
	exactly := otherCost.Sub(p.costAt(in, offerSide, x))
	switch {
	case isClose(exactly, otherCost):
		return CheaperEven
	case exactly.Sign() > 0:
		return CheaperOffer
	}
	return CheaperOther
}
