package words

import (
	"fmt"
	"strings"

	"reelworth/internal/paper"
	"reelworth/internal/reels"
)

// What stands on a label.
const (
	LoadedAtHome   = "loaded at home, end taped" // a motor camera pulls at the tape
	RemjetLine     = "Remjet backing: no ordinary lab"
	CameraBlank    = "camera"
	ShotBlank      = "shot"
	LabelsClear    = "Keep labels clear of the film's mouth and of the speed code."
	CalibrationSay = "This line is 100 mm where the printer does not scale. Measure it before you print more."
)

// LabelsTitle is what a sheet of labels is called.
func LabelsTitle(reel string) string { return "Labels: " + reel }

// LabelNumber is "7 of 18", or "7" where no more are planned than there are.
func LabelNumber(l reels.Label) string {
	if l.Of <= l.Number && l.Number <= 1 || l.Of < l.Number {
		return fmt.Sprint(l.Number)
	}
	return fmt.Sprintf("%d of %d", l.Number, l.Of)
}

// LabelSpeed is what to set and how much is in it: "EI 250 · 36 exp."
func LabelSpeed(l reels.Label) string {
	exposures := fmt.Sprintf("%d exp.", l.Exposures)
	if !l.Speed.Set {
		return exposures
	}
	return fmt.Sprintf("EI %d · %s", l.Speed.Int, exposures)
}

// LabelDates is when it was loaded and when to use it by. A cassette to come has a blank.
func LabelDates(l reels.Label) string {
	loaded := "loaded ____________"
	if day := Day(l.Loaded); day != "" {
		loaded = "loaded " + day
	}
	if until := Day(l.UseBy); until != "" {
		return loaded + " · use by " + until
	}
	return loaded
}

// LettersLacking says which letters are printed as a box, "" for none.
func LettersLacking(letters []rune) string {
	switch len(letters) {
	case 0:
		return ""
	case 1:
		return fmt.Sprintf("The typeface has no %c: it is printed as a box.", letters[0])
	}
	var said []string
	for i, r := range letters {
		if i == mostLetters {
			said = append(said, fmt.Sprintf("%d more", len(letters)-mostLetters))
			break
		}
		said = append(said, string(r))
	}
	return "The typeface lacks these letters, which are printed as boxes: " + strings.Join(said, " ") + "."
}

// mostLetters is how many letters are told of.
const mostLetters = 12

// GridWrong says why labels cannot be laid out.
func GridWrong(f paper.GridFault) string {
	switch f {
	case paper.GridNoLabels:
		return "a sheet needs at least one column and one row, and at most 50 of each"
	case paper.GridTooSmall:
		return "margins and gaps leave less than 15 mm by 8 mm for a label; make them smaller, or take fewer labels"
	case paper.GridNegative:
		return "margins and gaps cannot be below 0"
	case paper.GridFirstFree:
		return "the first free label is not on the sheet"
	}
	return "the labels do not fit the sheet"
}
