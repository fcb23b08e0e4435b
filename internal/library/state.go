package library

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
)

// StateFolder is where the program keeps what it must remember between two runs; it
// may not be there yet. On Linux it is that of the XDG Base Directory Specification
// 0.8: $XDG_STATE_HOME, or ~/.local/state.
func StateFolder() (string, error) {
	home, err := os.UserHomeDir()
	if err != nil {
		home = ""
	}
	return stateFolder(runtime.GOOS, home, os.Getenv)
}

func stateFolder(system, home string, env func(string) string) (string, error) {
	folder := ""
	switch system {
	case "windows":
		if local := env("LocalAppData"); local != "" {
			folder = filepath.Join(local, "Reelworth")
		} else if home != "" {
			folder = filepath.Join(home, "AppData", "Local", "Reelworth")
		}
	case "darwin":
		if home != "" {
			folder = filepath.Join(home, "Library", "Application Support", "Reelworth")
		}
	default:
		// The specification has relative paths ignored.
		if state := env("XDG_STATE_HOME"); filepath.IsAbs(state) {
			folder = filepath.Join(state, "reelworth")
		} else if home != "" {
			folder = filepath.Join(home, ".local", "state", "reelworth")
		}
	}
	if folder == "" {
		return "", &Problem{Cause: NoHome, Doing: Keeping}
	}
	return folder, nil
}

// TemporaryState is the state folder of a user without a home: in the system's folder for
// temporary files, one of this user's own, which is made. Errors are *Problem: NotPrivate
// where what is there is somebody else's, a link, or open to others.
func TemporaryState() (string, error) { return temporaryState(os.TempDir(), os.Getuid()) }

func temporaryState(in string, user int) (string, error) {
	dir := filepath.Join(in, fmt.Sprintf("reelworth-%d", user))
	if err := os.Mkdir(dir, 0o700); err != nil && !errors.Is(err, fs.ErrExist) {
		return "", problem(Keeping, dir, err)
	}
	info, err := os.Lstat(dir)
	if err != nil {
		return "", problem(Keeping, dir, err)
	}
	isOpen := runtime.GOOS != "windows" && info.Mode().Perm()&0o077 != 0
	if !info.IsDir() || ownedByOther(info) || isOpen {
		return "", &Problem{Cause: NotPrivate, Doing: Keeping, Path: dir}
	}
	return dir, nil
}

// makeStateFolder makes a folder that only its user may read: work in it may be
// private.
func makeStateFolder(dir string) error { return os.MkdirAll(dir, 0o700) }

// The files in the state folder are named by what they are, the process and a random
// part, since a process may have several windows and a number several processes:
// "unsaved-4711-1a2b3c4d.toml".
const (
	unsavedStart = "unsaved-"
	claimStart   = "open-"
	unsavedEnd   = ".toml"
	lockEnd      = ".lock"
)

func newName(start string) string {
	return fmt.Sprintf("%s%d-%08x", start, os.Getpid(), rand.Uint32())
}

// processIn is the process number in a name, with false for a name of something else.
func processIn(name, start string) (int, bool) {
	rest, ok := strings.CutPrefix(name, start)
	if !ok {
		return 0, false
	}
	number, random, ok := strings.Cut(rest, "-")
	pid, err := strconv.Atoi(number)
	return pid, ok && err == nil && pid > 0 && len(random) == 8
}

// namesIn lists the names of a kind in the state folder, without that ending, sorted.
// A folder that is not there holds none.
func namesIn(dir, start, end string) ([]string, error) {
	entries, err := os.ReadDir(dir)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, err
	}
	var names []string
	for _, e := range entries {
		name, ok := strings.CutSuffix(e.Name(), end)
		if _, fits := processIn(name, start); ok && fits {
			names = append(names, name)
		}
	}
	return names, nil
}

// note is one line "# key = value" at the top of a file in the state folder: plain
// text that a person can read, and a comment to TOML.
type note struct{ key, value string }

func writeNotes(b *bytes.Buffer, notes []note) {
	for _, n := range notes {
		fmt.Fprintf(b, "# %s = %s\n", n.key, n.value)
	}
}

// readNotes reads the notes above the first line that is no comment.
func readNotes(data []byte) map[string]string {
	notes := map[string]string{}
	for len(data) > 0 {
		var line []byte
		line, data, _ = bytes.Cut(data, []byte("\n"))
		text, ok := strings.CutPrefix(strings.TrimSpace(string(line)), "#")
		if !ok {
			break
		}
		if key, value, ok := strings.Cut(text, "="); ok {
			notes[strings.TrimSpace(key)] = strings.TrimSpace(value)
		}
	}
	return notes
}
