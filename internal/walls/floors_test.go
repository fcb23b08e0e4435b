package walls

// module is this project's own name in an import.
const module = "reelworth"

// floors places every package. A package imports only from floors below its own,
// so that data flows one way and each part can be understood by what is under it.
// A new package gets a line here, and a sentence in DEVELOPERS.md.
var floors = map[string]int{
	"assets":                   0, // typeface, icon
	"internal/effort":          0, // work done, for tests
	"internal/exact":           0, // fractions
	"internal/palette":         0, // colours
	"internal/parallel":        0, // work side by side
	"internal/version":         0, // which Reelworth this is
	"internal/walls":           0, // this
	"internal/paper/papertest": 0, // other houses' readers of PDF, for tests

	"internal/film":     1, // how a reel divides
	"internal/money":    1, // currencies, quotes, numbers by locale
	"internal/paper":    1, // printed pages
	"internal/tomltext": 1, // a TOML text, changed in place

	"internal/scenario": 2, // what the user says

	"internal/catalogue":  3, // its fields, for people
	"internal/compare":    3, // what follows from it
	"internal/difference": 3, // what is other in a file
	"internal/draft":      3, // a file being worked on, its undo
	"internal/library":    3, // a file on disk
	"internal/rates":      3, // published rate files
	"internal/reels":      3, // reels in hand

	"internal/history":    4, // a scenario at the rates of the past
	"internal/sidebyside": 4, // scenarios beside each other

	"internal/words": 5, // every sentence

	"internal/figure":   6, // drawings
	"internal/prints":   6, // what is printed at the loader
	"internal/report":   6, // tables
	"internal/workbook": 6, // a spreadsheet to follow

	"internal/handout": 7, // a comparison on two printed pages

	// The window's own rooms; the numbers leave space for floors below.
	"internal/desk/kit":     20, // widgets
	"internal/desk/jobs":    20, // work away from the interface thread
	"internal/desk/answer":  20, // a scenario computed and drawn
	"internal/desk/session": 21, // what is open, chosen, undone and kept
	"internal/desk/market":  21, // published rates in use
	"internal/desk/stock":   21, // reels in hand, computed and drawn
	"internal/desk/offers":  22, // the left column
	"internal/desk/form":    22, // the middle column
	"internal/desk/pages":   22, // the right column
	"internal/desk/dialogs": 23, // its questions
	"internal/desk/inhand":  23, // reels in hand in the window
	"internal/desk":         24,

	"internal/desk/shots": 30, // pictures of the window
	"cmd/reelworth":       30,
	"cmd/reelworth-cli":   30,
	"cmd/dev/packing":     29, // packages to hand on
	"cmd/dev":             30,
}

// room says where a library may be imported.
type room struct {
	tree  string   // this import path and all below it
	in    []string // these packages and all below them
	not   []string // but not these
	tests bool     // and any test
	why   string
}

var rooms = []room{
	{tree: "fyne.io", in: []string{"internal/desk", "cmd/reelworth"},
		not: []string{"internal/desk/jobs", "internal/desk/answer", "internal/desk/market", "internal/desk/session", "internal/desk/stock"},
		why: "the toolkit stays in the window, so that everything else runs without one"},
	{tree: "gonum.org/v1/plot/cmpimg", in: []string{"internal/figure"}, tests: true,
		why: "it compares pictures in tests"},
	{tree: "gonum.org/v1/plot/vg", in: []string{"internal/figure"},
		why: "one package draws"},
	{tree: "gonum.org", in: nil,
		why: "what draws plots there brings twelve typefaces along, 4 MB of every program"},
	{tree: "codeberg.org/go-pdf", in: []string{"internal/paper"},
		why: "one package prints"},
	{tree: "github.com/xuri/excelize", in: []string{"internal/workbook"}, tests: true,
		why: "one package writes spreadsheets"},
	{tree: "net/url", in: []string{"internal", "cmd"},
		why: "it only takes addresses apart"},
	{tree: "net", in: []string{"internal/rates"},
		why: "the program keeps to itself: nothing else may reach the network"},
	{tree: "C", in: nil,
		why: "C comes in through the toolkit only, so that everything else builds without a compiler"},
}

// keeps says of packages that know little which of our own they may import, though more
// lie below them.
var keeps = map[string]struct {
	to  []string
	why string
}{
	"internal/desk/kit":     {[]string{"assets", "internal/palette"}, "a widget shows what it is given, whatever that is"},
	"internal/desk/jobs":    {nil, "it does jobs, whatever they are"},
	"internal/desk/answer":  {[]string{"internal/compare", "internal/exact", "internal/figure", "internal/handout", "internal/history", "internal/money", "internal/palette", "internal/paper", "internal/parallel", "internal/rates", "internal/reels", "internal/report", "internal/scenario", "internal/sidebyside", "internal/workbook"}, "it is computed and drawn, not shown"},
	"internal/desk/market":  {[]string{"internal/desk/jobs", "internal/history", "internal/rates", "internal/words"}, "it is which rates are in use, not what follows from them"},
	"internal/desk/session": {[]string{"internal/desk/jobs", "internal/draft", "internal/library", "internal/rates", "internal/scenario", "internal/words"}, "it is the work, not how it looks or what follows from it"},
}

// standardOnly are packages that import nothing but Go's own library.
var standardOnly = map[string]string{
	"cmd/dev":         "it has to run on a machine that can build nothing else yet",
	"cmd/dev/packing": "cmd/dev is made of it",
}

// At the project's top stand these folders, all of them, and of files at most these;
// dot files aside.
var (
	topFolders = []string{"assets", "cmd", "internal", "testdata"}
	topFiles   = []string{"go.mod", "go.sum", "README.md", "DEVELOPERS.md", "FyneApp.toml"}
)
