package desk

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/library"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// recovery offers what windows that crashed had not saved.
type recovery struct {
	on     *kit.Dialogs
	keeper *session.Keeper
	files  *files
	take   func(*session.Session) // works on something else
}

// begin begins to keep this window's work, and asks about what others left.
func (r *recovery) begin(dir string) {
	if r.keeper.Begin(dir) {
		r.keeper.Leftovers(leftoverText, r.offer)
	}
}

// offer asks about the first of them, then about the next. texts say what was found.
func (r *recovery) offer(found []library.Leftover, texts []string) {
	if len(found) == 0 {
		return
	}
	l := found[0]
	next := func() { r.offer(found[1:], texts[1:]) }
	replies := []kit.Reply{
		{Label: words.NotNow, Do: next},
		{Label: words.Discard, Do: func() {
			if err := l.Discard(); err != nil {
				r.on.Tell(words.NotRemoved, words.Failure(err))
				return
			}
			next()
		}},
	}
	if len(l.File.Scenarios) > 0 && !scenario.Partial(l.Faults) {
		replies = append(replies, kit.Reply{Label: words.TakeUp, Do: func() { r.files.leaving(func() { r.takeUp(l) }) }})
	}
	r.on.Ask(words.WorkFound, kit.Paragraphs(texts[0], 520*kit.TextFactor), nil, replies...)
}

// takeUp goes on with work that was left, as unsaved.
func (r *recovery) takeUp(l library.Leftover) {
	doc := l.Document()
	s := session.New(doc.File)
	if doc.Path != "" {
		s.Doc = doc
	}
	s.Draft.Unsaved()
	r.files.asked++ // what is being opened does not take its place
	r.take(s)
	r.keeper.Adopt(l, s)
	if doc.Path != "" {
		r.keeper.ClaimFile(doc.Path)
	}
}

// leftoverText says what was found, and how it differs from the file.
func leftoverText(l library.Leftover) string {
	var differences []string
	if l.Path != "" {
		if doc, err := library.Open(l.Path); err == nil {
			differences = words.Differences(doc.File, l.File)
		}
	}
	return words.LeftWork(l.Path, l.When, l.Damaged, differences)
}
