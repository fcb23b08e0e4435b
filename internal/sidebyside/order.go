package sidebyside

import (
	"cmp"
	"slices"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
)

// Key is what scenarios are put in order by.
type Key int

// The keys.
const (
	ByFile       Key = iota // the order in which they came
	ByName                  // of the scenario, then of its file
	ByReel                  // a roll from the best reel
	ByBoxed                 // a roll from the best boxed offer
	ByPercent               // saved a roll, in percent
	BySaving                // saved in all
	ByMonth                 // from which the reel is ahead
	ByVerdict               // those for the reel first
	ByRollsAYear            // from which the reel is cheaper
)

// Order puts entries in order by a key, or in the opposite one. Amounts are held against
// each other in the common currency; where there is none, those of one home currency
// stand together. Entries that have nothing to go by stay last either way, and equal ones
// as they are.
func Order(list []Entry, by Key, down bool) {
	slices.SortStableFunc(list, func(a, b Entry) int {
		x, y := placeOf(&a, by), placeOf(&b, by)
		switch {
		case !x.known || !y.known:
			return unknownLast(x.known, y.known)
		case down:
			x, y = y, x
		}
		return cmp.Or(strings.Compare(x.text, y.text), x.amount.Cmp(y.amount))
	})
}

// unknownLast holds two entries against each other of which one at least has nothing to
// go by.
func unknownLast(a, b bool) int {
	switch {
	case a == b:
		return 0
	case a:
		return -1
	}
	return 1
}

// place is what an entry is put in order by: a text, then an amount.
type place struct {
	known  bool
	text   string
	amount exact.Fraction
}

func placeOf(e *Entry, by Key) place {
	switch by {
	case ByName:
		return place{e.Scenario != "", strings.ToLower(e.Scenario), exact.Fraction{}}
	case ByReel:
		return e.rollPlace(e.Reel())
	case ByBoxed:
		return e.rollPlace(e.Boxed())
	case ByVerdict:
		return e.verdictPlace()
	case ByRollsAYear:
		return e.volumePlace()
	}
	a := e.Against()
	switch {
	case a == nil:
	case by == ByPercent && a.SavingPercent != nil:
		return place{known: true, amount: *a.SavingPercent}
	case by == BySaving:
		return e.amountPlace(a.Saving)
	case by == ByMonth && a.EvenMonth > 0:
		return place{known: true, amount: exact.Int(int64(a.EvenMonth))}
	}
	return place{}
}

func (e *Entry) rollPlace(o *compare.Offer) place {
	if o == nil {
		return place{}
	}
	return e.amountPlace(o.PerRoll.Total)
}

// amountPlace is that of an amount of the home currency.
func (e *Entry) amountPlace(amount exact.Fraction) place {
	if e.Into.Currency == "" {
		return place{true, e.Comparison.Scenario.Home, amount}
	}
	if into := e.Into.Of(amount); into != nil {
		return place{known: true, amount: *into}
	}
	return place{}
}

// verdicts are the kinds of verdict, those for the reel first.
var verdicts = []compare.VerdictKind{
	compare.VerdictReel, compare.VerdictReelIfKept, compare.VerdictClose, compare.VerdictBoxed, compare.VerdictUnlike, compare.VerdictOneSided,
}

func (e *Entry) verdictPlace() place {
	if e.Comparison == nil {
		return place{}
	}
	return place{known: true, amount: exact.Int(int64(slices.Index(verdicts, e.Comparison.Verdict.Kind)))}
}

func (e *Entry) volumePlace() place {
	for _, r := range e.Volumes() {
		if r.Cheaper == compare.CheaperOffer {
			return place{known: true, amount: exact.Int(int64(r.From))}
		}
	}
	return place{}
}
