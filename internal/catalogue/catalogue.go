package catalogue

import (
	"regexp"
	"strings"

	"reelworth/internal/scenario"
)

// Entry is one field.
type Entry struct {
	// Key is as in the file, without "scenario." and without indexes:
	// "offer.reel.leader_mm".
	Key    string
	Unit   Unit
	Label  string // in a form: "Card fee"; {unit} is a reel, a roll or a pack
	Called string // within a sentence: "card fee"
	What   string // in a table of keys: "your card's fee on foreign money"
	Help   string // a sentence or two beside the form
}

// Unit is what a value is counted in.
type Unit string

// The units; None is for words and choices, and for plain counts.
const (
	None      Unit = ""
	Home      Unit = "home currency"
	Seller    Unit = "seller's currency"
	Paid      Unit = "its currency" // that a reel in hand was paid in
	Percent   Unit = "%"
	Months    Unit = "months"
	Rolls     Unit = "rolls"
	Exposures Unit = "exposures"
	Minutes   Unit = "min"
	MM        Unit = "mm"
	Pieces    Unit = "reels or packs"
)

// What a form has of the twelve months and no file: their sum, what each of them has in
// which anything is shot, and the first and the last of these.
const (
	RollsAYear  = "shooting.rolls_a_year"
	RollsAMonth = "shooting.rolls_a_month"
	SeasonFrom  = "shooting.season_from"
	SeasonUntil = "shooting.season_until"
)

// entries are all by key, in the order of the file; byKey finds them.
var (
	entries = join(fileFields, scenarioFields, rateFields, borderFields, loadingFields, developingFields, offerFields, reelFields, boxedFields, seenFields, rangeFields, inHandFields)
	byKey   = index(entries)
)

func join(tables ...[]Entry) (all []Entry) {
	for _, t := range tables {
		all = append(all, t...)
	}
	return all
}

func index(list []Entry) map[string]Entry {
	m := make(map[string]Entry, len(list))
	for _, e := range list {
		m[e.Key] = e
	}
	return m
}

// LabelFor is the label where one price buys a piece of that name: "roll".
func (e Entry) LabelFor(piece string) string {
	label := strings.ReplaceAll(e.Label, "{unit}", piece)
	if strings.HasPrefix(e.Label, "{unit}") {
		return strings.ToUpper(label[:1]) + label[1:]
	}
	return label
}

// Of is the entry of a key, as a fault or a form names it: with or without indexes,
// "offer[3].price" or "offer.price", and with or without "scenario" before it.
func Of(key string) (Entry, bool) {
	e, known := byKey[Plain(key)]
	return e, known
}

// indexes are the places in arrays within a key.
var indexes = regexp.MustCompile(`\[[0-9]+\]`)

// Plain is a key without its indexes and without "scenario" before it.
func Plain(key string) string {
	return strings.TrimPrefix(indexes.ReplaceAllString(key, ""), "scenario.")
}

// sections are what the tables of the file are called in the window.
var sections = map[string]string{
	"shooting": "The year's shooting", "loading": "Loading", "developing": "Developing", "border": "At the border",
	"rate": "Exchange rates", "reel": "The reel", "boxed": "The pack", "offer": "The offer", "seen": "Prices seen", "range": "Ranges",
}

// Section is what a table is called in the window, by the last part of its key; "" for
// none.
func Section(table string) string { return sections[table] }

// Row is a field with what the file says of it.
type Row struct {
	Entry
	scenario.Field
}

// Rows are all fields of the file: those of a scenario, then those of a reel in hand.
func Rows() []Row {
	var rows, inHand []Row
	for _, f := range scenario.Fields() {
		e, _ := Of(strings.TrimPrefix(f.Table+"."+f.Key, "."))
		if strings.HasPrefix(e.Key, "reel.") {
			inHand = append(inHand, Row{e, f})
		} else {
			rows = append(rows, Row{e, f})
		}
	}
	return append(rows, inHand...)
}
