package library

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"

	"reelworth/internal/scenario"
)

const savesEach = 40

// countUp opens a file, adds one to the number it holds and saves it, so many times; where
// another saved in between it begins that one again, as its error asks for.
func countUp(path string, times int) error {
	for range times {
		for {
			d, err := Open(path)
			if err != nil {
				return err
			}
			n, err := strconv.Atoi(d.File.Scenarios[0].Name)
			if err != nil {
				return err
			}
			err = d.Save(titled(strconv.Itoa(n+1)), Options{})
			var changed *ChangedOutside
			if err == nil {
				break
			}
			if !errors.As(err, &changed) {
				return err
			}
		}
	}
	return nil
}

// Two saves at one instant are one after the other, and the second learns of the first: not
// one is lost silently. In a window, two windows and two programs.
func TestOfSavesAtOneInstantNoneIsLost(t *testing.T) {
	const programs, goroutines = 3, 4
	d := saved(t, scenario.Write(titled("0")))
	var all sync.WaitGroup
	for range programs {
		child := exec.Command(os.Args[0])
		child.Env = append(os.Environ(), "REELWORTH_TEST_COUNTER="+d.Path)
		all.Add(1)
		go func() {
			defer all.Done()
			if out, err := child.CombinedOutput(); err != nil {
				t.Errorf("%v: %s", err, out)
			}
		}()
	}
	for range goroutines {
		all.Add(1)
		go func() {
			defer all.Done()
			if err := countUp(d.Path, savesEach); err != nil {
				t.Error(err)
			}
		}()
	}
	all.Wait()
	f, _ := scenario.Read([]byte(read(t, d.Path)))
	if want := fmt.Sprint((programs + goroutines) * savesEach); f.Scenarios[0].Name != want {
		t.Errorf("%s saves are in the file, %s were made", f.Scenarios[0].Name, want)
	}
	for _, name := range strings.Fields(names(t, d)) { // without a state folder programs do not know each other's .bak
		if name != "year.toml" && !strings.HasPrefix(name, "year.toml.bak") {
			t.Error("left behind:", name)
		}
	}
}

func TestTheLockOfAKilledSaveHoldsNobodyUp(t *testing.T) {
	d := saved(t, one)
	write(t, tempStart(d.Path)+"lock", nil)
	if err := d.Save(titled("two"), Options{}); err != nil {
		t.Fatal(err)
	}
	if got := names(t, d); got != "year.toml year.toml.bak" {
		t.Error("left behind:", got)
	}
}

// Where no lock can be had the save goes on: what stands in the way of the lock may not
// stand in the way of the file.
func TestWithoutALockFilesAreSavedStill(t *testing.T) {
	d := saved(t, one)
	if err := os.Mkdir(tempStart(d.Path)+"lock", 0o755); err != nil {
		t.Fatal(err)
	}
	if err := d.Save(titled("two"), Options{}); err != nil || read(t, d.Path) != string(two) {
		t.Error(err)
	}
}

// A name may have 255 bytes; what stands beside the file for a moment has a shorter one.
func TestFilesOfTheLongestNamesAreSaved(t *testing.T) {
	for _, name := range []string{
		strings.Repeat("n", 250) + ".toml",
		strings.Repeat("n", 248) + ".toml",
		strings.Repeat("ñ", 125) + ".toml",
		strings.Repeat("年", 83) + ".toml",
	} {
		path := filepath.Join(t.TempDir(), name)
		write(t, path, one)
		d, err := Open(path)
		if err != nil {
			t.Fatal(err)
		}
		if err := d.Save(titled("two"), Options{}); err != nil {
			t.Errorf("%d bytes: %v", len(name), err)
			continue
		}
		entries := strings.Split(names(t, d), " ")
		for _, e := range entries {
			if e != name && (!strings.HasSuffix(e, backupEnd) || read(t, filepath.Join(filepath.Dir(path), e)) != string(one)) {
				t.Errorf("%d bytes: %q", len(name), e)
			}
			if strings.ContainsRune(e, '\uFFFD') || strings.ToValidUTF8(e, "") != e {
				t.Errorf("a name cut within a letter: %q", e)
			}
		}
		if len(entries) != 2 {
			t.Error(entries)
		}
	}
}
