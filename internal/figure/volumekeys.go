package figure

import (
	"image/color"

	"reelworth/internal/compare"
	"reelworth/internal/words"
)

// sideOf is how the ranges of an offer are drawn: the reel's in the accent and as high as
// the strip, as wherever it stands beside boxed film; the others' in grey and lower. Of two
// of one kind the offer that is asked about is the high one.
func (ch *volumesChart) sideOf(name, against string, asked bool) (colour color.NRGBA, high bool) {
	if high = ch.reels[name]; high == ch.reels[against] {
		high = asked
	}
	if ch.reels[name] {
		return ch.style.Theme.Accent, high
	}
	return ch.style.Theme.Quiet, high
}

// keys are what the strips stand for that occurs in them.
func (ch *volumesChart) keys() (list []key) {
	t := ch.style.Theme
	var reel, boxed, even bool
	for _, row := range ch.rows {
		for _, span := range row.Ranges() {
			name := map[compare.Cheaper]string{compare.CheaperOffer: row.Offer(), compare.CheaperOther: row.Other()}[span.Cheaper]
			even = even || name == ""
			reel = reel || name != "" && ch.reels[name]
			boxed = boxed || name != "" && !ch.reels[name]
		}
	}
	if reel {
		list = append(list, key{colour: t.Accent, text: words.KeyReel})
	}
	if boxed {
		list = append(list, key{colour: t.Quiet, text: words.KeyBoxed})
	}
	if even {
		list = append(list, key{colour: t.Muted, text: words.AboutTheSame, hatched: true})
	}
	return list
}
