// Package kit is the window's widgets: text that wraps, fields, links, cards, tabs,
// tables, dialogs, and the look of them all.
//
// It promises that a widget knows nothing of film, scenarios or files: it shows what it
// is given and calls back with what was done. Each can be used and tested alone, takes
// its colours from the theme of the moment, and finds its room in every size of text.
package kit
