package dialogs

import (
	"bytes"
	"context"
	"errors"
	"io"
	"path/filepath"
	"strings"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/library"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// ExportChoice is what is to be written, and how.
type ExportChoice struct {
	Figure int    // of the answer, or what is handed on beside them
	Theme  string // of a chart, by name
	Scale  string // of a PNG
	Letter bool   // the pages are Letter and not A4
}

// product is something that can be handed on, in some forms, the usual one first.
type product struct {
	figure int
	name   string // in the list, and in a file's name
	forms  []string
}

var (
	charts   = []string{".png", ".svg", ".pdf"}
	products = []product{
		{answer.Cost, words.ChartCost, charts},
		{answer.Spend, words.ChartSpend, charts},
		{answer.Flip, words.ChartFlip, charts},
		{answer.Swings, words.ChartSwings, charts},
		{answer.Volumes, words.ChartVolumes, charts},
		{answer.Sizes, words.ChartSizes, charts},
		{answer.Cuts, words.ChartCuts, charts},
		{answer.Days, words.ChartPast, charts},
		{answer.Report, words.ExportReport, []string{".pdf"}},
		{answer.Spreadsheet, words.ExportSpreadsheet, []string{".xlsx"}},
		{answer.Tables, words.ExportTables, []string{".csv", ".md"}},
		{answer.Data, words.ExportData, []string{".json"}},
	}
)

// productOf is what is written of a figure, the first of all where there is none.
func productOf(figure int) product {
	for _, p := range products {
		if p.figure == figure {
			return p
		}
	}
	return products[0]
}

// AskExport asks what to write, in which form and where. what is what it begins with.
func (a *Asker) AskExport(what int) {
	if what == answer.Days && a.host.Past().File == nil {
		a.on.Tell(words.NoPastYet, words.NoMarket)
		return
	}
	q := &exportQuestion{a: a, choice: ExportChoice{Figure: what, Theme: kit.Palette().Name, Scale: "2"}}
	q.ask()
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

// Of is what is exported by a choice, of what is open.
func (a *Asker) Of(choice ExportChoice) answer.Export {
	now := a.host.Session()
	return answer.Export{
		Figure: choice.Figure, Theme: choice.Theme, Scale: choice.Scale, Letter: choice.Letter,
		Scenario: now.Current(), Chosen: now.ChosenOffer(), Reels: now.Reels(),
		Today: a.host.Today(), Locale: a.host.Locale(), Flip: a.host.Flip(), In: a.host.ShownIn(),
		Past: a.host.Past(),
	}
}

// Export writes a file away from the interface thread, and says when it could not.
func (a *Asker) Export(path string, choice ExportChoice) {
	e := a.Of(choice)
	e.Format = strings.TrimPrefix(strings.ToLower(filepath.Ext(path)), ".")
	a.work.Do(func() func() {
		data, lacking, err := e.Make(context.Background())
		if err != nil {
			return func() { a.on.Tell(words.NotExported, words.Failure(err)) }
		}
		return a.exporting(path, data, words.Lacking(lacking), library.Options{})
	})
}

// exporting writes a file, and returns what is to be said about it: in the window, where it
// asks before it replaces what is protected. also is said when it is written.
func (a *Asker) exporting(path string, data []byte, also string, o library.Options) (then func()) {
	parted, err := library.Export(path, data, o)
	return func() {
		var protected *library.Protected
		switch {
		case errors.As(err, &protected):
			a.Sure(words.ProtectedFile(filepath.Base(path), protected.Other), func() {
				a.work.Do(func() func() { return a.exporting(path, data, also, library.Options{Force: true}) })
			})
		case err != nil:
			a.on.Tell(words.NotExported, words.Failure(err))
		default:
			a.host.Announce(words.Exported(path, parted) + also)
		}
	}
}

// AskFile asks for a file of one of some endings, and writes it away from the interface
// thread.
func (a *Asker) AskFile(title, name string, endings []string, write func(io.Writer) error) {
	a.AskPath(PathQuestion{
		Title: title, Confirm: words.Export, Endings: endings,
		Path: filepath.Join(a.host.Folder(), FileSafe(name)+endings[0]),
		Then: func(path string) {
			a.work.Do(func() func() {
				var b bytes.Buffer
				if err := write(&b); err != nil {
					return func() { a.on.Tell(words.NotExported, words.Failure(err)) }
				}
				return a.exporting(path, b.Bytes(), "", library.Options{})
			})
		},
	})
}
