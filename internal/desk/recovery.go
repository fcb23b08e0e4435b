package desk

import (
	"fmt"
	"path/filepath"
	"strings"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/library"
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
		{Label: "Not now", Do: next},
		{Label: "Discard", Do: func() {
			if err := l.Discard(); err != nil {
				r.on.Report("It was not removed", err)
				return
			}
			next()
		}},
	}
	if len(l.File.Scenarios) > 0 && len(l.Faults) == 0 {
		replies = append(replies, kit.Reply{Label: "Take it up", Do: func() { r.files.leaving(func() { r.takeUp(l) }) }})
	}
	r.on.Ask("Unsaved work was found", kit.Paragraphs(texts[0], 520*kit.TextFactor), nil, replies...)
}

// takeUp goes on with work that was left, as unsaved.
func (r *recovery) takeUp(l library.Leftover) {
	doc := l.Document()
	s := session.New(doc.File)
	if doc.Path != "" {
		s.Doc = doc
	}
	s.Draft.Unsaved()
	r.take(s)
	r.keeper.Adopt(l, s)
	if doc.Path != "" {
		r.keeper.ClaimFile(doc.Path)
	}
}

// leftoverText says what was found, and how it differs from the file.
func leftoverText(l library.Leftover) string {
	what := "Work that was in no file yet"
	if l.Path != "" {
		what = "Changes to " + filepath.Base(l.Path)
	}
	text := fmt.Sprintf("%s, of %s, were not saved when the window ended.", what, l.When.Local().Format("2 Jan 2006, 15:04"))
	if l.Path == "" {
		text = strings.Replace(text, "were not saved", "was not saved", 1)
	}
	if l.Damaged != nil {
		text += "\n\n" + l.Damaged.Error()
	}
	if l.Path != "" {
		if doc, err := library.Open(l.Path); err == nil {
			if diff := words.Differences(doc.File, l.File); len(diff) > 0 {
				text += "\n\n" + strings.Join(diff, "\n\n")
			}
		}
	}
	return text
}
