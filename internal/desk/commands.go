package desk

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/inhand"
	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// commands are the menus; what of them changes goes into the menu.
type commands struct {
	d *Desk
	m *menu
}

// add is a command that waits while a dialog is open.
func (c commands) add(label string, key fyne.KeyName, mod fyne.KeyModifier, do func()) *fyne.MenuItem {
	return item(label, key, mod, c.d.guarded(do))
}

// work is a command about what is open, which does nothing while that is out of sight
// behind a list of faults.
func (c commands) work(label string, key fyne.KeyName, mod fyne.KeyModifier, do func()) *fyne.MenuItem {
	return item(label, key, mod, func() {
		if c.d.faults == nil {
			c.d.guarded(do)()
		}
	})
}

// change is a command that changes the session.
func (c commands) change(label string, key fyne.KeyName, mod fyne.KeyModifier, do func(*session.Session)) *fyne.MenuItem {
	return c.add(label, key, mod, func() { c.d.change(do) })
}

func (c commands) file() *fyne.Menu {
	d := c.d
	quit := c.add(words.MenuQuit, fyne.KeyQ, ctrl, d.close)
	quit.IsQuit = true
	recent := fyne.NewMenuItem(words.MenuRecent, nil)
	recent.ChildMenu = c.recent()
	return fyne.NewMenu(words.MenuFile,
		c.add(words.MenuOpen, fyne.KeyO, ctrl, d.files.askOpen),
		recent,
		c.work(words.MenuSave, fyne.KeyS, ctrl, func() { d.files.save(nil) }),
		c.work(words.MenuSaveAs, fyne.KeyS, ctrlShift, func() { d.files.askSaveAs(nil) }),
		fyne.NewMenuItemSeparator(),
		c.add(words.MenuOpenRates, "", 0, func() { c.rates(asPages{d}.OpenRates) }),
		c.add(words.MenuFetchRates, "", 0, func() { c.rates(asPages{d}.FetchRates) }),
		fyne.NewMenuItemSeparator(),
		c.work(words.MenuExport, fyne.KeyE, ctrl, func() { d.asker.AskExport(onPage[d.answer.At()]) }),
		c.work(words.MenuReport, fyne.KeyE, ctrlShift, d.preview.open),
		c.work(words.MenuSpreadsheet, "", 0, func() { d.asker.AskExport(answer.Spreadsheet) }),
		fyne.NewMenuItemSeparator(),
		quit,
	)
}

// onPage is what an export of each page begins with.
var onPage = map[int]int{
	pages.Charts: answer.Cost, pages.Receipt: answer.Report, pages.Changes: answer.Flip, pages.Sizes: answer.Sizes,
	pages.Past: answer.Days, pages.Tables: answer.Tables, pages.Notes: answer.Report,
}

// rates turns to the page that shows published rates, and gets some.
func (c commands) rates(get func()) {
	c.d.page(pages.Past)
	get()
}

// recent opens one of the recent files.
func (c commands) recent() *fyne.Menu {
	d, m := c.d, fyne.NewMenu("")
	for _, path := range d.settings.recent() {
		m.Items = append(m.Items, c.add(words.RecentFile(path), "", 0,
			func() { d.files.leaving(func() { d.Open(path) }) }))
	}
	if len(m.Items) == 0 {
		none := fyne.NewMenuItem(words.MenuNoneRecent, nil)
		none.Disabled = true
		m.Items = append(m.Items, none)
	}
	return m
}

func (c commands) edit() *fyne.Menu {
	d := c.d
	c.m.undo, c.m.redo = c.add(words.MenuUndo, "", 0, d.undo), c.add(words.MenuRedo, "", 0, d.redo)
	c.m.undo.Shortcut, c.m.redo.Shortcut = &fyne.ShortcutUndo{}, &fyne.ShortcutRedo{} // as the toolkit calls Ctrl+Z and Ctrl+Y
	c.m.edit = fyne.NewMenu(words.MenuEdit, c.m.undo, c.m.redo, fyne.NewMenuItemSeparator(),
		c.work(words.MenuCopySummary, fyne.KeyC, ctrlShift, d.asker.CopySummary), fyne.NewMenuItemSeparator(),
		c.add(words.MenuAddReel, fyne.KeyR, ctrl, func() { d.addOffer(scenario.KindReel) }),
		c.add(words.MenuAddBoxed, fyne.KeyR, ctrlShift, func() { d.addOffer(scenario.KindBoxed) }),
		c.add(words.MenuDeal, fyne.KeyI, ctrl, d.asker.AskDeal),
		c.change(words.MenuDuplicate, fyne.KeyD, ctrl, (*session.Session).DuplicateOffer),
		c.add(words.MenuRenameOffer, fyne.KeyT, ctrlShift, func() { d.offers.Rename(d.session.Chosen.Offer) }),
		c.change(words.MenuMoveUp, fyne.KeyUp, ctrlShift, func(s *session.Session) { s.MoveOffer(-1) }),
		c.change(words.MenuMoveDown, fyne.KeyDown, ctrlShift, func(s *session.Session) { s.MoveOffer(1) }),
		c.change(words.MenuCompareWith, fyne.KeyB, ctrl, (*session.Session).CompareWith),
		c.change(words.MenuRemove, "", 0, (*session.Session).RemoveOffer), fyne.NewMenuItemSeparator(),
		c.add(words.MenuPutInHand, "", 0, d.hand.put),
		c.add(words.MenuPlanCut, "", 0, d.hand.plan),
		c.add(words.MenuLoaded, fyne.KeyL, ctrl, func() { d.hand.column.Enter(inhand.Loaded) }),
		c.add(words.MenuDeveloped, fyne.KeyL, ctrlShift, func() { d.hand.column.Enter(inhand.Developed) }),
		c.add(words.MenuMeasured, "", 0, func() { d.hand.column.Enter(inhand.Measured) }))
	return c.m.edit
}

func (c commands) scenario() *fyne.Menu {
	d := c.d
	return fyne.NewMenu(words.MenuScenario,
		c.add(words.MenuNewEmpty, fyne.KeyN, ctrl, d.begin),
		c.change(words.MenuNewDemo, "", 0, (*session.Session).AddDemo),
		c.change(words.MenuNewCopy, "", 0, (*session.Session).Duplicate),
		fyne.NewMenuItemSeparator(),
		c.change(words.MenuNext, fyne.KeyPageDown, ctrl, func(s *session.Session) { s.Step(1) }),
		c.change(words.MenuPrevious, fyne.KeyPageUp, ctrl, func(s *session.Session) { s.Step(-1) }),
		fyne.NewMenuItemSeparator(),
		c.add(words.MenuBorderSets, "", 0, d.asker.AskBorderSets),
		c.add(words.MenuBeside, fyne.KeyB, ctrlShift, d.beside.open),
		fyne.NewMenuItemSeparator(),
		c.add(words.MenuRename, fyne.KeyT, ctrl, func() { d.offers.RenameScenario() }),
		c.add(words.MenuDelete, "", 0, d.asker.DeleteScenario),
	)
}

func (c commands) view() *fyne.Menu {
	d, view := c.d, fyne.NewMenu(words.MenuView)
	for i, name := range d.answer.Names() {
		view.Items = append(view.Items, c.add(name, fyne.KeyName('1'+rune(i)), ctrl, func() { d.page(i) }))
	}
	view.Items = append(view.Items, fyne.NewMenuItemSeparator(), c.add(words.MenuShowIn, fyne.KeyM, ctrl, d.asker.AskShowIn),
		fyne.NewMenuItemSeparator())
	for _, t := range themes {
		c.m.themes = append(c.m.themes, c.add(t.label, "", 0, func() {
			d.settings.setTheme(t.choice)
			d.show()
		}))
	}
	for _, t := range textSizes {
		c.m.texts = append(c.m.texts, c.add(t.label, "", 0, func() { d.setText(t.factor) }))
	}
	for _, l := range money.Locales() {
		c.m.numbers = append(c.m.numbers, c.add(numbersSample(l), "", 0, func() { d.setNumbers(l) }))
	}
	numbers := fyne.NewMenuItem(words.MenuNumbers, nil)
	numbers.ChildMenu = fyne.NewMenu("", c.m.numbers...)
	view.Items = append(view.Items, c.m.themes...)
	view.Items = append(view.Items, fyne.NewMenuItemSeparator())
	view.Items = append(view.Items, c.m.texts...)
	view.Items = append(view.Items, numbers, fyne.NewMenuItemSeparator(),
		c.add(words.MenuNextColumn, fyne.KeyJ, ctrl, func() { d.jump(1) }),
		c.add(words.MenuPreviousColumn, fyne.KeyJ, ctrlShift, func() { d.jump(-1) }))
	return view
}

func (c commands) help() *fyne.Menu {
	tell := func(title, text string) func() { return func() { c.d.dialogs.Tell(title, text) } }
	return fyne.NewMenu(words.MenuHelp,
		c.add(words.MenuTour, "", 0, c.d.tour.start),
		c.add(words.MenuKeys, fyne.KeyK, ctrl, tell(words.MenuKeys, words.KeysHelp)),
		c.add(words.MenuModel, "", 0, helping{c.d}.model),
		c.add(words.MenuWords, "", 0, c.d.asker.Glossary),
		c.add(words.MenuRatesHelp, "", 0, tell(words.MenuRatesHelp, words.RatesHelp)),
		c.add(words.MenuKeysOf, "", 0, func() { c.d.asker.Read(words.MenuKeysOf, words.KeysOfFile()) }),
		c.add(words.MenuFilesHelp, "", 0, helping{c.d}.files),
		c.add(words.MenuCautions, "", 0, tell(words.MenuCautions, words.CautionsHelp)),
		c.add(words.MenuAbout, "", 0, tell(words.Program, words.About)),
	)
}
