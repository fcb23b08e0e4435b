package figure

import (
	"strings"

	"reelworth/internal/compare"
)

// shortNames are what offers are called at a line's end: the part of their names after
// the first comma where that tells them apart, else their names.
func shortNames(offers []compare.Offer) []string {
	short := make([]string, len(offers))
	seen := map[string]bool{}
	for i := range offers {
		_, after, _ := strings.Cut(tidy(offers[i].Name), ", ")
		if after == "" || seen[after] {
			return fullNames(offers)
		}
		seen[after] = true
		short[i] = after
	}
	return short
}

func fullNames(offers []compare.Offer) []string {
	full := make([]string, len(offers))
	for i := range offers {
		full[i] = tidy(offers[i].Name)
	}
	return full
}
