package report

import (
	"bufio"
	"fmt"
	"io"
	"strconv"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/parallel"
	"reelworth/internal/words"
)

// document is a comparison for reading, before it is set as plain text or Markdown.
type document struct {
	title    string
	headline string
	under    []string // below the headline
	sections []section
	worth    []string // worth knowing
}

// section is a part of a document.
type section struct {
	title string
	grids []grid
}

// grid is a table. The first column is text, so is every column named in texts.
type grid struct {
	title string // "" when the section's title says it
	head  []string
	rows  []gridRow
	texts map[int]bool
}

type gridRow struct {
	cells  []string
	strong bool // a sum
}

// MostAhead is of how many scenarios at once it is worth telling what would change the
// answer; the tables of more are there to run one's eye over.
const MostAhead = 24

// batch is how many comparisons are set before they are written.
const batch = 256

// inOrder sets comparisons on all processors and writes them one after the other, and last
// what is left out of so many.
func inOrder(w io.Writer, cs []compare.Comparison, between string, set func(*compare.Comparison) string) error {
	out := bufio.NewWriter(w)
	for from := 0; from < len(cs); from += batch {
		texts := make([]string, min(batch, len(cs)-from))
		_ = parallel.Each(parallel.All(), len(texts), func(i int) error {
			texts[i] = set(&cs[from+i])
			return nil
		})
		for i, text := range texts {
			if from+i > 0 {
				out.WriteString(between)
			}
			out.WriteString(text)
		}
	}
	if len(cs) > MostAhead && cs[0].Outlook == nil {
		out.WriteString(between + words.AheadLeftOut(MostAhead) + "\n")
	}
	return out.Flush()
}

// documentOf gathers what is worth reading of a comparison.
func documentOf(c *compare.Comparison, l money.Locale) document {
	h := words.Verdict(c, l)
	d := document{title: c.Scenario.Name, headline: h.Text}
	if h.Under != "" {
		d.under = append(d.under, h.Under)
	}
	d.under = append(d.under, words.LeftOut(c)...)
	if text := words.ShownIn(c, l); text != "" {
		d.under = append(d.under, text)
	}
	b := builder{c, l}
	if len(b.computed()) > 0 {
		d.sections = append([]section{b.rolls(), b.year()}, b.changes()...)
		d.sections = append(d.sections, b.receipts(), b.months())
	}
	for _, w := range c.Warnings {
		d.worth = append(d.worth, words.Warning(w, c, l))
	}
	d.mapTexts(func(text string) string { return Line(spaced(text)) })
	return d
}

// mapTexts changes every text of the document.
func (d *document) mapTexts(change func(string) string) {
	each := func(list []string) {
		for i := range list {
			list[i] = change(list[i])
		}
	}
	d.title, d.headline = change(d.title), change(d.headline)
	each(d.under)
	each(d.worth)
	for i := range d.sections {
		s := &d.sections[i]
		s.title = change(s.title)
		for k := range s.grids {
			g := &s.grids[k]
			g.title = change(g.title)
			each(g.head)
			for n := range g.rows {
				each(g.rows[n].cells)
			}
		}
	}
}

// builder makes the sections.
type builder struct {
	c *compare.Comparison
	l money.Locale
}

// computed are the places of the offers that have no fault.
func (b builder) computed() []int {
	var list []int
	for i := range b.c.Offers {
		if b.c.Offers[i].Fault == nil {
			list = append(list, i)
		}
	}
	return list
}

// home is an amount in the home currency without its code, which stands above it.
func (b builder) home(f exact.Fraction) string { return b.inCurrency(f, b.c.Currency()) }

// inCurrency is an amount to a currency's minor unit, without its code.
func (b builder) inCurrency(f exact.Fraction, currency string) string {
	return b.l.Number(f, money.Places(currency))
}

// name is an offer with its number, as the months call it.
func (b builder) name(i int) string { return fmt.Sprintf("%d. %s", i+1, b.c.Offers[i].Name) }

// rolls is what a roll costs, part by part. Parts that no offer has are left out.
func (b builder) rolls() section {
	var parts []words.CostPart
	for _, part := range words.CostParts() {
		for _, i := range b.computed() {
			if !part.Of(&b.c.Offers[i].PerRoll).IsZero() {
				parts = append(parts, part)
				break
			}
		}
	}
	g := grid{head: []string{""}}
	for _, part := range parts {
		g.head = append(g.head, part.Name())
	}
	g.head = append(g.head, words.ARoll)
	for _, i := range b.computed() {
		o := &b.c.Offers[i]
		row := []string{b.name(i)}
		for _, part := range parts {
			row = append(row, b.home(part.Of(&o.PerRoll)))
		}
		g.rows = append(g.rows, gridRow{cells: append(row, b.home(o.PerRoll.Total))})
	}
	return section{words.RollsTitle(b.c), []grid{g}}
}

// year is what the months come to, and against the baseline.
func (b builder) year() section {
	g := grid{
		head:  words.YearHeader(),
		texts: map[int]bool{7: true},
	}
	for _, i := range b.computed() {
		o := &b.c.Offers[i]
		y := &o.Year
		row := []string{b.name(i), b.home(y.Total), b.home(y.Left()), b.home(y.Time), b.home(y.Cost), "", "", ""}
		switch a := o.Against; {
		case a != nil:
			row[5], row[6] = b.home(a.SavingCash), b.home(a.Saving)
			if a.EvenMonth > 0 {
				row[7] = words.MonthName(&b.c.Scenario, a.EvenMonth)
			}
		case o.Name == b.c.Scenario.Baseline:
			row[7] = words.ComparedWith
		}
		g.rows = append(g.rows, gridRow{cells: row})
	}
	return section{words.YearTitle(b.c), []grid{g}}
}

// receipts are the landed costs line by line.
func (b builder) receipts() section {
	s := section{title: words.ReceiptsTitle}
	for _, i := range b.computed() {
		seller, home := words.ReceiptColumns(b.c, i)
		g := grid{title: b.name(i), head: []string{"", seller, home, ""}, texts: map[int]bool{3: true}}
		for _, r := range words.Receipt(b.c, i, b.l) {
			g.rows = append(g.rows, gridRow{[]string{r.Label, r.Seller, r.Home, r.How}, r.Strong})
		}
		if seller == "" {
			g.dropColumn(1)
		}
		s.grids = append(s.grids, g)
	}
	return s
}

// dropColumn takes a column out.
func (g *grid) dropColumn(n int) {
	cut := func(cells []string) []string { return append(cells[:n:n], cells[n+1:]...) }
	g.head = cut(g.head)
	for i := range g.rows {
		g.rows[i].cells = cut(g.rows[i].cells)
	}
	texts := map[int]bool{}
	for k := range g.texts {
		if k > n {
			k--
		}
		texts[k] = true
	}
	g.texts = texts
}

// monthsAbreast is how many offers stand side by side in the months.
const monthsAbreast = 6

// months is the spending so far at the end of each month, with the film orders placed
// in it. Offers stand under their numbers.
func (b builder) months() section {
	s := section{title: words.MonthsTitle(b.c)}
	all := b.computed()
	for len(all) > 0 {
		n := min(monthsAbreast, len(all))
		s.grids = append(s.grids, b.monthGrid(all[:n]))
		all = all[n:]
	}
	return s
}

func (b builder) monthGrid(offers []int) grid {
	g := grid{head: []string{""}}
	for _, i := range offers {
		g.head = append(g.head, strconv.Itoa(i+1)+".", "")
	}
	for m := range b.c.Scenario.Months {
		row := []string{words.MonthAndYear(&b.c.Scenario, m+1)}
		for _, i := range offers {
			y := &b.c.Offers[i].Year
			spent, orders := "", ""
			if m < len(y.Cumulative) && m < len(y.Orders) {
				spent = b.home(y.Cumulative[m])
				if y.Orders[m] > 0 {
					orders = fmt.Sprintf("(%d)", y.Orders[m])
				}
			}
			row = append(row, spent, orders)
		}
		g.rows = append(g.rows, gridRow{cells: row})
	}
	return g
}
