package walls

import (
	"fmt"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"
)

// arrow is one import.
type arrow struct {
	from string // the importing package, below the module
	to   string // the import path
	file string
	test bool
}

// arrows reads the imports of every Go file below root, whatever its build tags.
// It also gives the packages found, sorted.
func arrows(root fs.FS) ([]arrow, []string, error) {
	var found []arrow
	var packages []string
	err := fs.WalkDir(root, ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if entry.IsDir() {
			if name != "." && (strings.HasPrefix(entry.Name(), ".") || entry.Name() == "testdata") {
				return fs.SkipDir
			}
			return nil
		}
		if path.Ext(name) != ".go" {
			return nil
		}
		imports, err := importsOf(root, name)
		if err != nil {
			return err
		}
		from := path.Dir(name)
		if !slices.Contains(packages, from) {
			packages = append(packages, from)
		}
		for _, to := range imports {
			found = append(found, arrow{from, to, name, strings.HasSuffix(name, "_test.go")})
		}
		return nil
	})
	slices.Sort(packages)
	return found, packages, err
}

func importsOf(root fs.FS, name string) ([]string, error) {
	source, err := fs.ReadFile(root, name)
	if err != nil {
		return nil, err
	}
	file, err := parser.ParseFile(token.NewFileSet(), name, source, parser.ImportsOnly)
	if err != nil {
		return nil, err
	}
	var imports []string
	for _, spec := range file.Imports {
		to, err := strconv.Unquote(spec.Path.Value)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		imports = append(imports, to)
	}
	return imports, nil
}

// breaches gives a sentence for everything in the tree that the walls forbid.
func breaches(root fs.FS) ([]string, error) {
	found, packages, err := arrows(root)
	if err != nil {
		return nil, err
	}
	var said []string
	for _, pkg := range packages {
		if _, placed := floors[pkg]; !placed {
			said = append(said, fmt.Sprintf("%s has no floor: place it in the floors table", pkg))
		}
	}
	for _, a := range found {
		if why := a.breach(); why != "" {
			said = append(said, fmt.Sprintf("%s → %s (%s): %s", a.from, a.to, a.file, why))
		}
	}
	atTop, err := breachesAtTop(root)
	return append(said, atTop...), err
}

// breach says what is wrong with an import, "" if nothing is.
func (a arrow) breach() string {
	if to, own := strings.CutPrefix(a.to, module+"/"); own {
		return a.ownBreach(to)
	}
	if why, only := standardOnly[a.from]; only && !isStandard(a.to) {
		return "only Go's own library here: " + why
	}
	for _, r := range rooms {
		if !below(a.to, r.tree) {
			continue
		}
		within := func(tree string) bool { return below(a.from, tree) }
		if a.test && r.tests || slices.ContainsFunc(r.in, within) && !slices.ContainsFunc(r.not, within) {
			return ""
		}
		return fmt.Sprintf("%s is not for this room: %s", r.tree, r.why)
	}
	return ""
}

// ownBreach judges an import of one of the project's own packages. A test outside
// its package (package x_test) imports that package, which is no arrow.
func (a arrow) ownBreach(to string) string {
	if why, only := standardOnly[a.from]; only && standardOnly[to] == "" {
		return "only Go's own library here: " + why
	}
	if a.test && to == a.from {
		return ""
	}
	if keep, little := keeps[a.from]; little && !a.test && !slices.Contains(keep.to, to) {
		return "not for a package that keeps to itself: " + keep.why
	}
	from, placed := floors[a.from]
	floor, known := floors[to]
	switch {
	case !placed:
		return "" // said already
	case !known:
		return "that package has no floor"
	case floor == from:
		return fmt.Sprintf("sideways on floor %d", from)
	case floor > from:
		return fmt.Sprintf("upward from floor %d to floor %d", from, floor)
	}
	return ""
}

// below says whether an import path is the one given or under it.
func below(path, of string) bool { return path == of || strings.HasPrefix(path, of+"/") }

// isStandard tells Go's own packages by their first element, which has no dot.
func isStandard(path string) bool {
	first, _, _ := strings.Cut(path, "/")
	return !strings.Contains(first, ".") && first != "C"
}

// breachesAtTop names what stands at the top and may not, and the folders that are
// not there. What .gitignore names may lie about: it is on no other machine.
func breachesAtTop(root fs.FS) ([]string, error) {
	entries, err := fs.ReadDir(root, ".")
	if err != nil {
		return nil, err
	}
	ignored, _ := fs.ReadFile(root, ".gitignore")
	lacking := slices.Clone(topFolders)
	var said []string
	for _, entry := range entries {
		name, may := entry.Name(), topFiles
		if entry.IsDir() {
			may = topFolders
			lacking = slices.DeleteFunc(lacking, func(folder string) bool { return folder == name })
		}
		if !strings.HasPrefix(name, ".") && !slices.Contains(may, name) && !isIgnored(name, string(ignored)) {
			said = append(said, name+" may not stand at the top: find it a room, or add it to the list in the walls test")
		}
	}
	for _, folder := range lacking {
		said = append(said, "the folder "+folder+" is missing at the top")
	}
	return said, nil
}

// isIgnored knows the two forms our .gitignore uses: "/name" and "*.ending".
func isIgnored(name, gitignore string) bool {
	for _, line := range strings.Fields(gitignore) {
		if matched, _ := path.Match(strings.TrimPrefix(line, "/"), name); matched {
			return true
		}
	}
	return false
}
