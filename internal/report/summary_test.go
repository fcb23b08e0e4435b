package report

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

var day = scenario.Date{Year: 2026, Month: 11, Day: 25}

// many is the demo with its offers told several times over, some of them beyond
// computing, under names that try to break a line.
func many(t *rapid.T) compare.Comparison {
	return demo(func(s *scenario.Scenario) {
		s.Name = rapid.SampledFrom([]string{"A year", "two\nlines", "# *loud*", strings.Repeat("long ", 40)}).Draw(t, "name")
		s.Months = rapid.IntRange(1, 60).Draw(t, "months")
		if rapid.Bool().Draw(t, "no rates") {
			s.Rates = nil
		}
		kept := s.Offers
		s.Offers = nil
		for i := range rapid.IntRange(0, 50).Draw(t, "offers") {
			o := rapid.SampledFrom(kept).Draw(t, "offer")
			o.Name = fmt.Sprintf("%s %d\u2028- x", o.Name, i)
			o.Developing = rapid.SampledFrom([]string{"", s.Developing[0].Name, s.Developing[1].Name, "gone"}).Draw(t, "developing")
			o.Import = rapid.SampledFrom([]scenario.Import{"", "none", "border", "prepaid"}).Draw(t, "import")
			o.Units = rapid.IntRange(1, 9).Draw(t, "units")
			s.Offers = append(s.Offers, o)
		}
		if len(s.Offers) > 0 {
			s.Baseline = s.Offers[0].Name
		}
	})
}

// Whatever is compared, a summary has at most 12 lines, none of them empty, and begins
// with the scenario's finding.
func TestASummaryIsShort(t *testing.T) {
	const lines = 12
	for seed := range 500 {
		c := rapid.Custom(many).Example(seed)
		l := money.Locales()[seed%len(money.Locales())]
		for form, text := range map[string]string{"text": Summary(&c, day, l), "markdown": SummaryMarkdown(&c, day, l)} {
			told := strings.Split(strings.TrimSuffix(text, "\n"), "\n")
			if len(told) > lines {
				t.Fatalf("%s of scenario %d has %d lines:\n%s", form, seed, len(told), text)
			}
			for _, line := range told {
				if strings.TrimSpace(line) == "" || strings.ContainsAny(line, "\u2028\r\t") {
					t.Fatalf("%s of scenario %d has a broken line %q", form, seed, line)
				}
			}
		}
	}
}

// Every amount of a summary is the engine's, to the minor unit.
func TestASummaryTellsTheEnginesFigures(t *testing.T) {
	c := demo(nil)
	text := Summary(&c, day, money.English)
	told := func(f exact.Fraction) string { return "EUR " + money.English.Number(f, 2) }
	for i := range c.Offers {
		o := &c.Offers[i]
		if line := o.Name + ": " + told(o.PerRoll.Total) + " a roll"; !strings.Contains(text, line) {
			t.Errorf("%q is missing from\n%s", line, text)
		}
	}
	for _, name := range []string{c.Verdict.Reel, c.Verdict.Boxed} {
		y := &c.Find(name).Year
		if line := told(y.Total) + " in cash, " + told(y.Cost) + " all counted"; !strings.Contains(text, line) {
			t.Errorf("%q is missing from\n%s", line, text)
		}
	}
	for _, part := range []string{"1 USD = 0.8875 EUR, 20 Nov 2026", "43 rolls a year", "25 Nov 2026"} {
		if !strings.Contains(text, part) {
			t.Errorf("%q is missing from\n%s", part, text)
		}
	}
}

// What comes after the fourth next is counted, and so is what was left out.
func TestASummaryCountsTheRest(t *testing.T) {
	c := demo(func(s *scenario.Scenario) {
		for i := range 7 {
			o := s.Offers[0]
			o.Name = fmt.Sprint("another ", i)
			if i == 0 {
				o.Currency = "CHF" // no rate
			}
			s.Offers = append(s.Offers, o)
		}
	})
	// 10 offers: 1 left out, 2 best, 4 next, 3 more.
	if text := Summary(&c, day, money.English); !strings.Contains(text, "- 3 more, and 1 left out\n") {
		t.Errorf("got\n%s", text)
	}
}
