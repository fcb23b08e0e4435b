package desk

import (
	"fmt"

	"fyne.io/fyne/v2/container"
	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// dealPanel is the quick question: somebody offers film, is it a deal? Nothing of it is
// kept unless it is made a way to buy.
type dealPanel struct {
	d       *Desk
	dialog  *posed
	offer   scenario.Offer
	kind    *picker
	money   *picker
	boxes   map[string]*textBox
	rows    map[string]*row
	verdict *prose
	says    *prose
	good    bool // the deal can be kept
	deal    compare.Deal
	asked   int // rises with every question; an answer to an earlier one is stale
}

// The numbers of the panel, in reading order.
const (
	dealPrice     = "Price asked"
	dealPostage   = "Postage"
	dealRolls     = "Rolls"
	dealLength    = "Length"
	dealExposures = "Exposures in each"
	dealBad       = "Expected bad"
	dealSaving    = "To save a roll"
)

// askDeal opens the panel.
func (d *Desk) askDeal() {
	s := d.current()
	p := &dealPanel{d: d, boxes: map[string]*textBox{}, rows: map[string]*row{}, offer: scenario.NewOffer(&s, scenario.KindBoxed)}
	p.offer.Name = scenario.FreeOfferName(&s, "Somebody's offer")
	p.kind = newPicker([]option{{string(scenario.KindBoxed), "boxed rolls"}, {string(scenario.KindReel), "a reel"}}, func(string) { p.reshape() })
	p.kind.show(string(scenario.KindBoxed))
	p.money = newPicker(allCurrencies, func(string) { p.ask() })
	p.money.plain, p.money.first = true, currenciesOf(&s)
	p.money.show(s.Home)
	begin := map[string]string{dealPrice: "10", dealPostage: "0", dealRolls: "1", dealLength: "100", dealExposures: fmt.Sprint(s.RollExposures), dealBad: "0", dealSaving: fmt.Sprint(compare.CeilingPercent)}
	units := map[string]string{dealLength: "ft", dealBad: "%", dealSaving: "%"}
	width := labelWidth + 320*textFactor
	body := newStack(width, 0, newRow("Somebody offers", p.kind, wideWidth, ""))
	for _, name := range []string{dealPrice, dealPostage, dealRolls, dealLength, dealExposures, dealBad, dealSaving} {
		box := newTextBox(true)
		box.show(begin[name])
		box.changed = func(string) { p.ask() }
		box.entry.escape = func() { p.dialog.wayOut() }
		p.boxes[name] = box
		p.rows[name] = newRow(name, box, numberWidth, units[name])
		body.Add(p.rows[name])
	}
	p.rows[dealPrice].choice = p.money
	p.verdict = newProse(sizeTitle).lines(1)
	p.says = newProse(sizeText).lines(6)
	body.Add(space(8))
	body.Add(p.verdict)
	body.Add(p.says)
	p.reshape()
	p.dialog = d.pose("Is it a deal?", container.New(&exactSize{width}, body), p.boxes[dealPrice].entry,
		reply{label: "Close"}, reply{label: "Keep as a way to buy", do: p.take, stay: true})
}

// reshape shows the fields of the kind.
func (p *dealPanel) reshape() {
	reel := scenario.Kind(p.kind.value) == scenario.KindReel
	for name, there := range map[string]bool{dealRolls: !reel, dealLength: reel} {
		if there {
			p.rows[name].Show()
		} else {
			p.rows[name].Hide()
		}
	}
	p.ask()
}

// ask reads the panel and works the deal out away from the interface thread.
func (p *dealPanel) ask() {
	p.asked++ // an answer under way is about something else
	p.verdict.set()
	p.says.set()
	s := p.d.current()
	o := p.offer
	scenario.SetKind(&s, &o, scenario.Kind(p.kind.value))
	o.Currency = p.money.value
	o.Import = scenario.ImportNone
	if o.Currency != s.Home {
		o.Import = scenario.ImportBorder
	}
	deal := compare.Deal{}
	good := true
	number := func(name string, to *decimal.Decimal) {
		if !p.rows[name].Visible() {
			return
		}
		v, err := readNumber(p.boxes[name].entry.Text, p.d.Locale)
		p.boxes[name].setFaulty(err != nil)
		if err != nil {
			_, remedy := reason(err)
			p.rows[name].complain(remedy)
			good = false
			return
		}
		if whole := name == dealRolls || name == dealExposures; whole && !v.IsInteger() {
			p.boxes[name].setFaulty(true)
			p.rows[name].complain("a whole number, such as 5")
			good = false
			return
		}
		p.rows[name].say("")
		*to = v
	}
	var rolls, exposures, saving decimal.Decimal
	number(dealPrice, &o.Price)
	number(dealPostage, &o.Shipping)
	number(dealExposures, &exposures)
	number(dealBad, &deal.BadPercent)
	number(dealSaving, &saving)
	if o.Reel != nil {
		reel := *o.Reel
		number(dealLength, &reel.Length)
		reel.Exposures = int(exposures.IntPart())
		o.Reel = &reel
	} else {
		number(dealRolls, &rolls)
		o.Boxed = &scenario.Boxed{RollsPerPack: int(rolls.IntPart()), Exposures: int(exposures.IntPart())}
	}
	deal.Offer, deal.SavingPercent = o, exact.FromDecimal(saving)
	if good {
		good = p.sensible(s, o)
	}
	p.good = good
	if !good {
		return
	}
	p.deal = deal
	p.weigh(s)
}

// sensible says what is wrong with the offer as it would stand in the scenario.
func (p *dealPanel) sensible(s scenario.Scenario, o scenario.Offer) bool {
	next := s.Clone()
	next.Offers = append(next.Offers, o)
	if wrong, _ := newFault(s, next, ""); wrong != "" {
		p.verdict.set(span{text: "✗ " + wrong, color: colFault})
		p.says.set()
		return false
	}
	return true
}

func (p *dealPanel) weigh(s scenario.Scenario) {
	asked, deal, l, today := p.asked, p.deal, p.d.Locale, p.d.today()
	p.d.background(func() func() {
		c := compare.Compare(s, scenario.Check(s), today)
		a := compare.Weigh(&c, deal)
		return func() {
			if asked == p.asked {
				p.say(&c, deal, a, l)
			}
		}
	})
}

// say puts up what the deal comes to.
func (p *dealPanel) say(c *compare.Comparison, deal compare.Deal, a compare.DealAnswer, l locale) {
	color := colInk
	if a.Verdict == compare.DealTake {
		color = colGood
	}
	p.verdict.set(span{text: words.DealVerdict(a.Verdict), bold: true, color: color})
	text := ""
	for _, sentence := range words.Deal(c, deal, a, l) {
		text = join(text, sentence)
	}
	if deal.Offer.Kind == scenario.KindBoxed && deal.BadPercent.Sign() > 0 {
		text = join(text, "Kept as a way to buy, a boxed roll counts as good.")
	}
	p.says.set(span{text: text})
}

// take makes the deal a way to buy of the scenario.
func (p *dealPanel) take() {
	if !p.good {
		return
	}
	p.dialog.hide()
	o := p.deal.Offer
	if o.Reel != nil {
		reel := *o.Reel // the engine may be reading the other one
		reel.SpoiledPercent = p.deal.BadPercent
		o.Reel = &reel
	}
	d := p.d
	s := d.current()
	d.session.sel = selection{topicOffer, len(s.Offers)}
	d.alter("adding "+o.Name, func(s *scenario.Scenario) { s.Offers = append(s.Offers, o) })
}
