// Package library is the scenario file on disk. It knows bytes, not fields: what a
// file means is for package scenario.
//
// It promises that a file is either the old one or the new one whole, whatever
// happens while it is saved; that what a save replaces stays beside it as a .bak;
// and that nothing changed from outside is overwritten unasked.
package library
