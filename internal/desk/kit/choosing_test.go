package kit

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
)

func TestPickerByKeys(t *testing.T) {
	var told []string
	p := NewPicker([]Option{{"a", "first", ""}, {"b", "second", ""}, {"c", "third", ""}}, func(v string) { told = append(told, v) })
	p.Set("a")
	on(t, p, 120, 30)
	for _, k := range []fyne.KeyName{fyne.KeyUp, fyne.KeyDown, fyne.KeyDown, fyne.KeyDown} { // the ends hold
		p.TypedKey(key(k))
	}
	p.TypedRune('f')
	if got := strings.Join(told, ""); got != "bca" || p.Value != "a" || p.Shown() != "first" {
		t.Error(got, p.Value, p.Shown())
	}
	p.Set("c")
	if len(told) != 3 {
		t.Error("setting a value told somebody")
	}
	p.First = []string{"c"}
	if got := p.listed(); got[0].Value != "c" || len(got) != 3 {
		t.Error("listed", got)
	}
}

func TestCardIsChosenByMouseAndKeys(t *testing.T) {
	chosen, steps := 0, 0
	c := NewCard(func() { chosen++ }, func(by int) { steps += by })
	c.Name.Set(Span{Text: "One"})
	w := on(t, c, 200, 60)
	c.Tapped(nil)
	c.TypedKey(key(fyne.KeyReturn))
	c.TypedRune(' ')
	c.TypedKey(key(fyne.KeyDown))
	if chosen != 3 || steps != 1 || w.Canvas().Focused() != c {
		t.Error(chosen, steps)
	}
	plain := c.HeightFor(200)
	c.Bar = NewBar()
	if c.HeightFor(200) <= plain {
		t.Error("the bar has no room")
	}
}

func TestTabsShowOnePage(t *testing.T) {
	one, two := Small("one"), Small("two")
	changes := 0
	tabs := NewTabs(func() { changes++ }, Tab{"One", one}, Tab{"Two", two})
	on(t, tabs, 300, 200)
	tabs.Labels[0].TypedKey(key(fyne.KeyRight))
	if tabs.At != 1 || one.Visible() || !two.Visible() || changes != 1 {
		t.Error(tabs.At, one.Visible(), two.Visible(), changes)
	}
	tabs.Labels[1].TypedKey(key(fyne.KeyRight)) // there is no third
	tabs.Choose(7)
	tabs.Rename(1, "Two (3)")
	if tabs.At != 1 || changes != 1 || tabs.Labels[1].Text.String() != "Two (3)" {
		t.Error(tabs.At, changes, tabs.Labels[1].Text.String())
	}
}

func TestLinkByKeys(t *testing.T) {
	done := 0
	l := NewLink("Do it", func() { done++ })
	on(t, l, 100, 30)
	l.Tapped(nil)
	l.TypedKey(key(fyne.KeyEnter))
	l.TypedRune(' ')
	l.TypedRune('x')
	if done != 3 {
		t.Error(done)
	}
}
