package dialogs

import (
	"reelworth/internal/desk/answer"
	"reelworth/internal/desk/jobs"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Host is what the questions ask of the window.
type Host interface {
	Session() *session.Session
	Locale() money.Locale
	Today() scenario.Date
	Change(do func(*session.Session)) // the session, and lay the window out anew
	Take(*session.Session)            // work on something else
	Ahead() *answer.Foresight         // what would change the answer, nil until known
	Flip() answer.FlipKey             // the one that is looked at
	Past() answer.PastOf              // which days are looked back on
	ShownIn() string                  // the currency that figures are shown in, "" for home
	ShowIn(currency string)           // from now on
	Letter() bool                     // pages print on Letter, not on A4
	PrintOn(letter bool)              // from now on
	BorderShelf() session.BorderShelf // sets of border rules of one's own
	Folder() string                   // where file questions begin
	Announce(text string)             // what was done
}

// Asker asks the window's questions.
type Asker struct {
	on   *kit.Dialogs
	work *jobs.Background
	host Host
}

// New asks in the dialogs of a window.
func New(on *kit.Dialogs, work *jobs.Background, host Host) *Asker {
	return &Asker{on, work, host}
}

// Sure asks before something that loses something.
func (a *Asker) Sure(q words.Question, then func()) { a.on.Confirm(q.Title, q.Text, q.Yes, then) }

// complaint is a text that says what is wrong with what stands in a dialog.
func complaint() *kit.Text { return kit.NewText(kit.SizeSmall).AtLeast(2) }

func complain(to *kit.Text, wrong string) {
	to.Set(kit.Span{Text: "✗ ", Color: kit.Fault, Bold: true}, kit.Span{Text: wrong, Color: kit.Fault})
}
