package desk

import (
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/market"
	"reelworth/internal/words"
)

// rateEndings are what files of published rates end in.
var rateEndings = []string{".zip", ".csv", ".xml"}

// isRates says whether a file is one of published rates, by its name.
func isRates(path string) bool {
	return slices.Contains(rateEndings, strings.ToLower(filepath.Ext(path)))
}

// askRates asks which file of published rates to read.
func askRates(on *kit.Dialogs, folder string, m *market.Market) {
	chooser := dialog.NewFileOpen(func(chosen fyne.URIReadCloser, err error) {
		if err != nil {
			on.Tell(words.RatesUnread, words.Failure(err))
			return
		}
		if chosen != nil {
			chosen.Close()
			m.Read(chosen.URI().Path())
		}
	}, on.Window)
	chooser.SetFilter(storage.NewExtensionFileFilter(rateEndings))
	if at, err := storage.ListerForURI(storage.NewFileURI(folder)); err == nil {
		chooser.SetLocation(at)
	}
	chooser.Resize(fyne.NewSize(820, 560))
	on.Choose(chooser)
}
