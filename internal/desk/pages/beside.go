package pages

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/sidebyside"
	"reelworth/internal/words"
)

// BesideView is what stands in the place of the columns for scenarios side by side.
type BesideView struct {
	Content *fyne.Container
	Common  *kit.Picker // the currency that all are brought to
	Grid    *kit.Grid
	Figure  *FigureView
	State   *kit.Text // what was done or is under way
	Notes   *kit.Text

	act     BesideActions
	whole   *fyne.Container
	only    *kit.Link
	room    *risingRoom
	shown   *answer.Beside // nil until the first is there
	chosen  who
	columns []words.SideColumn
}

// BesideActions are what can be done there.
type BesideActions interface {
	Locale() money.Locale
	Redraw()                     // the figure has more or less room now
	BringTo(currency string)     // all of them, "" for none
	SortBy(by sidebyside.Key)    // or in the opposite order, where it is so already
	OpenEntry(*sidebyside.Entry) // in the window
	AddFile()                    // whose scenarios stand beside the others
	OnlyThis()                   // take the other files away
	Export()
	Leave() // back to the columns
}

// who names an entry across orders.
type who struct{ file, scenario string }

// NewBesideView is a view without scenarios yet. currencies are those to choose the common
// one from, the likely ones first in the list.
func NewBesideView(act BesideActions, currencies []kit.Option) *BesideView {
	b := &BesideView{act: act, State: kit.NewText(kit.SizeSmall + 1).Lines(1), Notes: kit.NewText(kit.SizeSmall + 1)}
	none := kit.Option{Value: "", Label: words.SideNoCommon}
	b.Common = kit.NewPicker(append([]kit.Option{none}, currencies...), act.BringTo)
	b.Grid = kit.NewGrid(b.open)
	b.Grid.Choose = func(row int) { b.chosen = whoIs(&b.shown.Entries[row]) }
	b.Grid.Escape = act.Leave
	b.Figure = newFigureView(act.Redraw, b.choose)
	b.room = &risingRoom{}
	b.only = kit.NewLink(words.SideOnlyThis, act.OnlyThis)
	links := kit.NewLine(24, kit.NewLink(words.SideBack, act.Leave), kit.NewLink(words.SideAddFile, act.AddFile), b.only,
		kit.NewLink(words.SideExport, act.Export))
	b.whole = kit.Inset(kit.NewStack(0, 12,
		kit.NewText(kit.SizeAnswer, kit.Span{Text: words.SideBySideName, Bold: true}),
		kit.NewText(kit.SizeText, kit.Span{Text: words.SideHint, Color: kit.Muted}),
		kit.NewSides(links, b.State),
		kit.NewRow(words.SideCommon, b.Common, kit.WideWidth, ""),
		kit.NewSideways(b.Grid), b.Notes, container.New(b.room, b.Figure),
	), 24, 20, 24, 20)
	b.Content = container.NewStack(kit.NewScroll(b.whole))
	return b
}

// Room is that of the figure.
func (b *BesideView) Room(scale float32) answer.Room { return b.Figure.room(scale) }

// Wait says that something is under way.
func (b *BesideView) Wait(text string) { b.State.Set(kit.Span{Text: text, Color: kit.Muted}) }

// Announce says that something was done.
func (b *BesideView) Announce(text string) {
	b.State.Set(kit.Span{Text: "✓ ", Color: kit.Good, Bold: true}, kit.Span{Text: text, Color: kit.Muted})
}

// Show puts up scenarios side by side.
func (b *BesideView) Show(beside *answer.Beside, likely []string, alone bool) {
	list := beside.Entries
	if b.shown == nil || b.shown.Job.Asked != beside.Job.Asked {
		b.State.Set()
	}
	b.shown = beside
	b.Common.First = append([]string{""}, likely...)
	b.Common.Set(beside.Job.Question.Currency)
	show(b.only, !alone)
	b.head(beside)
	b.Grid.Set(b.rows(list))
	b.turnTo(b.chosen)
	text := strings.Join(words.SideBySideNotes(list), " ")
	b.Notes.Set(kit.Span{Text: text, Color: kit.Muted})
	show(b.Notes, text != "")
	b.room.rows = len(list)
	b.Figure.put(beside.Picture)
	b.whole.Refresh()
}

func (b *BesideView) head(beside *answer.Beside) {
	b.columns = words.SideColumns(beside.Entries)
	sorted := kit.Sorted{Column: -1, Down: beside.Job.Down}
	var heads []kit.GridColumn
	for i, c := range b.columns {
		if c.By == beside.Job.By && sorted.Column < 0 {
			sorted.Column = i
		}
		heads = append(heads, columnOf(c))
	}
	b.Grid.Head(heads, sorted, func(column int) { b.act.SortBy(b.columns[column].By) })
}

// columnOf is how wide a column is.
func columnOf(c words.SideColumn) kit.GridColumn {
	g := kit.GridColumn{Name: c.Name, Trailing: c.Amount, Width: kit.Scaled(65)}
	switch {
	case c.Strip:
		g.Width, g.Grow = kit.Scaled(170), 2
	case c.By == sidebyside.ByName:
		g.Width, g.Grow = kit.Scaled(140), 2
	case c.Wide:
		g.Width, g.Grow = kit.Scaled(122), 1.5
	case c.By == sidebyside.ByVerdict:
		g.Width, g.Grow = kit.Scaled(100), 0.5
	case c.By == sidebyside.BySaving && !c.Into:
		g.Width = kit.Scaled(88)
	}
	return g
}

func (b *BesideView) rows(list []sidebyside.Entry) (rows []kit.GridRow) {
	most := 0
	for i := range list {
		for _, v := range list[i].Volumes() {
			most = max(most, v.To)
		}
	}
	for i := range list {
		cells, why := words.SideCells(list, i, b.act.Locale())
		row := kit.GridRow{Note: why}
		for k, c := range cells {
			cell := kit.GridCell{Text: c.Text, Under: c.Under}
			if b.columns[k].Strip {
				cell.Over = newVolumeStrip(list[i].Volumes(), most, list[i].RollsAYear().Float())
			}
			row.Cells = append(row.Cells, cell)
		}
		rows = append(rows, row)
	}
	return rows
}

func whoIs(e *sidebyside.Entry) who { return who{e.File, e.Scenario} }

// turnTo chooses an entry, as far as it is there.
func (b *BesideView) turnTo(w who) {
	for i := range b.shown.Entries {
		if whoIs(&b.shown.Entries[i]) == w {
			b.Grid.Turn(i)
			return
		}
	}
	if len(b.shown.Entries) > 0 {
		b.chosen = whoIs(&b.shown.Entries[b.Grid.At])
	}
}

// choose chooses a scenario by its name in the figure.
func (b *BesideView) choose(scenario string) {
	for i := range b.shown.Entries {
		if b.shown.Entries[i].Scenario == scenario {
			b.Grid.Turn(i)
			return
		}
	}
}

// Turn chooses the scenario of a file.
func (b *BesideView) Turn(file, scenario string) {
	b.chosen = who{file, scenario}
	if b.shown != nil {
		b.turnTo(b.chosen)
	}
}

func (b *BesideView) open(row int) { b.act.OpenEntry(&b.shown.Entries[row]) }

// Entries are those on the screen, in their order.
func (b *BesideView) Entries() []sidebyside.Entry {
	if b.shown == nil {
		return nil
	}
	return b.shown.Entries
}

// risingRoom is as high as the figure of so many scenarios needs to be.
type risingRoom struct{ rows int }

// Heights in pixels of the figure: of what is over the bars, of a scenario, and at most.
const (
	besideHead, besideRow, besideMost = 64, 64, 2400
)

func (r *risingRoom) height() float32 {
	return kit.Scaled(min(besideHead+besideRow*float32(max(r.rows, 1)), besideMost))
}

func (r *risingRoom) Layout(o []fyne.CanvasObject, size fyne.Size) {
	kit.Place(o[0], 0, 0, min(size.Width, kit.Scaled(960)), r.height())
}
func (r *risingRoom) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, r.height()) }
