package desk

import (
	"encoding/json"

	"reelworth/internal/desk/stock"
	"reelworth/internal/paper"
	"reelworth/internal/reels"
)

// keepSheet is how labels are printed, by name.
const keepSheet = "labels"

// sheet is how labels were printed last; at first on the first sheet there is.
func (s *settings) sheet() stock.Sheet {
	sheet := stock.Sheet{Grid: paper.Grids()[0], FirstFree: 1, Tolerance: reels.ToleranceOne}
	was := sheet
	if json.Unmarshal([]byte(s.app.Preferences().String(keepSheet)), &was) != nil || !known(was.Tolerance) {
		return sheet
	}
	return was
}

func known(t reels.Tolerance) bool {
	for _, k := range reels.Tolerances() {
		if k == t {
			return true
		}
	}
	return false
}

// setSheet remembers it.
func (s *settings) setSheet(sheet stock.Sheet) {
	if text, err := json.Marshal(sheet); err == nil { // plain figures always can be
		s.app.Preferences().SetString(keepSheet, string(text))
	}
}

// keepPaper is the sheets that pages print on, by name.
const keepPaper = "paper"

// letter says whether pages print on Letter, and not on A4.
func (s *settings) letter() bool { return s.app.Preferences().String(keepPaper) == paper.Letter.Name }

// printOn remembers it.
func (s *settings) printOn(letter bool) {
	name := paper.A4.Name
	if letter {
		name = paper.Letter.Name
	}
	s.app.Preferences().SetString(keepPaper, name)
}
