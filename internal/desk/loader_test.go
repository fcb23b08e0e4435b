package desk

import (
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"reelworth/internal/compare"
	"reelworth/internal/desk/inhand"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/desk/stock"
	"reelworth/internal/scenario"
)

// An offer's reel that has come is put in hand as the engine does it, and one undo takes
// it out again.
func TestAnOffersReelIsPutInHand(t *testing.T) {
	h := open(t)
	was := string(scenario.Write(h.session.Draft.File()))
	h.Topic("offer", 2)
	h.click(t, "Put in hand")
	c := compare.Compare(demo(), scenario.Check(demo()), scenario.DateOf(noon))
	want, ok := compare.PutInHand(&c, c.Offers[2].Name, scenario.DateOf(noon), func(string) bool { return false })
	if got := h.session.Reels(); !ok || len(got) != 1 || !reflect.DeepEqual(got[0], want) {
		t.Fatalf("in hand %+v, the engine says %+v", got, want)
	}
	if got := h.hand.column.Headline.String(); !strings.Contains(got, "18 × 36") {
		t.Errorf("headline %q", got)
	}
	if now := h.win.Canvas().Focused(); now == nil || now != h.hand.focusable() {
		t.Errorf("the keys go to %T, not to the reel in the list", now)
	}
	if h.undo(); string(scenario.Write(h.session.Draft.File())) != was || h.hand.looking() {
		t.Error("undone, but something is left of it")
	}
}

// Loads and results take two clicks: the link, and the reply with what is likeliest filled
// in. What was entered is in the saved file, and each undo takes one entry back.
func TestALogIsKeptInTwoClicks(t *testing.T) {
	h := open(t)
	h.PutInHand(2)
	states := []string{string(scenario.Write(h.session.Draft.File()))}
	for _, link := range []string{"+ loaded", "+ loaded", "+ developed", "+ measured"} {
		h.click(t, link)
		h.press(t, "Add")
		states = append(states, string(scenario.Write(h.session.Draft.File())))
	}
	r := h.session.Reels()[0]
	today := scenario.DateOf(noon)
	if len(r.Loads) != 2 || r.Loads[1].Date != today || r.Loads[1].Cassettes != 1 || r.Loads[1].Exposures != 36 ||
		len(r.Results) != 1 || r.Results[0].Good != 36 || len(r.Recounts) != 1 {
		t.Fatalf("%+v", r)
	}
	path := filepath.Join(t.TempDir(), "year.toml")
	h.files.save(nil)
	h.answerPath(t, path)
	h.press(t, "Save")
	saved, faults := scenario.Read(read(t, path))
	if len(faults) > 0 || !reflect.DeepEqual(saved.Reels, h.session.Reels()) {
		t.Errorf("saved %+v, %v", saved.Reels, faults)
	}
	for i := len(states) - 2; i >= 0; i-- {
		if h.undo(); string(scenario.Write(h.session.Draft.File())) != states[i] {
			t.Errorf("undo %d does not lead back", i)
		}
	}
	if h.session.Chosen.Topic != session.TopicReel {
		t.Errorf("after undo the window looks at %v", h.session.Chosen)
	}
}

// What cannot be is refused beside the row that is wrong, and the log stays as it is.
func TestALogRefusesWhatCannotBe(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Reel(0, stock.Log)
	was := string(scenario.Write(h.session.Draft.File()))
	for _, c := range []struct{ link, field, value, says string }{
		{"+ loaded", "Cassettes", "x", "Write a number"},
		{"+ loaded", "Cassettes", "1000", "999"},
		{"+ loaded", "Cassettes", "99", "mm are missing"},
		{"+ loaded", "Loaded on", "yesterday", "2026-11-20"},
		{"+ developed", "Good", "40", "39"},
		{"+ developed", "Exposures in each", "12", "loaded"},
		{"+ measured", "Left on the reel", "40000", "more than the whole reel"},
	} {
		h.click(t, c.link)
		h.panel(t, c.field).Entry.SetText(c.value)
		h.press(t, "Add")
		if text := h.dialogText(); !strings.Contains(text, "✗") || !strings.Contains(text, c.says) {
			t.Errorf("%s = %s: %s", c.field, c.value, text)
		}
		h.press(t, "Cancel")
	}
	if string(scenario.Write(h.session.Draft.File())) != was {
		t.Error("something was taken all the same")
	}
}

// As long as nobody says how many are good, all of them are.
func TestGoodFollowsTheCassettes(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Reel(0, stock.Log)
	h.click(t, "+ developed")
	h.panel(t, "Cassettes").Entry.SetText("2")
	if got := h.panel(t, "Good").Entry.Text; got != "72" {
		t.Errorf("2 cassettes of 36: %s good", got)
	}
	h.panel(t, "Good").Entry.SetText("70")
	h.panel(t, "Cassettes").Entry.SetText("3")
	if got := h.panel(t, "Good").Entry.Text; got != "70" {
		t.Errorf("typed 70, then it became %s", got)
	}
}

// An entry is changed or taken out where it stands.
func TestAnEntryIsChangedAndTakenOut(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Reel(0, stock.Log)
	h.OpenEntry(3) // 3 cassettes of 24, of 3 July
	h.panel(t, "Cassettes").Entry.SetText("2")
	h.press(t, "Change")
	if got := h.session.Reels()[0].Loads[1].Cassettes; got != 2 {
		t.Errorf("%d cassettes", got)
	}
	h.OpenEntry(0)
	h.press(t, "Take out")
	if got := h.session.Reels()[0].Results; len(got) != 1 {
		t.Errorf("%d results are left", len(got))
	}
}

// Standing at the loader, Space logs the cassette that is shown and goes on, Backspace
// takes it back, Esc leaves; whatever was logged is in the reel, and undone one by one.
func TestStandingAtTheLoader(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Reel(0, stock.Cut)
	h.Wish("1", "24")
	was := string(scenario.Write(h.session.Draft.File()))
	h.click(t, "Stand at the loader")
	stand, ok := h.win.Canvas().Focused().(*inhand.Standing)
	if !ok {
		t.Fatalf("the keys go to %T", h.win.Canvas().Focused())
	}
	for _, says := range []string{"10", "24", "32", "No screen is safe"} { // 9 are loaded; 24 × 38 + 282 mm at 38 mm a count
		if !strings.Contains(stand.AccessibilityLabel(), says) {
			t.Errorf("%q does not say %s", stand.AccessibilityLabel(), says)
		}
	}
	stand.TypedRune(' ')
	stand.TypedRune(' ')
	h.Settle()
	loads := h.session.Reels()[0].Loads
	if n := len(loads); n != 5 || loads[3].Exposures != 24 || loads[3].Counts.Int != 32 || loads[4].Exposures != 36 || stand.At != 2 {
		t.Errorf("logged %+v", loads)
	}
	for range 3 { // the third has nothing to take back
		stand.TypedKey(&fyne.KeyEvent{Name: fyne.KeyBackspace})
	}
	h.Settle()
	if now := string(scenario.Write(h.session.Draft.File())); now != was || stand.At != 0 {
		t.Errorf("taken back, but at %d, and left\n%s", stand.At, now)
	}
	stand.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if h.win.Content() != h.root || h.win.Canvas().Focused() != h.hand.column.Label() {
		t.Errorf("Esc does not lead back to the plan's tab: the keys go to %T", h.win.Canvas().Focused())
	}
}

// A counter of 38 mm a count, measured by one scrap; and one whose turns wind 100 mm and
// 2 mm more each (100 n + n²), by two.
func TestACounterIsMeasured(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Reel(1, stock.Log)
	for _, c := range []struct{ counts, length, another, its, mm, growth string }{
		{"20", "760", "", "", "38", "0"},
		{"10", "1100", "20", "2400", "100", "1"},
	} {
		h.click(t, "Measure it by a scrap")
		for label, text := range map[string]string{"Counts": c.counts, "Length": c.length, "of another": c.another, "its length": c.its} {
			h.panel(t, label).Entry.SetText(text)
		}
		h.press(t, "Set")
		if r := h.session.Reels()[1]; r.CounterMM.String() != c.mm || r.CounterGrowthMM.String() != c.growth {
			t.Errorf("a count winds %s mm, growing %s; want %s and %s", r.CounterMM.String(), r.CounterGrowthMM.String(), c.mm, c.growth)
		}
	}
	h.click(t, "Measure it by a scrap")
	h.panel(t, "Counts").Entry.SetText("0")
	h.panel(t, "Length").Entry.SetText("50")
	h.press(t, "Set")
	if !strings.Contains(h.dialogText(), "above 0") {
		t.Error(h.dialogText())
	}
	h.press(t, "Cancel")
}

// What reels taught is taken over in one step, as was shown before.
func TestALessonIsTakenOverInOneStep(t *testing.T) {
	h := open(t)
	h.Put(Shelf())
	h.Reel(0, stock.Account)
	was := string(scenario.Write(h.session.Draft.File()))
	h.click(t, "Take it over into")
	o := h.session.Current().Offers[2]
	// 99 + 1 of 108 and 46 of 48: 146 of 156 is 6.41 percent spoiled.
	if o.Reel.SpoiledPercent.String() != "6.41" || o.OnHand.IsZero() {
		t.Errorf("%s %% spoiled, %s on hand", o.Reel.SpoiledPercent, o.OnHand)
	}
	h.Settle()
	if h.undo(); string(scenario.Write(h.session.Draft.File())) != was {
		t.Error("one undo does not take it back")
	}
}

// A plan from an offer is only thought of: nothing of it is kept.
func TestAPlanOfAnOfferIsKeptNowhere(t *testing.T) {
	h := open(t)
	was := string(scenario.Write(h.session.Draft.File()))
	h.PlanCut(2)
	h.Wish("99", "36")
	h.Settle()
	c := h.hand.column
	if !strings.Contains(c.Headline.String(), "30.18 m") || c.Page() != stock.Cut {
		t.Errorf("%q, page %d", c.Headline.String(), c.Page())
	}
	if text := kit.Spoken(c.Content); !strings.Contains(text, "are missing for all of it") {
		t.Error(text)
	}
	if h.click(t, "Back to the answer"); h.hand.looking() || string(scenario.Write(h.session.Draft.File())) != was {
		t.Error("something is left of it")
	}
}
