package report

import (
	"io"
	"regexp"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// Markdown writes comparisons as GitHub-flavoured Markdown: what Table says, with tables
// for notes. What was typed shows as it was typed: signs that mean something in Markdown
// are escaped.
func Markdown(w io.Writer, cs []compare.Comparison, l money.Locale) error {
	return inOrder(w, cs, "\n", func(c *compare.Comparison) string { return markdown(documentOf(c, l)) })
}

func markdown(d document) string {
	var b strings.Builder
	b.WriteString("# " + escaped(d.title) + "\n\n**" + escaped(d.headline) + "**\n")
	for _, line := range d.under {
		b.WriteString("\n" + paragraph(line) + "\n")
	}
	for _, s := range d.sections {
		b.WriteString("\n## " + escaped(s.title) + "\n")
		for _, g := range s.grids {
			if g.title != "" {
				b.WriteString("\n### " + escaped(g.title) + "\n")
			}
			b.WriteString("\n")
			markdownGrid(&b, g)
		}
	}
	if len(d.worth) > 0 {
		b.WriteString("\n## " + words.WorthTitle + "\n\n")
		for _, line := range d.worth {
			b.WriteString("- " + paragraph(line) + "\n")
		}
	}
	return b.String()
}

func markdownGrid(b *strings.Builder, g grid) {
	write := func(cells []string, strong bool) {
		b.WriteString("|")
		for i, cell := range cells {
			cell = escaped(cell)
			if strong && !g.texts[i] && cell != "" {
				cell = "**" + cell + "**"
			}
			if cell != "" {
				cell = " " + cell
			}
			b.WriteString(cell + " |")
		}
		b.WriteString("\n")
	}
	write(g.head, false)
	for i := range g.head {
		if i == 0 || g.texts[i] {
			b.WriteString("|---")
		} else {
			b.WriteString("|--:")
		}
	}
	b.WriteString("|\n")
	for _, row := range g.rows {
		write(row.cells, row.strong)
	}
}

// item is how a line begins that Markdown takes for an item of a list.
var item = regexp.MustCompile(`^(\d*)([-+.)] )`)

// escaped is text with the signs escaped that Markdown, or HTML within it, would take
// for its own.
func escaped(text string) string {
	var b strings.Builder
	for _, r := range strings.Join(strings.Fields(text), " ") {
		if strings.ContainsRune("\\`*_{}[]<>#|~&!", r) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}

// paragraph is text escaped where it begins a line.
func paragraph(text string) string { return item.ReplaceAllString(escaped(text), `$1\$2`) }
