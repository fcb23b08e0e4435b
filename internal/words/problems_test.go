package words

import (
	"errors"
	"fmt"
	"os"
	"strings"
	"syscall"
	"testing"

	"reelworth/internal/library"
)

// Every cause that package library knows has words, and no words are for another.
func TestEveryCauseHasWords(t *testing.T) {
	causes := map[library.Cause]bool{}
	for _, value := range valuesOf(t, "../library/problem.go", "Cause") {
		causes[library.Cause(value)] = true
	}
	for cause := range causes {
		if problems[cause] == nil {
			t.Errorf("%s has no words", cause)
		}
	}
	for cause := range problems {
		if !causes[cause] {
			t.Errorf("%s is no cause", cause)
		}
	}
	for deed, done := range undone {
		if done == "" || deed == "" {
			t.Errorf("%q is %q", deed, done)
		}
	}
}

func TestFailuresSayWhatAndWhatToDo(t *testing.T) {
	full := &os.PathError{Op: "write", Path: "/x/.reelworth-17", Err: syscall.EIO}
	for want, err := range map[string]error{
		"/x/year.toml: the disk is full, so the file was not saved and is as it was; make room, or save elsewhere":                                     &library.Problem{Cause: library.DiskFull, Doing: library.Saving, Path: "/x/year.toml"},
		"/x/year.toml: there is no permission to write in /x; save under another name elsewhere":                                                       &library.Problem{Cause: library.MayNotWrite, Doing: library.Saving, Path: "/x/year.toml"},
		"/x/chart.svg: the file could not be written (input/output error); try again, or choose another place":                                         &library.Problem{Cause: library.Unclear, Doing: library.Writing, Path: "/x/chart.svg", Err: full},
		"/x: this is a folder; choose a scenario file in it":                                                                                           &library.Problem{Cause: library.IsFolder, Doing: library.Opening, Path: "/x"},
		"/x: this is a folder; name a file in it":                                                                                                      &library.Problem{Cause: library.IsFolder, Doing: library.Writing, Path: "/x"},
		"/x/a.toml: the file is larger than 8 MiB (70.0 MiB); split its scenarios into several files":                                                  &library.Problem{Cause: library.TooLarge, Doing: library.Opening, Path: "/x/a.toml", Size: 70 << 20},
		"/x/u.toml: unsaved work is not safe from a crash: the disk is read-only, so the file was not kept; put that right, and save often until then": &library.Problem{Cause: library.DiskReadOnly, Doing: library.Keeping, Path: "/x/u.toml"},
		"Unsaved work is not safe from a crash: this user has no home folder; put that right, and save often until then":                               &library.Problem{Cause: library.NoHome, Doing: library.Keeping},
		"/x/u.toml: there is no permission to write in /x; remove it by hand":                                                                          &library.Problem{Cause: library.MayNotWrite, Doing: library.Removing, Path: "/x/u.toml"},
		`/x/u.toml: the recovery file is damaged: the line "# file = …" is missing; the line "# written = …" cannot be read: "soon"; its last line is missing, so it may be cut off; look at what could be read, or correct the file by hand`: &library.Problem{Cause: library.Damaged, Doing: library.Opening, Path: "/x/u.toml", Torn: []library.Damage{{Note: "file"}, {Note: "written", Text: "soon"}, {}}},
		"/x/year.toml: the file is read-only; choose another name, or replace it all the same": fmt.Errorf("saving: %w", &library.Protected{Path: "/x/year.toml"}),
		"something else": errors.New("something else"),
	} {
		same(t, "failure", Failure(err), want)
	}
}

// A system's error never brings the name of a file that is written on the way.
func TestFailuresDoNotNameHalves(t *testing.T) {
	for cause := range problems {
		p := &library.Problem{Cause: cause, Doing: library.Saving, Path: "/x/year.toml", Err: &os.PathError{Op: "rename", Path: "/x/.half", Err: syscall.EIO}}
		if text := Failure(p); strings.Contains(text, ".half") || !strings.HasPrefix(text, "/x/year.toml: ") {
			t.Errorf("%s: %s", cause, text)
		}
	}
}
