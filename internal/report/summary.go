package report

import (
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Summary is a comparison in at most 12 lines of plain text, made on a day.
func Summary(c *compare.Comparison, on scenario.Date, l money.Locale) string {
	s := words.Summarise(c, on, l)
	lines := []string{s.Finding}
	for _, roll := range s.Rolls {
		lines = append(lines, "- "+roll)
	}
	return summaryText(append(lines, s.Closing...))
}

// SummaryMarkdown is Summary as Markdown: the finding in bold, the rest a list, so that
// it takes no lines between.
func SummaryMarkdown(c *compare.Comparison, on scenario.Date, l money.Locale) string {
	s := words.Summarise(c, on, l)
	lines := []string{"**" + escaped(Line(s.Finding)) + "**"}
	for _, line := range append(s.Rolls, s.Closing...) {
		lines = append(lines, "- "+paragraph(Line(line)))
	}
	return summaryText(lines)
}

func summaryText(lines []string) string {
	var b strings.Builder
	for _, line := range lines {
		b.WriteString(Line(spaced(line)) + "\n")
	}
	return b.String()
}
