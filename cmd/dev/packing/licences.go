package packing

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// Licence is what a part of the programs may be used under.
type Licence struct {
	Of   string // such as "golang.org/x/text v0.30.0"
	Text string
}

// Part is a module, or another part, and the folders its licences lie in.
type Part struct {
	Name    string
	Folders []string
}

// named is how the files are called that licences stand in.
var named = regexp.MustCompile(`(?i)^((un)?licen[cs]es?|copying|notice|patents|ofl)([-_.].*)?$|(?i)^[a-z-]+-licen[cs]e(\.txt|\.md)?$`)

// GatherLicences reads the licences of parts, in the order of their names. A part
// without one is an error: it may not be handed on.
func GatherLicences(parts []Part) ([]Licence, error) {
	var list []Licence
	for _, p := range parts {
		var texts []string
		for _, folder := range p.Folders {
			found, err := licencesIn(folder)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", p.Name, err)
			}
			for _, text := range found {
				if !slices.Contains(texts, text) {
					texts = append(texts, text)
				}
			}
		}
		if len(texts) == 0 {
			return nil, fmt.Errorf("%s has no licence in %s", p.Name, strings.Join(p.Folders, ", "))
		}
		list = append(list, Licence{p.Name, strings.Join(texts, "\n\n"+strings.Repeat("- ", 20)+"\n\n")})
	}
	slices.SortFunc(list, func(a, b Licence) int { return strings.Compare(a.Of, b.Of) })
	return list, nil
}

// licencesIn are the licences that lie in a folder.
func licencesIn(folder string) (texts []string, err error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	for _, e := range entries {
		if e.IsDir() || !named.MatchString(e.Name()) || strings.HasSuffix(e.Name(), ".go") {
			continue
		}
		text, err := os.ReadFile(filepath.Join(folder, e.Name()))
		if err != nil {
			return nil, err
		}
		texts = append(texts, strings.TrimSpace(strings.ReplaceAll(string(text), "\r\n", "\n")))
	}
	return texts, nil
}

// LicenceText is all licences in one text. Parts under the very same words stand
// together.
func LicenceText(list []Licence) []byte {
	var b bytes.Buffer
	b.WriteString("Reelworth contains parts made by others. Each is listed with the words it may be used under.\n")
	told := map[string]bool{}
	for _, l := range list {
		if told[l.Text] {
			continue
		}
		told[l.Text] = true
		b.WriteString("\n" + strings.Repeat("=", 72) + "\n")
		for _, same := range list {
			if same.Text == l.Text {
				b.WriteString(same.Of + "\n")
			}
		}
		b.WriteString(strings.Repeat("-", 72) + "\n\n" + l.Text + "\n")
	}
	return b.Bytes()
}
