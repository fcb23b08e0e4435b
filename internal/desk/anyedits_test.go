package desk

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/library"
	"reelworth/internal/scenario"
)

// What the window holds it can save, open and recover: any two hundred edits, saved and
// opened, show the same window; and so do they after a crash.
func TestAnyEditsAreSavedOpenedAndRecovered(t *testing.T) {
	most := 10
	if testing.Short() {
		most = 2
	}
	dir := t.TempDir()
	again := open(t)
	ran, failed := 0, false
	rapid.Check(t, func(rt *rapid.T) {
		if ran++; ran > most && !failed {
			return // enough, unless an example is being made smaller
		}
		failed = true
		state := filepath.Join(dir, fmt.Sprint("state ", ran))
		h := openWith(t, state)
		h.Settle()
		h.Page(len(h.answer.Names()) - 1) // no charts
		for range rapid.IntRange(40, 200).Draw(rt, "edits") {
			h.edit(rt)
		}
		h.Settle()
		file := string(scenario.Write(h.Session().Draft.File()))
		shown := h.everything()

		h.Session().Draft.Unsaved()
		h.keeper.KeepNow()
		h.crash(t, state)
		third := openWith(t, state)
		third.Settle()
		if !third.View().Asking {
			rt.Fatal("crashed, and nothing is offered")
		}
		third.press(t, "Take it up")
		third.lookAtScenario(h.Session().Current().Name)
		same(rt, "crashed and taken up", file, shown, third)
		third.end()

		path := filepath.Join(dir, fmt.Sprintf("%d.toml", ran))
		h.files.write(h.Session(), path, library.Options{Overwrite: true}, nil)
		h.Settle()
		again.Open(path)
		again.Settle()
		if again.View().Faults > 0 {
			rt.Fatalf("saved and not opened again:\n%s", file)
		}
		again.lookAtScenario(h.Session().Current().Name)
		same(rt, "saved and opened", file, shown, again)
		os.Remove(path)
		h.end()
		failed = false
	})
}

// same holds a window against what another held and showed.
func same(rt *rapid.T, how, file string, shown []string, h *Harness) {
	if now := string(scenario.Write(h.Session().Draft.File())); now != file {
		rt.Fatalf("%s, it is\n%s\nand was\n%s", how, now, file)
	}
	now := h.everything()
	for i := range min(len(now), len(shown)) {
		if now[i] != shown[i] {
			rt.Fatalf("%s, the window shows\n%s\nand showed\n%s\nof\n%s", how, now[i], shown[i], file)
		}
	}
	if len(now) != len(shown) {
		rt.Fatalf("%s, the window shows %d things, not %d", how, len(now), len(shown))
	}
}

func (h *Harness) lookAtScenario(name string) {
	h.take(h.Session())
	if h.Session().SwitchTo(name) {
		h.rebuild()
	}
	h.Settle()
}

// everything is what can be read off the window of the scenario that is looked at: what
// was typed and not taken is no part of it.
func (h *Harness) everything() []string {
	h.win.Canvas().Unfocus()
	clear(h.Session().Withheld)
	s := h.Session().Current()
	h.choose(session.Selection{Topic: session.TopicShooting})
	h.rebuild()
	h.Settle()
	v := h.View()
	list := []string{v.Headline, v.Under, fmt.Sprint(h.Session().Names())}
	for _, o := range v.Offers {
		list = append(list, fmt.Sprint(o.Name, o.PerRoll, o.Under))
	}
	look := func(sel session.Selection) {
		h.choose(sel)
		h.explain()
		for _, f := range h.View().Fields {
			if !isFurther(f.Key, &s) {
				f.Focused = false
				list = append(list, fmt.Sprintf("%+v", f))
			}
		}
	}
	for i := range s.Offers {
		look(session.Selection{Topic: session.TopicOffer, Offer: i})
	}
	for _, topic := range topics {
		look(session.Selection{Topic: topic})
	}
	return list
}

var topics = []session.Topic{session.TopicShooting, session.TopicLoading, session.TopicDeveloping, session.TopicBorder, session.TopicRates}

// isFurther says whether a field is of a rate that there is not: which currency it offers
// goes by what was chosen there before.
func isFurther(key string, s *scenario.Scenario) bool {
	var i int
	n, _ := fmt.Sscanf(key, "rate[%d]", &i)
	return n == 1 && i > len(s.Rates)
}

// texts are what people type, and what they should not.
var texts = []string{"0", "1", "2", "5", "12", "36", "7.50", "1,5", "100", "118.00", "99999", "-3", "", "x", "USD 12", "48 EUR", "CAD 3",
	"3 of 10", "30.5 m", "100 ft", "2027-03", "2026-11-20", "Another name", "Lanternlight 500, 100 ft reel", "a \"quoted\" # name", "1e9", "50 %"}

// edit does one thing that a person can do.
func (h *Harness) edit(rt *rapid.T) {
	if rapid.IntRange(0, 3).Draw(rt, "what") == 0 {
		h.command(rt)
		return
	}
	if rapid.Bool().Draw(rt, "turn") {
		sel := session.Selection{Topic: session.TopicOffer, Offer: rapid.IntRange(0, max(0, len(h.Session().Current().Offers)-1)).Draw(rt, "offer")}
		if rapid.Bool().Draw(rt, "topic?") {
			sel.Topic = rapid.SampledFrom(topics).Draw(rt, "topic")
		}
		h.choose(sel)
	}
	fields := h.form.Fields()
	if len(fields) == 0 {
		return
	}
	f := fields[rapid.IntRange(0, len(fields)-1).Draw(rt, "field")]
	switch in := f.Input.(type) {
	case *kit.TextBox:
		h.win.Canvas().Focus(in.Entry)
		for range rapid.IntRange(1, 2).Draw(rt, "times") {
			in.Entry.SetText(rapid.SampledFrom(texts).Draw(rt, "text"))
		}
	case *kit.Picker:
		if len(in.Options) > 0 {
			in.Choose(rapid.SampledFrom(in.Options).Draw(rt, "option").Value)
		}
	}
}

// command gives one of the menu's or a form's commands.
func (h *Harness) command(rt *rapid.T) {
	s := h.Session().Current()
	commands := []func(*session.Session){
		(*session.Session).RemoveOffer, (*session.Session).CompareWith, (*session.Session).Remove,
		func(w *session.Session) { w.MoveOffer(1) }, func(w *session.Session) { w.MoveOffer(-1) },
		func(w *session.Session) { w.Step(1) }, func(w *session.Session) { w.Step(-1) },
		func(w *session.Session) { w.AddProcess(scenario.Lab) }, func(w *session.Session) { w.AddProcess(scenario.Home) },
		func(w *session.Session) { w.AddEquipment(ofLoading) },
		func(w *session.Session) { w.Undo() }, func(w *session.Session) { w.Undo() }, func(w *session.Session) { w.Redo() },
		func(w *session.Session) {
			r := scenario.Range{Input: rapid.SampledFrom(s.Inputs()).Draw(rt, "input"), Low: decimalOf("1"), High: decimalOf("2.5")}
			if rapid.Bool().Draw(rt, "of one") && len(s.Offers) > 0 {
				r.Offer = rapid.SampledFrom(s.Offers).Draw(rt, "whose").Name
			}
			w.SetRange(r)
		},
	}
	if len(s.Offers) < 8 {
		commands = append(commands, func(w *session.Session) { w.AddOffer(scenario.KindReel) },
			func(w *session.Session) { w.AddOffer(scenario.KindBoxed) }, (*session.Session).DuplicateOffer)
	}
	if len(h.Session().Names()) < 4 {
		commands = append(commands, (*session.Session).AddDemo, (*session.Session).Duplicate)
	}
	if n := len(s.Rates); n > 0 {
		commands = append(commands, func(w *session.Session) { w.RemoveQuote(rapid.IntRange(0, n-1).Draw(rt, "rate")) })
	}
	if n := len(s.Developing); n > 0 {
		commands = append(commands, func(w *session.Session) { w.RemoveProcess(rapid.IntRange(0, n-1).Draw(rt, "process")) })
	}
	if n := len(s.Loading.Equipment); n > 0 {
		commands = append(commands, func(w *session.Session) { w.RemoveEquipment(ofLoading, rapid.IntRange(0, n-1).Draw(rt, "equipment")) })
	}
	h.change(commands[rapid.IntRange(0, len(commands)-1).Draw(rt, "command")])
}

func ofLoading(s *scenario.Scenario) *[]scenario.Equipment { return &s.Loading.Equipment }
