package film

import (
	"errors"
	"testing"

	"reelworth/internal/exact"
)

// short is a reel of 10 m, 38 mm frames, 282 mm of ends, a first 100 mm and a last 200 mm
// lost: a roll of 36 takes 1650 mm, one of 12 738 mm.
func short() InHand { return InHand{Reel: usual(mm(10_000))} }

func TestRemainingByHand(t *testing.T) {
	with := func(change func(h *InHand)) InHand {
		h := short()
		change(&h)
		return h
	}
	for _, c := range []struct {
		name              string
		reel              InHand
		used, left, short int64
		recounted         bool
	}{
		{"not begun", short(), 0, 9700, 0, false},
		{"not begun, with test exposures", with(func(h *InHand) { h.TestExposures = 2 }), 0, 9624, 0, false},
		{"two rolls", with(func(h *InHand) { h.Loads = []Load{{1, 2, 36, 0, false}} }), 3400, 6400, 0, false},
		{"counts say nothing without a counter", with(func(h *InHand) { h.Loads = []Load{{1, 2, 36, 3, true}} }), 3400, 6400, 0, false},
		{"each day once", with(func(h *InHand) {
			h.SessionWaste = mm(30)
			h.Loads = []Load{{2, 1, 36, 0, false}, {1, 1, 36, 0, false}, {2, 1, 12, 0, false}}
		}), 100 + 2*1650 + 738 + 60, 10_000 - 200 - 4198, 0, false},
		// 44 counts of 38 mm are 1672 mm; 40 counts were 1520 mm, less than the roll needs.
		{"by the counter", with(func(h *InHand) {
			h.Counter = Counter{PerCount: mm(38)}
			h.Loads = []Load{{1, 2, 36, 0, false}, {1, 1, 36, 40, true}}
		}), 100 + 2*1672 + 1520, 10_000 - 200 - 4964, 0, false},
		{"into the end waste", with(func(h *InHand) { h.Loads = []Load{{1, 6, 36, 0, false}}; h.Length = mm(10_100) }), 10_000, 0, 100, false},
		{"all of the reel", with(func(h *InHand) { h.Loads = []Load{{1, 6, 36, 0, false}} }), 10_000, 0, 200, false},
		{"a recount", with(func(h *InHand) {
			h.Loads = []Load{{1, 99, 36, 0, false}, {3, 1, 36, 0, false}}
			h.Recounts = []Recount{{1, mm(5000)}}
			h.SessionWaste = mm(30)
		}), 10_000 - 200 - 3120, 5000 - 200 - 1650 - 30, 0, true},
		{"the later of two recounts", with(func(h *InHand) {
			h.Loads = []Load{{1, 1, 36, 0, false}}
			h.Recounts = []Recount{{2, mm(5000)}, {1, mm(9000)}}
		}), 10_000 - 5000, 4800, 0, true},
		{"the last written of one day", with(func(h *InHand) { h.Recounts = []Recount{{2, mm(5000)}, {2, mm(4000)}} }), 6000, 3800, 0, true},
		{"given away", with(func(h *InHand) { h.Recounts = []Recount{{2, mm(0)}} }), 9800, 0, 0, true},
		{"more loaded than the recount left", with(func(h *InHand) {
			h.Recounts = []Recount{{1, mm(1000)}}
			h.Loads = []Load{{2, 1, 36, 0, false}}
		}), 9800, 0, 850, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := c.reel.Remaining()
			if err != nil {
				t.Fatal(err)
			}
			sameLength(t, "used", got.Used, mm(c.used))
			sameLength(t, "left", got.Left, mm(c.left))
			sameLength(t, "short", got.Short, mm(c.short))
			if got.Recounted != c.recounted {
				t.Errorf("recounted %v", got.Recounted)
			}
		})
	}
}

func TestRemainingSaysWhatCannotBe(t *testing.T) {
	h := short()
	h.Loads = []Load{{5, 1, 36, 0, false}, {9, 3, 36, 0, false}, {7, 3, 36, 0, false}}
	var beyond *Overdrawn
	if _, err := h.Remaining(); !errors.As(err, &beyond) || beyond.Load != 1 {
		t.Fatalf("error %v, want the second load, which is the last by date", err)
	}
	sameLength(t, "beyond", beyond.By, mm(100+7*1650-10_000))

	h.Recounts = []Recount{{10, mm(10_001)}}
	var long *RecountExceeds
	if _, err := h.Remaining(); !errors.As(err, &long) || long.Recount != 0 || !long.By.Equal(mm(1)) {
		t.Fatalf("error %v, want a recount 1 mm too long", err)
	}
	h.Recounts[0].Left = mm(10_000)
	if got, err := h.Remaining(); err != nil || !got.Left.Equal(mm(9800)) {
		t.Fatalf("%v, %v: a recount may say more than the loads left", got.Left, err)
	}

	h = InHand{Reel: Reel{Length: mm(300), Pitch: LongPitch, Exposures: 1, StartWaste: mm(100), EndWaste: mm(163), TestExposures: 1}}
	var waste *WasteExceeds
	if _, err := h.Remaining(); !errors.As(err, &waste) || !waste.By.Equal(exact.Int(1)) {
		t.Fatalf("error %v, want wastes 1 mm more than the reel", err)
	}
	h.Length = mm(301)
	if got, err := h.Remaining(); err != nil || !got.Left.IsZero() {
		t.Fatalf("%v, %v", got.Left, err)
	}
}

// A working lab's cut length for 36 exposures is 5 ft 3 in = 1600.2 mm (apug.org, post
// 1270032).
func TestWoundIsTheLabsCutLength(t *testing.T) {
	h := InHand{Reel: Reel{Pitch: LongPitch, Exposures: 36, Leader: mm(160), Trailer: exact.Ratio(722, 10)}}
	sameLength(t, "wound", h.Wound(36), exact.Ratio(16002, 10))
}
