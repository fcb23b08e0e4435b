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

// testNames are those of a package's tests.
var testNames = regexp.MustCompile(`(?m)^func (Test\w+)\(`)

// A test that is called otherwise than it was must not drop out unseen.
func TestEveryRaceIsRun(t *testing.T) {
	for _, r := range raced {
		var names []string
		files, err := filepath.Glob(filepath.Join("../..", filepath.FromSlash(r.pkg), "*_test.go"))
		if err != nil || len(files) == 0 {
			t.Fatal(r.pkg, err)
		}
		for _, f := range files {
			data, err := os.ReadFile(f)
			if err != nil {
				t.Fatal(err)
			}
			for _, m := range testNames.FindAllStringSubmatch(string(data), -1) {
				names = append(names, m[1])
			}
		}
		for _, one := range strings.Split(r.only, "|") {
			if !slices.ContainsFunc(names, func(n string) bool { return strings.Contains(n, one) }) {
				t.Errorf("%s has no test for %q", r.pkg, one)
			}
		}
	}
}
