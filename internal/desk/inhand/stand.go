package inhand

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Standing is the window while somebody stands at the loader: one cassette after another,
// large enough to be read from two metres. Space logs one, Backspace takes it back, Esc
// leaves; nothing asks.
type Standing struct {
	widget.BaseWidget
	win    Window
	steps  []reels.Step
	At     int // the step that is shown; all are done at the end
	ground *canvas.Rectangle
	top    *kit.Text // the wish, and how many are still to come
	heads  [3]*kit.Text
	large  [3]*kit.Text // what to write on it, how many exposures, what to turn to
	says   *kit.Text    // the keys, or what is wrong
	care   *kit.Text
}

// Sizes of type for two metres: letters of some 30 mm on a screen of usual fineness (common
// practice, no source).
const (
	largeType   = 170
	captionType = 24
)

// newStanding begins with the first step.
func newStanding(win Window, steps []reels.Step) *Standing {
	s := &Standing{win: win, steps: steps, ground: canvas.NewRectangle(theme.Color(kit.Ground))}
	s.top = kit.NewText(captionType * 1.4).AtMost(1)
	for i, head := range []string{words.StandWrite, words.StandExposures, words.StandTurn} {
		s.heads[i] = kit.NewText(captionType, kit.Span{Text: head, Color: kit.Muted}).AtMost(2)
		s.large[i] = kit.NewText(largeType).Lines(1).Shrinking(largeType*0.6, largeType*0.4, largeType*0.25)
	}
	s.says = kit.NewText(captionType).AtMost(3)
	s.care = kit.NewText(captionType*0.8, kit.Span{Text: words.NoScreenIsSafe, Color: kit.Accent, Bold: true}).AtMost(2)
	s.ExtendBaseWidget(s)
	s.show("")
	return s
}

// show puts up the step; wrong is why the last one was not logged, "" where it was.
func (s *Standing) show(wrong string) {
	if s.At >= len(s.steps) {
		s.top.Set(kit.Span{Text: words.StandDone(len(s.steps)), Bold: true})
		for i := range s.large {
			s.large[i].Set()
		}
	} else {
		step := s.steps[s.At]
		s.top.Set(kit.Span{Text: words.StandLeft(len(s.steps) - s.At), Bold: true})
		turn := words.TurnTo(step.Counts, step.Rounds, step.Rest, step.Counted)
		if turn == "" {
			turn = "–"
		}
		for i, text := range []string{strconv.Itoa(step.Number), strconv.Itoa(step.Exposures), turn} {
			s.large[i].Set(kit.Span{Text: text, Bold: true})
		}
	}
	if wrong == "" {
		s.says.Set(kit.Span{Text: words.StandKeys, Color: kit.Muted})
	} else {
		s.says.Set(kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: wrong, Color: kit.Fault})
	}
	s.Refresh()
}

// log logs the cassette that is shown and goes on to the next.
func (s *Standing) log() {
	if s.At >= len(s.steps) {
		return
	}
	step, now := s.steps[s.At], s.win.Session()
	do := func(r scenario.InHand) scenario.InHand {
		return reels.WithCassette(r, s.win.Today(), step.Exposures, scenario.MaybeWhole{Int: int(step.Counts), Set: step.Counted})
	}
	r, ok := now.Reel()
	if !ok {
		return
	}
	if faults := now.FaultsWith(do(r)); len(faults) > 0 {
		wrong, _ := words.Fault(faults[0])
		s.show(wrong)
		return
	}
	s.win.Change(func(now *session.Session) { now.AlterReel(words.Of(words.StepCassette, r.Name), do) })
	s.At++
	s.again()
}

// back takes back what was logged last, as far as it was logged here.
func (s *Standing) back() {
	if s.At > 0 {
		s.At--
		s.win.Undo()
		s.again()
	}
}

// again shows what comes next; the columns may have taken the focus meanwhile.
func (s *Standing) again() {
	s.show("")
	if c := fyne.CurrentApp().Driver().CanvasForObject(s); c != nil {
		c.Focus(s)
	}
}

func (s *Standing) FocusGained() {}
func (s *Standing) FocusLost()   {}

// Tapped keeps the keys coming here.
func (s *Standing) Tapped(*fyne.PointEvent) { s.again() }

func (s *Standing) TypedRune(r rune) {
	if r == ' ' {
		s.log()
	}
}

func (s *Standing) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyBackspace:
		s.back()
	case fyne.KeyEscape:
		s.win.Empty()
	}
}

func (s *Standing) AccessibilityLabel() string {
	return kit.Spoken(s.top, s.heads[0], s.large[0], s.heads[1], s.large[1], s.heads[2], s.large[2], s.says, s.care)
}
func (s *Standing) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleText }

func (s *Standing) CreateRenderer() fyne.WidgetRenderer { return &standingRenderer{s} }

type standingRenderer struct{ s *Standing }

func (r *standingRenderer) Layout(size fyne.Size) {
	const edge = 48
	s, w := r.s, size.Width-2*edge
	kit.Place(s.ground, 0, 0, size.Width, size.Height)
	kit.Place(s.top, edge, edge, w, s.top.LineHeight())
	column := w / 3
	y := size.Height*0.5 - largeType
	for i := range s.large {
		x := edge + float32(i)*column
		kit.Place(s.heads[i], x, y, column-20, 2*s.heads[i].LineHeight())
		kit.Place(s.large[i], x, y+2*s.heads[i].LineHeight(), column-20, s.large[i].HeightFor(column-20))
	}
	h := s.says.HeightFor(w)
	care := s.care.HeightFor(w)
	kit.Place(s.care, edge, size.Height-edge-care, w, care)
	kit.Place(s.says, edge, size.Height-edge-care-h-12, w, h)
}

func (r *standingRenderer) MinSize() fyne.Size { return fyne.NewSize(600, 400) }
func (r *standingRenderer) Objects() []fyne.CanvasObject {
	s := r.s
	return []fyne.CanvasObject{s.ground, s.top, s.heads[0], s.large[0], s.heads[1], s.large[1], s.heads[2], s.large[2], s.says, s.care}
}
func (r *standingRenderer) Destroy() {}
func (r *standingRenderer) Refresh() {
	r.s.ground.FillColor = theme.Color(kit.Ground)
	for _, o := range r.Objects() {
		o.Refresh()
	}
	r.Layout(r.s.Size())
	canvas.Refresh(r.s)
}
