// Package dialogs asks the window's questions: where to write, how far an input swings,
// what a scenario is called, whether something is a deal.
//
// It promises that Esc leaves every question with nothing changed, and that a dialog stays
// open, and says why, until what stands in it can be taken.
package dialogs
