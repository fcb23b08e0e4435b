package packing

import (
	"bytes"
	"debug/elf"
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// providers are the Debian packages of the libraries that the window is linked with, or
// opens as it starts (X11 or Wayland, whichever there is).
var providers = map[string]string{
	"libGL.so.1": "libgl1", "libEGL.so.1": "libegl1",
	"libX11.so.6": "libx11-6", "libX11-xcb.so.1": "libx11-xcb1", "libXcursor.so.1": "libxcursor1", "libXext.so.6": "libxext6", "libXi.so.6": "libxi6",
	"libXinerama.so.1": "libxinerama1", "libXrandr.so.2": "libxrandr2", "libXrender.so.1": "libxrender1", "libXxf86vm.so.1": "libxxf86vm1",
	"libwayland-client.so.0": "libwayland-client0", "libwayland-cursor.so.0": "libwayland-cursor0", "libwayland-egl.so.1": "libwayland-egl1",
	"libxkbcommon.so.0": "libxkbcommon0",
	"libc.so.6":         "libc6", "libm.so.6": "libc6", "libdl.so.2": "libc6", "librt.so.1": "libc6", "libpthread.so.0": "libc6",
	"ld-linux-x86-64.so.2": "libc6", "ld-linux-aarch64.so.1": "libc6", "libresolv.so.2": "libc6",
}

// Depends are the Debian packages that a program needs, libc6 with the version whose
// symbols it uses. A library whose package is not known is an error.
func Depends(program []byte) ([]string, error) {
	f, err := elf.NewFile(bytes.NewReader(program))
	if err != nil {
		return nil, err
	}
	linked, err := f.ImportedLibraries()
	if err != nil {
		return nil, err
	}
	if len(linked) == 0 {
		return nil, nil // a Go program on its own
	}
	var needed []string
	for _, name := range linked {
		if providers[name] == "" {
			return nil, fmt.Errorf("the Debian package that holds %s is not known", name)
		}
		needed = append(needed, providers[name])
	}
	for name, provider := range providers {
		if bytes.Contains(program, append([]byte(name), 0)) { // opened while running
			needed = append(needed, provider)
		}
	}
	slices.Sort(needed)
	needed = slices.Compact(needed)
	for i, name := range needed {
		if name == "libc6" {
			needed[i] = fmt.Sprintf("libc6 (>= %s)", libcVersion(f))
		}
	}
	return needed, nil
}

// linked are the libraries a program is linked with.
func linked(program []byte) (map[string]bool, error) {
	f, err := elf.NewFile(bytes.NewReader(program))
	if err != nil {
		return nil, err
	}
	names, err := f.ImportedLibraries()
	all := map[string]bool{}
	for _, name := range names {
		all[name] = true
	}
	return all, err
}

// libcVersion is the newest version of the C library whose symbols are used.
func libcVersion(f *elf.File) string {
	symbols, _ := f.ImportedSymbols()
	newest := [2]int{2, 0}
	for _, s := range symbols {
		parts := strings.Split(strings.TrimPrefix(s.Version, "GLIBC_"), ".")
		if !strings.HasPrefix(s.Version, "GLIBC_") || len(parts) < 2 {
			continue
		}
		major, err1 := strconv.Atoi(parts[0])
		minor, err2 := strconv.Atoi(parts[1])
		if v := [2]int{major, minor}; err1 == nil && err2 == nil && slices.Compare(newest[:], v[:]) < 0 {
			newest = v
		}
	}
	return fmt.Sprintf("%d.%d", newest[0], newest[1])
}
