package dialogs

import (
	"errors"
	"path/filepath"
	"strings"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/library"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// ExportChoice is how a chart is to be written.
type ExportChoice struct {
	Figure int    // of the answer
	Theme  string // by name
	Scale  string // of a PNG
}

// exportNames are what the figures are called in a file's name.
var exportNames = map[int]string{
	answer.Cost: words.ChartCost, answer.Spend: words.ChartSpend, answer.Flip: words.ChartFlip,
	answer.Swings: words.ChartSwings, answer.Volumes: words.ChartVolumes, answer.Sizes: words.ChartSizes,
	answer.Cuts: words.ChartCuts,
	answer.Days: words.ChartPast,
}

// AskExport asks where to write a chart, and how.
func (a *Asker) AskExport(fig int) {
	if fig == answer.Days && a.host.Past().File == nil {
		a.on.Tell(words.NoPastYet, words.NoMarket)
		return
	}
	choice := &ExportChoice{Figure: fig, Theme: kit.Palette().Name, Scale: "2"}
	name := exportNames[fig]
	a.AskPath(PathQuestion{
		Title: words.ExportOf(name), Confirm: words.Export,
		Path:    filepath.Join(a.host.Folder(), FileSafe(a.host.Session().Current().Name+", "+name)+".png"),
		Endings: []string{".png", ".svg", ".pdf"},
		extra:   choice.rows(),
		Then:    func(path string) { a.Export(path, *choice) },
	})
}

// rows are the questions for how a picture looks.
func (c *ExportChoice) rows() []*kit.Row {
	theme := kit.NewPicker([]kit.Option{{Value: palette.Paper.Name, Label: words.ColoursPaper}, {Value: palette.Safelight.Name, Label: words.ColoursSafelight}}, func(v string) { c.Theme = v })
	theme.Set(c.Theme)
	scale := kit.NewPicker([]kit.Option{{Value: "1", Label: "1×"}, {Value: "2", Label: "2×"}, {Value: "3", Label: "3×"}}, func(v string) { c.Scale = v })
	scale.Set(c.Scale)
	return []*kit.Row{kit.NewRow(words.ExportColours, theme, kit.WideWidth, ""), kit.NewRow(words.ExportScale, scale, kit.NumberWidth, "")}
}

// FileSafe is a name without what a file's name cannot hold everywhere.
func FileSafe(name string) string {
	return strings.TrimSpace(strings.Map(func(r rune) rune {
		if strings.ContainsRune(`/\:*?"<>|`, r) || r < ' ' {
			return '-'
		}
		return r
	}, name))
}

// Export writes a chart away from the interface thread, and says when it could not.
func (a *Asker) Export(path string, choice ExportChoice) {
	now := a.host.Session()
	e := answer.Export{
		Format: strings.TrimPrefix(strings.ToLower(filepath.Ext(path)), "."),
		Figure: choice.Figure, Theme: choice.Theme, Scale: choice.Scale,
		Scenario: now.Current(), Chosen: now.ChosenOffer(),
		Today: a.host.Today(), Locale: a.host.Locale(), Flip: a.host.Flip(), In: a.host.ShownIn(),
		Past: a.host.Past(),
	}
	a.work.Do(func() func() {
		data, err := e.Draw()
		if err != nil {
			return func() { a.on.Tell(words.NotExported, words.Failure(err)) }
		}
		return a.exporting(path, data, library.Options{})
	})
}

// exporting writes a file, and returns what is to be said about it: in the window, where it
// asks before it replaces what is protected.
func (a *Asker) exporting(path string, data []byte, o library.Options) (then func()) {
	parted, err := library.Export(path, data, o)
	return func() {
		var protected *library.Protected
		switch {
		case errors.As(err, &protected):
			a.Sure(words.ProtectedFile(filepath.Base(path), protected.Other), func() {
				a.work.Do(func() func() { return a.exporting(path, data, library.Options{Force: true}) })
			})
		case err != nil:
			a.on.Tell(words.NotExported, words.Failure(err))
		default:
			a.host.Announce(words.Exported(path, parted))
		}
	}
}
