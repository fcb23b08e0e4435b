package dialogs

import (
	"path/filepath"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/words"
)

// exportQuestion is the question what to export: what stands in its rows follows what is
// chosen in those above.
type exportQuestion struct {
	a      *Asker
	choice ExportChoice
	form   string // an ending
	path   *kit.TextBox

	forms    *kit.Picker
	formRow  *kit.Row
	looks    []*kit.Row // of a chart: colours, and the size of a PNG
	paperRow *kit.Row   // of pages
	body     *fyne.Container
}

// AskReport asks where to write the report, on sheets that are chosen already.
func (a *Asker) AskReport(letter bool) {
	choice := ExportChoice{Figure: answer.Report, Letter: letter}
	q := &exportQuestion{a: a, choice: choice}
	forms := productOf(answer.Report).forms
	a.AskPath(PathQuestion{
		Title: words.ExportOf(words.ExportReport), Confirm: words.Export, Endings: forms,
		Path: filepath.Join(a.host.Folder(), q.fileName(answer.Report, forms[0])),
		Then: func(path string) { a.Export(path, choice) },
	})
}

func (q *exportQuestion) ask() {
	var all []kit.Option
	for _, p := range products {
		if p.figure != answer.Days || q.a.host.Past().File != nil {
			all = append(all, kit.Option{Value: strconv.Itoa(p.figure), Label: p.name})
		}
	}
	what := kit.NewPicker(all, func(v string) {
		q.choice.Figure, _ = strconv.Atoi(v)
		q.follow("")
	})
	what.Set(strconv.Itoa(q.choice.Figure))
	q.forms = kit.NewPicker(nil, q.follow)
	q.formRow = kit.NewRow(words.ExportForm, q.forms, kit.WideWidth, "")
	q.looks = q.choice.rows()
	q.choice.Letter = q.a.host.Letter()
	q.paperRow = kit.NewRow(words.ExportPaper, pages.NewPaperPicker(q.choice.Letter, func(letter bool) {
		q.choice.Letter = letter
		q.a.host.PrintOn(letter)
	}), kit.NumberWidth, "")
	rows := append([]*kit.Row{kit.NewRow(words.ExportWhat, what, kit.WideWidth+kit.NumberWidth, ""), q.formRow}, q.looks...)
	q.form = productOf(q.choice.Figure).forms[0]
	q.a.AskPath(PathQuestion{
		Title: words.Export, Confirm: words.Export,
		Path:       filepath.Join(q.a.host.Folder(), q.fileName(q.choice.Figure, q.form)),
		endingsNow: q.endings,
		above:      append(rows, q.paperRow),
		opened: func(box *kit.TextBox, body *fyne.Container) {
			q.path, q.body = box, body
			q.follow("")
		},
		Then: func(path string) { q.a.Export(path, q.choice) },
	})
}

// endings are those of the product, the chosen one first: a name typed with another of
// them is taken at its word.
func (q *exportQuestion) endings() []string {
	all := []string{q.form}
	for _, e := range productOf(q.choice.Figure).forms {
		if e != q.form {
			all = append(all, e)
		}
	}
	return all
}

// follow has the other rows follow what was chosen: what is written, or in which form.
func (q *exportQuestion) follow(form string) {
	p := productOf(q.choice.Figure)
	was := q.form
	if form == "" {
		form = p.forms[0]
	}
	q.form = form
	var options []kit.Option
	for _, e := range p.forms {
		options = append(options, kit.Option{Value: e, Label: words.FormOf(e)})
	}
	q.forms.Options = options
	q.forms.Set(form)
	show(q.looks[0], p.figure < answer.Figures)
	show(q.looks[1], form == ".png")
	show(q.paperRow, p.figure == answer.Report)
	q.rename(was)
	q.body.Refresh()
}

func show(r *kit.Row, yes bool) {
	if yes {
		r.Show()
	} else {
		r.Hide()
	}
}

// rename has the file's name follow: all of it while it is the one proposed, else its
// ending, where it is that of the form before.
func (q *exportQuestion) rename(was string) {
	folder, name := filepath.Split(q.path.Entry.Text)
	for _, p := range products {
		for _, ending := range p.forms {
			if name == q.fileName(p.figure, ending) {
				q.path.Set(folder + q.fileName(q.choice.Figure, q.form))
				return
			}
		}
	}
	if rest, ok := strings.CutSuffix(q.path.Entry.Text, was); ok {
		q.path.Set(rest + q.form)
	}
}

// fileName is the name proposed for a product in a form.
func (q *exportQuestion) fileName(figure int, ending string) string {
	return FileSafe(q.a.host.Session().Current().Name+", "+productOf(figure).name) + ending
}
