package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"reelworth/internal/paper"
	"reelworth/internal/prints"
	"reelworth/internal/reels"
	"reelworth/internal/version"
	"reelworth/internal/words"
)

// grids are the sheets of labels by what a call names them.
var grids = func() map[string]paper.Grid {
	all := paper.Grids()
	return map[string]paper.Grid{"a4": all[0], "letter": all[1], "plain": all[2]}
}()

func labelsCommand() command {
	reel := reelFlag
	reel.required = true
	return command{
		name:  "labels",
		short: "print labels for the cassettes of a reel",
		long: "Print labels for the cassettes of a reel in hand: those that are loaded or, while none is, those that\n" +
			"the reel gives. --numbers picks some by their running number; one alone may be a .png.\n" +
			"The sheet has a line of 100 mm: measure it, since printers scale.",
		flags: []flagSpec{
			reel,
			{name: "out", value: "FILE.pdf|FILE.png", help: "the file to write", required: true, set: outEnding(".pdf", ".png")},
			forceFlag,
			{name: "numbers", value: "N|N-M", help: "only the cassettes of these numbers", set: setNumbers},
			{name: "sheet", value: "a4|letter|plain", help: "3 × 8 labels on A4, 3 × 10 on Letter, plain A4 to cut", first: "a4",
				set: oneOf("sheet", []string{"a4", "letter", "plain"}, func(c *call) *string { return &c.loader.sheet })},
			{name: "first-free", value: "N", help: "the first label of the sheet that is still free", first: "1", set: setFirstFree},
		},
		do: doLabels,
	}
}

func setNumbers(c *call, value string) error {
	from, to, two := strings.Cut(value, "-")
	if !two {
		to = from
	}
	a, err := strconv.Atoi(from)
	b, wrong := strconv.Atoi(to)
	if err != nil || wrong != nil || a < 1 || b < a {
		return fmt.Errorf("--numbers takes a number like 7 or numbers like 7-12, not %q", value)
	}
	c.loader.numbers = span{a, b}
	return nil
}

func setFirstFree(c *call, value string) error {
	n, err := strconv.Atoi(value)
	if err != nil || n < 1 {
		return fmt.Errorf("--first-free takes a number from 1, not %q", value)
	}
	c.loader.firstFree = n
	return nil
}

func doLabels(c call, s stage) int {
	src, err := open(c, s)
	if err != nil {
		s.complain("%v", err)
		return statusInput
	}
	r, standing, status := src.reelInHand(c, s)
	if status != statusFine {
		return status
	}
	loaded, toCome := reels.Labels(r, &standing)
	list := picked(loaded, toCome, c.loader.numbers)
	if len(list) == 0 {
		s.complain("reelworth-cli: %q has no cassette to label there", r.Name)
		return statusInput
	}
	if strings.EqualFold(filepath.Ext(c.out), ".png") {
		return labelPicture(c, s, list)
	}
	pages, fault := prints.Labels(list, grids[c.loader.sheet], c.loader.firstFree)
	if fault != paper.GridFine {
		return commands["labels"].refuse(s, errors.New(words.GridWrong(fault)))
	}
	return printed(c, s, pages, words.LabelsTitle(r.Name), prints.Lacking(list))
}

// picked are the labels of some numbers; of all, those that are loaded go first.
func picked(loaded, toCome []reels.Label, numbers span) []reels.Label {
	if numbers == (span{}) {
		if len(loaded) > 0 {
			return loaded
		}
		return toCome
	}
	var list []reels.Label
	for _, l := range append(loaded, toCome...) {
		if l.Number >= numbers.from && l.Number <= numbers.to {
			list = append(list, l)
		}
	}
	return list
}

// labelDots is how fine a single label is drawn, in dots per inch.
const labelDots = 300

func labelPicture(c call, s stage, list []reels.Label) int {
	if len(list) != 1 {
		return commands["labels"].refuse(s, fmt.Errorf("a .png holds one label, not %d; pick one with --numbers", len(list)))
	}
	page := prints.Label(list[0], grids[c.loader.sheet].Label())
	return wrote(c, s, func(w io.Writer) error { return page.WritePNG(w, labelDots) }, prints.Lacking(list))
}

// printed writes pages as the PDF a call names.
func printed(c call, s stage, pages []*paper.Page, title string, lacking []rune) int {
	about := paper.About{Title: title, Program: "Reelworth " + version.String(), Made: time.Date(c.today.Year, c.today.Month, c.today.Day, 0, 0, 0, 0, time.UTC)}
	return wrote(c, s, func(w io.Writer) error { return paper.WritePDF(w, about, pages) }, lacking)
}

// wrote writes the file a call names, and warns of letters that are boxes in it.
func wrote(c call, s stage, draw func(io.Writer) error, lacking []rune) int {
	if status := writeWhole(c, s, draw); status != statusFine {
		return status
	}
	if text := words.LettersLacking(lacking); text != "" {
		s.complain("%s: %s", c.out, text)
	}
	return statusFine
}
