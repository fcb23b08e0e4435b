//go:build journey

package main

import (
	"bufio"
	"fmt"
	"image"
	_ "image/png"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"github.com/shopspring/decimal"

	"reelworth/internal/catalogue"
	"reelworth/internal/compare"
	"reelworth/internal/desk"
	"reelworth/internal/desk/kit"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// The journey drives the real window on a screen of its own, by mouse and keys as a
// person does, and asserts on what the window says, not on pixels.

var (
	program fyne.App
	home    string
)

// TestMain starts a screen and a window manager, and gives the main goroutine to the
// toolkit, which must have it.
func TestMain(m *testing.M) {
	if role := os.Getenv(measuredRole); role != "" {
		beMeasured(role)
		return
	}
	debug.SetMemoryLimit(softLimit) // as the program does
	stop, err := startScreen()
	if err != nil {
		fmt.Fprintln(os.Stderr, "the journey needs Xvfb, openbox and xdotool:", err)
		os.Exit(1)
	}
	home, err = os.MkdirTemp("", "reelworth-journey")
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	for name, value := range map[string]string{
		"HOME": home, "XDG_CONFIG_HOME": filepath.Join(home, "config"), "XDG_STATE_HOME": filepath.Join(home, "state"),
		"FYNE_SCALE": "1", "LANG": "en_US.UTF-8",
	} {
		os.Setenv(name, value)
	}
	program = app.NewWithID("org.reelworth.journey")
	code := make(chan int, 1)
	program.Lifecycle().SetOnStarted(func() {
		go func() {
			code <- m.Run()
			fyne.Do(program.Quit)
		}()
	})
	keep := program.NewWindow("journey") // the app must outlive the windows of the tests
	keep.SetMaster()
	keep.Resize(fyne.NewSize(10, 10))
	keep.Show()
	program.Run()
	result := <-code
	stop()
	os.RemoveAll(home)
	os.Exit(result)
}

// startScreen starts Xvfb on a free display, and a window manager on it.
func startScreen() (stop func(), err error) {
	read, write, err := os.Pipe()
	if err != nil {
		return nil, err
	}
	screen := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", "2560x1440x24", "-nolisten", "tcp")
	screen.ExtraFiles = []*os.File{write}
	if err := screen.Start(); err != nil {
		return nil, err
	}
	write.Close()
	line, err := bufio.NewReader(read).ReadString('\n')
	if err != nil {
		screen.Process.Kill()
		return nil, fmt.Errorf("Xvfb names no display: %w", err)
	}
	os.Setenv("DISPLAY", ":"+strings.TrimSpace(line))
	manager := exec.Command("openbox")
	if err := manager.Start(); err != nil {
		screen.Process.Kill()
		return nil, err
	}
	return func() {
		manager.Process.Kill()
		screen.Process.Kill()
	}, nil
}

// journey is one window and the hand on it.
type journey struct {
	t testing.TB
	d *desk.Desk
	w string // the window's number
}

func start(t testing.TB, file string) *journey {
	t.Helper()
	j := &journey{t: t}
	fyne.DoAndWait(func() {
		state, note := places()
		j.d = newDesk(program, state, note)
		began := time.Now()
		kit.SeekBy(func() time.Time { return began }) // letters make a word however slowly they come
		if file != "" {
			j.d.Open(file)
		}
		j.d.Window().Show()
	})
	j.until("the window is on the screen", func(v desk.View) bool { return v.Headline != "" })
	j.until("the window has a number", func(desk.View) bool {
		out, _ := exec.Command("xdotool", "search", "--onlyvisible", "--name", "^(● )?Reelworth").Output()
		fields := strings.Fields(string(out))
		if len(fields) > 0 {
			j.w = fields[len(fields)-1]
		}
		return j.w != ""
	})
	j.x("windowfocus", "--sync", j.w)
	j.settles()
	return j
}

// settles waits until the window manager has given the window its frame: until it stays
// where it is and as large.
func (j *journey) settles() {
	j.t.Helper()
	was, same := "", 0
	j.until("the window stays where it is", func(desk.View) bool {
		out, err := exec.Command("xdotool", "getwindowgeometry", j.w).Output()
		if err != nil || string(out) != was {
			was, same = string(out), 0
			return false
		}
		same++
		return same == 10
	})
}

// x runs xdotool.
func (j *journey) x(args ...string) {
	j.t.Helper()
	if out, err := exec.Command("xdotool", args...).CombinedOutput(); err != nil {
		j.t.Fatalf("xdotool %s: %v: %s", strings.Join(args, " "), err, out)
	}
}

func (j *journey) view() (v desk.View) {
	fyne.DoAndWait(func() { v = j.d.View() })
	return v
}

// A condition is waited for in glances, for minutes: a busy machine takes its time, and what
// never comes true is told all the same.
const (
	glance   = 30 * time.Millisecond
	patience = 6000
)

// until waits for the window to say something.
func (j *journey) until(what string, ok func(desk.View) bool) desk.View {
	j.t.Helper()
	for range patience {
		if v := j.view(); ok(v) {
			return v
		}
		time.Sleep(glance)
	}
	j.t.Fatalf("waited in vain: %s; the window says %+v", what, j.view())
	return desk.View{}
}

func (j *journey) keys(keys ...string) {
	j.t.Helper()
	for _, k := range keys {
		j.x("key", "--delay", "30", k)
	}
}

func (j *journey) types(text string) {
	j.t.Helper()
	j.x("type", "--delay", "30", text)
}

// clicks presses the mouse on a field.
func (j *journey) clicks(key string) {
	j.t.Helper()
	var x, y float32
	fyne.DoAndWait(func() { x, y = j.d.Where(key) })
	if x < 0 {
		j.t.Fatalf("the field %s is not on the screen", key)
	}
	j.x("mousemove", "--window", j.w, fmt.Sprint(int(x)), fmt.Sprint(int(y)), "click", "1")
}

func (j *journey) close() {
	fyne.DoAndWait(func() { j.d.Window().SetCloseIntercept(nil); j.d.Window().Close() })
}

// says is what the engine says about a scenario.
func says(s scenario.Scenario) (headline string, perRoll []string) {
	c := compare.Compare(s, scenario.Check(s), scenario.DateOf(time.Now()))
	for _, o := range c.Offers {
		perRoll = append(perRoll, money.English.Number(o.PerRoll.Total, 2))
	}
	return words.Verdict(&c, money.English).Text, perRoll
}

func TestMainJob(t *testing.T) {
	j := start(t, "")
	defer j.close()
	s := scenario.Demo().Scenarios[0]
	headline, perRoll := says(s)
	if v := j.view(); v.Headline != headline || v.Offers[2].PerRoll != perRoll[2] {
		t.Fatalf("the demo begins with %+v", v)
	}

	j.clicks("offer[3].price")
	j.until("the price is entered", func(v desk.View) bool { f, _ := v.Field("offer[3].price"); return f.Focused })
	j.types("92.75")
	s.Offers[2].Price = decimal.RequireFromString("92.75")
	headline, perRoll = says(s)
	j.until("the cost follows", func(v desk.View) bool { return v.Offers[2].PerRoll == perRoll[2] })
	j.until("the headline follows", func(v desk.View) bool { return v.Headline == headline })

	path := filepath.Join(home, "first.toml")
	j.keys("ctrl+s")
	j.until("a name is asked for", func(v desk.View) bool { return v.Asking })
	j.keys("ctrl+a")
	j.types(path)
	j.keys("Return")
	j.until("it is saved", func(v desk.View) bool { return !v.Asking && strings.HasPrefix(v.State, "saved") })
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if f, faults := scenario.Read(data); len(faults) > 0 || f.Scenarios[0].Offers[2].Price.String() != "92.75" {
		t.Fatalf("on disk: %v\n%s", faults, data)
	}

	chart := filepath.Join(home, "chart.png")
	j.keys("ctrl+e")
	j.until("a name is asked for", func(v desk.View) bool { return v.Asking })
	j.keys("ctrl+a")
	j.types(chart)
	j.keys("Return")
	j.until("it is written", func(v desk.View) bool { return strings.Contains(v.Status, chart) })
	inspectChart(t, chart)
}

// inspectChart decodes a picture and sees that it is no blank.
func inspectChart(t *testing.T, path string) {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, kind, err := image.Decode(f)
	if err != nil || kind != "png" {
		t.Fatal(kind, err)
	}
	colours := map[any]bool{}
	b := img.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y += 2 {
		for x := b.Min.X; x < b.Max.X; x += 2 {
			colours[img.At(x, y)] = true
		}
	}
	if b.Dx() < 900 || len(colours) < 20 {
		t.Fatalf("the chart has %d × %d pixels and %d colours", b.Dx(), b.Dy(), len(colours))
	}
}

func TestClosingTheWindowAsks(t *testing.T) {
	j := start(t, "")
	defer j.close()
	j.clicks("offer[3].shipping")
	j.types("50")
	j.until("it is marked", func(v desk.View) bool { return strings.Contains(v.State, "unsaved") })
	j.keys("ctrl+q")
	j.until("it is asked about", func(v desk.View) bool { return v.Asking })
	j.keys("Escape")
}

// focused is the field under the cursor.
func focused(v desk.View) desk.FieldView {
	for _, f := range v.Fields {
		if f.Focused {
			return f
		}
	}
	return desk.FieldView{}
}

// focus is what has the focus.
func (j *journey) focus() (f fyne.Focusable) {
	fyne.DoAndWait(func() { f = j.d.Window().Canvas().Focused() })
	return f
}

// tabsTo walks to a field by the Tab key.
func (j *journey) tabsTo(key string) {
	j.t.Helper()
	for range 80 {
		at := j.focus()
		if focused(j.view()).Key == key {
			return
		}
		j.keys("Tab")
		j.until("the focus goes on", func(desk.View) bool { return j.focus() != at })
	}
	j.t.Fatalf("%s is not reached by Tab", key)
}

// into replaces what stands in a field that is reached by Tab.
func (j *journey) into(key, text string) {
	j.t.Helper()
	j.tabsTo(key)
	j.keys("ctrl+a")
	j.types(text)
	j.until(key+" holds "+text, func(v desk.View) bool { f, _ := v.Field(key); return f.Text == text && !f.Faulty })
}

// From nothing to a saved scenario and back to it, without a mouse.
func TestByKeyboardOnly(t *testing.T) {
	j := start(t, "")
	j.keys("ctrl+n")
	j.until("the new scenario asks for what it needs", func(v desk.View) bool { return len(v.Offers) == 2 && v.Form == "New scenario" })
	j.keys("ctrl+t", "ctrl+a")
	j.types("By keys alone")
	j.keys("Return")
	j.until("it has its name", func(v desk.View) bool { return v.Form == "By keys alone" })

	j.into(catalogue.RollsAMonth, "2")
	j.into("offer[1].price", "11.90")
	j.menusOpen()
	j.into("offer[2].price", "96.50")
	j.tabsTo("offer[2].currency")
	j.types("USD")
	j.until("its rate is asked for", func(v desk.View) bool { f, ok := v.Field("rate[1].equals"); return ok && f.Text == "" })
	j.into("offer[2].shipping", "28")
	j.into("rate[1].equals", "0.89")
	j.until("the reel is computed", func(v desk.View) bool { return v.Offers[1].PerRoll != "–" })

	s := scenario.New("By keys alone", "EUR", scenario.Month{Year: time.Now().Year(), Month: time.Now().Month()})
	s.Shooting = s.Shooting.Evenly(decimal.RequireFromString("2"))
	s.Offers[0].Price = decimal.RequireFromString("11.90")
	s.Offers[1].Price, s.Offers[1].Currency = decimal.RequireFromString("96.50"), "USD"
	s.Offers[1].Shipping = decimal.RequireFromString("28")
	s.Rates = []scenario.Rate{{One: "USD", Equals: decimal.RequireFromString("0.89"), In: "EUR", Date: scenario.DateOf(time.Now())}}
	headline, perRoll := says(s)
	j.until("the answer is the engine's", func(v desk.View) bool {
		return v.Headline == headline && v.Offers[0].PerRoll == perRoll[0] && v.Offers[1].PerRoll == perRoll[1]
	})

	file, chart := filepath.Join(home, "keys.toml"), filepath.Join(home, "keys.png")
	for _, step := range []struct{ key, path, done string }{{"ctrl+s", file, "saved"}, {"ctrl+e", chart, chart}} {
		j.keys(step.key)
		j.until("a name is asked for", func(v desk.View) bool { return v.Asking })
		j.keys("ctrl+a")
		j.types(step.path)
		j.keys("Return")
		j.until("it is written", func(v desk.View) bool {
			return !v.Asking && (strings.HasPrefix(v.State, step.done) || strings.Contains(v.Status, step.done))
		})
	}
	inspectChart(t, chart)
	j.keys("ctrl+q")
	j.gone()

	again := start(t, file)
	defer again.close()
	again.until("the scenario is found again", func(v desk.View) bool {
		return v.Headline == headline && len(v.Offers) == 2 && v.Offers[1].PerRoll == perRoll[1]
	})
}

// menusOpen opens menus by their keys, from a field, and closes them.
func (j *journey) menusOpen() {
	j.t.Helper()
	j.tabsTo("offer[2].price")
	for _, keys := range []string{"alt+v", "F10"} {
		j.keys(keys)
		j.until("a menu is open", func(desk.View) bool { return j.inMenu() })
		j.keys("Escape")
		j.until("it is closed", func(desk.View) bool { return !j.inMenu() })
	}
}

func (j *journey) inMenu() (in bool) {
	fyne.DoAndWait(func() { in = strings.Contains(fmt.Sprintf("%T", j.d.Window().Canvas().Focused()), "menu") })
	return in
}

// gone waits until the window is closed.
func (j *journey) gone() {
	j.t.Helper()
	for range patience {
		open := false
		fyne.DoAndWait(func() {
			for _, w := range program.Driver().AllWindows() {
				open = open || w == j.d.Window()
			}
		})
		if !open {
			return
		}
		time.Sleep(glance)
	}
	j.t.Fatal("the window stays open")
}
