package walls

import (
	"bytes"
	"io/fs"
	"regexp"
	"testing"
)

// The README is read whole by a newcomer: it stays short, and its pictures are there and
// small.
func TestTheReadmeIsShortAndItsPicturesAreThere(t *testing.T) {
	const mostLines, mostBytes, windowBytes = 250, 60 << 10, 120 << 10
	root := projectRoot(t)
	readme, err := fs.ReadFile(root, "README.md")
	if err != nil {
		t.Fatal(err)
	}
	if n := bytes.Count(readme, []byte("\n")); n >= mostLines {
		t.Errorf("%d lines", n)
	}
	pictures := regexp.MustCompile(`!\[[^\]]+\]\((assets/[^)]+)\)`).FindAllSubmatch(readme, -1)
	if len(pictures) < 5 {
		t.Errorf("%d pictures with words for who cannot see them", len(pictures))
	}
	for _, m := range pictures {
		name := string(m[1])
		most := int64(mostBytes)
		if name == "assets/window.png" {
			most = windowBytes
		}
		if info, err := fs.Stat(root, name); err != nil || info.Size() > most {
			t.Errorf("%s: %v, at most %d bytes", name, err, most)
		}
	}
}
