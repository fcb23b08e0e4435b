package desk

import (
	"fmt"
	"runtime"
	"sync/atomic"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/kit"
)

// countingFonts is our theme, and counts how often the toolkit asks it for a typeface: it
// does so for each set of fonts that it reads and keeps.
type countingFonts struct {
	fyne.Theme
	asked *atomic.Int64
}

func (c countingFonts) Font(s fyne.TextStyle) fyne.Resource {
	c.asked.Add(1)
	return c.Theme.Font(s)
}

// typeAround turns to another form and back, and types a price key by key, drawing it all.
func (h *Harness) typeAround(t *testing.T, rounds int) {
	t.Helper()
	topics := []string{"shooting", "loading", "developing", "rates"}
	for i := range rounds {
		h.Topic(topics[i%len(topics)], 0)
		h.Window().Canvas().Capture()
		h.Topic("offer", 2)
		for _, text := range []string{"1", "12", "12.", fmt.Sprintf("12.%d", i%90)} {
			h.mustType(t, "offer[3].price", text)
			h.pipeline.idle()
			h.drain()
		}
		h.Window().Canvas().Capture()
	}
}

// The toolkit keeps the fonts it has read for good: reading them again while somebody types
// or turns to another form would take megabytes each time.
func TestTypingReadsNoFontsAgain(t *testing.T) {
	h := open(t)
	fonts := countingFonts{kit.Look, new(atomic.Int64)}
	test.ApplyTheme(t, fonts)
	h.typeAround(t, 4)
	before := fonts.asked.Load()
	if before == 0 {
		t.Fatal("nothing is counted")
	}
	h.typeAround(t, 4)
	if again := fonts.asked.Load() - before; again > 0 {
		t.Errorf("16 more keys read fonts %d times", again)
	}
}

// liveHeap is what is in use after everything that is not has been collected.
func liveHeap() uint64 {
	runtime.GC()
	runtime.GC() // what finalizers and pools let go of
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.HeapAlloc
}

func TestTypingKeepsItsMemory(t *testing.T) {
	h := open(t)
	h.Put(ways(12))
	h.typeAround(t, 4)
	before := liveHeap()
	h.typeAround(t, 8)
	if after := liveHeap(); float64(after) > 1.3*float64(before) {
		t.Errorf("%d MB are in use after 48 keys, %d MB after 16", after>>20, before>>20)
	}
}

// While somebody types, each picture is drawn on the pixels of one before. At rest nothing
// lies ready for that: on a large screen it would be as much as the window itself takes.
func TestPixelsAreKeptReadyOnlyWhileSomebodyTypes(t *testing.T) {
	h := open(t)
	for _, price := range []string{"12", "13"} {
		h.mustType(t, "offer[3].price", price)
		h.pipeline.worker.Idle()
		h.drain()
	}
	if answer.Ready() == 0 {
		t.Error("the pictures of the key before are not kept to be drawn on")
	}
	h.Settle()
	if n := answer.Ready(); n > 0 {
		t.Errorf("%d pixels lie ready when the typing has ended", n)
	}
}
