// Package compare is the engine: from one scenario to the landed cost, the cost per
// roll, the year and the verdict for every way to buy.
//
// It promises exact arithmetic: every rounding, floor and comparison is decided on
// the exact value. It does no I/O, reads no clock and keeps nothing between calls,
// so that calls may run side by side.
package compare
