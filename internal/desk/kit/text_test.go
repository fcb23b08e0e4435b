package kit

import (
	"fmt"
	"image"
	"reflect"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
)

// drawn are the lines on the screen, top down.
func drawn(t *testing.T, p *Text) []string {
	t.Helper()
	var lines []string
	y := float32(-1)
	for _, o := range test.WidgetRenderer(p).Objects() {
		c := o.(*canvas.Text)
		if c.Position().X+c.MinSize().Width > p.Size().Width+1 {
			t.Errorf("%q leaves its %.0f units", c.Text, p.Size().Width)
		}
		if c.Position().Y != y {
			lines, y = append(lines, ""), c.Position().Y
		}
		lines[len(lines)-1] += c.Text
	}
	return lines
}

func TestTextWrapsBetweenWordsAndLosesNone(t *testing.T) {
	const words = "Ten cassettes and a reel of thirty metres last the year"
	p := NewText(SizeText, Span{Text: words[:14]}, Span{Text: words[14:], Bold: true})
	on(t, p, 90, 300)
	lines := drawn(t, p)
	if len(lines) < 4 || strings.Join(strings.Fields(strings.Join(lines, " ")), " ") != words {
		t.Errorf("%q", lines)
	}
	if got, want := p.HeightFor(90), float32(len(lines))*p.LineHeight(); got != want {
		t.Errorf("%d lines are %.1f high, want %.1f", len(lines), got, want)
	}
}

// The toolkit keeps what it was given to draw for a minute: a text that changes with each key
// must not leave a new one behind each time.
func TestATextThatChangesIsWrittenOver(t *testing.T) {
	p := NewText(SizeText, Span{Text: "Ten"}, Span{Text: " cassettes", Bold: true})
	on(t, p, 90, 300)
	first := slices.Clone(test.WidgetRenderer(p).Objects())
	p.Set(Span{Text: "Two"})
	if lines := drawn(t, p); !slices.Equal(lines, []string{"Two"}) {
		t.Errorf("%q", lines)
	}
	p.Set(Span{Text: "Six", Color: Muted}, Span{Text: " reels", Bold: true})
	if lines := drawn(t, p); !slices.Equal(lines, []string{"Six reels"}) {
		t.Errorf("%q", lines)
	}
	if again := test.WidgetRenderer(p).Objects(); !slices.Equal(again, first) {
		t.Error("something new is drawn")
	}
}

func TestTextThatHasNoRoomEndsInAnEllipsis(t *testing.T) {
	p := NewText(SizeText, Span{Text: "Ten cassettes and a reel of thirty metres"}).AtMost(1)
	on(t, p, 90, 300)
	lines := drawn(t, p)
	if len(lines) != 1 || !strings.HasPrefix(lines[0], "Ten") || !strings.HasSuffix(lines[0], "…") {
		t.Errorf("%q", lines)
	}
}

func TestTextShrinksBeforeItIsCut(t *testing.T) {
	p := NewText(SizeAnswer, Span{Text: "Ten cassettes and a reel of thirty metres"}).Lines(2).Shrinking(SizeSmall)
	on(t, p, 160, 60)
	if lines := drawn(t, p); p.FontSize != SizeSmall || strings.Contains(strings.Join(lines, ""), "…") {
		t.Errorf("size %.0f: %q", p.FontSize, lines)
	}
}

// A number's digits are measured one by one; that must be the width of the whole.
func TestNumbersAreAsWideAsTheirDigits(t *testing.T) {
	on(t, Small(""), 10, 10)
	for _, number := range []string{"0", "1,234.56", "111.11", "98765"} {
		for _, bold := range []bool{false, true} {
			if got, want := Measure(number, SizeText, bold), textSize(number, SizeText, bold).Width; got < want-0.1 || got > want+0.1 {
				t.Errorf("%s (bold %v) is %.2f wide, want %.2f", number, bold, got, want)
			}
		}
	}
}

// The signs beside a text must be drawn, whatever fonts the machine has: those that no font
// has all look the same.
func TestSignsAreDrawn(t *testing.T) {
	for _, bold := range []bool{false, true} {
		drawn := map[string]image.Image{}
		for _, sign := range []string{"✗", "✓", "●", "▾", "\U0010fffd"} {
			w := on(t, NewText(SizeAnswer, Span{Text: sign, Bold: bold}), 40, 40)
			drawn[sign] = w.Canvas().Capture()
			for other, picture := range drawn {
				if other != sign && reflect.DeepEqual(picture, drawn[sign]) {
					t.Errorf("%q looks like %q (bold %v)", sign, other, bold)
				}
			}
		}
	}
}

// What is measured for a text on one line grows no faster than the text.
func TestFittingALongTextTakesNoLongerThanReadingIt(t *testing.T) {
	for _, letters := range []int{1_000, 4_000} {
		for _, sort := range []string{"a", "word "} {
			measured.Lock()
			clear(measured.sizes)
			measured.Unlock()
			p := NewText(SizeText, Span{Text: strings.Repeat(sort, letters/len(sort))}).AtMost(1)
			lines := p.wrap(200)
			if last := lines[0][len(lines[0])-1].Text; len(lines) != 1 || !strings.HasSuffix(last, "…") {
				t.Error(lines)
			}
			sum := 0
			for k := range measured.sizes {
				sum += len(k.text)
			}
			if sum > 3*letters {
				t.Errorf("%d letters were measured for a text of %d", sum, letters)
			}
		}
	}
}

func TestAsMuchAsFitsIsLeft(t *testing.T) {
	text := []Span{{Text: "Ten cassettes, "}, {Text: "a reel", Bold: true}, {Text: " of thirty metres"}}
	p := NewText(SizeText, text...)
	for width := float32(20); width < p.NaturalWidth(); width += 7 {
		line := p.shorten(text, width)
		if w := spanWidth(line, SizeText); w > width && len(line) > 0 && line[0].Text != "…" {
			t.Errorf("%v is %g wide, there is room for %g", line, w, width)
		}
		n := 0
		for _, s := range line {
			n += len(strings.TrimSuffix(s.Text, "…"))
		}
		if longer := cutAfter(text, n+4); spanWidth(longer, SizeText) <= width {
			t.Errorf("at %g %v would still fit, not only %v", width, longer, line)
		}
	}
}

func BenchmarkFit(b *testing.B) {
	for _, letters := range []int{1_000, 8_000} {
		b.Run(fmt.Sprintf("%d_letters", letters), func(b *testing.B) {
			for i := 0; b.Loop(); i++ {
				measured.Lock()
				clear(measured.sizes)
				measured.Unlock()
				p := NewText(SizeText, Span{Text: strings.Repeat("a name without end ", letters/19)}).AtMost(1)
				p.wrap(200)
			}
		})
	}
}

// A word without end is read to its end where there are lines for it.
func TestALongWordBreaks(t *testing.T) {
	name := strings.Repeat("Lanternlight", 6)
	p := NewText(SizeText, Span{Text: "the " + name + " reel"})
	text := ""
	for _, line := range p.wrap(120) {
		if spanWidth(line, SizeText) > 120 {
			t.Errorf("%v is wider than its room", line)
		}
		for _, s := range line {
			text += s.Text
		}
	}
	if strings.Contains(text, "…") || !strings.Contains(strings.ReplaceAll(text, " ", ""), name) {
		t.Error(text)
	}
	if lines := NewText(SizeText, Span{Text: name}).AtMost(2).wrap(120); len(lines) != 2 || !strings.HasSuffix(lines[1][len(lines[1])-1].Text, "…") {
		t.Error(lines)
	}
}

// A line of several words is cut nowhere, at whatever width and size: what the words
// measure together is not quite what they do one by one.
func TestALineOfWordsThatFitsIsNotCut(t *testing.T) {
	t.Cleanup(func() { SetTextSize(1) })
	on(t, Small(""), 10, 10)
	for _, factor := range []float32{1, 1.15, 1.3} {
		SetTextSize(factor)
		p := NewText(SizeSmall, Span{Text: "✗ ", Bold: true}, Span{Text: "1 is below 2; write a whole number of at least 2"})
		for width := p.widestWord(); width < p.NaturalWidth()+10; width += 0.25 {
			for _, line := range p.breakLines(width) {
				for _, s := range line {
					if strings.Contains(s.Text, "…") {
						t.Fatalf("%.2f wide, text × %.2f: %q", width, factor, s.Text)
					}
				}
			}
		}
	}
}
