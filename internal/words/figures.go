package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// CostPart names one part of what a roll costs.
type CostPart string

// The parts, in the order they are drawn.
const (
	PartFilm       CostPart = "film"
	PartShipping   CostPart = "shipping"
	PartTax        CostPart = "tax"
	PartFees       CostPart = "fees"
	PartLoading    CostPart = "loading"
	PartEquipment  CostPart = "equipment"
	PartDeveloping CostPart = "developing"
	PartTime       CostPart = "time"
)

// CostParts are all parts, in the order they are drawn.
func CostParts() []CostPart {
	return []CostPart{
		PartFilm, PartShipping, PartTax, PartFees, PartLoading, PartEquipment, PartDeveloping, PartTime,
	}
}

// Name is the part in a legend.
func (p CostPart) Name() string {
	if p == PartLoading {
		return "cassettes"
	}
	return string(p)
}

// Of is what the part comes to.
func (p CostPart) Of(r *compare.PerRoll) exact.Fraction {
	switch p {
	case PartFilm:
		return r.Film
	case PartShipping:
		return r.Shipping
	case PartTax:
		return r.Tax
	case PartFees:
		return r.Fees
	case PartLoading:
		return r.Loading
	case PartEquipment:
		return r.Equipment
	case PartDeveloping:
		return r.Developing
	}
	return r.Time
}

// What stands in the figures themselves.
const (
	ComparedWith     = "compared with"
	NothingComputed  = "No way to buy could be computed"
	NothingToCompare = "Nothing to compare yet"
	notAlike         = "Not comparable yet: one counts developing, the other does not"
)

// CostTitle is the finding over the costs per roll, without a full stop.
func CostTitle(c *compare.Comparison, l money.Locale) string {
	p := pairOf(c, l)
	switch {
	case p.reel == nil && p.boxed == nil:
		return nothingTitle(c)
	case p.reel == nil || p.boxed == nil || p.against == nil:
		return p.oneSidedCost(c)
	case p.kind == compare.VerdictUnlike:
		return notAlike
	}
	from, than := "A roll from "+p.theReel(), p.aBoxedRoll()
	difference := p.against.SavingPerRoll
	switch difference.Round(p.places()).Sign() {
	case 0:
		return fmt.Sprintf("%s costs as much as %s", from, than)
	case 1:
		return fmt.Sprintf("%s costs %s less than %s", from, p.home(difference), than)
	}
	return fmt.Sprintf("%s costs %s more than %s", from, p.home(difference.Neg()), than)
}

// CostUnder is the line under CostTitle: what is drawn.
func CostUnder(c *compare.Comparison) string {
	return fmt.Sprintf("%s per roll of %d", c.Currency(), c.Scenario.RollExposures)
}

// SpendTitle is the finding over the spending, without a full stop.
func SpendTitle(c *compare.Comparison, l money.Locale) string {
	p := pairOf(c, l)
	switch {
	case p.reel == nil && p.boxed == nil:
		return nothingTitle(c)
	case shot(p.s).IsZero():
		return "Nothing is shot " + period(p.s.Months)
	case p.reel == nil || p.boxed == nil || p.against == nil:
		return p.oneSidedSpend()
	case p.kind == compare.VerdictUnlike:
		return notAlike
	}
	if m := p.against.EvenMonth; m > 0 && p.kind != compare.VerdictReelIfKept {
		return p.aheadTitle(m)
	}
	return p.cashTitle()
}

// SpendUnder is the line under SpendTitle: what is drawn.
func SpendUnder(c *compare.Comparison) string {
	return c.Currency() + " spent so far, month by month; dots are film orders"
}

// AheadFrom marks the month from which on the reel has cost less; the month counts
// from 1.
func AheadFrom(s *scenario.Scenario, month int) string {
	if month == 1 {
		return "ahead from the start"
	}
	return "ahead from " + MonthName(s, month)
}

// LeftAtEnd says what a year's total leaves over, and the same where there is less
// room; both "" when the rolls round to none.
func LeftAtEnd(c *compare.Comparison, o *compare.Offer, l money.Locale) (text, short string) {
	p := pair{voice: voiceOf(c, l)}
	over := p.rollsOver(o)
	if over == "" {
		return "", ""
	}
	return fmt.Sprintf("and %s, worth %s, left", over, p.bareWhole(o.Year.FilmLeftValue)), "and " + over + " left"
}

// NotComputed stands in the place of an offer that has a fault.
func NotComputed(c *compare.Comparison, o *compare.Offer) string {
	in := offerNamed(&c.Scenario, o.Name)
	if in == nil {
		in = &scenario.Offer{Kind: o.Kind}
	}
	if Waits(c, o) {
		return Reason(o.Fault, in)
	}
	return "not computed: " + Reason(o.Fault, in)
}

// Waits says whether an offer is left out only because nobody typed its price yet.
func Waits(c *compare.Comparison, o *compare.Offer) bool {
	in := offerNamed(&c.Scenario, o.Name)
	return in != nil && isUnpriced(o.Fault, in)
}

// NoRoom says how many offers a figure had no room for.
func NoRoom(n int) string {
	if n == 1 {
		return "and one more, in the table"
	}
	return fmt.Sprintf("and %d more, in the table", n)
}

// PartReadout says what one part of a roll comes to.
func PartReadout(c *compare.Comparison, o *compare.Offer, part CostPart, l money.Locale) string {
	v := voiceOf(c, l)
	return fmt.Sprintf("%s: %s %s of %s a roll", o.Name, part.Name(), v.amount(part.Of(&o.PerRoll)), v.home(o.PerRoll.Total))
}

// RollReadout says what a roll costs.
func RollReadout(c *compare.Comparison, o *compare.Offer, l money.Locale) string {
	v := voiceOf(c, l)
	return fmt.Sprintf("%s: %s a roll", o.Name, v.amount(o.PerRoll.Total))
}

// FaultReadout says why an offer is not drawn.
func FaultReadout(c *compare.Comparison, o *compare.Offer) string {
	return o.Name + ": " + NotComputed(c, o)
}

// MonthReadout says what an offer has cost by a month, counted from 1, and in it.
func MonthReadout(c *compare.Comparison, o *compare.Offer, month int, l money.Locale) string {
	v := voiceOf(c, l)
	text := fmt.Sprintf("%s, %s: %s so far, %s of it this month", o.Name, MonthName(v.s, month),
		v.amount(o.Year.Cumulative[month-1]), v.home(o.Year.Cash[month-1]))
	if n := ordersIn(o, month); n > 0 {
		text += ", with " + v.counted(exact.Int(n), "film order")
	}
	return text
}

func ordersIn(o *compare.Offer, month int) int64 {
	if month > len(o.Year.Orders) {
		return 0
	}
	return o.Year.Orders[month-1]
}

// pairOf is the verdict's pair.
func pairOf(c *compare.Comparison, l money.Locale) pair {
	return pair{
		voice:   voiceOf(c, l),
		kind:    c.Verdict.Kind,
		reel:    c.Find(c.Verdict.Reel),
		boxed:   c.Find(c.Verdict.Boxed),
		against: c.Verdict.Pair,
	}
}

func nothingTitle(c *compare.Comparison) string {
	if len(c.Offers) == 0 || OnlyUnpriced(c) {
		return NothingToCompare
	}
	return NothingComputed
}

// places are the digits of the home currency.
func (v voice) places() int { return money.Places(v.shown()) }

// theReel is the reel in a title, which has no room for a name.
func (p pair) theReel() string {
	if called := p.called(p.reel); called != p.reel.Name {
		return called
	}
	return "the best reel"
}

func (p pair) aBoxedRoll() string {
	if p.called(p.boxed) != p.boxed.Name {
		return "a boxed roll"
	}
	return "the best boxed roll"
}

func (p pair) theBoxed() string {
	if called := p.called(p.boxed); called != p.boxed.Name {
		return called
	}
	return "the best boxed offer"
}

// oneSidedCost is said where there is nothing of the other kind to compare with.
func (p pair) oneSidedCost(c *compare.Comparison) string {
	least, count := (*compare.Offer)(nil), 0
	for i := range c.Offers {
		if o := &c.Offers[i]; o.Fault == nil {
			count++
			if least == nil || o.PerRoll.Total.Less(least.PerRoll.Total) {
				least = o
			}
		}
	}
	if count > 1 {
		return "A roll costs at least " + p.home(least.PerRoll.Total)
	}
	return "A roll costs " + p.home(least.PerRoll.Total)
}

func (p pair) oneSidedSpend() string {
	only, who := p.reel, ""
	if only == nil {
		only = p.boxed
		who = p.theBoxed()
	} else {
		who = p.theReel()
	}
	cost := "costs"
	if who == "the boxed rolls" {
		cost = "cost"
	}
	return fmt.Sprintf("%s %s %s in cash %s", capital(who), cost, p.bareWhole(only.Year.Total), period(p.s.Months))
}

// aheadTitle names the month from which on the reel has cost less cash; where it only
// catches up in that month it says no more.
func (p pair) aheadTitle(month int) string {
	less := "less cash"
	if p.evenIn(month) {
		less = "no more cash"
	}
	if month == 1 {
		return fmt.Sprintf("%s has cost %s from the start", capital(p.theReel()), less)
	}
	return fmt.Sprintf("From %s on %s has cost %s", MonthName(p.s, month), p.theReel(), less)
}

// evenIn says whether reel and boxed have cost the same by a month.
func (p pair) evenIn(month int) bool {
	reel, boxed := p.reel.Year.Cumulative, p.boxed.Year.Cumulative
	return month <= len(reel) && month <= len(boxed) && reel[month-1].Equal(boxed[month-1])
}

// cashTitle is said where the reel never gets ahead for good.
func (p pair) cashTitle() string {
	reel, saving := capital(p.theReel()), p.against.SavingCash
	var left string
	if over := p.over(); over != "" {
		left = ", and leaves " + over
	}
	switch saving.Sign() {
	case 0:
		return fmt.Sprintf("%s costs as much cash %s as %s%s", reel, period(p.s.Months), p.theBoxed(), left)
	case 1:
		return fmt.Sprintf("%s costs %s less cash %s%s", reel, p.bareWhole(saving), period(p.s.Months), left)
	}
	return fmt.Sprintf("%s costs %s more cash %s%s", reel, p.bareWhole(saving.Neg()), period(p.s.Months), left)
}

// Headings of the table under the spending.
const (
	OrdersColumn = "film orders"
	WorthLeft    = "film left, worth"
)

// SpentByMonth heads the months of the table under the spending.
func SpentByMonth(c *compare.Comparison) string { return c.Currency() + " spent by the end of" }

// MonthAndYear names month n of the scenario, counted from 1: "July 2027".
func MonthAndYear(s *scenario.Scenario, n int) string {
	m := s.FirstMonth.Add(n - 1)
	return fmt.Sprintf("%s %d", m.Month, m.Year)
}
