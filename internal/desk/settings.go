package desk

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// What is remembered between starts, by name.
const (
	keepTheme   = "theme"
	keepText    = "text size"
	keepNumbers = "numbers"
	keepWidth   = "window width"
	keepHeight  = "window height"
	keepRecent  = "recent files"
	keepPlace   = "scenario of " // a file's path follows
)

// mostRecent is how many files the menu remembers.
const mostRecent = 8

// textSizes are the sizes to choose from, as multiples of the drawn one.
var textSizes = []struct {
	label  string
	factor float32
}{{words.TextAsDrawn, 1}, {words.TextLarger, 1.15}, {words.TextLargest, 1.3}}

// themes are the themes to choose from.
var themes = []struct {
	choice kit.ThemeChoice
	label  string
}{{kit.FollowSystem, words.ThemeSystem}, {kit.AlwaysPaper, words.ThemePaper}, {kit.AlwaysSafelight, words.ThemeSafelight}}

// settings are what is remembered between starts.
type settings struct {
	app    fyne.App
	locale money.Locale // how the user writes numbers
}

// restore brings back what was remembered; numbers are written as the system does unless
// something else was chosen.
func restore(app fyne.App, system money.Locale) *settings {
	s := &settings{app: app, locale: system}
	p := app.Preferences()
	kit.Look.Choice = kit.ThemeChoice(p.StringWithFallback(keepTheme, string(kit.FollowSystem)))
	kit.SetTextSize(float32(p.FloatWithFallback(keepText, 1)))
	if l := money.Locale(p.String(keepNumbers)); slices.Contains(money.Locales(), l) {
		s.locale = l
	}
	app.Settings().SetTheme(kit.Look)
	return s
}

// size is the window's size when it was closed last.
func (s *settings) size() fyne.Size {
	p := s.app.Preferences()
	w, h := p.FloatWithFallback(keepWidth, 1280), p.FloatWithFallback(keepHeight, 800)
	return fyne.NewSize(float32(max(w, 800)), float32(max(h, 500)))
}

func (s *settings) keepSize(size fyne.Size) {
	s.app.Preferences().SetFloat(keepWidth, float64(size.Width))
	s.app.Preferences().SetFloat(keepHeight, float64(size.Height))
}

// setTheme switches the theme and remembers it.
func (s *settings) setTheme(choice kit.ThemeChoice) {
	kit.Look.Choice = choice
	s.app.Preferences().SetString(keepTheme, string(choice))
	s.app.Settings().SetTheme(kit.Look)
}

// setText changes the size of the text and remembers it; the window must be laid out anew.
func (s *settings) setText(factor float32) {
	s.app.Preferences().SetFloat(keepText, float64(factor))
	kit.SetTextSize(factor)
	s.app.Settings().SetTheme(kit.Look)
}

// setNumbers changes how numbers are read and written, and remembers it.
func (s *settings) setNumbers(l money.Locale) {
	s.app.Preferences().SetString(keepNumbers, string(l))
	s.locale = l
}

// numbersSample shows a locale by a number in it.
func numbersSample(l money.Locale) string {
	return words.NumbersSample(l)
}

// recent are the files opened or saved last, the newest first.
func (s *settings) recent() []string {
	var list []string
	for _, p := range strings.Split(s.app.Preferences().String(keepRecent), "\n") {
		if p != "" {
			list = append(list, p)
		}
	}
	return list
}

// keepFile puts a file first among the recent ones.
func (s *settings) keepFile(path string) {
	list := slices.DeleteFunc(s.recent(), func(p string) bool { return p == path })
	list = append([]string{path}, list...)
	s.app.Preferences().SetString(keepRecent, strings.Join(list[:min(len(list), mostRecent)], "\n"))
}

// place is the scenario of a file that was looked at last.
func (s *settings) place(path string) string { return s.app.Preferences().String(keepPlace + path) }

// keepPlaceOf remembers which scenario of its file is looked at.
func (s *settings) keepPlaceOf(work *session.Session) {
	if doc := work.Doc; doc != nil && doc.Path != "" {
		s.app.Preferences().SetString(keepPlace+doc.Path, work.Current().Name)
	}
}
