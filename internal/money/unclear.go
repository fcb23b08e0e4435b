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
	return fmt.Sprintf("money: %q can mean %d numbers", u.Text, len(u.Meanings))
}

// Unreadable is the error of a text that is no number in any form. Package words says it.
type Unreadable struct {
	Text    string
	Because Obstacle
	// About is what Because is about: the signs or codes, and of WrongGroups one or two
	// ways to write the number that is likeliest meant.
	About   []string
	Example string // a number in the locale's form
}

// Obstacle is what keeps a text from being a number.
type Obstacle string

// The obstacles.
const (
	NothingWritten Obstacle = "nothing"
	NoDigits       Obstacle = "no-digits"
	PowerOrSum     Obstacle = "power-or-sum" // "1e6", "3 × 4"
	SeveralNumbers Obstacle = "several"
	PlusSign       Obstacle = "plus"
	PercentSign    Obstacle = "percent"
	StrayDash      Obstacle = "dash" // no minus in front
	StrayMark      Obstacle = "mark" // a point, comma or apostrophe away from the digits
	TooLong        Obstacle = "too-long"
	NoForm         Obstacle = "no-form"
	WrongGroups    Obstacle = "groups" // not of three digits each
	TwoCurrencies  Obstacle = "two-currencies"
	NoSuchCode     Obstacle = "no-code" // three letters that are no currency in use
	NoSuchSign     Obstacle = "no-sign"
)

func (e *Unreadable) Error() string {
	return fmt.Sprintf("money: %q cannot be read: %s", e.Text, e.Because)
}

func (l Locale) unreadable(text string, because Obstacle, about ...string) *Unreadable {
	return &Unreadable{Text: strings.TrimSpace(text), Because: because, About: about, Example: l.example()}
}

// example is a number in the locale's form.
func (l Locale) example() string { return l.Number(exact.Ratio(12345, 10), 2) }

func fraction(d decimal.Decimal) exact.Fraction { return exact.FromDecimal(d) }
