package words

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"reelworth/internal/history"
	"reelworth/internal/library"
)

// Failure says why something could not be done, and what would do, in a sentence. An
// error that no package of ours explains has the system's words.
func Failure(err error) string {
	var problem *library.Problem
	var changed *library.ChangedOutside
	var there *library.AlreadyThere
	var protected *library.Protected
	var empty *history.Empty
	switch {
	case errors.As(err, &empty):
		return PastEmpty(empty)
	case errors.As(err, &problem):
		wrong, remedy := Problem(problem)
		if problem.Path == "" {
			return capital(wrong) + "; " + remedy
		}
		return problem.Path + ": " + wrong + "; " + remedy
	case errors.As(err, &changed) && changed.Gone:
		return changed.Path + ": the file was deleted after it was opened; save it again anyway, or under another name"
	case errors.As(err, &changed):
		return changed.Path + ": the file was changed by another program after it was opened; open it again, or save under another name, or overwrite it"
	case errors.As(err, &there):
		return there.Path + ": a file of this name is there already; choose another name, or overwrite it"
	case errors.As(err, &protected) && protected.Other:
		return protected.Path + ": the file belongs to another user; choose another name, or replace it all the same"
	case errors.As(err, &protected):
		return protected.Path + ": the file is read-only; choose another name, or replace it all the same"
	}
	return err.Error()
}

// Problem is what stands against opening, saving or keeping a file, and what would do.
func Problem(p *library.Problem) (wrong, remedy string) {
	say, known := problems[p.Cause]
	if !known {
		say = problems[library.Unclear]
	}
	wrong, remedy = say(p)
	switch {
	case p.Doing == library.Keeping:
		return "unsaved work is not safe from a crash: " + wrong, "put that right, and save often until then"
	case p.Doing == library.Removing && p.Cause != library.ChangedMeanwhile:
		return wrong, "remove it by hand"
	}
	return wrong, remedy
}

// undone is a deed that did not come about: "saved".
var undone = map[library.Deed]string{
	library.Opening: "opened", library.Saving: "saved", library.Writing: "written", library.Keeping: "kept", library.Removing: "removed",
}

// problems are what is said of each cause.
var problems = map[library.Cause]func(p *library.Problem) (wrong, remedy string){
	library.Unclear: func(p *library.Problem) (string, string) {
		return "the file could not be " + undone[p.Doing] + " (" + plainError(p.Err) + ")", "try again, or choose another place"
	},
	library.DiskFull: func(p *library.Problem) (string, string) {
		return "the disk is full, so the file was not " + undone[p.Doing] + " and is as it was", "make room, or save elsewhere"
	},
	library.DiskReadOnly: func(p *library.Problem) (string, string) {
		return "the disk is read-only, so the file was not " + undone[p.Doing], "save under another name elsewhere"
	},
	library.MayNotWrite: func(p *library.Problem) (string, string) {
		return "there is no permission to write in " + filepath.Dir(p.Path), "save under another name elsewhere"
	},
	library.MayNotRead: causeSaid("there is no permission to read it", "ask its owner, or change its permissions"),
	library.NoFolder: func(p *library.Problem) (string, string) {
		return "the folder " + filepath.Dir(p.Path) + " is not there", "put it back, or choose another"
	},
	library.NoSuchFile:   causeSaid("there is no such file", "check its name"),
	library.LinkCircle:   causeSaid("the link leads in a circle", "choose the file itself"),
	library.NameTooLong:  causeSaid("the name is too long", "choose a shorter one"),
	library.FileAsFolder: causeSaid("a part of the path is a file, not a folder", "check the path"),
	library.IsFolder: func(p *library.Problem) (string, string) {
		if p.Doing == library.Opening {
			return "this is a folder", "choose a scenario file in it"
		}
		return "this is a folder", "name a file in it"
	},
	library.NoOrdinaryFile: func(p *library.Problem) (string, string) {
		if p.Doing == library.Opening {
			return "this is a device or a pipe, not a file", "choose a scenario file"
		}
		return "this is a device or a pipe, not a file", "choose another name"
	},
	library.TooLarge: func(p *library.Problem) (string, string) {
		return fmt.Sprintf("the file is larger than %d MiB (%.1f MiB)", library.MaxBytes>>20, float64(p.Size)/(1<<20)),
			"split its scenarios into several files"
	},
	library.WouldBeTooLarge: func(*library.Problem) (string, string) {
		return fmt.Sprintf("saved, the file would be larger than %d MiB and could not be opened again", library.MaxBytes>>20),
			"move some scenarios to another file"
	},
	library.BackupUnreadable: causeSaid("there is no permission to read what is there now, so it cannot be kept as a .bak", "save under another name"),
	library.BackupTooLarge: func(*library.Problem) (string, string) {
		return fmt.Sprintf("the file there now is larger than %d MiB, too large to keep as a .bak", library.MaxBytes>>20), "save under another name"
	},
	library.NoName: causeSaid("this work has no file yet", "save it under a name"),
	library.Busy:   causeSaid("another program has been saving this file for a while", "try again, or save under another name"),
	library.Damaged: func(p *library.Problem) (string, string) {
		return "the recovery file is damaged: " + tornSaid(p.Torn), "look at what could be read, or correct the file by hand"
	},
	library.ChangedMeanwhile: causeSaid("the recovery file was changed after it was read, so it was not removed", "look at it once more"),
	library.NoHome:           causeSaid("this user has no home folder", "set HOME, and start again"),
	library.NotPrivate: causeSaid("this folder is somebody else's, a link, or open to others, so nothing is written there",
		"set HOME to a folder of your own, and start again"),
	library.Closed: causeSaid("the window was closed", ""),
}

func causeSaid(wrong, remedy string) func(*library.Problem) (string, string) {
	return func(*library.Problem) (string, string) { return wrong, remedy }
}

func tornSaid(torn []library.Damage) string {
	var list []string
	for _, d := range torn {
		switch {
		case d.Note == "":
			list = append(list, "its last line is missing, so it may be cut off")
		case d.Text == "":
			list = append(list, `the line "# `+d.Note+` = …" is missing`)
		default:
			list = append(list, fmt.Sprintf(`the line "# %s = …" cannot be read: %s`, d.Note, inQuotes(d.Text)))
		}
	}
	return strings.Join(list, "; ")
}

// plainError is a system's error without the call and the path in front of it.
func plainError(err error) string {
	var pe *fs.PathError
	var le *os.LinkError
	switch {
	case err == nil:
		return "no reason is known"
	case errors.As(err, &pe):
		return pe.Err.Error()
	case errors.As(err, &le):
		return le.Err.Error()
	}
	return err.Error()
}
