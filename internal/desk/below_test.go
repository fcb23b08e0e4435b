package desk

import (
	"testing"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
)

// The reels in hand stand right below the rest of the left column, however many lines
// the names above took before.
func TestReelsInHandStandBelowTheRest(t *testing.T) {
	h := open(t)
	h.Put(Crowd())
	h.begin()
	h.Settle()
	both := h.offers.In.Content.(*fyne.Container).Objects
	if above, at := kit.HeightOf(both[0], both[0].Size().Width), both[1].Position().Y-both[0].Position().Y; at < above-1 || at > above+1 {
		t.Errorf("the reels in hand begin at %.0f, the rest ends at %.0f", at, above)
	}
}
