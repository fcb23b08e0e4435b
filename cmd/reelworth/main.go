// Command reelworth opens the window: reelworth [FILE]. With --version it says which one
// it is instead.
package main

import (
	"fmt"
	"os"
	"runtime/debug"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"reelworth/assets"
	"reelworth/internal/desk"
	"reelworth/internal/library"
	"reelworth/internal/money"
	"reelworth/internal/version"
)

func main() {
	if len(os.Args) == 2 && os.Args[1] == "--version" {
		fmt.Println("reelworth " + version.String())
		return
	}
	debug.SetMemoryLimit(softLimit)
	a := app.NewWithID("org.reelworth.desk")
	a.SetIcon(fyne.NewStaticResource("icon.png", assets.Icon))
	d := newDesk(a)
	if len(os.Args) > 1 {
		d.Open(os.Args[1])
	} else {
		d.OpenLast()
	}
	d.Window().ShowAndRun()
}

// softLimit is the memory, in bytes, above which what is not needed is collected sooner. The
// window needs a quarter of it; the largest scenario on the largest screen comes near.
const softLimit = 512 << 20

func newDesk(a fyne.App) *desk.Desk {
	state, err := library.StateFolder()
	if err != nil {
		state = "" // without a home there is no place to keep unsaved work
	}
	return desk.New(desk.Options{App: a, Locale: numbers(), Now: time.Now, State: state})
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
