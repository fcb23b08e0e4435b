package words

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/shopspring/decimal"
)

func TestTermsAreInAlphabeticalOrderAndExplained(t *testing.T) {
	const most = 230 // characters
	var before string
	for _, term := range terms {
		if term.word <= before {
			t.Errorf("%q stands after %q", term.word, before)
		}
		before = term.word
		if term.word != strings.ToLower(term.word) {
			t.Errorf("%q begins with a capital, unlike the others", term.word)
		}
		if n := utf8.RuneCountInString(term.meaning); n > most {
			t.Errorf("%s: %d characters, at most %d", term.word, n, most)
		}
		plainlySaid(t, term.word, term.meaning)
		if strings.HasPrefix(strings.ToLower(term.meaning), term.word) {
			t.Errorf("%s is explained by itself", term.word)
		}
	}
}

func TestTermsHoldTheWordsOfTheTrade(t *testing.T) {
	for _, word := range []string{"leader", "trailer", "fogged end", "perforation pitch", "remjet", "landed cost", "free limit", "duty",
		"import tax", "used share", "short roll", "cassette", "standard roll", "compared with", "saving in cash", "all counted", "payback", "frame", "waste"} {
		meaning(t, word)
	}
}

// SMPTE ST 139 (KS-1870) and ST 93 (BH-1866): 0.1870 in and 0.1866 in, and an inch is
// 25.4 mm exactly.
func TestTermsTellThePitchesOfTheStandards(t *testing.T) {
	text := meaning(t, "perforation pitch")
	for name, inches := range map[string]string{"long is ": "0.1870", "short ": "0.1866"} {
		mm := decimal.RequireFromString(inches).Mul(decimal.RequireFromString("25.4")).StringFixed(3)
		if !strings.Contains(text, name+mm+" mm") {
			t.Errorf("it does not say %q: %s", name+mm+" mm", text)
		}
	}
}

func TestTermsLeaveTheBorderToCustoms(t *testing.T) {
	for _, word := range []string{"duty", "import tax", "free limit"} {
		if text := meaning(t, word); !strings.Contains(text, "customs authority") {
			t.Errorf("%s does not name the customs authority: %s", word, text)
		}
	}
}

// Each drawing goes with a word, and is described.
func TestTermsHaveTheirDrawings(t *testing.T) {
	drawn := map[TermPicture]bool{}
	for _, term := range Glossary() {
		if term.Picture != "" {
			drawn[term.Picture] = true
		}
	}
	for _, p := range TermPictures {
		if !drawn[p] || !strings.HasSuffix(TermDrawn(p), ".") {
			t.Errorf("%s: %q", p, TermDrawn(p))
		}
	}
}

// meaning is that of a word, which must be there.
func meaning(t *testing.T, word string) string {
	t.Helper()
	i := slices.IndexFunc(terms, func(t term) bool { return t.word == word })
	if i < 0 {
		t.Fatalf("%q is not explained", word)
	}
	return terms[i].meaning
}
