package dialogs

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// PathQuestion asks where to write. The toolkit's own dialog would open, and so empty,
// the file it is pointed at before anything could be checked.
type PathQuestion struct {
	Title, Confirm string
	Path           string          // to begin with
	Own            string          // a path that is replaced without asking
	Endings        []string        // allowed, the first is added where there is none
	endingsNow     func() []string // in their place where they change, nil else
	above, extra   []*kit.Row      // more to choose, before the file and after it
	opened         func(box *kit.TextBox, body *fyne.Container)
	Then           func(path string)
}

// AskPath shows the question.
func (a *Asker) AskPath(q PathQuestion) {
	box := kit.NewTextBox(false)
	box.Set(q.Path)
	why := complaint()
	fileRow := kit.NewRow(words.FieldFile, box, 380*kit.TextFactor, "")
	browse := kit.NewLink(words.LinkOtherFolder, func() {
		chooser := dialog.NewFolderOpen(func(folder fyne.ListableURI, err error) {
			if err == nil && folder != nil {
				box.Set(filepath.Join(folder.Path(), filepath.Base(box.Entry.Text)))
			}
		}, a.on.Window)
		if at, err := storage.ListerForURI(storage.NewFileURI(filepath.Dir(box.Entry.Text))); err == nil {
			chooser.SetLocation(at)
		}
		chooser.Resize(fyne.NewSize(760, 520))
		chooser.Show()
	})
	width := kit.LabelWidth + 400*kit.TextFactor
	body := kit.NewStack(width, 6)
	for _, r := range q.above {
		body.Add(r)
	}
	body.Add(fileRow)
	for _, r := range q.extra {
		body.Add(r)
	}
	body.Add(browse)
	body.Add(why)
	var top *kit.Dialog
	try := func() {
		endings := q.Endings
		if q.endingsNow != nil {
			endings = q.endingsNow()
		}
		path, wrong := finish(box.Entry.Text, endings)
		if wrong != "" {
			complain(why, wrong)
			return
		}
		top.Hide()
		a.replacing(path, q.Own, func() { q.Then(path) })
	}
	box.Entry.OnSubmitted = func(string) { try() }
	box.Entry.Escape = func() { top.Leave() }
	if q.opened != nil {
		q.opened(box, body)
	}
	top = a.on.Ask(q.Title, kit.AtWidth(width, body), box.Entry,
		kit.Reply{Label: words.Cancel}, kit.Reply{Label: q.Confirm, Do: try, Stay: true})
}

// finish makes a path whole, or says what is wrong with it.
func finish(text string, endings []string) (path, wrong string) {
	text = strings.TrimSpace(text)
	if text == "" {
		return "", words.TypeFileName
	}
	if rest, ok := strings.CutPrefix(text, "~"+string(filepath.Separator)); ok {
		if home, err := os.UserHomeDir(); err == nil {
			text = filepath.Join(home, rest)
		}
	}
	ending := strings.ToLower(filepath.Ext(text))
	switch {
	case ending == "":
		text += endings[0]
	case !slices.Contains(endings, ending):
		return "", words.NameMustEnd(endings)
	}
	abs, err := filepath.Abs(text)
	if err != nil {
		return "", words.Failure(err)
	}
	if s, err := os.Stat(abs); err == nil && s.IsDir() {
		return "", words.PathIsFolder
	}
	if s, err := os.Stat(filepath.Dir(abs)); err != nil || !s.IsDir() {
		return "", words.NoSuchFolder(filepath.Dir(abs))
	}
	return abs, ""
}

// replacing asks before a file that is there already is replaced.
func (a *Asker) replacing(path, own string, then func()) {
	if _, err := os.Stat(path); err != nil || path == own {
		then()
		return
	}
	a.Sure(words.ExistingFile(filepath.Base(path)), then)
}
