// Package packing makes the packages that Reelworth is handed on in: a Debian package, a
// tar archive for other Linuxes and a zip for Windows.
//
// It promises that the same programs, version and day give the same packages, byte for
// byte; that each package holds the licences of everything linked into it; and that a
// Debian package depends on every library its programs need.
//
// It takes only Go's own library, and dpkg-deb for the Debian package: that is part of
// every Debian, knows its form best, and is reproducible; a library for it would bring a
// hundred others, and this workbench is there before any of them is.
package packing
