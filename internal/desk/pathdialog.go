package desk

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
)

// pathQuestion asks where to write. The toolkit's own dialog would open, and so empty,
// the file it is pointed at before anything could be checked.
type pathQuestion struct {
	title, confirm string
	path           string   // to begin with
	own            string   // a path that is replaced without asking
	endings        []string // allowed, the first is added where there is none
	extra          []*row   // more to choose
	then           func(path string)
}

// ask shows the question.
func (d *Desk) ask(q pathQuestion) {
	box := newTextBox(false)
	box.show(q.path)
	why := newProse(sizeSmall).lines(2)
	fileRow := newRow("File", box, 380*textFactor, "")
	browse := newLink("Choose another folder…", func() {
		chooser := dialog.NewFolderOpen(func(folder fyne.ListableURI, err error) {
			if err == nil && folder != nil {
				box.show(filepath.Join(folder.Path(), filepath.Base(box.entry.Text)))
			}
		}, d.win)
		if at, err := storage.ListerForURI(storage.NewFileURI(filepath.Dir(box.entry.Text))); err == nil {
			chooser.SetLocation(at)
		}
		chooser.Resize(fyne.NewSize(760, 520))
		chooser.Show()
	})
	width := labelWidth + 400*textFactor
	body := newStack(width, 6, fileRow)
	for _, r := range q.extra {
		body.Add(r)
	}
	body.Add(browse)
	body.Add(why)
	var top *posed
	try := func() {
		path, wrong := finish(box.entry.Text, q.endings)
		if wrong != "" {
			why.set(span{text: "✗ ", color: colFault, bold: true}, span{text: wrong, color: colFault})
			return
		}
		top.hide()
		d.replacing(path, q.own, func() { q.then(path) })
	}
	box.entry.OnSubmitted = func(string) { try() }
	box.entry.escape = func() { top.wayOut() }
	top = d.pose(q.title, container.New(&exactSize{width}, body), box.entry,
		reply{label: "Cancel"}, reply{label: q.confirm, do: try, stay: true})
}

// finish makes a path whole, or says what is wrong with it.
func finish(text string, endings []string) (path, wrong string) {
	text = strings.TrimSpace(text)
	if text == "" {
		return "", "Type a file name."
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
		return "", "The name must end in " + strings.Join(endings, ", ") + "."
	}
	abs, err := filepath.Abs(text)
	if err != nil {
		return "", err.Error()
	}
	if s, err := os.Stat(abs); err == nil && s.IsDir() {
		return "", "This is a folder; add a file name."
	}
	if s, err := os.Stat(filepath.Dir(abs)); err != nil || !s.IsDir() {
		return "", "There is no folder " + filepath.Dir(abs) + "; choose one that exists."
	}
	return abs, ""
}

// replacing asks before a file that is there already is replaced.
func (d *Desk) replacing(path, own string, then func()) {
	if _, err := os.Stat(path); err != nil || path == own {
		then()
		return
	}
	d.confirm("Replace the file?", filepath.Base(path)+" is already there. Replacing it loses what it holds.", "Replace", then)
}
