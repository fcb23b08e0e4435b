package workbook

import (
	"context"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Options are what a workbook tells beside the comparison.
type Options struct {
	On     scenario.Date // the day it is made; may be unset
	Locale money.Locale  // how the finding writes numbers
}

// Make is the comparison as a workbook (.xlsx), in the home currency, whatever it is shown
// in: the formulas go by what was typed. It stops early when ctx is done.
func Make(ctx context.Context, c *compare.Comparison, o Options) ([]byte, error) {
	b, err := build(ctx, c, o)
	if err != nil {
		return nil, err
	}
	return b.write()
}

// book is a workbook in the making.
type book struct {
	c       *compare.Comparison
	s       *scenario.Scenario
	options Options
	home    string
	// elsewhere is another currency that the comparison is shown in, "" for none.
	elsewhere string
	digits    int
	names     sheetNames
	sheets    []*sheet
	defined   []definedName
	in        *inputs
	months    *sheet
	offers    []*offer // those computed
	charts    []chart  // on the first sheet
}

// definedName is a name for a cell, valid in the whole book.
type definedName struct {
	name  string
	sheet *sheet
	at    string // such as "$B$12"
}

// build puts the sheets together: the comparison first, for it is what is looked at,
// though its formulas need all the others.
func build(ctx context.Context, c *compare.Comparison, o Options) (*book, error) {
	elsewhere := c.Shown.Currency
	c = c.AtHome()
	b := &book{c: c, elsewhere: elsewhere, s: &c.Scenario, options: o, home: c.Scenario.Home, names: sheetNames{}}
	b.digits = money.Places(b.home)
	front := b.addSheet(words.SheetComparison)
	b.names.name(words.SheetMonths) // no offer gets that name
	b.addInputs()
	for i := range c.Offers {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		if c.Offers[i].Fault == nil {
			b.offers = append(b.offers, b.addOffer(i))
		}
	}
	b.months = &sheet{name: words.SheetMonths, number: len(b.sheets), widths: map[int]float64{monthName: 16}, frozen: 2}
	b.sheets = append(b.sheets, b.months)
	b.months.text(monthName, 1, words.SheetMonths, style{kind: titled})
	b.months.text(monthName, 2, words.SheetMonthsSay, style{kind: noted})
	for _, o := range b.offers {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		o.addYear(b.addMonths(o))
	}
	b.addComparison(front, b.offers)
	return b, nil
}

// addSheet adds an empty sheet called after a text.
func (b *book) addSheet(text string) *sheet {
	s := &sheet{name: b.names.name(text), number: len(b.sheets), widths: map[int]float64{}}
	b.sheets = append(b.sheets, s)
	return s
}

// define gives a cell a name.
func (b *book) define(name string, s *sheet, column, row int) {
	at := place(column, row)
	letters := strings.TrimRight(at, "0123456789")
	b.defined = append(b.defined, definedName{name, s, "$" + letters + "$" + at[len(letters):]})
}

func (b *book) money(currency string) style {
	return style{kind: moneyed, currency: currency, places: money.Places(currency)}
}

func (b *book) inHome() style { return b.money(b.home) }

// rollsName names the input of what is shot in month n of the scenario, from 0.
func rollsName(n int) string { return "rolls_month_" + whole(int64(n%12+1)).text }

// rollsAYear is what is shot in a year, in standard rolls.
func (b *book) rollsAYear() term {
	total := b.in.figure(rollsName(0))
	for n := range 11 {
		total = total.plus(b.in.figure(rollsName(n + 1)))
	}
	return total
}
