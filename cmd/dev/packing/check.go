package packing

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
)

// CheckTools are the programs that judge a Debian package.
var CheckTools = []string{"desktop-file-validate", "appstreamcli", "lintian"}

// CheckDeb unpacks a Debian package and gives all that is wrong with it: programs that
// do not start with the machine's libraries, libraries that it does not depend on, and
// what the desktop's and Debian's own checks call errors.
func CheckDeb(path, version string) error {
	root, err := os.MkdirTemp("", "reelworth-unpacked-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(root)
	if out, err := exec.Command(DebTool, "-x", path, root).CombinedOutput(); err != nil {
		return fmt.Errorf("it cannot be unpacked: %w: %s", err, out)
	}
	under := func(name string) string { return filepath.Join(root, "usr", filepath.FromSlash(name)) }
	return errors.Join(
		starts(under("bin/reelworth-cli"), "reelworth-cli "+version, "version"),
		starts(under("bin/reelworth"), "reelworth "+version, "--version"),
		dependsOnAll(path, under("bin/reelworth")),
		judged("desktop-file-validate", under("share/applications/"+id+".desktop")),
		judged("appstreamcli", "validate", "--no-net", under("share/metainfo/"+id+".metainfo.xml")),
		judged("lintian", "--fail-on", "error", "--allow-root", path),
	)
}

// starts runs a program: it ends well, says what is expected, and complains of nothing.
func starts(program, want string, args ...string) error {
	var out, complaints bytes.Buffer
	cmd := exec.Command(program, args...)
	cmd.Stdout, cmd.Stderr = &out, &complaints
	err := cmd.Run()
	if err != nil || complaints.Len() > 0 || strings.TrimSpace(out.String()) != want {
		return fmt.Errorf("%s %s: %v; it said %q and complained %q", filepath.Base(program), strings.Join(args, " "), err, out.String(), complaints.String())
	}
	return nil
}

// loaded is a library as ldd tells it.
var loaded = regexp.MustCompile(`=> (/\S+)`)

// dependsOnAll asks the machine which packages hold the libraries that a program loads,
// and whether the package depends on those it is itself linked with.
func dependsOnAll(path, program string) error {
	depends, err := exec.Command(DebTool, "-f", path, "Depends").Output()
	if err != nil {
		return fmt.Errorf("what it depends on is not told: %w", err)
	}
	named := map[string]bool{}
	for _, d := range strings.Split(string(depends), ",") {
		named[strings.Fields(d)[0]] = true
	}
	data, err := os.ReadFile(program)
	if err != nil {
		return err
	}
	direct, err := linked(data)
	if err != nil {
		return err
	}
	out, err := exec.Command("ldd", program).Output()
	if err != nil {
		return fmt.Errorf("ldd: %w", err)
	}
	var wrong []error
	for _, m := range loaded.FindAllStringSubmatch(string(out), -1) {
		if !direct[filepath.Base(m[1])] {
			continue // a library's own library
		}
		if holder := packageOf(m[1]); holder != "" && !named[holder] {
			wrong = append(wrong, fmt.Errorf("it needs %s of %s, on which it does not depend", filepath.Base(m[1]), holder))
		}
	}
	if strings.Contains(string(out), "not found") {
		wrong = append(wrong, fmt.Errorf("libraries are missing here:\n%s", out))
	}
	return errors.Join(wrong...)
}

// packageOf is the Debian package that holds a file, "" where none does.
func packageOf(file string) string {
	// What lies below /lib is recorded there, though that is a link to /usr/lib.
	for _, name := range []string{file, strings.TrimPrefix(file, "/usr"), "/usr" + file} {
		if out, err := exec.Command("dpkg-query", "-S", name).Output(); err == nil {
			holder, _, _ := strings.Cut(string(out), ":")
			return holder
		}
	}
	return ""
}

// judged asks a program for its judgement; one that is not there has none.
func judged(program string, args ...string) error {
	if _, err := exec.LookPath(program); err != nil {
		return nil
	}
	if out, err := exec.Command(program, args...).CombinedOutput(); err != nil {
		return fmt.Errorf("%s: %w:\n%s", program, err, out)
	}
	return nil
}
