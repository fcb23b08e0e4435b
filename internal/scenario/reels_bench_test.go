package scenario

import (
	"bytes"
	"fmt"
	"slices"
	"testing"
)

// logged is a file of reels that are loaded again and again.
func logged(reels, loads int) []byte {
	var b bytes.Buffer
	b.WriteString("schema = 1\n")
	for i := range reels {
		fmt.Fprintf(&b, "\n[[reel]]\nname = \"Tidewater %d\"\nlength = \"1000\"\nlength_unit = \"ft\"\nexposures = 12\nshort_roll_from = 1\n", i)
		for k := range loads {
			fmt.Fprintf(&b, "[[reel.load]]\ndate=2027-%02d-%02d\ncassettes=1\nexposures=2\n", 1+k/25%12, 1+k%25)
		}
	}
	return withScenario(b.String())
}

// longLog is as long a log as a file of 8 MiB can hold: 500 reels with 260 loads each.
func longLog(b *testing.B) []byte {
	data := logged(MaxReels, 260)
	if len(data) > MaxBytes {
		b.Fatal(len(data))
	}
	return data
}

// BenchmarkReadReels opens as long a log as a file can hold.
func BenchmarkReadReels(b *testing.B) {
	data := longLog(b)
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		f, faults := Read(data)
		if len(faults) > 0 || len(f.Reels) != MaxReels || len(f.Reels[0].Loads) != 260 {
			b.Fatal(len(f.Reels), faults)
		}
	}
}

// BenchmarkSaveReels saves it with one row more, in the middle.
func BenchmarkSaveReels(b *testing.B) {
	text := TextOf(longLog(b))
	f := text.File
	f.Reels = slices.Clone(f.Reels)
	r := &f.Reels[MaxReels/2]
	r.Loads = slices.Insert(slices.Clone(r.Loads), 130, Load{Date: Date{2026, 12, 31}, Cassettes: 1, Exposures: 3})
	b.SetBytes(int64(len(text.Bytes)))
	for b.Loop() {
		if _, inPlace := text.Saying(f); !inPlace {
			b.Fatal("not in place")
		}
	}
}
