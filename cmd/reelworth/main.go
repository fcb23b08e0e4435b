// Command reelworth opens the window: reelworth [FILE]. With --version it says which one
// it is instead.
package main

import (
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"runtime/debug"
	"syscall"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"reelworth/assets"
	"reelworth/internal/desk"
	"reelworth/internal/library"
	"reelworth/internal/money"
	"reelworth/internal/version"
	"reelworth/internal/words"
)

func main() {
	if len(os.Args) == 2 && os.Args[1] == "--version" {
		fmt.Println("reelworth " + version.String())
		return
	}
	debug.SetMemoryLimit(softLimit)
	state, note := places()
	a := app.NewWithID("org.reelworth.desk")
	a.SetIcon(fyne.NewStaticResource("icon.png", assets.Icon))
	d := newDesk(a, state, note)
	go endOn(hangUps(), a)
	if len(os.Args) > 1 {
		d.Open(os.Args[1])
	} else {
		d.OpenLast()
	}
	d.Window().ShowAndRun()
	d.Ended() // a signal ends the loop without closing the window
}

// newDesk is the window as the program opens it.
func newDesk(a fyne.App, state, note string) *desk.Desk {
	return desk.New(desk.Options{App: a, Locale: numbers(), Now: time.Now, State: state, Settings: a.Storage().RootURI().Path(), Note: note, Greet: true})
}

// endOn ends the program when the session or the terminal it was started from is closed.
// The toolkit itself does so on SIGTERM.
func endOn(hungUp <-chan os.Signal, a fyne.App) {
	<-hungUp
	fyne.Do(a.Quit)
}

// hangUps tells of SIGHUP, unless the program was told to ignore it.
func hangUps() <-chan os.Signal {
	c := make(chan os.Signal, 1)
	if !signal.Ignored(syscall.SIGHUP) {
		signal.Notify(c, syscall.SIGHUP)
	}
	return c
}

// softLimit is the memory, in bytes, above which what is not needed is collected sooner. The
// window needs a quarter of it; the largest scenario on the largest screen comes near.
const softLimit = 512 << 20

// places are where unsaved work is kept, and what a person must know of that. Without a
// home both that and the settings have a folder for temporary files: the toolkit would make
// its own in the current directory.
func places() (state, note string) {
	state, err := library.StateFolder()
	if err != nil {
		if state, err = library.TemporaryState(); err != nil {
			note = words.NoRecovery(err)
		} else {
			note = words.KeptForNow(state)
		}
	}
	if _, err := os.UserConfigDir(); err != nil {
		settings := filepath.Join(state, "settings")
		if state == "" {
			settings, _ = os.MkdirTemp("", "reelworth-settings-")
		}
		os.Setenv("XDG_CONFIG_HOME", settings)
	}
	return state, note
}

// numbers is how the user writes numbers, by the system's settings.
func numbers() money.Locale {
	for _, name := range []string{"LC_ALL", "LC_NUMERIC", "LANG"} {
		if v := os.Getenv(name); v != "" {
			return money.LocaleFor(v)
		}
	}
	return money.English
}
