package desk

import (
	"path/filepath"
	"strings"

	"reelworth/internal/draft"
	"reelworth/internal/library"
	"reelworth/internal/scenario"
)

// session is what is open and what of it is looked at. It knows no widgets.
type session struct {
	draft *draft.Draft
	doc   *library.Document // nil while the work has no file of its own
	at    int               // the scenario in the window
	sel   selection
	from  *scenario.Scenario // as it was when the field under the cursor was entered
	shape uint64             // rises when answers to earlier questions no longer fit
	held  map[string]string  // what was typed and could not be taken, by field
	demo  bool               // it began as the built-in demo
}

// lastShape is the newest shape of any session, so that no two share one.
var lastShape uint64

// newSession is work on a file that is not on disk.
func newSession(f scenario.File) *session {
	s := &session{draft: draft.New(f), held: map[string]string{}}
	s.reshaped()
	s.sel = startOf(s.current())
	return s
}

// startOf is the offer to begin with: the first reel, since the question is about it.
func startOf(s scenario.Scenario) selection {
	for i, o := range s.Offers {
		if o.Kind == scenario.KindReel {
			return selection{topicOffer, i}
		}
	}
	return selection{topicOffer, 0}
}

func (s *session) current() scenario.Scenario { return s.draft.Scenario(s.at) }

// change puts a new state of the scenario in the window in the place of the old one.
func (s *session) change(name, field string, next scenario.Scenario) {
	s.draft.Change(name, field, s.at, next)
}

// clamp keeps the selection inside the scenario.
func (s *session) clamp() {
	s.at = min(s.at, len(s.draft.File().Scenarios)-1)
	s.sel.offer = max(0, min(s.sel.offer, len(s.current().Offers)-1))
}

// turnTo looks at the scenario at i.
func (s *session) turnTo(i int) {
	s.at = i
	s.sel = startOf(s.current())
	s.draft.Seal()
	clear(s.held)
	s.reshaped()
}

func (s *session) switchTo(name string) bool {
	for i, sc := range s.draft.File().Scenarios {
		if sc.Name == name && i != s.at {
			s.turnTo(i)
			return true
		}
	}
	return false
}

// isUntouchedDemo says whether nothing but the built-in demo is open.
func (s *session) isUntouchedDemo() bool {
	return s.demo && s.doc == nil && !s.draft.Modified() && s.draft.RedoName() == ""
}

// nameTaken is why a scenario cannot have a name, "" when it can.
func (s *session) nameTaken(name string) string {
	if strings.TrimSpace(name) == "" {
		return "A scenario needs a name."
	}
	for i, n := range s.names() {
		if n == name && i != s.at {
			return "Another scenario of this file has this name; choose another one."
		}
	}
	return ""
}

// names are the scenarios of the file.
func (s *session) names() []string {
	var n []string
	for _, sc := range s.draft.File().Scenarios {
		n = append(n, sc.Name)
	}
	return n
}

func (s *session) fileName() string {
	if s.doc == nil || s.doc.Path == "" {
		return "not in a file yet"
	}
	return filepath.Base(s.doc.Path)
}

// called is the work in a sentence.
func (s *session) called() string {
	if s.doc == nil || s.doc.Path == "" {
		return s.current().Name
	}
	return s.fileName()
}

// state is the line under the scenario's name.
func (s *session) state(sc *scenario.Scenario) string {
	state := "saved"
	switch {
	case s.draft.Modified():
		state = "● unsaved"
	case s.doc == nil:
		state = "demo"
	}
	return state + " · all in " + sc.Home
}

// began marks the state that typing in a field starts from.
func (s *session) began() {
	sc := s.current()
	s.from = &sc
}

// ended forgets it: the next change starts from the state there is then.
func (s *session) ended() {
	s.from = nil
	s.draft.Seal()
}

// base is the state that an edit starts from.
func (s *session) base() scenario.Scenario {
	if s.from != nil {
		return *s.from
	}
	return s.current()
}

// reshaped says that offers came, went or changed places, so that an answer under way
// is about something else.
func (s *session) reshaped() {
	s.from = nil
	lastShape++
	s.shape = lastShape
}

func (s *session) epoch() uint64 { return s.shape }
