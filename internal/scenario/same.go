package scenario

import (
	"bytes"
	"reflect"
)

// Same says whether two scenarios are written alike: a file would hold the same of them,
// to the last digit. A zero that was typed is the zero that was not.
func Same(a, b Scenario) bool {
	return SameFile(File{Scenarios: []Scenario{a}}, File{Scenarios: []Scenario{b}})
}

// SameFile is Same for all of a file. What the two share is not looked at.
func SameFile(a, b File) bool {
	if len(a.Scenarios) != len(b.Scenarios) || !sameReels(a.Reels, b.Reels) {
		return false
	}
	for i := range a.Scenarios {
		if s, t := &a.Scenarios[i], &b.Scenarios[i]; !(s == t || s.Name == t.Name && shared(s.Offers, t.Offers)) &&
			!writtenAlike(File{Scenarios: a.Scenarios[i : i+1]}, File{Scenarios: b.Scenarios[i : i+1]}) {
			return false
		}
	}
	return true
}

// sameReels says whether reels in hand are written alike. Of two that share their logs
// nothing is written: there may be hundreds.
func sameReels(a, b []InHand) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if !reflect.DeepEqual(&a[i], &b[i]) && !writtenAlike(File{Reels: a[i : i+1]}, File{Reels: b[i : i+1]}) {
			return false
		}
	}
	return true
}

func writtenAlike(a, b File) bool { return bytes.Equal(Write(a), Write(b)) }

// shared says whether two lists are one: scenarios are changed in clones only, which have
// lists of their own.
func shared[T any](a, b []T) bool {
	return len(a) == len(b) && len(a) > 0 && &a[0] == &b[0]
}

// Follow lets the ranges of next go along with what changed since before: of an offer or a
// rate that was there and is no more, they go.
func Follow(before, next *Scenario) {
	if len(next.Ranges) == 0 {
		return
	}
	inputs, now := map[Input]bool{}, map[Input]bool{}
	for _, i := range before.Inputs() {
		inputs[i] = true
	}
	for _, i := range next.Inputs() {
		now[i] = true
	}
	kept := next.Ranges[:0]
	for _, r := range next.Ranges {
		lostRate := inputs[r.Input] && !now[r.Input]
		lostOffer := r.Offer != "" && hasOffer(before, r.Offer) && !hasOffer(next, r.Offer)
		if !lostRate && !lostOffer {
			kept = append(kept, r)
		}
	}
	next.Ranges = kept
}
