package inhand

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/desk/stock"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// accountPage holds a reel against its plan, and offers what it teaches to the scenario.
type accountPage struct {
	win    Window
	table  *kit.Table
	says   *kit.Text
	lesson *fyne.Container
	would  *kit.Text // what taking it over changes in the answer
	take   *kit.Link
	whole  *fyne.Container
	scroll *kit.Scroll
	shown  *stock.Lesson
}

func newAccountPage(win Window, copied func(string)) *accountPage {
	p := &accountPage{win: win, table: kit.NewTable(copied)}
	p.says, p.would = kit.NewText(kit.SizeText), kit.NewText(kit.SizeText)
	p.take = kit.NewLink("", p.takeOver)
	p.lesson = kit.NewStack(0, 8, kit.Heading(words.HeadingLesson), p.would, p.take)
	p.whole = kit.Inset(kit.NewStack(0, 12, p.table, p.says, p.lesson), 0, 12, 14, 12)
	p.scroll = kit.NewScroll(p.whole)
	return p
}

func (p *accountPage) name() string              { return words.PageAccount }
func (p *accountPage) which() stock.Page         { return stock.Account }
func (p *accountPage) object() fyne.CanvasObject { return p.scroll }

func (p *accountPage) fill(s *stock.Stock) {
	a, l := s.Account, p.win.Locale()
	if a == nil {
		p.table.Hide()
		p.lesson.Hide()
		p.says.Set(kit.Span{Text: words.NoAccount, Color: kit.Muted})
		p.whole.Refresh()
		return
	}
	p.table.Show()
	p.table.Set("", words.AccountHeader(), words.AccountRows(&a.Outcome, a.Currency, l))
	p.says.Set(kit.Span{Text: words.AccountSays(&a.Outcome, s.Standing, l), Color: kit.Muted})
	p.shown = a.Lesson
	if a.Lesson == nil {
		p.lesson.Hide()
	} else {
		p.lesson.Show()
		p.would.Set(kit.Span{Text: words.Lesson(&a.Lesson.Before, &a.Lesson.After, a.Lesson.Was, a.Lesson.Experience, l)})
		p.take.Label.Set(kit.Span{Text: words.LinkTakeOver(a.Lesson.Offer), Color: kit.Accent})
		p.take.Refresh()
	}
	p.whole.Refresh()
}

// takeOver puts what the reels taught into the scenario, as one step.
func (p *accountPage) takeOver() {
	if lesson := p.shown; lesson != nil {
		p.win.Change(func(s *session.Session) {
			s.Alter(words.StepTakeOver, func(sc *scenario.Scenario) { *sc = lesson.Apply(*sc) })
		})
	}
}
