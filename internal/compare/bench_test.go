package compare

import (
	"fmt"
	"testing"
	"time"

	"reelworth/internal/effort"
	"reelworth/internal/scenario"
)

// manyOffers is the worked example with its offers repeated, each a little dearer.
func manyOffers(offers, months int) scenario.Scenario {
	s := quayside()
	s.Months = months
	three := s.Offers
	s.Offers = nil
	for i := range offers {
		o := three[i%len(three)]
		if i >= len(three) {
			o.Name = fmt.Sprintf("%s, shop %d", o.Name, i/len(three)+1)
		}
		o.Price = o.Price.Add(dec("0.37").Mul(dec(fmt.Sprint(i))))
		s.Offers = append(s.Offers, o)
	}
	return s
}

func BenchmarkCompare(b *testing.B) {
	for _, months := range []int{12, 60} {
		s := manyOffers(6, months)
		b.Run(fmt.Sprintf("6 offers, %d months", months), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				Compare(s, nil, scenario.Date{})
			}
		})
	}
}

// BenchmarkYear is one offer's year alone, as searching for what changes the answer
// asks for it hundreds of times.
func BenchmarkYear(b *testing.B) {
	s := quayside()
	g := newGatherer(&s, nil)
	for i := range s.Offers {
		t, _ := g.terms(i)
		for _, rounded := range []bool{true, false} {
			t.home.off, t.seller.off = !rounded, !rounded
			b.Run(fmt.Sprintf("%s, rounded %v", s.Offers[i].Name, rounded), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					t.year()
				}
			})
		}
	}
}

// awkward is a scenario at the limits of the file, of numbers with as many digits as
// it allows: 50 offers, 60 quotes, 60 months.
func awkward() scenario.Scenario {
	s := manyOffers(50, 60)
	s.Rates[0].Equals = dec("0.887512345679")
	s.Rates[1].Equals = dec("163.360987654321")
	for i := range 58 {
		code := func(n int) string { return string([]rune{'X', rune('A' + n/26), rune('A' + n%26)}) }
		s.Rates = append(s.Rates, scenario.Rate{One: code(i), Equals: dec("1.123456789012"), In: code(i + 1)})
	}
	for i := range s.Shooting.RollsPerMonth {
		s.Shooting.RollsPerMonth[i] = dec(fmt.Sprintf("999.%012d", 987654321987+i))
	}
	s.Border.TaxPercent, s.Border.DutyPercent = dec("22.987654321987"), dec("4.123456789123")
	for i := range s.Offers {
		o := &s.Offers[i]
		o.PriceRisePercent, o.DiscountPercent = dec("-3.123456789987"), dec("1.000000000001")
		if o.Reel != nil {
			r := *o.Reel
			r.SpoiledPercent, r.Length = dec("12.345678901234"), dec("100.123456789123")
			o.Reel = &r
		}
	}
	return s
}

func BenchmarkCompareAtTheLimits(b *testing.B) {
	s := awkward()
	for b.Loop() {
		Compare(s, nil, scenario.Date{})
	}
}

// The time allowed is ten times what it takes, for slow machines.
func TestTheLimitsStayQuick(t *testing.T) {
	tiny := quayside()
	tiny.Months = 60
	tiny.Shooting.RollsPerMonth = rolls("999999999999.999999999999")
	tiny.Offers[1].Boxed = &scenario.Boxed{RollsPerPack: 1, Exposures: 1}
	tiny.Offers[1].OnHand = dec("999999999999.999999999999")
	reel := *tiny.Offers[2].Reel
	reel.Length, reel.SpoiledPercent = dec("4"), dec("99.999999999999")
	tiny.Offers[2].Reel = &reel
	for name, s := range map[string]scenario.Scenario{"50 offers, 60 quotes, 60 months": awkward(), "tiny packs and huge demand": tiny} {
		t.Run(name, func(t *testing.T) {
			start := effort.Spent()
			c := Compare(s, nil, scenario.Date{})
			if took := effort.Spent() - start; took > time.Second {
				t.Errorf("took %v", took)
			}
			for _, o := range c.Offers {
				if o.Fault != nil {
					t.Errorf("%s: %s", o.Name, o.Fault.Why.Code)
				}
			}
		})
	}
}
