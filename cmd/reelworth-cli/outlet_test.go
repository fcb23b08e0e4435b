package main

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"reelworth/internal/scenario"
)

// full takes so many bytes and no more.
type full struct{ room int }

func (f *full) Write(p []byte) (int, error) {
	n := min(f.room, len(p))
	f.room -= n
	if n < len(p) {
		return n, errors.New("no space left on device")
	}
	return n, nil
}

func TestOutputThatCannotBeWrittenIsAnErrorOfEveryCommand(t *testing.T) {
	const file = "../../testdata/quayside.toml"
	rates := "../../testdata/rates/history.csv"
	for _, call := range [][]string{
		{"help"}, {"help", "csv"}, {"help", "version"}, {"compare", "--help"}, {"version"}, {"--version"}, {"example"},
		{"check", file}, {"compare", file}, {"compare", file, "--format", "json"}, {"compare", file, "--format", "csv"},
		{"compare", file, "--format", "markdown"}, {"summary", file}, {"history", file, "--rates", rates}, {"rates", rates}, {"side-by-side", file},
		{"chart", file, "--figure", "spend", "--out", "-"},
	} {
		for _, room := range []int{0, 3} {
			var complaints bytes.Buffer
			status := run(call, stage{nil, &full{room}, &complaints, scenario.Date{Year: 2026, Month: 11, Day: 24}})
			if said := complaints.String(); status != statusCall || strings.Count(said, "no space left on device") != 1 {
				t.Errorf("%q with room for %d bytes: status %d, %q", call, room, status, said)
			}
		}
	}
}
