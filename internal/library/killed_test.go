package library

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"reelworth/internal/scenario"
)

// The test binary is also the programs that tests kill, or let save at one time.
func TestMain(m *testing.M) {
	if path := os.Getenv("REELWORTH_TEST_COUNTER"); path != "" {
		if err := countUp(path, savesEach); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
		os.Exit(0)
	}
	if path := os.Getenv("REELWORTH_TEST_WINDOW"); path != "" {
		first, err := strconv.Atoi(os.Getenv("REELWORTH_TEST_FIRST"))
		if err == nil {
			err = window(path, os.Getenv("REELWORTH_TEST_STATE"), first)
		}
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	os.Exit(m.Run())
}

// window has a file open, saves one state after another and keeps others, both at
// once and for ever. It says what it did after it is done, and that it will drop what
// is kept before it does.
func window(path, dir string, first int) error {
	d, err := Open(path)
	if err != nil {
		return err
	}
	r, err := NewRecovery(dir)
	if err != nil {
		return err
	}
	if _, err := NewClaim(dir, path, time.Now()); err != nil {
		return err
	}
	opened := *d
	fmt.Println("open")
	failed := make(chan error)
	go func() {
		for n := first; ; n++ {
			if err := d.Save(state(n), Options{}); err != nil {
				failed <- err
			}
			fmt.Println("saved", n)
		}
	}()
	go func() {
		for n := first; ; n++ {
			if err := r.Keep(&opened, state(n), time.Now()); err != nil {
				failed <- err
			}
			fmt.Println("kept", n)
			if n%5 == 4 {
				fmt.Println("dropping", n)
				if err := r.Drop(); err != nil {
					failed <- err
				}
			}
		}
	}()
	return <-failed
}

// state is a file that its number tells all of: up to some hundred kilobytes.
func state(n int) scenario.File {
	f := titled(strconv.Itoa(n))
	// Of any size, in a key of another version: what a note holds is limited.
	f.Scenarios[0].Extra = scenario.Extra{"ballast": strings.Repeat(fmt.Sprintf("state %d. ", n), n*7919%10000)}
	return f
}

// stateIn is the number of the state that a file holds, if it holds it whole.
func stateIn(f scenario.File, data []byte) (int, error) {
	if len(f.Scenarios) != 1 {
		return 0, fmt.Errorf("%d scenarios in %d bytes", len(f.Scenarios), len(data))
	}
	n, err := strconv.Atoi(f.Scenarios[0].Name)
	if err != nil {
		return 0, err
	}
	if !bytes.Equal(data, scenario.Write(state(n))) {
		return 0, fmt.Errorf("%d bytes are not state %d", len(data), n)
	}
	return n, nil
}

// killed is what a window said until it was killed.
type killed struct {
	process     int
	saved, kept int // the last; −1 for none
	dropped     int // the last that was about to be dropped; −1 for none
}

// killOne starts a window and kills it after it has kept so many states: however slow the
// machine is, it has come as far. It works on until the blow falls, anywhere in a save.
// meanwhile is called while it lives.
func killOne(t *testing.T, path, dir string, first, kept int, meanwhile func(process int)) killed {
	t.Helper()
	child := exec.Command(os.Args[0])
	child.Env = append(os.Environ(), "REELWORTH_TEST_WINDOW="+path, "REELWORTH_TEST_STATE="+dir, fmt.Sprint("REELWORTH_TEST_FIRST=", first))
	var trouble bytes.Buffer
	child.Stderr = &trouble
	pipe, err := child.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := child.Start(); err != nil {
		t.Fatal(err)
	}
	k := killed{process: child.Process.Pid, saved: -1, kept: -1, dropped: -1}
	lines := bufio.NewScanner(pipe)
	lines.Scan() // it has the file open now
	done, far := make(chan bool), make(chan bool)
	go func() {
		defer close(done)
		heard := 0
		if kept == 0 {
			close(far)
		}
		for lines.Scan() {
			var what string
			var n int
			fmt.Sscan(lines.Text(), &what, &n)
			switch what {
			case "saved":
				k.saved = n
			case "kept":
				k.kept = n
				if heard++; heard == kept {
					close(far)
				}
			case "dropping":
				k.dropped = n
			}
		}
	}()
	select {
	case <-far:
	case <-done: // it ended by itself
	}
	meanwhile(k.process)
	child.Process.Kill()
	<-done
	child.Wait()
	if trouble.Len() > 0 {
		t.Fatal(trouble.String())
	}
	return k
}

// patience is after how many kills it is no chance any more that none struck.
const patience = 2000

func TestKillingWindowsLosesNothing(t *testing.T) {
	kills := 100
	if testing.Short() {
		kills = 20
	}
	d := saved(t, scenario.Write(state(0)))
	dir := filepath.Join(t.TempDir(), "state")
	r, err := NewRecovery(dir)
	if err != nil {
		t.Fatal(err)
	}
	claim, err := NewClaim(dir, d.Path, time.Now())
	if err != nil {
		t.Fatal(err)
	}
	onDisk, found, fresh := 0, 0, 0
	halves := func() int { return strings.Count(names(t, d), tempEnd) }
	// Where a blow falls is chance: they fall until one struck in the middle of something.
	for i := 0; i < kills || halves()+fresh == 0 && i < patience; i++ {
		first := (i + 1) * 100000
		k := killOne(t, d.Path, dir, first, rand.N(7), func(process int) {
			if others := claim.Others(); len(others) != 1 || others[0].PID != process {
				t.Errorf("kill %d: the window is not seen: %v", i, others)
			}
			if list, err := r.Leftovers(); err != nil || len(list) > 0 {
				t.Errorf("kill %d: what a living window keeps is no leftover: %v, %v", i, list, err)
			}
		})

		// The user's file holds the last save, or the one it was killed in.
		data, err := os.ReadFile(d.Path)
		if err != nil {
			t.Fatal(err)
		}
		f, _ := scenario.Read(data)
		n, err := stateIn(f, data)
		if k.saved < 0 && n != onDisk && n != first || k.saved >= 0 && n != k.saved && n != k.saved+1 || err != nil {
			t.Fatalf("kill %d: the file holds %d, %+v said before (%v)", i, n, k, err)
		}
		onDisk = n
		if data, err := os.ReadFile(d.Path + ".bak"); !errors.Is(err, fs.ErrNotExist) { // before the first save
			f, _ := scenario.Read(data)
			if _, err := stateIn(f, data); err != nil {
				t.Fatalf("kill %d: the .bak: %v", i, err)
			}
		}

		list, err := r.Leftovers()
		if err != nil || len(list) > 1 {
			t.Fatalf("kill %d: %d leftovers, %v", i, len(list), err)
		}
		mayBeNone := k.kept < 0 || k.dropped == k.kept
		if len(list) == 0 && !mayBeNone {
			t.Fatalf("kill %d: nothing is left of %+v", i, k)
		}
		for _, l := range list {
			n, err := stateIn(l.File, scenario.Write(l.File))
			next := max(k.kept+1, first)
			if n != k.kept && n != next || err != nil || l.Damaged != nil || len(l.Faults) > 0 || l.Path != d.Path {
				t.Fatalf("kill %d: left is %d, %+v said before (%v, %v, %v)", i, n, k, err, l.Damaged, l.Faults)
			}
			if n == next {
				fresh++
			}
			if err := l.Discard(); err != nil {
				t.Fatal(err)
			}
			found++
		}
		if others := claim.Others(); len(others) > 0 {
			t.Fatalf("kill %d: a dead window is taken for one that has the file open: %v", i, others)
		}
	}
	if found < kills/6 || onDisk == 0 {
		t.Errorf("the windows hardly saved or kept anything: %d of %d left something", found, kills)
	}
	if halves()+fresh == 0 {
		t.Errorf("of %d kills none struck in the middle of anything", patience)
	}
	t.Logf("at least %d kills: %d left work, %d of it kept but not yet said so; %d in the middle of a save", kills, found, fresh, halves())

	// Nothing stays in the state folder but what is alive.
	if err := r.Close(); err != nil {
		t.Fatal(err)
	}
	claim.Release()
	r, err = NewRecovery(dir)
	if err != nil {
		t.Fatal(err)
	}
	if list, err := r.Leftovers(); err != nil || len(list) > 0 {
		t.Error(list, err)
	}
	if got := len(inFolder(t, dir)); got != 1 {
		t.Errorf("%d files in the state folder, want the lock alone: %v", got, inFolder(t, dir))
	}
}

func inFolder(t *testing.T, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	for _, e := range entries {
		list = append(list, e.Name())
	}
	return list
}
