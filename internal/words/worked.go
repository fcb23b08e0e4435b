package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// NoPair says that there is nothing to work an example of.
const NoPair = "There is no pair to work through yet: it takes a reel and boxed film that both can be computed. " +
	"Complete one of each, and the example follows here."

// WorkedIntro stands before the example.
const WorkedIntro = "With the figures of the scenario that is open, in its own currency. Each is rounded only where it is written down, " +
	"so that a last digit may seem to be off by one."

// WorkedTitle stands over the example.
const WorkedTitle = "A worked example"

// Worked is the model gone through with a scenario's own figures: the two offers of the
// verdict from the price to the cost per roll, then one against the other. Amounts are in
// the home currency. c may be nil: nothing was computed yet.
func Worked(c *compare.Comparison, l money.Locale) []Passage {
	if c == nil || c.Verdict.Pair == nil {
		return []Passage{{Paragraphs: []string{NoPair}}}
	}
	c = c.AtHome()
	var list []Passage
	for _, name := range []string{c.Verdict.Reel, c.Verdict.Boxed} {
		o := c.Find(name)
		e := example{receipt{voiceOf(c, l), o, offerNamed(&c.Scenario, name)}}
		list = append(list, Passage{Heading: o.Name, Paragraphs: e.told()})
	}
	p := pair{voice: voiceOf(c, l), reel: c.Find(c.Verdict.Reel), boxed: c.Find(c.Verdict.Boxed), against: c.Verdict.Pair}
	return append(list, Passage{Heading: "One against the other", Paragraphs: p.worked()})
}

// example tells one offer.
type example struct{ receipt }

func (e example) told() []string {
	return []string{
		join(e.price(), e.added(), e.billed()),
		join(e.converted(), e.cardFee()),
		join(e.border(), e.landed()),
		join(e.given(), e.inTime()),
		e.perRoll(),
	}
}

// line is a line of the receipt; false where there is none, or nothing in it.
func (e example) line(kind compare.LineKind) (compare.Line, bool) {
	for _, line := range e.o.Order.Receipt {
		if line.Kind == kind {
			return line, true
		}
	}
	return compare.Line{}, false
}

// asked is an amount in the seller's currency.
func (e example) asked(f exact.Fraction) string { return e.l.Amount(f, e.in.Currency) }

func (e example) price() string {
	text := fmt.Sprintf("One order is %s at %s.", Units(e.o.Order.Units, e.in), e.asked(exact.FromDecimal(e.in.Price)))
	film := e.asked(e.o.Order.Seller.Film)
	if line, _ := e.line(compare.LineFilm); !line.How.Percent.IsZero() {
		return join(text, fmt.Sprintf("Less the discount of %s the film is %s.", e.percent(line.How.Percent), film))
	}
	return join(text, fmt.Sprintf("The film is %s.", film))
}

// added is what the seller adds to the film.
func (e example) added() (text string) {
	s := e.o.Order.Seller
	if line, _ := e.line(compare.LineShipping); line.How.Op == compare.OpFree {
		text = fmt.Sprintf("From %s on shipping is free.", e.asked(line.How.Limit))
	} else if !s.Shipping.IsZero() {
		text = fmt.Sprintf("Shipping adds %s.", e.asked(s.Shipping))
	}
	if line, _ := e.line(compare.LineSalesTax); !s.SalesTax.IsZero() {
		text = join(text, fmt.Sprintf("Sales tax of %s adds %s.", e.percent(line.How.Percent), e.asked(s.SalesTax)))
	}
	if line, there := e.line(compare.LinePrepaid); there && !s.ImportTax.IsZero() {
		text = join(text, fmt.Sprintf("Import tax of %s, which the seller collects, adds %s.", e.percent(line.How.Percent), e.asked(s.ImportTax)))
	}
	return text
}

func (e example) billed() string {
	line, _ := e.line(compare.LineCharged)
	return fmt.Sprintf("The seller charges %s.", e.asked(line.Seller))
}

func (e example) converted() string {
	if len(e.o.Order.Route) == 0 {
		return fmt.Sprintf("That is in %s already, and nothing is converted.", e.s.Home)
	}
	return fmt.Sprintf("At %s the card statement says %s, of which %s is for the film.",
		e.route(e.o.Order.Route), e.amount(e.o.Order.Charged), e.amount(e.o.Order.Home.Film))
}

func (e example) cardFee() string {
	line, _ := e.line(compare.LineCardFee)
	if line.How.Op != compare.OpPercent {
		return ""
	}
	return fmt.Sprintf("The card's fee is %s of %s: %s.", e.percent(line.How.Percent), e.amount(line.How.Of), e.amount(line.Home))
}

// border is what is due at the border, and who decides it.
func (e example) border() string {
	if e.in.Import == "" {
		return "Whether import tax is due is not decided, so nothing is counted for the border."
	}
	if e.in.Import == scenario.ImportNone {
		return "Nothing is due at a border."
	}
	text := join(e.due("Duty", compare.LineDuty), e.due("Import tax", compare.LineImportTax))
	if line, _ := e.line(compare.LineHandling); !line.Home.IsZero() {
		text = join(text, fmt.Sprintf("For handling it the carrier takes %s.", e.amount(line.Home)))
	}
	switch {
	case text == "" && e.in.Import == scenario.ImportPrepaid:
		return "Nothing more is due at the border."
	case text == "":
		return "No duty and no import tax is set for the border."
	}
	return text
}

func (e example) due(what string, kind compare.LineKind) string {
	line, _ := e.line(kind)
	switch line.How.Op {
	case compare.OpWithin:
		return fmt.Sprintf("%s: film for %s is within the free %s, so none.", what, e.amount(line.How.Of), e.amount(line.How.Limit))
	case compare.OpPercent:
		return fmt.Sprintf("%s is %s of %s: %s.", what, e.percent(line.How.Percent), e.amount(line.How.Of), e.amount(line.Home))
	}
	return ""
}

func (e example) landed() string {
	return fmt.Sprintf("Landed, the order is %s.", e.amount(e.o.Order.Landed))
}

// given is what the order gives.
func (e example) given() string {
	units := exact.Int(int64(e.o.Order.Units))
	y := &e.o.Yield
	rolls := e.counted(exact.Int(int64(y.Cassettes)).Mul(units), "roll")
	standard := fmt.Sprintf("%s of %d", e.counted(y.StandardRolls(e.s.RollExposures).Mul(units), "roll"), e.s.RollExposures)
	all, good := exact.Int(int64(y.Exposures)).Mul(units), y.Good.Mul(units)
	if all.Equal(good) {
		return fmt.Sprintf("The order gives %s with %s: %s.", rolls, e.counted(all, "exposure"), standard)
	}
	return fmt.Sprintf("The order gives %s with %s, of which %s are good: %s.", rolls, e.counted(all, "exposure"), e.plain(good, 2), standard)
}

func (e example) inTime() string {
	if !e.o.UsedShare.Less(exact.Int(1)) {
		return ""
	}
	return fmt.Sprintf("Of these %s are shot before the film is too old, and bear the cost of all.", e.share(e.o.UsedShare))
}

// perRoll goes from the landed cost to the whole cost of a roll.
func (e example) perRoll() string {
	p := &e.o.PerRoll
	text := fmt.Sprintf("Landed, a roll of %d comes to %s.", e.s.RollExposures, e.amount(p.Landed()))
	for _, part := range []struct {
		what string
		is   exact.Fraction
	}{{"Loading adds", p.Loading}, {"Equipment worn adds", p.Equipment}, {"Developing adds", p.Developing}, {"Your time adds", p.Time}} {
		if !part.is.IsZero() {
			text = join(text, fmt.Sprintf("%s %s.", part.what, e.amount(part.is)))
		}
	}
	return join(text, fmt.Sprintf("In all, a roll costs %s.", e.amount(p.Total)))
}

// worked holds the reel against the boxed film.
func (p pair) worked() []string {
	a := p.against
	reel, boxed := p.called(p.reel), p.called(p.boxed)
	roll := fmt.Sprintf("A roll costs %s from %s and %s from %s: %s.", p.amount(p.reel.PerRoll.Total), reel,
		p.amount(p.boxed.PerRoll.Total), boxed, p.lessOrMore(a.SavingPerRoll))
	cash := fmt.Sprintf("%s, %s leaves your wallet for %s and %s for %s: %s.", capital(period(p.s.Months)),
		p.amount(p.reel.Year.Total), reel, p.amount(p.boxed.Year.Total), boxed, p.lessOrMore(a.SavingCash))
	counted := fmt.Sprintf("All counted, less what is left over and with your time, it is %s and %s: %s.",
		p.amount(p.reel.Year.Cost), p.amount(p.boxed.Year.Cost), p.lessOrMore(a.Saving))
	return []string{roll, join(cash, counted), p.workedPayback()}
}

func (p pair) workedPayback() string {
	a := p.against
	if a.Equipment.IsZero() {
		return "The reel needs no equipment to buy that boxed film does not, so there is nothing to pay back."
	}
	text := fmt.Sprintf("Equipment that only the reel needs costs %s.", p.amount(a.Equipment))
	if a.PaybackRolls == nil {
		return join(text, "Its wear left out, a roll saves nothing, so it is never paid back.")
	}
	return join(text, fmt.Sprintf("Its wear left out, a roll saves %s, so it is paid back after %s.", p.amount(a.BeforeWear), p.rolls(*a.PaybackRolls)))
}

// lessOrMore is a saving as what the reel costs, to the minor unit.
func (p pair) lessOrMore(saving exact.Fraction) string {
	switch saving.Round(money.Places(p.shown())).Sign() {
	case -1:
		return p.amount(saving.Neg()) + " more"
	case 1:
		return p.amount(saving) + " less"
	}
	return "the same"
}
