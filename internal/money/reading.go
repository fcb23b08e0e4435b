package money

import (
	"regexp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/shopspring/decimal"
)

// Reading is a number that somebody wrote, and its currency if they wrote one.
type Reading struct {
	Value    decimal.Decimal // with the places as written: "118.00" has two
	Currency string          // ISO 4217; empty when none is written, or several share the sign
	// Candidates are the currencies that share the sign ("$", "¥", "kr"), the likeliest
	// first; empty when Currency says which, or no currency is written.
	Candidates []string
}

// Read reads a number as people write it. The stated forms of a locale are:
//
//   - digits with the locale's decimal sign, if any: 1234.5 (en, de-CH, ja), 1234,5 (the
//     others); the sign may come first (.5) or last (118.), as it does while typing;
//   - the digits before that sign in groups of three, all set apart by one of the
//     locale's grouping signs: spaces of any width in every locale, and 1,234.50 (en,
//     ja), 1.234,50 (de, es, pt), 1'234.50 or 1’234.50 (de-CH);
//   - in ja the same in full-width digits and signs;
//   - a minus, hyphen-minus or U+2212, before all that or right before the number.
//
// At most 12 digits stand before the decimal sign, leading zeros not counted, and 12
// after it. An exponent is an error, a plus sign and a percent sign too.
//
// A currency may stand before or after: an ISO 4217 code, a sign of CLDR's or another in
// everyday use ("US$118.00", "118,00 €", "30 EUR", "14,800円", "$118 CAD").
//
// What is not in a stated form, or could mean two numbers, is not guessed: the error is
// *Unclear. So "1.234" is unclear in de, as grouping says 1234 and many mean 1.234, and
// "12.5" is too, with one meaning to confirm. The locale's decimal sign is always taken
// at its word: "1,234" is 1.234 in de. A currency decides more, since prices are copied
// from pages abroad and no price has three places where its currency has fewer:
//
//   - "1.234 EUR" in de is 1234, as grouping says; "1.234 KWD" stays unclear;
//   - "1,234 EUR" in de is unclear, although it has the locale's decimal sign;
//   - an amount in any other form of those above (or with two of their signs the other
//     way round) is read if it can mean one number only: "US$118.00" is 118.00 in de.
//
// Other errors are *Unreadable.
func (l Locale) Read(text string) (Reading, error) {
	p, err := l.part(text)
	if err != nil {
		return Reading{}, err
	}
	currencies, err := l.currencies(p)
	if err != nil {
		return Reading{}, err
	}
	meant, sure, err := l.meanings(p, currencies)
	if err != nil {
		return Reading{}, err
	}
	r := Reading{}
	switch {
	case len(currencies) == 1:
		r.Currency = currencies[0]
	case len(currencies) > 1:
		r.Candidates = currencies
	}
	if sure {
		r.Value = meant[0]
		return r, nil
	}
	u := &Unclear{Text: strings.TrimSpace(text), Currency: r.Currency, Candidates: r.Candidates}
	for _, v := range meant {
		u.Meanings = append(u.Meanings, Meaning{Value: v, Spelling: l.Field(v)})
	}
	return Reading{}, u
}

// parts are a written amount taken apart, every sign in its plain form.
type parts struct {
	text        string // as written
	front, back string // what stands before and after the number, without spaces
	number      string // digits, '.', ',', '\'' and ' '
	negative    bool
	wide        bool // full-width digits or signs were written
}

// part takes text apart. Errors: *Unreadable.
func (l Locale) part(text string) (parts, error) {
	s, wide := plain(text)
	p := parts{text: text, wide: wide}
	first, last := strings.IndexAny(s, digits), strings.LastIndexAny(s, digits)
	switch {
	case s == "":
		return p, l.unreadable(text, NothingWritten)
	case first < 0:
		return p, l.unreadable(text, NoDigits)
	}
	if startsWithMark(s, first) {
		first--
	}
	if last++; endsWithMark(s, last) {
		last++
	}
	p.number = s[first:last]
	if err := l.checkNumber(text, p.number); err != nil {
		return p, err
	}
	p.front, p.back = squeeze(s[:first]), squeeze(s[last:])
	if rest, ok := strings.CutPrefix(p.front, "-"); ok {
		p.front, p.negative = rest, true
	} else if rest, ok := strings.CutSuffix(p.front, "-"); ok {
		p.front, p.negative = rest, true
	}
	return p, l.checkAround(text, p.front, p.back)
}

// power matches what stands inside a power of ten or a product.
var power = regexp.MustCompile(`[0-9.,] ?[×*^] ?[0-9]|[0-9.,] ?[eE][+-]?[0-9]|[0-9] ?x ?[0-9]`)

// checkNumber says what in a number no form has.
func (l Locale) checkNumber(text, number string) error {
	if strings.Trim(number, digits+marks) == "" {
		return nil
	}
	if power.MatchString(number) {
		return l.unreadable(text, PowerOrSum)
	}
	return l.unreadable(text, SeveralNumbers)
}

// checkAround says what beside a number is no currency, but something else.
func (l Locale) checkAround(text, front, back string) error {
	around := front + back
	switch {
	case strings.ContainsAny(around, "+"):
		return l.unreadable(text, PlusSign)
	case strings.ContainsAny(around, "%‰"):
		return l.unreadable(text, PercentSign)
	case strings.ContainsAny(around, "-–—"):
		return l.unreadable(text, StrayDash)
	case strings.ContainsAny(around, ".,'") && strings.Trim(around, ".,'") == "":
		return l.unreadable(text, StrayMark)
	}
	return nil
}

// meanings are the numbers that p can mean, the locale's own first; sure says that it is
// the only one to take. Errors: *Unreadable.
func (l Locale) meanings(p parts, currencies []string) (values []decimal.Decimal, sure bool, err error) {
	own, isOwn := l.own(p)
	every := elsewhere(p.number)
	if isOwn {
		every = append([]spelled{own}, every...)
	}
	if len(every) == 0 {
		return nil, false, l.unformed(p)
	}
	for _, s := range every {
		if s.tooLong() {
			return nil, false, l.unreadable(p.text, TooLong)
		}
		if v := s.value(p.negative); !slices.ContainsFunc(values, v.Equal) {
			values = append(values, v)
		}
	}
	fine := len(currencies) == 0 // can be as fine as three places
	for _, c := range currencies {
		fine = fine || Places(c) >= 3
	}
	grouped := own.group != 0
	switch {
	case len(values) == 1:
		sure = isOwn || len(currencies) > 0
	case isOwn && len(currencies) == 0:
		sure = !grouped
	case isOwn:
		sure = grouped != fine
	}
	return values, sure, nil
}

// unformed is the error of a number in no form, with the likeliest way to write it.
func (l Locale) unformed(p parts) error {
	bare := squeeze(p.number)
	for _, g := range l.groups() {
		bare = strings.ReplaceAll(bare, string(g), "")
	}
	s, ok := spell(bare, l.form().decimal[0], 0)
	if !ok || s.tooLong() {
		return l.unreadable(p.text, NoForm)
	}
	v := s.value(p.negative)
	spellings := []string{l.Field(v)}
	if grouped := l.Number(fraction(v), -int(v.Exponent())); grouped != spellings[0] {
		spellings = append(spellings, grouped)
	}
	return l.unreadable(p.text, WrongGroups, spellings...)
}

func squeeze(s string) string { return strings.ReplaceAll(s, " ", "") }

// startsWithMark says whether the number begins with the decimal sign before its first
// digit, as in ".5" and "$.50", unlike "Fr.50".
func startsWithMark(s string, first int) bool {
	if first == 0 || s[first-1] != '.' && s[first-1] != ',' {
		return false
	}
	before, _ := utf8.DecodeLastRuneInString(s[:first-1])
	return first == 1 || before == ' ' || before == '-' || unicode.Is(unicode.Sc, before)
}

// endsWithMark says whether the number ends with a decimal sign, as in "118." and "118, €".
func endsWithMark(s string, end int) bool {
	return end < len(s) && (s[end] == '.' || s[end] == ',') && (end+1 == len(s) || s[end+1] == ' ')
}
