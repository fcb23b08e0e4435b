package main

import (
	"slices"
	"testing"
)

// BenchmarkCalibration sorts the same 10,000 numbers each time: branches, memory
// and integer work as in the program, and nothing of the program. Do not change
// it: figures told as multiples of it would no longer compare.
func BenchmarkCalibration(b *testing.B) {
	const size = 10_000
	var shuffled [size]uint64
	x := uint64(0x9E3779B97F4A7C15)
	for i := range shuffled {
		x ^= x << 13 // xorshift, G. Marsaglia, "Xorshift RNGs", J. Stat. Softw. 8 (2003)
		x ^= x >> 7
		x ^= x << 17
		shuffled[i] = x
	}
	work := make([]uint64, size)
	for b.Loop() {
		copy(work, shuffled[:])
		slices.Sort(work)
	}
}
