package walls

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"
)

// wordRooms are where sentences for the user stand; programs say their own usage.
var wordRooms = []string{"internal/words", "internal/catalogue", "cmd"}

// otherTexts are the files whose texts are not wording, and why.
var otherTexts = map[string]string{
	"internal/desk/kit/measure.go": "letters to measure",
	"internal/library/presence.go": "what stands in the file of a claim",
	"internal/library/recovery.go": "what stands in a recovery file",
	"internal/library/state.go":    "the name of a system's folder",
	"internal/money/names.go":      "the names of currencies are data",
	"internal/paper/grid.go":       "the names of sheets are their sizes",
	"internal/rates/statement.go":  "the sources of rates, as they stand in a scenario file",
	"internal/scenario/begin.go":   "the names that new things begin with",
	"internal/scenario/decode.go":  "texts of the TOML library, to tell its errors apart",
	"internal/desk/settings.go":    "the names of what is remembered between starts",
	"internal/desk/crowd.go":       "a made-up scenario for pictures",
	"internal/desk/shelf.go":       "made-up reels for pictures",
}

// A sentence in the middle of the code is found by nobody who reads the wording over.
func TestWordingStandsInItsRooms(t *testing.T) {
	for _, said := range strayTexts(t, projectRoot(t)) {
		t.Error(said)
	}
}

func TestStrayWordingIsFound(t *testing.T) {
	for source, want := range map[string]int{
		`var a = "The year"`:                                     1,
		`var a = "%d of %d rolls"`:                               1,
		`func f() error { return errors.New("it is too long") }`: 1,
		`var a = "offer.price"`:                                  0,
		`var a = "%s %d"`:                                        0,
		`var a = "a: lost its way"`:                              0, // for a programmer: it begins with the package
		`var a = fmt.Errorf("writing the file: %w", err)`:        0, // so does what only says where
		`var a = "kind = \"reel\" or \"boxed\""`:                 0, // as in a file
		`func (e *E) Error() string { return "it is too long" }`: 0, // for a programmer too
		`func f() { panic("it cannot be so") }`:                  0,
		`var a = regexp.MustCompile("one or two")`:               0,
	} {
		if got := strayTexts(t, fstest.MapFS{"internal/a/a.go": {Data: []byte("package a\n" + source)}}); len(got) != want {
			t.Errorf("%s: %q", source, got)
		}
	}
	if got := strayTexts(t, fstest.MapFS{"internal/desk/kit/a.go": {Data: []byte("package kit\n" + `var a, b = "Close", "close"`)}}); len(got) != 1 {
		t.Errorf("a label of one word: %q", got)
	}
}

// What is allowed has to be there.
func TestAllowedTextsAreStillThere(t *testing.T) {
	root := projectRoot(t)
	for file, why := range otherTexts {
		if len(textsIn(t, root, file)) == 0 {
			t.Errorf("%s (%s) has no text any more: take it off the list", file, why)
		}
	}
}

// strayTexts are the sentences outside their rooms.
func strayTexts(t *testing.T, root fs.FS) (said []string) {
	err := fs.WalkDir(root, "internal", func(name string, entry fs.DirEntry, err error) error {
		switch folder := path.Dir(name); {
		case err != nil || entry.IsDir():
			return err
		case path.Ext(name) != ".go" || strings.HasSuffix(name, "_test.go"):
			return nil
		case slices.Contains(wordRooms, folder) || otherTexts[name] != "":
			return nil
		case strings.HasPrefix(folder, "internal/walls") || folder == "internal/desk/shots" || folder == "internal/paper/papertest":
			return nil // nobody's but ours
		}
		said = append(said, textsIn(t, root, name)...)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return said
}

var (
	verb     = regexp.MustCompile(`%[-+# 0-9.*\[\]]*[a-zA-Z]`)
	twoWords = regexp.MustCompile(`\pL[^ ]* +.*\pL`)
	oneLabel = regexp.MustCompile(`^\p{Lu}\p{Ll}+$`)
	fileForm = regexp.MustCompile(`^[\w%]+ = `)
)

// textsIn are the texts of a file that look like wording: two words, and in the window a
// word with a capital.
func textsIn(t *testing.T, root fs.FS, name string) (found []string) {
	source, err := fs.ReadFile(root, name)
	if err != nil {
		t.Fatal(err)
	}
	files := token.NewFileSet()
	tree, err := parser.ParseFile(files, name, source, 0)
	if err != nil {
		t.Fatal(err)
	}
	ast.Inspect(tree, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.ImportSpec:
			return false
		case *ast.Field:
			return n.Tag == nil
		case *ast.FuncDecl:
			return n.Recv == nil || n.Name.Name != "Error"
		case *ast.CallExpr:
			return !isCall(n, "panic", "MustCompile")
		case *ast.BasicLit:
			if text, err := strconv.Unquote(n.Value); n.Kind == token.STRING && err == nil && isWording(text, tree.Name.Name, strings.HasPrefix(name, "internal/desk")) {
				found = append(found, fmt.Sprintf("%s: %q belongs in internal/words, or the file in the list of otherTexts", files.Position(n.Pos()), text))
			}
		}
		return true
	})
	return found
}

func isWording(text, pkg string, window bool) bool {
	switch {
	case strings.HasPrefix(text, pkg+": "), strings.HasSuffix(text, ": %w"), fileForm.MatchString(text):
		return false
	case window && oneLabel.MatchString(text):
		return true
	}
	return twoWords.MatchString(verb.ReplaceAllString(text, "%"))
}

// isCall says whether a call is of a function of one of these names.
func isCall(call *ast.CallExpr, names ...string) bool {
	switch fun := call.Fun.(type) {
	case *ast.Ident:
		return slices.Contains(names, fun.Name)
	case *ast.SelectorExpr:
		return slices.Contains(names, fun.Sel.Name)
	}
	return false
}
