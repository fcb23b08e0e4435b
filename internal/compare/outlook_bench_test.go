package compare

import (
	"context"
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

func BenchmarkPairFlips(b *testing.B) {
	c := Compare(manyOffers(6, 12), nil, scenario.Date{})
	for b.Loop() {
		if _, err := PairFlips(context.Background(), &c); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkOutlook6(b *testing.B) {
	c := Compare(manyOffers(6, 12), nil, scenario.Date{})
	for b.Loop() {
		if _, err := LookAhead(context.Background(), &c, exact.Int(CeilingPercent)); err != nil {
			b.Fatal(err)
		}
	}
}
