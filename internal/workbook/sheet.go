package workbook

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"

	"reelworth/internal/exact"
)

// sheet is a page of the book in the making. Rows and columns count from 1.
type sheet struct {
	name   string
	number int // among the sheets of the book
	rows   [][]cell
	widths map[int]float64 // by column
	frozen int             // rows that stay in sight
	lists  []choice        // cells that take one of some words
	alarms []alarm
}

// choice is a cell that takes one of some words.
type choice struct {
	at    string
	words []string
}

// alarm has cells stand out once they say something else than they do now.
type alarm struct{ area, calm string }

// cell is what stands in one place: nothing, a text, a number, a truth, or a formula
// with the value it comes to.
type cell struct {
	style   style
	formula string
	value   any // nil, string, exact.Fraction or bool
}

// put places a cell.
func (s *sheet) put(column, row int, c cell) {
	for len(s.rows) < row {
		s.rows = append(s.rows, nil)
	}
	line := &s.rows[row-1]
	for len(*line) < column {
		*line = append(*line, cell{})
	}
	(*line)[column-1] = c
}

// text places a text.
func (s *sheet) text(column, row int, text string, st style) {
	if text == "" {
		s.put(column, row, cell{})
		return
	}
	s.put(column, row, cell{style: st, value: text})
}

// formula places a formula and gives a term that refers to it.
func (s *sheet) formula(column, row int, t term, st style) term {
	s.put(column, row, cell{style: st, formula: s.local(t.text), value: t.value})
	return term{s.reference(column, row), bindsWhole, t.value}
}

// textFormula places a formula that gives a text.
func (s *sheet) textFormula(column, row int, formula, value string, st style) {
	s.put(column, row, cell{style: st, formula: s.local(formula), value: value})
}

// next is the first row below all that stands here.
func (s *sheet) next() int { return len(s.rows) + 1 }

// A reference in the making names its sheet by number between two signs that no typed
// text gets into a formula with; where it is used in the sheet itself the name is left
// out.
var reference = regexp.MustCompile("\x01(\\d+)\x02([A-Z0-9$:]+)\x03")

func (s *sheet) reference(column, row int) string {
	return fmt.Sprintf("\x01%d\x02%s\x03", s.number, place(column, row))
}

// area refers to a rectangle of cells, corners included.
func (s *sheet) area(column, row, toColumn, toRow int) string {
	return fmt.Sprintf("\x01%d\x02%s:%s\x03", s.number, place(column, row), place(toColumn, toRow))
}

// local is a formula as it stands in this sheet, but for the names of other sheets.
func (s *sheet) local(text string) string {
	return reference.ReplaceAllStringFunc(text, func(r string) string {
		m := reference.FindStringSubmatch(r)
		if m[1] == strconv.Itoa(s.number) {
			return m[2]
		}
		return r
	})
}

// place is a cell's name, such as "B12".
func place(column, row int) string {
	name, err := excelize.CoordinatesToCellName(column, row)
	if err != nil {
		panic(err) // no sheet here is that large
	}
	return name
}

// column is a run of terms below one another.
type column struct {
	area    string
	numbers string // the area beside it that numbers the rows from 0
	values  []exact.Fraction
}

func (c column) sum() term { return call("SUM", exact.Sum(c.values...), c.area) }

// at is the value in the row of that number. (INDEX would say it more plainly, but not
// every spreadsheet takes it for a column of one cell.)
func (c column) at(n term) term {
	i, _ := n.value.Int64()
	return call("SUMIF", c.values[i], c.numbers, n.text, c.area)
}

// plainName is a sheet's name that needs no quotes in a formula.
var plainName = regexp.MustCompile(`^[A-Z][a-z]{3,}$`)

// quotedSheet is a sheet's name as a formula holds it.
func quotedSheet(name string) string {
	if plainName.MatchString(name) {
		return name
	}
	return "'" + strings.ReplaceAll(name, "'", "''") + "'"
}
