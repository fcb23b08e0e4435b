package packing

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"
)

// DebTool is what makes Debian packages.
const DebTool = "dpkg-deb"

// debArchitectures are Debian's names for Go's.
var debArchitectures = map[string]string{"amd64": "amd64", "arm64": "arm64", "386": "i386", "arm": "armhf"}

// Deb writes the Debian package into a folder and gives its path; arch is Go's name for
// the processor.
func (g *Goods) Deb(folder, arch string) (string, error) {
	architecture, known := debArchitectures[arch]
	if !known {
		return "", fmt.Errorf("no Debian name for the processor %s", arch)
	}
	depends, err := g.Depends()
	if err != nil {
		return "", err
	}
	root, err := os.MkdirTemp("", "reelworth-deb-")
	if err != nil {
		return "", err
	}
	defer os.RemoveAll(root)
	files, err := g.debTree(architecture, depends)
	if err != nil {
		return "", err
	}
	if err := lay(root, files, g.Made); err != nil {
		return "", err
	}
	path := filepath.Join(folder, fmt.Sprintf("reelworth_%s_%s.deb", g.Version, architecture))
	// One thread: what xz writes depends on how many share the work.
	cmd := exec.Command(DebTool, "--root-owner-group", "--threads-max=1", "--build", root, path)
	cmd.Env = append(os.Environ(), fmt.Sprintf("SOURCE_DATE_EPOCH=%d", g.Made.Unix()))
	if out, err := cmd.CombinedOutput(); err != nil {
		return "", fmt.Errorf("%s: %w: %s", DebTool, err, bytes.TrimSpace(out))
	}
	return path, nil
}

// Depends are the packages that either program needs.
func (g *Goods) Depends() ([]string, error) {
	var all []string
	for _, program := range [][]byte{g.Window, g.Command} {
		needed, err := Depends(program)
		if err != nil {
			return nil, err
		}
		all = append(all, needed...)
	}
	slices.Sort(all)
	return slices.Compact(all), nil
}

// debTree is the tree below / with what Debian wants beside.
func (g *Goods) debTree(architecture string, depends []string) ([]File, error) {
	tree, err := g.Tree()
	if err != nil {
		return nil, err
	}
	var files []File
	size := 0
	for _, f := range tree {
		f.Path = "usr/" + f.Path
		files, size = append(files, f), size+len(f.Data)
	}
	files = append(files,
		File{"usr/share/doc/reelworth/copyright", g.shared("copyright"), false},
		File{"usr/share/doc/reelworth/changelog.gz", zipped(g.changelog()), false},
		File{"usr/share/lintian/overrides/reelworth", g.shared("overrides"), false},
	)
	control := strings.Join([]string{
		"Package: reelworth",
		"Version: " + g.Version,
		"Architecture: " + architecture,
		"Maintainer: " + maintainer,
		"Installed-Size: " + strconv.Itoa(size>>10),
		"Depends: " + strings.Join(depends, ", "),
		"Recommends: libgl1-mesa-dri, shared-mime-info",
		"Section: graphics",
		"Priority: optional",
		"Description: compare film you load yourself with ready-made rolls",
		" A long reel of 35 mm film that you cut and load into cassettes yourself looks",
		" cheaper than rolls in a box, until shipping, duty, tax, the card's fee,",
		" cassettes, a loader, spoiled frames and film that grows old are counted.",
		" Reelworth counts them, in any currency, and tells what would change the answer.",
	}, "\n") + "\n"
	return append(files, File{"DEBIAN/control", []byte(control), false}), nil
}

// maintainer stands in the Debian package, which wants an address; .example belongs to
// nobody (RFC 2606).
const maintainer = "The makers of Reelworth <makers@reelworth.example>"

// changelog is Debian's, of the latest revisions.
func (g *Goods) changelog() []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "reelworth (%s) unstable; urgency=medium\n\n", g.Version)
	for _, subject := range g.Changes {
		b.WriteString("  * " + strings.Join(wrapped(subject, 74), "\n    ") + "\n")
	}
	fmt.Fprintf(&b, "\n -- %s  %s\n", maintainer, g.Made.UTC().Format(time.RFC1123Z))
	return b.Bytes()
}

// wrapped breaks text at spaces into lines of so many letters.
func wrapped(text string, width int) (lines []string) {
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" && len(line)+1+len(word) > width {
			lines, line = append(lines, line), ""
		}
		line = strings.TrimSpace(line + " " + word)
	}
	return append(lines, line)
}

// lay writes files below a folder, all of one time.
func lay(root string, files []File, made time.Time) error {
	for _, f := range files {
		path := filepath.Join(root, filepath.FromSlash(f.Path))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return err
		}
		mode := os.FileMode(0o644)
		if f.Executable {
			mode = 0o755
		}
		if err := os.WriteFile(path, f.Data, mode); err != nil {
			return err
		}
	}
	return filepath.Walk(root, func(path string, info os.FileInfo, err error) error {
		if err != nil {
			return err
		}
		if info.IsDir() {
			if err := os.Chmod(path, 0o755); err != nil { // whatever the user's mask
				return err
			}
		} else if err := os.Chmod(path, info.Mode()&0o100|0o644|info.Mode()&0o100>>3|info.Mode()&0o100>>6); err != nil {
			return err
		}
		return os.Chtimes(path, made, made)
	})
}
