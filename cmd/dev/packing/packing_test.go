package packing

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"image"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"
)

// goods are small stand-ins for the real ones; the programs are one that every machine
// has.
func goods(t *testing.T) *Goods {
	t.Helper()
	program, err := exec.LookPath("true")
	if err != nil {
		t.Skip("there is no program to pack")
	}
	data, err := os.ReadFile(program)
	if err != nil {
		t.Fatal(err)
	}
	var icon bytes.Buffer
	if err := png.Encode(&icon, image.NewRGBA(image.Rect(0, 0, 512, 512))); err != nil {
		t.Fatal(err)
	}
	return &Goods{Version: "1.2.3", Made: time.Date(2026, 11, 24, 18, 5, 10, 0, time.UTC), Window: data, Command: data,
		Icon: icon.Bytes(), IconSVG: []byte("<svg/>"), ReadMe: []byte("read me"),
		Licences: []Licence{{"a v1", "same"}, {"b v2", "same"}, {"c v3", "other"}},
		Manual:   Manual{Overview: overview, Commands: []Chapter{{"side-by-side", "Hold them.\n.dots\n"}}},
		Changes:  []string{strings.Repeat("a long subject ", 12)}}
}

const overview = `Compare film.

Usage: reelworth-cli COMMAND FILE [flags]

  compare       print what every way costs
  side-by-side set scenarios beside each other
  version       print the version
  help          explain a command

FILE is a scenario file.
`

func TestCommandsAreFoundInTheOverview(t *testing.T) {
	if got, want := CommandNames(overview), []string{"compare", "side-by-side"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// The same goods make the same archives, and a Debian package too where it can be made.
func TestPackagesAreTheSameEachTime(t *testing.T) {
	makers := map[string]func(g *Goods, folder string) (string, error){
		"tar": func(g *Goods, folder string) (string, error) { return g.Tar(folder, "amd64") },
		"zip": func(g *Goods, folder string) (string, error) { return g.Zip(folder, "amd64") },
	}
	if _, err := exec.LookPath(DebTool); err == nil {
		makers["deb"] = func(g *Goods, folder string) (string, error) { return g.Deb(folder, "amd64") }
	}
	for name, make := range makers {
		var first []byte
		for range 2 {
			path, err := make(goods(t), t.TempDir())
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			data, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			if first != nil && !bytes.Equal(first, data) {
				t.Errorf("%s: another package for the same goods", name)
			}
			first = data
		}
	}
}

// The archive holds what a Debian package lays out, and the licences to read.
func TestTheArchiveHoldsEverything(t *testing.T) {
	path, err := goods(t).Tar(t.TempDir(), "amd64")
	if err != nil {
		t.Fatal(err)
	}
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	unzipped, err := gzip.NewReader(f)
	if err != nil {
		t.Fatal(err)
	}
	modes := map[string]int64{}
	for r := tar.NewReader(unzipped); ; {
		h, err := r.Next()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		modes[strings.TrimPrefix(h.Name, "reelworth-1.2.3-linux-amd64/")] = h.Mode
	}
	for name, mode := range map[string]int64{"bin/reelworth": 0o755, "bin/reelworth-cli": 0o755, "LICENCES.txt": 0o644, "README.md": 0o644,
		"share/applications/org.reelworth.desk.desktop": 0o644, "share/mime/packages/org.reelworth.desk.xml": 0o644,
		"share/metainfo/org.reelworth.desk.metainfo.xml": 0o644, "share/man/man1/reelworth-cli.1.gz": 0o644,
		"share/icons/hicolor/512x512/apps/org.reelworth.desk.png": 0o644, "share/icons/hicolor/32x32/apps/org.reelworth.desk.png": 0o644} {
		if modes[name] != mode {
			t.Errorf("%s has the mode %o, want %o", name, modes[name], mode)
		}
	}
}

// The C library is depended on with the version whose symbols are used; a library that
// no package is known for is an error.
func TestDepends(t *testing.T) {
	g := goods(t)
	got, err := Depends(g.Window)
	if err != nil {
		t.Fatal(err)
	}
	if len(got) != 1 || !regexp.MustCompile(`^libc6 \(>= 2\.\d+\)$`).MatchString(got[0]) {
		t.Errorf("it depends on %q", got)
	}
	odd := bytes.Replace(g.Window, []byte("libc.so.6\x00"), []byte("libq.so.6\x00"), 1)
	if got, err := Depends(odd); err == nil {
		t.Errorf("a library that nobody knows is held by %q", got)
	}
}

// A part without a licence may not be handed on; the same words are told once.
func TestLicences(t *testing.T) {
	folder := t.TempDir()
	if _, err := GatherLicences([]Part{{"bare v1", []string{folder}}}); err == nil {
		t.Error("a part without a licence was taken")
	}
	if err := os.WriteFile(filepath.Join(folder, "LICENSE.md"), []byte("do\r\nas you like\r\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	list, err := GatherLicences([]Part{{"b v1", []string{folder, folder}}, {"a v1", []string{folder}}})
	if err != nil {
		t.Fatal(err)
	}
	text := string(LicenceText(list))
	if strings.Count(text, "do\nas you like\n") != 1 || !strings.Contains(text, "a v1\nb v1\n") {
		t.Errorf("got\n%s", text)
	}
}

// No line of the manual steers the formatter by chance, and no line of the changelog is
// longer than Debian likes.
func TestTextsOfThePackage(t *testing.T) {
	g := goods(t)
	if page := string(g.commandManual()); !strings.Contains(page, `\&.dots`) || !strings.Contains(page, `.SS side\-by\-side`) {
		t.Errorf("the manual is\n%s", page)
	}
	for _, line := range strings.Split(string(g.changelog()), "\n") {
		if len(line) > 80 && !strings.HasPrefix(line, " -- ") {
			t.Errorf("the changelog's line %q is too long", line)
		}
	}
}
