package desk

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

// withLog is the demo with reels in hand that were loaded again and again.
func withLog(reels, loads int) scenario.File {
	f := scenario.Demo()
	f.Reels = nil
	for i := range reels {
		r := scenario.NewInHand("EUR", scenario.Date{Year: 2026, Month: 1, Day: 2}, func(string) bool { return false })
		r.Name, r.Length = fmt.Sprint("Tidewater ", i+1), decimal.New(1000, 0)
		for k := range loads {
			r.Loads = append(r.Loads, scenario.Load{Date: r.Bought.AddMonths(int64(k % 10)), Cassettes: 1, Exposures: 2})
		}
		f.Reels = append(f.Reels, r)
	}
	return f
}

// eachLog runs a benchmark with few reels in hand and with as many as a file can hold.
func eachLog(b *testing.B, run func(b *testing.B, h *Harness, f scenario.File)) {
	for _, n := range []int{25, scenario.MaxReels} {
		b.Run(fmt.Sprint(n, "reels"), func(b *testing.B) {
			app := test.NewApp()
			defer app.Quit()
			h := NewHarness(app, noon)
			h.Window().Show()
			h.Resize(1280, 800)
			run(b, h, withLog(n, 260))
		})
	}
}

// BenchmarkShowReels is from a file that was read to its reels on the screen, with where
// each of them stands.
func BenchmarkShowReels(b *testing.B) {
	eachLog(b, func(b *testing.B, h *Harness, f scenario.File) {
		for b.Loop() {
			h.Put(f)
		}
	})
}

// BenchmarkScrollReels is one turn of the wheel over the reels in hand, drawn.
func BenchmarkScrollReels(b *testing.B) {
	eachLog(b, func(b *testing.B, h *Harness, f scenario.File) {
		h.Put(f)
		over, down := fyne.NewPos(100, 400), float32(-60)
		for i := 0; b.Loop(); i++ {
			if i%20 == 19 {
				down = -down
			}
			test.Scroll(h.win.Canvas(), over, 0, down)
			h.win.Canvas().Capture()
		}
	})
}
