package money

import (
	"fmt"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// Unclear is the error of a text that is not in a stated form of the locale, or that
// could mean two numbers: what to ask.
type Unclear struct {
	Text       string
	Meanings   []Meaning // one or two, the locale's own form first
	Currency   string    // as in Reading
	Candidates []string  // as in Reading
}

// Meaning is a number that an unclear text can mean.
type Meaning struct {
	Value    decimal.Decimal
	Spelling string // as Field writes it, which Read reads as Value
}

func (u *Unclear) Error() string {
	if len(u.Meanings) == 1 {
		return fmt.Sprintf("%s is not how numbers are written here. If %[2]s is meant, write %[2]s.", quoted(u.Text), u.Meanings[0].Spelling)
	}
	var spellings []string
	for _, m := range u.Meanings {
		spellings = append(spellings, m.Spelling)
	}
	return fmt.Sprintf("%s could mean %s. Write the one that is meant.", quoted(u.Text), strings.Join(spellings, " or "))
}

// Unreadable is the error of a text that is no number in any form.
type Unreadable struct {
	Text string
	Why  string // a sentence
	Do   string // a sentence: what to write instead
}

func (e *Unreadable) Error() string { return e.Why + " " + e.Do }

func (l Locale) unreadable(text, why, do string) *Unreadable {
	return &Unreadable{Text: strings.TrimSpace(text), Why: why, Do: do}
}

// example is a number in the locale's form.
func (l Locale) example() string { return l.Number(exact.Ratio(12345, 10), 2) }

// quoted is text in quotes, cut to what fits beside a field.
func quoted(text string) string {
	const most = 30
	r := []rune(strings.ToValidUTF8(strings.TrimSpace(text), "\ufffd"))
	if len(r) > most {
		r = append(r[:most-1], '…')
	}
	return "“" + string(r) + "”"
}

func fraction(d decimal.Decimal) exact.Fraction { return exact.FromDecimal(d) }
