// Package scenario is the typed scenario: what a photographer shoots, where they
// live, what loading and developing cost them, and every way to buy film they
// compare. It knows the fields, their defaults, all their checks, and their TOML
// form. It does no arithmetic with money.
//
// It promises that reading reports every fault at once, each with its line and a
// remedy; that what it writes reads back as the same value; and that keys it does
// not know survive.
package scenario
