package main

import (
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
)

// provide sees to it that the needs are met, and gives those that still are not.
// It says on w what it lacks, what it does, and what there is to type.
func provide(needs []need, w io.Writer) []need {
	lacking := missing(needs)
	if len(lacking) == 0 {
		return nil
	}
	fmt.Fprintf(w, "This machine lacks %s.\n", inWords(lacking))
	with := findManager(runtime.GOOS, exec.LookPath)
	if asRoot, may := mayInstall(with); may {
		if err := installWithApt(packagesFor(with, lacking), asRoot, w); err != nil {
			fmt.Fprintf(w, "That did not work: %v.\n", err)
		}
		if lacking = missing(needs); len(lacking) > 0 {
			fmt.Fprintf(w, "Still lacking: %s.\n", inWords(lacking))
		}
	}
	if len(lacking) > 0 {
		fmt.Fprintf(w, "To install it:\n\n    %s\n\n", installHint(runtime.GOOS, with, lacking))
	}
	return lacking
}

// inWords lists what is lacking as a sentence would.
func inWords(needs []need) string {
	names := make([]string, len(needs))
	for i, n := range needs {
		names[i] = n.what
	}
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:len(names)-1], "; ") + " and " + names[len(names)-1]
}

// packagesFor gives the packages that meet the needs, in order, each once.
func packagesFor(with manager, needs []need) []string {
	var packages []string
	for _, n := range needs {
		if name := n.packages[with]; name != "" && !slices.Contains(packages, name) {
			packages = append(packages, name)
		}
	}
	return packages
}

// installHint is the command to type, for a person who is not root.
func installHint(goos string, with manager, needs []need) string {
	packages := packagesFor(with, needs)
	var commands []string
	if i := slices.Index(packages, systemsOwn); i >= 0 {
		packages = slices.Delete(packages, i, i+1)
		commands = append(commands, "xcode-select --install")
	}
	names := strings.Join(packages, " ")
	switch {
	case with == none && goos == "windows":
		commands = append(commands, "install MSYS2, then in its shell: pacman -S mingw-w64-x86_64-gcc, and put its mingw64\\bin on the PATH")
	case with == none:
		commands = append(commands, "with your system's package manager: "+inWords(needs))
	case names == "":
	case with == apt:
		commands = append(commands, "sudo apt-get update && sudo apt-get install -y --no-install-recommends "+names)
	case with == dnf:
		commands = append(commands, "sudo dnf install -y "+names)
	case with == pacman:
		commands = append(commands, "sudo pacman -S --needed "+names)
	case with == brew:
		commands = append(commands, "brew install "+names)
	}
	return strings.Join(commands, " && ")
}

// findManager gives the package manager of this system.
func findManager(goos string, look func(string) (string, error)) manager {
	switch goos {
	case "darwin":
		return brew // there or not, it is what to type
	case "windows":
		return none
	}
	for _, m := range []manager{apt, dnf, pacman} {
		if _, err := look(string(m)); err == nil {
			return m
		}
	}
	return none
}

// mayInstall says whether this program may install by itself, and whether it is
// root already or has to go through sudo.
func mayInstall(with manager) (asRoot, may bool) {
	if with != apt {
		return false, false
	}
	if os.Geteuid() == 0 {
		return true, true
	}
	// -n: sudo fails where it would ask for a password.
	return false, exec.Command("sudo", "-n", "true").Run() == nil
}

// installWithApt installs packages; where apt has no package lists, or they turn
// out to be old, it fetches them first.
func installWithApt(packages []string, asRoot bool, w io.Writer) error {
	if len(packages) == 0 {
		return fmt.Errorf("no package is known for it")
	}
	fmt.Fprintf(w, "Installing with apt-get: %s\n", strings.Join(packages, " "))
	if !hasAptLists() {
		if err := aptGet(asRoot, w, "update"); err != nil {
			return err
		}
	}
	install := append([]string{"install", "-y", "--no-install-recommends"}, packages...)
	if aptGet(asRoot, io.Discard, install...) == nil {
		return nil
	}
	if err := aptGet(asRoot, w, "update"); err != nil {
		return err
	}
	return aptGet(asRoot, w, install...)
}

func hasAptLists() bool {
	lists, _ := filepath.Glob("/var/lib/apt/lists/*_Packages*")
	return len(lists) > 0
}

// aptGet runs apt-get asking nothing, and shows its words on w only if it fails.
func aptGet(asRoot bool, w io.Writer, args ...string) error {
	line := append([]string{"env", "DEBIAN_FRONTEND=noninteractive", "apt-get", "-q"}, args...)
	if !asRoot {
		line = append([]string{"sudo", "-n"}, line...)
	}
	out, err := exec.Command(line[0], line[1:]...).CombinedOutput()
	if err != nil {
		fmt.Fprintf(w, "%s\n", out)
		return fmt.Errorf("%s: %w", strings.Join(line, " "), err)
	}
	return nil
}
