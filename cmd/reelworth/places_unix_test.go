//go:build unix && !darwin

package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestWithoutAHomeNothingIsKeptInTheCurrentDirectory(t *testing.T) {
	temp := t.TempDir()
	for _, name := range []string{"HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME"} {
		t.Setenv(name, "")
	}
	t.Setenv("TMPDIR", temp)
	state, note := places()
	if filepath.Dir(state) != temp || !strings.Contains(note, state) {
		t.Errorf("%q, %q", state, note)
	}
	if settings, err := os.UserConfigDir(); err != nil || !strings.HasPrefix(settings, state) {
		t.Error(settings, err)
	}
	if err := os.Chmod(state, 0o755); err != nil {
		t.Fatal(err)
	}
	t.Setenv("XDG_CONFIG_HOME", "")
	if state, note := places(); state != "" || !strings.Contains(note, "open to others") {
		t.Errorf("%q, %q", state, note)
	}
	if settings, err := os.UserConfigDir(); err != nil || !strings.HasPrefix(settings, temp) {
		t.Error(settings, err)
	}
}

func TestWithAHomeNothingIsSaidOfIt(t *testing.T) {
	home := t.TempDir()
	t.Setenv("HOME", home)
	t.Setenv("XDG_STATE_HOME", "")
	t.Setenv("XDG_CONFIG_HOME", "")
	if state, note := places(); note != "" || !strings.HasPrefix(state, home) {
		t.Errorf("%q, %q", state, note)
	}
	if os.Getenv("XDG_CONFIG_HOME") != "" {
		t.Error("settings are put elsewhere")
	}
}
