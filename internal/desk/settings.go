package desk

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/exact"
	"reelworth/internal/money"
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
}{{"Text as drawn", 1}, {"Larger text", 1.15}, {"Largest text", 1.3}}

// restore brings back what was remembered.
func (d *Desk) restore() {
	p := d.App.Preferences()
	kit.Look.Choice = kit.ThemeChoice(p.StringWithFallback(keepTheme, string(kit.FollowSystem)))
	kit.SetTextSize(float32(p.FloatWithFallback(keepText, 1)))
	if l := money.Locale(p.String(keepNumbers)); slices.Contains(money.Locales(), l) {
		d.Locale = l
	}
}

// rememberedSize is the window's size when it was closed last.
func (d *Desk) rememberedSize() fyne.Size {
	p := d.App.Preferences()
	w, h := p.FloatWithFallback(keepWidth, 1280), p.FloatWithFallback(keepHeight, 800)
	return fyne.NewSize(float32(max(w, 800)), float32(max(h, 500)))
}

func (d *Desk) rememberSize() {
	s := d.win.Canvas().Size()
	p := d.App.Preferences()
	p.SetFloat(keepWidth, float64(s.Width))
	p.SetFloat(keepHeight, float64(s.Height))
}

// setTheme switches the theme and remembers it.
func (d *Desk) setTheme(choice kit.ThemeChoice) {
	kit.Look.Choice = choice
	d.App.Preferences().SetString(keepTheme, string(choice))
	d.App.Settings().SetTheme(kit.Look)
	d.refreshMenu()
}

// setText changes the size of the text and remembers it.
func (d *Desk) setText(factor float32) {
	d.App.Preferences().SetFloat(keepText, float64(factor))
	kit.SetTextSize(factor)
	d.App.Settings().SetTheme(kit.Look)
	d.layOut()
}

// setNumbers changes how numbers are read and written, and remembers it.
func (d *Desk) setNumbers(l money.Locale) {
	d.App.Preferences().SetString(keepNumbers, string(l))
	d.Locale = l
	d.win.Canvas().Unfocus()
	d.rebuild()
}

// numbersSample shows a locale by a number in it.
func numbersSample(l money.Locale) string {
	return l.Number(exact.Ratio(123450, 100), 2) + "   " + string(l)
}

// recent are the files opened or saved last, the newest first.
func (d *Desk) recent() []string {
	var list []string
	for _, p := range strings.Split(d.App.Preferences().String(keepRecent), "\n") {
		if p != "" {
			list = append(list, p)
		}
	}
	return list
}

// rememberFile puts a file first among the recent ones.
func (d *Desk) rememberFile(path string) {
	list := slices.DeleteFunc(d.recent(), func(p string) bool { return p == path })
	list = append([]string{path}, list...)
	d.App.Preferences().SetString(keepRecent, strings.Join(list[:min(len(list), mostRecent)], "\n"))
	d.setMenu()
}

// OpenLast opens the file that was open last, if it is still there.
func (d *Desk) OpenLast() {
	if list := d.recent(); len(list) > 0 {
		if _, err := os.Stat(list[0]); err == nil {
			d.Open(list[0])
		}
	}
}

// rememberPlace remembers which scenario of the file is looked at.
func (d *Desk) rememberPlace() {
	if doc := d.session.doc; doc != nil && doc.Path != "" {
		d.App.Preferences().SetString(keepPlace+doc.Path, d.current().Name)
	}
}

// recentMenu opens one of the recent files.
func (d *Desk) recentMenu() *fyne.Menu {
	m := fyne.NewMenu("")
	for _, path := range d.recent() {
		m.Items = append(m.Items, fyne.NewMenuItem(filepath.Base(path)+"  –  "+filepath.Dir(path),
			d.guarded(func() { d.leaving(func() { d.Open(path) }) })))
	}
	if len(m.Items) == 0 {
		none := fyne.NewMenuItem("none yet", nil)
		none.Disabled = true
		m.Items = append(m.Items, none)
	}
	return m
}

// dropped opens a file that was let fall on the window.
func (d *Desk) dropped(_ fyne.Position, files []fyne.URI) {
	if len(files) == 0 {
		return
	}
	d.guarded(func() { d.leaving(func() { d.Open(files[0].Path()) }) })()
}
