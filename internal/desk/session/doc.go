// Package session is what is open: the file and its changes, the scenario and the offer
// looked at, what was typed and could not be taken, and what of it outlives a crash.
//
// It promises to know no widget and nothing of what follows from a scenario. Every change
// is one step of undo.
package session
