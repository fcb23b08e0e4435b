package main

import (
	"time"

	"github.com/shopspring/decimal"

	"reelworth/internal/desk"
	"reelworth/internal/desk/inhand"
	"reelworth/internal/desk/stock"
	"reelworth/internal/scenario"
)

// reels are the states of reels in hand.
var reels = []shot{
	{"reel", 1280, 800, reel(0, stock.Log)},
	{"reel-new", 1280, 800, func(h *desk.Harness) { h.PutInHand(2) }},
	{"reel-long", 1024, 700, reel(2, stock.Log)},
	{"reel-warned", 1280, 800, func(h *desk.Harness) { h.Put(overdrawn()); h.Reel(1, stock.Log) }},
	{"reel-said", 1280, 800, func(h *desk.Harness) { reel(0, stock.Log)(h); h.Announce("Written to plans.pdf") }},
	{"reel-largest", 1024, 700, atLargest(reel(0, stock.Log))},
	{"reel-form-largest", 1024, 700, func(h *desk.Harness) {
		atLargest(reel(0, stock.Log))(h)
		h.Type("reel[1].keeps_until", "next spring")
		h.LookAtForm()
	}},
	{"reel-entry", 1280, 800, func(h *desk.Harness) { reel(0, stock.Log)(h); h.OpenEntry(3) }},
	{"reel-entry-wrong", 1280, 800, func(h *desk.Harness) {
		reel(0, stock.Log)(h)
		h.Enter(inhand.Loaded)
		fill(h, "Cassettes", "99")
		reply(h, "Add")
	}},
	{"reel-entry-largest", 1024, 700, func(h *desk.Harness) {
		atLargest(reel(0, stock.Log))(h)
		h.Enter(inhand.Developed)
		fill(h, "Developed on", "the day before yesterday")
		reply(h, "Add")
	}},
	{"reel-cut", 1280, 800, func(h *desk.Harness) { reel(0, stock.Cut)(h); h.Wish("3", "24"); h.Wish("1x", "12") }},
	{"reel-cut-small", 1024, 700, func(h *desk.Harness) { reel(0, stock.Cut)(h); h.Wish("3", "24"); h.Wish("1x", "12") }},
	{"reel-cut-largest", 1024, 700, func(h *desk.Harness) { atLargest(reel(0, stock.Cut))(h); h.Wish("3", "24"); h.Wish("1x", "12") }},
	{"reel-missing", 1280, 800, func(h *desk.Harness) { reel(0, stock.Cut)(h); h.Wish("40", "24") }},
	{"reel-thought", 1280, 800, func(h *desk.Harness) { h.PlanCut(2); h.Wish("6", "12") }},
	{"reel-counter", 1280, 800, func(h *desk.Harness) { reel(1, stock.Log)(h); h.MeasureCounter() }},
	{"reel-counter-wrong", 1024, 700, func(h *desk.Harness) {
		atLargest(reel(1, stock.Log))(h)
		h.MeasureCounter()
		fill(h, "Counts", "10")
		fill(h, "Length", "1100")
		fill(h, "of another", "20")
		fill(h, "its length", "1900")
	}},
	{"reel-stand", 1280, 800, func(h *desk.Harness) { reel(0, stock.Cut)(h); h.Wish("3", "24"); h.Stand() }},
	{"reel-stand-largest", 1024, 700, func(h *desk.Harness) { atLargest(reel(0, stock.Cut))(h); h.Wish("3", "24"); h.Stand() }},
	{"reel-labels", 1280, 1400, reel(0, stock.Labels)},
	{"reel-labels-small", 1024, 700, reel(0, stock.Labels)},
	{"reel-labels-largest", 1024, 700, atLargest(reel(0, stock.Labels))},
	{"reel-labels-none", 1280, 800, reel(1, stock.Labels)},
	{"reel-account", 1280, 800, reel(0, stock.Account)},
	{"reel-account-largest", 1024, 700, atLargest(reel(0, stock.Account))},
	{"reel-account-none", 1280, 800, reel(2, stock.Account)},
}

// reel looks at a page of one of the reels on the shelf.
func reel(i int, page stock.Page) func(*desk.Harness) {
	return func(h *desk.Harness) {
		h.Put(desk.Shelf())
		h.Reel(i, page)
	}
}

// atLargest is a state with the largest text, the answer or what stands in its place in
// sight.
func atLargest(arrange func(*desk.Harness)) func(*desk.Harness) {
	return func(h *desk.Harness) {
		h.LargestText()
		arrange(h)
		h.LookAtAnswer()
	}
}

// overdrawn is the shelf with a reel of which more was loaded since a recount than it left.
func overdrawn() scenario.File {
	f := desk.Shelf()
	day := scenario.Date{Year: 2026, Month: time.November, Day: 3}
	f.Reels[1].Recounts = []scenario.Recount{{Date: day, LeftMM: decimal.NewFromInt(900)}}
	f.Reels[1].Loads = []scenario.Load{{Date: day.AddDays(1), Cassettes: 1, Exposures: 36}}
	return f
}
