package version

import (
	"regexp"
	"runtime/debug"
	"strings"
)

// Base is the number of the release being worked on, as FyneApp.toml has it.
const Base = "0.1.0"

// String is the version, such as "0.1.0", or "0.1.0+20261124.48a417d0c1e2" between
// releases. It holds only signs that a Debian version may hold.
func String() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return Base
	}
	return of(info)
}

// release is a tag that names a release; the go command's own names for untagged
// revisions are longer.
var release = regexp.MustCompile(`^v(\d+\.\d+\.\d+)$`)

func of(info *debug.BuildInfo) string {
	if m := release.FindStringSubmatch(info.Main.Version); m != nil {
		return m[1]
	}
	told := map[string]string{}
	for _, s := range info.Settings {
		told[s.Key] = s.Value
	}
	revision := told["vcs.revision"]
	if revision == "" {
		return Base
	}
	day, _, _ := strings.Cut(told["vcs.time"], "T")
	text := Base + "+" + strings.ReplaceAll(day, "-", "") + "." + revision[:min(len(revision), shown)]
	if told["vcs.modified"] == "true" {
		text += ".changed"
	}
	return text
}

// shown is how many digits of a revision are told, as git itself does for large
// projects.
const shown = 12
