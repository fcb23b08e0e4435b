package library

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// reopened is a document of the file as another session has it.
func reopened(t *testing.T, path string) *Document {
	t.Helper()
	d, err := Open(path)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// forgotten is as if another process came: what this one made is known by the list alone.
func forgotten() { madeHere.Clear() }

func TestTheStateBeforeASessionIsKeptApart(t *testing.T) {
	state := t.TempDir()
	apart := NewBackups(state)
	d := saved(t, one)
	for _, name := range []string{"two", "three", "four"} {
		if err := d.Save(titled(name), Options{Backups: apart}); err != nil {
			t.Fatal(err)
		}
	}
	kept := apart.names()
	if len(kept) != 1 || read(t, filepath.Join(state, "backups", kept[0])) != string(one) {
		t.Fatal("the state before the session is not kept:", kept)
	}
	if info, err := os.Stat(filepath.Join(state, "backups", kept[0])); err != nil || info.Mode().Perm()&0o077 != 0 {
		t.Error("others may read it:", info.Mode(), err)
	}
	for i := range 14 {
		if err := reopened(t, d.Path).Save(titled(fmt.Sprint("session ", i)), Options{Backups: apart}); err != nil {
			t.Fatal(err)
		}
	}
	kept = apart.names()
	if len(kept) != 10 || !strings.Contains(read(t, filepath.Join(state, "backups", kept[9])), "session 12") ||
		!strings.Contains(read(t, filepath.Join(state, "backups", kept[0])), "session 3") {
		t.Error("not the ten newest:", kept)
	}
}

func TestABakOfTheUsersOwnIsNeverReplaced(t *testing.T) {
	defer forgotten()
	for name, own := range map[string]string{"another's": "my own\n", "a copy of the file": string(one)} {
		t.Run(name, func(t *testing.T) {
			apart := NewBackups(t.TempDir())
			d := saved(t, one)
			write(t, d.Path+".bak", []byte(own))
			for _, name := range []string{"two", "three", "four"} {
				if err := d.Save(titled(name), Options{Backups: apart}); err != nil {
					t.Fatal(err)
				}
			}
			if read(t, d.Path+".bak") != own {
				t.Fatal("it was replaced")
			}
			if !strings.Contains(read(t, d.Path+".bak2"), `"three"`) {
				t.Error("what was saved over is kept nowhere")
			}
			forgotten()
			if err := reopened(t, d.Path).Save(titled("five"), Options{Backups: apart}); err != nil {
				t.Fatal(err)
			}
			if got := names(t, d); got != "year.toml year.toml.bak year.toml.bak2" || !strings.Contains(read(t, d.Path+".bak2"), `"four"`) {
				t.Error("the next session does not know a save's .bak:", got)
			}
		})
	}
}

// Without a list of what saves made, a .bak is taken for the user's own.
func TestWithoutAStateFolderABakOfEarlierStays(t *testing.T) {
	defer forgotten()
	d := saved(t, one)
	if err := d.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	forgotten()
	if err := reopened(t, d.Path).Save(titled("three"), Options{Backups: NewBackups("")}); err != nil {
		t.Fatal(err)
	}
	if read(t, d.Path+".bak") != string(one) || read(t, d.Path+".bak2") != string(two) {
		t.Error(names(t, d))
	}
}
