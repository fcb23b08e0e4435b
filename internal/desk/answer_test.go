package desk

import (
	"image/color"
	_ "image/png"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"reelworth/internal/compare"
	"reelworth/internal/desk/pages"
	"reelworth/internal/exact"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

func TestFirstStartShowsTheDemoComputed(t *testing.T) {
	h := open(t)
	h.agrees(t, demo())
	v := h.View()
	if !strings.Contains(v.Headline, "EUR\u00a0211 in cash") || v.Form != "Lanternlight 500, 100 ft reel" || v.Page != "Charts" {
		t.Errorf("%+v", v)
	}
	for i, view := range []*pages.FigureView{h.answer.Charts.Cost, h.answer.Charts.Spend} {
		if view.Image.Image == nil || blank(view.Image) {
			t.Error("chart", i, "is not drawn")
		}
	}
	if strings.Contains(v.State, "unsaved") {
		t.Error("nothing was changed, yet:", v.State)
	}
}

func TestChoosingAnotherOfferShowsItsFormAndReceipt(t *testing.T) {
	h := open(t)
	h.Page(pages.Receipt)
	h.Topic("offer", 1)
	if v := h.View(); v.Form != "Marigold 400, pack of 5 by post" || !v.Offers[1].Chosen || h.field(t, "offer[2].price").Text != "8450" {
		t.Errorf("%+v", v)
	}
	c, _, _ := want(demo())
	rows := words.Receipt(&c, 1, "en")
	shown := h.answer.Receipt.Table.Shown()
	if len(shown) != len(rows)+1 || shown[1].Home.String() != rows[0].Home || shown[1].Seller.String() != rows[0].Seller {
		t.Errorf("%d rows are shown, the receipt has %d", len(shown)-1, len(rows))
	}
	if h.answer.Receipt.StripOf.Visible() {
		t.Error("a pack has no strip")
	}
	h.Topic("offer", 2)
	if !h.answer.Receipt.StripOf.Visible() || blank(h.answer.Receipt.Strip.Image) {
		t.Error("the reel's strip is not drawn")
	}
}

func TestThemesReachEveryColour(t *testing.T) {
	h := open(t)
	for _, theme := range palette.Themes {
		h.SetTheme(theme.Name)
		img := h.Window().Canvas().Capture()
		if got := color.NRGBAModel.Convert(img.At(3, 3)); got != color.NRGBA(theme.Ground) {
			t.Errorf("%s: the ground is %v", theme.Name, got)
		}
		x, y := 640, 780
		if got := color.NRGBAModel.Convert(img.At(x, y)); got != color.NRGBA(theme.Ground) {
			t.Errorf("%s: the chart's ground is %v", theme.Name, got)
		}
	}
}

func TestWhatChangesTheAnswer(t *testing.T) {
	h := open(t)
	h.Page(pages.Changes)
	s := demo()
	c := compare.Compare(s, nil, scenario.DateOf(noon))
	ahead, err := compare.LookAhead(t.Context(), &c, exact.Int(10))
	if err != nil {
		t.Fatal(err)
	}
	want := words.Flips(ahead, ahead.Outlook.Offers[2].Pair, "en")
	shown := 0
	for i, row := range h.answer.Changes.Flips {
		if row.Visible() {
			if row.Name.String() != want[i] {
				t.Errorf("crossing %d says %q, want %q", i, row.Name.String(), want[i])
			}
			shown++
		}
	}
	if shown != len(want) || shown < 5 {
		t.Errorf("%d turns are shown of %d", shown, len(want))
	}
	first := h.answer.Changes.Flip.Drawing
	h.answer.Changes.Flips[2].Choose()
	h.Settle()
	if h.answer.Changes.Flip.Drawing == first || !h.answer.Changes.Flips[2].Chosen {
		t.Error("another turn is chosen, but not drawn")
	}
	if under := h.View().Under; !strings.Contains(under, "from 17 up to the 430 looked at") {
		t.Error("the headline does not name the volume:", under)
	}
	strips := h.answer.Changes.Volumes
	if blank(strips.Image) || !strings.Contains(strips.Drawing.Title(), "the reel to 430") {
		t.Error("who is cheaper by rolls a year is not drawn")
	}
	if rows := h.answer.Changes.Table.MinSize(); rows.Height < 100 {
		t.Error("the ranges have no table", rows)
	}
	if blank(h.answer.Changes.Swings.Image) {
		t.Error("the swings are not drawn")
	}
}

// A reel may be cut to other lengths, which boxed film is not.
func TestCutSizesAreOfReels(t *testing.T) {
	h := open(t)
	h.Page(pages.Sizes)
	cuts := h.answer.Sizes.Cuts
	if !cuts.Whole.Visible() || blank(cuts.Figure.Image) || len(cuts.Figure.Drawing.Hits()) != 40-12+1 {
		t.Error("the cuts of the reel are not drawn")
	}
	h.Type("offer[3].reel.exposures", "41")
	h.Settle()
	if n := len(h.answer.Sizes.Cuts.Figure.Drawing.Hits()); n != 40-12+2 {
		t.Errorf("%d sizes with a reel cut to 41 exposures", n)
	}
	h.Topic("offer", 0)
	if h.answer.Sizes.Cuts.Figure.Visible() && cuts.Whole.Visible() {
		t.Error("boxed film is cut")
	}
}

func TestOrderSizeInOneStep(t *testing.T) {
	h := open(t)
	h.Page(pages.Sizes)
	p := h.answer.Sizes
	if p.Best < 2 || !p.Set.Visible() || blank(p.Figure.Image) {
		t.Fatalf("best %d, link %v", p.Best, p.Set.Visible())
	}
	best := p.Best
	p.Set.Do()
	h.Settle()
	s := demo()
	s.Offers[2].Units = best
	h.agrees(t, s)
	if p := h.answer.Sizes; p.Set.Visible() {
		t.Error("the best size is set, but still offered")
	}
	h.undo()
	h.Settle()
	h.agrees(t, demo())
	for _, hit := range h.answer.Sizes.Figure.Drawing.Hits() { // a click on a size takes it
		if hit.Units == 4 {
			at := fyne.NewPos(float32(hit.Rect.X+hit.Rect.W/2), float32(hit.Rect.Y+hit.Rect.H/2))
			h.answer.Sizes.Figure.Tapped(&fyne.PointEvent{Position: at})
		}
	}
	h.Settle()
	if got := h.session.Current().Offers[2].Units; got != 4 {
		t.Error("4 reels were clicked,", got, "are ordered")
	}
}

// A click on a bar or a line turns to that way to buy, and the pointer reads it out.
func TestChartsAreAlive(t *testing.T) {
	h := open(t)
	v := h.answer.Charts.Cost
	for _, hit := range v.Drawing.Hits() {
		if hit.Offer == "Marigold 400, shop roll" && hit.Part == words.PartFilm {
			at := fyne.NewPos(float32(hit.Rect.X+hit.Rect.W/2), float32(hit.Rect.Y+hit.Rect.H/2))
			v.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}})
			if !v.Note.Visible() || !strings.Contains(v.Note.Text.String(), "14.80") {
				t.Error("the pointer reads out", v.Note.Text.String())
			}
			v.Tapped(&fyne.PointEvent{Position: at})
		}
	}
	h.Settle()
	if v := h.View(); v.Form != "Marigold 400, shop roll" {
		t.Error("clicked, but the form is of", v.Form)
	}
}
