package walls

// module is this project's own name in an import.
const module = "reelworth"

// floors places every package. A package imports only from floors below its own,
// so that data flows one way and each part can be understood by what is under it.
// A new package gets a line here, and a sentence in DEVELOPERS.md.
var floors = map[string]int{
	"assets":           0, // typeface, icon
	"internal/exact":   0, // fractions
	"internal/palette": 0, // colours
	"internal/version": 0, // which Reelworth this is
	"internal/walls":   0, // this

	"internal/film":     1, // how a reel divides
	"internal/money":    1, // currencies, quotes, numbers by locale
	"internal/paper":    1, // printed pages
	"internal/tomltext": 1, // a TOML text, changed in place

	"internal/scenario": 2, // what the user says

	"internal/compare": 3, // what follows from it
	"internal/draft":   3, // a file being worked on, its undo
	"internal/library": 3, // a file on disk
	"internal/rates":   3, // published rate files
	"internal/reels":   3, // reels in hand

	"internal/history":    4, // a scenario at the rates of the past
	"internal/sidebyside": 4, // scenarios beside each other

	"internal/words": 5, // every sentence

	"internal/figure": 6, // drawings
	"internal/report": 6, // tables

	"internal/desk": 7, // the window

	"internal/desk/shots": 8, // pictures of the window
	"cmd/reelworth":       8,
	"cmd/reelworth-cli":   8,
	"cmd/dev":             8,
}

// room says where a library may be imported.
type room struct {
	tree  string   // this import path and all below it
	in    []string // these packages and all below them
	tests bool     // and any test
	why   string
}

var rooms = []room{
	{tree: "fyne.io", in: []string{"internal/desk", "cmd/reelworth"},
		why: "the toolkit stays in the window, so that everything else runs without one"},
	{tree: "gonum.org/v1/plot/cmpimg", in: []string{"internal/figure"}, tests: true,
		why: "it compares pictures in tests"},
	{tree: "gonum.org", in: []string{"internal/figure"},
		why: "one package draws"},
	{tree: "codeberg.org/go-pdf", in: []string{"internal/paper"},
		why: "one package prints"},
	{tree: "net/url", in: []string{"internal", "cmd"},
		why: "it only takes addresses apart"},
	{tree: "net", in: []string{"internal/rates"},
		why: "the program keeps to itself: nothing else may reach the network"},
	{tree: "C", in: nil,
		why: "C comes in through the toolkit only, so that everything else builds without a compiler"},
}

// standardOnly are packages that import nothing but Go's own library.
var standardOnly = map[string]string{
	"cmd/dev": "it has to run on a machine that can build nothing else yet",
}

// At the project's top stand these folders, all of them, and of files at most these;
// dot files aside.
var (
	topFolders = []string{"assets", "cmd", "internal", "testdata"}
	topFiles   = []string{"go.mod", "go.sum", "README.md", "DEVELOPERS.md", "FyneApp.toml"}
)
