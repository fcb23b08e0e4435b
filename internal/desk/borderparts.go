package desk

import "reelworth/internal/desk/session"

// AskBorderSets asks for sets of border rules.
func (w asForm) AskBorderSets() { w.d.asker.AskBorderSets() }

// BorderShelf is where they are kept.
func (w asHost) BorderShelf() session.BorderShelf { return w.d.shelf }
