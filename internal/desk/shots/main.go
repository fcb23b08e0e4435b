// Command shots writes pictures of the window, in both themes and several states, into
// a folder. It draws in memory: build it with the tag ci.
package main

import (
	"fmt"
	"image/png"
	"os"
	"path/filepath"
	"slices"

	"reelworth/internal/desk"
	"reelworth/internal/desk/pages"
	"reelworth/internal/words"
)

// shot is one picture: how to get there from the demo.
type shot struct {
	name          string
	width, height float32
	arrange       func(h *desk.Harness)
}

var shots = []shot{
	{"charts", 1280, 800, func(h *desk.Harness) { h.Type("offer[3].shipping", "34.50") }},
	{"receipt", 1280, 800, func(h *desk.Harness) { h.Page(pages.Receipt) }},
	{"changes", 1280, 800, func(h *desk.Harness) { h.Page(pages.Changes) }},
	{"changes-tall", 1440, 1400, func(h *desk.Harness) { h.Page(pages.Changes) }},
	{"sizes", 1280, 800, func(h *desk.Harness) { h.Page(pages.Sizes) }},
	{"past", 1280, 800, past(6900)},
	{"past-tall", 1440, 1400, past(6900)},
	{"past-one-day", 1280, 800, past(1)},
	{"past-none", 1280, 800, func(h *desk.Harness) { h.Page(pages.Past) }},
	{"past-wrong", 1280, 800, func(h *desk.Harness) {
		past(300)(h)
		h.Rates("/nowhere/rates.csv")
	}},
	{"seen", 1280, 800, func(h *desk.Harness) {
		h.Put(seen())
		h.Topic("offer", 2)
		h.Page(pages.Receipt)
	}},
	{"shown-in", 1280, 800, func(h *desk.Harness) { h.ShowIn("USD") }},
	{"shown-in-receipt", 1280, 800, func(h *desk.Harness) { h.ShowIn("USD"); h.Page(pages.Receipt) }},
	{"shown-in-no-rate", 1280, 800, func(h *desk.Harness) { h.ShowIn("AUD") }},
	{"beside", 1280, 800, beside("")},
	{"beside-common", 1280, 800, beside("AUD")},
	{"beside-alone", 1280, 800, func(h *desk.Harness) { h.Beside("") }},
	{"beside-narrow", 1024, 700, beside("AUD")},
	{"help-model", 1280, 800, func(h *desk.Harness) { h.Help(words.MenuModel) }},
	{"help-words", 1280, 800, func(h *desk.Harness) { h.Help(words.MenuWords); h.ReadOn(11) }},
	{"help-words-large", 1280, 800, func(h *desk.Harness) { h.LargestText(); h.Help(words.MenuWords); h.ReadOn(13) }},
	{"help-files", 1280, 800, func(h *desk.Harness) { h.Help(words.MenuFilesHelp) }},
	{"beside-largest", 1024, 700, func(h *desk.Harness) { h.LargestText(); beside("AUD")(h) }},
	{"tour-ways", 1280, 800, func(h *desk.Harness) { h.Tour(1) }},
	{"tour-price", 1280, 800, func(h *desk.Harness) { h.Tour(2) }},
	{"tour-receipt", 1280, 800, func(h *desk.Harness) { h.Tour(3) }},
	{"tour-answer", 1280, 800, func(h *desk.Harness) { h.Tour(4) }},
	{"tour-changes", 1280, 800, func(h *desk.Harness) { h.Tour(5) }},
	{"tour-handing", 1280, 800, func(h *desk.Harness) { h.Tour(6) }},
	{"tour-narrow", 1024, 700, func(h *desk.Harness) { h.LargestText(); h.Put(desk.Crowd()); h.Tour(3) }},
	{"tables", 1280, 800, func(h *desk.Harness) { h.Page(pages.Tables) }},
	{"notes", 1280, 800, func(h *desk.Harness) { h.Page(pages.Notes) }},
	{"boxed", 1280, 800, func(h *desk.Harness) { h.Topic("offer", 1) }},
	{"shooting", 1280, 800, func(h *desk.Harness) { h.Topic("shooting", 2) }},
	{"loading", 1280, 800, func(h *desk.Harness) { h.Topic("loading", 2) }},
	{"developing", 1280, 800, func(h *desk.Harness) { h.Topic("developing", 2) }},
	{"border", 1280, 800, func(h *desk.Harness) { h.Topic("border", 2) }},
	{"rates", 1280, 800, func(h *desk.Harness) { h.Topic("rates", 2) }},
	{"list", 1280, 800, func(h *desk.Harness) { h.OpenList("offer[3].currency", "") }},
	{"list-found", 1280, 800, func(h *desk.Harness) { h.OpenList("offer[3].currency", "sw") }},
	{"list-short", 1280, 800, func(h *desk.Harness) { h.OpenList("offer[3].import", "") }},
	{"new", 1280, 800, func(h *desk.Harness) { h.New() }},
	{"new-answered", 1280, 800, func(h *desk.Harness) {
		h.New()
		h.Pick("home", "AUD")
		h.Type("shooting.rolls_a_month", "2")
		h.Type("offer[1].price", "15.90")
		h.Type("offer[2].price", "USD 110")
		h.Type("rate[1].equals", "1.52")
		h.Type("offer[2].shipping", "28")
	}},
	{"no-rate", 1280, 800, func(h *desk.Harness) { h.Pick("offer[3].currency", "CAD") }},
	{"rates-swap", 1280, 800, func(h *desk.Harness) {
		h.Pick("offer[3].currency", "CAD")
		h.Topic("rates", 2)
		h.Pick("rate[1].one", "EUR")
	}},
	{"fault", 1280, 800, func(h *desk.Harness) {
		h.Type("offer[3].shipping", "34..5")
		h.Type("offer[3].discount_percent", "140")
	}},
	{"fault-largest", 1024, 700, func(h *desk.Harness) {
		h.LargestText()
		h.Type("offer[3].shipping", "34..5")
		h.Type("offer[3].discount_percent", "140")
	}},
	{"small", 1024, 700, func(*desk.Harness) {}},
	{"largest", 1024, 700, func(h *desk.Harness) { h.LargestText() }},
	{"largest-answer", 1024, 700, func(h *desk.Harness) { h.LargestText(); h.Put(desk.Crowd()); h.Page(0) }},
	{"border-sets", 1280, 800, func(h *desk.Harness) { h.Topic("border", 2); h.BorderSets() }},
	{"preview", 1280, 800, func(h *desk.Harness) { h.Preview(0) }},
	{"preview-back", 1280, 800, func(h *desk.Harness) { h.ShowIn("USD"); h.Preview(1) }},
	{"preview-small", 1024, 700, func(h *desk.Harness) { h.LargestText(); h.Put(desk.Crowd()); h.Preview(0) }},
	{"rename", 1280, 800, func(h *desk.Harness) { h.Rename(2, "Marigold 400, shop roll") }},
	{"large", 2560, 1440, func(*desk.Harness) {}},
	{"long-names", 1280, 800, func(h *desk.Harness) { h.Put(desk.Crowd()) }},
	{"long-receipt", 1280, 800, func(h *desk.Harness) { h.Put(desk.Crowd()); h.Page(pages.Receipt) }},
}

func main() {
	if len(os.Args) < 2 {
		fmt.Fprintln(os.Stderr, "usage: shots FOLDER [NAME | NAME-THEME …], or shots --readme")
		os.Exit(2)
	}
	var err error
	if os.Args[1] == "--readme" {
		err = takeReadme("assets")
	} else {
		err = take(os.Args[1], os.Args[2:])
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func take(dir string, only []string) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	for _, theme := range []string{"paper", "safelight"} {
		for _, s := range slices.Concat(shots, reels, questions) {
			if len(only) > 0 && !slices.Contains(only, s.name) && !slices.Contains(only, s.name+"-"+theme) {
				continue
			}
			if err := s.take(filepath.Join(dir, s.name+"-"+theme+".png"), theme); err != nil {
				return err
			}
		}
	}
	return nil
}

func (s shot) take(path, theme string) error {
	img := s.picture(theme)
	f, err := os.Create(path)
	if err != nil {
		return err
	}
	defer f.Close()
	if err := png.Encode(f, img); err != nil {
		return err
	}
	fmt.Println(path)
	return nil
}
