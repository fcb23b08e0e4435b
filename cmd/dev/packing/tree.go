package packing

import (
	"bytes"
	"compress/gzip"
	"embed"
	"fmt"
	"slices"
	"strings"
)

// File is a file of a package; Path has slashes and no leading one.
type File struct {
	Path       string
	Data       []byte
	Executable bool
}

//go:embed share
var share embed.FS

// shared is one of the embedded files with its blanks filled in.
func (g *Goods) shared(name string) []byte {
	data, err := share.ReadFile("share/" + name)
	if err != nil {
		panic(err) // embedded
	}
	r := strings.NewReplacer("@VERSION@", g.Version, "@DAY@", g.Made.Format("2006-01-02"), "@YEAR@", g.Made.Format("2006"))
	return []byte(r.Replace(string(data)))
}

// Tree is what is laid out below /usr, in the order of its paths.
func (g *Goods) Tree() ([]File, error) {
	files := []File{
		{"bin/reelworth", g.Window, true},
		{"bin/reelworth-cli", g.Command, true},
		{"share/applications/" + id + ".desktop", g.shared("reelworth.desktop"), false},
		{"share/mime/packages/" + id + ".xml", g.shared("mime.xml"), false},
		{"share/metainfo/" + id + ".metainfo.xml", g.shared("metainfo.xml"), false},
		{"share/icons/hicolor/scalable/apps/" + id + ".svg", g.IconSVG, false},
		{"share/man/man1/reelworth.1.gz", zipped(g.windowManual()), false},
		{"share/man/man1/reelworth-cli.1.gz", zipped(g.commandManual()), false},
		{"share/doc/reelworth/LICENCES.gz", zipped(LicenceText(g.Licences)), false},
	}
	icons, err := shrunk(g.Icon)
	if err != nil {
		return nil, fmt.Errorf("the icon: %w", err)
	}
	for _, i := range icons {
		files = append(files, File{fmt.Sprintf("share/icons/hicolor/%dx%d/apps/%s.png", i.size, i.size, id), i.data, false})
	}
	slices.SortFunc(files, func(a, b File) int { return strings.Compare(a.Path, b.Path) })
	return files, nil
}

// zipped is data as gzip, without a name or a time.
func zipped(data []byte) []byte {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err == nil {
		_, err = w.Write(data)
	}
	if err == nil {
		err = w.Close()
	}
	if err != nil {
		panic(err) // a buffer takes everything
	}
	return b.Bytes()
}
