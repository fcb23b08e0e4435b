package library

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"reelworth/internal/scenario"
)

// isScalar says whether a field is one value and no table, list or row.
func isScalar(t reflect.Type) bool {
	switch t.Kind() {
	case reflect.String, reflect.Int, reflect.Bool:
		return true
	}
	switch t {
	case reflect.TypeFor[scenario.Decimal](), reflect.TypeFor[scenario.Maybe](), reflect.TypeFor[scenario.MaybeWhole](), reflect.TypeFor[scenario.Month](), reflect.TypeFor[scenario.Date]():
		return true
	}
	return false
}

// spelt is a scalar as text, "" where it is left open.
func spelt(v reflect.Value) string {
	number := func(d scenario.Decimal) string { return d.StringFixed(max(0, -d.Exponent())) }
	switch x := v.Interface().(type) {
	case scenario.Decimal:
		return number(x)
	case scenario.Maybe:
		if !x.Set {
			return ""
		}
		return number(x.Decimal)
	case scenario.MaybeWhole:
		if !x.Set {
			return ""
		}
		return strconv.Itoa(x.Int)
	case bool:
		return map[bool]string{true: "yes", false: "no"}[x]
	case fmt.Stringer:
		return x.String()
	case int:
		return strconv.Itoa(x)
	}
	return v.String()
}

// name is a key in words, with the table it belongs to.
func (p place) name(key string) string {
	if special, ok := inWords[p.path+"."+key]; ok {
		return of(special, p)
	}
	word := strings.ReplaceAll(key, "_", " ")
	for ending, unit := range map[string]string{" percent": " in %", " mm": " in mm"} {
		if stem, ok := strings.CutSuffix(word, ending); ok {
			word = stem + unit
		}
	}
	return of(word, p)
}

func of(word string, p place) string {
	if p.of == "" {
		return word
	}
	return word + " of " + p.of
}

// inWords are the keys that say too little by themselves.
var inWords = map[string]string{
	"scenario.home":                      "home currency",
	"scenario.months":                    "months to look at",
	"scenario.baseline":                  "what the others are compared with",
	"scenario.rate.one":                  "first currency of the rate",
	"scenario.rate.equals":               "rate",
	"scenario.rate.in":                   "second currency of the rate",
	"scenario.rate.date":                 "date of the rate",
	"scenario.rate.source":               "source of the rate",
	"scenario.offer.units":               "units per order",
	"scenario.offer.on_hand":             "film already there",
	"scenario.offer.shipping_each_extra": "shipping of each further unit",
	"scenario.offer.import":              "import tax",
	"scenario.offer.keeps_months":        "months it keeps",
}

// nouns call the tables of a list.
var nouns = map[string]struct{ one, many string }{
	"scenario":   {"a scenario", "scenarios"},
	"rate":       {"an exchange rate", "exchange rates"},
	"equipment":  {"a piece of equipment", "pieces of equipment"},
	"developing": {"a way to develop", "ways to develop"},
	"offer":      {"a way to buy", "ways to buy"},
	"range":      {"a range", "ranges"},
	"reel":       {"a reel in hand", "reels in hand"},
	"load":       {"a load", "loads"},
	"result":     {"a result", "results"},
	"recount":    {"a recount", "recounts"},
}

// shown is a value within a sentence.
func shown(text string) string {
	if text == "" {
		return "nothing"
	}
	return short(text)
}

// short makes a text printable and no longer than fits a sentence.
func short(text string) string {
	const most = 60
	var b strings.Builder
	for i, r := range []rune(text[:min(len(text), utf8.UTFMax*(most+1))]) {
		if i == most {
			b.WriteRune('…')
			break
		}
		switch {
		case unicode.IsSpace(r):
			r = ' '
		case !unicode.IsPrint(r):
			r = utf8.RuneError
		}
		b.WriteRune(r)
	}
	return b.String()
}

// unlike leaves out most of what two long texts begin with alike, so that what differs
// is seen.
func unlike(a, b string) (string, string) {
	const long, lead = 40, 10
	x, y := []rune(a), []rune(b)
	same := 0
	for same < min(len(x), len(y)) && x[same] == y[same] {
		same++
	}
	if max(len(x), len(y)) <= long || same <= lead {
		return a, b
	}
	return "…" + string(x[same-lead:]), "…" + string(y[same-lead:])
}
