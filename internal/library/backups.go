package library

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
)

// Backups keeps apart, in a state folder, what the first save of a session replaces, so
// that its second save cannot take the place of the only good state. It also knows which
// .bak files saves have made; what else is called so is the user's own, and stays.
type Backups struct{ dir string }

// NewBackups keeps them in a state folder, which is made when there is one to keep; "" is
// none, and keeps nothing.
func NewBackups(state string) *Backups {
	if state == "" {
		return nil
	}
	return &Backups{filepath.Join(state, "backups")}
}

// Folder is where they are kept, "" for nowhere.
func (b *Backups) Folder() string {
	if b == nil {
		return ""
	}
	return b.dir
}

// mostBackups is how many are kept apart, and mostMade how many .bak files are known by
// what they hold.
const (
	mostBackups = 10
	mostMade    = 500
)

// madeList names the .bak files that saves made, a mark a line.
const madeList = "made.txt"

// keep keeps what a save replaces, and lets the oldest go.
func (b *Backups) keep(on disk, path string, old []byte) error {
	if b == nil {
		return nil
	}
	if err := makeStateFolder(b.dir); err != nil {
		return err
	}
	names := b.names()
	next := 1
	if len(names) > 0 {
		next = numberOf(names[len(names)-1]) + 1
	}
	name := cutName(fmt.Sprintf("%06d %s", next, filepath.Base(path)), 200)
	if _, err := replace(on, filepath.Join(b.dir, name), old, guise{mode: 0o600}, nil); err != nil {
		return err
	}
	names = append(names, name)
	for _, n := range names[:max(0, len(names)-mostBackups)] {
		os.Remove(filepath.Join(b.dir, n))
	}
	return nil
}

// names are the files kept, the oldest first.
func (b *Backups) names() []string {
	entries, err := os.ReadDir(b.dir)
	if err != nil {
		return nil
	}
	var list []string
	for _, e := range entries {
		if numberOf(e.Name()) > 0 {
			list = append(list, e.Name())
		}
	}
	slices.SortFunc(list, func(a, b string) int { return numberOf(a) - numberOf(b) })
	return list
}

// numberOf is what the name of a file that is kept begins with, 0 for another file's.
func numberOf(name string) (n int) {
	digits, _, ok := strings.Cut(name, " ")
	if !ok || len(digits) < 6 {
		return 0
	}
	if _, err := fmt.Sscanf(digits, "%d", &n); err != nil {
		return 0
	}
	return n
}

// madeHere are the .bak files that this process made, by markOf.
var madeHere sync.Map

// markOf is what a .bak is known by: where it is, and what it holds.
func markOf(path string, data []byte) string {
	h := sha256.New()
	h.Write([]byte(path + "\x00"))
	h.Write(data)
	return hex.EncodeToString(h.Sum(nil))
}

// note remembers a .bak that a save made.
func (b *Backups) note(path string, data []byte) {
	mark := markOf(path, data)
	madeHere.Store(mark, true)
	if b == nil || makeStateFolder(b.dir) != nil {
		return
	}
	lines := append(b.made(), mark)
	lines = lines[max(0, len(lines)-mostMade):]
	// Without it the next session takes the .bak for the user's own, and leaves it.
	_, _ = replace(realDisk{}, filepath.Join(b.dir, madeList), []byte(strings.Join(lines, "\n")+"\n"), guise{mode: 0o600}, nil)
}

func (b *Backups) made() []string {
	data, err := os.ReadFile(filepath.Join(b.dir, madeList))
	if err != nil {
		return nil
	}
	return strings.Fields(string(data))
}

// place says how a .bak stands to what is to be kept in it: whether it may be written, since
// there is none or a save made it, and whether it holds that already.
func (b *Backups) place(path string, old []byte) (free, done bool) {
	if _, err := os.Lstat(path); err != nil {
		return true, false
	}
	data, _, err := load(path)
	if err != nil {
		return false, false
	}
	mark := markOf(path, data)
	_, here := madeHere.Load(mark)
	return here || b != nil && slices.Contains(b.made(), mark), bytes.Equal(data, old)
}
