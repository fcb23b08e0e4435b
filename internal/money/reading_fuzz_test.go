package money

import (
	"errors"
	"math/big"
	"regexp"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/exact"
)

// judge is a second, independent account of the stated forms: a pattern for each, and the
// marks to strip from what it matches.
type judge struct {
	pattern *regexp.Regexp
	strip   *strings.Replacer // to a number with a point
}

func newJudge(pattern, group, point string) judge {
	p := regexp.MustCompile(`^(?:` + strings.NewReplacer("G", group, "P", point).Replace(pattern) + `)$`)
	var pairs []string
	if group != "" {
		for _, g := range strings.Split(strings.NewReplacer("[", "", "]", "", `\`, "").Replace(group), "") {
			pairs = append(pairs, g, "")
		}
	}
	return judge{p, strings.NewReplacer(append(pairs, strings.Trim(point, `\`), ".")...)}
}

const (
	grouped  = `[1-9][0-9]{0,2}(?:G[0-9]{3})+(?:P[0-9]+)?`
	ungroup  = `[0-9]+(?:P[0-9]+)?|P[0-9]+`
	trailing = `[0-9]+P|[1-9][0-9]{0,2}(?:G[0-9]{3})+P`
	blanks   = "[ \u00a0\u202f\u2009\u2007\u2008\u200a\u2002\u2003\u3000\t]"
	ticks    = "['’\u02bc]"
)

// home are the stated forms of each locale, abroad those of anybody.
var home, abroad = func() (map[Locale][]judge, []judge) {
	m := map[Locale][]judge{}
	forms := func(point string, groups ...string) []judge {
		js := []judge{newJudge(ungroup+`|[0-9]+P`, "", point)}
		for _, g := range append(groups, blanks) {
			js = append(js, newJudge(grouped+`|`+trailing, g, point))
		}
		return js
	}
	for _, l := range []Locale{"de", "es", "pt"} {
		m[l] = forms(`,`, `\.`)
	}
	for _, l := range []Locale{"fr", "pl", "sv"} {
		m[l] = forms(`,`)
	}
	m["en"], m["ja"], m["de-CH"] = forms(`\.`, `,`), forms(`\.`, `,`), forms(`\.`, ticks)
	var any []judge
	for _, point := range []string{`,`, `\.`} {
		any = append(any, newJudge(ungroup, "", point))
		for _, g := range []string{`,`, `\.`, ticks, blanks} {
			if g != point {
				any = append(any, newJudge(grouped, g, point))
			}
		}
	}
	return m, any
}()

// numeral finds what is written between the currencies and signs of a text.
var numeral = regexp.MustCompile("[0-9](?:[0-9.,'’\u02bc]|" + blanks + "|[\u200e\u200f\u2060\ufeff])*")

// leading finds a decimal sign before the first digit, where it does not end a word.
var leading = regexp.MustCompile(`(?:^|[^\pL/])([.,])$`)

// values are all numbers that the forms give for a text, without its sign.
func values(text string, forms []judge) (list []*big.Rat) {
	text = strings.NewReplacer("\u200e", "", "\u200f", "", "\u2060", "", "\ufeff", "").Replace(text)
	at := numeral.FindStringIndex(text)
	if at == nil {
		return nil
	}
	body := strings.TrimRight(text[at[0]:at[1]], " \u00a0\u202f\u2009\u2007\u2008\u200a\u2002\u2003\u3000\t")
	if m := leading.FindStringSubmatch(text[:at[0]]); m != nil {
		body = m[1] + body
	}
	for _, j := range forms {
		if !j.pattern.MatchString(body) {
			continue
		}
		if r, ok := new(big.Rat).SetString(strings.TrimSuffix("0"+j.strip.Replace(body), ".")); ok {
			list = append(list, r)
		}
	}
	return list
}

func among(list []*big.Rat, v *big.Rat) bool {
	for _, r := range list {
		if r.Cmp(v) == 0 {
			return true
		}
	}
	return false
}

var (
	fullWidth = strings.NewReplacer("０", "0", "１", "1", "２", "2", "３", "3", "４", "4", "５", "5", "６", "6", "７", "7", "８", "8", "９", "9",
		"，", ",", "．", ".", "－", "-")
	aDash = regexp.MustCompile(`[-−－][^0-9]*[0-9]`)
)

// honest fails when a text was read as a number that no form gives it.
func honest(t testing.TB, l Locale, text string) {
	r, err := l.Read(text)
	var unclear *Unclear
	var unreadable *Unreadable
	narrow := fullWidth.Replace(text)
	switch {
	case errors.As(err, &unclear):
		if n := len(unclear.Meanings); n < 1 || n > 2 || unclear.Error() == "" {
			t.Fatalf("%s %q: %d meanings", l, text, n)
		}
		for _, m := range unclear.Meanings {
			if !among(values(narrow, append(abroad, home[l]...)), m.Value.Abs().Rat()) {
				t.Fatalf("%s %q: no form gives %s", l, text, m.Value)
			}
			again, err := l.Read(m.Spelling)
			if err != nil || !again.Value.Equal(m.Value) {
				t.Fatalf("%s %q: the spelling %q reads %s, %v", l, text, m.Spelling, again.Value, err)
			}
		}
		return
	case errors.As(err, &unreadable):
		if unreadable.Because == "" || unreadable.Example == "" {
			t.Fatalf("%s %q: an error that says nothing", l, text)
		}
		return
	case err != nil:
		t.Fatalf("%s %q: %v", l, text, err)
	}
	v := r.Value.Abs().Rat()
	foreign := r.Currency != "" || r.Candidates != nil
	inHome := (l == "ja" || narrow == text || foreign) && among(values(narrow, home[l]), v)
	everywhere := values(narrow, abroad)
	if !inHome {
		if !foreign || !among(everywhere, v) {
			t.Fatalf("%s %q: no stated form gives %s", l, text, r.Value)
		}
		for _, other := range everywhere {
			if other.Cmp(v) != 0 {
				t.Fatalf("%s %q: read as %s, could mean %s", l, text, r.Value, other.RatString())
			}
		}
	}
	if r.Value.Sign() < 0 && !aDash.MatchString(narrow) || r.Value.Sign() > 0 && aDash.MatchString(narrow) {
		t.Fatalf("%s %q: the sign of %s", l, text, r.Value)
	}
	limit := big.NewRat(1_000_000_000_000, 1)
	if v.Cmp(limit) >= 0 || r.Value.Exponent() < -12 || r.Value.Exponent() > 0 {
		t.Fatalf("%s %q: %s is out of bounds", l, text, r.Value)
	}
}

func FuzzRead(f *testing.F) {
	for _, e := range examples(f) {
		f.Add(e.text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, l := range Locales() {
			honest(t, l, text)
		}
	})
}

// Texts made of the pieces that numbers are made of reach further than random bytes.
func TestReadsNothingThatIsNotWritten(t *testing.T) {
	pieces := rapid.SampledFrom([]string{"1", "0", "12", "123", "234", "000", "5", ".", ",", "'", "’", " ", "\u00a0", "\u202f", "-", "−",
		"$", "US$", "€", " EUR", "KWD ", "¥", "kr", "１", "，", "e", "%"})
	rapid.Check(t, func(rt *rapid.T) {
		text := strings.Join(rapid.SliceOfN(pieces, 1, 8).Draw(rt, "pieces"), "")
		honest(t, rapid.SampledFrom(Locales()).Draw(rt, "locale"), text)
	})
}

func anyDecimal(t *rapid.T) decimal.Decimal {
	places := rapid.IntRange(0, 12).Draw(t, "places")
	return decimal.New(rapid.Int64Range(-999_999_999_999, 999_999_999_999).Draw(t, "coefficient"), int32(-places))
}

// What a field shows is read as what it was, with its places.
func TestFieldsReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := anyDecimal(t)
		for _, l := range Locales() {
			r, err := l.Read(l.Field(d))
			if err != nil || !r.Value.Equal(d) || r.Value.Exponent() != d.Exponent() {
				t.Fatalf("%s %q: %s, %v", l, l.Field(d), r.Value, err)
			}
		}
	})
}

// What is written as a number or an amount is read as what it was. Only where three
// digits follow the one grouping sign is it asked about, with the right meaning first.
func TestNumbersAndAmountsReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := anyDecimal(t)
		f := exact.FromDecimal(d)
		l := rapid.SampledFrom(Locales()).Draw(t, "locale")
		code := rapid.SampledFrom(Codes()).Draw(t, "code")
		digits, _ := Digits(code)
		places := rapid.IntRange(0, 12).Draw(t, "shown places")
		check := func(text string, want exact.Fraction, currency string, maybeUnclear bool) {
			r, err := l.Read(text)
			var u *Unclear
			if errors.As(err, &u) && maybeUnclear {
				r = Reading{Value: u.Meanings[0].Value, Currency: u.Currency}
			} else if err != nil {
				t.Fatalf("%s %q: %v", l, text, err)
			}
			if !exact.FromDecimal(r.Value).Equal(want) || r.Currency != currency {
				t.Fatalf("%s %q: %s %s", l, text, r.Value, r.Currency)
			}
		}
		check(l.Number(f, places), f.Round(places), "", places == 0)
		check(l.Amount(f, code), Round(f, code), code, false)
		check(l.Whole(f, code), f.Round(0), code, digits == 3)
	})
}
