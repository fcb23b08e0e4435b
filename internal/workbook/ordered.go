package workbook

import (
	"archive/zip"
	"bytes"
	"io"
	"regexp"
	"slices"
)

// contentTypes is the part of the file that says what the others are; it comes first by
// custom.
const contentTypes = "[Content_Types].xml"

var contentType = regexp.MustCompile(`<(Default|Override)[^>]*>(</(Default|Override)>)?`)

// ordered packs the file anew with its parts in order. The library goes through maps, so
// that the same book would be another file each time.
func ordered(data []byte) ([]byte, error) {
	in, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return nil, err
	}
	files := slices.Clone(in.File)
	slices.SortFunc(files, func(a, b *zip.File) int {
		switch {
		case a.Name == b.Name:
			return 0
		case a.Name == contentTypes || b.Name != contentTypes && a.Name < b.Name:
			return -1
		}
		return 1
	})
	var out bytes.Buffer
	w := zip.NewWriter(&out)
	for _, f := range files {
		if err := repack(w, f); err != nil {
			return nil, err
		}
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	return out.Bytes(), nil
}

func repack(w *zip.Writer, f *zip.File) error {
	r, err := f.Open()
	if err != nil {
		return err
	}
	defer r.Close()
	text, err := io.ReadAll(r)
	if err != nil {
		return err
	}
	if f.Name == contentTypes {
		types := contentType.FindAll(text, -1)
		slices.SortFunc(types, bytes.Compare)
		n := -1
		text = contentType.ReplaceAllFunc(text, func([]byte) []byte { n++; return types[n] })
	}
	part, err := w.Create(f.Name)
	if err != nil {
		return err
	}
	_, err = part.Write(text)
	return err
}
