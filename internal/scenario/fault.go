package scenario

import "fmt"

// Fault is one thing wrong in a scenario, with its remedy.
type Fault struct {
	// Path is the key in words of the file, such as "offer[2].reel.exposures"
	// or "rolls_per_month"; indexes count from 1.
	Path string
	// Where it hurts.
	Place Place
	// Line in the file, from 1; 0 when the scenario has no file.
	Line int
	// Wrong says what is wrong, Remedy what to write instead.
	Wrong, Remedy string
}

// Place says how much of the file a fault spoils.
type Place struct {
	Part     Part
	Scenario int // index in File.Scenarios; −1 for the whole file
	Index    int // of the offer, rate or process, from 0
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
)

// Error is the fault as "key: what is wrong; what to write".
func (f Fault) Error() string {
	return fmt.Sprintf("%s: %s; %s", f.Path, f.Wrong, f.Remedy)
}

// Report is the fault as "file:line: key: what is wrong; what to write".
func (f Fault) Report(file string) string {
	return fmt.Sprintf("%s:%d: %s", file, f.Line, f.Error())
}
