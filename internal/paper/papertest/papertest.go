// Package papertest lets programs of other houses judge a PDF, in tests.
//
// A test whose program is missing is skipped and says so; where CI=true it fails.
package papertest

import (
	"bytes"
	"compress/zlib"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"testing"
)

// Run asks a program about a PDF; the arguments "IN" and "OUT" stand for files. It gives
// what the program said, and the path that OUT stood for.
func Run(t testing.TB, pdf []byte, program string, args ...string) (said, out string) {
	t.Helper()
	if _, err := exec.LookPath(program); err != nil {
		if os.Getenv("CI") == "true" {
			t.Fatalf("%s is missing", program)
		}
		t.Skipf("%s is not installed", program)
	}
	dir := t.TempDir()
	in, out := filepath.Join(dir, "in.pdf"), filepath.Join(dir, "out")
	if err := os.WriteFile(in, pdf, 0o600); err != nil {
		t.Fatal(err)
	}
	for i, a := range args {
		switch a {
		case "IN":
			args[i] = in
		case "OUT":
			args[i] = out
		}
	}
	text, err := exec.Command(program, args...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s: %v: %s", program, err, text)
	}
	return string(text), out
}

// Text is the text of a PDF as a reader selects it.
func Text(t testing.TB, pdf []byte) string {
	t.Helper()
	text, _ := Run(t, pdf, "pdftotext", "-layout", "IN", "-")
	return text
}

// Content is what draws a PDF's first page.
func Content(t testing.TB, pdf []byte) string {
	t.Helper()
	_, rest, _ := bytes.Cut(pdf, []byte("stream\n"))
	packed, _, _ := bytes.Cut(rest, []byte("\nendstream"))
	r, err := zlib.NewReader(bytes.NewReader(packed))
	if err != nil {
		t.Fatal(err)
	}
	text, err := io.ReadAll(r)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// Line is a straight line in a PDF's own units, 72 to an inch, from the bottom left.
type Line struct{ X0, Y0, X1, Y1 float64 }

var line = regexp.MustCompile(`(?m)^([\d.]+) ([\d.]+) m\s+([\d.]+) ([\d.]+) l\s+S$`)

// Lines are the single straight lines on a PDF's first page.
func Lines(t testing.TB, pdf []byte) (all []Line) {
	t.Helper()
	for _, m := range line.FindAllStringSubmatch(Content(t, pdf), -1) {
		var v [4]float64
		for i := range v {
			n, err := strconv.ParseFloat(m[i+1], 64)
			if err != nil {
				t.Fatal(err)
			}
			v[i] = n
		}
		all = append(all, Line{v[0], v[1], v[2], v[3]})
	}
	return all
}
