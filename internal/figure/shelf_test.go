package figure

import (
	"bytes"
	"image"
	"testing"

	"reelworth/internal/palette"
)

func TestAPictureOnUsedPixelsIsTheSame(t *testing.T) {
	d := CostPerRoll(compared(demo()), demoReel, 640, 260, english(palette.Paper))
	var shelf Shelf
	dirty := image.NewRGBA(image.Rect(0, 0, 700, 300))
	for i := range dirty.Pix {
		dirty.Pix[i] = byte(i * 31)
	}
	shelf.Give(dirty)
	plain, reused := d.Image(1), d.ImageOn(&shelf, 1)
	if &reused.Pix[0] != &dirty.Pix[0] {
		t.Fatal("the pixels on the shelf were not used")
	}
	if reused.Rect != plain.Rect || reused.Stride != plain.Stride || !bytes.Equal(reused.Pix, plain.Pix) {
		t.Error("what was on the pixels before shows")
	}
}

func TestAShelfHoldsAFewPicturesAndGivesWhatFits(t *testing.T) {
	var shelf Shelf
	for range 9 {
		shelf.Give(image.NewRGBA(image.Rect(0, 0, 100, 100)))
	}
	if len(shelf.lying) != most || shelf.Pixels() != most*100*100 {
		t.Errorf("%d lie there, of %d pixels", len(shelf.lying), shelf.Pixels())
	}
	for _, c := range []struct {
		w, h int
		used bool
	}{{101, 100, false}, {10, 10, false}, {100, 51, true}, {100, 100, true}} {
		lay := len(shelf.lying)
		p := shelf.take(c.w, c.h)
		if used := len(shelf.lying) < lay; used != c.used || p.Rect.Dx() != c.w || p.Rect.Dy() != c.h || len(p.Pix) != 4*c.w*c.h {
			t.Errorf("%d × %d: used %v, got %v", c.w, c.h, used, p.Rect)
		}
	}
	shelf.Give(image.NewRGBA(image.Rect(0, 0, 1, 1)))
	if shelf.Clear(); shelf.Pixels() != 0 {
		t.Error("a cleared shelf is not empty")
	}
}
