package dialogs

import (
	"fyne.io/fyne/v2"

	"reelworth/internal/desk/answer"
	"reelworth/internal/words"
)

// CopySummary puts the finding on the clipboard, to be pasted into a talk.
func (a *Asker) CopySummary() {
	e := answer.Export{Scenario: a.host.Session().Current(), Today: a.host.Today(), Locale: a.host.Locale(), In: a.host.ShownIn()}
	a.work.Do(func() func() {
		text := e.Summary()
		return func() {
			fyne.CurrentApp().Clipboard().SetContent(text)
			a.host.Announce(words.SummaryCopied)
		}
	})
}
