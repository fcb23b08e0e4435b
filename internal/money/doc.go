// Package money knows currencies, quotes between them, rounding to what a currency
// can pay, and numbers as people of several countries write them.
//
// It promises that converting is exact until Round, that no inverse rate is ever made
// and rounded, and that a number which could mean two things is never guessed.
package money
