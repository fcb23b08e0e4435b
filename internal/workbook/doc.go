// Package workbook rebuilds a comparison as a spreadsheet with live formulas, so that
// anybody can follow it, and change it, without the program.
//
// It promises that every figure that follows from others is a formula; that each formula
// carries the value it comes to, computed exactly beside it as the formula is put
// together, so that programs that only show cells show the right ones; that what was
// typed is text or a number and never a formula; and that the file is the same, byte for
// byte, for the same comparison, day and version.
package workbook
