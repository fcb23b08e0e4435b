package dialogs

import (
	"fmt"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// dealPanel is the quick question: somebody offers film, is it a deal? Nothing of it is
// kept unless it is made a way to buy.
type dealPanel struct {
	a       *Asker
	dialog  *kit.Dialog
	offer   scenario.Offer
	kind    *kit.Picker
	money   *kit.Picker
	other   *kit.Picker // what it is compared with
	boxes   map[string]*kit.TextBox
	rows    map[string]*kit.Row
	verdict *kit.Text
	says    *kit.Text
	good    bool // the deal can be kept
	deal    compare.Deal
	asked   int // rises with every question; an answer to an earlier one is stale
}

// The numbers of the panel, in reading order.
const (
	DealPrice     = words.DealPrice
	dealPostage   = words.DealPostage
	DealRolls     = words.DealRolls
	dealLength    = words.DealLength
	dealExposures = words.DealExposures
	DealBad       = words.DealBad
	dealSaving    = words.DealSaving
)

// AskDeal opens the panel.
func (a *Asker) AskDeal() {
	s := a.host.Session().Current()
	p := &dealPanel{a: a, boxes: map[string]*kit.TextBox{}, rows: map[string]*kit.Row{}, offer: scenario.NewOffer(&s, scenario.KindBoxed)}
	p.offer.Name = scenario.FreeOfferName(&s, words.DealName)
	p.kind = kit.NewPicker(form.Options(words.Kinds()), func(string) { p.reshape() })
	p.kind.Set(string(scenario.KindBoxed))
	p.money = kit.NewPicker(form.AllCurrencies, func(string) { p.ask() })
	p.money.Plain, p.money.First = true, form.CurrenciesOf(&s)
	p.money.Set(s.Home)
	p.other = kit.NewPicker(others(&s), func(string) { p.ask() })
	p.other.Set("")
	begin := map[string]string{DealPrice: "10", dealPostage: "0", DealRolls: "1", dealLength: "100", dealExposures: fmt.Sprint(s.RollExposures), DealBad: "0", dealSaving: fmt.Sprint(compare.CeilingPercent)}
	units := map[string]string{dealLength: string(scenario.Feet), DealBad: "%", dealSaving: "%"}
	width := kit.LabelWidth + 320*kit.TextFactor
	body := kit.NewStack(width, 0, kit.NewRow(words.DealKind, p.kind, kit.WideWidth, ""))
	for _, name := range []string{DealPrice, dealPostage, DealRolls, dealLength, dealExposures, DealBad, dealSaving} {
		box := kit.NewTextBox(true)
		box.Set(begin[name])
		box.Changed = func(string) { p.ask() }
		box.Entry.Escape = func() { p.dialog.Leave() }
		p.boxes[name] = box
		p.rows[name] = kit.NewRow(name, box, kit.NumberWidth, units[name])
		p.rows[name].Grew = func() { p.dialog.Fit() }
		body.Add(p.rows[name])
	}
	p.rows[DealPrice].ChooseUnit(p.money)
	body.Add(kit.NewRow(words.DealOther, p.other, kit.WideWidth, ""))
	p.verdict = kit.NewText(kit.SizeTitle)
	p.says = kit.NewText(kit.SizeText).AtLeast(7)
	body.Add(kit.Space(8))
	body.Add(p.verdict)
	body.Add(p.says)
	p.reshape()
	p.dialog = a.on.Ask(words.DealTitle, kit.AtWidth(width, body), p.boxes[DealPrice].Entry,
		kit.Reply{Label: words.Close}, kit.Reply{Label: words.DealKeep, Do: p.take, Stay: true})
	p.dialog.Allow(words.DealKeep, p.good)
}

// others are what a deal can be compared with.
func others(s *scenario.Scenario) []kit.Option {
	list := []kit.Option{{Value: "", Label: words.DealCheapest}}
	for _, o := range s.Offers {
		list = append(list, kit.Option{Value: o.Name, Label: o.Name})
	}
	return list
}

// reshape shows the fields of the kind.
func (p *dealPanel) reshape() {
	reel := scenario.Kind(p.kind.Value) == scenario.KindReel
	for name, there := range map[string]bool{DealRolls: !reel, dealLength: reel} {
		if there {
			p.rows[name].Show()
		} else {
			p.rows[name].Hide()
		}
	}
	p.ask()
}

// ask reads the panel and works the deal out away from the interface thread. What is no
// deal cannot be kept.
func (p *dealPanel) ask() {
	p.read()
	p.dialog.Allow(words.DealKeep, p.good)
}

func (p *dealPanel) read() {
	p.asked++ // an answer under way is about something else
	p.verdict.Set()
	p.says.Set()
	s := p.a.host.Session().Current()
	o := p.offer
	scenario.SetKind(&s, &o, scenario.Kind(p.kind.Value))
	o.Currency = p.money.Value
	o.Import = scenario.ImportNone
	if o.Currency != s.Home {
		o.Import = scenario.ImportBorder
	}
	good := true
	number := func(name string, to *decimal.Decimal) {
		if !p.rows[name].Visible() {
			return
		}
		v, err := p.value(name)
		p.boxes[name].SetFaulty(err != nil)
		if err != nil {
			_, remedy := words.NotTaken(err)
			p.rows[name].Complain(remedy)
			good = false
			return
		}
		if whole := name == DealRolls || name == dealExposures; whole && !v.IsInteger() {
			p.boxes[name].SetFaulty(true)
			p.rows[name].Complain(words.TypeWhole)
			good = false
			return
		}
		p.rows[name].Say("")
		*to = v
	}
	var rolls, exposures, bad, saving decimal.Decimal
	number(DealPrice, &o.Price)
	number(dealPostage, &o.Shipping)
	number(dealExposures, &exposures)
	number(DealBad, &bad)
	number(dealSaving, &saving)
	if o.Reel != nil {
		reel := *o.Reel
		number(dealLength, &reel.Length)
		reel.Exposures, reel.SpoiledPercent = int(exposures.IntPart()), bad
		o.Reel = &reel
	} else {
		number(DealRolls, &rolls)
		o.Boxed = &scenario.Boxed{RollsPerPack: int(rolls.IntPart()), Exposures: int(exposures.IntPart()), SpoiledPercent: bad}
	}
	if good {
		good = p.sensible(s, o)
	}
	p.good = good
	if !good {
		return
	}
	p.deal = compare.Deal{Offer: o, Other: p.other.Value, SavingPercent: exact.FromDecimal(saving)}
	p.weigh(s)
}

// value is a box's number; what is expected to be bad may be a count, "3 of 10".
func (p *dealPanel) value(name string) (decimal.Decimal, error) {
	text := p.boxes[name].Entry.Text
	if percent, ok := form.ReadShare(text); ok && name == DealBad {
		return percent, nil
	}
	return form.ReadNumber(text, p.a.host.Locale())
}

// sensible says what is wrong with the offer as it would stand in the scenario.
func (p *dealPanel) sensible(s scenario.Scenario, o scenario.Offer) bool {
	next := s.Clone()
	next.Offers = append(next.Offers, o)
	if wrong, _ := form.NewFault(s, next, ""); wrong != "" {
		p.verdict.Set(kit.Span{Text: "✗ " + wrong, Color: kit.Fault})
		p.says.Set()
		return false
	}
	return true
}

func (p *dealPanel) weigh(s scenario.Scenario) {
	asked, deal, l, today := p.asked, p.deal, p.a.host.Locale(), p.a.host.Today()
	p.a.work.Do(func() func() {
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
func (p *dealPanel) say(c *compare.Comparison, deal compare.Deal, a compare.DealAnswer, l money.Locale) {
	color := kit.Ink
	if a.Verdict == compare.DealTake {
		color = kit.Good
	}
	p.verdict.Set(kit.Span{Text: words.DealVerdict(a.Verdict), Bold: true, Color: color})
	p.says.Set(kit.Span{Text: strings.Join(words.Deal(c, deal, a, l), " ")})
}

// take makes the deal a way to buy of the scenario.
func (p *dealPanel) take() {
	if !p.good {
		return
	}
	p.dialog.Hide()
	s := p.a.host.Session().Current()
	c := compare.Compare(s, scenario.Check(s), p.a.host.Today())
	if a := compare.Weigh(&c, p.deal); a.Fault == nil { // with the developing it was computed with
		p.deal.Offer = a.Offer
	}
	p.a.host.Change(func(s *session.Session) { s.TakeOffer(p.deal.Offer) })
}
