package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strconv"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// source is a scenario file that was read.
type source struct {
	name string // as faults call it
	scenario.Reading
}

// open reads the file of a call, or standard input.
func open(c call, s stage) (source, error) {
	src := source{name: c.file}
	in := s.in
	if c.file == "-" {
		src.name = "standard input"
	} else {
		f, err := os.Open(c.file)
		if err != nil {
			return src, unreadable(c.file, err)
		}
		defer f.Close()
		if info, err := f.Stat(); err == nil {
			if info.IsDir() {
				return src, fmt.Errorf("%s: is a folder; name a scenario file in it", c.file)
			}
			if info.Size() > scenario.MaxBytes {
				return src, tooLarge(c.file)
			}
		}
		in = f
	}
	// One byte more than is allowed tells a file that is too large, also where its size
	// is not known beforehand.
	data, err := io.ReadAll(io.LimitReader(in, scenario.MaxBytes+1))
	if err != nil {
		return src, unreadable(src.name, err)
	}
	if len(data) > scenario.MaxBytes {
		return src, tooLarge(src.name)
	}
	src.Reading = scenario.Inspect(data)
	return src, nil
}

func tooLarge(name string) error {
	return fmt.Errorf("%s: is larger than %d MiB and was not read; split it into several files", name, scenario.MaxBytes>>20)
}

func unreadable(name string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("%s: there is no such file; check its name and folder", name)
	case errors.Is(err, fs.ErrPermission):
		return fmt.Errorf("%s: may not be read; change its permissions or name another", name)
	}
	var path *fs.PathError
	if errors.As(err, &path) {
		err = path.Err
	}
	return fmt.Errorf("%s: could not be read (%v); check the file", name, err)
}

// faultsOf are the faults that matter to the scenario at place i: its own and those of
// the whole file.
func (src source) faultsOf(i int) (list []scenario.Fault) {
	for _, f := range src.Faults {
		if f.Place.Scenario == i || f.Place.Scenario < 0 && f.Place.Part != scenario.PartInHand {
			list = append(list, f)
		}
	}
	return list
}

// report prints the notices and the faults that matter to the scenarios at the places
// given, and returns the status they make. Without places all are printed.
func (src source) report(s stage, places []int) int {
	wanted := map[int]bool{}
	for _, i := range places {
		wanted[i] = true
	}
	for _, n := range src.Notices {
		if i := n.Scenario; len(places) == 0 || i < 0 || wanted[i] {
			s.complain("%s", words.NoticeLine(src.name, n))
		}
	}
	var matter []scenario.Fault
	for _, f := range src.Faults {
		if i := f.Place.Scenario; len(places) == 0 || i < 0 && f.Place.Part != scenario.PartInHand || wanted[i] {
			matter = append(matter, f)
		}
	}
	return src.complainOf(s, matter)
}

// reportReels prints the faults that matter to the reels in hand: their own and those of
// the whole file, but not that it has no scenario.
func (src source) reportReels(s stage) int {
	var matter []scenario.Fault
	for _, f := range src.Faults {
		alone := f.Code == scenario.MissingTable && f.Path == "scenario"
		if f.Place.Part == scenario.PartInHand || f.Place.Part == scenario.PartFile && !alone {
			matter = append(matter, f)
		}
	}
	return src.complainOf(s, matter)
}

// complainOf prints faults and returns the status they make.
func (src source) complainOf(s stage, faults []scenario.Fault) int {
	for _, line := range words.FaultLines(src.name, faults) {
		s.complain("%s", line)
	}
	if len(faults) > 0 {
		return statusInput
	}
	return statusFine
}

// find is the place of the named scenario.
func (src source) find(name string) (int, error) {
	for i := range src.File.Scenarios {
		if src.File.Scenarios[i].Name == name {
			return i, nil
		}
	}
	return 0, fmt.Errorf("%s has no scenario named %q; it has %s", src.name, name, src.names())
}

// names are the scenarios in the file.
func (src source) names() string {
	names := make([]string, len(src.File.Scenarios))
	for i := range names {
		names[i] = src.File.Scenarios[i].Name
	}
	return quotedNames(names)
}

// quotedNames lists names; of many the first.
func quotedNames(names []string) string {
	const most = 12
	var quoted []string
	for i, name := range names {
		if i == most {
			quoted = append(quoted, fmt.Sprintf("%d more", len(names)-most))
			break
		}
		quoted = append(quoted, strconv.Quote(name))
	}
	if len(quoted) == 0 {
		return "none"
	}
	return listed(quoted, "and")
}

// single opens the file of a call about one scenario and gives that one's place; −1
// where there is none, with the status that makes.
func single(c call, s stage) (src source, place, status int) {
	src, err := open(c, s)
	if err != nil {
		s.complain("%v", err)
		return src, -1, statusInput
	}
	if n := len(src.File.Scenarios); !c.named && n > 1 {
		return src, -1, commands[c.command].refuse(s, fmt.Errorf("--scenario is needed, %s has %d: %s", src.name, n, src.names()))
	}
	places, status := chosen(src, c, s)
	if status != statusFine {
		return src, -1, status
	}
	if len(places) == 0 {
		return src, -1, src.report(s, nil)
	}
	return src, places[0], statusFine
}

// compare computes the scenario at place i.
func (src source) compare(i int, today scenario.Date) compare.Comparison {
	return compare.Compare(src.File.Scenarios[i], src.faultsOf(i), today)
}
