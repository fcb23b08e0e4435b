// Package paper holds printed pages: millimetres, text that can be selected, lines and
// filled shapes. A page is a list of marks, and is written as PDF or rendered as a
// picture of itself, so that a preview is what will print.
//
// It promises that the typeface is the project's own, embedded; that the same pages give
// the same bytes; that a length on a page is that length in the PDF to a hundredth of a
// point; and that a letter the typeface lacks is drawn as a box, never left out. Lacking
// tells which letters those are, so that a caller can warn.
package paper
