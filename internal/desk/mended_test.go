package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2/driver/software"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/dialogs"
	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

// Each test here holds something that once went wrong.

func TestAFieldOfAFormThatIsGoneTakesNothing(t *testing.T) {
	h := open(t)
	h.addOffer(scenario.KindReel)
	h.Settle()
	old := h.form.Fields()[0] // the new reel's price has the focus
	h.change(func(s *session.Session) { s.Undo() })
	h.Settle()
	h.form.Edit(old, "7")
	h.form.Enter(old, false)
	h.form.Nudge(old, 1)
	h.Settle()
	h.agrees(t, demo())
	if h.Window().Canvas().Focused() == old.Focus {
		t.Error("the focus is in a field that is not on the screen")
	}
}

func TestTypingAfterTurningToAnotherScenario(t *testing.T) {
	h := open(t)
	h.change((*session.Session).Duplicate)
	h.Settle()
	h.Topic("offer", 1)
	h.mustType(t, "offer[2].price", "8450")
	box := h.Window().Canvas().Focused().(*kit.Entry)
	h.change(func(s *session.Session) { s.Step(-1) })
	h.Settle()
	box.SetText("7")
	h.Settle()
	if got := h.session.Current().Offers[1].Price.String(); got != "8450" {
		t.Error("the other scenario's price became", got)
	}
}

func TestAnUnreadableTextLeavesNoPrefixBehind(t *testing.T) {
	h := open(t)
	for _, text := range []string{"2", "21", "21x"} {
		h.mustType(t, "offer[3].price", text)
	}
	h.Settle()
	h.agrees(t, demo())
	if h.session.Draft.Modified() {
		t.Error("21x changed the scenario")
	}
	h.mustType(t, "offer[3].price", "1,234")
	h.Settle()
	if got := h.session.Current().Offers[2].Price.String(); got != "118" {
		t.Error("an unanswered question left", got)
	}
}

func TestWhatIsHeldOutlivesAnotherForm(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].shipping", "34..5")
	h.Settle()
	h.pick(t, "offer[3].import", "none") // lays the form out anew
	h.Topic("border", 2)
	h.Topic("offer", 2)
	if f := h.field(t, "offer[3].shipping"); f.Text != "34..5" || !f.Faulty {
		t.Errorf("%+v", f)
	}
	if !strings.Contains(h.View().Status, "shipping") {
		t.Error("not marked any more:", h.View().Status)
	}
}

func TestMonthsFollowTheFirstMonth(t *testing.T) {
	h := open(t)
	h.Topic("shooting", 2)
	h.mustType(t, "first_month", "2027-06")
	h.Settle()
	if got := h.field(t, "shooting.rolls_per_month[1]").Label; got != "June" {
		t.Error("the first month is called", got)
	}
}

func TestUndoInARevisitedField(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "120")
	h.Window().Canvas().Unfocus()
	h.mustType(t, "offer[3].units", "2")
	h.Window().Canvas().Unfocus()
	for _, f := range h.form.Fields() {
		if f.Key == "offer[3].price" {
			h.Window().Canvas().Focus(f.Focus)
		}
	}
	h.undo()
	h.Settle()
	s := demo()
	s.Offers[2].Price = decimalOf("120")
	h.agrees(t, s)
	if got := h.field(t, "offer[3].price").Text; got != "120" {
		t.Error("undoing the order changed the price to", got)
	}
}

func TestOverwritingWritesTheFileThatWasAskedAbout(t *testing.T) {
	h := open(t)
	a := write(t, string(scenario.Write(scenario.Demo())))
	b := write(t, strings.ReplaceAll(string(scenario.Write(scenario.Demo())), "Quayside year, colour", "The other file"))
	h.Open(a)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	os.WriteFile(a, []byte("schema = 1\n"), 0o644)
	h.files.save(nil)
	h.Settle() // asks whether to overwrite a
	asked := h.dialogs.Open[len(h.dialogs.Open)-1]
	h.session.Draft.Saved(h.session.Draft.Mark()) // as if it had been dealt with meanwhile
	h.Open(b)
	h.Settle()
	asked.Buttons[1].Press()
	h.Settle()
	if text := string(read(t, a)); strings.Contains(text, "The other file") || !strings.Contains(text, "99") {
		t.Error("another file's work was written over this one")
	}
	if h.session.Current().Name != "The other file" || h.session.Doc.Path != b {
		t.Error("the window left the file that is open")
	}
}

func TestClosingAfterSavingAsksAboutWhatWasTypedMeanwhile(t *testing.T) {
	h := open(t)
	path := write(t, string(scenario.Write(scenario.Demo())))
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	closed := false
	h.files.save(func() { closed = true })
	h.mustType(t, "offer[3].price", "98")
	h.Settle()
	if closed || !h.View().Asking {
		t.Error("closed over what was typed while it was saved")
	}
}

func TestSavingTwiceAtOnceRaisesNoAlarm(t *testing.T) {
	h := open(t)
	path := write(t, string(scenario.Write(scenario.Demo())))
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.files.save(nil)
	h.files.save(nil)
	h.Settle()
	if h.View().Asking || strings.Contains(h.View().State, "unsaved") {
		t.Error("two saves at once ask:", h.View().State)
	}
}

func TestUndoAfterSavingIsKept(t *testing.T) {
	state := t.TempDir()
	path := write(t, string(scenario.Write(scenario.Demo())))
	h := openWith(t, state)
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.files.save(nil)
	h.Settle()
	h.change(func(s *session.Session) { s.Undo() })
	h.Settle()
	h.keeper.KeepNow()
	h.Settle()
	if files, _ := filepath.Glob(filepath.Join(state, "*.toml")); len(files) == 0 {
		t.Error("what was undone after saving would not outlive a crash")
	}
}

func TestOrderSizeComesBack(t *testing.T) {
	h := open(t)
	h.Page(pages.Sizes)
	h.pick(t, "offer[3].currency", "CAD") // no rate: nothing to show
	h.Topic("offer", 1)
	h.Settle()
	if p := h.answer.Sizes; !p.Figure.Visible() || !p.Table.Visible() || p.Offer != "Marigold 400, pack of 5 by post" {
		t.Error("the page stays empty for", p.Offer)
	}
}

func TestExportsCanBeRead(t *testing.T) {
	h := open(t)
	path := filepath.Join(t.TempDir(), "chart.png")
	h.asker.Export(path, dialogs.ExportChoice{Figure: answer.Cost, Theme: "paper", Scale: "1"})
	h.Settle()
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o644 {
		t.Error(info.Mode(), err)
	}
}

func TestADealThatCannotBeReadIsNotJudged(t *testing.T) {
	h := open(t)
	h.asker.AskDeal()
	h.Settle()
	h.panel(t, dialogs.DealPrice).Entry.SetText("7.40")
	h.Settle()
	for label, text := range map[string]string{dialogs.DealPrice: "7x", dialogs.DealRolls: "2.5"} {
		was := h.panel(t, label).Entry.Text
		h.panel(t, label).Entry.SetText(text)
		h.Settle()
		if words := h.dialogText(); strings.Contains(words, "orth it") {
			t.Errorf("%s = %s, but: %s", label, text, words)
		}
		h.panel(t, label).Entry.SetText(was)
		h.Settle()
	}
}

func TestANewScenarioTakesTheDemosPlace(t *testing.T) {
	h := open(t)
	h.begin()
	h.Settle()
	if names := h.session.Names(); len(names) != 1 || names[0] != "New scenario" || !strings.Contains(h.View().State, "unsaved") {
		t.Error(names, h.View().State)
	}
}

func TestTheLastFileOpensWhereItWasLeft(t *testing.T) {
	h := open(t)
	f := scenario.Demo()
	second := f.Scenarios[0].Clone()
	second.Name = "The second one"
	f.Scenarios = append(f.Scenarios, second)
	path := write(t, string(scenario.Write(f)))
	h.Open(path)
	h.Settle()
	h.change(func(s *session.Session) { s.Step(1) })
	h.Settle()
	h.settings.keepPlaceOf(h.session)
	h.take(session.NewDemo())
	h.OpenLast()
	h.Settle()
	if h.session.Doc == nil || h.session.Doc.Path != path || h.session.Current().Name != "The second one" {
		t.Error("opened on", h.session.Current().Name)
	}
}

func TestAQuoteIsTypedInEitherDirection(t *testing.T) {
	h := open(t)
	h.pick(t, "offer[3].currency", "CAD")
	h.mustType(t, "rate[3].equals of EUR", "1.5658")
	h.Settle()
	s := demo()
	s.Offers[2].Currency = "CAD"
	s.Rates = append(s.Rates, scenario.Rate{One: "EUR", Equals: decimalOf("1.5658"), In: "CAD", Date: scenario.DateOf(noon), Source: form.TypedByHand})
	h.agrees(t, s)
	if beside := h.field(t, "rate[3].equals of EUR").Beside; !strings.Contains(beside, "0.63865") {
		t.Error("the other direction is not shown:", beside)
	}
}

// Pictures have as many pixels as the screen, whatever its scale.
func TestPicturesAreSharpAtEveryScale(t *testing.T) {
	h := open(t)
	for _, scale := range []float32{1, 1.5, 2} {
		h.win.Canvas().(software.WindowlessCanvas).SetScale(scale)
		h.pipeline.redraw()
		h.Settle()
		want := int(h.answer.Charts.Cost.Size().Width*scale + 0.5)
		if got := h.answer.Charts.Cost.Image.Image.Bounds().Dx(); got < want-2 || got > want+2 {
			t.Errorf("at %v the picture is %d pixels wide, the screen shows %d", scale, got, want)
		}
		h.inspect(t, "charts")
	}
}
