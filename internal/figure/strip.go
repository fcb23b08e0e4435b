package figure

import (
	"image/color"
	"math"
	"strconv"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// Strip draws a reel to scale as it is cut: leader, exposures, trailer and fogged end
// of every cassette, the short roll, and the waste. An offer that is no reel gives a
// drawing that says so.
func Strip(o *compare.Offer, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	if o == nil || o.Yield.Cut == nil {
		sh.heading(words.OnlyReelsAreCut, "")
		return sh.Drawing
	}
	_, y := sh.heading(words.StripTitle(o.Yield.Cut, s.Locale), words.StripUnder)
	st := &strip{sheet: sh, offer: o, cut: o.Yield.Cut, pieces: piecesOf(o.Yield.Cut)}
	st.table = st.pieceTable()
	below := 16 + float64(sh.legendLines(st.keys()))*legendLine
	st.band(Rect{0, y + 12, sh.W, math.Round(min(46, max(sh.H-y-12-below, 22)))})
	return sh.Drawing
}

// StripHeight is the height a strip wants, in pixels.
const StripHeight = 136

// strip is the drawing of one reel in the making.
type strip struct {
	*sheet
	offer  *compare.Offer
	cut    *film.Cut
	pieces []piece
}

// pieceKind is what a piece of film becomes.
type pieceKind int

const (
	pieceWaste pieceKind = iota
	pieceTest
	pieceLeader
	pieceRoll
	pieceShort
	pieceTrailer
)

// piece is a length of the reel, in millimetres.
type piece struct {
	kind      pieceKind
	name      string
	length    exact.Fraction
	number    int64 // of the roll
	exposures int64
}

// piecesOf is the reel from its start to its end.
func piecesOf(cut *film.Cut) []piece {
	r := &cut.Reel
	frame := r.Frame()
	list := []piece{{kind: pieceWaste, name: words.StartWaste, length: r.StartWaste}}
	if r.TestExposures > 0 {
		list = append(list, piece{kind: pieceTest, name: words.TestPiece, length: frame.Mul(exact.Int(int64(r.TestExposures)))})
	}
	for n := int64(1); n <= cut.Cassettes(); n++ {
		kind, exposures := pieceRoll, int64(r.Exposures)
		if n > cut.FullRolls {
			kind, exposures = pieceShort, cut.ShortRollExposures
		}
		list = append(list,
			piece{kind: pieceLeader, name: words.Leader, length: r.Leader, number: n},
			piece{kind: kind, name: words.RollPiece(n, exposures), length: frame.Mul(exact.Int(exposures)), number: n, exposures: exposures},
			piece{kind: pieceTrailer, name: words.TrailerAndFog, length: r.Trailer.Add(r.Fogged), number: n})
	}
	return append(list,
		piece{kind: pieceWaste, name: words.LeftOverPiece, length: cut.LeftOver},
		piece{kind: pieceWaste, name: words.EndWaste, length: r.EndWaste})
}

func (st *strip) colour(k pieceKind) color.NRGBA {
	t := st.style.Theme
	switch k {
	case pieceTest:
		return t.Equipment
	case pieceLeader:
		return t.Fees
	case pieceRoll:
		return t.Film
	case pieceShort:
		return t.Shipping
	case pieceTrailer:
		return t.Tax
	}
	return t.Rule
}

// band draws the pieces, the holes, the numbers and the legend.
func (st *strip) band(r Rect) {
	var edges []float64
	length, at := st.cut.Reel.Length.Float(), 0.0
	for _, p := range st.pieces {
		edges = append(edges, math.Round(r.W*at/length))
		at += p.length.Float()
	}
	edges = append(edges, r.W)
	for i, p := range st.pieces {
		box := Rect{edges[i], r.Y, edges[i+1] - edges[i], r.H}
		if p.length.IsZero() {
			continue
		}
		st.hits = append(st.hits, Hit{Rect: box, Offer: st.offer.Name, Text: words.Piece(p.name, p.length, st.style.Locale)})
		if gap := p.kind == pieceTrailer && p.number < st.cut.Cassettes() && box.W >= 2; gap {
			box.W--
		}
		st.box(box, st.colour(p.kind))
		if p.kind == pieceWaste {
			st.outline(box)
		}
	}
	st.holes(r)
	st.numbers(r, edges)
	st.legend(st.keys(), 0, r.bottom()+24)
}

// outline draws the edges of waste, which is too faint to stand out by itself.
func (st *strip) outline(r Rect) {
	c := st.style.Theme.Quiet
	st.box(Rect{r.X, r.Y, r.W, 1}, c)
	st.box(Rect{r.X, r.bottom() - 1, r.W, 1}, c)
	st.box(Rect{r.right() - 1, r.Y, 1, r.H}, c)
}

// holes suggests the perforation along both edges; true to scale it could not be seen.
func (st *strip) holes(r Rect) {
	const pitch, width, height = 9, 4, 3.5
	for x := 4.0; x+width <= r.W; x += pitch {
		for _, y := range []float64{r.Y + 3, r.bottom() - 3 - height} {
			st.box(Rect{x, y, width, height}, st.style.Theme.Ground)
		}
	}
}

// numbers are the rolls', every one or as many as there is room for.
func (st *strip) numbers(r Rect, edges []float64) {
	widest := smallFace.width(strconv.FormatInt(st.cut.Cassettes(), 10)) + 9
	every := int64(1)
	for _, every = range []int64{1, 2, 5, 10, 20, 50, 100, 1000} {
		if roll := r.W * st.cut.RollLength.Float() / st.cut.Reel.Length.Float(); roll*float64(every) >= widest {
			break
		}
	}
	for i, p := range st.pieces {
		if p.kind != pieceRoll && p.kind != pieceShort || p.number%every != 0 {
			continue
		}
		text := strconv.FormatInt(p.number, 10)
		box := textBox(smallFace, (edges[i]+edges[i+1]-smallFace.width(text))/2, r.Y+r.H/2+4, text, color.NRGBA{})
		colour, reads := palette.Label(st.colour(p.kind), st.style.Theme)
		if !reads || box.Rect.X < 0 || box.Rect.right() > st.W || !st.clear(box.Rect.grow(1)) {
			continue
		}
		if every > 1 { // the number stands on more than its own roll
			st.box(Rect{box.Rect.X - 2, r.Y + 9, box.Rect.W + 4, r.H - 18}, st.colour(p.kind))
		}
		box.colour = colour
		st.texts = append(st.texts, box)
	}
}

func (st *strip) keys() []key {
	r := &st.cut.Reel
	var keys []key
	if st.cut.FullRolls > 0 {
		keys = append(keys, key{colour: st.colour(pieceRoll), text: words.ExposuresEach(st.cut)})
	}
	if st.cut.ShortRollExposures > 0 {
		keys = append(keys, key{colour: st.colour(pieceShort), text: words.ShortRoll(st.cut)})
	}
	if !r.Leader.IsZero() {
		keys = append(keys, key{colour: st.colour(pieceLeader), text: words.Leader})
	}
	if !r.Trailer.Add(r.Fogged).IsZero() {
		keys = append(keys, key{colour: st.colour(pieceTrailer), text: words.TrailerAndFog})
	}
	if r.TestExposures > 0 {
		keys = append(keys, key{colour: st.colour(pieceTest), text: words.TestPiece})
	}
	return append(keys, key{colour: st.colour(pieceWaste), text: words.WasteOver(st.cut, st.style.Locale)})
}

// pieceTable has one row for each kind of piece, in the order they come in.
func (st *strip) pieceTable() Table {
	t := Table{Header: words.PiecesHeader()}
	number := func(f exact.Fraction) string { return st.style.Locale.Number(f, 1) }
	row := func(name string, count int64, each exact.Fraction) {
		if count > 0 && !each.IsZero() {
			t.Rows = append(t.Rows, []string{
				name, st.style.Locale.Number(exact.Int(count), 0), number(each), number(each.Mul(exact.Int(count))),
			})
		}
	}
	r := &st.cut.Reel
	row(words.StartWaste, 1, r.StartWaste)
	row(words.TestPiece, int64(min(r.TestExposures, 1)), r.Frame().Mul(exact.Int(int64(r.TestExposures))))
	row(words.Leader, st.cut.Cassettes(), r.Leader)
	row(words.ExposuresEach(st.cut), st.cut.FullRolls, r.Frame().Mul(exact.Int(int64(r.Exposures))))
	row(words.ShortRoll(st.cut), min(st.cut.ShortRollExposures, 1), r.Frame().Mul(exact.Int(st.cut.ShortRollExposures)))
	row(words.TrailerAndFog, st.cut.Cassettes(), r.Trailer.Add(r.Fogged))
	row(words.LeftOverPiece, 1, st.cut.LeftOver)
	row(words.EndWaste, 1, r.EndWaste)
	return t
}
