package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"

	"reelworth/cmd/dev/packing"
)

// mingw compiles C for Windows.
const mingw = "x86_64-w64-mingw32-gcc"

// makePackages packs the committed revision for everybody who has no Go, into a folder
// named by its version.
func makePackages(args []string) int {
	if !packsHere() {
		fmt.Fprintln(os.Stderr, "dev: packages are made on Linux")
		return 1
	}
	if lacking := provide(needsOn(runtime.GOOS), os.Stdout); len(lacking) > 0 {
		return 1
	}
	provide(packageNeeds, os.Stdout) // what is still lacking is named where it would be used
	folder := filepath.Join(scratch(), "packages")
	if len(args) == 1 {
		folder = args[0]
	}
	made, err := packRevision(folder)
	for _, path := range made {
		if info, err := os.Stat(path); err == nil {
			fmt.Printf("  %6.1f MB  %s\n", float64(info.Size())/1e6, path)
		}
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "dev:", err)
		return 1
	}
	return 0
}

// packRevision makes every package this machine can make, checks them, and gives their
// paths.
func packRevision(folder string) (made []string, err error) {
	src, err := takeRevision()
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(src.folder)
	fmt.Println("Building the programs. The first time their C takes some minutes.")
	linux, err := src.goods(releaseLinux)
	if err != nil {
		return nil, err
	}
	if folder, err = filepath.Abs(filepath.Join(folder, "reelworth-"+linux.Version)); err == nil {
		err = os.MkdirAll(folder, 0o755)
	}
	if err != nil {
		return nil, err
	}
	add := func(path string, err error) error {
		if err == nil {
			made = append(made, path)
		}
		return err
	}
	wrong := add(linux.Tar(folder, runtime.GOARCH))
	if anyProgram([]string{packing.DebTool}) {
		deb, err := linux.Deb(folder, runtime.GOARCH)
		wrong = errors.Join(wrong, add(deb, err))
		if err == nil {
			wrong = errors.Join(wrong, packing.CheckDeb(deb, linux.Version))
		}
		sayUnjudged()
	} else {
		fmt.Printf("No Debian package: there is no %s here.\n", packing.DebTool)
	}
	if anyProgram([]string{mingw}) {
		windows, err := src.goods(releaseWindows)
		if err == nil {
			err = add(windows.Zip(folder, releaseWindows.arch))
		}
		wrong = errors.Join(wrong, err)
	} else {
		fmt.Printf("No zip for Windows: there is no %s here; on Debian it is in gcc-mingw-w64-x86-64.\n", mingw)
	}
	return append(made, filepath.Join(folder, "SHA256SUMS")), errors.Join(wrong, packing.Checksums(folder, made))
}

// sayUnjudged names the judges that are not there.
func sayUnjudged() {
	for _, tool := range packing.CheckTools {
		if !anyProgram([]string{tool}) {
			fmt.Printf("Not judged by %s, which is not here.\n", tool)
		}
	}
}

// packsHere says whether packages are made on this system.
func packsHere() bool { return runtime.GOOS == "linux" }

func whyNoPackages(lacking []need) string {
	if !packsHere() {
		return "packages are made on Linux"
	}
	return without(lacking, append(needsOn(runtime.GOOS), packageNeeds...))
}

// testPackages is a command of its own, since release builds would take the test of
// everything past what a person waits for.
func testPackages() int {
	lacking := provide(append(needsOn(runtime.GOOS), packageNeeds...), os.Stdout)
	steps := []step{{name: "packages: made twice, unpacked, started, judged", cannot: whyNoPackages(lacking), do: checkPackages}}
	if !summarise(runSteps(steps, inCI(), os.Stdout), os.Stdout) {
		return 1
	}
	return 0
}

// checkPackages packs what lies here twice, with the flags everything else is built
// with, since others would compile the window's C again for minutes; the two must be the
// same, and the Debian package must do. Only the command line program, which has no C,
// is built as for a release, in two places.
func checkPackages() (report, []error) {
	here, err := os.Getwd()
	if err != nil {
		return report{}, []error{err}
	}
	var debs [2][]byte
	for i := range debs {
		folder, err := os.MkdirTemp("", "reelworth-packages-")
		if err != nil {
			return report{}, []error{err}
		}
		defer os.RemoveAll(folder)
		g, err := source{folder: here, revision: describe(here)}.goods(trial)
		if err != nil {
			return report{}, []error{err}
		}
		deb, err := g.Deb(folder, runtime.GOARCH)
		if err != nil {
			return report{}, []error{err}
		}
		if debs[i], err = os.ReadFile(deb); err != nil {
			return report{}, []error{err}
		}
		if err := packing.CheckDeb(deb, g.Version); i == 0 && err != nil {
			return report{}, []error{err}
		}
	}
	if !bytes.Equal(debs[0], debs[1]) {
		return report{}, []error{errors.New("two packages of one revision differ")}
	}
	return report{brief: fmt.Sprintf("a Debian package of %.1f MB\n", float64(len(debs[0]))/1e6)}, sameInTwoPlaces()
}

// sameInTwoPlaces builds the command line program for a release in two folders.
func sameInTwoPlaces() []error {
	var programs [2][]byte
	for i := range programs {
		src, err := takeRevision()
		if err != nil {
			return nil // no repository here: there is no revision to build twice
		}
		defer os.RemoveAll(src.folder)
		if programs[i], err = src.build(releaseLinux, "reelworth-cli"); err != nil {
			return []error{err}
		}
	}
	if !bytes.Equal(programs[0], programs[1]) {
		return []error{errors.New("two release builds of the command line program differ")}
	}
	return nil
}

// git asks the repository in a folder.
func git(folder string, args ...string) (string, error) {
	cmd := exec.Command("git", args...)
	cmd.Dir = folder
	out, err := cmd.Output()
	if err != nil {
		return "", fmt.Errorf("git %s: %w", strings.Join(args, " "), err)
	}
	return strings.TrimSpace(string(out)), nil
}
