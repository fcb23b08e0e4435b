// Package pages is the window's right column: the headline, and the pages behind it, one
// file each; and what stands in the place of all columns: the faults of a file, scenarios
// side by side.
//
// It promises to compute nothing: pages show an answer and what would change it. A new
// page is a type with the four methods of page, and a line in NewColumn.
package pages
