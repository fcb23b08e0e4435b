package film

import (
	"slices"

	"reelworth/internal/exact"
)

// InHand is a reel that is being used up: how it is cut, the loader's counter, and what
// was done with it. Loads and recounts are in the order they were written down.
type InHand struct {
	Reel
	Counter      Counter
	SessionWaste exact.Fraction // mm, lost on each day of loading
	Loads        []Load
	Recounts     []Recount
}

// Load is a number of cassettes loaded on one day.
type Load struct {
	Day       int // counts up from any day
	Cassettes int
	Exposures int   // of each
	Counts    int64 // what the counter showed
	Counted   bool  // Counts says something
}

// Recount is what was measured to be left on the reel. It stands for the computed rest
// from its day on; loads of that day count as before it.
type Recount struct {
	Day  int
	Left exact.Fraction // mm, the end waste included; 0 is empty, lost or given away
}

// RollLength is what a cassette of some exposures needs, in mm.
func (r Reel) RollLength(exposures int) exact.Fraction {
	return r.Ends().Add(exact.Int(int64(exposures)).Mul(r.Frame()))
}

// Wound is what a cassette of some exposures takes from the reel: the roll's length, or
// what the least counts that reach it wind.
func (h InHand) Wound(exposures int) exact.Fraction {
	roll := h.RollLength(exposures)
	if n, ok := h.Counter.Counts(roll); ok {
		return h.Counter.Wound(n)
	}
	return roll
}

// took is what one cassette of a load took: by its counts where there is a counter, also
// where somebody wound less than the roll needs.
func (h InHand) took(l Load) exact.Fraction {
	if h.Counter.IsSet() && l.Counted {
		return h.Counter.Wound(l.Counts)
	}
	return h.Wound(l.Exposures)
}

// Begun is what the reel loses before the first cassette: start waste and test exposures.
func (r Reel) Begun() exact.Fraction {
	return r.StartWaste.Add(exact.Int(int64(r.TestExposures)).Mul(r.Frame()))
}

// Remaining is where a reel's film is, in mm. Used, Left and what is wasted besides make
// up its length.
type Remaining struct {
	Used exact.Fraction
	Left exact.Fraction // for cassettes: beyond the end waste
	// Short is by how much the loads went into the end waste, or beyond what the latest
	// recount left; 0 where they did not. Left is 0 then.
	Short exact.Fraction
	// Recounted says that Short, and Left, are by a recount.
	Recounted bool
}

// Overdrawn is the error of a reel whose loads took more than there is.
type Overdrawn struct {
	Load int            // index of the first load, by date, that goes beyond the reel
	By   exact.Fraction // mm
}

func (e *Overdrawn) Error() string {
	return "the loads took " + e.By.Text(2) + " mm more than the reel has"
}

// WasteExceeds is the error of a reel that is shorter than what it loses once.
type WasteExceeds struct{ By exact.Fraction } // mm

func (e *WasteExceeds) Error() string {
	return "the reel is " + e.By.Text(2) + " mm shorter than its wastes"
}

// RecountExceeds is the error of a recount that is longer than the reel.
type RecountExceeds struct {
	Recount int            // index
	By      exact.Fraction // mm
}

func (e *RecountExceeds) Error() string {
	return "the recount is " + e.By.Text(2) + " mm longer than the reel"
}

// Remaining computes what is used and what is left. The error is a *WasteExceeds,
// *RecountExceeds or *Overdrawn.
func (h InHand) Remaining() (Remaining, error) {
	if over := h.Begun().Add(h.EndWaste).Sub(h.Length); over.Sign() > 0 {
		return Remaining{}, &WasteExceeds{over}
	}
	for i, r := range h.Recounts {
		if over := r.Left.Sub(h.Length); over.Sign() > 0 {
			return Remaining{}, &RecountExceeds{i, over}
		}
	}
	if len(h.Recounts) > 0 {
		return h.sinceRecount(), nil
	}
	if len(h.Loads) == 0 {
		return Remaining{Left: h.Length.Sub(h.Begun()).Sub(h.EndWaste)}, nil
	}
	used, beyond := h.drawn(h.Begun(), 0, h.Length)
	if beyond != nil {
		return Remaining{}, beyond
	}
	return remaining(used, h.Length.Sub(used).Sub(h.EndWaste)), nil
}

// remaining is left mm, or 0 and what is short of it.
func remaining(used, left exact.Fraction) Remaining {
	if left.Sign() < 0 {
		return Remaining{Used: used, Short: left.Neg()}
	}
	return Remaining{Used: used, Left: left}
}

// sinceRecount goes by the latest recount, and the loads after its day.
func (h InHand) sinceRecount() Remaining {
	latest := h.Recounts[0]
	for _, r := range h.Recounts {
		if r.Day >= latest.Day {
			latest = r
		}
	}
	taken, _ := h.drawn(exact.Fraction{}, latest.Day+1, exact.Fraction{})
	r := remaining(exact.Fraction{}, latest.Left.Sub(h.EndWaste).Sub(taken))
	if taken.IsZero() {
		r.Short = exact.Fraction{} // measured: nothing was miscounted
	}
	r.Used = h.Length.Sub(h.EndWaste).Sub(r.Left)
	r.Recounted = true
	return r
}

// drawn adds to used what the loads from a day on took, each day's waste with its first
// load. It says which load, by date, first goes beyond limit.
func (h InHand) drawn(used exact.Fraction, from int, limit exact.Fraction) (exact.Fraction, *Overdrawn) {
	order := make([]int, 0, len(h.Loads))
	for i, l := range h.Loads {
		if l.Day >= from {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return h.Loads[a].Day - h.Loads[b].Day })
	var beyond *Overdrawn
	wound := map[Load]exact.Fraction{} // by all but the day
	for at, i := range order {
		l := h.Loads[i]
		if at == 0 || h.Loads[order[at-1]].Day != l.Day {
			used = used.Add(h.SessionWaste)
		}
		kind := Load{Exposures: l.Exposures, Counts: l.Counts, Counted: l.Counted}
		each, known := wound[kind]
		if !known {
			each = h.took(l)
			wound[kind] = each
		}
		used = used.Add(each.Mul(exact.Int(int64(l.Cassettes))))
		if over := used.Sub(limit); beyond == nil && over.Sign() > 0 {
			beyond = &Overdrawn{i, over}
		}
	}
	return used, beyond
}
