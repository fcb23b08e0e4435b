package reels

import (
	"reflect"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

// metres is a reel without ends or wastes: 38 mm frames, so 10 exposures take 380 mm.
func metres(length string, exposures int) scenario.Reel {
	return scenario.Reel{Length: decimal.RequireFromString(length), LengthUnit: scenario.Metres, Exposures: exposures, ShortRollFrom: 1}
}

var january = scenario.Date{Year: 2027, Month: 1, Day: 15}

// bought is a reel of 20 rolls of 10, bought as the offer "Tidewater", with 4 loaded, 3
// developed, and 6 of their 30 exposures spoiled.
func bought() scenario.InHand {
	r := scenario.InHand{Name: "one", Offer: "Tidewater", Reel: metres("7.6", 10)}
	r = WithLoad(r, scenario.Load{Date: january, Cassettes: 4, Exposures: 10})
	return WithResult(r, scenario.Result{Date: january, Cassettes: 3, Exposures: 10, Good: 23, LostOtherwise: 1})
}

func offering() scenario.Scenario {
	reel := metres("7.6", 10)
	return scenario.Scenario{Offers: []scenario.Offer{
		{Name: "Harbour", Kind: scenario.KindBoxed, Boxed: &scenario.Boxed{}},
		{Name: "Tidewater", Kind: scenario.KindReel, Reel: &reel},
	}}
}

func standings(all []scenario.InHand) []Standing {
	out := make([]Standing, len(all))
	for i := range all {
		out[i] = Stand(&all[i], nil)
	}
	return out
}

// Worked by hand: 16 of 20 rolls are left and one of 20 is undeveloped, 0.85 of a reel;
// another of the offer's reels adds a half; a third is no reel of this offer.
func TestLearnByHand(t *testing.T) {
	all := []scenario.InHand{bought(), {Name: "two", Offer: "Tidewater", Reel: metres("3.8", 10)}, {Name: "three", Reel: metres("7.6", 10)}}
	s := offering()
	e, ok := Learn(&s, 0, all, standings(all))
	if !ok || e.Offer != "Tidewater" || e.SpoiledPercent.String() != "20" || e.OnHand.String() != "1.35" {
		t.Fatalf("%+v, %v", e, ok)
	}
	before := s.Clone()
	after := e.Apply(s)
	if o := after.Offers[1]; o.OnHand.String() != "1.35" || o.Reel.SpoiledPercent.String() != "20" {
		t.Errorf("%+v", o)
	}
	if !reflect.DeepEqual(s, before) {
		t.Error("the scenario itself was changed")
	}
}

func TestLearnOnlyWhatIsWorthIt(t *testing.T) {
	s := offering()
	for name, change := range map[string]func(r *scenario.InHand){
		"two developed are too few": func(r *scenario.InHand) { r.Results[0].Cassettes, r.Results[0].Good = 2, 10 },
		"less than 2 points off":    func(r *scenario.InHand) { r.SpoiledPercent = decimal.New(181, -1) },
		"no such offer":             func(r *scenario.InHand) { r.Offer = "Fathom" },
		"the offer is no reel":      func(r *scenario.InHand) { r.Offer = "Harbour" },
		"bought as none":            func(r *scenario.InHand) { r.Offer = "" },
	} {
		all := []scenario.InHand{bought()}
		change(&all[0])
		if e, ok := Learn(&s, 0, all, standings(all)); ok {
			t.Errorf("%s: %+v", name, e)
		}
	}
	all := []scenario.InHand{bought()}
	all[0].SpoiledPercent = decimal.New(18, 0)
	if _, ok := Learn(&s, 0, all, standings(all)); !ok {
		t.Error("2 points off are worth it")
	}
}

// An offer cannot have 100 % spoiled: then nothing would be computed.
func TestEverythingSpoiledIsTakenAsNearlyAll(t *testing.T) {
	all := []scenario.InHand{bought()}
	all[0].Results[0].Good, all[0].Results[0].LostOtherwise = 0, 0
	s := offering()
	if e, ok := Learn(&s, 0, all, standings(all)); !ok || e.SpoiledPercent.String() != "99.99" {
		t.Errorf("%+v, %v", e, ok)
	}
}

func TestLabelsAreNumberedThrough(t *testing.T) {
	r := bought()
	r.Loads = append(r.Loads, scenario.Load{Date: scenario.Date{Year: 2027, Month: 1, Day: 1}, Cassettes: 1, Exposures: 7})
	r.Speed, r.Remjet, r.KeepsUntil = scenario.MaybeWhole{Int: 250, Set: true}, true, scenario.Date{Year: 2028, Month: 2, Day: 29}
	s := Stand(&r, nil)
	loaded, toCome := Labels(&r, &s)
	if len(loaded) != 5 || len(toCome) != 16 {
		t.Fatalf("%d loaded, %d to come", len(loaded), len(toCome))
	}
	first, last := loaded[0], toCome[15]
	if first.Exposures != 7 || first.Number != 1 || first.Of != 21 || first.Loaded.Day != 1 || first.Speed.Int != 250 || !first.Remjet || first.UseBy != r.KeepsUntil {
		t.Errorf("first %+v", first)
	}
	// 7600 − 4×380 − 266 = 5814 mm: 15 rolls of 10 and one of 3.
	if last.Number != 21 || last.Exposures != 3 || last.Loaded != (scenario.Date{}) {
		t.Errorf("last %+v", last)
	}
}

func TestLogLeavesTheReelAlone(t *testing.T) {
	r := bought()
	again := bought()
	day := scenario.Date{Year: 2027, Month: 3, Day: 1}
	more := WithCassette(r, january, 10, scenario.MaybeWhole{})
	if len(more.Loads) != 1 || more.Loads[0].Cassettes != 5 {
		t.Errorf("loads %+v", more.Loads)
	}
	if other := WithCassette(r, day, 10, scenario.MaybeWhole{}); len(other.Loads) != 2 {
		t.Errorf("loads %+v", other.Loads)
	}
	if none := WithoutResult(r, 0); none.Results != nil {
		t.Errorf("results %+v", none.Results)
	}
	if r := WithoutRecount(WithRecount(r, scenario.Recount{Date: day}), 0); r.Recounts != nil {
		t.Errorf("recounts %+v", r.Recounts)
	}
	if !reflect.DeepEqual(r, again) {
		t.Error("the reel itself was changed")
	}
}

// BenchmarkStandReels computes where 500 reels with 500 loads each stand.
func BenchmarkStandReels(b *testing.B) {
	list := make([]scenario.InHand, scenario.MaxReels)
	for i := range list {
		r := scenario.InHand{Name: "one", Reel: metres("1000", 36)}
		r.CounterMM = scenario.Maybe{Decimal: decimal.New(38, 0), Set: true}
		for j := range scenario.MaxRows {
			r.Loads = append(r.Loads, scenario.Load{Date: january, Cassettes: 1, Exposures: 12 + j%25})
		}
		list[i] = r
	}
	for b.Loop() {
		for i := range list {
			if s := Stand(&list[i], nil); s.Fault != nil || s.Loaded != scenario.MaxRows {
				b.Fatal(s)
			}
		}
	}
}
