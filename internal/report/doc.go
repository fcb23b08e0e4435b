// Package report turns comparisons into what a command line prints: JSON for other
// programs, a table for reading, CSV for spreadsheets, Markdown for notes.
//
// It promises that the JSON keeps its keys, that decimals are in plain notation and
// exact to 20 places, that a name in a CSV never becomes a formula of the spreadsheet
// that opens it, and that the readable forms use the words of package words.
package report
