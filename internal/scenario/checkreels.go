package scenario

import (
	"errors"
	"reflect"

	"reelworth/internal/film"
	"reelworth/internal/tomltext"
)

// reelKey is the key of the reels in hand, in the file and in a fault's path.
const reelKey = "reel"

func readReels(v any, root *tomltext.Node, top *reporter) []InHand {
	if v == nil {
		return nil
	}
	at := key(reelKey)
	list, ok := asTables(v)
	if !ok {
		top.fault([]step{at}, NotTables, Args{Example: "[[reel]]"})
		return nil
	}
	if len(list) > MaxReels {
		top.fault([]step{element(reelKey, MaxReels)}, TooMany, Args{Have: len(list), Most: MaxReels})
		list = list[:MaxReels]
	}
	nodes, typ := root.Child(reelKey), tableOf(reflect.TypeFor[InHand]())
	out := make([]InHand, len(list))
	for i, m := range list {
		r := reader{reporter: top, path: []step{element(reelKey, i)}}
		r.table(typ, reflect.ValueOf(&out[i]).Elem(), m, nodes.Item(i))
	}
	checkReels(out, top)
	return out
}

// CheckReels reports what is wrong with reels in hand that did not come from a file, by
// the same rules. Lines are 0.
func CheckReels(list []InHand) []Fault {
	var faults tally
	checkReels(list, &reporter{faults: &faults, scenario: -1})
	return faults.inOrder()
}

// FaultsOfReel are those among faults of the reel in hand at place i.
func FaultsOfReel(faults []Fault, i int) (list []Fault) {
	for _, f := range faults {
		if f.Place.Part == PartInHand && f.Place.Index == i {
			list = append(list, f)
		}
	}
	return list
}

func checkReels(list []InHand, r *reporter) {
	typ := tableOf(reflect.TypeFor[InHand]())
	first := make(map[string]int, len(list))
	for i := range list {
		in, at := &list[i], []step{element(reelKey, i)}
		c := checker{reporter: r, path: at}
		c.table(typ, reflect.ValueOf(in).Elem())
		if j, taken := first[in.Name]; taken && in.Name != "" {
			r.fault(sub(at, key("name")), NameTaken, Args{Got: in.Name, Table: reelKey, Other: j + 1})
		} else {
			first[in.Name] = i
		}
		if in.Paid.Sign() > 0 && in.Currency == "" {
			r.fault(sub(at, key("currency")), Missing, Args{Example: `currency = "EUR"`})
		}
		checkResults(in, at, r)
		if !r.isBad(at) {
			checkFilm(in, at, r)
		}
	}
}

// mostBeyond is how many good exposures more than loaded a cassette can have: the film
// before the first and after the last.
const mostBeyond = 3

// checkResults holds what was developed to what was loaded, for each length of cassettes.
func checkResults(in *InHand, at []step, r *reporter) {
	if len(in.Results) == 0 {
		return
	}
	loaded := map[int]int{}
	for _, l := range in.Loads {
		loaded[l.Exposures] += l.Cassettes
	}
	developed := map[int]int{}
	for i, x := range in.Results {
		row := element("result", i)
		if most := x.Cassettes * (x.Exposures + mostBeyond); x.Good > most {
			r.fault(sub(at, row, key("good")), TooGood, Args{Have: x.Good, Most: most})
		}
		before := developed[x.Exposures]
		developed[x.Exposures] += x.Cassettes
		if have, most := developed[x.Exposures], loaded[x.Exposures]; have > most && before <= most {
			r.fault(sub(at, row, key("cassettes")), NotLoaded, Args{Have: have, Most: most, Other: x.Exposures})
		}
	}
}

// checkFilm holds the log to the film there is.
func checkFilm(in *InHand, at []step, r *reporter) {
	h := in.Film()
	if h.Counter.IsSet() && h.Counter.Wound(film.MaxCounts).Less(h.RollLength(100)) {
		r.fault(sub(at, key("counter_mm")), CounterTooFine, Args{Most: film.MaxCounts})
		return
	}
	_, err := h.Remaining()
	var wastes *film.WasteExceeds
	var recount *film.RecountExceeds
	var loads *film.Overdrawn
	switch {
	case errors.As(err, &wastes):
		r.fault(sub(at, key("length")), WastesBeyond, Args{Missing: wastes.By})
	case errors.As(err, &recount):
		r.fault(sub(at, element("recount", recount.Recount), key("left_mm")), RecountBeyond, Args{Missing: recount.By})
	case errors.As(err, &loads):
		r.fault(sub(at, element("load", loads.Load)), LoadsBeyond, Args{Missing: loads.By})
	}
}
