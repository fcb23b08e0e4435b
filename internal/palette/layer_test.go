package palette

import (
	"image/color"
	"testing"
)

func TestHalfOfWhiteOverBlackIsGrey(t *testing.T) {
	black := LayerOf(color.Black)
	for alpha, want := range map[uint8]uint8{0: 0, 128: 128, 255: 255} {
		if got := (Layer{color.NRGBA{R: 255, G: 255, B: 255, A: alpha}}).Over(black); got.R != want || got.A != 255 {
			t.Errorf("alpha %d: %v", alpha, got)
		}
	}
}
