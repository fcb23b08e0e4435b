package offers

import (
	"reelworth/internal/compare"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/words"
)

// Warnings are the warnings that stand beside what is chosen.
func Warnings(c *compare.Comparison, sel session.Selection, l money.Locale) []string {
	var list []string
	for _, w := range c.Warnings {
		about := sel.Topic == session.TopicOffer && sel.Offer < len(c.Offers) && w.Offer == c.Offers[sel.Offer].Name
		switch w.Code {
		case compare.WarnNoDemand:
			about = sel.Topic == session.TopicShooting
		case compare.WarnOldQuote:
			about = about || sel.Topic == session.TopicRates
		case compare.WarnChemistryExpires:
			about = about || sel.Topic == session.TopicDeveloping
		}
		if about {
			list = append(list, words.Warning(w, c, l))
		}
	}
	return list
}
