// Package library is the scenario file on disk, and the unsaved work beside it. It
// knows bytes and files, not fields: what a file means is for package scenario.
//
// It promises that a file is either the old one or the new one whole, whatever
// happens while it is saved; that what a save replaces stays beside it as a .bak;
// that nothing changed from outside or protected is overwritten unasked, not even by a
// save at the same instant; that work kept in a
// Recovery outlives the program, however it ends; and that windows on one file can
// see each other.
package library
