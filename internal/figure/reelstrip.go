package figure

import (
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

// InHand is a reel in hand, or one only thought of, with a plan for what is left of it.
type InHand struct {
	Film   film.InHand
	Loaded int            // cassettes already
	Used   exact.Fraction // mm
	Plan   reels.Plan
}

// ReelStrip draws a reel in hand to scale, from its start: what is used, the cassettes
// that the plan takes of the rest, those that the rest gives besides, and the waste.
func ReelStrip(in InHand, w, h float64, s Style) *Drawing {
	sh := newSheet(w, h, s)
	st := &strip{sheet: sh, length: in.Film.Length, roll: in.Film.Wound(in.Film.Exposures)}
	b := stripBuilder{strip: st, number: int64(in.Loaded)}
	b.begin(in)
	for _, wish := range in.Plan.Wishes {
		b.cassettes(pieceRoll, wish.Cassettes, int64(wish.Exposures), wish.Wound)
	}
	rest := in.Plan.Rest
	b.cassettes(pieceShort, rest.Cassettes, int64(rest.Exposures), in.Film.Wound(rest.Exposures))
	if rest.ShortRoll > 0 {
		b.cassettes(pieceShort, 1, int64(rest.ShortRoll), in.Film.Wound(rest.ShortRoll))
	}
	b.add(piece{kind: pieceWaste, name: words.LeftOverPiece, length: rest.LeftOver})
	b.add(piece{kind: pieceWaste, name: words.EndWaste, length: in.Film.Length.Sub(b.at)})
	st.last = b.number
	st.keys = b.legend(in)
	st.draw(words.ReelStripTitle(in.Film.Length, in.Plan, s.Locale))
	return sh.Drawing
}

// mostPieces is how many cassettes are drawn one by one; more could not be told apart.
const mostPieces = 1000

// stripBuilder lays pieces behind one another.
type stripBuilder struct {
	*strip
	number int64          // of the last cassette
	at     exact.Fraction // mm, where the next piece begins
}

func (b *stripBuilder) add(p piece) {
	b.pieces = append(b.pieces, p)
	b.at = b.at.Add(p.length)
	b.table.Header = words.PiecesHeader()
	if !p.length.IsZero() {
		length := b.style.Locale.Number(p.length, 1)
		b.table.Rows = append(b.table.Rows, []string{p.name, "1", length, length})
	}
}

// begin is what is gone of the reel, or what its start will take.
func (b *stripBuilder) begin(in InHand) {
	if in.Used.IsZero() {
		b.add(piece{kind: pieceWaste, name: words.StartWaste, length: in.Film.Begun()})
		return
	}
	b.add(piece{kind: pieceGone, name: words.UsedPiece(in.Loaded), length: in.Used})
}

// cassettes adds cassettes of some exposures that take a length each.
func (b *stripBuilder) cassettes(kind pieceKind, n, exposures int64, each exact.Fraction) {
	if n > mostPieces {
		b.add(piece{kind: kind, name: words.ManyRolls(n, exposures), length: exact.Int(n).Mul(each)})
		b.number += n
		return
	}
	for range n {
		b.number++
		b.add(piece{kind: kind, name: words.RollPiece(b.number, exposures), length: each, number: b.number, exposures: exposures, ends: true})
	}
}

// legend names the kinds of pieces there are.
func (b *stripBuilder) legend(in InHand) (keys []stripKey) {
	planned := false
	for _, w := range in.Plan.Wishes {
		planned = planned || w.Cassettes > 0
	}
	if !in.Used.IsZero() {
		keys = append(keys, stripKey{pieceGone, words.UsedPiece(in.Loaded)})
	}
	if planned {
		keys = append(keys, stripKey{pieceRoll, words.PlannedPieces})
	}
	if in.Plan.Rest.Rolls() > 0 {
		keys = append(keys, stripKey{pieceShort, words.RestGives(in.Plan.Rest)})
	}
	return append(keys, stripKey{pieceWaste, words.WasteOf(in.Plan.Rest.LeftOver, b.style.Locale)})
}
