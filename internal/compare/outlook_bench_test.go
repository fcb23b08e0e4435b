package compare

import (
	"context"
	"testing"
	"time"

	"reelworth/internal/effort"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

func BenchmarkLookAtPair(b *testing.B) {
	c := Compare(manyOffers(6, 12), nil, scenario.Date{})
	for b.Loop() {
		if _, err := LookAtPair(context.Background(), &c); err != nil {
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

// The time allowed is ten times what it takes, for slow machines.
func TestLookingAheadStaysQuick(t *testing.T) {
	c := Compare(manyOffers(50, 60), nil, scenario.Date{})
	start := effort.Spent()
	if _, err := LookAhead(context.Background(), &c, exact.Int(CeilingPercent)); err != nil {
		t.Fatal(err)
	}
	if took := effort.Spent() - start; took > 4*time.Second {
		t.Errorf("took %v for 50 offers and 60 months", took)
	}
}

func BenchmarkOutlookOfTheWorkedExample(b *testing.B) {
	c := Compare(quayside(), nil, scenario.Date{})
	for b.Loop() {
		if _, err := LookAhead(context.Background(), &c, exact.Int(CeilingPercent)); err != nil {
			b.Fatal(err)
		}
	}
}
