package report

import (
	"io"
	"strings"

	"golang.org/x/text/width"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// Table writes comparisons as plain text to read in a terminal: the headline, what a
// roll and the year cost offer by offer, the receipts, the months, and what is worth
// knowing. Numbers are in the locale's form.
func Table(w io.Writer, cs []compare.Comparison, l money.Locale) error {
	return inOrder(w, cs, "\n\n", func(c *compare.Comparison) string { return plainText(documentOf(c, l)) })
}

func plainText(d document) string {
	var b strings.Builder
	b.WriteString(d.title + "\n" + strings.Repeat("=", columnsOf(d.title)) + "\n\n" + d.headline + "\n")
	for _, line := range d.under {
		b.WriteString(line + "\n")
	}
	for _, s := range d.sections {
		b.WriteString("\n" + s.title + "\n" + strings.Repeat("-", columnsOf(s.title)) + "\n")
		for i, g := range s.grids {
			if i > 0 {
				b.WriteString("\n")
			}
			plainGrid(&b, g)
		}
	}
	if len(d.worth) > 0 {
		b.WriteString("\n" + words.WorthTitle + "\n" + strings.Repeat("-", columnsOf(words.WorthTitle)) + "\n")
		for _, line := range d.worth {
			b.WriteString("* " + line + "\n")
		}
	}
	return b.String()
}

// plainGrid sets a grid with its columns aligned: text to the left, numbers to the right.
func plainGrid(b *strings.Builder, g grid) {
	if g.title != "" {
		b.WriteString(g.title + "\n")
	}
	widths := make([]int, len(g.head))
	measure := func(cells []string) {
		for i, cell := range cells {
			widths[i] = max(widths[i], columnsOf(cell))
		}
	}
	measure(g.head)
	for _, row := range g.rows {
		measure(row.cells)
	}
	write := func(cells []string) {
		var line strings.Builder
		for i, cell := range cells {
			if i > 0 {
				line.WriteString("  ")
			}
			pad := strings.Repeat(" ", widths[i]-columnsOf(cell))
			if i == 0 || g.texts[i] {
				line.WriteString(cell + pad)
			} else {
				line.WriteString(pad + cell)
			}
		}
		b.WriteString(strings.TrimRight(line.String(), " ") + "\n")
	}
	write(g.head)
	for _, row := range g.rows {
		write(row.cells)
	}
}

// columnsOf is how many columns of a terminal a text takes.
func columnsOf(text string) int {
	n := 0
	for _, r := range text {
		switch width.LookupRune(r).Kind() {
		case width.EastAsianWide, width.EastAsianFullwidth:
			n += 2
		default:
			n++
		}
	}
	return n
}
