package main

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
)

// demoFile is the scenario the window starts with.
const demoFile = "testdata/quayside.toml"

// runWindow opens the window; where it cannot open, it shows the demo's answer
// without one. A machine without a screen is no failure, one without a compiler is.
func runWindow(args []string) int {
	if !hasDisplay(runtime.GOOS, os.Getenv) {
		fmt.Println("There is no screen here (neither DISPLAY nor WAYLAND_DISPLAY is set), so no window can open.")
		return showDemo()
	}
	if lacking := provide(needsOn(runtime.GOOS), os.Stdout); len(lacking) > 0 {
		fmt.Println("Without it the window cannot be built. After installing it: go run ./cmd/dev run")
		showDemo()
		return 1
	}
	fmt.Println("Building the window. The first time this takes two to three minutes, later a few seconds.")
	program := append([]string{"run", "-tags", tagsOn(runtime.GOOS), "./cmd/reelworth"}, args...)
	if err := inTerminal(goWindow(program...)).Run(); err != nil {
		fmt.Fprintln(os.Stderr, "dev: the window ended with an error:", err)
		return 1
	}
	return 0
}

// showDemo prints the demo's comparison and draws its charts with the command
// line program, which needs no screen and no C.
func showDemo() int {
	fmt.Printf("The built-in demo, computed all the same:\n\n")
	if err := inTerminal(goHeadless("run", "./cmd/reelworth-cli", "compare", demoFile)).Run(); err != nil {
		fmt.Fprintln(os.Stderr, "dev: the demo could not be compared:", err)
		return 1
	}
	dir := filepath.Join(scratch(), "demo")
	if err := os.MkdirAll(dir, 0o755); err != nil {
		fmt.Fprintf(os.Stderr, "dev: no folder for the charts: %v\n", err)
		return 1
	}
	for _, chart := range []string{"cost-per-roll", "spend"} {
		draw := goHeadless("run", "./cmd/reelworth-cli", "chart", demoFile, "--figure", chart, "--out", filepath.Join(dir, chart+".png"))
		if err := inTerminal(draw).Run(); err != nil {
			fmt.Fprintln(os.Stderr, "dev: a chart could not be drawn:", err)
			return 1
		}
	}
	return tellPictures(dir)
}
