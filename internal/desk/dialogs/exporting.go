package dialogs

import (
	"path/filepath"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// exportQuestion is the question what to export: what stands in its rows follows what is
// chosen in those above.
type exportQuestion struct {
	a      *Asker
	choice ExportChoice
	form   string // an ending
	path   *kit.TextBox

	forms, paper *kit.Picker
	formRow      *kit.Row
	looks        []*kit.Row // of a chart: colours, and the size of a PNG
	paperRow     *kit.Row   // of pages
	body         *fyne.Container
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
	q.paper = kit.NewPicker([]kit.Option{{Value: words.PaperA4, Label: words.PaperA4}, {Value: words.PaperLetter, Label: words.PaperLetter}}, func(v string) { q.choice.Letter = v == words.PaperLetter })
	q.paper.Set(words.PaperA4)
	q.paperRow = kit.NewRow(words.ExportPaper, q.paper, kit.NumberWidth, "")
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
