package paper

import (
	"fmt"
	"io"
	"slices"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"reelworth/assets"
)

// About is what a PDF says of itself.
type About struct {
	Title    string
	Language string    // a BCP 47 tag; "" is English
	Program  string    // that made it, with its version
	Made     time.Time // of its date; the zero value says none
}

// unsaid is the date of a PDF that says none: the same pages give the same bytes.
var unsaid = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// family is what the typeface is called within a PDF.
const family = "notosans"

// WritePDF writes pages as PDF, with the typeface embedded as far as it is used. It fails
// where there are no pages, and where w does.
func WritePDF(w io.Writer, about About, pages []*Page) error {
	if len(pages) == 0 {
		return fmt.Errorf("paper: there are no pages")
	}
	pdf := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: pages[0].Size.W, Ht: pages[0].Size.H}})
	about.tell(pdf)
	pdf.SetMargins(0, 0, 0)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetCellMargin(0)
	for style, font := range map[string][]byte{"": assets.Regular, "B": assets.Bold} {
		if uses(pages, style == "B") {
			pdf.AddUTF8FontFromBytes(family, style, slices.Clone(font))
		}
	}
	for _, p := range pages {
		pdf.AddPageFormat("P", fpdf.SizeType{Wd: p.Size.W, Ht: p.Size.H})
		for i := range p.marks {
			p.marks[i].print(pdf)
		}
	}
	if err := pdf.Output(w); err != nil {
		return fmt.Errorf("writing the PDF: %w", err)
	}
	return nil
}

func (a About) tell(pdf *fpdf.Fpdf) {
	made, language := a.Made, a.Language
	if made.IsZero() {
		made = unsaid
	}
	if language == "" {
		language = "en"
	}
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(made)
	pdf.SetModificationDate(made)
	pdf.SetTitle(settable(a.Title), true)
	pdf.SetCreator(settable(a.Program), true)
	pdf.SetProducer(settable(a.Program), true)
	pdf.SetLang(language)
}

func uses(pages []*Page, bold bool) bool {
	for _, p := range pages {
		for i := range p.marks {
			if m := &p.marks[i]; m.text != "" && m.face.Bold == bold {
				return true
			}
		}
	}
	return false
}

func (m *mark) print(pdf *fpdf.Fpdf) {
	r, g, b := int(m.colour.R), int(m.colour.G), int(m.colour.B)
	if m.text != "" {
		style := ""
		if m.face.Bold {
			style = "B"
		}
		pdf.SetFont(family, style, m.face.Size)
		pdf.SetTextColor(r, g, b)
		pdf.Text(m.x, m.y, m.text)
		return
	}
	if m.width == 0 {
		pdf.SetFillColor(r, g, b)
		m.path.print(pdf)
		pdf.DrawPath("f")
		return
	}
	pdf.SetDrawColor(r, g, b)
	pdf.SetLineWidth(m.width)
	pdf.SetDashPattern(m.dash, 0)
	m.path.print(pdf)
	pdf.DrawPath("D")
}

func (p Path) print(pdf *fpdf.Fpdf) {
	var at, start [2]float64
	for _, s := range p {
		a := s.at
		switch s.op {
		case opMove:
			pdf.MoveTo(a[0][0], a[0][1])
			at, start = a[0], a[0]
		case opLine:
			pdf.LineTo(a[0][0], a[0][1])
			at = a[0]
		case opQuad:
			b, c := raised(at, a[0], a[1])
			pdf.CurveBezierCubicTo(b[0], b[1], c[0], c[1], a[1][0], a[1][1])
			at = a[1]
		case opCube:
			pdf.CurveBezierCubicTo(a[0][0], a[0][1], a[1][0], a[1][1], a[2][0], a[2][1])
			at = a[2]
		case opClose:
			pdf.ClosePath()
			at = start
		}
	}
}

// raised are the control points of a curve with two that is the same as one with a single
// control point: PDF knows only the former.
func raised(from, control, to [2]float64) (a, b [2]float64) {
	for i := range 2 {
		a[i] = from[i] + (control[i]-from[i])*2/3
		b[i] = to[i] + (control[i]-to[i])*2/3
	}
	return a, b
}
