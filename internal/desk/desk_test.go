package desk

import (
	"fmt"
	"image/color"
	_ "image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"reelworth/internal/compare"
	"reelworth/internal/desk/kit"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

var noon = time.Date(2026, 11, 24, 12, 0, 0, 0, time.UTC)

// open is a window on the demo, settled.
func open(t *testing.T) *Harness {
	t.Helper()
	app := test.NewApp()
	t.Cleanup(app.Quit)
	h := NewHarness(app, noon)
	h.Home = t.TempDir()
	h.Window().Show()
	h.Resize(1280, 800)
	h.SetTheme("paper")
	return h
}

// want is what the engine says about a scenario.
func want(s scenario.Scenario) (c compare.Comparison, headline string, totals []string) {
	c = compare.Compare(s, scenario.Check(s), scenario.DateOf(noon))
	for _, o := range c.Offers {
		totals = append(totals, money.English.Number(o.PerRoll.Total, 2))
	}
	return c, words.Verdict(&c, "en").Text, totals
}

// agrees holds the window against the engine.
func (h *Harness) agrees(t *testing.T, s scenario.Scenario) {
	t.Helper()
	_, headline, totals := want(s)
	v := h.View()
	if v.Headline != headline {
		t.Errorf("headline %q, the engine says %q", v.Headline, headline)
	}
	for i, o := range v.Offers {
		if o.PerRoll != totals[i] {
			t.Errorf("%s costs %s a roll, the engine says %s", o.Name, o.PerRoll, totals[i])
		}
	}
}

func demo() scenario.Scenario { return scenario.Demo().Scenarios[0] }

func (h *Harness) mustType(t *testing.T, key, text string) {
	t.Helper()
	if !h.Type(key, text) {
		t.Fatalf("there is no field %s", key)
	}
}

func (h *Harness) field(t *testing.T, key string) FieldView {
	t.Helper()
	f, ok := h.View().Field(key)
	if !ok {
		t.Fatalf("there is no field %s", key)
	}
	return f
}

func TestFirstStartShowsTheDemoComputed(t *testing.T) {
	h := open(t)
	h.agrees(t, demo())
	v := h.View()
	if !strings.Contains(v.Headline, "EUR\u00a0211 in cash") || v.Form != "Lanternlight 500, 100 ft reel" || v.Page != "Charts" {
		t.Errorf("%+v", v)
	}
	for i, view := range []*figureView{h.answer.cost, h.answer.spend} {
		if view.Image.Image == nil || blank(view.Image) {
			t.Error("chart", i, "is not drawn")
		}
	}
	if strings.Contains(v.State, "unsaved") {
		t.Error("nothing was changed, yet:", v.State)
	}
}

func TestEverythingFollowsTyping(t *testing.T) {
	h := open(t)
	was := h.View().Headline
	h.mustType(t, "offer[3].price", "250")
	h.worker.idle()
	h.drain()
	s := demo()
	s.Offers[2].Price = decimalOf("250")
	_, _, totals := want(s)
	v := h.View()
	if v.Offers[2].PerRoll != totals[2] {
		t.Errorf("the cost is %s, the engine says %s", v.Offers[2].PerRoll, totals[2])
	}
	if v.Headline != was {
		t.Error("the headline changed before the typing had ended")
	}
	h.Settle()
	h.agrees(t, s)
	if v := h.View(); !strings.Contains(v.State, "unsaved") || !strings.HasPrefix(v.Title, "●") {
		t.Error("not marked as unsaved:", v.State, v.Title)
	}
}

// What is typed on the way to a number must leave no trace: the pattern of the months
// would be lost if "5" were spread before "50".
func TestTypingOnTheWayLeavesNoTrace(t *testing.T) {
	h := open(t)
	h.Topic("shooting", 2)
	for _, text := range []string{"", "0", "5", "50", "508", "50"} {
		h.mustType(t, "shooting.rolls_a_year", text)
		h.Settle()
	}
	s := demo()
	var err error
	if s.Shooting, err = s.Shooting.Spread(decimalOf("50")); err != nil {
		t.Fatal(err)
	}
	h.agrees(t, s)
	if got := h.field(t, "shooting.rolls_per_month[6]").Text; got != s.Shooting.RollsPerMonth[5].String() {
		t.Errorf("June has %s rolls, want %s", got, s.Shooting.RollsPerMonth[5])
	}
}

func TestWhatCannotBeReadIsHeldBesideTheLastGoodAnswer(t *testing.T) {
	h := open(t)
	for key, text := range map[string]string{"offer[3].shipping": "34..5", "offer[3].discount_percent": "140", "offer[3].units": "1.5"} {
		h.mustType(t, key, text)
		h.Settle()
		f := h.field(t, key)
		if !f.Faulty || f.Text != text || !strings.HasPrefix(f.Beside, "✗") {
			t.Errorf("%s: %+v", key, f)
		}
	}
	h.agrees(t, demo())
	for _, name := range []string{"shipping", "discount", "order"} {
		if !strings.Contains(h.View().Status, name) {
			t.Errorf("the status does not name %s: %s", name, h.View().Status)
		}
	}
	h.mustType(t, "offer[3].shipping", "30")
	h.mustType(t, "offer[3].discount_percent", "5")
	h.mustType(t, "offer[3].units", "1")
	h.Settle()
	if v := h.View(); v.Status != "" {
		t.Error("all is mended, but:", v.Status)
	}
	s := demo()
	s.Offers[2].Shipping = decimalOf("30")
	h.agrees(t, s)
}

func TestChoosingAnotherOfferShowsItsFormAndReceipt(t *testing.T) {
	h := open(t)
	h.Page(pageReceipt)
	h.Topic("offer", 1)
	if v := h.View(); v.Form != "Marigold 400, pack of 5 by post" || !v.Offers[1].Chosen || h.field(t, "offer[2].price").Text != "8450" {
		t.Errorf("%+v", v)
	}
	c, _, _ := want(demo())
	rows := words.Receipt(&c, 1, "en")
	shown := h.answer.ledger.visible()
	if len(shown) != len(rows)+1 || shown[1].home.String() != rows[0].Home || shown[1].seller.String() != rows[0].Seller {
		t.Errorf("%d rows are shown, the receipt has %d", len(shown)-1, len(rows))
	}
	if h.answer.stripOf.Visible() {
		t.Error("a pack has no strip")
	}
	h.Topic("offer", 2)
	if !h.answer.stripOf.Visible() || blank(h.answer.strip.Image) {
		t.Error("the reel's strip is not drawn")
	}
}

func TestImportChoiceAndQuote(t *testing.T) {
	h := open(t)
	h.pick(t, "offer[3].import", "none")
	s := demo()
	s.Offers[2].Import = scenario.ImportNone
	h.agrees(t, s)
	h.mustType(t, "rate[1].equals", "1.05")
	h.Settle()
	s.Rates[0].Equals = decimalOf("1.05")
	h.agrees(t, s)
	if got := h.current().Rates[0].Date; got != scenario.DateOf(noon) {
		t.Error("a quote typed today is dated", got)
	}
}

// pick chooses in a picker, as its list does.
func (h *Harness) pick(t *testing.T, key, value string) {
	t.Helper()
	for _, f := range h.form.fields {
		if f.key == key {
			f.input.(*kit.Picker).Choose(value)
			h.Settle()
			return
		}
	}
	t.Fatalf("there is no choice %s", key)
}

func TestANewCurrencyAsksForItsQuote(t *testing.T) {
	h := open(t)
	h.pick(t, "offer[3].currency", "CAD")
	if v := h.View(); v.Offers[2].PerRoll != "–" || !strings.Contains(v.Status, "CAD") {
		t.Errorf("%+v %q", v.Offers[2], v.Status)
	}
	if f := h.field(t, "rate[3].equals"); f.Text != "" || f.Label != "1 CAD is" {
		t.Errorf("%+v", f)
	}
	for _, text := range []string{"0", "0.", "0.6", "0.64"} {
		h.mustType(t, "rate[3].equals", text)
	}
	h.Settle()
	s := demo()
	s.Offers[2].Currency = "CAD"
	s.Rates = append(s.Rates, scenario.Rate{One: "CAD", Equals: decimalOf("0.64"), In: "EUR", Date: scenario.DateOf(noon), Source: typedByHand})
	h.agrees(t, s)
	if got := len(h.current().Rates); got != 3 {
		t.Error(got, "quotes")
	}
}

func TestUndoNamesAndTakesBackOneFieldAtATime(t *testing.T) {
	h := open(t)
	for _, text := range []string{"1", "12", "120"} {
		h.mustType(t, "offer[3].price", text)
	}
	h.mustType(t, "offer[3].shipping", "40")
	h.Settle()
	h.Window().Canvas().Unfocus()
	if h.menu.undo.Label != "Undo shipping of Lanternlight 500, 100 ft reel" {
		t.Error(h.menu.undo.Label)
	}
	h.undo()
	h.undo()
	h.Settle()
	h.agrees(t, demo())
	if v := h.View(); strings.Contains(v.State, "unsaved") || h.field(t, "offer[3].price").Text != "118.00" {
		t.Error("undone to the start, but", v.State, h.field(t, "offer[3].price").Text)
	}
	h.redo()
	h.Settle()
	s := demo()
	s.Offers[2].Price = decimalOf("120")
	h.agrees(t, s)
}

func TestAddingAndRemovingWaysToBuy(t *testing.T) {
	h := open(t)
	h.addOffer(scenario.KindReel)
	h.Settle()
	v := h.View()
	if len(v.Offers) != 4 || !v.Offers[3].Chosen || v.Form != "New reel" || v.Offers[3].PerRoll == "–" {
		t.Fatalf("%+v", v.Offers)
	}
	if f := h.field(t, "offer[4].price"); !f.Focused {
		t.Error("the price of the new reel is not entered")
	}
	h.Window().Canvas().Unfocus()
	h.removeOffer()
	h.Settle()
	h.agrees(t, demo())
	h.Topic("offer", 0)
	h.removeOffer() // the baseline
	h.Settle()
	if s := h.current(); s.Baseline != s.Offers[0].Name || len(s.Offers) != 2 {
		t.Error("compared with", s.Baseline)
	}
	h.agrees(t, h.current())
}

func TestNudgingAndKeys(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "118.00")
	box := h.Window().Canvas().Focused().(*kit.Entry)
	box.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	h.Settle()
	s := demo()
	s.Offers[2].Price = decimalOf("119.00")
	h.agrees(t, s)
	if box.Text != "119.00" || box.SelectedText() != "119.00" {
		t.Error(box.Text, box.SelectedText())
	}
}

func TestRenamingKeepsTheBaseline(t *testing.T) {
	h := open(t)
	h.Topic("offer", 0)
	for _, f := range h.form.fields {
		if f.key == "offer[1].name" {
			h.edit(f, "Corner shop")
		}
	}
	h.Settle()
	if s := h.current(); s.Baseline != "Corner shop" || s.Offers[0].Name != "Corner shop" {
		t.Error(s.Baseline)
	}
}

// press taps the button of the dialog that is open.
func (h *Harness) press(t *testing.T, label string) {
	t.Helper()
	top := h.Window().Canvas().Overlays().Top()
	if top == nil {
		t.Fatalf("no dialog is open to press %q in", label)
	}
	for _, o := range test.LaidOutObjects(top) {
		if b, ok := o.(*kit.ReplyButton); ok && b.Text == label {
			b.Press()
			h.Settle()
			return
		}
	}
	t.Fatalf("the dialog has no button %q", label)
}

// answerPath types a path into the dialog that asks for one.
func (h *Harness) answerPath(t *testing.T, path string) {
	t.Helper()
	box, ok := h.Window().Canvas().Focused().(*kit.Entry)
	if !ok {
		t.Fatal("no path is asked for")
	}
	box.SetText(path)
}

func TestSavingAndOpening(t *testing.T) {
	h := open(t)
	path := filepath.Join(t.TempDir(), "mine.toml")
	h.mustType(t, "offer[3].price", "125.50")
	h.save(nil)
	h.answerPath(t, path)
	h.press(t, "Save")
	if v := h.View(); v.Asking || strings.Contains(v.State, "unsaved") || v.Title != "Reelworth – mine.toml" {
		t.Fatalf("%+v", v)
	}
	f, faults := scenario.Read(read(t, path))
	if len(faults) > 0 || f.Scenarios[0].Offers[2].Price.String() != "125.5" {
		t.Error(faults, f.Scenarios[0].Offers[2].Price)
	}
	other := open(t)
	other.Open(path)
	other.Settle()
	other.agrees(t, f.Scenarios[0])
	if v := other.View(); v.Title != "Reelworth – mine.toml" || strings.Contains(v.State, "unsaved") {
		t.Errorf("%+v", v)
	}
}

func read(t *testing.T, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func write(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "file.toml")
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestCommentsStayWhenTheFileIsSaved(t *testing.T) {
	h := open(t)
	text := "# my own words\n" + string(scenario.Write(scenario.Demo()))
	path := write(t, text)
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	h.save(nil)
	h.Settle()
	if after := string(read(t, path)); h.View().Asking || !strings.HasPrefix(after, "# my own words\n") || !strings.Contains(after, `price = "99"`) {
		t.Error(after)
	}
	if string(read(t, path+".bak")) != text {
		t.Error("the file as it was is not in the .bak")
	}
}

func TestAFileChangedOutsideIsNotOverwritten(t *testing.T) {
	h := open(t)
	path := write(t, string(scenario.Write(scenario.Demo())))
	h.Open(path)
	h.Settle()
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	theirs := "schema = 1\n"
	if err := os.WriteFile(path, []byte(theirs), 0o644); err != nil {
		t.Fatal(err)
	}
	h.save(nil)
	h.Settle()
	if !h.View().Asking || string(read(t, path)) != theirs {
		t.Fatal("overwritten without asking")
	}
	h.press(t, "Cancel")
	if string(read(t, path)) != theirs || !strings.Contains(h.View().State, "unsaved") {
		t.Error("cancelled, but saved")
	}
	h.save(nil)
	h.Settle()
	h.press(t, "Overwrite")
	if string(read(t, path)) == theirs || string(read(t, path+".bak")) != theirs {
		t.Error("not overwritten after all")
	}
}

func TestClosingAsksAboutUnsavedWork(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	h.close()
	if !h.View().Asking {
		t.Fatal("closed without asking")
	}
	h.press(t, "Cancel")
	if h.View().Asking {
		t.Error("the question stays")
	}
	path := filepath.Join(t.TempDir(), "kept.toml")
	h.close()
	h.press(t, "Save")
	h.answerPath(t, path)
	h.press(t, "Save")
	if _, err := os.Stat(path); err != nil {
		t.Error("closing with Save saved nothing:", err)
	}
}

func TestAFileWithFaultsIsListedAndLeftAlone(t *testing.T) {
	h := open(t)
	text := strings.Replace(string(scenario.Write(scenario.Demo())), `price = "118.00"`, `price = 118.00`, 1)
	text = strings.Replace(text, `home = "EUR"`, `home = "EURO"`, 1)
	path := write(t, text)
	h.Open(path)
	h.Settle()
	if v := h.View(); v.Faults != 2 {
		t.Errorf("%d faults are listed", v.Faults)
	}
	if string(read(t, path)) != text {
		t.Error("the file was changed")
	}
	if err := os.WriteFile(path, scenario.Write(scenario.Demo()), 0o644); err != nil {
		t.Fatal(err)
	}
	h.Open(path) // "Read it again"
	h.Settle()
	if h.View().Faults != 0 {
		t.Error("mended, but still listed")
	}
	h.agrees(t, demo())
}

func TestWhatCannotBeOpenedIsSaid(t *testing.T) {
	h := open(t)
	for _, path := range []string{filepath.Join(t.TempDir(), "none.toml"), t.TempDir()} {
		h.Open(path)
		h.Settle()
		if !h.View().Asking {
			t.Error("nothing is said about", path)
		}
		h.press(t, "Close")
	}
	h.agrees(t, demo())
}

func TestExportingAChart(t *testing.T) {
	h := open(t)
	dir := t.TempDir()
	for fig, name := range map[int]string{figureCost: "cost.png", figureSpend: "year.svg", figureFlip: "flip.pdf", figureSwings: "swings.png", figureSizes: "sizes.png"} {
		h.askExport(fig)
		path := filepath.Join(dir, name)
		h.answerPath(t, path)
		h.press(t, "Export")
		if info, err := os.Stat(path); err != nil || info.Size() < 5000 {
			t.Error(name, err)
		}
	}
	h.askExport(figureCost)
	h.answerPath(t, filepath.Join(dir, "nowhere", "cost.png"))
	h.press(t, "Export")
	if !h.View().Asking {
		t.Error("a folder that is not there was taken")
	}
}

func TestCommandsWaitWhileADialogIsOpen(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "99")
	h.Settle()
	h.close()
	h.menu.undo.Action()
	if h.current().Offers[2].Price.String() != "99" {
		t.Error("undone under an open dialog")
	}
}

func TestThemesReachEveryColour(t *testing.T) {
	h := open(t)
	for _, theme := range palette.Themes {
		h.SetTheme(theme.Name)
		img := h.Window().Canvas().Capture()
		if got := color.NRGBAModel.Convert(img.At(3, 3)); got != color.NRGBA(theme.Ground) {
			t.Errorf("%s: the ground is %v", theme.Name, got)
		}
		x, y := 640, 780
		if got := color.NRGBAModel.Convert(img.At(x, y)); got != color.NRGBA(theme.Ground) {
			t.Errorf("%s: the chart's ground is %v", theme.Name, got)
		}
	}
}

// The page of keys must name every shortcut of the menu, and the toolkit passes on only
// those with a modifier.
func TestEveryShortcutIsOnThePageOfKeys(t *testing.T) {
	h := open(t)
	names := map[fyne.KeyName]string{fyne.KeyPageDown: "Page Down", fyne.KeyPageUp: "Page Up"}
	for _, m := range h.menu.main.Items {
		for _, item := range m.Items {
			if item.Shortcut == nil {
				continue
			}
			s := item.Shortcut.(fyne.KeyboardShortcut)
			if s.Mod() == 0 {
				t.Errorf("%s: a key without a modifier never arrives", item.Label)
			}
			if _, ours := s.(*desktop.CustomShortcut); ours && (s.Key() == fyne.KeyZ || s.Key() == fyne.KeyY) && s.Mod() == ctrl {
				t.Errorf("%s: the toolkit has a shortcut of its own for these keys, and never looks for ours", item.Label)
			}
			name := names[s.Key()]
			if name == "" {
				name = string(s.Key())
			}
			if len(name) == 1 && name >= "1" && name <= "6" {
				continue // "Ctrl+1 to Ctrl+6"
			}
			if !strings.Contains(words.KeysHelp, "+"+name) && !strings.Contains(words.KeysHelp, "and "+name) && !item.IsQuit {
				t.Errorf("%s (%s) is not on the page of keys", item.Label, name)
			}
		}
	}
}

func TestJumpingBetweenColumns(t *testing.T) {
	h := open(t)
	for _, want := range []string{"*kit.Card", "*kit.Entry", "*kit.TabLabel", "*kit.Card"} {
		h.jump(1)
		if got := fmt.Sprintf("%T", h.Window().Canvas().Focused()); got != want {
			t.Errorf("the focus is on %s, want %s", got, want)
		}
	}
	h.jump(-1)
	if got := fmt.Sprintf("%T", h.Window().Canvas().Focused()); got != "*kit.TabLabel" {
		t.Error("back to", got)
	}
}

func TestNumbersOfAnotherCountry(t *testing.T) {
	h := open(t)
	h.setNumbers("de")
	h.Settle()
	if got := h.field(t, "offer[3].price").Text; got != "118,00" {
		t.Error("the price is shown as", got)
	}
	h.mustType(t, "offer[3].price", "1.234,50")
	h.Settle()
	if got := h.current().Offers[2].Price.String(); got != "1234.5" {
		t.Error("1.234,50 is read as", got)
	}
	h.mustType(t, "offer[3].price", "1.234")
	h.Settle()
	f := h.form.fields[0]
	if got := h.current().Offers[2].Price.String(); got == "1.234" || len(f.row.Answers) != 2 {
		t.Fatalf("1.234 is read as %s, %d answers are offered", got, len(f.row.Answers))
	}
	if !strings.Contains(h.View().Status, "price") {
		t.Error("not marked:", h.View().Status)
	}
	f.row.Answers[1].Do()
	h.Settle()
	if got := h.current().Offers[2].Price.String(); got != "1.234" && got != "1234" || f.held != "" {
		t.Error("answered, but", got, f.held)
	}
	h.setNumbers("en")
}

func TestAPastedCurrencyIsOffered(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "118,00 €")
	h.Settle()
	f := h.form.fields[0]
	if len(f.row.Answers) != 1 || f.row.Answers[0].Label.String() != "in EUR?" || h.current().Offers[2].Price.String() != "118" {
		t.Fatalf("%d answers, price %s", len(f.row.Answers), h.current().Offers[2].Price)
	}
	f.row.Answers[0].Do()
	h.Settle()
	if o := h.current().Offers[2]; o.Currency != "EUR" {
		t.Error("still in", o.Currency)
	}
	h.Topic("border", 2)
	h.mustType(t, "border.handling_fee", "¥500")
	h.Settle()
	if f := h.field(t, "border.handling_fee"); !f.Faulty || !strings.Contains(f.Beside, "EUR") {
		t.Errorf("%+v", f)
	}
}

func TestScenariosComeAndGo(t *testing.T) {
	h := open(t)
	h.mustType(t, "offer[3].price", "118.50") // else the demo would make room
	h.newScenario()
	h.press(t, "Make")
	if s := h.current(); s.Name != "New scenario" || len(h.session.names()) != 2 {
		t.Error(s.Name, h.session.names())
	}
	h.agrees(t, h.current())
	h.duplicateScenario()
	h.Settle()
	if got := h.current().Name; got != "New scenario 2" {
		t.Error(got)
	}
	h.deleteScenario()
	h.Settle()
	h.deleteScenario()
	h.Settle()
	h.deleteScenario()
	h.Settle()
	h.press(t, "Close")
	if len(h.session.names()) != 1 {
		t.Error("the last scenario is gone")
	}
	h.undo()
	h.Settle()
	h.undo()
	h.Settle()
	if got := len(h.session.names()); got != 3 {
		t.Error(got, "scenarios after undoing two deletions")
	}
	if faults := faultsOf(h.session.draft.File()); len(faults) > 0 {
		t.Error(faults)
	}
}

func faultsOf(f scenario.File) []scenario.Fault {
	_, faults := scenario.Read(scenario.Write(f))
	return faults
}

func TestMovingAndDuplicating(t *testing.T) {
	h := open(t)
	h.moveOffer(-1)
	h.Settle()
	if v := h.View(); v.Offers[1].Name != "Lanternlight 500, 100 ft reel" || !v.Offers[1].Chosen {
		t.Errorf("%+v", v.Offers)
	}
	h.duplicateOffer()
	h.Settle()
	if v := h.View(); v.Offers[2].Name != "Lanternlight 500, 100 ft reel 2" || !v.Offers[2].Chosen || v.Offers[2].PerRoll != v.Offers[1].PerRoll {
		t.Errorf("%+v", v.Offers)
	}
	h.compareWith()
	h.Settle()
	if got := h.current().Baseline; got != "Lanternlight 500, 100 ft reel 2" {
		t.Error(got)
	}
}

// panel finds the open dialog's fields by their labels.
func (h *Harness) panel(t *testing.T, label string) *kit.TextBox {
	t.Helper()
	for _, o := range test.LaidOutObjects(h.Window().Canvas().Overlays().Top()) {
		if r, ok := o.(*kit.Row); ok && r.Label.String() == label {
			return r.Field.(*kit.TextBox)
		}
	}
	t.Fatalf("the dialog has no field %s", label)
	return nil
}

func TestIsItADeal(t *testing.T) {
	h := open(t)
	h.askDeal()
	h.Settle()
	h.panel(t, dealPrice).Entry.SetText("7.40")
	h.Settle()
	if text := h.dialogText(); !strings.Contains(text, "Worth it.") || !strings.Contains(text, "EUR\u00a017.30 a roll") {
		t.Error(text)
	}
	h.panel(t, dealBad).Entry.SetText("5o")
	h.Settle()
	if !h.panel(t, dealBad).Faulty {
		t.Error("5o % is taken")
	}
	h.panel(t, dealBad).Entry.SetText("50")
	h.Settle()
	if text := h.dialogText(); !strings.Contains(text, "Not worth it.") {
		t.Error("half of it bad, but", text)
	}
	h.press(t, "Close")
	h.agrees(t, demo())
	if h.session.draft.Modified() {
		t.Error("asking left a trace")
	}
	h.askDeal()
	h.Settle()
	h.panel(t, dealPrice).Entry.SetText("7.40")
	h.Settle()
	h.press(t, "Keep as a way to buy")
	if v := h.View(); len(v.Offers) != 4 || v.Offers[3].PerRoll != "7.40" && v.Offers[3].PerRoll != "17.30" {
		t.Errorf("%+v", v.Offers)
	}
}

func TestWhatChangesTheAnswer(t *testing.T) {
	h := open(t)
	h.Page(pageChanges)
	s := demo()
	c := compare.Compare(s, nil, scenario.DateOf(noon))
	o, err := compare.LookAhead(t.Context(), &c, exact.Int(10))
	if err != nil {
		t.Fatal(err)
	}
	want := words.Flips(&c, o.Offers[2].Name, s.Baseline, c.Offers[2].Against.Saving, o.Offers[2].Flips, "en")
	shown := 0
	for i, row := range h.answer.changes.turns {
		if row.Visible() {
			if row.Name.String() != want[i] {
				t.Errorf("turn %d says %q, want %q", i, row.Name.String(), want[i])
			}
			shown++
		}
	}
	if shown != len(want) || shown < 5 {
		t.Errorf("%d turns are shown of %d", shown, len(want))
	}
	first := h.answer.changes.flip.drawing
	h.answer.changes.turns[2].Choose()
	h.Settle()
	if h.answer.changes.flip.drawing == first || !h.answer.changes.turns[2].Chosen {
		t.Error("another turn is chosen, but not drawn")
	}
	if under := h.View().Under; !strings.Contains(under, "16 rolls a year") {
		t.Error("the headline does not name the volume:", under)
	}
	if blank(h.answer.changes.swings.Image) {
		t.Error("the swings are not drawn")
	}
}

func TestOrderSizeInOneStep(t *testing.T) {
	h := open(t)
	h.Page(pageSizes)
	p := h.answer.sizes
	if p.best < 2 || !p.set.Visible() || blank(p.figure.Image) {
		t.Fatalf("best %d, link %v", p.best, p.set.Visible())
	}
	best := p.best
	p.set.Do()
	h.Settle()
	s := demo()
	s.Offers[2].Units = best
	h.agrees(t, s)
	if p := h.answer.sizes; p.set.Visible() {
		t.Error("the best size is set, but still offered")
	}
	h.undo()
	h.Settle()
	h.agrees(t, demo())
	for _, hit := range h.answer.sizes.figure.drawing.Hits() { // a click on a size takes it
		if hit.Units == 4 {
			at := fyne.NewPos(float32(hit.Rect.X+hit.Rect.W/2), float32(hit.Rect.Y+hit.Rect.H/2))
			h.answer.sizes.figure.Tapped(&fyne.PointEvent{Position: at})
		}
	}
	h.Settle()
	if got := h.current().Offers[2].Units; got != 4 {
		t.Error("4 reels were clicked,", got, "are ordered")
	}
}

// A click on a bar or a line turns to that way to buy, and the pointer reads it out.
func TestChartsAreAlive(t *testing.T) {
	h := open(t)
	v := h.answer.cost
	for _, hit := range v.drawing.Hits() {
		if hit.Offer == "Marigold 400, shop roll" && hit.Part == words.PartFilm {
			at := fyne.NewPos(float32(hit.Rect.X+hit.Rect.W/2), float32(hit.Rect.Y+hit.Rect.H/2))
			v.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}})
			if !v.Note.Visible() || !strings.Contains(v.Note.Text.String(), "14.80") {
				t.Error("the pointer reads out", v.Note.Text.String())
			}
			v.Tapped(&fyne.PointEvent{Position: at})
		}
	}
	h.Settle()
	if v := h.View(); v.Form != "Marigold 400, shop roll" {
		t.Error("clicked, but the form is of", v.Form)
	}
}

func TestARangeIsKept(t *testing.T) {
	h := open(t)
	h.Page(pageChanges)
	if wrong := h.setRange("offer.price", "150", "100"); wrong == "" {
		t.Error("a range the wrong way round was taken")
	}
	if wrong := h.setRange("offer.price", "100", "150"); wrong != "" {
		t.Fatal(wrong)
	}
	h.Settle()
	saved, faults := scenario.Read(scenario.Write(h.session.draft.File()))
	if len(faults) > 0 || len(saved.Scenarios[0].Ranges) != 1 || saved.Scenarios[0].Ranges[0].High.String() != "150" {
		t.Error(faults, saved.Scenarios[0].Ranges)
	}
	for _, s := range h.answer.ahead.rival.Swings {
		if s.Input == "offer.price" && (s.Low.String() != "100" || s.High.String() != "150") {
			t.Error("the swing goes from", s.Low, "to", s.High)
		}
	}
}

// Every letter may lay the form out anew; the letters must add up all the same.
func TestLettersFindACurrency(t *testing.T) {
	h := open(t)
	h.reach(t, where{selection{topicOffer, 2}, "offer[3].currency"})
	for _, r := range "sek" {
		h.Window().Canvas().Focused().TypedRune(r)
		h.Settle()
	}
	if got := h.current().Offers[2].Currency; got != "SEK" {
		t.Error("sek finds", got)
	}
}

func TestEscapeBacksOut(t *testing.T) {
	h := open(t)
	escape := &fyne.KeyEvent{Name: fyne.KeyEscape}
	for name, ask := range map[string]func(){
		"keys": h.showKeys, "deal": h.askDeal, "rename": h.renameScenario, "save as": func() { h.askSaveAs(nil) },
		"confirm": func() { h.dialogs.Confirm("Sure?", "Really?", "Yes", func() { t.Error("Esc said yes") }) },
	} {
		ask()
		h.Settle()
		if !h.View().Asking {
			t.Fatal(name, "asks nothing")
		}
		h.Window().Canvas().Focused().TypedKey(escape)
		if h.View().Asking || len(h.dialogs.Open) > 0 {
			t.Error(name, "stays after Esc")
		}
		ask() // and with the focus nowhere
		h.Settle()
		h.Window().Canvas().Unfocus()
		h.dialogs.Escape(escape)
		if h.View().Asking {
			t.Error(name, "stays after Esc without focus")
		}
	}
}
