package form

import (
	"strings"

	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// NewFault is what a change breaks, "" for nothing. A currency without a rate is no
// reason to refuse it: the rate is asked for next.
func NewFault(before, after scenario.Scenario, key string) (wrong, remedy string) {
	had := map[string]bool{}
	for _, f := range scenario.Check(before) {
		had[f.Path] = true
	}
	for _, f := range scenario.Check(after) {
		if strings.HasSuffix(f.Path, ".currency") {
			continue
		}
		if f.Path == key || !had[f.Path] {
			wrong, remedy := words.Fault(f)
			return wrong + "; " + remedy, wrong + "; " + remedy
		}
	}
	return "", ""
}
