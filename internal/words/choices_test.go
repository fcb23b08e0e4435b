package words

import (
	"slices"
	"strings"
	"testing"

	"reelworth/internal/scenario"
)

// What can be chosen in a form is what the file may say, each in words of its own.
func TestChoicesAreThoseOfTheFile(t *testing.T) {
	lists := map[string][]Choice{
		"offer.kind": Kinds(), "developing.way": WaysToDevelop(), "offer.reel.length_unit": LengthUnits(),
		"offer.reel.pitch": Pitches(), "offer.import": Imports(),
	}
	for _, f := range scenario.Fields() {
		key := strings.TrimPrefix(f.Table+"."+f.Key, "scenario.")
		list, there := lists[key]
		if !there {
			continue
		}
		delete(lists, key)
		var values, labels []string
		for _, c := range list {
			if c.Value != "" { // not decided
				values = append(values, c.Value)
			}
			if c.Label == "" || slices.Contains(labels, c.Label) {
				t.Errorf("%s: %q is said as %q", key, c.Value, c.Label)
			}
			labels = append(labels, c.Label)
		}
		slices.Sort(values)
		want := slices.Sorted(slices.Values(f.Rule.OneOf))
		if !slices.Equal(values, want) {
			t.Errorf("%s: %v can be chosen, the file may say %v", key, values, want)
		}
	}
	if len(lists) > 0 {
		t.Errorf("no fields: %v", lists)
	}
}
