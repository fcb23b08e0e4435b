package words

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// What stands in the figures of what changes the answer.
const (
	SavesMore  = "saves more than today"
	SavesLess  = "saves less than today"
	CostsMore  = "costs more"
	NoSaving   = "no saving"
	BestSize   = "best"
	TodaysSize = "today"
)

// LabelName is what an offer is called where there is hardly room: "reel", "pack",
// "boxed rolls", or the short name given where its kind does not tell it apart.
func LabelName(s *scenario.Scenario, name, short string) string {
	if called := Called(s, name); called != name {
		return strings.TrimPrefix(called, "the ")
	}
	return short
}

// Cheaper names where an offer is the cheaper one: "reel cheaper".
func Cheaper(label string) string { return label + " cheaper" }

// Flipping is what is said of one curve of two years' costs.
type Flipping struct {
	r     rivals
	curve *compare.Curve
}

// FlippingOf speaks about a curve of a comparison.
func FlippingOf(c *compare.Comparison, curve *compare.Curve, l money.Locale) Flipping {
	return Flipping{rivals{voiceOf(c, l), curve.Offer, curve.Other}, curve}
}

// NoCurve is the title where an input has no say in two offers.
const NoCurve = "This figure has no say in these two"

// Title is the finding, without a full stop; sign is that of what the offer saves today.
func (f Flipping) Title(sign int) string {
	if len(f.curve.Volumes) > 0 {
		return f.r.volumes(f.curve.Volumes).title()
	}
	if sign == 0 {
		return "Both cost the same today"
	}
	winner := f.r.offer
	if sign < 0 {
		winner = f.r.other
	}
	text := begin(f.r.s, winner) + strings.TrimPrefix(f.r.is(winner), Called(f.r.s, winner)) + " cheaper"
	crossings := compare.Crossings([]compare.Flip{f.curve.Flip})
	if len(crossings) == 0 {
		return text + " at every value drawn"
	}
	for i, x := range crossings {
		text += choice(i == 0, " unless ", ", or ") + f.r.condition(x)
	}
	return text
}

// Under is the line under the title: what is drawn.
func (f Flipping) Under() string {
	return fmt.Sprintf("%s of %s, all counted, against %s", f.r.shown(), wholePeriod(f.r.s.Months), f.r.against(f.curve.Input))
}

// Unit is what the values of the input are in: "USD", "%", "rolls".
func (f Flipping) Unit() string {
	if unit := f.r.unit(f.curve.Input); unit != "" {
		return unit
	}
	return "rolls"
}

// Today marks today's value: "today 0.8875".
func (f Flipping) Today() string { return "today " + f.r.bareValue(f.curve.Input, f.curve.Today) }

// Crossing marks where the answer crosses over: "1.6398", "15".
func (f Flipping) Crossing(x compare.Crossing) string {
	return f.r.bareAsTyped(x.Input, f.r.threshold(x))
}

// CrossingReadout says where the answer crosses over.
func (f Flipping) CrossingReadout(x compare.Crossing, sign int) string {
	if x.Input == scenario.InputRollsAYear {
		return f.r.volumes(f.curve.Volumes).crossing(x)
	}
	return f.r.crossing(x, sign)
}

// Where says at which value of the input a point is; beside is −1 just below a jump and
// 1 just above it.
func (f Flipping) Where(p compare.CurvePoint, beside int) string {
	value := f.r.value(f.curve.Input, p.At)
	switch {
	case beside < 0:
		return "just below " + value
	case beside > 0:
		return "just above " + value
	}
	return value
}

// Readout says what both years cost at a point, in whole units: curves are computed
// without rounding, and may be some cents off a year that is billed.
func (f Flipping) Readout(p compare.CurvePoint, beside int) string {
	offer, other := Called(f.r.s, f.r.offer), Called(f.r.s, f.r.other)
	saving := f.r.bareWhole(p.Saving().Abs())
	text := fmt.Sprintf("%s, %s: %s %s, %s %s; ", capital(f.r.name(f.curve.Input)), f.Where(p, beside),
		offer, f.r.whole(p.Offer), other, f.r.bareWhole(p.Other))
	switch p.Other.Cmp(p.Offer) {
	case 1:
		return text + offer + " saves " + saving
	case -1:
		return text + offer + " costs " + saving + " more"
	}
	return text + "the same"
}

// Header heads the table of both years over the input.
func (f Flipping) Header() []string {
	unit := ", " + f.r.shown() + " before rounding"
	return []string{f.r.measured(f.curve.Input), f.r.offer + unit, f.r.other + unit, f.r.shown() + " saved"}
}

// Row is one point in the table.
func (f Flipping) Row(p compare.CurvePoint, beside int) []string {
	return []string{f.Where(p, beside), f.r.home(p.Offer), f.r.home(p.Other), f.r.home(p.Saving())}
}

// against is measured within a sentence: "the price of the reel, in USD".
func (r rivals) against(input scenario.Input) string {
	switch input {
	case scenario.InputOfferPrice, scenario.InputBaselinePrice, scenario.InputOfferShipping:
		return "the " + r.measured(input)
	case scenario.InputSpoiledPercent:
		return "how much of " + Called(r.s, r.offer) + " is spoiled, in %"
	}
	return r.measured(input)
}

// measured is an input with what it is measured in: "price of the reel, in USD".
func (r rivals) measured(input scenario.Input) string {
	unit := r.unit(input)
	if unit == "" {
		return r.name(input)
	}
	if _, rate := input.Quote(); rate {
		return r.name(input) + " in " + unit
	}
	return r.name(input) + ", in " + unit
}

// unit is what an input is measured in, "" for rolls.
func (r rivals) unit(input scenario.Input) string {
	if currency := r.currency(input); currency != "" {
		return currency
	}
	switch input {
	case scenario.InputSpoiledPercent, scenario.InputDutyPercent, scenario.InputTaxPercent:
		return "%"
	case scenario.InputRollsAYear:
		return ""
	}
	_, in := pairOfRate(input)
	return in
}

// bareValue is an input's value without its unit: "118.00", "4.2", "0.8875".
func (r rivals) bareValue(input scenario.Input, x exact.Fraction) string {
	if currency := r.currency(input); currency != "" {
		return r.bare(x, currency)
	}
	if _, rate := input.Quote(); rate {
		return r.l.Field(scenario.Trim(significant(x)))
	}
	return r.plain(x, 2)
}

// wholePeriod is the months looked at: "the whole year", "6 months".
func wholePeriod(months int) string {
	if months == 12 {
		return "the whole year"
	}
	return strings.TrimPrefix(period(months), "in ")
}

// Swinging is what is said of how far the saving of an offer swings.
type Swinging struct {
	r      rivals
	c      *compare.Comparison
	offer  *compare.Offer // nil where it is not computed
	swings []compare.Swing
}

// SwingingOf speaks about the swings of an offer of a comparison.
func SwingingOf(c *compare.Comparison, offer string, swings []compare.Swing, l money.Locale) Swinging {
	return Swinging{rivals{voiceOf(c, l), offer, c.Scenario.Baseline}, c, c.Find(offer), swings}
}

// Title is the finding, without a full stop.
func (s Swinging) Title() string {
	if s.offer == nil {
		return notComputedTitle(s.c, s.r.offer)
	}
	name := begin(s.r.s, s.r.offer)
	if s.offer.Against == nil {
		if s.r.offer == s.r.other {
			return name + strings.TrimPrefix(s.r.is(s.r.offer), Called(s.r.s, s.r.offer)) + " what the others are compared with"
		}
		return "Nothing to hold " + Called(s.r.s, s.r.offer) + " against"
	}
	if len(s.swings) == 0 {
		return "No figure moves what " + Called(s.r.s, s.r.offer) + " saves"
	}
	today := s.offer.Against.Saving
	turning, low, high := s.turning(today.Sign())
	switch {
	case today.IsZero():
		return "Nothing is saved or lost today, so every figure decides"
	case len(turning) == 1:
		return capital(s.r.name(turning[0])) + " alone can turn the answer"
	case len(turning) > 1:
		return fmt.Sprintf("%d of %d figures can each turn the answer alone", len(turning), len(s.swings))
	case today.Sign() > 0:
		return fmt.Sprintf("%s saves in every case: at least %s, at most %s", name, s.r.bareWhole(low), s.r.bareWhole(high))
	}
	return fmt.Sprintf("%s costs more in every case: at least %s, at most %s", name, s.r.bareWhole(high.Neg()), s.r.bareWhole(low.Neg()))
}

// turning are the inputs at one of whose ends the saving has another sign than today,
// and the least and the greatest saving.
func (s Swinging) turning(sign int) (list []scenario.Input, low, high exact.Fraction) {
	low, high = s.offer.Against.Saving, s.offer.Against.Saving
	for i := range s.swings {
		w := &s.swings[i]
		low = exact.Min(low, exact.Min(w.SavingLow, w.SavingHigh))
		high = exact.Max(high, exact.Max(w.SavingLow, w.SavingHigh))
		if w.SavingLow.Sign() == -sign || w.SavingHigh.Sign() == -sign {
			list = append(list, w.Input)
		}
	}
	return list, low, high
}

// Under is the line under the title: what is drawn, or what would have it drawn.
func (s Swinging) Under() string {
	switch {
	case s.offer == nil || s.offer.Against != nil && len(s.swings) == 0:
		return ""
	case s.offer.Against == nil && s.r.offer == s.r.other:
		return "Choose another way to buy to see what moves its saving"
	case s.offer.Against == nil:
		return "Choose a way to buy that can be computed as the one compared with"
	}
	return fmt.Sprintf("%s saved by %s %s, all counted, each figure alone at both ends of its range",
		s.r.shown(), Called(s.r.s, s.r.offer), period(s.r.s.Months))
}

// Name names a row: "price of the reel, in USD"; what is in the home currency only says
// what it is, as the line under the title names that.
func (s Swinging) Name(w *compare.Swing) string {
	if _, rate := w.Input.Quote(); !rate && s.r.unit(w.Input) == s.r.shown() {
		return s.r.name(w.Input)
	}
	return s.r.measured(w.Input)
}

// Saving is a saving at a bar's end, in whole units where the largest is not small.
func (s Swinging) Saving(saving, largest exact.Fraction) string {
	if largest.Less(exact.Int(100)) {
		return s.r.home(saving)
	}
	return s.r.l.Number(saving, 0)
}

// At is the input's value at a bar's end: "at 106.20".
func (s Swinging) At(w *compare.Swing, x exact.Fraction) string {
	return "at " + s.r.bareValue(w.Input, x)
}

// TodaysSaving marks what is saved today: "today 360".
func (s Swinging) TodaysSaving(saving, largest exact.Fraction) string {
	return "today " + s.Saving(saving, largest)
}

// NoRoom says how many rows there was no room for.
func (s Swinging) NoRoom(n int) string {
	if n == 1 {
		return "and one that moves it less, in the table"
	}
	return fmt.Sprintf("and %d that move it less, in the table", n)
}

// Readout says what is saved at both ends of a range.
func (s Swinging) Readout(w *compare.Swing) string {
	text := fmt.Sprintf("%s: at %s %s, at %s %s; today %s", capital(s.r.name(w.Input)),
		s.r.value(w.Input, w.Low), s.comesTo(w.SavingLow), s.r.value(w.Input, w.High), s.comesTo(w.SavingHigh), s.r.value(w.Input, w.Today))
	if w.Typed {
		text += "; your own range"
	}
	return text
}

// comesTo is a saving of the offer: "saves EUR 328.54", "costs EUR 20.30 more".
func (s Swinging) comesTo(saving exact.Fraction) string {
	switch saving.Sign() {
	case 1:
		return "saves " + s.r.amount(saving)
	case -1:
		return "costs " + s.r.amount(saving.Neg()) + " more"
	}
	return "costs the same"
}

// Header heads the table of the swings.
func (s Swinging) Header() []string {
	saved := s.r.shown() + " saved"
	return []string{"figure", "today", "low", saved + " at low", "high", saved + " at high", "range"}
}

// Row is one swing in the table.
func (s Swinging) Row(w *compare.Swing) []string {
	return []string{s.r.name(w.Input), s.r.value(w.Input, w.Today), s.r.value(w.Input, w.Low), s.r.home(w.SavingLow),
		s.r.value(w.Input, w.High), s.r.home(w.SavingHigh), choice(w.Typed, "typed", "")}
}

// notComputedTitle is said of an offer that has a fault or is not there.
func notComputedTitle(c *compare.Comparison, offer string) string {
	for i := range c.Offers {
		if o := &c.Offers[i]; o.Name == offer && o.Fault != nil {
			return capital(NotComputed(c, o))
		}
	}
	return nothingTitle(c)
}
