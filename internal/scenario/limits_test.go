package scenario

import (
	"fmt"
	"strings"
	"testing"
)

// What a file may hold at most, in figures, as the README tells them: so much is read
// without a fault, one more is one.
func TestEveryLimitIsWhereItIsSaidToBe(t *testing.T) {
	r := strings.Repeat
	inScenario := func(text string) string { return small + "\n" + text }
	inTop := func(text string) string { return strings.Replace(small, "schema = 1", "schema = 1\n"+text, 1) }
	numbered := func(format string, n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, format, i)
		}
		return b.String()
	}
	text := func(key string, n int) string { return fmt.Sprintf("%s = \"%s\"", key, r("ä", n)) }
	const least = "[[scenario]]\nname = \"%d\"\nhome = \"EUR\"\nfirst_month = \"2027-01\"\nbaseline = \"Box\"\n" +
		"shooting.rolls_per_month = [1,1,1,1,1,1,1,1,1,1,1,1]\n" +
		"[[scenario.offer]]\nname = \"Box\"\nkind = \"boxed\"\ncurrency = \"EUR\"\nprice = 1\nboxed.exposures = 36\n"
	for name, c := range map[string]struct {
		most int
		code Code
		file func(n int) string
	}{
		"lists inside one another":  {32, TooDeep, func(n int) string { return inTop("x = " + r("[", n) + r("]", n)) }},
		"tables inside one another": {32, TooDeep, func(n int) string { return inTop("x = " + r("{a=", n-1) + "{}" + r("}", n-1)) }},
		"parts of a key":            {32, TooDeep, func(n int) string { return inTop(r("a.", n-1) + "a = 1") }},
		"parts of a header":         {32, TooDeep, func(n int) string { return small + "\n[" + r("a.", n-1) + "a]\n" }},
		"keys in a table":           {1000, TooManyKeys, func(n int) string { return small + "\n[x]\n" + numbered("k%d = 1\n", n) }},
		"elements of a list":        {10000, TooManyItems, func(n int) string { return inTop("x = [" + r("1,", n) + "]") }},
		"scenarios":                 {5000, ScenarioMost, func(n int) string { return "schema = 1\n" + numbered(least, n) }},
		"reels in hand": {500, TooMany, func(n int) string {
			return inScenario(numbered("[[reel]]\nname = \"%d\"\nlength = 30\nlength_unit = \"m\"\nexposures = 36\n", n))
		}},
		"rows of a log": {500, TooMany, func(n int) string {
			return inScenario("[[reel]]\nname = \"a\"\nlength = 9000\nlength_unit = \"m\"\nexposures = 36\n" + r("[[reel.load]]\ndate = 2027-01-01\ncassettes = 1\nexposures = 1\n", n))
		}},
		"offers": {50, TooMany, func(n int) string {
			return inScenario(numbered("[[scenario.offer]]\nname = \"Box %d\"\nkind = \"boxed\"\ncurrency = \"EUR\"\nprice = 1\nboxed.exposures = 36\n", n-2))
		}},
		"rates": {60, TooMany, func(n int) string {
			rates := ""
			for _, code := range codesBut("EUR", "USD")[:n-1] {
				rates += "[[scenario.rate]]\none = \"" + code + "\"\nequals = 2\nin = \"EUR\"\n"
			}
			return inScenario(rates)
		}},
		"ranges": {1000, TooMany, func(n int) string {
			return inScenario(r("[[scenario.range]]\ninput = \"offer.price\"\nlow = 1\nhigh = 2\n", n))
		}},
		"letters of a name": {200, TextTooLong, func(n int) string { return strings.Replace(small, `name = "Harbour"`, text("name", n), 1) }},
		"letters of another line": {200, TextTooLong, func(n int) string {
			return strings.Replace(small, `kind = "reel"`, `kind = "reel"`+"\n"+text("seller", n), 1)
		}},
		"letters of a note": {2000, TextTooLong, func(n int) string {
			return strings.Replace(small, `name = "Harbour"`, `name = "Harbour"`+"\n"+text("note", n), 1)
		}},
		"letters of a reel's note": {2000, TextTooLong, func(n int) string {
			return inScenario("[[reel]]\nname = \"a\"\nlength = 30\nlength_unit = \"m\"\nexposures = 36\n" + text("note", n) + "\n")
		}},
	} {
		t.Run(name, func(t *testing.T) {
			beyond := func(n int) (list []Fault) {
				file := c.file(n)
				for _, f := range Inspect([]byte(file)).Faults {
					if f.Code == c.code {
						list = append(list, f)
					}
				}
				return list
			}
			if faults := beyond(c.most); len(faults) > 0 {
				t.Errorf("%d are too many: %v", c.most, faults[0])
			}
			if faults := beyond(c.most + 1); len(faults) != 1 || faults[0].Most != c.most && c.code != TooDeep {
				t.Errorf("%d are not too many: %v", c.most+1, faults)
			}
		})
	}
}

// What is suggested in place of an unknown key is a slip away: at most two letters, and
// fewer than half of the key's.
func TestTheNearestKeyIsNear(t *testing.T) {
	for key, want := range map[string]string{
		"pric":                "price", // one of five
		"prc":                 "",      // two of five are not fewer than half
		"shpng":               "",      // three
		"shppng":              "shipping",
		"Shipping_each_extra": "shipping_each_extra",
		"shiping_each_extr":   "shipping_each_extra",
		"shiping_eac_extr":    "",
		"weather":             "",
	} {
		text := strings.Replace(small, `kind = "boxed"`, `kind = "boxed"`+"\n"+key+" = \"1\"", 1)
		notices := Inspect([]byte(text)).Notices
		if len(notices) != 1 || notices[0].Near != want {
			t.Errorf("%s: %+v, want %q", key, notices, want)
		}
	}
}
