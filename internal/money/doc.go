// Package money knows currencies, quotes between them, rounding to what a currency
// can pay, and numbers as people of several countries write them.
//
// It promises that converting is exact until Round, that no inverse rate is ever made
// and rounded, that a currency's code always stands beside an amount it writes, that
// what it writes it reads back, and that a number which could mean two things is never
// guessed: the forms it takes at their word are stated at Locale.Read.
package money
