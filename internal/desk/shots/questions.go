package main

import (
	"os"
	"path/filepath"

	"reelworth/internal/desk"
	"reelworth/internal/desk/pages"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// questions are what the window asks, and how it tells.
var questions = []shot{
	{"day-rates", 1280, 800, func(h *desk.Harness) { h.Topic("rates", 2); past(300)(h); h.AskRates(false) }},
	{"day-rates-wrong", 1280, 800, func(h *desk.Harness) {
		h.Topic("rates", 2)
		past(300)(h)
		h.AskRates(false)
		fill(h, words.DayRatesDay, "2026-11-22")
	}},
	{"day-rates-none", 1280, 800, func(h *desk.Harness) { h.Topic("rates", 2); h.AskRates(false) }},
	{"statement", 1280, 800, statement("", "")},
	{"statement-worked", 1280, 800, statement("118.00", "107")},
	{"statement-less", 1280, 800, statement("118.00", "90")},
	{"statement-largest", 1024, 700, func(h *desk.Harness) { h.LargestText(); statement("118.00", "107")(h) }},
	{"deal", 1280, 800, func(h *desk.Harness) { h.Deal("7.40") }},
	{"deal-reel", 1280, 800, func(h *desk.Harness) { h.Deal("90"); choose(h, words.DealKind, string(scenario.KindReel)) }},
	{"deal-wrong", 1280, 800, func(h *desk.Harness) { h.Deal("7.40"); fill(h, words.DealRolls, "1.5"); fill(h, words.DealBad, "140") }},
	{"deal-largest", 1024, 700, func(h *desk.Harness) {
		h.LargestText()
		h.Put(desk.Crowd())
		h.Deal("74.00")
		fill(h, words.DealRolls, "10")
		fill(h, words.DealBad, "3 of 10")
	}},
	{"deal-wrong-largest", 1024, 700, func(h *desk.Harness) {
		h.LargestText()
		h.Deal("7..40")
		fill(h, words.DealRolls, "1.5")
		fill(h, words.DealBad, "three of them")
	}},
	{"export", 1280, 800, func(h *desk.Harness) { h.Export() }},
	{"export-largest", 1024, 700, func(h *desk.Harness) {
		h.LargestText()
		h.Export()
		fill(h, words.FieldFile, "/no/such/folder/costs.png")
		reply(h, words.Export)
	}},
	{"seen-question", 1280, 800, func(h *desk.Harness) { h.Put(seen()); h.Topic("offer", 2); h.AskSeen(2) }},
	{"range-question", 1280, 800, func(h *desk.Harness) { h.Page(pages.Changes); h.AskRange() }},
	{"show-in-question", 1280, 800, func(h *desk.Harness) { command(h, words.MenuShowIn) }},
	{"unsaved", 1280, 800, func(h *desk.Harness) { h.Type("offer[3].price", "120"); command(h, words.MenuQuit) }},
	{"keys", 1280, 800, func(h *desk.Harness) { command(h, words.MenuKeys) }},
	{"keys-largest", 1024, 700, func(h *desk.Harness) { h.LargestText(); command(h, words.MenuKeys) }},
	{"faulty", 1280, 800, opened("schema = 5\n\n[[scenario]]\nname = \"Year\"\nhome = \"EUR\"\n\n  [[scenario.offer]]\n  kind = \"reel\"\n  name = \"A reel\"\n  currency = \"USD\"\n  price = \"-4\"\n")},
	{"torn", 1280, 800, opened("schema = 5\n[[scenario]\nname = \"Torn\"\n")},
}

// statement asks for a purchase, with the amounts typed.
func statement(asked, took string) func(*desk.Harness) {
	return func(h *desk.Harness) {
		h.Topic("rates", 2)
		past(300)(h)
		h.AskRates(true)
		fill(h, words.StatementAsked, asked)
		fill(h, words.StatementTook, took)
	}
}

// opened opens a file with such a text.
func opened(text string) func(*desk.Harness) {
	return func(h *desk.Harness) {
		dir, err := os.MkdirTemp("", "opened")
		if err != nil {
			panic(err)
		}
		defer os.RemoveAll(dir)
		path := filepath.Join(dir, "year.toml")
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			panic(err)
		}
		h.Open(path)
		h.Settle()
	}
}
