package words

import (
	"fmt"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// What the question about sets of border rules of one's own says.
const (
	MenuBorderSets  = "Border rules…"
	LinkBorderSets  = "Sets of my own…"
	BorderSetsTitle = "Border rules of my own"
	BorderSetsNone  = "No set is kept yet. Name the rules of this scenario and keep them, to use them in another."
	BorderSetName   = "Name"
	BorderSetOn     = "Looked up on"
	BorderSetSource = "Source"
	BorderSetKeep   = "Keep these as a set"
	BorderSetUse    = "Use these rules"
	BorderSetRename = "Rename"
	BorderSetDelete = "Delete"
	BorderSetInUse  = "in use"
	BorderSetNoDay  = "write the day as 2026-11-20"
	BorderSetNoName = "a set needs a name"
	BorderSetTwice  = "another set has this name; choose another"
	BorderSetNoFile = "There is no folder to keep settings in, so no set can be kept."
	BorderSetMend   = "Mend what is said beside the fields of the border first."
	StepBorderSet   = "border rules"
)

// BorderSetCaution stands under the sets.
const BorderSetCaution = "These are your own notes, not facts: rules change, and what is due is decided by the customs authority."

// BorderSetLine names a set and the day it was looked up on: "By post, 24 Nov 2026".
func BorderSetLine(b *scenario.BorderSet) string {
	if day := Day(b.Date); day != "" {
		return b.Name + ", " + day
	}
	return b.Name + ", no day noted"
}

// BorderSetUnder is what a set says, and where that is from: "EUR: tax 23 %, duty over 150;
// the customs' own page".
func BorderSetUnder(b *scenario.BorderSet, l money.Locale) string {
	s := scenario.Scenario{Home: b.Currency, Border: b.Border}
	text := b.Currency + ": " + BorderSummary(&s, l)
	if !b.Border.HandlingFee.IsZero() {
		v := voice{s: &s, l: l}
		text += ", handling " + v.home(v.typed(b.Border.HandlingFee))
	}
	if b.Source != "" {
		text += "; " + b.Source
	}
	return text
}

// BorderSetElsewhere says why a set cannot be used in a scenario.
func BorderSetElsewhere(b *scenario.BorderSet, home string) string {
	return fmt.Sprintf("its amounts are in %s, this scenario's in %s", b.Currency, home)
}

// BorderSetKept, BorderSetUsed say what was done.
func BorderSetKept(name string) string { return "Kept as " + name + "." }
func BorderSetUsed(name string) string { return "The border rules are those of " + name + "." }

// BorderSetsTorn says that the file with the sets cannot be read, and that it was left as it
// is.
func BorderSetsTorn(path string, f scenario.Fault) string {
	wrong, remedy := Fault(f)
	return fmt.Sprintf("%s cannot be read (%s: %s; %s). It was left as it is: mend it, or move it away to begin anew.", path, FaultPlace(f), wrong, remedy)
}

// SureToDeleteBorderSet asks before a set is lost.
func SureToDeleteBorderSet(name string) Question {
	return Question{Title: "Delete this set?", Text: name + " is deleted from your sets. Scenarios that use its rules keep them.", Yes: BorderSetDelete}
}
