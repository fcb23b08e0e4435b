package main

import (
	"os"
	"os/exec"
)

// The tags everything is built with: one set everywhere, since another set
// compiles all of the window's C again, for minutes.
const (
	windowTags   = "migrated_fynedo,no_animations,no_emoji" // the real window, which needs C
	headlessTags = "ci,migrated_fynedo"                     // the window drawn in memory, without C
	journeyTags  = windowTags + ",journey"                  // the real window, driven from outside
)

// speaking are the tags of a window that screen readers can read, where the toolkit has
// that: on Windows and macOS.
const speaking = windowTags + ",accessibility"

// tagsOn are the tags of the window that a person works in.
func tagsOn(goos string) string {
	if goos == "windows" || goos == "darwin" {
		return speaking
	}
	return windowTags
}

// goWindow is a go command that compiles C, goHeadless one that does without.
func goWindow(args ...string) *exec.Cmd   { return goCommand("CGO_ENABLED=1", args...) }
func goHeadless(args ...string) *exec.Cmd { return goCommand("CGO_ENABLED=0", args...) }

func goCommand(cgo string, args ...string) *exec.Cmd {
	cmd := exec.Command("go", args...)
	cmd.Env = append(os.Environ(), cgo)
	return cmd
}

// inTerminal lets a command speak and listen where this program does.
func inTerminal(cmd *exec.Cmd) *exec.Cmd {
	cmd.Stdin, cmd.Stdout, cmd.Stderr = os.Stdin, os.Stdout, os.Stderr
	return cmd
}
