// Package walls holds the house's walls: which package may import which, where sentences
// for the user stand, and what may stand at the project's top.
//
// It promises that its tests fail, naming the arrow, when an import runs upward or
// sideways, when a library is used outside its room, when a package appears that has
// no floor, and when a sentence for the user stands outside its rooms. It reads source
// files only, under every build tag, and builds nothing. It is all tests; nothing
// imports it.
package walls
