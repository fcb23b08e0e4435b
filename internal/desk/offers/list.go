package offers

import (
	"slices"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// List is the left column: the scenario, its ways to buy, and what holds for all.
type List struct {
	Content  *fyne.Container
	Scenario *kit.Picker
	State    *kit.Text
	In       *kit.Scroll // what the column is shown in
	title    *fyne.Container
	unit     *kit.Text
	Offers   []*kit.Card
	topics   map[session.Topic]*kit.Card
	act      Actions
	sel      session.Selection
	state    func(currency string) string // of the work, in a line
	priced   string                       // the home currency of the costs in the column
	pricedIn string                       // what they are shown in
	built    int                          // cards of ways to buy
	moved    bool                         // another card was chosen, and may be out of sight until all have their costs
}

// Width is the width of the left column.
func Width() float32 { return kit.Scaled(232) }

// Topics in the order of the column.
var Topics = []struct {
	Topic session.Topic
	Name  string
}{
	{session.TopicShooting, words.TopicShooting},
	{session.TopicLoading, words.TopicLoading},
	{session.TopicDeveloping, words.TopicDeveloping},
	{session.TopicBorder, words.TopicBorder},
	{session.TopicRates, words.TopicRates},
}

// New is an empty column.
func New(act Actions) *List {
	w := &List{act: act, topics: map[session.Topic]*kit.Card{}}
	w.Scenario = kit.NewPicker(nil, act.SwitchTo)
	w.Scenario.Plain, w.Scenario.Bold = true, true
	w.Scenario.Called = func() string { return words.SpokenFile }
	w.Scenario.Rename = w.RenameScenario
	w.title = kit.NewStack(Width(), 0, w.Scenario)
	w.State = kit.Small("")
	w.unit = kit.Small("").Trailing()
	w.Content = kit.Inset(kit.NewStack(Width(), 0), 12, 14, 12, 16)
	return w
}

// Build lays the column out for a scenario with so many offers.
func (w *List) Build(s *scenario.Scenario) {
	w.Content.RemoveAll()
	margin := func(o fyne.CanvasObject) fyne.CanvasObject {
		return kit.Inset(kit.NewStack(Width(), 0, o), kit.CardEdge, 0, kit.CardEdge, 0)
	}
	w.Content.Add(kit.Inset(kit.NewStack(Width(), 0, w.title), kit.CardEdge-kit.PlainEdge, 0, kit.CardEdge, 0))
	w.title.Objects = kit.Objects(w.Scenario) // a name half typed is gone with the rest
	w.Content.Add(margin(kit.NewSides(w.State, kit.NewSmallLink(words.LinkRename, w.RenameScenario))))
	w.Content.Add(kit.Space(18))
	w.Content.Add(margin(kit.NewSides(kit.Heading(words.HeadingOffers), w.unit)))
	w.Content.Add(kit.Space(2))
	w.Offers = w.Offers[:0]
	for i := range s.Offers {
		c := kit.NewCard(func() { w.act.Choose(session.Selection{Topic: session.TopicOffer, Offer: i}) }, w.move)
		c.Bar = kit.NewBar()
		c.Rename = func() { w.Rename(i) }
		w.Offers = append(w.Offers, c)
		w.Content.Add(c)
	}
	w.Content.Add(kit.Space(4))
	w.Content.Add(margin(kit.NewLine(16,
		kit.NewLink(words.LinkAddReel, func() { w.act.Add(scenario.KindReel) }),
		kit.NewLink(words.LinkAddBoxed, func() { w.act.Add(scenario.KindBoxed) }),
		kit.NewLink(words.LinkDeal, w.act.AskDeal))))
	w.Content.Add(kit.Space(14))
	w.Content.Add(margin(kit.Heading(words.HeadingTopics)))
	w.Content.Add(kit.Space(2))
	for _, t := range Topics {
		c := kit.NewCard(func() { w.act.Choose(session.Selection{Topic: t.Topic, Offer: w.sel.Offer}) }, w.move)
		c.Name.Set(kit.Span{Text: t.Name})
		w.topics[t.Topic] = c
		w.Content.Add(c)
	}
}

// Above puts more below the ways to buy and the topics, in the same column.
func Above(list, more fyne.CanvasObject) *fyne.Container { return kit.NewStack(Width(), 0, list, more) }

// Actions are what the column can do.
type Actions interface {
	Choose(session.Selection) // what the form is about
	SwitchTo(name string)     // another scenario of the file
	Add(kind scenario.Kind)   // a new way to buy
	AskDeal()                 // the quick question
	// A name for the way to buy at i, or for the scenario; wrong is why it cannot be taken.
	Rename(i int, name string) (wrong string)
	RenameScenario(name string) (wrong string)
}

// ChosenCard is what the focus enters the column by.
func (w *List) ChosenCard() fyne.Focusable {
	for _, c := range w.cards() {
		if c.Chosen {
			return c
		}
	}
	return w.Scenario
}

// Has says whether a widget is one of the column's.
func (w *List) Has(f fyne.Focusable) bool {
	if f == w.Scenario {
		return true
	}
	card, ok := f.(*kit.Card)
	return ok && slices.Contains(w.cards(), card)
}

// cards are all of them in reading order.
func (w *List) cards() []*kit.Card {
	list := append([]*kit.Card(nil), w.Offers...)
	for _, t := range Topics {
		list = append(list, w.topics[t.Topic])
	}
	return list
}

// move chooses the neighbour of the card that has the focus.
func (w *List) move(step int) {
	list := w.cards()
	for i, c := range list {
		if c.Focused {
			if j := i + step; j >= 0 && j < len(list) {
				list[j].Tapped(nil)
			}
			return
		}
	}
}

// Show puts what is known without computing into the column.
func (w *List) Show(work *session.Session, l money.Locale) {
	now, sel := work.Current(), work.Chosen
	s := &now
	w.moved = w.moved || w.sel != sel || w.built != len(w.Offers)
	w.sel, w.built = sel, len(w.Offers)
	var options []kit.Option
	for _, n := range work.Names() {
		options = append(options, kit.Option{Value: n, Label: n})
	}
	w.Scenario.Options = options
	w.Scenario.Set(s.Name)
	w.state = work.State
	w.sayCurrency(s)
	for i, c := range w.Offers {
		c.Chosen = sel.Topic == session.TopicOffer && sel.Offer == i
		c.Name.Set(kit.Span{Text: s.Offers[i].Name})
	}
	for t, c := range w.topics {
		c.Chosen = sel.Topic == t
		c.Under.Set(kit.Span{Text: topicSummary(t, s, l), Color: kit.Muted})
	}
	for _, c := range w.cards() {
		c.Refresh()
	}
	w.revealChosen()
}

// sayCurrency says what the costs in the column are in.
func (w *List) sayCurrency(s *scenario.Scenario) {
	in := w.currency(s)
	w.State.Set(kit.Span{Text: w.state(in), Color: kit.Muted})
	w.unit.Set(kit.Span{Text: words.HeadingUnit(in), Color: kit.Muted, Bold: true})
}

// currency is what the costs in the column are in.
func (w *List) currency(s *scenario.Scenario) string {
	if w.pricedIn != "" && w.priced == s.Home {
		return w.pricedIn
	}
	return s.Home
}

func topicSummary(t session.Topic, s *scenario.Scenario, l money.Locale) string {
	switch t {
	case session.TopicShooting:
		return words.ShootingSummary(s, l)
	case session.TopicLoading:
		return words.LoadingSummary(s, l)
	case session.TopicDeveloping:
		return words.DevelopingSummary(s)
	case session.TopicBorder:
		return words.BorderSummary(s, l)
	case session.TopicRates:
		return words.RatesSummary(s, l)
	}
	return ""
}
