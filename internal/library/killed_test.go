package library

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"

	"reelworth/internal/scenario"
)

// The child of the next test: saves two contents in turn until it is killed.
func TestMain(m *testing.M) {
	if path := os.Getenv("REELWORTH_TEST_SAVE_FOREVER"); path != "" {
		d, err := Open(path)
		if err != nil {
			panic(err)
		}
		fmt.Println("saving")
		i := 0
		if d.File.Scenarios[0].Name == "tick" {
			i = 1
		}
		for ; ; i++ {
			if err := d.Save(long(i%2), Options{}); err != nil {
				panic(err)
			}
		}
	}
	os.Exit(m.Run())
}

// long is one of two files of some hundred kilobytes.
func long(which int) scenario.File {
	f := titled([]string{"tick", "tock"}[which])
	f.Scenarios[0].Note = strings.Repeat([]string{"tick ", "tock "}[which], 60000)
	return f
}

func TestKillingASaveLeavesTheOldOrTheNewFileWhole(t *testing.T) {
	d := saved(t, one)
	whole := map[string]int{string(one): 0, string(scenario.Write(long(0))): 0, string(scenario.Write(long(1))): 0}
	start := time.Now()
	if err := d.Save(long(0), Options{}); err != nil {
		t.Fatal(err)
	}
	span := 4 * time.Since(start) // the kills strike anywhere in some four saves
	halves := 0
	for i := range 50 {
		child := exec.Command(os.Args[0])
		child.Env = append(os.Environ(), "REELWORTH_TEST_SAVE_FOREVER="+d.Path)
		var trouble bytes.Buffer
		child.Stderr = &trouble
		out, err := child.StdoutPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := child.Start(); err != nil {
			t.Fatal(err)
		}
		out.Read(make([]byte, 1)) // it saves now
		time.Sleep(span * time.Duration(i) / 50)
		child.Process.Kill()
		child.Wait()
		if trouble.Len() > 0 {
			t.Fatal(trouble.String())
		}
		for _, path := range []string{d.Path, d.Path + ".bak"} {
			data, err := os.ReadFile(path)
			if errors.Is(err, fs.ErrNotExist) && path != d.Path {
				continue // killed before the first save
			}
			if _, ok := whole[string(data)]; !ok || err != nil {
				t.Fatalf("kill %d: %s is half a file of %d bytes (%v)", i, path, len(data), err)
			}
			whole[string(data)]++
		}
		halves = strings.Count(names(t, d), tempEnd)
	}
	if whole[string(scenario.Write(long(0)))] == 0 || whole[string(scenario.Write(long(1)))] == 0 {
		t.Error("the child hardly saved")
	}
	t.Logf("%d of 50 kills struck in the middle of a save", halves)
}
