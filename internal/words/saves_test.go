package words

import (
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Only what the reel saves in cash may have the colour of a saving, and who saves against
// whom is said: a loss never has it, nor what is about the same.
func TestALossNeverHasTheColourOfASaving(t *testing.T) {
	met := map[compare.VerdictKind]int{}
	for seed := range 300 {
		s := believable(uint64(seed) + 60_000)
		c := compare.Compare(s, nil, scenario.Date{})
		h := Verdict(&c, money.English)
		met[c.Verdict.Kind]++
		saves := c.Verdict.Kind == compare.VerdictReel && c.Verdict.Pair.SavingCash.Sign() > 0
		if h.Saves != saves || h.Saves && strings.Contains(h.Strong, "more") {
			t.Errorf("seed %d, %s: %q is coloured: %v", seed, c.Verdict.Kind, h.Strong, h.Saves)
		}
		if strings.Contains(h.Under, "All counted, ") && c.Verdict.Pair != nil {
			reel, boxed := Called(&s, c.Verdict.Reel), Called(&s, c.Verdict.Boxed)
			if !strings.Contains(h.Under, reel) || !strings.Contains(h.Under, "than "+boxed) && !strings.Contains(h.Under, "as "+boxed) {
				t.Errorf("seed %d: of %s and %s, who is cheaper than whom in %q?", seed, reel, boxed, h.Under)
			}
		}
	}
	for _, kind := range []compare.VerdictKind{compare.VerdictReel, compare.VerdictBoxed, compare.VerdictClose, compare.VerdictReelIfKept} {
		if met[kind] == 0 {
			t.Errorf("%s never came about: %v", kind, met)
		}
	}
}
