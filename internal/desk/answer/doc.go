// Package answer computes a scenario and draws what is on the screen of it: the figures
// and their pictures, then what would change them, and charts for files.
//
// It promises to touch no widget and to keep nothing between calls, so that it may run on
// any goroutine and its results be dropped when they come too late.
package answer
