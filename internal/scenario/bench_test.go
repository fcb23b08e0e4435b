package scenario

import (
	"bytes"
	"fmt"
	"testing"
)

// manyScenarios is a file of n scenarios like the demo.
func manyScenarios(n int) []byte {
	head, one, _ := bytes.Cut(demo, []byte("[[scenario]]"))
	var b bytes.Buffer
	b.Write(head)
	for i := range n {
		b.WriteString("[[scenario]]")
		b.Write(bytes.Replace(one, []byte("Quayside year"), fmt.Appendf(nil, "Quayside year %d", i), 1))
	}
	return b.Bytes()
}

func BenchmarkRead1000(b *testing.B) {
	data := manyScenarios(1000)
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		if f, faults := Read(data); len(faults) > 0 || len(f.Scenarios) != 1000 {
			b.Fatal(faults)
		}
	}
}

func BenchmarkWrite1000(b *testing.B) {
	f, _ := Read(manyScenarios(1000))
	for b.Loop() {
		Write(f)
	}
}
