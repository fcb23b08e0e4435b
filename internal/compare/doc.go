// Package compare is the engine: from one scenario to the landed cost, the cost per
// roll, the year and the verdict for every way to buy, and what would change them.
//
// It promises exact arithmetic: every rounding, floor and comparison is decided on
// the exact value. It does no I/O, reads no clock and keeps nothing between calls,
// so that calls may run side by side. A comparison is never changed once it is
// returned; looking ahead makes another. Work that takes long ends with its context.
//
// Floating point is used in one place, rough.go, and for one thing: to say which of two
// years is the cheaper at the hundreds of steps of spoilage and of rolls a year. It may
// choose only where it is sure, that is where the saving, or what parts it from a close
// call, is more than a billionth of all the amounts that went into it, some thousand
// times what their sums can be wrong by. Nearer than that, and where a number of lots is
// all but whole, the exact year is computed and decides. It never gives a figure: what
// is returned is exact in every case, and the same as without it.
package compare
