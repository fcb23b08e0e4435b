package compare

import "reelworth/internal/exact"

// PrintedOff is how far the receipt's lines, each rounded to so many decimals, come out
// from its sums rounded likewise: the largest difference, in the currency that the offer is
// in, 0 where all adds up. It is nothing for an offer that could not be computed.
func (o *Offer) PrintedOff(places int) (most exact.Fraction) {
	if o.Fault != nil {
		return most
	}
	printed := func(f exact.Fraction) exact.Fraction { return f.Round(places) }
	off := func(added, sum exact.Fraction) { most = exact.Max(most, added.Sub(printed(sum)).Abs()) }
	var lines exact.Fraction
	for _, line := range o.Order.Receipt {
		switch line.Kind {
		case LineCharged:
			off(lines, line.Home)
			lines = printed(line.Home)
		case LineLanded:
			off(lines, line.Home)
		default:
			lines = lines.Add(printed(line.Home))
		}
	}
	p := &o.PerRoll
	var parts exact.Fraction
	for _, part := range []exact.Fraction{p.Landed(), p.Loading, p.Equipment, p.Developing, p.Time} {
		parts = parts.Add(printed(part))
	}
	off(parts, p.Total)
	return most
}
