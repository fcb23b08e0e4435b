// Package exact holds fractions: rational numbers that never lose a digit.
//
// It promises that every operation is exact, that rounding is decided on the
// exact value (half away from zero), and that the common case, numerators and
// denominators within 63 bits, allocates nothing. What outgrows 63 bits goes on
// in as many words as it takes (wide.go), and comes back when it fits again.
package exact
