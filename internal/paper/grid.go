package paper

// Grid is a sheet divided into labels: measures in millimetres.
type Grid struct {
	Name                     string
	Size                     Size
	Columns, Rows            int
	Left, Top, Right, Bottom float64 // margins
	GapX, GapY               float64
	Cut                      bool // plain paper: with lines to cut along
}

// Grids are three to begin with; users measure their own sheets.
func Grids() []Grid {
	return []Grid{
		{Name: "A4, 3 × 8", Size: A4, Columns: 3, Rows: 8, Left: 7.2, Right: 7.2, Top: 12.9, Bottom: 12.9, GapX: 2.5},
		{Name: "Letter, 3 × 10", Size: Letter, Columns: 3, Rows: 10, Left: 4.8, Right: 4.8, Top: 12.7, Bottom: 12.7, GapX: 3.2},
		{Name: "A4, plain paper", Size: A4, Columns: 2, Rows: 7, Left: 12, Right: 12, Top: 15, Bottom: 15, Cut: true},
	}
}

// Label is the size of one label.
func (g Grid) Label() Size {
	return Size{
		W: (g.Size.W - g.Left - g.Right - g.GapX*float64(g.Columns-1)) / float64(g.Columns),
		H: (g.Size.H - g.Top - g.Bottom - g.GapY*float64(g.Rows-1)) / float64(g.Rows),
	}
}

// PerSheet is how many labels are on a sheet.
func (g Grid) PerSheet() int { return g.Columns * g.Rows }

// GridFault says what is wrong with a grid.
type GridFault string

// The faults of a grid.
const (
	GridFine      GridFault = ""
	GridNoLabels  GridFault = "no-labels"  // no column or row, or more than MostAcross
	GridNegative  GridFault = "negative"   // a margin or gap below 0, or no number
	GridTooSmall  GridFault = "too-small"  // a label below LeastLabelW × LeastLabelH
	GridFirstFree GridFault = "first-free" // the first free label is not on the sheet
)

// Limits of a grid: on less nothing can be read.
const (
	MostAcross               = 50
	LeastLabelW, LeastLabelH = 15, 8 // mm
)

// Check holds a grid to what can be printed. firstFree counts labels from 1, row by row.
func (g Grid) Check(firstFree int) GridFault {
	if g.Columns < 1 || g.Rows < 1 || g.Columns > MostAcross || g.Rows > MostAcross {
		return GridNoLabels
	}
	for _, v := range []float64{g.Left, g.Top, g.Right, g.Bottom, g.GapX, g.GapY} {
		if !(v >= 0) { // what is no number, too
			return GridNegative
		}
	}
	if l := g.Label(); !(l.W >= LeastLabelW && l.H >= LeastLabelH) {
		return GridTooSmall
	}
	if firstFree < 1 || firstFree > g.PerSheet() {
		return GridFirstFree
	}
	return GridFine
}

// Place is where label n, from 0, goes when firstFree is the first that is free: on which
// sheet, from 0, and its top left corner.
func (g Grid) Place(n, firstFree int) (sheet int, x, y float64) {
	at, l := n+firstFree-1, g.Label()
	on := at % g.PerSheet()
	return at / g.PerSheet(), g.Left + float64(on%g.Columns)*(l.W+g.GapX), g.Top + float64(on/g.Columns)*(l.H+g.GapY)
}
