package kit

import (
	"fmt"

	"fyne.io/fyne/v2"
)

// What each widget is to somebody who cannot see it: a sentence that names it and says what
// it holds, and what can be done with it. The toolkit asks widgets in containers only, not
// those inside others: a widget therefore speaks for all that it holds.

const (
	button = fyne.AccessibleRoleButton
	spoken = fyne.AccessibleRoleText
)

func (p *Text) AccessibilityLabel() string                { return p.String() }
func (p *Text) AccessibilityRole() fyne.AccessibleRole    { return spoken }
func (n *Readout) AccessibilityLabel() string             { return n.Text.String() }
func (n *Readout) AccessibilityRole() fyne.AccessibleRole { return spoken }

// AccessibilityLabel of a bar is the share of it that stands out.
func (b *Bar) AccessibilityLabel() string {
	share := float32(0)
	for _, part := range b.parts {
		if part.Color == Accent {
			share += part.Share
		}
	}
	return fmt.Sprintf("%.0f %%", 100*share)
}
func (b *Bar) AccessibilityRole() fyne.AccessibleRole { return spoken }

// AccessibilityLabel of a hairline is nothing: it is there for the eye alone.
func (t *tinted) AccessibilityLabel() string             { return "" }
func (t *tinted) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleContainer }

func (l *Link) AccessibilityLabel() string             { return l.Label.String() }
func (l *Link) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleLink }

func (l *TabLabel) AccessibilityLabel() string {
	return phrase(Labels.Page+" "+l.Text.String(), chosenIf(l.chosen))
}
func (l *TabLabel) AccessibilityRole() fyne.AccessibleRole { return button }

// AccessibilityLabel of tabs names the pages and reads out the one in sight.
func (t *Tabs) AccessibilityLabel() string {
	return inTurn(". ", Spoken(Objects(t.Labels...)...), Spoken(t.Pages[t.At].Content))
}
func (t *Tabs) AccessibilityRole() fyne.AccessibleRole { return spoken }

// AccessibilityLabel of a switch names what can be chosen.
func (s *Switch) AccessibilityLabel() string             { return inTurn(". ", Spoken(Objects(s.Labels...)...)) }
func (s *Switch) AccessibilityRole() fyne.AccessibleRole { return spoken }

func (c *Card) AccessibilityLabel() string {
	return phrase(c.Name.String(), c.Total.String(), c.Under.String(), chosenIf(c.Chosen))
}
func (c *Card) AccessibilityRole() fyne.AccessibleRole { return button }

// AccessibilityLabel of a table reads its rows out, each figure after the heading of its
// column.
func (t *Table) AccessibilityLabel() string {
	lines := []string{t.title.String()}
	for _, row := range t.body {
		var cells []string
		for c, text := range row {
			if c > 0 && c < len(t.head) && text != "" {
				text = t.head[c] + " " + text
			}
			cells = append(cells, text)
		}
		lines = append(lines, phrase(cells...))
	}
	return inTurn(". ", append(lines, Spoken(t.copy))...)
}
func (t *Table) AccessibilityRole() fyne.AccessibleRole { return spoken }

// AccessibilityLabel of a grid reads its rows out, what stands in each cell after the
// heading of its column, and says which is chosen.
func (g *Grid) AccessibilityLabel() string {
	var lines []string
	for i, row := range g.rows {
		cells := []string{row.lines[0].String(), row.unders[0].String()}
		for c := 1; c < len(row.lines); c++ {
			if text := phrase(row.lines[c].String(), row.unders[c].String()); text != "" {
				cells = append(cells, g.columns[c].Name+" "+text)
			}
		}
		if row.note != nil {
			cells = append(cells, row.note.String())
		}
		lines = append(lines, phrase(append(cells, chosenIf(i == g.At))...))
	}
	return inTurn(". ", lines...)
}
func (g *Grid) AccessibilityRole() fyne.AccessibleRole { return spoken }

func (h *gridHead) AccessibilityLabel() string             { return h.name.String() }
func (h *gridHead) AccessibilityRole() fyne.AccessibleRole { return button }

// AccessibilityLabel of a row is its name, what stands in the field, and what that means or
// what is wrong with it.
func (r *Row) AccessibilityLabel() string {
	value, unit := spokenOf(r.Field), ""
	if r.Choice != nil && r.Choice.Visible() {
		unit = r.Choice.spokenValue()
	} else if r.Unit.Visible() {
		unit = r.Unit.String()
	}
	return phrase(r.Label.String()+": "+value, unit, r.Meaning.String(), Spoken(Objects(r.Answers...)...))
}
func (r *Row) AccessibilityRole() fyne.AccessibleRole { return spoken }

func (b *TextBox) spokenValue() string                    { return orEmpty(b.Entry.Text) }
func (b *TextBox) AccessibilityLabel() string             { return b.Entry.AccessibilityLabel() }
func (b *TextBox) AccessibilityRole() fyne.AccessibleRole { return spoken }

func (t *Entry) AccessibilityLabel() string             { return t.Called.with(orEmpty(t.Text)) }
func (t *Entry) AccessibilityRole() fyne.AccessibleRole { return spoken }

func (p *Picker) spokenValue() string                    { return orEmpty(p.Shown()) }
func (p *Picker) AccessibilityLabel() string             { return p.Called.with(p.spokenValue()) }
func (p *Picker) AccessibilityRole() fyne.AccessibleRole { return button }

func (r *choiceRow) AccessibilityLabel() string {
	return phrase(r.label.String(), r.also.String(), chosenIf(r.tick.String() != ""))
}
func (r *choiceRow) AccessibilityRole() fyne.AccessibleRole { return button }

// AccessibilityLabel of an open list is what was typed and the option that Enter takes.
func (l *choiceList) AccessibilityLabel() string {
	if l.at < 0 {
		return l.hint.String()
	}
	o := l.fitting[l.at]
	return phrase(l.hint.String(), o.Label, o.Also, fmt.Sprintf("%d / %d", l.at+1, len(l.fitting)))
}
func (l *choiceList) AccessibilityRole() fyne.AccessibleRole { return spoken }

// AccessibilityLabel of a picture is what its caption says, and what is under the pointer.
func (v *ImageView) AccessibilityLabel() string {
	note := ""
	if v.Note.Visible() {
		note = v.Note.AccessibilityLabel()
	}
	return phrase(v.Caption, note)
}
func (v *ImageView) AccessibilityRole() fyne.AccessibleRole { return spoken }

// AccessibilityLabel of a scroll reads out what is in it, seen or not.
func (s *Scroll) AccessibilityLabel() string             { return Spoken(s.Content) }
func (s *Scroll) AccessibilityRole() fyne.AccessibleRole { return spoken }

// AccessibilityLabel of a long list reads out the rows that are in sight.
func (l *Long) AccessibilityLabel() string             { return Spoken(l.rows...) }
func (l *Long) AccessibilityRole() fyne.AccessibleRole { return spoken }

func chosenIf(is bool) string {
	if is {
		return Labels.Chosen
	}
	return ""
}

// called is how a field is called by what stands beside it.
type called func() string

func (c called) with(value string) string {
	if c == nil {
		return value
	}
	return c() + ": " + value
}

// AccessibilityLabel of a small line is nothing: what it shows stands in words beside it.
func (s *Spark) AccessibilityLabel() string             { return "" }
func (s *Spark) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleContainer }
