package kit

import (
	"image"
	"testing"

	"fyne.io/fyne/v2"
)

func TestTableSetsNumbersToTheRightAndCopies(t *testing.T) {
	copied := ""
	table := NewTable(func(text string) { copied = text })
	table.Set("Costs", []string{"Offer", "A roll"}, [][]string{{"Reel", "9.40"}, {"Pack", "14.80"}})
	on(t, table, 400, 200)
	name, cost := table.cells[1][0], table.cells[1][1]
	if name.align != fyne.TextAlignLeading || cost.align != fyne.TextAlignTrailing {
		t.Error("names", name.align, "numbers", cost.align)
	}
	table.copy.Tapped(nil)
	if copied != "Offer\tA roll\nReel\t9.40\nPack\t14.80\n" {
		t.Errorf("%q", copied)
	}
}

func TestImageViewReadsOutAndPresses(t *testing.T) {
	resized, pressed := 0, ""
	v := NewImageView(func() { resized++ })
	on(t, v, 200, 100)
	if resized == 0 {
		t.Error("nobody was told of its room")
	}
	v.Put(image.NewNRGBA(image.Rect(0, 0, 2, 2)), func(at fyne.Position) (Reading, bool) {
		return Reading{"left half", func() { pressed = "left" }}, at.X < 100
	})
	v.MouseMoved(mouse(10, 10))
	if !v.Note.Visible() || v.Note.Text.String() != "left half" {
		t.Error(v.Note.Text.String())
	}
	v.Tapped(&fyne.PointEvent{Position: fyne.NewPos(10, 10)})
	v.MouseMoved(mouse(150, 10))
	if v.Note.Visible() || pressed != "left" {
		t.Error("over nothing it still reads out; pressed:", pressed)
	}
	pressed = ""
	v.Clear()
	v.Tapped(&fyne.PointEvent{Position: fyne.NewPos(10, 10)})
	if pressed != "" || v.Image.Visible() {
		t.Error("a picture taken down answers still")
	}
}

// The toolkit says nothing when the pointer leaves the window.
func TestAReadOutGoesWhenThePointerIsGone(t *testing.T) {
	v := NewImageView(func() {})
	on(t, v, 300, 200)
	var resting []func()
	stopped := 0
	v.Note.rested = func(then func()) func() {
		resting = append(resting, then)
		return func() { stopped++ }
	}
	v.Put(image.NewRGBA(image.Rect(0, 0, 300, 200)), func(fyne.Position) (Reading, bool) { return Reading{Text: "12.34"}, true })
	v.MouseIn(mouse(10, 10))
	v.MouseMoved(mouse(20, 10))
	if !v.Note.Visible() || len(resting) != 2 || stopped != 1 {
		t.Fatal(v.Note.Visible(), len(resting), stopped)
	}
	resting[1]()
	if v.Note.Visible() {
		t.Error("it stays though the pointer rests, or has left the window")
	}
	for _, leave := range []func(){v.MouseOut, v.Clear} {
		v.MouseMoved(mouse(30, 10))
		leave()
		if v.Note.Visible() || stopped < 2 {
			t.Error("it stays")
		}
		v.Put(v.Image.Image, func(fyne.Position) (Reading, bool) { return Reading{Text: "12.34"}, true })
	}
}

func TestStackLaysVisibleObjectsUnderOneAnother(t *testing.T) {
	a, b, c := Space(10), Space(20), Space(30)
	s := Inset(NewStack(100, 5, a, b, c), 1, 2, 3, 4)
	b.Hide()
	on(t, s, 100, 100)
	s.Resize(fyne.NewSize(100, 100))
	if c.Position().Y != 2+10+5 || c.Position().X != 1 || c.Size().Width != 96 {
		t.Error(c.Position(), c.Size())
	}
	if got := HeightOf(s, 100); got != 2+10+5+30+4 {
		t.Error("height", got)
	}
}

func TestDialogsAreLeftByEscapeTopFirst(t *testing.T) {
	w := on(t, Small("behind"), 600, 400)
	d := NewDialogs(w)
	said := ""
	d.Confirm("Sure?", "Really?", "Yes", func() { said = "yes" })
	d.Tell("Note", "Read this.")
	if len(d.Open) != 2 {
		t.Fatal(len(d.Open))
	}
	d.Escape(key(fyne.KeyEscape))
	d.Open[0].Buttons[1].Press()
	if len(d.Open) != 0 || said != "yes" || w.Canvas().Overlays().Top() != nil {
		t.Error(len(d.Open), said)
	}
}

func TestEverySizeOfTextChangesEveryMetric(t *testing.T) {
	t.Cleanup(func() { SetTextSize(1) })
	before := []float32{SizeText, FieldHeight, FormWidth, CardEdge, tabsHeight, Scaled(7)}
	SetTextSize(1.3)
	for i, after := range []float32{SizeText, FieldHeight, FormWidth, CardEdge, tabsHeight, Scaled(7)} {
		if got := after / before[i]; got < 1.299 || got > 1.301 {
			t.Error("metric", i, "grew by", got)
		}
	}
}
