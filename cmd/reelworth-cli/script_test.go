package main

import (
	"bytes"
	"fmt"
	"image"
	_ "image/png"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"reelworth/internal/scenario"
)

func TestMain(m *testing.M) { testscript.Main(m, map[string]func(){"reelworth-cli": main}) }

// The scripts in testdata/script read like a manual: what is typed, and what comes back.
// quayside.toml, the built-in demo, lies beside every script, and so do files of published
// rates.
func TestScripts(t *testing.T) {
	demo, err := os.ReadFile("../../testdata/quayside.toml")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		RequireExplicitExec: true,
		Setup: func(env *testscript.Env) error {
			if err := os.CopyFS(env.WorkDir, os.DirFS("../../testdata/rates")); err != nil {
				return err
			}
			return os.WriteFile(filepath.Join(env.WorkDir, "quayside.toml"), demo, 0o644)
		},
		Cmds: map[string]func(ts *testscript.TestScript, neg bool, args []string){
			"exits":   exits,
			"many":    many,
			"fill":    fill,
			"without": without,
			"picture": picture,
			"starts":  starts,
		},
	})
}

// exits runs the program and holds its exit status: exits 2 compare.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) == 0 {
		ts.Fatalf("usage: exits STATUS ARGUMENTS…")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	err = ts.Exec("reelworth-cli", args[1:]...)
	got := 0
	if err != nil {
		// Exec wraps nothing: the status is in the text only.
		m := regexp.MustCompile(`exit status (\d+)`).FindStringSubmatch(err.Error())
		if m == nil {
			ts.Fatalf("%v", err)
		}
		got, _ = strconv.Atoi(m[1])
	}
	if got != want {
		ts.Fatalf("exit status %d, want %d", got, want)
	}
}

// fill writes a file of so many bytes: fill FILE BYTES.
func fill(ts *testscript.TestScript, _ bool, args []string) {
	n, err := strconv.Atoi(args[1])
	ts.Check(err)
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), bytes.Repeat([]byte("#"), n), 0o644))
}

// many writes a file of so many scenarios, the example again and again: many FILE N.
func many(ts *testscript.TestScript, _ bool, args []string) {
	n, err := strconv.Atoi(args[1])
	ts.Check(err)
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(examples(n)), 0o644))
}

// examples is a file with the example so many times, each with its number in its name.
func examples(times int) string {
	head, one, _ := strings.Cut(scenario.Example(), "[[scenario]]")
	for n := range times {
		head += "[[scenario]]" + strings.Replace(one, `name = "`, fmt.Sprintf(`name = "No %d, `, n+1), 1) + "\n"
	}
	return head
}

// without says that the last output holds no sign that steers a terminal: without
// steering stdout.
func without(ts *testscript.TestScript, _ bool, args []string) {
	for _, b := range []byte(ts.ReadFile(args[1])) {
		if b < 0x20 && b != '\n' || b == 0x7f {
			ts.Fatalf("%s holds the byte 0x%02X", args[1], b)
		}
	}
}

// picture holds the size of a PNG: picture FILE WIDTH HEIGHT.
func picture(ts *testscript.TestScript, _ bool, args []string) {
	f, err := os.Open(ts.MkAbs(args[0]))
	ts.Check(err)
	defer f.Close()
	size, format, err := image.DecodeConfig(f)
	ts.Check(err)
	if got := []string{strconv.Itoa(size.Width), strconv.Itoa(size.Height)}; got[0] != args[1] || got[1] != args[2] {
		ts.Fatalf("%s of %s × %s, want %s × %s", format, got[0], got[1], args[1], args[2])
	}
}

// starts holds the first bytes of a file: starts FILE %PDF.
func starts(ts *testscript.TestScript, _ bool, args []string) {
	if got := ts.ReadFile(args[0]); !bytes.HasPrefix([]byte(got), []byte(args[1])) {
		ts.Fatalf("%s starts with %.20q", args[0], got)
	}
}

// A failure inside the program is one line to the user.
func TestNoStackTrace(t *testing.T) {
	var out, complaints bytes.Buffer
	commands["fail"] = command{name: "fail", do: func(call, stage) int { panic("index out of range\ngoroutine 1 [running]") }}
	defer delete(commands, "fail")
	if status := run([]string{"fail", "a.toml"}, stage{nil, &out, &complaints, scenario.Date{Year: 2026, Month: 11, Day: 24}}); status != statusInput {
		t.Errorf("exit status %d", status)
	}
	if n := bytes.Count(complaints.Bytes(), []byte("\n")); n != 1 {
		t.Errorf("%d lines: %s", n, complaints.Bytes())
	}
}
