package kit

import "testing"

// What is put into a stack before it is on the screen reckons with the width it will have,
// or a form is laid out higher than it is and scrolls into nothing.
func TestAStackKnowsItsHeightBeforeItIsLaidOut(t *testing.T) {
	text := func() *Text {
		return Small("so many words that they need several lines of a narrow column, but not of a wide one")
	}
	s := Inset(NewStack(240, 6), 20, 14, 20, 24)
	for range 3 {
		s.Add(text())
	}
	want := 14 + 24 + 2*6 + 3*text().HeightFor(200)
	if got := s.MinSize().Height; got != want {
		t.Errorf("%v high before, %v expected", got, want)
	}
	s.Resize(s.MinSize().AddWidthHeight(440, 0))
	if got := s.MinSize().Height; got >= want {
		t.Errorf("%v high when wide, %v when narrow", got, want)
	}
}
