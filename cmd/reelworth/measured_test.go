//go:build journey

package main

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk"
	"reelworth/internal/effort"
	"reelworth/internal/scenario"
)

// measuredRole is the variable that has a process of these tests be what is measured.
const measuredRole = "REELWORTH_MEASURED"

// beMeasured opens a window, says on standard output when its first full picture is on the
// screen, and goes. The role "empty" is a window of the toolkit with nothing in it, "full"
// ours on the demo.
func beMeasured(role string) {
	debug.SetMemoryLimit(softLimit)
	a := app.NewWithID("org.reelworth.measured." + role)
	var win fyne.Window
	full := func() bool { return true }
	if role == "full" {
		d := newDesk(a, "", "")
		win, full = d.Window(), func() bool { return d.View().Headline != "" }
	} else {
		win = a.NewWindow(role)
		win.SetContent(container.NewWithoutLayout())
		win.Resize(fyne.NewSize(1280, 800))
	}
	frames := 0 // begun since all was there; the one before is on the screen then
	var watch *fyne.Animation
	watch = fyne.NewAnimation(time.Hour, func(float32) {
		if full() {
			frames++
		}
		if frames == 2 {
			fmt.Println("shown")
			watch.Stop()
			win.SetCloseIntercept(nil)
			a.Quit()
		}
	})
	a.Lifecycle().SetOnStarted(watch.Start)
	win.ShowAndRun()
}

// shownAfter is how long a window takes until its first full picture, the median of some
// starts, and the processor time until it is gone again.
func shownAfter(b *testing.B, role string) (wall, processor time.Duration) {
	var walls, processors []time.Duration
	for range 7 {
		cmd := exec.Command("/proc/self/exe")
		cmd.Env = append(os.Environ(), measuredRole+"="+role)
		out, err := cmd.StdoutPipe()
		if err != nil {
			b.Fatal(err)
		}
		began := time.Now()
		if err := cmd.Start(); err != nil {
			b.Fatal(err)
		}
		line, err := bufio.NewReader(out).ReadString('\n')
		took := time.Since(began)
		if err != nil || line != "shown\n" {
			b.Fatalf("the window says %q: %v", line, err)
		}
		if err := cmd.Wait(); err != nil {
			b.Fatal(err)
		}
		walls, processors = append(walls, took), append(processors, cmd.ProcessState.UserTime()+cmd.ProcessState.SystemTime())
	}
	return middle(walls), middle(processors)
}

func middle(list []time.Duration) time.Duration {
	slices.Sort(list)
	return list[len(list)/2]
}

// BenchmarkStart is from the start of the program to the first full picture of its window.
func BenchmarkStart(b *testing.B) {
	for _, role := range []string{"empty", "full"} {
		b.Run(role, func(b *testing.B) {
			wall, processor := shownAfter(b, role)
			b.ReportMetric(float64(wall.Nanoseconds()), "ns/op")
			b.ReportMetric(processor.Seconds()*1000, "processor-ms")
		})
	}
}

// BenchmarkIdle is the processor time of a second in which nothing happens: of the toolkit
// with an empty window, which looks for events 60 times a second, and of ours with the
// cursor in a field.
func BenchmarkIdle(b *testing.B) {
	b.Run("empty", idle)
	b.Run("field", func(b *testing.B) {
		j := start(b, "")
		defer j.close()
		j.clicks("offer[3].price")
		j.until("the price is entered", func(v desk.View) bool { f, _ := v.Field("offer[3].price"); return f.Focused })
		idle(b)
	})
}

func idle(b *testing.B) {
	rests()
	const seconds = 10
	before := effort.Spent()
	time.Sleep(seconds * time.Second)
	b.ReportMetric(float64((effort.Spent()-before).Nanoseconds())/seconds, "ns/op")
}

// twelve is a file with twelve ways to buy.
func twelve(b *testing.B) string {
	f := scenario.Demo()
	s := f.Scenarios[0].Clone()
	for i := 0; len(s.Offers) < 12; i++ {
		o := s.Offers[i%3]
		o.Name = fmt.Sprintf("%s, %d", o.Name, i+1)
		s.Offers = append(s.Offers, o)
	}
	f.Scenarios = []scenario.Scenario{s}
	path := filepath.Join(b.TempDir(), "twelve.toml")
	if err := os.WriteFile(path, scenario.Write(f), 0o644); err != nil {
		b.Fatal(err)
	}
	return path
}

// rests waits for all that follows a start or a key.
func rests() { time.Sleep(3 * time.Second) }

// memory is what the process takes of the machine's, and what of its heap is in use, in
// bytes, at rest: while pictures are drawn it is by chance more or less.
func memory(b *testing.B) (whole, live float64) {
	rests()
	status, err := os.ReadFile("/proc/self/status")
	if err != nil {
		b.Fatal(err)
	}
	_, after, _ := strings.Cut(string(status), "VmRSS:")
	kB, err := strconv.ParseFloat(strings.Fields(after)[0], 64)
	if err != nil {
		b.Fatal(err)
	}
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return kB * 1024, float64(m.HeapAlloc)
}

// BenchmarkTyping types a price over and over in a large window with twelve ways to buy:
// how much more memory it takes after 5,000 keys than after 100.
func BenchmarkTyping(b *testing.B) {
	j := start(b, twelve(b))
	defer j.close()
	fyne.DoAndWait(func() { j.d.Window().Resize(fyne.NewSize(2540, 1380)) })
	j.clicks("offer[3].price")
	j.until("the price is entered", func(v desk.View) bool { f, _ := v.Field("offer[3].price"); return f.Focused })
	keys := 0
	typeTo := func(n int) (whole, live float64) {
		for ; keys < n; keys += 5 {
			j.x("key", "--delay", "20", "ctrl+a")
			j.x("type", "--delay", "20", fmt.Sprintf("%d", 10000+keys*7%9000))
		}
		return memory(b)
	}
	early, liveEarly := typeTo(100)
	began := time.Now()
	late, liveLate := typeTo(5000)
	b.ReportMetric(float64(time.Since(began).Nanoseconds())/4900, "ns/op")
	b.ReportMetric(early/1e6, "MB-after-100")
	b.ReportMetric(late/early, "×memory")
	b.ReportMetric(liveLate/liveEarly, "×heap")
}
