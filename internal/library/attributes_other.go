//go:build !linux

package library

// keepExtended keeps nothing: Go's own library reaches extended attributes on Linux only.
func keepExtended(from, to string) {}
