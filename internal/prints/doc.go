// Package prints lays out what is printed at the loader: labels, the sheet of cassettes
// with boxes to tick, and the speed code's template.
//
// It promises that what is printed true to size says how to measure it, that a label
// keeps its warning of the remjet backing whatever else has to give way, and that a
// letter which cannot be printed is told of.
package prints
