package workbook

import (
	"bytes"
	"fmt"
	"image/color"
	"strconv"
	"strings"
	"time"

	"github.com/xuri/excelize/v2"

	"reelworth/internal/exact"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
)

// write is the book as an .xlsx file.
func (b *book) write() ([]byte, error) {
	w := writer{b: b, file: excelize.NewFile(), styles: map[style]int{}}
	defer w.file.Close()
	for i, s := range b.sheets {
		if err := w.sheet(i, s); err != nil {
			return nil, fmt.Errorf("the sheet %q could not be written: %w", s.name, err)
		}
	}
	for _, n := range b.defined {
		refers := quotedSheet(n.sheet.name) + "!" + n.at
		if err := w.file.SetDefinedName(&excelize.DefinedName{Name: n.name, RefersTo: refers}); err != nil {
			return nil, fmt.Errorf("the name %s could not be given: %w", n.name, err)
		}
	}
	if err := w.properties(); err != nil {
		return nil, err
	}
	var out bytes.Buffer
	if err := w.file.Write(&out); err != nil {
		return nil, err
	}
	return ordered(out.Bytes())
}

// writer hands a book to the library.
type writer struct {
	b      *book
	file   *excelize.File
	styles map[style]int
}

// sheet writes one sheet, row by row: so every formula keeps the value beside it, and a
// large book takes little memory.
func (w *writer) sheet(i int, s *sheet) error {
	if i == 0 {
		if err := w.file.SetSheetName("Sheet1", s.name); err != nil {
			return err
		}
	} else if _, err := w.file.NewSheet(s.name); err != nil {
		return err
	}
	if err := w.page(s); err != nil {
		return err
	}
	stream, err := w.file.NewStreamWriter(s.name)
	if err != nil {
		return err
	}
	for c := 1; c <= 60; c++ {
		width, there := s.widths[c]
		if !there {
			width = 12
		}
		if err := stream.SetColWidth(c, c, width); err != nil {
			return err
		}
	}
	if s.frozen > 0 {
		under := place(1, s.frozen+1)
		if err := stream.SetPanes(&excelize.Panes{Freeze: true, YSplit: s.frozen, TopLeftCell: under, ActivePane: "bottomLeft"}); err != nil {
			return err
		}
	}
	for n, line := range s.rows {
		cells, err := w.cells(line)
		if err != nil {
			return err
		}
		if err := stream.SetRow(place(1, n+1), cells, heightOf(line)...); err != nil {
			return err
		}
	}
	if err := w.extras(i, s); err != nil {
		return err
	}
	return stream.Flush()
}

// heightOf is how high a row must be for what is set in several lines.
func heightOf(line []cell) []excelize.RowOpts {
	for _, c := range line {
		if c.style.kind == wrapped {
			return []excelize.RowOpts{{Height: 44}} // points: three lines
		}
	}
	return nil
}

func (w *writer) cells(line []cell) ([]any, error) {
	cells := make([]any, len(line))
	for k, c := range line {
		if c == (cell{}) {
			continue
		}
		st, err := w.style(c.style)
		if err != nil {
			return nil, err
		}
		cells[k] = excelize.Cell{StyleID: st, Formula: w.resolved(c.formula), Value: shown(c.value)}
	}
	return cells, nil
}

// shown is a value as the library takes it. What is typed loses the signs that no XML
// text holds, and no text is taken for a formula.
func shown(value any) any {
	switch v := value.(type) {
	case exact.Fraction:
		return v.Float()
	case string:
		return strings.Map(func(r rune) rune {
			if !fitsXML(r) {
				return -1
			}
			return r
		}, v)
	}
	return value
}

// resolved is a formula, or a reference, with the names of the sheets it refers to.
func (w *writer) resolved(text string) string {
	return reference.ReplaceAllStringFunc(text, func(r string) string {
		m := reference.FindStringSubmatch(r)
		n, _ := strconv.Atoi(m[1])
		return quotedSheet(w.b.sheets[n].name) + "!" + m[2]
	})
}

func (w *writer) style(st style) (int, error) {
	st.measured = "" // stands beside the figure, not in its format
	if id, there := w.styles[st]; there {
		return id, nil
	}
	id, err := w.file.NewStyle(st.format())
	w.styles[st] = id
	return id, err
}

// extras adds what does not stand in cells.
func (w *writer) extras(i int, s *sheet) error {
	for _, l := range s.lists {
		dv := excelize.NewDataValidation(true)
		dv.Sqref = l.at
		if err := dv.SetDropList(l.words); err != nil {
			return err
		}
		if err := w.file.AddDataValidation(s.name, dv); err != nil {
			return err
		}
	}
	for _, a := range s.alarms {
		if err := w.alarm(s, a); err != nil {
			return err
		}
	}
	if i > 0 {
		return nil
	}
	for _, c := range w.b.charts {
		for _, row := range c.series {
			one := excelize.ChartSeries{Name: w.fixed(row.name), Categories: w.fixed(row.categories), Values: w.fixed(row.values)}
			if row.colour != "" {
				one.Fill = excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{row.colour}}
			}
			if c.form.Type == excelize.Line {
				one.Marker.Symbol = "none"
			}
			c.form.Series = append(c.form.Series, one)
		}
		if err := w.file.AddChart(s.name, c.at, c.form); err != nil {
			return err
		}
	}
	return nil
}

// page has a sheet print on its side, as wide as the paper.
func (w *writer) page(s *sheet) error {
	sideways, one, any, yes := "landscape", 1, 0, true
	if err := w.file.SetSheetProps(s.name, &excelize.SheetPropsOptions{FitToPage: &yes}); err != nil {
		return err
	}
	return w.file.SetPageLayout(s.name, &excelize.PageLayoutOptions{Orientation: &sideways, FitToWidth: &one, FitToHeight: &any})
}

// alarm has cells stand out once they say something else.
func (w *writer) alarm(s *sheet, a alarm) error {
	loud, err := w.file.NewConditionalStyle(&excelize.Style{Font: &excelize.Font{Bold: true, Color: hex(palette.Paper.Fault)}})
	if err != nil {
		return err
	}
	return w.file.SetConditionalFormat(s.name, a.area,
		[]excelize.ConditionalFormatOptions{{Type: "cell", Criteria: "!=", Value: quoted(a.calm), Format: &loud}})
}

// fixed is a reference of a chart, which is told in full.
func (w *writer) fixed(text string) string {
	m := reference.FindStringSubmatch(text)
	n, _ := strconv.Atoi(m[1])
	var corners []string
	for _, at := range strings.Split(m[2], ":") {
		letters := strings.TrimRight(at, "0123456789")
		corners = append(corners, "$"+letters+"$"+at[len(letters):])
	}
	return quotedSheet(w.b.sheets[n].name) + "!" + strings.Join(corners, ":")
}

// properties says what the file is, and has spreadsheets compute it when they open it.
func (w *writer) properties() error {
	yes := true
	if err := w.file.SetCalcProps(&excelize.CalcPropsOptions{FullCalcOnLoad: &yes}); err != nil {
		return err
	}
	made := dayOf(w.b.options.On)
	return w.file.SetDocProps(&excelize.DocProperties{Title: shown(w.b.s.Name).(string), Creator: "Reelworth " + version.String(),
		LastModifiedBy: "Reelworth", Created: made, Modified: made, Language: "en-GB"})
}

// dayOf is a day as the file's properties write it; an unset one is the first day that
// a zip archive can tell.
func dayOf(d scenario.Date) string {
	if d == (scenario.Date{}) {
		d = scenario.Date{Year: 1980, Month: time.January, Day: 1}
	}
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC).Format(time.RFC3339)
}

func hex(c color.Color) string {
	r, g, b, _ := c.RGBA()
	return fmt.Sprintf("%02X%02X%02X", r>>8, g>>8, b>>8)
}
