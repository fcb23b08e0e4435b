package money

import (
	"slices"
	"strings"

	"github.com/bojanz/currency"
)

// Locale is a BCP 47 tag of one of the countries' ways to write numbers that this
// package knows: see Locales. Any other value is taken as "en".
type Locale string

// English is the locale to fall back on.
const English Locale = "en"

// locales are in the order in which LocaleFor prefers them.
var locales = []Locale{English, "de", "fr", "es", "pt", "pl", "sv", "de-CH", "ja"}

// Locales are all locales known here. The slice is the caller's own.
func Locales() []Locale { return slices.Clone(locales) }

// LocaleFor is the locale whose numbers are nearest to those of a system's tag, such as
// "de_AT.UTF-8" or "pt-BR". It is the tag's own language if that is known here and CLDR
// gives both the same decimal or grouping sign; else the first locale with the same
// signs ("it" is written like "de", "es_MX" like "en"), then the first with the same
// decimal sign. "C", "POSIX" and what CLDR does not know are English.
func LocaleFor(tag string) Locale {
	tag, _, _ = strings.Cut(tag, ".")
	tag, _, _ = strings.Cut(tag, "@")
	asked := currency.NewLocale(tag)
	if tag == "" || asked.Language == "c" || asked.Language == "posix" {
		return English
	}
	want := formOf(asked)
	own, known := forms[Locale(asked.Language)]
	nearest := []func(l Locale) bool{
		func(l Locale) bool {
			return known && l == Locale(asked.Language) && (own.decimal == want.decimal || own.kind() == want.kind())
		},
		func(l Locale) bool { return forms[l].decimal == want.decimal && forms[l].kind() == want.kind() },
		func(l Locale) bool { return forms[l].decimal == want.decimal },
	}
	for _, near := range nearest {
		if i := slices.IndexFunc(locales, near); i >= 0 {
			return locales[i]
		}
	}
	return English
}

// form is how a locale writes numbers and amounts, as CLDR 48 has it.
type form struct {
	decimal  string
	group    string
	shortest int    // digits before the point from which groups are marked
	amount   string // "¤" for the code, "0" for the number, as "¤ 0"
	below    string // the same for an amount below zero
}

// forms holds the form of every locale known here.
var forms = func() map[Locale]form {
	m := map[Locale]form{}
	for _, l := range locales {
		m[l] = formOf(currency.NewLocale(string(l)))
	}
	return m
}()

func (l Locale) form() form {
	if f, ok := forms[l]; ok {
		return f
	}
	return forms[English]
}

// formOf reads a form off what bojanz/currency writes: the library holds CLDR's tables,
// but rounds within 39 digits, and so does not write the numbers itself.
func formOf(l currency.Locale) form {
	w := currency.NewFormatter(l)
	w.CurrencyDisplay = currency.DisplayNone
	long := write(w, "1234567.8") // 1,234,567.80
	f := form{decimal: between(long, "7", "8"), group: between(long, "1", "2"), shortest: 99}
	for digits, n := range map[int]string{4: "1234", 5: "12345"} {
		if strings.Contains(write(w, n), f.group) {
			f.shortest = min(f.shortest, digits)
		}
	}
	w.CurrencyDisplay = currency.DisplayCode
	w.MaxDigits, w.MinDigits = 0, 0
	blank := strings.NewReplacer("1", "0", "EUR", "¤", "-", minus, "\u200e", "", "\u200f", "")
	f.amount = blank.Replace(write(w, "1"))
	f.below = blank.Replace(write(w, "-1"))
	return f
}

func write(w *currency.Formatter, n string) string {
	a, err := currency.NewAmount(n, "EUR")
	if err != nil {
		panic("money: " + err.Error())
	}
	return w.Format(a)
}

func between(s, from, to string) string {
	_, s, _ = strings.Cut(s, from)
	s, _, _ = strings.Cut(s, to)
	return s
}

// kind is the grouping sign with all spaces, and both apostrophes, taken as one.
func (f form) kind() string {
	switch f.group {
	case "\u00a0", "\u202f":
		return " "
	case "’":
		return "'"
	}
	return f.group
}
