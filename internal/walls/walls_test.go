package walls

import (
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

func TestEveryImportRunsDownward(t *testing.T) {
	root := projectRoot(t)
	said, err := breaches(root)
	if err != nil {
		t.Fatal(err)
	}
	for _, sentence := range said {
		t.Error(sentence)
	}
}

// The walk has to see the whole house: a test that reads nothing passes too.
func TestTheWalkFindsTheHouse(t *testing.T) {
	found, packages, err := arrows(projectRoot(t))
	if err != nil {
		t.Fatal(err)
	}
	have := strings.Join(packages, " ")
	for _, pkg := range []string{"cmd/dev", "internal/compare", "internal/exact", "internal/walls"} {
		if !strings.Contains(have, pkg) {
			t.Errorf("the walk missed %s; it found %s", pkg, have)
		}
	}
	for _, a := range found {
		if a.from == "internal/compare" && a.to == module+"/internal/scenario" {
			return
		}
	}
	t.Error("the walk missed the arrow internal/compare → internal/scenario")
}

func projectRoot(t *testing.T) fs.FS {
	t.Helper()
	root := filepath.Join("..", "..")
	if _, err := os.Stat(filepath.Join(root, "go.mod")); err != nil {
		t.Fatalf("the project's top is not two folders up: %v", err)
	}
	return os.DirFS(root)
}

// soundHouse is a small made-up house with nothing wrong.
var soundHouse = map[string]string{
	"go.mod":                         "module reelworth\n",
	"README.md":                      "",
	".gitignore":                     "/reelworth\n*.prof\n",
	"reelworth":                      "a program, ignored by git",
	"cpu.prof":                       "a measurement, ignored by git",
	"assets/icon.svg":                "",
	"testdata/odd/x.go":              `package odd; import "net/http"`,
	"internal/exact/a.go":            `package exact; import "math/big"`,
	"internal/money/a.go":            `package money; import ("fmt"; "reelworth/internal/exact")`,
	"internal/money/outside_test.go": `package money_test; import ("testing"; "reelworth/internal/money")`,
	"internal/scenario/a.go":         `package scenario; import "reelworth/internal/money"`,
	"internal/compare/a.go":          `package compare; import "reelworth/internal/scenario"`,
	"internal/figure/a.go":           `package figure; import ("gonum.org/v1/plot/vg"; "reelworth/internal/compare")`,
	"internal/desk/a.go":             `package desk; import ("fyne.io/fyne/v2/widget"; "net/url"; "reelworth/internal/figure")`,
	"internal/desk/kit/a.go":         `package kit; import ("fyne.io/fyne/v2"; "reelworth/internal/palette")`,
	"internal/palette/a.go":          `package palette`,
	"internal/desk/golden_test.go":   `package desk; import "gonum.org/v1/plot/cmpimg"`,
	"internal/rates/a.go":            `package rates; import "net/http"`,
	"cmd/reelworth/main.go":          `package main; import ("fyne.io/fyne/v2/app"; "reelworth/internal/desk")`,
	"cmd/dev/main.go":                `package main; import "os/exec"`,
}

func TestASoundHouseHasNoBreach(t *testing.T) {
	expect(t, nil)
}

func TestEachBreachIsNamed(t *testing.T) {
	cases := []struct{ name, file, source, says string }{
		{"an arrow upward", "internal/money/b.go", `package money; import "reelworth/internal/compare"`,
			"internal/money → reelworth/internal/compare (internal/money/b.go): upward from floor 1 to floor 3"},
		{"an arrow sideways", "internal/money/b.go", `package money; import "reelworth/internal/film"`,
			"internal/money → reelworth/internal/film (internal/money/b.go): sideways on floor 1"},
		{"an arrow upward in a test", "internal/exact/b_test.go", `package exact_test; import "reelworth/internal/money"`,
			"upward from floor 0 to floor 1"},
		{"an arrow behind a build tag", "internal/exact/b.go", "//go:build journey\n\npackage exact\n\nimport \"reelworth/internal/money\"\n",
			"upward from floor 0 to floor 1"},
		{"the command line importing a command", "cmd/reelworth-cli/b.go", `package main; import "reelworth/internal/desk/shots"`,
			"sideways on floor 30"},
		{"the toolkit outside the window", "internal/compare/b.go", `package compare; import "fyne.io/fyne/v2"`,
			"fyne.io is not for this room"},
		{"the toolkit in the command line", "cmd/reelworth-cli/b.go", `package main; import "fyne.io/fyne/v2/app"`,
			"cmd/reelworth-cli → fyne.io/fyne/v2/app"},
		{"the toolkit in the window's session", "internal/desk/session/b.go", `package session; import "fyne.io/fyne/v2"`,
			"fyne.io is not for this room"},
		{"a widget that knows scenarios", "internal/desk/kit/b.go", `package kit; import "reelworth/internal/scenario"`,
			"not for a package that keeps to itself"},
		{"a page that knows its window", "internal/desk/pages/b.go", `package pages; import "reelworth/internal/desk"`,
			"upward from floor 22 to floor 24"},
		{"charts outside figure", "internal/desk/b.go", `package desk; import "gonum.org/v1/plot/vg"`,
			"gonum.org/v1/plot/vg is not for this room"},
		{"plots where charts are drawn", "internal/figure/b.go", `package figure; import "gonum.org/v1/plot"`,
			"gonum.org is not for this room"},
		{"picture comparison outside tests", "internal/desk/b.go", `package desk; import "gonum.org/v1/plot/cmpimg"`,
			"gonum.org/v1/plot/cmpimg is not for this room"},
		{"the network", "internal/library/b.go", `package library; import "net/http"`,
			"net is not for this room"},
		{"C", "internal/figure/b.go", `package figure; import "C"`,
			"C is not for this room"},
		{"a library in the workbench", "cmd/dev/b.go", `package main; import "golang.org/x/text/language"`,
			"only Go's own library here"},
		{"our own package in the workbench", "cmd/dev/b.go", `package main; import "reelworth/internal/exact"`,
			"only Go's own library here"},
		{"a package nobody placed", "internal/sundries/b.go", `package sundries`,
			"internal/sundries has no floor"},
		{"Go code at the top", "main.go", `package main`,
			"main.go may not stand at the top"},
		{"a folder at the top", "scripts/build.sh", "",
			"scripts may not stand at the top"},
		{"a file in the place of a folder", "docs", "",
			"docs may not stand at the top"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) { expect(t, map[string]string{c.file: c.source}, c.says) })
	}
}

// expect adds files to the sound house and wants these breaches, each known by a
// part of its sentence, or none at all.
func expect(t *testing.T, added map[string]string, says ...string) {
	t.Helper()
	files := maps.Clone(soundHouse)
	maps.Copy(files, added)
	house := fstest.MapFS{}
	for name, source := range files {
		house[name] = &fstest.MapFile{Data: []byte(source)}
	}
	said, err := breaches(house)
	if err != nil {
		t.Fatal(err)
	}
	all := strings.Join(said, "\n")
	for _, part := range says {
		if !strings.Contains(all, part) {
			t.Errorf("nothing says %q; said:\n%s", part, all)
		}
	}
	if len(says) == 0 && len(said) > 0 {
		t.Errorf("a sound house is called unsound:\n%s", all)
	}
}

func TestAFolderMissingAtTheTopIsNamed(t *testing.T) {
	for _, folder := range topFolders {
		house := fstest.MapFS{}
		for name, source := range soundHouse {
			if !strings.HasPrefix(name, folder+"/") {
				house[name] = &fstest.MapFile{Data: []byte(source)}
			}
		}
		said, err := breachesAtTop(house)
		if want := []string{"the folder " + folder + " is missing at the top"}; err != nil || !slices.Equal(said, want) {
			t.Errorf("without %s: %q, %v", folder, said, err)
		}
	}
}

func TestAFileThatIsNoGoIsAnError(t *testing.T) {
	house := fstest.MapFS{"internal/exact/a.go": &fstest.MapFile{Data: []byte("no Go at all")}}
	if _, err := breaches(house); err == nil {
		t.Error("a file that cannot be read raised no error")
	}
}
