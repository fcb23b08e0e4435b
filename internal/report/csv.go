package report

import (
	"io"
	"strconv"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/words"
)

// Column is one column of the CSV: its name and what stands in it.
type Column struct{ Name, Says string }

type column struct {
	name string
	cell func(c *compare.Comparison, i int) string // of the offer at place i
}

// columns of the CSV. Money is in the home currency, decimals in plain notation with a
// point whatever the locale, at most 20 places. Of an offer that could not be computed
// only the first six are filled in; what there is none of is empty.
var columns = []column{
	{"scenario", func(c *compare.Comparison, _ int) string { return text(c.Scenario.Name) }},
	{"offer", func(c *compare.Comparison, i int) string { return text(c.Offers[i].Name) }},
	{"kind", func(c *compare.Comparison, i int) string { return text(string(c.Offers[i].Kind)) }},
	{"home", func(c *compare.Comparison, _ int) string { return text(c.Scenario.Home) }},
	{"is_baseline", func(c *compare.Comparison, i int) string {
		if c.Offers[i].Name == c.Scenario.Baseline {
			return "yes"
		}
		return "no"
	}},
	{"fault", func(c *compare.Comparison, i int) string {
		if c.Offers[i].Fault == nil {
			return ""
		}
		return text(reason(c, i))
	}},
	count("units", func(o *compare.Offer) int64 { return int64(o.Order.Units) }),
	figure("film", func(o *compare.Offer) exact.Fraction { return o.Order.Home.Film }),
	figure("shipping", func(o *compare.Offer) exact.Fraction { return o.Order.Home.Shipping }),
	figure("sales_tax", func(o *compare.Offer) exact.Fraction { return o.Order.Home.SalesTax }),
	figure("card_fee", func(o *compare.Offer) exact.Fraction { return o.Order.Home.CardFee }),
	figure("duty", func(o *compare.Offer) exact.Fraction { return o.Order.Home.Duty }),
	figure("import_tax", func(o *compare.Offer) exact.Fraction { return o.Order.Home.ImportTax }),
	figure("handling", func(o *compare.Offer) exact.Fraction { return o.Order.Home.Handling }),
	figure("charged", func(o *compare.Offer) exact.Fraction { return o.Order.Charged }),
	figure("landed", func(o *compare.Offer) exact.Fraction { return o.Order.Landed }),
	count("exposures", func(o *compare.Offer) int64 { return int64(o.Yield.Exposures) }),
	figure("good_exposures", func(o *compare.Offer) exact.Fraction { return o.Yield.Good }),
	count("cassettes", func(o *compare.Offer) int64 { return int64(o.Yield.Cassettes) }),
	figure("roll_film", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Film }),
	figure("roll_shipping", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Shipping }),
	figure("roll_tax", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Tax }),
	figure("roll_fees", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Fees }),
	figure("roll_loading", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Loading }),
	figure("roll_equipment", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Equipment }),
	figure("roll_developing", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Developing }),
	figure("roll_time", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Time }),
	figure("roll_total", func(o *compare.Offer) exact.Fraction { return o.PerRoll.Total }),
	figure("exposure_total", func(o *compare.Offer) exact.Fraction { return o.PerExposure }),
	figure("year_cash", func(o *compare.Offer) exact.Fraction { return o.Year.Total }),
	figure("year_time", func(o *compare.Offer) exact.Fraction { return o.Year.Time }),
	figure("film_left_rolls", func(o *compare.Offer) exact.Fraction { return o.Year.FilmLeftRolls }),
	figure("film_left_value", func(o *compare.Offer) exact.Fraction { return o.Year.FilmLeftValue }),
	figure("supplies_left_value", func(o *compare.Offer) exact.Fraction { return o.Year.SuppliesLeftValue }),
	figure("equipment_left_value", func(o *compare.Offer) exact.Fraction { return o.Year.EquipmentLeftValue }),
	figure("year_cost", func(o *compare.Offer) exact.Fraction { return o.Year.Cost }),
	figure("thrown_away_rolls", func(o *compare.Offer) exact.Fraction { return o.Year.ThrownAwayRolls }),
	against("saving_per_roll", func(a *compare.Against) *exact.Fraction { return &a.SavingPerRoll }),
	against("saving_percent", func(a *compare.Against) *exact.Fraction { return a.SavingPercent }),
	against("saving_cash", func(a *compare.Against) *exact.Fraction { return &a.SavingCash }),
	against("saving", func(a *compare.Against) *exact.Fraction { return &a.Saving }),
	against("even_month", func(a *compare.Against) *exact.Fraction {
		if a.EvenMonth == 0 {
			return nil
		}
		month := exact.Int(int64(a.EvenMonth))
		return &month
	}),
	against("payback_rolls", func(a *compare.Against) *exact.Fraction { return a.PaybackRolls }),
	{"shown_in", func(c *compare.Comparison, _ int) string { return text(c.Shown.Currency) }},
}

// Columns are the columns of the CSV in their order.
func Columns() []Column {
	list := make([]Column, len(columns))
	for i, c := range columns {
		list[i] = Column{c.name, words.CSVColumn(c.name)}
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

func figure(name string, of func(*compare.Offer) exact.Fraction) column {
	return column{name, func(c *compare.Comparison, i int) string {
		o := &c.Offers[i]
		if o.Fault != nil {
			return ""
		}
		return plain(of(o))
	}}
}

func count(name string, of func(*compare.Offer) int64) column {
	return column{name, func(c *compare.Comparison, i int) string {
		o := &c.Offers[i]
		if o.Fault != nil {
			return ""
		}
		return strconv.FormatInt(of(o), 10)
	}}
}

func against(name string, of func(*compare.Against) *exact.Fraction) column {
	return column{name, func(c *compare.Comparison, i int) string {
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
