package dialogs

import (
	"bytes"
	"path/filepath"
	"strconv"
	"strings"

	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
	"reelworth/internal/library"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/report"
	"reelworth/internal/scenario"
	"reelworth/internal/sidebyside"
	"reelworth/internal/words"
)

// BesideExport is scenarios side by side, to be handed on.
type BesideExport struct {
	Entries []sidebyside.Entry
	Look    ExportChoice // of a picture
	Today   scenario.Date
	Locale  money.Locale
}

// AskExportBeside asks where to write scenarios side by side, and how: as a table or as
// their picture.
func (a *Asker) AskExportBeside(list []sidebyside.Entry) {
	choice := &ExportChoice{Theme: kit.Palette().Name, Scale: "2"}
	a.AskPath(PathQuestion{
		Title: words.ExportOf(words.SideExported), Confirm: words.Export,
		Path:    filepath.Join(a.host.Folder(), words.SideExported+words.SideFormats[0]),
		Endings: words.SideFormats,
		extra:   choice.rows(),
		Then:    func(path string) { a.ExportBeside(path, BesideExport{list, *choice, a.host.Today(), a.host.Locale()}) },
	})
}

// ExportBeside writes scenarios side by side away from the interface thread, and says when
// it could not.
func (a *Asker) ExportBeside(path string, e BesideExport) {
	a.work.Do(func() func() {
		data, err := e.Data(strings.TrimPrefix(strings.ToLower(filepath.Ext(path)), "."))
		if err != nil {
			return func() { a.on.Tell(words.NotExported, words.Failure(err)) }
		}
		return a.exporting(path, data, "", library.Options{})
	})
}

// Data is the export in a format: csv, md, or one of the figures'.
func (e BesideExport) Data(format string) ([]byte, error) {
	var b bytes.Buffer
	var err error
	switch format {
	case "csv":
		err = report.SideBySideCSV(&b, e.Entries)
	case "md":
		err = report.SideBySideMarkdown(&b, e.Entries, e.Locale)
	default:
		theme, _ := palette.Find(e.Look.Theme)
		scale, _ := strconv.Atoi(e.Look.Scale)
		err = figure.Export{
			Figure: figure.FigureSideBySide, Scenarios: e.Entries, Date: e.Today, Scale: float64(scale),
			Style: figure.Style{Theme: theme, Locale: e.Locale},
		}.Write(&b, format)
	}
	return b.Bytes(), err
}
