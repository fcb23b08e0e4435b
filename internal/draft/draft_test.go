package draft

import (
	"fmt"
	"reflect"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/scenario"
)

func named(names ...string) scenario.File {
	var f scenario.File
	for _, n := range names {
		f.Scenarios = append(f.Scenarios, scenario.Scenario{Name: n})
	}
	return f
}

func names(d *Draft) string {
	var s []string
	for _, sc := range d.File().Scenarios {
		s = append(s, sc.Name)
	}
	return fmt.Sprint(s)
}

func TestTypingInOneFieldIsOneStep(t *testing.T) {
	d := New(named("a"))
	for _, v := range []string{"1", "11", "118"} {
		d.Change("price", "offer[1].price", 0, scenario.Scenario{Name: v})
	}
	d.Seal()
	d.Change("price", "offer[1].price", 0, scenario.Scenario{Name: "119"})
	d.Change("shipping", "offer[1].shipping", 0, scenario.Scenario{Name: "120"})
	for _, want := range []string{"[119]", "[118]", "[a]"} {
		if d.Undo(); names(d) != want {
			t.Errorf("undone to %s, want %s", names(d), want)
		}
	}
	if _, ok := d.Undo(); ok || d.Modified() {
		t.Error("everything is undone, yet it can be undone or is modified")
	}
}

func TestModifiedFollowsThePosition(t *testing.T) {
	d := New(named("a"))
	d.Change("x", "f", 0, scenario.Scenario{Name: "b"})
	d.Saved(d.Mark())
	d.Change("x", "f", 0, scenario.Scenario{Name: "c"}) // the same field, but after saving: a step of its own
	if d.Undo(); d.Modified() || names(d) != "[b]" {
		t.Error("undone back to the saved state", names(d), "but modified:", d.Modified())
	}
	if d.Undo(); !d.Modified() {
		t.Error("before the saved state counts as modified")
	}
	d.Change("y", "", 0, scenario.Scenario{Name: "z"}) // the saved state is out of reach now
	for range 3 {
		if !d.Modified() {
			t.Error("the saved state cannot be reached, so everything is modified")
		}
		d.Undo()
	}
}

func TestTypingBackIsNoChange(t *testing.T) {
	d := New(named("a"))
	d.Change("x", "f", 0, scenario.Scenario{Name: "b"})
	d.Change("x", "f", 0, scenario.Scenario{Name: "a"})
	d.Change("x", "f", 0, scenario.Scenario{Name: "a"})
	if d.Modified() || d.UndoName() != "" {
		t.Error("modified:", d.Modified(), "undo:", d.UndoName())
	}
}

// A save takes a while: what is typed meanwhile is not part of what is on disk.
func TestSavedStateIsTheOneThatWasHandedOver(t *testing.T) {
	d := New(named("a"))
	d.Change("x", "f", 0, scenario.Scenario{Name: "b"})
	d.Seal()
	handedOver := d.Mark()
	d.Change("x", "f", 0, scenario.Scenario{Name: "c"})
	d.Saved(handedOver)
	if !d.Modified() {
		t.Error("typed after handing over, yet not modified")
	}
	if d.Undo(); d.Modified() {
		t.Error("back at the saved state, yet modified")
	}
}

func TestOldestStepsAreForgotten(t *testing.T) {
	d := New(named("0"))
	for i := range Steps + 10 {
		d.Change("x", "", 0, scenario.Scenario{Name: fmt.Sprint(i + 1)})
	}
	n := 0
	for _, ok := d.Undo(); ok; _, ok = d.Undo() {
		n++
	}
	if n != Steps || names(d) != "[10]" || !d.Modified() {
		t.Error(n, names(d), d.Modified())
	}
}

// Whatever is done, undoing all of it gives back the file it began with, and redoing
// all of it the file it ended with.
func TestUndoIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := New(named("a", "b"))
		first := d.File()
		n := rapid.IntRange(1, 40).Draw(t, "changes")
		for i := range n {
			count := len(d.File().Scenarios)
			s := scenario.Scenario{Name: fmt.Sprint("s", i)}
			switch what := rapid.IntRange(0, 5).Draw(t, "what"); {
			case what == 0 || count == 0:
				d.Insert("add", rapid.IntRange(0, count).Draw(t, "index"), s)
			case what == 1:
				d.Remove("remove", rapid.IntRange(0, count-1).Draw(t, "index"))
			case what == 2:
				d.Undo()
			case what == 3:
				d.Seal()
			default:
				field := rapid.SampledFrom([]string{"", "p", "q"}).Draw(t, "field")
				d.Change("change", field, rapid.IntRange(0, count-1).Draw(t, "index"), s)
			}
		}
		for _, ok := d.Redo(); ok; _, ok = d.Redo() {
		}
		last := d.File()
		for _, ok := d.Undo(); ok; _, ok = d.Undo() {
		}
		if !reflect.DeepEqual(d.File(), first) || d.Modified() {
			t.Fatalf("undone to %s", names(d))
		}
		for _, ok := d.Redo(); ok; _, ok = d.Redo() {
		}
		if !reflect.DeepEqual(d.File(), last) {
			t.Fatalf("redone to %s", names(d))
		}
	})
}

func TestTypedBackIsNoChange(t *testing.T) {
	priced := func(price string) scenario.Scenario {
		s := scenario.Demo().Scenarios[0].Clone()
		if price != "" {
			s.Offers[0].OnHand = decimal.RequireFromString(price)
		}
		return s
	}
	d := New(scenario.File{Scenarios: []scenario.Scenario{priced("")}})
	d.Change("on hand", "offer[1].on_hand", 0, priced("0"))
	if d.Modified() || d.UndoName() != "" {
		t.Error("a zero that was typed is a change")
	}
	d.Change("on hand", "offer[1].on_hand", 0, priced("5"))
	d.Seal()
	if !d.Modified() {
		t.Error("5 is no change")
	}
	d.Change("on hand", "offer[1].on_hand", 0, priced("0"))
	if d.Modified() || d.UndoName() == "" {
		t.Error("0, 5, 0 is a change, or cannot be undone")
	}
	d.Saved(d.Mark())
	d.Undo()
	if !d.Modified() {
		t.Error("5 again, but not modified")
	}
	d.Undo()
	if d.Modified() {
		t.Error("all undone, but modified")
	}
	d.Unsaved()
	if !d.Modified() {
		t.Error("nothing is on disk, but not modified")
	}
}

// Reels in hand go by the name that their offer has, in the step that gave it one: through
// names that are another's on the way, and back.
func TestReelsInHandFollowTheirOffersName(t *testing.T) {
	offers := func(names ...string) (s scenario.Scenario) {
		for _, n := range names {
			s.Offers = append(s.Offers, scenario.Offer{Name: n})
		}
		return s
	}
	d := New(scenario.File{
		Scenarios: []scenario.Scenario{offers("Reel", "Box"), offers("Both")},
		Reels:     []scenario.InHand{{Offer: "Reel"}, {Offer: "Box"}, {Offer: "gone"}, {Offer: "Both"}},
	})
	says := func(want string) {
		t.Helper()
		var got []string
		for _, r := range d.File().Reels {
			got = append(got, r.Offer)
		}
		if fmt.Sprint(got) != want {
			t.Errorf("%v, want %s", got, want)
		}
	}
	for _, name := range []string{"Box", "Boxe", "Box", "Boxes"} { // the first key hits the other one's
		d.Change("name", "offer[1].name", 0, offers(name, "Box"))
	}
	says("[Boxes Box gone Both]")
	d.Seal()
	d.Change("order", "", 0, offers("Box", "Boxes")) // no names, only places
	says("[Boxes Box gone Both]")
	d.Change("name", "", 1, offers("Shared"))
	d.Change("name", "", 0, offers("Shared", "Boxes"))
	says("[Boxes Shared gone Shared]")
	d.Change("name", "", 1, offers("Other")) // the first scenario still has it
	says("[Boxes Shared gone Shared]")
	for range 4 {
		d.Undo()
	}
	says("[Boxes Box gone Both]")
	d.Undo()
	says("[Reel Box gone Both]")
	if d.Modified() {
		t.Error("all is undone, and modified")
	}
	d.Redo()
	says("[Boxes Box gone Both]")
	d.Undo()
	for _, name := range []string{"Reels", "Reel"} { // typed back: no step
		d.Change("name", "offer[1].name", 0, offers(name, "Box"))
	}
	if says("[Reel Box gone Both]"); d.Modified() || d.UndoName() != "" {
		t.Error("typed back, and a step is left")
	}
}
