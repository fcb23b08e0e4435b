// Command dev is the workbench: it finds what this machine lacks to build and
// test Reelworth, installs it where it may, and then does the work.
//
//	go run ./cmd/dev run          open the window on the built-in demo
//	go run ./cmd/dev test         every check there is
//	go run ./cmd/dev bench        the benchmarks, beside their aims
//	go run ./cmd/dev shots DIR    pictures of the window, both themes
//
// It promises to need nothing but Go itself: it imports only the standard
// library and no C, so that it runs on a machine that cannot build the window
// yet. It installs only with apt-get, only what is missing, and only as root or
// where sudo asks for no password; anywhere else it prints the command to type.
// The program itself never needs it.
package main
