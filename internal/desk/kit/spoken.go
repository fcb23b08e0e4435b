package kit

import (
	"strings"

	"fyne.io/fyne/v2"
)

// Spoken is what a screen reader says of objects that can be seen: their own sentences, one
// after the other.
func Spoken(objects ...fyne.CanvasObject) string {
	var said []string
	for _, o := range objects {
		if o == nil || !o.Visible() {
			continue
		}
		switch w := o.(type) {
		case *fyne.Container: // before what it says of itself, which is nothing
			said = append(said, Spoken(w.Objects...))
		case fyne.Accessible:
			said = append(said, w.AccessibilityLabel())
		}
	}
	return inTurn(". ", said...)
}

// inTurn joins what is there, so that no two signs of a pause meet.
func inTurn(pause string, parts ...string) string {
	var b strings.Builder
	for _, p := range parts {
		if p = strings.TrimSpace(p); p == "" {
			continue
		}
		if b.Len() > 0 {
			if strings.HasSuffix(strings.TrimRight(b.String(), " "), ".") {
				b.WriteString(" ")
			} else {
				b.WriteString(pause)
			}
		}
		b.WriteString(p)
	}
	return b.String()
}

// phrase joins what belongs to one thing.
func phrase(parts ...string) string { return inTurn(", ", parts...) }

// valued is what somebody types into or chooses from.
type valued interface{ spokenValue() string }

// spokenOf is the value of a field, or what its field says of itself.
func spokenOf(o fyne.CanvasObject) string {
	if v, ok := o.(valued); ok {
		return v.spokenValue()
	}
	return Spoken(o)
}

// orEmpty says of a field that nothing stands in it.
func orEmpty(text string) string {
	if strings.TrimSpace(text) == "" {
		return Labels.Empty
	}
	return text
}
