package scenario

import (
	"bytes"
	"fmt"
	"reflect"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/BurntSushi/toml"
	"github.com/shopspring/decimal"

	"reelworth/internal/effort"
	"reelworth/internal/tomltext"
)

// hostile are files made to cost time or memory, or to bring a reader down.
func hostile() map[string]string {
	r := strings.Repeat
	full := func(line string) string { return "schema = 1\n" + r(line, (MaxBytes-100)/len(line)) }
	numbered := func(format string, n int) string {
		var b strings.Builder
		b.WriteString("schema = 1\n")
		for i := range n {
			fmt.Fprintf(&b, format, i)
		}
		return b.String()
	}
	return map[string]string{
		"empty":                         "",
		"one byte":                      "\xff",
		"a picture":                     "\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR",
		"UTF-16":                        "\xff\xfes\x00c\x00h\x00",
		"a NUL":                         "schema = 1\nname = \"a\x00b\"",
		"invalid UTF-8":                 "schema = 1\nname = \"a\xc3(\"",
		"70 MB":                         r("a", 70<<20),
		"20,000 brackets":               "a = " + r("[", 20000) + r("]", 20000),
		"20,000 open brackets":          "a = " + r("[", 20000),
		"20,000 braces":                 "a = " + r("{a=", 20000),
		"20,000 dots in a key":          r("a.", 20000) + "a = 1",
		"20,000 dots in a header":       "[" + r("a.", 20000) + "a]",
		"deep by header and by dots":    "[" + r("a.", 30) + "a]\n" + r("b.", 30) + "b = 1",
		"a key of 8 MB":                 r("k", 8<<20-20) + " = 1",
		"a million keys in a long one":  "[" + r("k", 4<<20) + "]\n" + numbered("k%d=1\n", 400000),
		"many dotted keys":              "[" + r("kkkkkkkk.", 20) + "k]\n" + numbered("a.b.c.d.e.f.g.k%d=1\n", 300000),
		"many keys":                     numbered("k%d=1\n", 700000),
		"many tables":                   numbered("[k%d]\n", 600000),
		"many first parts":              numbered("[a%d.b.c]\n", 400000),
		"many scenarios":                full("[[scenario]]\n"),
		"many offers":                   "schema = 1\n[[scenario]]\n" + r("[[scenario.offer]]\n", 400000),
		"many equipments":               "schema = 1\n[[scenario]]\n" + r("[[scenario.loading.equipment]]\n", 200000),
		"a long list":                   "schema = 1\na = [" + r("1,", 4<<20-50) + "]",
		"a long list of months":         "schema = 1\n[[scenario]]\nshooting.rolls_per_month = [" + r("1,", 4<<20-50) + "]",
		"a long text":                   "schema = 1\na = \"" + r("\\n", 4<<20-50) + "\"",
		"an endless text":               "schema = 1\na = \"\"\"" + r("\\\n", 4<<20-50),
		"quotation marks":               r("\"", 8<<20-50),
		"a comment":                     "#" + r("#", 8<<20-50),
		"line ends":                     r("\n", 8<<20-50),
		"a repeated key":                "schema = 1\nschema = 1",
		"a huge whole number":           "schema = 1\na = " + r("9", 400),
		"a huge float":                  "schema = 1\na = 1e9999",
		"a cut escape in a key":         `"\u123" = 1`,
		"a list then tables":            "schema = 1\nscenario = []\n[[scenario]]\n",
		"a table inside another's name": "schema = 1\n[[scenario]]\n[scenario]\n",
		"scenario is a number":          "schema = 1\nscenario = 5",
		"scenario is a list of numbers": "schema = 1\nscenario = [5, {}]",
		"offers are numbers":            "schema = 1\n[[scenario]]\noffer = [1]\nreel = 3\nloading = \"x\"",
	}
}

func TestHostileFilesAreRefusedQuicklyAndPlainly(t *testing.T) {
	for name, text := range hostile() {
		t.Run(name, func(t *testing.T) {
			var before, after runtime.MemStats
			data := []byte(text)
			runtime.ReadMemStats(&before)
			start := effort.Spent()
			r := Inspect(data)
			took := effort.Spent() - start
			runtime.ReadMemStats(&after)
			if len(r.Faults) == 0 {
				t.Error("no fault")
			}
			for _, f := range r.Faults[:min(len(r.Faults), 50)] {
				text := f.Error()
				if f.Line < 1 || len(text) > 600 || strings.ContainsAny(text, "\n\x00") || strings.Contains(text, "goroutine") {
					t.Errorf("%.700q", text)
				}
			}
			if took > time.Second*slowness {
				t.Errorf("took %v", took)
			}
			if used := (after.TotalAlloc - before.TotalAlloc) >> 20; used > 600*slowness {
				t.Errorf("allocated %d MiB in all", used)
			}
			t.Logf("%v, %d MiB in all, %d faults: %.200s", took, (after.TotalAlloc-before.TotalAlloc)>>20, len(r.Faults), r.Faults[0].Error())
		})
	}
}

// FuzzRead holds that reading never panics and that what reads without fault is
// written and read again the same; that every key of valid TOML has its place.
func FuzzRead(f *testing.F) {
	for _, e := range edits {
		f.Add([]byte(e.text(f)))
	}
	for _, text := range hostile() {
		if len(text) < 10000 {
			f.Add([]byte(text))
		}
	}
	for _, kind := range []string{"valid", "invalid"} {
		for _, text := range suite(f, kind) {
			f.Add([]byte(text))
			f.Add([]byte(text + "\n" + small))
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		r := Inspect(data)
		if len(r.Faults) == 0 {
			roundTrips(t, r.File)
		}
		updates(t, data, r)
		for _, fault := range r.Faults {
			if fault.Line < 1 || strings.ContainsAny(fault.Error(), "\n\r") {
				t.Errorf("%q", fault.Error())
			}
			if fault.Code == NotLocated || fault.Code == GivenUp {
				var doc map[string]any
				if _, err := toml.Decode(string(data), &doc); err == nil {
					t.Errorf("valid TOML is not located: %v", fault)
				}
			}
		}
		if utf8Text := bytes.ToValidUTF8(data, nil); len(data) < 5000 {
			samePieces(t, string(utf8Text))
		}
	})
}

// updates holds that whatever a file says, a change to it is saved, and that no change is
// none.
func updates(t *testing.T, data []byte, r Reading) {
	f := r.File
	if len(f.Scenarios) == 0 || f.Schema != Schema {
		return
	}
	mended := slices.ContainsFunc(r.Faults, func(f Fault) bool { return f.Path == "schema" })
	if out, inPlace := updated(data, f); inPlace && !mended && !bytes.Equal(out, data) {
		t.Errorf("saved without a change:\n%q\n%q", data, out)
	}
	g := f
	s := f.Scenarios[0].Clone()
	s.Name, s.Months, s.Border.TaxPercent = s.Name+" 2", 7, decimal.New(19, 0)
	s.Offers = append(s.Offers, NewOffer(&s, KindReel))
	s.SettleAll()
	g.Scenarios = append([]Scenario{s}, f.Scenarios[1:]...)
	out, _ := updated(data, g)
	again, _ := Read(out)
	if d := same(reflect.ValueOf(g), reflect.ValueOf(again), "file"); d != "" && len(s.Offers) <= MaxOffers {
		t.Errorf("%s differ:\n%q\n%q", d, data, out)
	}
}

// samePieces holds that reading a file piece by piece gives what reading it whole gives.
func samePieces(t *testing.T, text string) {
	l, _, err := tomltext.Scan(text, pieces...)
	if err != nil || len(l.Cuts) == 0 {
		return
	}
	inPieces, f := decodePieces(text, l.Cuts)
	whole, g := decodePieces(text, nil)
	if (f == nil) != (g == nil) || f == nil && !reflect.DeepEqual(keep(whole, l.Root), keep(inPieces, l.Root)) {
		t.Errorf("in pieces: %v %v\nwhole: %v %v\n%q", f, inPieces, g, whole, text)
	}
}

func TestCheckFindsWhatReadFinds(t *testing.T) {
	for _, e := range edits {
		f, faults := Read([]byte(e.text(t)))
		if len(f.Scenarios) != 1 {
			continue
		}
		typed := map[string]bool{}
		for _, c := range Check(f.Scenarios[0]) {
			typed[c.Path+string(c.Code)] = true
			if c.Line != 0 || c.Place.Scenario != 0 {
				t.Errorf("%s: %+v", e.name, c)
			}
		}
		for _, c := range faults {
			if c.Place.Part != PartFile && !typed[c.Path+string(c.Code)] {
				t.Errorf("%s: Check does not say %v", e.name, c)
			}
		}
	}
	if faults := Check(Demo().Scenarios[0]); len(faults) > 0 {
		t.Error(faults)
	}
}

func TestCheckRefusesNumbersThatNoFileCouldHold(t *testing.T) {
	for _, c := range []struct {
		price Decimal
		wrong Code
	}{
		{decimal.New(1, 12), TooLong},
		{decimal.New(1, 2_000_000_000), TooLong},
		{decimal.New(1, -13), TooLong},
		{decimal.New(999_999_999_999, 0), ""},
		{decimal.RequireFromString("999999999999.999999999999"), ""},
		{decimal.New(5, 3), ""},
		{decimal.New(0, 40).Add(decimal.New(1, 0)), ""},
	} {
		s := Demo().Scenarios[0]
		s.Offers[0].Price = c.price
		faults := Check(s)
		switch {
		case c.wrong == "" && len(faults) > 0:
			t.Error(faults)
		case c.wrong != "" && (len(faults) != 1 || faults[0].Code != c.wrong):
			t.Errorf("%v, want %s", faults, c.wrong)
		}
	}
	s := Demo().Scenarios[0]
	s.FirstMonth, s.Rates[0].Date = Month{2027, 13}, Date{2027, 2, 30}
	if faults := Check(s); len(faults) != 2 || faults[0].Path != "first_month" || faults[1].Path != "rate[1].date" {
		t.Error(faults)
	}
}
