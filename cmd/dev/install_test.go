package main

import (
	"errors"
	"strings"
	"testing"
)

func needsNamed(t *testing.T, whats ...string) []need {
	t.Helper()
	var found []need
	for _, what := range whats {
		before := len(found)
		for _, list := range [][]need{buildNeeds, journeyNeeds, readerNeeds} {
			for _, n := range list {
				if strings.HasPrefix(n.what, what) {
					found = append(found, n)
				}
			}
		}
		if len(found) != before+1 {
			t.Fatalf("%q is not one need", what)
		}
	}
	return found
}

func TestTheCommandToTypeNamesOnlyWhatIsMissing(t *testing.T) {
	cases := []struct {
		name string
		goos string
		with manager
		lack []string
		want string
	}{
		{"Debian", "linux", apt, []string{"a C compiler", "X11 cursors"},
			"sudo apt-get update && sudo apt-get install -y --no-install-recommends gcc libxcursor-dev"},
		{"Fedora", "linux", dnf, []string{"OpenGL, to build with", "Xvfb"},
			"sudo dnf install -y mesa-libGL-devel xorg-x11-server-Xvfb"},
		{"Arch", "linux", pacman, []string{"X11 input", "rsvg-convert"},
			"sudo pacman -S --needed libxi librsvg"},
		{"macOS without a compiler", "darwin", brew, []string{"a C compiler"},
			"xcode-select --install"},
		{"macOS without anything", "darwin", brew, []string{"a C compiler", "ImageMagick"},
			"xcode-select --install && brew install imagemagick"},
		{"Windows", "windows", none, []string{"a C compiler"},
			`install MSYS2, then in its shell: pacman -S mingw-w64-x86_64-gcc, and put its mingw64\bin on the PATH`},
		{"a system we do not know", "linux", none, []string{"X11 cursors", "xdotool"},
			"with your system's package manager: X11 cursors and xdotool, a hand on mouse and keys"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if got := installHint(c.goos, c.with, needsNamed(t, c.lack...)); got != c.want {
				t.Errorf("got  %s\nwant %s", got, c.want)
			}
		})
	}
}

func TestEveryNeedHasAPackageOnEveryLinux(t *testing.T) {
	for _, list := range [][]need{buildNeeds, journeyNeeds, readerNeeds} {
		for _, n := range list {
			for _, m := range []manager{apt, dnf, pacman} {
				if n.packages[m] == "" {
					t.Errorf("%s has no package for %s", n.what, m)
				}
			}
			if !n.compiler && len(n.programs) == 0 && n.header == "" && len(n.files) == 0 {
				t.Errorf("%s cannot be looked for", n.what)
			}
		}
	}
}

func TestAPackageIsNamedOnce(t *testing.T) {
	twice := []need{buildNeeds[0], buildNeeds[0]}
	if got := packagesFor(apt, twice); len(got) != 1 {
		t.Errorf("got %v", got)
	}
}

func TestThePackageManagerIsTheFirstThatIsThere(t *testing.T) {
	only := func(there string) func(string) (string, error) {
		return func(name string) (string, error) {
			if name == there {
				return "/usr/bin/" + name, nil
			}
			return "", errors.New("not found")
		}
	}
	cases := []struct {
		goos, there string
		want        manager
	}{
		{"linux", "apt-get", apt}, {"linux", "dnf", dnf}, {"linux", "pacman", pacman},
		{"linux", "another", none}, {"darwin", "", brew}, {"windows", "pacman", none},
	}
	for _, c := range cases {
		if got := findManager(c.goos, only(c.there)); got != c.want {
			t.Errorf("%s with %q: got %q, want %q", c.goos, c.there, got, c.want)
		}
	}
}

func TestOnlyAptInstallsByItself(t *testing.T) {
	for _, m := range []manager{dnf, pacman, brew, none} {
		if _, may := mayInstall(m); may {
			t.Errorf("%q would install without being asked", m)
		}
	}
}

func TestMacAndWindowsAskOnlyForACompiler(t *testing.T) {
	for _, goos := range []string{"darwin", "windows"} {
		if needs := needsOn(goos); len(needs) != 1 || !needs[0].compiler {
			t.Errorf("%s asks for %s", goos, inWords(needs))
		}
	}
	if len(needsOn("linux")) != len(buildNeeds) {
		t.Error("Linux does not ask for all there is")
	}
}

func TestWhatIsNowhereIsMissing(t *testing.T) {
	absent := []need{
		{what: "a program", programs: []string{"no-such-program-here"}},
		{what: "a header", header: "no/such/header.h"},
		{what: "a library", header: "stdlib.h", links: "no_such_library_here"},
		{what: "a file", files: []string{"/no/such/*/file"}},
	}
	if got := missing(absent); len(got) != len(absent) {
		t.Errorf("only %s is called missing", inWords(got))
	}
	if meets(need{what: "a compiler", compiler: true}, "") {
		t.Error("a machine without a compiler is said to have one")
	}
	if got := missing([]need{{what: "Go", programs: []string{"go"}}}); len(got) > 0 {
		t.Error("Go itself is called missing")
	}
}

func TestAWindowNeedsAScreen(t *testing.T) {
	env := func(set string) func(string) string {
		return func(name string) string {
			if name == set {
				return ":0"
			}
			return ""
		}
	}
	if hasDisplay("linux", env("")) {
		t.Error("Linux without DISPLAY and WAYLAND_DISPLAY is said to have a screen")
	}
	for _, set := range []string{"DISPLAY", "WAYLAND_DISPLAY"} {
		if !hasDisplay("linux", env(set)) {
			t.Errorf("Linux with %s is said to have no screen", set)
		}
	}
	if !hasDisplay("darwin", env("")) || !hasDisplay("windows", env("")) {
		t.Error("macOS and Windows always have a screen")
	}
}
