package difference

import (
	"reflect"

	"reelworth/internal/scenario"
)

// Kind is what happened.
type Kind int

// The kinds.
const (
	Value   Kind = iota // a field holds Is, no longer Was
	Truth               // likewise, "true" or "false"
	Numbers             // Have of Most numbers of a row are others
	Added               // a table is there that was not
	Removed             // a table is there no longer
	Joined              // a table of a list is new: Is is what it is called
	Left                // a table of a list is gone: Was is what it was called
	Order               // the tables of a list stand in another order
	Unknown             // as Value, of a key that this version does not know
	Unread              // as Value, of what stands in a field and could not be read
)

// Difference is one thing that is other.
type Difference struct {
	Kind Kind
	// Key is as in the file, without indexes: "scenario.offer.reel.leader_mm", and of a
	// table or a list "scenario.offer".
	Key      string
	Scenario string // the name of the scenario it is in, "" for what is in none
	Of       string // what the innermost table around it is called, "" for none
	Was, Is  string // as the file spells them, without quotation marks; "" for nothing
	// Number is the place in a row of numbers, from 1; 0 for what stands in no row.
	Number     int
	Have, Most int
}

// Between lists what is other in to than in from, at most most things, in the order of
// the file; more is how many there are beside them.
func Between(from, to scenario.File, most int) (list []Difference, more int) {
	f := finder{most: most}
	f.table(reflect.ValueOf(from), reflect.ValueOf(to), place{})
	return f.found, f.more
}
