package scenario

import (
	"slices"
	"strconv"
	"strings"

	"reelworth/internal/tomltext"
)

// maxFaults is how many faults are kept. A file with more is unusable as a whole.
const maxFaults = 5000

// tally keeps the faults found, and counts those beyond what is kept.
type tally struct {
	kept []Fault
	all  int
}

func (t *tally) add(f Fault) {
	if t.all++; len(t.kept) <= maxFaults {
		t.kept = append(t.kept, f)
	}
}

// step is one part of a key's path: a key, and the element where it is an array's
// (−1 where not).
type step struct {
	key  string
	item int
}

func key(k string) step              { return step{k, -1} }
func element(k string, i int) step   { return step{k, i} }
func sub(p []step, s ...step) []step { return append(slices.Clip(p), s...) }

func pathText(p []step) string {
	var b strings.Builder
	for i, s := range p {
		if i > 0 {
			b.WriteByte('.')
		}
		b.WriteString(s.key)
		if s.item >= 0 {
			b.WriteString("[" + strconv.Itoa(s.item+1) + "]")
		}
	}
	return b.String()
}

// find is the node at the end of a path, or the last one on the way that is there:
// for a missing key, its table.
func find(n *tomltext.Node, p []step) *tomltext.Node {
	for _, s := range p {
		next := n.Child(s.key)
		if next != nil && s.item >= 0 {
			next = next.Item(s.item)
		}
		if next == nil {
			return n
		}
		n = next
	}
	return n
}

// reporter gathers the faults of one scenario, or those outside of all.
type reporter struct {
	faults   *tally
	where    *tomltext.Node // of the scenario's table; nil when there is no file
	scenario int            // −1 outside of all
	several  bool           // the file holds several scenarios
	name     string         // of the scenario where it does
	bad      map[string]bool
}

// fault reports what is wrong with a key. A key has one fault at most: the first.
func (r *reporter) fault(p []step, code Code, args Args) {
	text := pathText(p)
	if r.bad[text] {
		return
	}
	if r.bad == nil {
		r.bad = map[string]bool{}
	}
	r.bad[text] = true
	f := Fault{Code: code, Path: text, Place: r.place(p), Several: r.several, Scenario: r.name, Args: args}
	if n := find(r.where, p); n != nil {
		f.Line = n.Line
	}
	r.faults.add(f)
}

// has says whether a key has a fault already.
func (r *reporter) has(p []step) bool { return len(r.bad) > 0 && r.bad[pathText(p)] }

// isBad says whether a key, or something in it, has a fault already.
func (r *reporter) isBad(p []step) bool {
	if len(r.bad) == 0 {
		return false
	}
	text := pathText(p)
	for b := range r.bad {
		if rest, ok := strings.CutPrefix(b, text); ok && (rest == "" || rest[0] == '.' || rest[0] == '[') {
			return true
		}
	}
	return false
}

// place is how much a fault at a path spoils.
func (r *reporter) place(p []step) Place {
	if r.scenario < 0 {
		if len(p) > 0 && p[0].key == reelKey && p[0].item >= 0 && p[0].item < MaxReels {
			return Place{PartInHand, -1, p[0].item}
		}
		return Place{PartFile, -1, 0}
	}
	at := Place{PartWhole, r.scenario, 0}
	if len(p) == 0 {
		return at
	}
	switch p[0].key {
	case "baseline":
		at.Part = PartBaseline
	case "loading":
		at.Part = PartLoading
	}
	if p[0].item < 0 {
		return at
	}
	switch item := p[0].item; {
	case p[0].key == "rate" && item < MaxRates:
		return Place{PartRate, r.scenario, item}
	case p[0].key == "offer" && item < MaxOffers:
		return Place{PartOffer, r.scenario, item}
	case p[0].key == "range" && item < MaxRanges:
		return Place{PartRange, r.scenario, item}
	case p[0].key == "developing":
		return Place{PartDeveloping, r.scenario, item}
	}
	return at // too many of them is a fault of the whole
}

// inOrder puts the faults in the order of the file. Of a flood those kept are followed
// by one that counts all.
func (t *tally) inOrder() []Fault {
	faults := t.kept
	slices.SortStableFunc(faults, func(a, b Fault) int { return a.Line - b.Line })
	if len(faults) > maxFaults {
		last := faults[maxFaults]
		faults = append(faults[:maxFaults], *fileFault(last.Line, MoreFaults, Args{Have: t.all, Most: maxFaults}))
	}
	return faults
}
