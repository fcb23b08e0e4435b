// Package stock works out where the reels in hand stand, and what is on the screen of the
// one that is looked at: its strip, its cut plan, its account and its labels.
//
// It promises to touch no widget, to change nothing that it is given, and to compute a
// reel again only when it is another than before, so that hundreds of them follow a
// keystroke.
package stock
