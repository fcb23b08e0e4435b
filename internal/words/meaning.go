package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Meaning is what a field of the offer at place i comes to: "EUR 30.62" beside the
// shipping, "18 rolls, 0.53 m over" beside the exposures. The key is as in the file:
// "shipping", "reel.length", and for what holds for all offers "shooting.rolls_a_year"
// or "rate[2].equals", where i counts for nothing. It is "" where the field says all itself, and for an offer
// that could not be computed.
func Meaning(key string, c *compare.Comparison, i int, l money.Locale) string {
	c = c.AtHome()
	if text, known := meaningForAll(key, voiceOf(c, l)); known {
		return text
	}
	in := inputs(c, i)
	say, known := meanings[key]
	if !known || in == nil || c.Offers[i].Fault != nil {
		return ""
	}
	return say(field{voiceOf(c, l), &c.Offers[i], in})
}

// field is an offer whose fields are explained.
type field struct {
	voice
	o  *compare.Offer
	in *scenario.Offer
}

// meanings are the fields that are explained, by key.
var meanings = map[string]func(field) string{
	"currency":              field.currency,
	"price":                 field.price,
	"units":                 field.units,
	"on_hand":               field.onHand,
	"discount_percent":      field.discount,
	"shipping":              field.shipping,
	"shipping_each_extra":   field.eachExtra,
	"free_shipping_from":    field.freeFrom,
	"sales_tax_percent":     func(f field) string { return f.line(f.o.Order.Home.SalesTax) },
	"card_fee_percent":      field.cardFee,
	"import":                field.importTax,
	"price_rise_percent":    field.priceRise,
	"keeps_months":          field.keeps,
	"developing":            field.developing,
	"reel.length":           field.length,
	"reel.exposures":        field.cut,
	"reel.spoiled_percent":  field.good,
	"reel.test_exposures":   field.test,
	"reel.short_roll_from":  field.shortRoll,
	"boxed.rolls_per_pack":  field.pack,
	"boxed.exposures":       field.pack,
	"boxed.spoiled_percent": field.good,
}

// meaningForAll is the meaning of a field that belongs to no offer; known says whether
// key is such a field.
func meaningForAll(key string, v voice) (text string, known bool) {
	if key == "shooting.rolls_a_year" {
		return v.plain(v.s.Shooting.AMonth(), 1) + " a month", true
	}
	var n int
	if _, err := fmt.Sscanf(key, "rate[%d].equals", &n); err != nil {
		return "", false
	}
	if n < 1 {
		return "", true
	}
	return QuoteMeaning(v.s, n-1, v.l), true
}

func (f field) foreign() bool { return f.in.Currency != f.s.Home }

// line is an amount of the receipt, "" when there is none.
func (f field) line(amount exact.Fraction) string {
	if amount.IsZero() {
		return ""
	}
	return f.amount(amount)
}

// converted is an amount of the seller's at home, "" when it is at home already.
func (f field) converted(d scenario.Decimal) string {
	if !f.foreign() || d.IsZero() {
		return ""
	}
	return f.amount(f.o.Order.Route.Convert(exact.FromDecimal(d)))
}

func (f field) price() string { return f.converted(f.in.Price) }

// currency is the quotes used to bring the seller's currency home.
func (f field) currency() string { return f.route(f.o.Order.Route) }

func (f field) units() string {
	if f.o.Order.Units == 1 {
		return ""
	}
	return f.amount(f.o.Order.Landed) + " landed"
}

func (f field) onHand() string {
	if f.in.OnHand.IsZero() {
		return ""
	}
	rolls := f.o.Yield.StandardRolls(f.s.RollExposures).Mul(exact.FromDecimal(f.in.OnHand))
	return f.counted(rolls.Round(1), "roll") + ", not paid for"
}

func (f field) discount() string { return f.amount(f.o.Order.Home.Film) + " of film" }

func (f field) shipping() string {
	for _, line := range f.o.Order.Receipt {
		if line.Kind == compare.LineShipping && line.How.Op == compare.OpFree {
			return "free, film is " + f.l.Amount(line.How.Of, f.in.Currency)
		}
	}
	if !f.foreign() && f.o.Order.Units == 1 {
		return ""
	}
	return f.line(f.o.Order.Home.Shipping)
}

func (f field) eachExtra() string {
	if f.o.Order.Units == 1 || f.in.ShippingEachExtra.IsZero() {
		return ""
	}
	return fmt.Sprintf("%d × %s", f.o.Order.Units-1,
		f.l.Amount(exact.FromDecimal(f.in.ShippingEachExtra), f.in.Currency))
}

func (f field) freeFrom() string {
	if !f.in.FreeShippingFrom.Set {
		return "never free"
	}
	return f.converted(f.in.FreeShippingFrom.Decimal)
}

func (f field) cardFee() string {
	if !f.foreign() && !f.in.CardFeePercent.IsZero() {
		return "none in " + f.s.Home
	}
	return f.line(f.o.Order.Home.CardFee)
}

// importTax is what the choice of import costs, duty included.
func (f field) importTax() string {
	home := &f.o.Order.Home
	if f.in.Import == scenario.ImportUndecided {
		return "nothing counted"
	}
	if f.in.Import != scenario.ImportNone && f.s.Border.TaxPercent.IsZero() && f.s.Border.DutyPercent.IsZero() {
		return "0 % so far" // chosen, but not yet entered at the border
	}
	if home.Duty.IsZero() {
		return f.line(home.ImportTax)
	}
	return f.amount(home.AtBorder()) + " with duty"
}

func (f field) priceRise() string {
	if f.in.PriceRisePercent.IsZero() {
		return ""
	}
	return f.l.Amount(compare.PriceInAYear(f.in), f.in.Currency) + " in a year"
}

func (f field) keeps() string {
	if !f.in.KeepsMonths.Set {
		return "no limit"
	}
	if f.o.UsedShare.Less(exact.Int(1)) {
		return f.share(f.o.UsedShare) + " shot in time"
	}
	return ""
}

func (f field) developing() string {
	if !f.o.CountsDeveloping {
		return "not counted"
	}
	return f.amount(f.o.DevelopingEach) + " a roll"
}

// length is the reel's length in the other unit.
func (f field) length() string {
	cut := f.o.Yield.Cut
	if cut == nil {
		return ""
	}
	if f.in.Reel != nil && f.in.Reel.LengthUnit == scenario.Metres {
		return f.plain(cut.Reel.Length.Quo(film.Foot).Round(1), 1) + " ft"
	}
	return f.metres(cut.Reel.Length)
}

// cut is how the reel divides: "18 rolls and one of 14, 0.02 m over".
func (f field) cut() string {
	cut := f.o.Yield.Cut
	if cut == nil {
		return ""
	}
	rolls := f.counted(exact.Int(cut.FullRolls), "roll")
	switch {
	case cut.FullRolls == 0:
		rolls = fmt.Sprintf("one roll of %d", cut.ShortRollExposures)
	case cut.ShortRollExposures > 0:
		rolls += fmt.Sprintf(" and one of %d", cut.ShortRollExposures)
	}
	return fmt.Sprintf("%s, %s over", rolls, f.metres(cut.LeftOver))
}

// good is how many of a unit's exposures are good, of one with another.
func (f field) good() string {
	good, all := f.o.Yield.Good.Round(2), exact.Int(int64(f.o.Yield.Exposures))
	if good.Equal(all) {
		return "all " + f.counted(all, "exposure") + " good"
	}
	return f.plain(good, 2) + " of " + f.counted(all, "exposure") + " good"
}

func (f field) test() string {
	cut := f.o.Yield.Cut
	if cut == nil || cut.Reel.TestExposures == 0 {
		return ""
	}
	return f.metres(cut.Reel.Frame().Mul(exact.Int(int64(cut.Reel.TestExposures))))
}

func (f field) shortRoll() string {
	cut := f.o.Yield.Cut
	if cut == nil {
		return ""
	}
	if cut.ShortRollExposures == 0 {
		return "no short roll"
	}
	return fmt.Sprintf("a short roll of %d", cut.ShortRollExposures)
}

// pack is a pack in standard rolls, "" when its rolls are such.
func (f field) pack() string {
	std := f.o.Yield.StandardRolls(f.s.RollExposures)
	if std.Equal(exact.Int(int64(f.o.Yield.Cassettes))) {
		return ""
	}
	return fmt.Sprintf("as much as %s of %d", f.counted(std.Round(2), "roll"), f.s.RollExposures)
}
