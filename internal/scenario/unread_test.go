package scenario

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

// junk is what may stand where something else should.
var junk = []string{`14.80`, `-3`, `true`, `"x"`, `""`, `"1e5"`, `"1,5"`, `[]`, `[1, 2.5]`, `["a"]`, `{}`, `{a = 1}`, `2026-01-31`, `0x10`, `nan`, `"""two
lines"""`, `99999999999999`, `[{a = 1.50}]`}

// spoilt is the demo with some of its values replaced by junk and some of its lines gone.
func spoilt(t *rapid.T) string {
	lines := strings.Split(string(Write(Demo())), "\n")
	for range rapid.IntRange(1, 6).Draw(t, "slips") {
		i := rapid.IntRange(1, len(lines)-1).Draw(t, "line")
		key, _, isPair := strings.Cut(lines[i], " = ")
		switch {
		case !isPair:
		case rapid.IntRange(0, 3).Draw(t, "slip") == 0:
			lines[i] = ""
		default:
			lines[i] = key + " = " + rapid.SampledFrom(junk).Draw(t, "junk")
		}
	}
	return strings.Join(lines, "\n")
}

// faultsAt are faults as codes and paths, whatever their lines.
func faultsAt(list []Fault) []string {
	var out []string
	for _, f := range list {
		if strings.Contains(f.Got, "lines") {
			f.Got = "two lines" // however they are spelt
		}
		if f.Code == Missing && f.Path == "shooting.rolls_per_month" { // all that its table must hold
			f.Code, f.Path = MissingTable, "shooting"
		}
		out = append(out, fmt.Sprintf("%s %s in %v: %v %v", f.Code, f.Path, f.Place, f.Got, f.Guess))
	}
	slices.Sort(out)
	return out
}

// What could not be read is written again as it was: a file of faults, written in its
// canonical form and read again, has the same faults.
func TestWhatCouldNotBeReadIsWrittenAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := spoilt(t)
		r := Inspect([]byte(text))
		if len(r.File.Scenarios) == 0 {
			t.Skip("no scenario to show")
		}
		was, is := faultsAt(r.Faults), faultsAt(Inspect(Write(r.File)).Faults)
		if !slices.Equal(was, is) {
			t.Fatalf("faults were\n%s\nand are\n%s\nof\n%s", strings.Join(was, "\n"), strings.Join(is, "\n"), Write(r.File))
		}
		if out, inPlace := updated([]byte(text), r.File); string(out) != text || !inPlace {
			t.Fatal("saving a file as it was opened changed it")
		}
		checked := faultsAt(Check(r.File.Scenarios[0]))
		if !slices.Equal(checked, was) {
			t.Fatalf("faults were\n%s\nand Check finds\n%s", strings.Join(was, "\n"), strings.Join(checked, "\n"))
		}
	})
}

func TestAnUnreadValueStandsUntilItsFieldHasAnother(t *testing.T) {
	text := strings.Replace(string(Write(Demo())), `price = "118.00"`, `price = 118.00 # bare`, 1)
	text = strings.Replace(text, `shipping = "34.50"`, `shipping = 34.50`, 1)
	f, faults := Read([]byte(text))
	if len(faults) != 2 {
		t.Fatal(faults)
	}
	s := f.Scenarios[0].Clone()
	if got := s.Unread("offer[3].price"); got != "118.00" {
		t.Errorf("it reads %q", got)
	}
	if got := s.Unread("offer[1].price") + s.Unread("offer[9].price") + s.Unread("nothing.there") + s.Unread("") + s.Unread("offer[3].boxed.exposures") + s.Unread("note[2].x"); got != "" {
		t.Errorf("something that could be read is said not to be: %q", got)
	}
	s.Offers[2].Price = decimal.RequireFromString("120.00")
	if got := faultsAt(Check(s)); len(got) != 1 || !strings.Contains(got[0], "shipping") {
		t.Error("a price was given, but:", got)
	}
	s.Settle("offer[3].shipping") // 0 was typed
	if got := Check(s); len(got) != 0 {
		t.Error("all was given, but:", got)
	}
	out, inPlace := updated([]byte(text), File{Schema: Schema, Scenarios: []Scenario{s}})
	want := strings.Replace(strings.Replace(text, "118.00 # bare", `"120.00" # bare`, 1), "      shipping = 34.50\n", "", 1)
	if !inPlace || !strings.Contains(string(out), `price = "120.00" # bare`) || strings.Contains(string(out), "34.50") {
		t.Errorf("saved as\n%s\nwant\n%s", out, want)
	}
	if again := f.Scenarios[0]; again.Unread("offer[3].shipping") == "" {
		t.Error("changing a clone changed what it was cloned from")
	}
}

// Of a list of numbers each that could not be read stands by itself.
func TestAMonthThatCouldNotBeReadStandsUntilItIsGiven(t *testing.T) {
	text := strings.Replace(string(Write(Demo())), `rolls_per_month = ["2", "2", "3", "4", "4", "5"`, `rolls_per_month = ["2", "x", 3, 4.5, "4", 0x5`, 1)
	f, faults := Read([]byte(text))
	if len(faults) != 2 {
		t.Fatal(faults, text)
	}
	s := f.Scenarios[0].Clone()
	month := func(i int) string { return s.Unread(fmt.Sprintf("shooting.rolls_per_month[%d]", i)) }
	if got := []string{month(1), month(2), month(3), month(4), month(5), month(6), month(13)}; got[1] != "x" || got[3] != "4.5" || got[0]+got[2]+got[4]+got[5] != "" {
		t.Errorf("%q", got)
	}
	give := func(i int, number string) {
		s.Shooting.RollsPerMonth[i-1] = decimal.RequireFromString(number)
		s.Settle(fmt.Sprintf("shooting.rolls_per_month[%d]", i))
	}
	give(2, "7")
	if got := faultsAt(Check(s)); len(got) != 1 || month(4) != "4.5" || month(2) != "" {
		t.Error(got)
	}
	if out := string(Write(File{Schema: Schema, Scenarios: []Scenario{s}})); !strings.Contains(out, `"7"`) || !strings.Contains(out, "4.5") {
		t.Error(out)
	}
	give(4, "4.5")
	if got := Check(s); len(got) != 0 {
		t.Error(got)
	}
	if again := f.Scenarios[0]; again.Unread("shooting.rolls_per_month[2]") != "x" {
		t.Error("changing a clone changed what it was cloned from")
	}
}

// A table that is none is kept too, and goes with the offer it is in.
func TestAnUnreadTableGoesWithItsTable(t *testing.T) {
	text := string(Write(Demo()))
	at := strings.Index(text, "    [scenario.offer.boxed]")
	end := at + strings.Index(text[at:], "\n\n")
	text = text[:at] + "    boxed = 5" + text[end:]
	f, faults := Read([]byte(text))
	if len(faults) != 1 || faults[0].Path != "offer[1].boxed" || faults[0].Code != NotTable {
		t.Fatal(faults)
	}
	s := f.Scenarios[0].Clone()
	s.Offers[0], s.Offers[1] = s.Offers[1], s.Offers[0]
	if got := Check(s); len(got) != 1 || got[0].Path != "offer[2].boxed" || got[0].Code != NotTable {
		t.Error(got)
	}
	SetKind(&s, &s.Offers[1], KindBoxed)
	if got := Check(s); len(got) != 0 {
		t.Error("it has what its kind needs, but:", got)
	}
}

// A file that lacks its first key gets it when it is saved; nothing else of it changes.
func TestASchemaThatIsMissingOrWrongIsMended(t *testing.T) {
	good := string(Write(Demo()))
	for _, first := range []string{"", "schema = \"1\"\n", "schema = true # mine\n", "schema = -1\n"} {
		text := "# my own words\n" + strings.Replace(good, schemaLine+"\n", first, 1)
		r := Inspect([]byte(text))
		if len(r.Faults) != 1 || r.Faults[0].Path != "schema" {
			t.Fatal(r.Faults)
		}
		out, inPlace := updated([]byte(text), r.File)
		again := Inspect(out)
		if !inPlace || len(again.Faults) > 0 || !strings.Contains(string(out), "# my own words\n") {
			t.Errorf("%q: %v %v\n%s", first, inPlace, again.Faults, out)
		}
	}
}
