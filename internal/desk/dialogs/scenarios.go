package dialogs

import (
	"reelworth/internal/desk/session"
	"reelworth/internal/words"
)

// DeleteScenario takes the scenario in the window away; it can be undone.
func (a *Asker) DeleteScenario() {
	if a.host.Session().IsLast() {
		a.on.Tell(words.LastScenario, words.LastScenarioWhy)
		return
	}
	a.host.Change((*session.Session).Remove)
}
