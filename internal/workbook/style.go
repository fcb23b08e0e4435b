package workbook

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"reelworth/internal/palette"
)

// kind is what a cell is for, and so how it looks.
type kind int

const (
	blank    kind = iota
	titled        // a sheet's title
	headed        // over a group or a column
	wrapped       // over a narrow column
	labelled      // says what a figure is
	noted         // small print
	typed         // an input, which may be changed
	exported      // an input as it was
	counted       // a number
	moneyed       // an amount
	quiet         // beyond the months
)

// style is how a cell looks.
type style struct {
	kind     kind
	currency string // of an amount
	places   int    // of an amount
	bold     bool
	measured string // the unit of a number that is no amount
}

func count(unit string) style   { return style{kind: counted, measured: unit} }
func measure(unit string) style { return style{kind: counted, measured: unit} }

// strong is the style of a sum.
func (st style) strong() style {
	st.bold = true
	return st
}

// of is st, or a plain style of a kind where st says nothing.
func (st style) of(k kind) style {
	if st.kind != blank {
		return st
	}
	return style{kind: k}
}

// unit is what stands beside the figure.
func (st style) unit() string {
	if st.kind == moneyed {
		return st.currency
	}
	return st.measured
}

// format is the style as the library has it.
func (st style) format() *excelize.Style {
	theme := palette.Paper
	font := &excelize.Font{Size: 10, Family: "Arial", Color: hex(theme.Ink), Bold: st.bold}
	f := &excelize.Style{Font: font, Alignment: &excelize.Alignment{Vertical: "top"}}
	switch st.kind {
	case titled:
		font.Size, font.Bold = 14, true
	case headed:
		font.Bold = true
	case wrapped:
		font.Bold, f.Alignment.WrapText = true, true
	case noted, exported, quiet:
		font.Color = hex(theme.Muted)
	case typed:
		f.Fill = excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{inputFill}}
		f.Border = []excelize.Border{{Type: "bottom", Style: 1, Color: hex(theme.Accent)}}
	case moneyed:
		code := "[$" + st.currency + "] #,##0"
		if st.places > 0 {
			code += "." + strings.Repeat("0", st.places)
		}
		code += ";-" + code
		f.CustomNumFmt = &code
	}
	return f
}

// inputFill shades what may be changed: the accent, thinned.
const inputFill = "FFF4DC"
