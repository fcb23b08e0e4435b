package scenario

import (
	"bytes"
	"fmt"
	"testing"
)

// logged is a file of reels that are loaded again and again.
func logged(reels, loads int) []byte {
	var b bytes.Buffer
	b.WriteString("schema = 1\n")
	for i := range reels {
		fmt.Fprintf(&b, "\n[[reel]]\nname = \"Tidewater %d\"\nlength = \"1000\"\nlength_unit = \"ft\"\nexposures = 12\nshort_roll_from = 1\n", i)
		for range loads {
			b.WriteString("[[reel.load]]\ndate=2027-01-02\ncassettes=1\nexposures=2\n")
		}
	}
	return withScenario(b.String())
}

// BenchmarkReadReels opens as long a log as a file of 8 MiB can hold: 500 reels with 260
// loads each.
func BenchmarkReadReels(b *testing.B) {
	data := logged(MaxReels, 260)
	if len(data) > MaxBytes {
		b.Fatal(len(data))
	}
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		f, faults := Read(data)
		if len(faults) > 0 || len(f.Reels) != MaxReels || len(f.Reels[0].Loads) != 260 {
			b.Fatal(len(f.Reels), faults)
		}
	}
}
