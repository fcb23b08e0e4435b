package difference

import (
	"reflect"
	"testing"
)

// Half is not most: of as many fields that say the same as do not, nothing is told.
func TestTwoTablesAreOneOnlyIfMoreThanHalfOfThemIs(t *testing.T) {
	type table struct{ A, B, C, D, E string }
	for _, c := range []struct {
		was, now table
		want     bool
	}{
		{table{"1", "2", "3", "", ""}, table{"1", "2", "x", "", ""}, true},    // two of three
		{table{"1", "2", "", "", ""}, table{"1", "x", "", "", ""}, false},     // one of two
		{table{"1", "2", "3", "4", ""}, table{"1", "2", "x", "y", ""}, false}, // two of four
		{table{"1", "2", "3", "4", "5"}, table{"1", "2", "3", "x", "y"}, true},
		{table{"1", "", "", "", ""}, table{"1", "2", "3", "", ""}, false}, // what only one says counts
		{table{}, table{}, false},
	} {
		if got := mostlySame(reflect.ValueOf(c.was), reflect.ValueOf(c.now)); got != c.want {
			t.Errorf("%v and %v: %v", c.was, c.now, got)
		}
	}
}
