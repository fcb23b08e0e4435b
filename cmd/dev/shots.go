package main

import (
	"fmt"
	"os"
	"path/filepath"
)

// takeShots has the window draw itself in memory, in both themes and several
// states, into the folder named, or one of its own. It needs no screen.
func takeShots(args []string) int {
	dir := filepath.Join(scratch(), "shots")
	if len(args) == 1 {
		dir = args[0]
	}
	dir, err := filepath.Abs(dir)
	if err == nil {
		err = os.MkdirAll(dir, 0o755)
	}
	if err != nil {
		fmt.Fprintf(os.Stderr, "dev: no folder for the pictures: %v; name one that may be written\n", err)
		return 1
	}
	if err := inTerminal(goHeadless("run", "-tags", headlessTags, "./internal/desk/shots", dir)).Run(); err != nil {
		fmt.Fprintln(os.Stderr, "dev: the pictures could not be taken:", err)
		return 1
	}
	return tellPictures(dir)
}

// tellPictures names the pictures in a folder.
func tellPictures(dir string) int {
	pictures, _ := filepath.Glob(filepath.Join(dir, "*.png"))
	if len(pictures) == 0 {
		fmt.Fprintln(os.Stderr, "dev: there is no picture in", dir)
		return 1
	}
	fmt.Printf("\n%d pictures:\n", len(pictures))
	for _, picture := range pictures {
		fmt.Println(" ", picture)
	}
	return 0
}

// scratch is a folder for what this program makes: in the user's cache, or
// where there is none, among the temporary files.
func scratch() string {
	cache, err := os.UserCacheDir()
	if err != nil {
		cache = os.TempDir()
	}
	return filepath.Join(cache, "reelworth")
}
