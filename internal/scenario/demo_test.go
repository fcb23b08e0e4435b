package scenario

import (
	"bytes"
	"os"
	"testing"
)

// What the program has built in is what the README, the command line's scripts and the
// engine's worked example read.
func TestTheDemoIsTheWorkedExample(t *testing.T) {
	shared, err := os.ReadFile("../../testdata/quayside.toml")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(demo, shared) {
		t.Error("internal/scenario/demo.toml and testdata/quayside.toml differ: they are one file in two places, since only a file beside it can be built into a package")
	}
}
