package session

import (
	"path/filepath"
	"strings"
	"unicode/utf8"

	"reelworth/internal/draft"
	"reelworth/internal/library"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Session is what is open and what of it is looked at. It knows no widgets.
type Session struct {
	Draft    *draft.Draft
	Doc      *library.Document // nil while the work has no file of its own
	At       int               // the scenario in the window
	Chosen   Selection
	entered  *scenario.Scenario // as it was when the field under the cursor was entered
	handled  *scenario.InHand   // the reel in hand that is chosen, likewise
	epoch    uint64             // rises when answers to earlier questions no longer fit
	Withheld map[string]string  // what was typed and could not be taken, by field
	demo     bool               // it began as the built-in demo
	faults   checked
	acted    Place // where the last undo or redo changed something
}

// lastEpoch is the newest epoch of any session, so that no two share one.
var lastEpoch uint64

// New is work on a file that is not on disk.
func New(f scenario.File) *Session {
	s := &Session{Draft: draft.New(f), Withheld: map[string]string{}}
	s.Reshape()
	s.Chosen = startOf(s.Current())
	return s
}

// NewDemo is work on the built-in demo.
func NewDemo() *Session {
	s := New(scenario.Demo())
	s.demo = true
	return s
}

// startOf is the offer to begin with: the first reel, since the question is about it.
func startOf(s scenario.Scenario) Selection {
	for i, o := range s.Offers {
		if o.Kind == scenario.KindReel {
			return offerAt(i)
		}
	}
	return offerAt(0)
}

// Current is the scenario in the window.
func (s *Session) Current() scenario.Scenario { return s.Draft.Scenario(s.At) }

// Change puts a new state of the scenario in the window in the place of the old one.
func (s *Session) Change(name, field string, next scenario.Scenario) {
	s.Draft.Change(name, field, s.At, next)
}

// Clamp keeps the selection inside the scenario.
func (s *Session) Clamp() {
	s.At = min(s.At, len(s.Draft.File().Scenarios)-1)
	s.Chosen.Offer = max(0, min(s.Chosen.Offer, len(s.Current().Offers)-1))
	s.Chosen.Reel = max(0, min(s.Chosen.Reel, len(s.Reels())-1))
	if s.Chosen.Topic == TopicReel && len(s.Reels()) == 0 {
		s.Chosen.Topic = TopicOffer
	}
}

// Choose looks at another offer or topic.
func (s *Session) Choose(sel Selection) {
	s.Chosen = sel
	s.Draft.Seal()
}

// OfferNamed is the selection of the offer of a name.
func (s *Session) OfferNamed(name string) (Selection, bool) {
	for i, o := range s.Current().Offers {
		if o.Name == name {
			return offerAt(i), true
		}
	}
	return Selection{}, false
}

// goTo looks at the scenario at i.
func (s *Session) goTo(i int) {
	s.At = i
	s.Chosen = startOf(s.Current())
	s.Draft.Seal()
	clear(s.Withheld)
	s.Reshape()
}

// SwitchTo looks at the scenario of a name; it says whether that is another one.
func (s *Session) SwitchTo(name string) bool {
	for i, sc := range s.Draft.File().Scenarios {
		if sc.Name == name && i != s.At {
			s.goTo(i)
			return true
		}
	}
	return false
}

// IsUntouchedDemo says whether nothing but the built-in demo is open.
func (s *Session) IsUntouchedDemo() bool {
	return s.demo && s.Doc == nil && !s.Draft.Modified() && s.Draft.RedoName() == ""
}

// NameTaken is why a scenario cannot have a name, "" when it can.
func (s *Session) NameTaken(name string) string {
	if strings.TrimSpace(name) == "" {
		return words.ScenarioUnnamed
	}
	if utf8.RuneCountInString(name) > scenario.LongestLine {
		return words.NameTooLong(scenario.LongestLine)
	}
	for i, n := range s.Names() {
		if n == name && i != s.At {
			return words.ScenarioNameTaken
		}
	}
	return ""
}

// OfferNameTaken is why the way to buy at i cannot have a name, "" when it can.
func (s *Session) OfferNameTaken(i int, name string) string {
	switch {
	case strings.TrimSpace(name) == "":
		return words.OfferUnnamed
	case utf8.RuneCountInString(name) > scenario.LongestLine:
		return words.NameTooLong(scenario.LongestLine)
	}
	for j, o := range s.Current().Offers {
		if o.Name == name && j != i {
			return words.OfferNameTaken
		}
	}
	return ""
}

// Names are the scenarios of the file.
func (s *Session) Names() []string {
	var n []string
	for _, sc := range s.Draft.File().Scenarios {
		n = append(n, sc.Name)
	}
	return n
}

// Path is that of the file, "" while the work has none.
func (s *Session) Path() string {
	if s.Doc == nil {
		return ""
	}
	return s.Doc.Path
}

// FileName is the name of the file, or says that there is none.
func (s *Session) FileName() string {
	if s.Doc == nil || s.Doc.Path == "" {
		return words.NoFileYet
	}
	return filepath.Base(s.Doc.Path)
}

// Called is the work in a sentence.
func (s *Session) Called() string {
	if s.Doc == nil || s.Doc.Path == "" {
		return s.Current().Name
	}
	return s.FileName()
}

// State is the line under the scenario's name, with the currency that figures are in.
func (s *Session) State(currency string) string {
	return words.WorkState(s.Draft.Modified(), s.Doc != nil, currency)
}

// BeginField marks the state that typing in a field starts from.
func (s *Session) BeginField() {
	sc := s.Current()
	s.entered = &sc
	if r, ok := s.Reel(); ok {
		s.handled = &r
	}
}

// EndField forgets it: the next change starts from the state there is then.
func (s *Session) EndField() {
	s.entered, s.handled = nil, nil
	s.Draft.Seal()
}

// Base is the state that an edit starts from.
func (s *Session) Base() scenario.Scenario {
	if s.entered != nil {
		return *s.entered
	}
	return s.Current()
}

// Reshape says that offers came, went or changed places, so that an answer under way
// is about something else.
func (s *Session) Reshape() {
	s.entered, s.handled = nil, nil
	lastEpoch++
	s.epoch = lastEpoch
}

// Epoch is another after each Reshape, and in each session.
func (s *Session) Epoch() uint64 { return s.epoch }
