// Package tomltext is the text of a TOML file: where everything in it stands, and how
// to change it in place. It knows text and paths, nothing of what a file is about, and
// leaves to a TOML library what values mean, but for texts so simple that there is no
// question.
//
// It promises that a change rewrites what changed and nothing else: comments, blanks,
// order and unknown keys stay where they are, byte for byte; that what is removed takes
// the comments directly above it and on its line along, and what is moved too; that
// tables of a list which no name tells apart are told by what they say; and that nothing
// it is given, however hostile, costs more than a moment.
package tomltext
