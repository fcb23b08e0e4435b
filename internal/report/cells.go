package report

import (
	"bufio"
	"io"
	"strings"
	"unicode"
	"unicode/utf8"
)

// cells writes rows of a CSV as RFC 4180 has it: commas, lines ended by CR LF, quotes
// doubled within quotes. A cell is also quoted where another separator stands in it:
// many spreadsheets split at semicolons or tabs, and what comes after one could be a
// formula. An error stays with it until the end.
type cells struct{ out *bufio.Writer }

func newCells(w io.Writer) cells { return cells{bufio.NewWriter(w)} }

func (c cells) row(row []string) {
	for i, cell := range row {
		if i > 0 {
			c.out.WriteByte(',')
		}
		if !needsQuotes(cell) {
			c.out.WriteString(cell)
			continue
		}
		c.out.WriteByte('"')
		c.out.WriteString(strings.ReplaceAll(cell, `"`, `""`))
		c.out.WriteByte('"')
	}
	c.out.WriteString("\r\n")
}

// end writes what is left and gives the first error there was.
func (c cells) end() error { return c.out.Flush() }

func needsQuotes(cell string) bool {
	first, _ := utf8.DecodeRuneInString(cell)
	return strings.ContainsAny(cell, ",;\"\t\r\n") || cell != "" && unicode.IsSpace(first)
}

// formulaSigns are what a spreadsheet takes for the start of a formula, in the width of
// East Asian scripts as well.
const formulaSigns = "=+-@\t\r\n＝＋－＠"

// text is a typed text as a cell, on one line. One that a spreadsheet would run as a
// formula gets an apostrophe before it, which spreadsheets take for the sign of a text.
// So does one that has an apostrophe there already, so that the two can be told apart.
func text(s string) string {
	start := strings.TrimLeft(s, " \u00a0\t\r\n")
	first, _ := utf8.DecodeRuneInString(start)
	s = Line(s)
	if start != "" && (first == '\'' || strings.ContainsRune(formulaSigns, first)) {
		return "'" + s
	}
	return s
}
