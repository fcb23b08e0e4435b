package main

// need is one thing the machine must have, and where to get it. It is there when
// every part that is set is found: one of the programs, the header and library,
// one of the files.
type need struct {
	what     string
	compiler bool     // the C compiler the go command would call
	programs []string // any one of them, on the PATH
	header   string   // as a C program includes it
	links    string   // as the linker is told, without -l
	files    []string // patterns; one match is enough
	packages map[manager]string
}

// manager is a system's way to install packages.
type manager string

const (
	apt    manager = "apt-get" // Debian, Ubuntu
	dnf    manager = "dnf"     // Fedora
	pacman manager = "pacman"  // Arch
	brew   manager = "brew"    // macOS
	none   manager = ""        // another one, or none
)

// systemsOwn stands for a package that no package manager brings: on macOS the
// compiler comes with Apple's command line tools.
const systemsOwn = "xcode-select"

// buildNeeds are what the window is compiled with. Package names: Debian 12,
// Fedora 42, Arch; the headers are those that Fyne's window library includes, which
// is built for X11 and Wayland both and takes what the session has.
var buildNeeds = []need{
	{what: "a C compiler", compiler: true,
		packages: map[manager]string{apt: "gcc", dnf: "gcc", pacman: "gcc", brew: systemsOwn}},
	{what: "the C library's headers", header: "stdlib.h",
		packages: map[manager]string{apt: "libc6-dev", dnf: "glibc-devel", pacman: "glibc", brew: systemsOwn}},
	{what: "pkg-config", programs: []string{"pkg-config", "pkgconf"},
		packages: map[manager]string{apt: "pkg-config", dnf: "pkgconf-pkg-config", pacman: "pkgconf"}},
	{what: "OpenGL, to build with", header: "GL/gl.h", links: "GL",
		packages: map[manager]string{apt: "libgl1-mesa-dev", dnf: "mesa-libGL-devel", pacman: "libglvnd"}},
	{what: "X11, to build with", header: "X11/Xlib.h", links: "X11",
		packages: map[manager]string{apt: "libx11-dev", dnf: "libX11-devel", pacman: "libx11"}},
	{what: "X11 cursors", header: "X11/Xcursor/Xcursor.h", links: "Xcursor",
		packages: map[manager]string{apt: "libxcursor-dev", dnf: "libXcursor-devel", pacman: "libxcursor"}},
	{what: "X11 screen sizes", header: "X11/extensions/Xrandr.h", links: "Xrandr",
		packages: map[manager]string{apt: "libxrandr-dev", dnf: "libXrandr-devel", pacman: "libxrandr"}},
	{what: "X11 several screens", header: "X11/extensions/Xinerama.h", links: "Xinerama",
		packages: map[manager]string{apt: "libxinerama-dev", dnf: "libXinerama-devel", pacman: "libxinerama"}},
	{what: "X11 input", header: "X11/extensions/XInput2.h", links: "Xi",
		packages: map[manager]string{apt: "libxi-dev", dnf: "libXi-devel", pacman: "libxi"}},
	{what: "X11 video modes", header: "X11/extensions/xf86vmode.h", links: "Xxf86vm",
		packages: map[manager]string{apt: "libxxf86vm-dev", dnf: "libXxf86vm-devel", pacman: "libxxf86vm"}},
	{what: "Wayland, to build with", header: "wayland-client.h", links: "wayland-client",
		packages: map[manager]string{apt: "libwayland-dev", dnf: "wayland-devel", pacman: "wayland"}},
	{what: "Wayland's protocols", files: []string{
		"/usr/share/wayland-protocols/stable", "/usr/local/share/wayland-protocols/stable"},
		packages: map[manager]string{apt: "wayland-protocols", dnf: "wayland-protocols-devel", pacman: "wayland-protocols"}},
	{what: "Wayland keyboards", header: "xkbcommon/xkbcommon.h", links: "xkbcommon",
		packages: map[manager]string{apt: "libxkbcommon-dev", dnf: "libxkbcommon-devel", pacman: "libxkbcommon"}},
	{what: "EGL, to build with", header: "EGL/egl.h", links: "EGL",
		packages: map[manager]string{apt: "libegl-dev", dnf: "mesa-libEGL-devel", pacman: "libglvnd"}},
	{what: "OpenGL drivers, to run with", files: []string{
		"/usr/lib/*/dri/*_dri.so", "/usr/lib/dri/*_dri.so", "/usr/lib64/dri/*_dri.so",
		"/usr/lib/*/libgallium*.so*", "/usr/lib/libgallium*.so*", "/usr/lib64/libgallium*.so*", "/run/opengl-driver/lib"},
		packages: map[manager]string{apt: "libgl1-mesa-dri", dnf: "mesa-dri-drivers", pacman: "mesa"}},
}

// journeyNeeds drive the real window on a screen of its own.
var journeyNeeds = []need{
	{what: "Xvfb, a screen without a monitor", programs: []string{"Xvfb"},
		packages: map[manager]string{apt: "xvfb", dnf: "xorg-x11-server-Xvfb", pacman: "xorg-server-xvfb"}},
	{what: "xdotool, a hand on mouse and keys", programs: []string{"xdotool"},
		packages: map[manager]string{apt: "xdotool", dnf: "xdotool", pacman: "xdotool"}},
	{what: "openbox, a window manager", programs: []string{"openbox"},
		packages: map[manager]string{apt: "openbox", dnf: "openbox", pacman: "openbox"}},
}

// readerNeeds read back, in the tests, what the program exports: programs of
// other houses, so that a file is judged by somebody else.
var readerNeeds = []need{
	// "convert" alone proves little: other programs bear that name.
	{what: "ImageMagick", programs: []string{"magick", "mogrify"},
		packages: map[manager]string{apt: "imagemagick", dnf: "ImageMagick", pacman: "imagemagick", brew: "imagemagick"}},
	{what: "rsvg-convert, a reader of SVG", programs: []string{"rsvg-convert"},
		packages: map[manager]string{apt: "librsvg2-bin", dnf: "librsvg2-tools", pacman: "librsvg", brew: "librsvg"}},
	{what: "pdftotext and pdftoppm, readers of PDF", programs: []string{"pdftotext"},
		packages: map[manager]string{apt: "poppler-utils", dnf: "poppler-utils", pacman: "poppler", brew: "poppler"}},
	{what: "Gnumeric's ssconvert, a spreadsheet program", programs: []string{"ssconvert"},
		packages: map[manager]string{apt: "gnumeric", dnf: "gnumeric", pacman: "gnumeric", brew: "gnumeric"}},
}

// packageNeeds make packages and judge them; on a Debian the first is always there.
var packageNeeds = []need{
	{what: "dpkg-deb, which makes Debian packages", programs: []string{"dpkg-deb"},
		packages: map[manager]string{dnf: "dpkg", pacman: "dpkg"}},
	{what: "desktop-file-validate", programs: []string{"desktop-file-validate"},
		packages: map[manager]string{apt: "desktop-file-utils", dnf: "desktop-file-utils", pacman: "desktop-file-utils"}},
	{what: "appstreamcli", programs: []string{"appstreamcli"},
		packages: map[manager]string{apt: "appstream", dnf: "appstream", pacman: "appstream"}},
	{what: "lintian, which judges Debian packages", programs: []string{"lintian"},
		packages: map[manager]string{apt: "lintian"}},
}

// needsOn gives the build needs that apply to an operating system: macOS and
// Windows bring their own graphics and ask only for a compiler.
func needsOn(goos string) []need {
	switch goos {
	case "darwin", "windows":
		return buildNeeds[:1]
	}
	return buildNeeds
}
