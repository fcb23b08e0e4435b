package desk

import (
	"bytes"
	"context"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/natefinch/atomic"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/figure"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// exportChoice is how a chart is to be written.
type exportChoice struct {
	figure int
	theme  string
	scale  string
}

// exportNames are what the figures are called in a file's name.
var exportNames = map[int]string{
	figureCost: "cost per roll", figureSpend: "the year's spend", figureFlip: "what changes it",
	figureSwings: "how far it swings", figureSizes: "order size",
}

// askExport asks where to write a chart, and how.
func (d *Desk) askExport(fig int) {
	choice := &exportChoice{figure: fig, theme: kit.Palette().Name, scale: "2"}
	theme := kit.NewPicker([]kit.Option{{Value: palette.Paper.Name, Label: "paper"}, {Value: palette.Safelight.Name, Label: "safelight"}}, func(v string) { choice.theme = v })
	theme.Set(choice.theme)
	scale := kit.NewPicker([]kit.Option{{Value: "1", Label: "1×"}, {Value: "2", Label: "2×"}, {Value: "3", Label: "3×"}}, func(v string) { choice.scale = v })
	scale.Set(choice.scale)
	name := exportNames[fig]
	d.ask(pathQuestion{
		title: "Export " + name, confirm: "Export",
		path:    filepath.Join(d.folder(), fileSafe(d.current().Name+", "+name)+".png"),
		endings: []string{".png", ".svg", ".pdf"},
		extra:   []*kit.Row{kit.NewRow("Colours", theme, kit.WideWidth, ""), kit.NewRow("Size of a PNG", scale, kit.NumberWidth, "")},
		then:    func(path string) { d.export(path, *choice) },
	})
}

// fileSafe is a name without what a file's name cannot hold everywhere.
func fileSafe(name string) string {
	return strings.TrimSpace(strings.Map(func(r rune) rune {
		if strings.ContainsRune(`/\:*?"<>|`, r) || r < ' ' {
			return '-'
		}
		return r
	}, name))
}

// export writes a chart away from the interface thread, and says when it could not.
func (d *Desk) export(path string, choice exportChoice) {
	s, chosen := d.current(), ""
	if d.session.sel.offer < len(s.Offers) {
		chosen = s.Offers[d.session.sel.offer].Name
	}
	today, locale, turn := d.today(), d.Locale, d.turn
	d.background(func() func() {
		err := writeChart(path, s, chosen, today, locale, turn, choice)
		return func() {
			if err != nil {
				d.dialogs.Report("The chart was not written", err)
				return
			}
			d.answer.announce("Written to " + path)
		}
	})
}

func writeChart(path string, s scenario.Scenario, chosen string, today scenario.Date, l locale, turn turnKey, choice exportChoice) error {
	theme, ok := palette.Find(choice.theme)
	if !ok {
		return errors.New("no theme " + choice.theme)
	}
	scale, err := strconv.Atoi(choice.scale)
	if err != nil {
		return err
	}
	c := compare.Compare(s, scenario.Check(s), today)
	e := figure.Export{
		Figure: exportFigures[choice.figure], Comparison: &c, Chosen: chosen,
		Style: figure.Style{Theme: theme, Locale: l}, Date: today, Scale: float64(scale),
	}
	if err := e.Foresee(context.Background(), turn.input, turn.up); err != nil {
		return err
	}
	var b bytes.Buffer
	if err := e.Write(&b, strings.TrimPrefix(strings.ToLower(filepath.Ext(path)), ".")); err != nil {
		return err
	}
	mode := fs.FileMode(0o644) // a new file of the library's would be for its owner alone
	if info, err := os.Stat(path); err == nil {
		mode = info.Mode().Perm()
	}
	if err := atomic.WriteFile(path, &b); err != nil {
		return err
	}
	return os.Chmod(path, mode)
}

var exportFigures = map[int]string{
	figureCost: figure.FigureCost, figureSpend: figure.FigureSpend, figureFlip: figure.FigureFlip,
	figureSwings: figure.FigureSwings, figureSizes: figure.FigureSizes,
}
