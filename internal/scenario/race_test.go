//go:build race

package scenario

// slowness is how much longer, and how much wider, everything is while the race
// detector watches.
const slowness = 20
