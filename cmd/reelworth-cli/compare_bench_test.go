package main

import (
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"reelworth/internal/scenario"
)

// A long list of scenarios, from the file to the printed tables.
func BenchmarkTableOf2500(b *testing.B) {
	path := filepath.Join(b.TempDir(), "many.toml")
	if err := os.WriteFile(path, []byte(examples(2500)), 0o644); err != nil {
		b.Fatal(err)
	}
	var complaints strings.Builder
	for b.Loop() {
		if status := run([]string{"compare", path}, stage{nil, io.Discard, &complaints, scenario.Date{Year: 2026, Month: 11, Day: 24}}); status != statusFine {
			b.Fatalf("exit status %d: %.500s", status, complaints.String())
		}
	}
}
