package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// missing gives the needs that this machine does not meet.
func missing(needs []need) []need {
	compiler := findCompiler()
	var lacking []need
	for _, n := range needs {
		if !meets(n, compiler) {
			lacking = append(lacking, n)
		}
	}
	return lacking
}

// meets says whether one need is met; compiler is "" where there is none.
func meets(n need, compiler string) bool {
	switch {
	case n.compiler && compiler == "":
		return false
	case len(n.programs) > 0 && !anyProgram(n.programs):
		return false
	case n.header != "" && !hasHeader(n, compiler):
		return false
	case len(n.files) > 0 && !anyFile(n.files):
		return false
	}
	return true
}

// findCompiler gives the path of the C compiler the go command would call, "" if
// there is none. Without one the go command quietly leaves all C out, and the
// window then fails to build with a message about missing Go files.
func findCompiler() string {
	out, err := exec.Command("go", "env", "CC").Output()
	if err != nil {
		return ""
	}
	words := strings.Fields(string(out))
	if len(words) == 0 {
		return ""
	}
	path, err := exec.LookPath(words[0])
	if err != nil {
		return ""
	}
	return path
}

func anyProgram(names []string) bool {
	for _, name := range names {
		if _, err := exec.LookPath(name); err == nil {
			return true
		}
	}
	return false
}

func anyFile(patterns []string) bool {
	for _, pattern := range patterns {
		if found, _ := filepath.Glob(pattern); len(found) > 0 {
			return true
		}
	}
	return false
}

// hasHeader asks the compiler, which knows where headers and libraries lie;
// without one it looks at the usual places.
func hasHeader(n need, compiler string) bool {
	if compiler == "" {
		return anyFile([]string{"/usr/include/" + n.header, "/usr/include/*-linux-*/" + n.header, "/usr/local/include/" + n.header})
	}
	dir, err := os.MkdirTemp("", "reelworth-trial-")
	if err != nil {
		return false
	}
	defer os.RemoveAll(dir)
	args := []string{"-x", "c", "-", "-o", filepath.Join(dir, "trial")}
	if n.links != "" {
		args = append(args, "-l"+n.links)
	}
	trial := exec.Command(compiler, args...)
	trial.Stdin = strings.NewReader(trialProgram(n.header))
	return trial.Run() == nil
}

// trialProgram is the smallest C program that links only where the header is.
func trialProgram(header string) string {
	return fmt.Sprintf("#if !__has_include(<%s>)\n#error missing\n#endif\nint main(void) { return 0; }\n", header)
}

// hasDisplay says whether a window can open: outside macOS and Windows that
// takes an X server or a Wayland compositor.
func hasDisplay(goos string, getenv func(string) string) bool {
	if goos == "darwin" || goos == "windows" {
		return true
	}
	return getenv("DISPLAY") != "" || getenv("WAYLAND_DISPLAY") != ""
}
