package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
)

// View is what a person reads off the window, for tests that must not look at pixels.
type View struct {
	Title, Headline, Under, Status, State string
	Form                                  string // its title
	Offers                                []OfferView
	Fields                                []FieldView
	Page                                  string
	Asking                                bool // a dialog or a list is open
	Faults                                int  // listed in the place of the columns
}

// OfferView is a way to buy in the left column.
type OfferView struct {
	Name, PerRoll, Under string
	Chosen               bool
}

// FieldView is a field of the form.
type FieldView struct {
	Key, Label, Text, Beside string
	Faulty, Focused          bool
	Blamed                   bool // the scenario's own value is at fault
}

// View reads the window. Call it on the interface thread.
func (d *Desk) View() View {
	v := View{
		Title: d.win.Title(), Headline: d.answer.Headline.String(), Under: d.answer.Under.String(),
		Status: d.answer.Status.String(), State: d.offers.State.String(), Form: d.form.Title(),
		Page: d.answer.Tabs.Pages[d.answer.At()].Name, Asking: d.win.Canvas().Overlays().Top() != nil,
	}
	if d.faults != nil {
		v.Faults = d.faults.Count
	}
	for _, c := range d.offers.Offers {
		v.Offers = append(v.Offers, OfferView{c.Name.String(), c.Total.String(), c.Under.String(), c.Chosen})
	}
	focused := d.win.Canvas().Focused()
	for _, f := range d.form.Fields() {
		fv := FieldView{Key: f.Key, Label: f.Row.Label.String(), Beside: f.Row.Meaning.String(), Faulty: f.Problem != "", Blamed: f.IsBlamed()}
		switch in := f.Input.(type) {
		case *kit.TextBox:
			fv.Text = in.Entry.Text
		case *kit.Picker:
			fv.Text = in.Shown()
		}
		fv.Focused = focused != nil && focused == f.Focus
		v.Fields = append(v.Fields, fv)
	}
	return v
}

// Field is the field with that key.
func (v View) Field(key string) (FieldView, bool) {
	for _, f := range v.Fields {
		if f.Key == key {
			return f, true
		}
	}
	return FieldView{}, false
}

// Where is the middle of a field, in the window's units; negative where it is not on the
// screen.
func (d *Desk) Where(key string) (x, y float32) {
	for _, f := range d.form.Fields() {
		if f.Key == key && f.Row.Visible() {
			at := fyne.CurrentApp().Driver().AbsolutePositionForObject(f.Input)
			size := f.Input.Size()
			return at.X + size.Width/2, at.Y + size.Height/2
		}
	}
	return -1, -1
}
