package kit

import (
	"testing"
	"time"
)

func TestLettersAddUpUntilAPause(t *testing.T) {
	at := time.Unix(0, 0)
	SeekBy(func() time.Time { return at })
	t.Cleanup(func() { SeekBy(time.Now) })
	p := NewPicker([]Option{{"SEK", "SEK", ""}, {"EUR", "EUR", ""}, {"NOK", "NOK", ""}, {"NZD", "NZD", ""}}, nil)
	for _, step := range []struct {
		letter rune
		after  time.Duration
		want   string
	}{{'n', 0, "NOK"}, {'z', pause, "NZD"}, {'e', pause + 1, "EUR"}, {'K', pause, "EUR"}} {
		at = at.Add(step.after)
		p.TypedRune(step.letter)
		if p.Value != step.want {
			t.Errorf("%c after %v chooses %s, not %s", step.letter, step.after, p.Value, step.want)
		}
	}
}
