package packing

import (
	"archive/tar"
	"archive/zip"
	"bytes"
	"crypto/sha256"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Tar writes the archive for Linuxes that know no Debian package, and gives its path.
func (g *Goods) Tar(folder, arch string) (string, error) {
	files, err := g.Tree()
	if err != nil {
		return "", err
	}
	files = append(files, File{"README.md", g.ReadMe, false}, File{"LICENCES.txt", LicenceText(g.Licences), false},
		File{"INSTALL.txt", []byte(installSay), false})
	name := fmt.Sprintf("reelworth-%s-linux-%s", g.Version, arch)
	var b bytes.Buffer
	w := tar.NewWriter(&b)
	for _, f := range files {
		mode := int64(0o644)
		if f.Executable {
			mode = 0o755
		}
		head := &tar.Header{Name: name + "/" + f.Path, Mode: mode, Size: int64(len(f.Data)), ModTime: g.Made, Format: tar.FormatPAX, Typeflag: tar.TypeReg}
		if err := w.WriteHeader(head); err != nil {
			return "", err
		}
		if _, err := w.Write(f.Data); err != nil {
			return "", err
		}
	}
	if err := w.Close(); err != nil {
		return "", err
	}
	path := filepath.Join(folder, name+".tar.gz")
	return path, os.WriteFile(path, zipped(b.Bytes()), 0o644)
}

const installSay = `Try it where it is: bin/reelworth opens the window, bin/reelworth-cli works without one.

To install it for everybody, as root:   cp -r bin share /usr/local/
To install it for yourself:             cp -r bin share ~/.local/

The window needs OpenGL and X11 or Wayland; every desktop has them.
`

// Zip writes the archive for Windows, and gives its path.
func (g *Goods) Zip(folder, arch string) (string, error) {
	name := fmt.Sprintf("reelworth-%s-windows-%s", g.Version, arch)
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, f := range []File{
		{"reelworth.exe", g.Window, true},
		{"reelworth-cli.exe", g.Command, true},
		{"README.md", g.ReadMe, false},
		{"LICENCES.txt", LicenceText(g.Licences), false},
	} {
		part, err := w.CreateHeader(&zip.FileHeader{Name: name + "/" + f.Path, Method: zip.Deflate, Modified: g.Made.UTC()})
		if err != nil {
			return "", err
		}
		if _, err := part.Write(f.Data); err != nil {
			return "", err
		}
	}
	if err := w.Close(); err != nil {
		return "", err
	}
	path := filepath.Join(folder, name+".zip")
	return path, os.WriteFile(path, b.Bytes(), 0o644)
}

// Checksums writes SHA256SUMS of files into their folder, for sha256sum -c.
func Checksums(folder string, paths []string) error {
	var lines []string
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		lines = append(lines, fmt.Sprintf("%x  %s\n", sha256.Sum256(data), filepath.Base(path)))
	}
	slices.SortFunc(lines, func(a, b string) int { return strings.Compare(a[64:], b[64:]) })
	return os.WriteFile(filepath.Join(folder, "SHA256SUMS"), []byte(strings.Join(lines, "")), 0o644)
}
