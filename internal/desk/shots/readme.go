package main

import (
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"slices"
	"time"

	"fyne.io/fyne/v2/test"
	"golang.org/x/image/draw"

	"reelworth/internal/desk"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/stock"
)

// readmeShots are the pictures in the README, by the names of their files; those of a page
// are half as large.
var readmeShots = []shot{
	{"window", 1280, 800, func(h *desk.Harness) { h.Type("offer[3].shipping", "34.50") }},
	{"page-receipt", 1280, 800, func(h *desk.Harness) { h.Page(pages.Receipt) }},
	{"page-changes", 1280, 800, func(h *desk.Harness) { h.Page(pages.Changes) }},
	{"page-sizes", 1280, 800, func(h *desk.Harness) { h.Page(pages.Sizes) }},
	{"page-past", 1280, 800, past(6900)},
	{"page-tables", 1280, 800, func(h *desk.Harness) { h.Page(pages.Tables) }},
	{"page-notes", 1280, 800, func(h *desk.Harness) { h.Page(pages.Notes) }},
	{"page-beside", 1280, 800, beside("AUD")},
	{"page-cut", 1280, 800, func(h *desk.Harness) {
		h.Put(desk.Shelf())
		h.Reel(0, stock.Cut)
		h.Wish("3", "24")
	}},
	{"page-loader", 1280, 800, func(h *desk.Harness) { h.Put(desk.Shelf()); h.Reel(0, stock.Cut); h.Wish("3", "24"); h.Stand() }},
}

// takeReadme writes the README's pictures into a folder.
func takeReadme(dir string) error {
	for _, s := range readmeShots {
		img := s.picture("paper")
		if s.name != "window" {
			img = halved(img)
		}
		if err := writeSmall(filepath.Join(dir, s.name+".png"), img); err != nil {
			return err
		}
	}
	return nil
}

// picture is the window as arranged.
func (s shot) picture(theme string) image.Image {
	app := test.NewApp()
	defer app.Quit()
	h := desk.NewHarness(app, time.Date(2026, 11, 24, 12, 0, 0, 0, time.UTC))
	h.Window().Show()
	h.Resize(s.width, s.height)
	h.SetTheme(theme)
	s.arrange(h)
	h.Settle()
	for range 2 {
		layAgain(h.Window().Content())
		for _, o := range h.Window().Canvas().Overlays().List() {
			layAgain(o)
		}
	}
	return h.Window().Canvas().Capture()
}

// halved is a picture at half its size.
func halved(img image.Image) image.Image {
	size := img.Bounds().Size()
	small := image.NewRGBA(image.Rect(0, 0, size.X/2, size.Y/2))
	draw.CatmullRom.Scale(small, small.Bounds(), img, img.Bounds(), draw.Src, nil)
	return small
}

// writeSmall writes a picture in the 64 colours that it has most of, which is a quarter of
// its bytes.
func writeSmall(path string, img image.Image) error {
	few := image.NewPaletted(img.Bounds(), commonColours(img, 64))
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			few.Set(x, y, img.At(x, y))
		}
	}
	f, err := os.Create(path)
	if err != nil {
		return err
	}
	defer f.Close()
	best := png.Encoder{CompressionLevel: png.BestCompression}
	return best.Encode(f, few)
}

// commonColours are the colours that stand for most of a picture, near ones taken together.
func commonColours(img image.Image, most int) color.Palette {
	const step = 12 // of 255, that is told apart
	type near [3]uint8
	count, exact := map[near]int{}, map[color.RGBA]int{}
	like := map[near]color.RGBA{}
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			c := color.RGBAModel.Convert(img.At(x, y)).(color.RGBA)
			n := near{c.R / step, c.G / step, c.B / step}
			count[n]++
			exact[c]++
			if exact[c] > exact[like[n]] {
				like[n] = c
			}
		}
	}
	var list []near
	for n := range count {
		list = append(list, n)
	}
	slices.SortFunc(list, func(a, b near) int {
		if count[a] != count[b] {
			return count[b] - count[a]
		}
		return slices.Compare(a[:], b[:])
	})
	var p color.Palette
	for _, n := range list[:min(most, len(list))] {
		p = append(p, like[n])
	}
	return p
}
