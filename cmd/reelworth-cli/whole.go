package main

import (
	"bytes"
	"errors"
	"io"

	"reelworth/internal/library"
	"reelworth/internal/words"
)

// forceFlag is for commands that write a file.
var forceFlag = flagSpec{name: "force", help: "replace a file that is read-only, or another user's", bare: true,
	set: func(c *call, _ string) error { c.force = true; return nil }}

// writeWhole writes the file a call names as a whole or not at all, and returns the status
// that makes.
func writeWhole(c call, s stage, draw func(io.Writer) error) int {
	var content bytes.Buffer
	if err := draw(&content); err != nil {
		s.complain("reelworth-cli: %v", err)
		return statusInput
	}
	parted, err := library.Export(c.out, content.Bytes(), library.Options{Force: c.force})
	var protected *library.Protected
	switch {
	case errors.As(err, &protected) && protected.Other:
		s.complain("%s: the file belongs to another user; name another, or replace it with --force", c.out)
		return statusCall
	case errors.As(err, &protected):
		s.complain("%s: the file is read-only; name another, or replace it with --force", c.out)
		return statusCall
	case err != nil:
		s.complain("%s", words.Failure(err))
		return statusCall
	case parted:
		s.complain("%s: the file had other names (hard links); they keep what it held before", c.out)
	}
	return statusFine
}
