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

	// A file's path follows; of cut plans "" for what is in no file yet.
	keepPlace   = "scenario of "
	keepPlans   = "cut plans of "
	keepShownIn = "shown in of "
	keepGreeted = "greeted"
)

// mostRecent is how many files the menu remembers.
const mostRecent = 8

// textSizes are the sizes to choose from, as multiples of the drawn one.
var textSizes = []textItem{{words.TextAsDrawn, 1}, {words.TextLarger, 1.15}, {words.TextLargest, 1.3}}

// themes are the themes to choose from.
var themes = []themeItem{{kit.FollowSystem, words.ThemeSystem}, {kit.AlwaysPaper, words.ThemePaper}, {kit.AlwaysSafelight, words.ThemeSafelight}}

type textItem struct {
	label  string
	factor float32
}

type themeItem struct {
	choice kit.ThemeChoice
	label  string
}

// settings are what is remembered between starts.
type settings struct {
	app     fyne.App
	locale  money.Locale // how the user writes numbers
	leftOut []string     // what of it made no sense
}

// restore brings back what was remembered; numbers are written as the system does unless
// something else was chosen. What makes no sense is left out.
func restore(app fyne.App, system money.Locale) *settings {
	s := &settings{app: app, locale: system}
	p := app.Preferences()
	kit.Look.Choice = kit.FollowSystem
	choice := kit.ThemeChoice(p.StringWithFallback(keepTheme, string(kit.FollowSystem)))
	if slices.ContainsFunc(themes, func(t themeItem) bool { return t.choice == choice }) {
		kit.Look.Choice = choice
	} else {
		s.leaveOut(keepTheme, words.PreferredTheme)
	}
	factor := float32(p.FloatWithFallback(keepText, 1))
	if !slices.ContainsFunc(textSizes, func(t textItem) bool { return t.factor == factor }) {
		s.leaveOut(keepText, words.PreferredText)
		factor = 1
	}
	kit.SetTextSize(factor)
	if l := money.Locale(p.String(keepNumbers)); slices.Contains(money.Locales(), l) {
		s.locale = l
	} else if l != "" {
		s.leaveOut(keepNumbers, words.PreferredNumbers)
	}
	app.Settings().SetTheme(kit.Look)
	return s
}

// leaveOut forgets a preference that makes no sense.
func (s *settings) leaveOut(key, called string) {
	s.app.Preferences().RemoveValue(key)
	s.leftOut = append(s.leftOut, called)
}

// odd says what was left out, "" for nothing.
func (s *settings) odd() string {
	if len(s.leftOut) == 0 {
		return ""
	}
	return words.PreferencesLeftOut(s.leftOut)
}

// keep remembers a text by name, "" forgets it.
func (s *settings) keep(name, text string) {
	if text == "" {
		s.app.Preferences().RemoveValue(name)
		return
	}
	s.app.Preferences().SetString(name, text)
}

// Bounds of what a window's size can have been, in the toolkit's units: the widest screens
// have some 8,000 pixels.
const leastSide, mostSide = 100, 10000

// size is the window's size when it was closed last.
func (s *settings) size() fyne.Size {
	p := s.app.Preferences()
	w, h := p.FloatWithFallback(keepWidth, 1280), p.FloatWithFallback(keepHeight, 800)
	if !(w >= leastSide && w <= mostSide && h >= leastSide && h <= mostSide) { // nor what is no number
		w, h = 1280, 800
		s.app.Preferences().RemoveValue(keepHeight)
		s.leaveOut(keepWidth, words.PreferredSize)
	}
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

// first says whether this is the first start, once.
func (s *settings) first() bool {
	p := s.app.Preferences()
	was := p.Bool(keepGreeted)
	p.SetBool(keepGreeted, true)
	return !was
}

// recent are the files opened or saved last, the newest first.
func (s *settings) recent() []string {
	p := s.app.Preferences()
	list := p.StringList(keepRecent)
	if len(list) == 0 { // as they were kept before: a path cannot hold a line's end there
		list = strings.Split(p.String(keepRecent), "\n")
	}
	return slices.DeleteFunc(slices.Clone(list), func(path string) bool { return path == "" })
}

// keepFile puts a file first among the recent ones.
func (s *settings) keepFile(path string) {
	list := slices.DeleteFunc(s.recent(), func(p string) bool { return p == path })
	list = append([]string{path}, list...)
	s.app.Preferences().SetStringList(keepRecent, list[:min(len(list), mostRecent)])
}

// place is the scenario of a file that was looked at last.
func (s *settings) place(path string) string { return s.app.Preferences().String(keepPlace + path) }

// lookAt says which scenario of a file is to be looked at next.
func (s *settings) lookAt(path, name string) { s.app.Preferences().SetString(keepPlace+path, name) }

// keepPlaceOf remembers which scenario of its file is looked at.
func (s *settings) keepPlaceOf(work *session.Session) {
	if doc := work.Doc; doc != nil && doc.Path != "" {
		s.lookAt(doc.Path, work.Current().Name)
	}
}
