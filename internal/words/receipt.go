package words

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// ReceiptRow is one row of the receipt, ready to show. Amounts stand under the codes
// of ReceiptColumns; "" is an empty cell.
type ReceiptRow struct {
	Label  string
	Seller string // in the seller's currency
	Home   string
	How    string // how it came about
	Strong bool   // a sum
}

// ReceiptColumns are the currencies over the two columns of amounts; seller is "" when
// the offer is priced at home, so that one column does.
func ReceiptColumns(c *compare.Comparison, i int) (seller, home string) {
	if o := inputs(c, i); o != nil && o.Currency != c.Currency() {
		seller = o.Currency
	}
	return seller, c.Currency()
}

// Receipt is the landed cost of the offer at place i line by line, then what a roll
// comes to. It is empty for an offer that could not be computed.
func Receipt(c *compare.Comparison, i int, l money.Locale) []ReceiptRow {
	in := inputs(c, i)
	if in == nil || c.Offers[i].Fault != nil {
		return nil
	}
	r := receipt{voiceOf(c, l), &c.Offers[i], in}
	var rows []ReceiptRow
	for _, line := range r.o.Order.Receipt {
		if !r.idle(line) {
			rows = append(rows, r.row(line))
		}
	}
	rows = append(rows, r.rollRow())
	return append(rows, r.partRows()...)
}

// ReceiptRounding says that the lines as they are printed do not quite add up to the sums,
// "" where they do.
func ReceiptRounding(c *compare.Comparison, i int, l money.Locale) string {
	if inputs(c, i) == nil {
		return ""
	}
	v := voiceOf(c, l)
	off := c.Offers[i].PrintedOff(money.Places(v.shown()))
	if off.IsZero() {
		return ""
	}
	how := "Each line is rounded only for print"
	if c.Currency() != c.Scenario.Home {
		how = "Each line is converted exactly and rounded only for print"
	}
	return how + ": added up as printed they come out up to " + v.amount(off) + " off the sums."
}

// receipt writes the rows of one offer.
type receipt struct {
	voice
	o  *compare.Offer
	in *scenario.Offer
}

// idle says that a line is nothing and has nothing to explain, so that it would only
// be in the way.
func (r receipt) idle(line compare.Line) bool {
	switch line.Kind {
	case compare.LineFilm, compare.LineLanded:
		return false
	case compare.LineCharged: // at home it repeats the film unless something joins it
		return r.in.Currency == r.s.Home && line.Seller.Equal(r.o.Order.Seller.Film)
	}
	return line.Home.IsZero() && line.How.Op == compare.OpNone
}

func (r receipt) row(line compare.Line) ReceiptRow {
	row := ReceiptRow{
		Label:  r.label(line.Kind),
		Home:   r.home(line.Home),
		How:    r.formula(line, r.o, *r.in),
		Strong: line.Kind == compare.LineCharged || line.Kind == compare.LineLanded,
	}
	if line.Billed && r.in.Currency != r.shown() {
		row.Seller = r.bare(line.Seller, r.in.Currency)
	}
	return row
}

// lineLabels are the lines' names.
var lineLabels = map[compare.LineKind]string{
	compare.LineFilm:      "Film",
	compare.LineShipping:  "Shipping",
	compare.LineSalesTax:  "Sales tax",
	compare.LinePrepaid:   "Import tax, by the seller",
	compare.LineCharged:   "Charged to the card",
	compare.LineCardFee:   "Card fee",
	compare.LineDuty:      "Duty",
	compare.LineImportTax: "Import tax",
	compare.LineHandling:  "Handling at the border",
}

func (r receipt) label(kind compare.LineKind) string {
	if kind == compare.LineLanded {
		return "Landed, " + Units(r.o.Order.Units, r.in)
	}
	return lineLabels[kind]
}

// Units names n units of an offer: "one reel", "2 packs", "3 rolls".
func Units(n int, o *scenario.Offer) string {
	if n == 1 {
		return "one " + UnitName(o)
	}
	return fmt.Sprintf("%d %ss", n, UnitName(o))
}

// UnitName is what one price buys.
func UnitName(o *scenario.Offer) string {
	switch {
	case o.Kind == scenario.KindReel:
		return "reel"
	case o.Boxed != nil && o.Boxed.RollsPerPack == 1:
		return "roll"
	}
	return "pack"
}

// rollRow is the landed cost brought to one standard roll.
func (r receipt) rollRow() ReceiptRow {
	units := exact.Int(int64(r.o.Order.Units))
	good := r.o.Yield.Good.Mul(units)
	std := r.o.Yield.StandardRolls(r.s.RollExposures).Mul(units)
	how := fmt.Sprintf("%s ÷ %s of %d", r.home(r.o.Order.Landed), r.counted(std, "roll"), r.s.RollExposures)
	if r.o.UsedShare.Less(exact.Int(1)) {
		how = fmt.Sprintf("%s ÷ %s of %d shot in time, %s of %s", r.home(r.o.Order.Landed),
			r.counted(std.Mul(r.o.UsedShare), "roll"), r.s.RollExposures,
			r.share(r.o.UsedShare), r.plain(std, 2))
	}
	return ReceiptRow{
		Label: fmt.Sprintf("%s, %s good", r.counted(exact.Int(int64(r.o.Yield.Cassettes)).Mul(units), "roll"),
			r.counted(good, "exposure")),
		Home: r.home(r.o.PerRoll.Landed()) + " a roll",
		How:  how,
	}
}

// partRows are the parts of a roll's cost beside the film, and their sum.
func (r receipt) partRows() []ReceiptRow {
	p := r.o.PerRoll
	parts := []struct {
		label string
		part  exact.Fraction
		how   string
	}{
		{r.loadingLabel(), p.Loading, r.howLoading()},
		{"Equipment", p.Equipment, r.howEquipment()},
		{"Developing", p.Developing, r.howDeveloping()},
		{"Time", p.Time, r.amount(r.typed(r.s.Loading.HourlyValue)) + " an hour"},
	}
	var rows []ReceiptRow
	for _, part := range parts {
		if !part.part.IsZero() {
			rows = append(rows, ReceiptRow{Label: part.label, Home: r.home(part.part), How: part.how})
		}
	}
	return append(rows, ReceiptRow{Label: "Cost per roll", Home: r.home(p.Total), Strong: true})
}

func (r receipt) loadingLabel() string {
	if r.s.Loading.ConsumablesPerRoll.IsZero() {
		return "Cassettes"
	}
	return "Cassettes, tape"
}

// howLoading says what loading one cassette costs, and for how many standard rolls.
func (r receipt) howLoading() string {
	l := &r.s.Loading
	each := r.home(r.typed(l.CassettePrice))
	if l.CassetteLoads > 1 {
		each += fmt.Sprintf(" ÷ %d loads", l.CassetteLoads)
	}
	if !l.ConsumablesPerRoll.IsZero() {
		each += " + " + r.home(r.typed(l.ConsumablesPerRoll))
	}
	return each + " each" + r.stretched()
}

// howEquipment names what is not owned yet.
func (r receipt) howEquipment() string {
	var names []string
	add := func(list []scenario.Equipment) {
		for _, e := range list {
			if !e.Owned {
				names = append(names, e.Name)
			}
		}
	}
	if r.in.Kind == scenario.KindReel {
		add(r.s.Loading.Equipment)
	}
	if d := processNamed(r.s, r.in.Developing); d != nil {
		add(d.Equipment)
	}
	return strings.Join(names, ", ")
}

func (r receipt) howDeveloping() string {
	return r.home(r.o.DevelopingEach) + " each" + r.stretched()
}

// stretched says that the exposures that are good come from more cassettes than they
// would fill.
func (r receipt) stretched() string {
	std := r.o.Yield.StandardRolls(r.s.RollExposures)
	cassettes := exact.Int(int64(r.o.Yield.Cassettes))
	if std.Equal(cassettes) {
		return ""
	}
	return fmt.Sprintf(", %s ÷ %s", r.plain(cassettes, 0), r.plain(std, 2))
}

// metres is a length in millimetres as "30.48 m".
func (v voice) metres(mm exact.Fraction) string {
	return v.plain(mm.Quo(film.Metre), 2) + " m"
}
