package packing

import (
	"regexp"
	"time"
)

// Goods are what is packed.
type Goods struct {
	Version  string    // as the programs tell it
	Made     time.Time // of the revision; all files bear it
	Window   []byte    // the programs
	Command  []byte
	Icon     []byte // PNG, 512 × 512
	IconSVG  []byte
	ReadMe   []byte
	Licences []Licence
	Manual   Manual
	Changes  []string // subjects of the latest revisions, newest first
}

// Manual is what the command line program says of itself.
type Manual struct {
	Overview string
	Commands []Chapter // in the order of the overview
}

// Chapter is the help of one command.
type Chapter struct{ Name, Help string }

// id is what desktops know the program by.
const id = "org.reelworth.desk"

// CommandNames are the commands that an overview lists, but for help and version.
func CommandNames(overview string) (names []string) {
	for _, m := range regexp.MustCompile(`(?m)^  ([a-z][a-z-]*) +\S`).FindAllStringSubmatch(overview, -1) {
		if m[1] != "help" && m[1] != "version" {
			names = append(names, m[1])
		}
	}
	return names
}
