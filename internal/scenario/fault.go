package scenario

import (
	"fmt"
	"slices"

	"reelworth/internal/exact"
)

// Fault is one thing wrong in a scenario: what, where, and what a sentence about it
// needs. The sentences themselves, with what to write instead, are in package words.
type Fault struct {
	Code Code
	// Path is the key in words of the file, such as "offer[2].reel.exposures"
	// or "rolls_per_month"; indexes count from 1.
	Path string
	// Place is where it hurts.
	Place Place
	// Line in the file, from 1; 0 when the scenario has no file.
	Line int
	// Several says that the file holds several scenarios, so that it must be said which
	// one this is in; Scenario is what that is named, "" for one without a name.
	Several  bool
	Scenario string
	Args
}

// Args are what a sentence about a fault needs beside its place. Which of them are set
// is said beside each Code.
type Args struct {
	Got     string         // what stands there, as it is spelt in the file
	Is      ValueKind      // what that is
	Wanted  ValueKind      // what should stand there
	Example string         // TOML that would do, such as `price = "14.80"`
	Guess   string         // what was most likely meant
	Name    string         // of something that is there and would do
	Table   string         // the kind of table that is meant, such as "offer"
	Keys    []string       // the keys or words among which to choose
	Rule    *Rule          // what the value must keep to
	Number  Decimal        // the value
	Bound   Decimal        // what it is too low or too high for
	Other   int            // the place of the other table, from 1
	From    string         // a currency
	To      string         // the currency it is to be brought to
	Have    int            // how many there are
	Most    int            // how many there may be
	Missing exact.Fraction // millimetres
}

// ValueKind is a kind of value in a file.
type ValueKind string

// The kinds of values: those that TOML has, and what some of them must stand for.
const (
	ValueText   ValueKind = "text"
	ValueNumber ValueKind = "number"
	ValueTruth  ValueKind = "truth" // true or false
	ValueTime   ValueKind = "time"  // a date, a time or both
	ValueList   ValueKind = "list"
	ValueTable  ValueKind = "table"
	ValueWhole  ValueKind = "whole" // a number without a point
	ValueMonth  ValueKind = "month" // text like "2027-01"
	ValueDate   ValueKind = "date"
)

// Place says how much of the file a fault spoils.
type Place struct {
	Part     Part
	Scenario int // index in File.Scenarios; −1 for the whole file, and for a reel in hand
	Index    int // of the offer, rate, process or reel in hand, from 0
}

// Part is the part of a scenario that a fault makes unusable.
type Part int

// The parts: a fault in the whole leaves nothing of the scenario computable; the
// others leave out what depends on them.
const (
	PartFile Part = iota
	PartWhole
	PartOffer
	PartRate
	PartDeveloping
	PartLoading  // reels cannot be computed
	PartBaseline // nothing to compare with
	PartRange    // the range is not used
	PartInHand   // the reel in hand at Index; no scenario is concerned
)

// Partial says that some of the faults are of there being too many of something: what is
// beyond was not read, and saving would lose it.
func Partial(faults []Fault) bool {
	return slices.ContainsFunc(faults, func(f Fault) bool { return f.Code == TooMany || f.Code == ScenarioMost })
}

// Error is the fault as "line 12: offer[2].price: not-above", for those who program.
func (f Fault) Error() string {
	return fmt.Sprintf("line %d: %s: %s", f.Line, f.Path, f.Code)
}
