package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// Spotlight lies over a whole window: a ring round something that stands there, a veil over
// the rest, and a card beside the ring. The keys and the pointer are the card's while it is up.
type Spotlight struct {
	win   fyne.Window
	cut   *cutout
	card  *fyne.Container
	title *Text
	place *Text // which of how many
	text  *Text
	note  *Text
	// Back, On and Out are the card's buttons: to the step before, to the next, and away.
	Back, On, Out *ReplyButton
	whole         *fyne.Container
}

// SpotlightCard is what the card says. Note is said smaller, "" for nothing; On is what the
// button onward is called, and Back says whether there is a way back.
type SpotlightCard struct {
	Title, Place, Text, Note, On string
	Back                         bool
}

// leaving has buttons take the way out by Esc.
type leaving func()

func (leaving) Hide()    {}
func (l leaving) Leave() { l() }

// NewSpotlight is a light that is not up yet; the buttons do what is given.
func NewSpotlight(win fyne.Window, back, on, out Reply) *Spotlight {
	s := &Spotlight{win: win, cut: newCutout()}
	button := func(r Reply) *ReplyButton { return newReplyButton(r, leaving(out.Do)) }
	s.Back, s.On, s.Out = button(back), button(on), button(out)
	s.title, s.place = NewText(SizeTitle).AtMost(2), Small("")
	s.text, s.note = NewText(SizeText), Small("")
	buttons := NewSides(NewLine(0, s.Out), NewLine(8, s.Back, s.On))
	list := Inset(NewStack(spotlightWidth(), 8, NewSides(s.title, s.place), s.text, s.note, Space(2), buttons), 16, 12, 16, 12)
	s.card = container.NewStack(newPanel(), list)
	s.whole = container.New(spotlightLayout{s}, s.cut, s.card)
	return s
}

func spotlightWidth() float32 { return Scaled(320) }

// Show puts the light up, or says something else in it, with the focus onward.
func (s *Spotlight) Show(c SpotlightCard) {
	s.title.Set(Span{Text: c.Title, Bold: true})
	s.place.Set(Span{Text: c.Place, Color: Muted})
	s.text.Set(Span{Text: c.Text})
	s.note.Set(Span{Text: c.Note, Color: Muted})
	visible(s.note, c.Note != "")
	visible(s.Back, c.Back)
	s.On.SetText(c.On)
	if !s.Up() {
		s.win.Canvas().Overlays().Add(s.whole)
	}
	s.win.Canvas().Focus(s.On)
}

// Up says whether the light is up.
func (s *Spotlight) Up() bool {
	for _, o := range s.win.Canvas().Overlays().List() {
		if o == s.whole {
			return true
		}
	}
	return false
}

// Hide takes the light down.
func (s *Spotlight) Hide() { s.win.Canvas().Overlays().Remove(s.whole) }

// Ring rings a place of the window, nothing for an empty one.
func (s *Spotlight) Ring(at Box) {
	s.cut.hole = at
	s.whole.Refresh()
}

// Ringed is the place that is ringed, and Card that of the card.
func (s *Spotlight) Ringed() Box { return s.cut.hole }
func (s *Spotlight) Card() Box   { return Box{s.card.Position(), s.card.Size()} }

// Said is what the card says, as it is read out.
func (s *Spotlight) Said() string { return Spoken(s.whole) }

type spotlightLayout struct{ s *Spotlight }

func (l spotlightLayout) Layout(o []fyne.CanvasObject, size fyne.Size) {
	Place(o[0], 0, 0, size.Width, size.Height)
	o[0].Refresh()
	width := spotlightWidth()
	card := fyne.NewSize(width, HeightOf(l.s.card.Objects[1], width))
	at := nextTo(l.s.cut.hole, card, size)
	Place(o[1], at.X, at.Y, card.Width, card.Height)
}

func (spotlightLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

func visible(o fyne.CanvasObject, yes bool) {
	if yes {
		o.Show()
	} else {
		o.Hide()
	}
}
