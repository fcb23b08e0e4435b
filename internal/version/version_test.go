package version

import (
	"os"
	"regexp"
	"runtime/debug"
	"testing"
)

func TestABuildSaysWhatItIsOf(t *testing.T) {
	vcs := func(modified string) []debug.BuildSetting {
		return []debug.BuildSetting{{Key: "vcs", Value: "git"}, {Key: "vcs.revision", Value: "48a417d0c1e2f3a4b5c6d7e8f9a0b1c2d3e4f5a6"},
			{Key: "vcs.time", Value: "2026-11-24T18:05:11Z"}, {Key: "vcs.modified", Value: modified}}
	}
	for _, test := range []struct {
		main     string
		settings []debug.BuildSetting
		want     string
	}{
		{"v1.4.2", vcs("false"), "1.4.2"},
		{"v1.4.3-0.20261124180511-48a417d0c1e2", vcs("false"), Base + "+20261124.48a417d0c1e2"},
		{"v1.4.2+dirty", vcs("true"), Base + "+20261124.48a417d0c1e2.changed"},
		{"(devel)", nil, Base},
		{"", nil, Base},
	} {
		info := &debug.BuildInfo{Main: debug.Module{Version: test.main}, Settings: test.settings}
		if got := of(info); got != test.want {
			t.Errorf("%q: %s, want %s", test.main, got, test.want)
		}
	}
}

// The number stands in two places; they agree.
func TestTheToolkitIsToldTheSame(t *testing.T) {
	told, err := os.ReadFile("../../FyneApp.toml")
	if err != nil {
		t.Fatal(err)
	}
	m := regexp.MustCompile(`(?m)^Version = "(.*)"$`).FindSubmatch(told)
	if m == nil || string(m[1]) != Base {
		t.Errorf("FyneApp.toml says %q, this package %q", m, Base)
	}
}

// A Debian version: digits, letters and . + ~ after a digit (deb-version(7)).
func TestItMayNameAPackage(t *testing.T) {
	if v := String(); !regexp.MustCompile(`^[0-9][0-9A-Za-z.+~]*$`).MatchString(v) {
		t.Errorf("%q cannot name a package", v)
	}
}
