package form

import (
	"errors"
	"slices"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// question is what a field asks beside itself.
type question struct {
	why     string // what is unclear, for the status line; "" for an offer that may be passed over
	answers []kit.Answer
}

// mostAnswers is how many have room beside a field.
const mostAnswers = 3

// whichNumber asks which number is meant, of one that has something behind it; nil when err
// is something else.
func whichNumber(f *Field, err error, behind string) *question {
	var unclear *money.Unclear
	if !errors.As(err, &unclear) {
		return nil
	}
	q := &question{why: words.WhichNumber(unclear)}
	box, ok := f.Input.(*kit.TextBox)
	if !ok {
		return nil
	}
	for _, m := range unclear.Meanings {
		q.answers = append(q.answers, kit.Answer{Label: m.Spelling + "?", Do: func() { box.Entry.SetText(m.Spelling + behind) }})
	}
	return q
}

// whichCurrency offers the currency that was typed with an amount, where the offer is
// priced in another; nil where there is nothing to ask.
func whichCurrency(e editor, f *Field, s *scenario.Scenario, text string, l money.Locale) *question {
	if f.currency == nil {
		return nil
	}
	named := currenciesIn(text, l)
	if len(named) == 0 || slices.Contains(named, *f.currency(s)) {
		return nil
	}
	q := &question{}
	for _, code := range named[:min(len(named), mostAnswers)] {
		q.answers = append(q.answers, kit.Answer{Label: words.AnswerInCurrency(code), Do: func() {
			e.Change(func(s *session.Session) {
				s.Alter(calledIn("offer.currency"), func(s *scenario.Scenario) { *f.currency(s) = code })
			})
		}})
	}
	return q
}

// wrongCurrency says that an amount was typed in a currency that its field is not in.
func wrongCurrency(f *Field, s *scenario.Scenario, text string, l money.Locale) string {
	if box, ok := f.Input.(*kit.TextBox); !ok || !box.Trailing || f.currency != nil {
		return ""
	}
	named := currenciesIn(text, l)
	switch {
	case len(named) == 0:
		return ""
	case f.fixed == nil:
		return words.NoMoney
	case slices.Contains(named, f.fixed(s)):
		return ""
	}
	return words.FixedCurrency(f.fixed(s))
}

// currenciesIn are the currencies that a text may name, the likeliest first.
func currenciesIn(text string, l money.Locale) []string {
	r, err := l.Read(text)
	if err != nil {
		return nil
	}
	if r.Currency != "" {
		return []string{r.Currency}
	}
	return r.Candidates
}
