// Package figure draws a comparison: cost per roll, the year's spending, a reel cut to
// scale, and what changes the answer: where it flips, how far it swings, and what the
// size of an order does.
//
// It promises one drawing code for screen and export: a Drawing is laid out once, in
// pixels, and its image, PNG, SVG and PDF all come from the same shapes and the same
// glyph outlines. No text of a Drawing overlaps another or leaves the canvas, what is
// shown by colour is also said by order, dash or label, and every Drawing has a table
// twin and the sentences for a read-out under the pointer.
//
// It reads no clock and keeps nothing between calls but parsed glyphs, so that calls
// may run side by side.
package figure
