// Package catalogue is the one list of the fields of a scenario file for people: for
// each its unit, its name in a form and within a sentence, what it is, and help for
// filling it in. Forms, faults, differences, the help of
// the command line read it.
//
// It promises an entry for every field that package scenario has, and none for another.
// Names and help are about the person's own trade, and say nothing of how the file is
// written; figures in the help are whole, because the reader's locale is not known here.
package catalogue
