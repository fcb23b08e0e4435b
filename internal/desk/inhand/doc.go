// Package inhand is what the window shows of reels in hand: their list in the left column,
// and in the right one the pages of the one that is chosen, its log, its cut plan, its
// account and its labels; and the view to stand at the loader with.
//
// It promises to compute nothing: it shows a Stock. Whatever it enters into a log is one
// step of undo.
package inhand
