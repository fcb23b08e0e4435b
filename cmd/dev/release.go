package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"time"

	"reelworth/cmd/dev/packing"
)

// release is one way the programs are built to be handed on.
type release struct {
	system, arch string // Go's names; "" is this machine's
	tags         string // of the window
	flags        []string
	window       []string // further flags of the window alone
	env          []string // of the window alone
}

// One set of flags, since others compile all of the window's C again. -trimpath and the
// revision in place of the folder make a build the same wherever it is made.
var (
	releaseFlags   = []string{"-trimpath", "-buildvcs=auto", "-ldflags=-s -w"}
	releaseLinux   = release{tags: tagsOn("linux"), flags: releaseFlags}
	releaseWindows = release{system: "windows", arch: "amd64", flags: releaseFlags,
		tags:   tagsOn("windows"),
		window: []string{"-ldflags=-s -w -H=windowsgui"}, env: []string{"CC=" + mingw}}
	trial = release{tags: windowTags, flags: []string{"-ldflags=-s -w"}}
)

// source is what is built: a folder, and the revision that it holds.
type source struct {
	folder string
	revision
}

// revision is what the repository knows.
type revision struct {
	made    time.Time
	changes []string
}

// takeRevision copies the committed revision to a folder of its own: what is packed is
// what is committed, whatever else lies here.
func takeRevision() (source, error) {
	here, err := os.Getwd()
	if err != nil {
		return source{}, err
	}
	commit, err := git(here, "rev-parse", "HEAD")
	if err != nil {
		return source{}, fmt.Errorf("packages are made of a committed revision: %w", err)
	}
	if changed, err := git(here, "status", "--porcelain"); err == nil && changed != "" {
		fmt.Printf("%d changed files are not committed and so not packed.\n", len(strings.Split(changed, "\n")))
	}
	folder, err := os.MkdirTemp("", "reelworth-source-")
	if err != nil {
		return source{}, err
	}
	if _, err = git(here, "clone", "--quiet", "--no-checkout", here, folder); err == nil {
		_, err = git(folder, "checkout", "--quiet", "--detach", commit)
	}
	if err != nil {
		os.RemoveAll(folder)
		return source{}, err
	}
	return source{folder, describe(folder)}, nil
}

// changesTold is how many revisions a package's changelog tells.
const changesTold = 30

// describe asks the repository about the revision in a folder; without a repository the
// packages bear a day of their own.
func describe(folder string) revision {
	r := revision{made: time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC), changes: []string{"Packed from what lay in a folder."}}
	at, err := git(folder, "log", "-1", "--format=%ct")
	if err != nil {
		return r
	}
	if seconds, err := strconv.ParseInt(at, 10, 64); err == nil {
		r.made = time.Unix(seconds, 0).UTC()
	}
	if subjects, err := git(folder, "log", fmt.Sprintf("-%d", changesTold), "--format=%s"); err == nil {
		r.changes = strings.Split(subjects, "\n")
	}
	return r
}

// build builds one of the programs and gives its bytes.
func (s source) build(r release, program string) ([]byte, error) {
	out := filepath.Join(os.TempDir(), fmt.Sprintf("reelworth-build-%d", os.Getpid()))
	defer os.Remove(out)
	args := append([]string{"build", "-o", out}, r.flags...)
	env := []string{"CGO_ENABLED=0"}
	if program == "reelworth" {
		env = append(slices.Clone(r.env), "CGO_ENABLED=1")
		args = append(append(args, r.window...), "-tags="+r.tags)
	}
	cmd := s.goIn(r, env, append(args, "./cmd/"+program)...)
	if said, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("%s cannot be built: %w\n%s", program, err, said)
	}
	return os.ReadFile(out)
}

// goIn is a go command in the source, free of what the user set for others.
func (s source) goIn(r release, env []string, args ...string) *exec.Cmd {
	cmd := exec.Command("go", args...)
	cmd.Dir = s.folder
	cmd.Env = append(os.Environ(), "GOFLAGS=", "GOWORK=off")
	if r.system != "" {
		cmd.Env = append(cmd.Env, "GOOS="+r.system, "GOARCH="+r.arch)
	}
	cmd.Env = append(cmd.Env, env...)
	return cmd
}

// goods builds both programs and gathers what goes with them.
func (s source) goods(r release) (*packing.Goods, error) {
	g := &packing.Goods{Made: s.made, Changes: s.changes}
	var errs []error
	take := func(data []byte, err error) []byte { errs = append(errs, err); return data }
	read := func(name string) []byte { return take(os.ReadFile(filepath.Join(s.folder, name))) }
	g.Window, g.Command = take(s.build(r, "reelworth")), take(s.build(r, "reelworth-cli"))
	g.Icon, g.IconSVG, g.ReadMe = read("assets/icon.png"), read("assets/icon.svg"), read("README.md")
	if err := errors.Join(errs...); err != nil {
		return nil, err
	}
	parts, err := s.parts(r)
	if err == nil {
		g.Licences, err = packing.GatherLicences(parts)
	}
	if err == nil {
		err = s.ask(r, g)
	}
	return g, err
}

// ask has the command line program, built for this machine, say its version and help.
func (s source) ask(r release, g *packing.Goods) error {
	r.system, r.arch = "", ""
	data, err := s.build(r, "reelworth-cli")
	if err != nil {
		return err
	}
	program := filepath.Join(os.TempDir(), fmt.Sprintf("reelworth-asked-%d", os.Getpid()))
	defer os.Remove(program)
	if err := os.WriteFile(program, data, 0o755); err != nil {
		return err
	}
	says := func(args ...string) (text string) {
		out, failed := exec.Command(program, args...).Output()
		err = errors.Join(err, failed)
		return string(out)
	}
	g.Version = strings.TrimPrefix(strings.TrimSpace(says("version")), "reelworth-cli ")
	g.Manual.Overview = says("help")
	for _, name := range packing.CommandNames(g.Manual.Overview) {
		g.Manual.Commands = append(g.Manual.Commands, packing.Chapter{Name: name, Help: says("help", name)})
	}
	return err
}

// parts are the modules that are linked into the programs, with the folders of what is
// linked of them, and Go's own library and the typeface.
func (s source) parts(r release) ([]packing.Part, error) {
	const form = "{{with .Module}}{{if not .Main}}{{.Path}} {{.Version}}\t{{.Dir}}\t{{$.Dir}}{{end}}{{end}}"
	env := append(slices.Clone(r.env), "CGO_ENABLED=1")
	out, err := s.goIn(r, env, "list", "-deps", "-tags="+r.tags, "-f", form, "./cmd/reelworth", "./cmd/reelworth-cli").Output()
	if err != nil {
		return nil, fmt.Errorf("what is linked cannot be listed: %w", err)
	}
	root, err := s.goIn(r, nil, "env", "GOROOT").Output()
	if err != nil {
		return nil, err
	}
	parts := []packing.Part{
		{Name: "The Go standard library " + runtime.Version(), Folders: []string{strings.TrimSpace(string(root))}},
		{Name: "The typeface", Folders: []string{filepath.Join(s.folder, "assets")}},
	}
	place := map[string]int{}
	for _, line := range strings.Split(strings.TrimSpace(string(out)), "\n") {
		fields := strings.Split(line, "\t")
		if len(fields) != 3 {
			continue
		}
		at, known := place[fields[0]]
		if !known {
			at = len(parts)
			place[fields[0]] = at
			parts = append(parts, packing.Part{Name: fields[0]})
		}
		for _, folder := range foldersOf(fields[1], fields[2]) {
			if !slices.Contains(parts[at].Folders, folder) {
				parts[at].Folders = append(parts[at].Folders, folder)
			}
		}
	}
	return parts, nil
}

// foldersOf are a package's folder, those above it in its module, and those right below
// it, where what is compiled or built in with it may lie.
func foldersOf(module, pkg string) (folders []string) {
	for dir := pkg; strings.HasPrefix(dir, module); dir = filepath.Dir(dir) {
		folders = append([]string{dir}, folders...)
	}
	below, _ := os.ReadDir(pkg)
	for _, e := range below {
		if e.IsDir() && e.Name() != "testdata" && pkg != module {
			folders = append(folders, filepath.Join(pkg, e.Name()))
		}
	}
	return folders
}
