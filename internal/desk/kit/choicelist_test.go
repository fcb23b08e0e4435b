package kit

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
)

// opened is a picker on the screen with its list open.
func opened(t *testing.T, options []Option, told func(string)) (fyne.Window, *Picker, *choiceList) {
	t.Helper()
	p := NewPicker(options, told)
	p.Set(options[0].Value)
	w := on(t, p, 120, 30)
	w.Resize(fyne.NewSize(300, 400))
	p.TypedRune(' ')
	list, ok := w.Canvas().Focused().(*choiceList)
	if !ok {
		t.Fatal("the open list has not the focus")
	}
	return w, p, list
}

func currencies() []Option {
	list := []Option{{"EUR", "EUR", "euro"}, {"SEK", "SEK", "Swedish krona"}, {"CHF", "CHF", "Swiss franc"}}
	for i := range 40 {
		list = append(list, Option{fmt.Sprintf("X%02d", i), fmt.Sprintf("X%02d", i), "one more"})
	}
	return list
}

func TestLettersFindInTheOpenList(t *testing.T) {
	var told []string
	w, p, list := opened(t, currencies(), func(v string) { told = append(told, v) })
	for _, r := range "swi" {
		list.TypedRune(r)
	}
	if len(list.fitting) != 1 || list.fitting[0].Value != "CHF" {
		t.Fatal("swi leaves", list.fitting)
	}
	list.TypedKey(key(fyne.KeyBackspace))
	if len(list.fitting) != 2 {
		t.Error("sw leaves", list.fitting)
	}
	list.TypedKey(key(fyne.KeyDown))
	list.TypedKey(key(fyne.KeyDown)) // the end holds
	list.TypedKey(key(fyne.KeyReturn))
	if p.Value != "CHF" || len(told) != 1 || w.Canvas().Overlays().Top() != nil || w.Canvas().Focused() != p {
		t.Error(p.Value, told)
	}
}

// The code counts more than the name: "x" is not Luxembourg's.
func TestALabelComesBeforeItsName(t *testing.T) {
	_, _, list := opened(t, []Option{{"a", "USD", "euro's neighbour"}, {"b", "EUR", "single"}}, nil)
	for _, r := range "eur" {
		list.TypedRune(r)
	}
	if len(list.fitting) != 2 || list.fitting[list.at].Value != "b" {
		t.Error(list.fitting, list.at)
	}
}

func TestWhatNothingFitsTakesNothing(t *testing.T) {
	w, p, list := opened(t, currencies(), nil)
	list.TypedRune('q')
	list.TypedKey(key(fyne.KeyReturn))
	if p.Value != "EUR" || w.Canvas().Overlays().Top() == nil {
		t.Error("something was taken:", p.Value)
	}
	list.TypedKey(key(fyne.KeyEscape))
	if w.Canvas().Overlays().Top() != nil || w.Canvas().Focused() != p || p.Value != "EUR" {
		t.Error("Esc does not leave as it was")
	}
}

func TestKeysAndPointerGoThroughTheOpenList(t *testing.T) {
	_, _, list := opened(t, currencies(), nil)
	for _, step := range []struct {
		key  fyne.KeyName
		want func(at int) bool
	}{
		{fyne.KeyEnd, func(at int) bool { return at == len(list.options)-1 }},
		{fyne.KeyPageUp, func(at int) bool { return at < len(list.options)-2 && at > 0 }},
		{fyne.KeyHome, func(at int) bool { return at == 0 }},
		{fyne.KeyUp, func(at int) bool { return at == 0 }},
		{fyne.KeyPageDown, func(at int) bool { return at > 1 }},
	} {
		list.TypedKey(key(step.key))
		y := float32(list.at) * choiceHeight()
		if !step.want(list.at) || y < list.scroll.Offset.Y-1 || y+choiceHeight() > list.scroll.Offset.Y+list.scroll.Size().Height+1 {
			t.Errorf("%s marks %d; %g is not between %g and %g", step.key, list.at, y, list.scroll.Offset.Y, list.scroll.Offset.Y+list.scroll.Size().Height)
		}
	}
	list.rows[2].MouseIn(&desktop.MouseEvent{})
	if list.at != 2 {
		t.Error("the pointer is over 2, marked is", list.at)
	}
}

func TestTheOpenListStaysInTheWindow(t *testing.T) {
	for _, y := range []float32{0, 150, 370} {
		p := NewPicker(currencies(), nil)
		w := test.NewTempWindow(t, container.NewWithoutLayout(p))
		w.SetPadded(false)
		w.Resize(fyne.NewSize(300, 400))
		Place(p, 20, y, 100, 28)
		p.Tapped(nil)
		list := w.Canvas().Focused().(*choiceList)
		top := fyne.CurrentApp().Driver().AbsolutePositionForObject(list).Y
		if bottom := top + list.Size().Height; top < 0 || bottom > 400 || list.Size().Height < 150 {
			t.Errorf("opened at %g, the list stands from %g to %g", y, top, bottom)
		}
		list.TypedKey(key(fyne.KeyEscape))
	}
}
