package pages

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
	"reelworth/internal/words"
)

// tablesPage is the charts' figures in cells.
type tablesPage struct {
	tables [2]*kit.Table
	list   *fyne.Container
	scroll *kit.Scroll
}

func newTablesPage(copied func(string)) *tablesPage {
	p := &tablesPage{tables: [2]*kit.Table{kit.NewTable(copied), kit.NewTable(copied)}}
	p.list = kit.Inset(kit.NewStack(0, 18, p.tables[0], p.tables[1]), 0, 14, 14, 12)
	p.scroll = kit.NewBothWays(p.list)
	return p
}

func (p *tablesPage) name(View) string          { return words.PageTables }
func (p *tablesPage) object() fyne.CanvasObject { return p.scroll }

func (p *tablesPage) fill(v View) {
	for i, fig := range []int{answer.Cost, answer.Spend} {
		if d := v.answer.Pictures[fig].Drawing; d != nil {
			table := d.Table()
			p.tables[i].Set(d.Title(), table.Header, table.Rows)
		}
	}
	p.list.Refresh()
}

// rooms has the charts drawn small, for their tables.
func (p *tablesPage) rooms(float32) (r answer.Rooms) {
	r[answer.Cost] = answer.Room{Width: 600, Height: 300, Scale: 0.1, Text: 1}
	r[answer.Spend] = r[answer.Cost]
	return r
}
