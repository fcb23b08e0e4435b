package desk

import (
	"path/filepath"

	"reelworth/internal/compare"
	"reelworth/internal/words"
)

// helping is what the help says of this system and of what is open.
type helping struct{ d *Desk }

// files says where files are kept.
func (h helping) files() {
	d := h.d
	kept := words.Kept{
		Folder: d.files.folder(), Unsaved: d.keeper.Folder(), Backups: d.files.backups.Folder(), Rates: d.market.Folder(),
		Settings: filepath.Join(d.settings.app.Storage().RootURI().Path(), "preferences.json"), // as the toolkit calls it
	}
	if doc := d.session.Doc; doc != nil {
		kept.Open = doc.Path
	}
	d.asker.Read(words.MenuFilesHelp, words.FilesHelp(kept))
}

// model says how the figures come about, in general and in what is open.
func (h helping) model() {
	d := h.d
	var c *compare.Comparison
	if a := d.pipeline.shown; a != nil {
		c = a.Comparison
	}
	text := append(words.ModelHelp(), words.Passage{Heading: words.WorkedTitle, Paragraphs: []string{words.WorkedIntro}, Linked: true})
	text = append(text, words.Worked(c, d.locale())...)
	d.asker.Read(words.MenuModel, append(text, words.SourcesHelp()))
}
