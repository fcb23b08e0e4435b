package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// begins is how source begins goroutines.
var begins = regexp.MustCompile(`(?m)^\s*go [\w.]+\(|^\s*go func|\.Go\(func|parallel\.Each\(`)

// Who begins goroutines is watched, whatever package it is.
func TestWhoeverBeginsGoroutinesIsRaced(t *testing.T) {
	found := 0
	err := filepath.WalkDir("../../internal", func(path string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		data, err := os.ReadFile(path)
		if err != nil || !begins.Match(data) {
			return err
		}
		found++
		pkg := "./" + strings.TrimPrefix(filepath.ToSlash(filepath.Dir(path)), "../../")
		if !slices.ContainsFunc(raced, func(r race) bool { return r.pkg == pkg }) {
			t.Errorf("%s begins goroutines, and %s is not raced", path, pkg)
		}
		return nil
	})
	if err != nil || found < 4 {
		t.Errorf("only %d files found: %v", found, err)
	}
}
