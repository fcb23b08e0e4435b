// Package draft is a scenario file being worked on: the scenarios and the
// reels in hand as they stand now, every earlier state of them, and where in that history
// the saved one is.
//
// It promises that a change is one call, that undoing is exact, and that "modified"
// follows from the position in the history and from nothing else.
package draft
