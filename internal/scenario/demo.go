package scenario

import _ "embed"

//go:embed demo.toml
var demo []byte

// Example is the text of the file that the demo is read from, comments and all.
func Example() string { return string(demo) }

// Demo is the built-in demo: a made-up photographer's year in a made-up harbour
// town. Each call gives a new value.
func Demo() File {
	f, _ := Read(demo)
	return f
}
