package handout

import (
	"bytes"
	"context"
	"slices"
	"time"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/paper"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
	"reelworth/internal/words"
)

// Options are what a handout tells beside the comparison.
type Options struct {
	Paper  paper.Size // the zero value is A4
	Locale money.Locale
	On     scenario.Date    // the day it is made; may be unset
	InHand []reels.Standing // the reels that are loaded from
}

// Handout is the pages, to look at or to write, and the letters that the typeface lacks,
// which stand there as boxes.
type Handout struct {
	Pages   []*paper.Page
	Lacking []rune
	about   paper.About
}

// Make lays a comparison out on pages. It looks ahead itself where the comparison has no
// outlook yet; its only error is ctx's, when that is done before it is. Amounts are in the
// currency that the comparison is shown in.
func Make(ctx context.Context, c *compare.Comparison, o Options) (*Handout, error) {
	if o.Paper == (paper.Size{}) {
		o.Paper = paper.A4
	}
	if c.Outlook == nil {
		var err error
		if c, err = compare.LookAtPair(ctx, c); err != nil {
			return nil, err
		}
	}
	m := maker{c: c, o: o, pair: c.Outlook.Pair, theme: onPaper(), flow: flow{size: o.Paper}}
	m.flow.theme = m.theme
	m.front()
	m.back()
	h := &Handout{Pages: m.pages, about: m.about()}
	paper.Foot(m.pages, margin, words.ComputedOn(o.On), words.PageOf, m.theme.Muted)
	for _, p := range m.pages {
		for _, text := range p.Texts() {
			h.lacks(text)
		}
	}
	return h, nil
}

// lacks notes the letters of a text that the typeface lacks, each once.
func (h *Handout) lacks(text string) {
	for _, r := range paper.Lacking(text) {
		if !slices.Contains(h.Lacking, r) {
			h.Lacking = append(h.Lacking, r)
		}
	}
}

// PDF is the handout as a file.
func (h *Handout) PDF() ([]byte, error) {
	var b bytes.Buffer
	err := paper.WritePDF(&b, h.about, h.Pages)
	return b.Bytes(), err
}

// maker makes one handout.
type maker struct {
	flow
	c     *compare.Comparison
	o     Options
	pair  *compare.PairOutlook // nil when the verdict is one-sided
	theme palette.Theme
}

// onPaper is the light theme on white.
func onPaper() palette.Theme {
	t := palette.Paper
	t.Ground = t.Field
	return t
}

func (m *maker) style() figure.Style { return figure.Style{Theme: m.theme, Locale: m.o.Locale} }

func (m *maker) about() paper.About {
	a := paper.About{Title: words.HandoutTitle(m.c, m.o.Locale), Language: "en-GB", Program: "Reelworth " + version.String()}
	if d := m.o.On; d != (scenario.Date{}) {
		a.Made = time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC)
	}
	return a
}
