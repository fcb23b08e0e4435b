package figure

import (
	"image/color"
	"math"
	"strconv"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
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
	cut := o.Yield.Cut
	st := &strip{
		sheet: sh, offer: o.Name, length: cut.Reel.Length, roll: cut.RollLength,
		pieces: piecesOf(cut), last: cut.Cassettes(), keys: cutKeys(cut, s.Locale),
	}
	st.table = pieceTable(cut, s.Locale)
	st.draw(words.StripTitle(cut, s.Locale))
	return sh.Drawing
}

// draw sets the title and draws the strip below it.
func (st *strip) draw(title string) {
	_, y := st.heading(title, words.StripUnder)
	below := 16 + float64(st.legendLines(st.legendKeys()))*legendLine
	st.band(Rect{0, y + 12, st.W, math.Round(min(46, max(st.H-y-12-below, 22)))})
}

// StripHeight is the height a strip wants, in pixels.
const StripHeight = 136

// strip is the drawing of one reel in the making.
type strip struct {
	*sheet
	offer  string         // whose, "" for a reel in hand
	length exact.Fraction // mm, of the whole reel
	roll   exact.Fraction // mm, of a full cassette
	pieces []piece
	last   int64 // number of the last cassette
	keys   []stripKey
}

// stripKey is what a kind of piece is called in the legend.
type stripKey struct {
	kind pieceKind
	text string
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
	pieceGone // of a reel in hand: cut off and loaded already
)

// piece is a length of the reel, in millimetres.
type piece struct {
	kind      pieceKind
	name      string
	length    exact.Fraction
	number    int64 // of the roll
	exposures int64
	ends      bool // the roll: a gap follows
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
			piece{kind: pieceTrailer, name: words.TrailerAndFog, length: r.Trailer.Add(r.Fogged), number: n, ends: true})
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
	case pieceGone:
		return t.Developing
	}
	return t.Rule
}

// band draws the pieces, the holes, the numbers and the legend.
func (st *strip) band(r Rect) {
	var edges []float64
	length, at := st.length.Float(), 0.0
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
		st.hits = append(st.hits, Hit{Rect: box, Offer: st.offer, Text: words.Piece(p.name, p.length, st.style.Locale)})
		if gap := p.ends && p.number < st.last && box.W >= 2; gap {
			box.W--
		}
		st.box(box, st.colour(p.kind))
		if p.kind == pieceWaste {
			st.outline(box)
		}
	}
	st.holes(r)
	st.numbers(r, edges)
	st.legend(st.legendKeys(), 0, r.bottom()+24)
}

// outline draws the edges of waste, which is too faint to stand out by itself.
func (st *strip) outline(r Rect) {
	c := st.style.Theme.Quiet
	st.box(Rect{r.X, r.Y, r.W, 1}, c)
	st.box(Rect{r.X, r.bottom() - 1, r.W, 1}, c)
	st.box(Rect{r.right() - 1, r.Y, 1, r.H}, c)
}

// holes suggests the perforation along both edges; true to scale it could not be seen.
func (s *sheet) holes(r Rect) {
	const pitch, width, height = 9, 4, 3.5
	for x := 4.0; x+width <= r.W; x += pitch {
		for _, y := range []float64{r.Y + 3, r.bottom() - 3 - height} {
			s.box(Rect{x, y, width, height}, s.style.Theme.Ground)
		}
	}
}

// numbers are the rolls', every one or as many as there is room for.
func (st *strip) numbers(r Rect, edges []float64) {
	widest := smallFace.width(strconv.FormatInt(st.last, 10)) + 9
	every := int64(1)
	for _, every = range []int64{1, 2, 5, 10, 20, 50, 100, 1000} {
		if roll := r.W * st.roll.Float() / st.length.Float(); roll*float64(every) >= widest {
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

// legendKeys is the legend.
func (st *strip) legendKeys() (keys []key) {
	for _, k := range st.keys {
		keys = append(keys, key{colour: st.colour(k.kind), text: k.text})
	}
	return keys
}

// cutKeys is the legend of a reel that is cut.
func cutKeys(cut *film.Cut, l money.Locale) []stripKey {
	r := &cut.Reel
	var keys []stripKey
	if cut.FullRolls > 0 {
		keys = append(keys, stripKey{pieceRoll, words.ExposuresEach(cut)})
	}
	if cut.ShortRollExposures > 0 {
		keys = append(keys, stripKey{pieceShort, words.ShortRoll(cut)})
	}
	if !r.Leader.IsZero() {
		keys = append(keys, stripKey{pieceLeader, words.Leader})
	}
	if !r.Trailer.Add(r.Fogged).IsZero() {
		keys = append(keys, stripKey{pieceTrailer, words.TrailerAndFog})
	}
	if r.TestExposures > 0 {
		keys = append(keys, stripKey{pieceTest, words.TestPiece})
	}
	return append(keys, stripKey{pieceWaste, words.WasteOver(cut, l)})
}

// pieceTable has one row for each kind of piece, in the order they come in.
func pieceTable(cut *film.Cut, l money.Locale) Table {
	t := Table{Header: words.PiecesHeader()}
	number := func(f exact.Fraction) string { return l.Number(f, 1) }
	row := func(name string, count int64, each exact.Fraction) {
		if count > 0 && !each.IsZero() {
			t.Rows = append(t.Rows, []string{
				name, l.Number(exact.Int(count), 0), number(each), number(each.Mul(exact.Int(count))),
			})
		}
	}
	r := &cut.Reel
	row(words.StartWaste, 1, r.StartWaste)
	row(words.TestPiece, int64(min(r.TestExposures, 1)), r.Frame().Mul(exact.Int(int64(r.TestExposures))))
	row(words.Leader, cut.Cassettes(), r.Leader)
	row(words.ExposuresEach(cut), cut.FullRolls, r.Frame().Mul(exact.Int(int64(r.Exposures))))
	row(words.ShortRoll(cut), min(cut.ShortRollExposures, 1), r.Frame().Mul(exact.Int(cut.ShortRollExposures)))
	row(words.TrailerAndFog, cut.Cassettes(), r.Trailer.Add(r.Fogged))
	row(words.LeftOverPiece, 1, cut.LeftOver)
	row(words.EndWaste, 1, r.EndWaste)
	return t
}
