package figure

import (
	"context"
	"fmt"
	"image/color"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// withOutlook is a comparison that has been looked ahead of.
func withOutlook(c *compare.Comparison) *compare.Comparison {
	c, err := compare.LookAhead(context.Background(), c, exact.Int(compare.CeilingPercent))
	if err != nil {
		panic(err)
	}
	return c
}

func TestVolumesLookAsTheyDid(t *testing.T) {
	d := Volumes(withOutlook(compared(demo())), demoReel, 640, 230, english(palette.Paper))
	compareGolden(t, "volumes", d.Image(1))
}

// The demo's ranges are published with it: boxed to 13 rolls a year, about the same to 16,
// the reel to 430.
func TestVolumesSayWhatTheyShow(t *testing.T) {
	d := Volumes(withOutlook(compared(demo())), demoReel, 640, 260, english(palette.Paper))
	for _, text := range []string{"shop roll", "reel", "about the same", "today 43", "1", "10", "430", "rolls a year"} {
		if !writes(d, text) {
			t.Errorf("%q is not written", text)
		}
	}
	var first [][]string
	for _, row := range d.Table().Rows {
		if strings.HasPrefix(row[0], demoReel) {
			first = append(first, row[1:])
		}
	}
	want := [][]string{{"1 to 13", "Marigold 400, shop roll", ""}, {"14 to 16", "about the same", ""}, {"17 to 430", demoReel, "today"}}
	if !slices.EqualFunc(first, want, slices.Equal[[]string]) {
		t.Errorf("%q, want %q", first, want)
	}
	at := func(rolls float64) string {
		ch := &volumesChart{sheet: newSheet(640, 260, english(palette.Paper)), most: 430}
		ch.plot = Rect{6, 0, 628, 1}
		y := d.Hits()[0].Rect.Y + 1
		for _, h := range d.Hits() {
			y = min(y, h.Rect.Y+1)
		}
		hit, _ := d.At(ch.px(rolls), y)
		return spaces.Replace(hit.Text)
	}
	for rolls, want := range map[float64]string{
		13: "At 13 rolls a year or fewer, Marigold 400, shop roll is cheaper",
		14: "From 14 to 16 rolls a year, about the same",
		17: "From 17 rolls a year on, up to the 430 looked at, the reel is cheaper",
	} {
		if got := at(rolls); got != want {
			t.Errorf("at %v rolls %q, want %q", rolls, got, want)
		}
	}
}

// However narrow a range is, it can be seen and pointed at.
func TestNarrowRangesCanBePointedAt(t *testing.T) {
	c := withOutlook(compared(demo()))
	sides := []compare.Cheaper{compare.CheaperOffer, compare.CheaperOther, compare.CheaperEven}
	rapid.Check(t, func(t *rapid.T) {
		most := rapid.IntRange(1, 500).Draw(t, "most")
		odd, outlook := *c, *c.Outlook
		for _, cut := range []int{1, rapid.IntRange(1, 40).Draw(t, "width")} {
			pair := *c.Outlook.Of(demoReel).Pair
			pair.Volumes = nil
			for from, i := 1, rapid.IntRange(0, 2).Draw(t, "side"); from <= most; from, i = from+cut, i+1 {
				pair.Volumes = append(pair.Volumes, compare.VolumeRange{From: from, To: min(from+cut-1, most), Cheaper: sides[i%3]})
			}
			outlook.Offers = []compare.OfferOutlook{{Name: demoReel, Pair: &pair}}
			odd.Outlook = &outlook
			w, h := rapid.Float64Range(240, 2400).Draw(t, "w"), rapid.Float64Range(120, 900).Draw(t, "h")
			style := Style{Theme: palette.Safelight, Locale: rapid.SampledFrom(money.Locales()).Draw(t, "locale")}
			d := Volumes(&odd, demoReel, w, h, style)
			checkLayout(t, "volumes", d)
			checkTwin(t, "volumes", d)
			for _, hit := range d.Hits() {
				if hit.Rect.W < 1-1e-9 {
					t.Fatalf("%q is %v wide", hit.Text, hit.Rect.W)
				}
				middle := hit.Rect.X + hit.Rect.W/2
				if got, ok := d.At(middle, hit.Rect.Y+hit.Rect.H/2); !ok || math.Abs(got.Rect.X-hit.Rect.X) > 1 {
					t.Fatalf("at %q stands %q", hit.Text, got.Text)
				}
			}
		}
	})
}

func TestOddVolumesHoldTheLayout(t *testing.T) {
	comparisons := odd()
	for _, home := range []string{"EUR", "KWD"} {
		comparisons["long names in "+home] = compared(manyOffers(3, 60, home))
	}
	for name, c := range comparisons {
		c := withOutlook(c)
		for _, size := range [][2]float64{{240, 120}, {300, 200}, {640, 300}, {2400, 600}} {
			for _, style := range []Style{{Theme: palette.Paper, Locale: "en"}, {Theme: palette.Safelight, Locale: "pl"}} {
				d := Volumes(c, demoReel, size[0], size[1], style)
				fig := fmt.Sprintf("%s, %v, %s", name, size, style.Locale)
				checkLayout(t, fig, d)
				checkTwin(t, fig, d)
			}
		}
	}
}

// The reel is amber and as high as its strip, boxed film grey and lower, in both themes:
// told apart by either, and as scenarios side by side have them.
func TestVolumesHaveTheReelInAmber(t *testing.T) {
	for _, theme := range palette.Themes {
		d := Volumes(withOutlook(compared(demo())), demoReel, 640, 260, english(theme))
		pixels := d.Image(1)
		high := map[color.NRGBA]int{}
		for _, hit := range d.Hits() {
			if hit.Offer != demoReel || strings.Contains(hit.Text, words.AboutTheSame) {
				continue
			}
			x := int(hit.Rect.X + 4) // beside the names
			for y := int(hit.Rect.Y); y < int(hit.Rect.bottom()); y++ {
				r, g, b, _ := pixels.At(x, y).RGBA()
				high[color.NRGBA{uint8(r >> 8), uint8(g >> 8), uint8(b >> 8), 0xFF}]++
			}
		}
		if high[theme.Accent] == 0 || high[theme.Quiet] == 0 || high[theme.Film] != 0 || high[theme.Accent] < high[theme.Quiet]*4/3 {
			t.Errorf("%s: rows of pixels by colour: %v", theme.Name, high)
		}
		for _, text := range []string{words.KeyReel, words.KeyBoxed, words.AboutTheSame} {
			if !writes(d, text) {
				t.Errorf("%s: the legend has no %q", theme.Name, text)
			}
		}
	}
}
