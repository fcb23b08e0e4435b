package report

import (
	"io"
	"strconv"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
)

// Column is one column of the CSV: its name and what stands in it.
type Column struct{ Name, Says string }

type column struct {
	name, says string
	cell       func(c *compare.Comparison, i int) string // of the offer at place i
}

// columns of the CSV. Money is in the home currency, decimals in plain notation with a
// point whatever the locale, at most 20 places. Of an offer that could not be computed
// only the first six are filled in; what there is none of is empty.
var columns = []column{
	{"scenario", "the scenario's name", func(c *compare.Comparison, _ int) string { return text(c.Scenario.Name) }},
	{"offer", "the offer's name", func(c *compare.Comparison, i int) string { return text(c.Offers[i].Name) }},
	{"kind", "reel or boxed", func(c *compare.Comparison, i int) string { return text(string(c.Offers[i].Kind)) }},
	{"home", "the home currency, which all amounts are in unless shown_in says another", func(c *compare.Comparison, _ int) string { return text(c.Scenario.Home) }},
	{"is_baseline", "yes on the offer the others are compared with, else no", func(c *compare.Comparison, i int) string {
		if c.Offers[i].Name == c.Scenario.Baseline {
			return "yes"
		}
		return "no"
	}},
	{"fault", "why the offer is left out; then all below is empty", func(c *compare.Comparison, i int) string {
		if c.Offers[i].Fault == nil {
			return ""
		}
		return text(reason(c, i))
	}},
	count("units", "units in one order", func(o *compare.Offer) int64 { return int64(o.Order.Units) }),
	figure("film", "of one order, after the discount", func(o *compare.Offer) exact.Fraction { return o.Order.Home.Film }),
	figure("shipping", "of one order", func(o *compare.Offer) exact.Fraction { return o.Order.Home.Shipping }),
	figure("sales_tax", "of one order, billed by the seller", func(o *compare.Offer) exact.Fraction { return o.Order.Home.SalesTax }),
	figure("card_fee", "of one order", func(o *compare.Offer) exact.Fraction { return o.Order.Home.CardFee }),
	figure("duty", "of one order", func(o *compare.Offer) exact.Fraction { return o.Order.Home.Duty }),
	figure("import_tax", "of one order, at the border or through the seller", func(o *compare.Offer) exact.Fraction { return o.Order.Home.ImportTax }),
	figure("handling", "of one order, at the border", func(o *compare.Offer) exact.Fraction { return o.Order.Home.Handling }),
	figure("charged", "what the card statement says for one order", func(o *compare.Offer) exact.Fraction { return o.Order.Charged }),
	figure("landed", "everything one order costs until it is here", func(o *compare.Offer) exact.Fraction { return o.Order.Landed }),
	count("exposures", "exposures of one unit", func(o *compare.Offer) int64 { return int64(o.Yield.Exposures) }),
	figure("good_exposures", "those of them that are not spoiled", func(o *compare.Offer) exact.Fraction { return o.Yield.Good }),
	count("cassettes", "rolls of one unit", func(o *compare.Offer) int64 { return int64(o.Yield.Cassettes) }),
	figure("roll_film", "film in the cost of one standard roll", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Film }),
	figure("roll_shipping", "shipping in it", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Shipping }),
	figure("roll_tax", "sales tax, duty and import tax in it", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Tax }),
	figure("roll_fees", "card fee and handling in it", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Fees }),
	figure("roll_loading", "cassettes and tape in it", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Loading }),
	figure("roll_equipment", "equipment in it", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Equipment }),
	figure("roll_developing", "developing in it", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Developing }),
	figure("roll_time", "time in it, if an hour is given a value", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Time }),
	figure("roll_total", "the cost of one standard roll", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Total }),
	figure("exposure_total", "the cost of one exposure", func(o *compare.Offer) exact.Fraction { return o.PerExposure }),
	figure("year_cash", "cash paid in the scenario's months", func(o *compare.Offer) exact.Fraction { return o.Year.Total }),
	figure("year_time", "time spent in them, if an hour is given a value", func(o *compare.Offer) exact.Fraction { return o.Year.Time }),
	figure("film_left_rolls", "standard rolls left at the end", func(o *compare.Offer) exact.Fraction { return o.Year.FilmLeftRolls }),
	figure("film_left_value", "what they are worth", func(o *compare.Offer) exact.Fraction { return o.Year.FilmLeftValue }),
	figure("supplies_left_value", "what cassettes and chemistry left are worth", func(o *compare.Offer) exact.Fraction { return o.Year.SuppliesLeftValue }),
	figure("equipment_left_value", "what the equipment bought sells for", func(o *compare.Offer) exact.Fraction { return o.Year.EquipmentLeftValue }),
	figure("year_cost", "cash less what is left, plus time", func(o *compare.Offer) exact.Fraction { return o.Year.Cost }),
	figure("thrown_away_rolls", "standard rolls too old before they were shot", func(o *compare.Offer) exact.Fraction { return o.Year.ThrownAwayRolls }),
	against("saving_per_roll", "against the baseline, per standard roll", func(a *compare.Against) *exact.Fraction { return &a.SavingPerRoll }),
	against("saving_percent", "that in percent of the baseline's", func(a *compare.Against) *exact.Fraction { return a.SavingPercent }),
	against("saving_cash", "against the baseline, in cash", func(a *compare.Against) *exact.Fraction { return &a.SavingCash }),
	against("saving", "against the baseline, all counted", func(a *compare.Against) *exact.Fraction { return &a.Saving }),
	against("even_month", "month from which on it has cost no more cash, counted from 1", func(a *compare.Against) *exact.Fraction {
		if a.EvenMonth == 0 {
			return nil
		}
		month := exact.Int(int64(a.EvenMonth))
		return &month
	}),
	against("payback_rolls", "rolls after which the equipment is paid", func(a *compare.Against) *exact.Fraction { return a.PaybackRolls }),
	{"shown_in", "the currency that the amounts are in; empty where it is the home one", func(c *compare.Comparison, _ int) string { return text(c.Shown.Currency) }},
}

// Columns are the columns of the CSV in their order.
func Columns() []Column {
	list := make([]Column, len(columns))
	for i, c := range columns {
		list[i] = Column{c.name, c.says}
	}
	return list
}

// CSV writes one row for each offer under a row of names.
func CSV(w io.Writer, cs []compare.Comparison) error {
	out := newCells(w)
	row := make([]string, len(columns))
	for n, column := range columns {
		row[n] = column.name
	}
	out.row(row)
	for i := range cs {
		for k := range cs[i].Offers {
			for n, column := range columns {
				row[n] = column.cell(&cs[i], k)
			}
			out.row(row)
		}
	}
	return out.end()
}

func figure(name, says string, of func(*compare.Offer) exact.Fraction) column {
	return column{name, says, func(c *compare.Comparison, i int) string {
		o := &c.Offers[i]
		if o.Fault != nil {
			return ""
		}
		return plain(of(o))
	}}
}

func count(name, says string, of func(*compare.Offer) int64) column {
	return column{name, says, func(c *compare.Comparison, i int) string {
		o := &c.Offers[i]
		if o.Fault != nil {
			return ""
		}
		return strconv.FormatInt(of(o), 10)
	}}
}

func against(name, says string, of func(*compare.Against) *exact.Fraction) column {
	return column{name, says, func(c *compare.Comparison, i int) string {
		o := &c.Offers[i]
		if o.Fault != nil || o.Against == nil {
			return ""
		}
		if f := of(o.Against); f != nil {
			return plain(*f)
		}
		return ""
	}}
}
