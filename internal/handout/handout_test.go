package handout

import (
	"bytes"
	"context"
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/paper"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

var today = scenario.Date{Year: 2026, Month: 11, Day: 25}

func made(t *testing.T, s scenario.Scenario, o Options) (*Handout, *compare.Comparison) {
	t.Helper()
	c := compare.Compare(s, scenario.Check(s), today)
	o.On = today
	if o.Locale == "" {
		o.Locale = money.English
	}
	h, err := Make(context.Background(), &c, o)
	if err != nil {
		t.Fatal(err)
	}
	return h, &c
}

func demo() scenario.Scenario { return scenario.Demo().Scenarios[0].Clone() }

// told is the demo with so many ways to buy under long names, and so many rates.
func told(ways, rates int) scenario.Scenario {
	s := demo()
	kinds := s.Offers
	for i := len(kinds); i < ways; i++ {
		o := kinds[i%len(kinds)]
		o.Name = strings.Repeat(fmt.Sprintf("%d: a film with a name that goes on and on, ", i), 4)
		o.Price = o.Price.Add(decimal.New(int64(i*37), -2))
		s.Offers = append(s.Offers, o)
	}
	for i, currency := range []string{"GBP", "CHF", "SEK", "NOK", "DKK", "PLN", "CZK", "HUF", "CAD", "AUD", "NZD"} {
		if len(s.Rates) < rates {
			s.Rates = append(s.Rates, scenario.Rate{One: currency, Equals: decimal.New(int64(100+i), -2), In: "EUR", Date: today,
				Source: strings.Repeat("read somewhere ", 9)})
		}
	}
	return s
}

func unlike() scenario.Scenario {
	s := demo()
	s.Offers = s.Offers[1:]
	s.Baseline = s.Offers[0].Name
	s.Offers[0].Developing = ""
	return s
}

func oneSided() scenario.Scenario {
	s := demo()
	s.Offers = s.Offers[:1]
	return s
}

// cases are scenarios a handout must do well by, with the pages each may take.
func cases() map[string]struct {
	s     scenario.Scenario
	pages int
} {
	type c = struct {
		s     scenario.Scenario
		pages int
	}
	empty := demo()
	empty.Offers = nil
	return map[string]c{
		"demo": {demo(), 2}, "8 ways, 8 rates": {told(8, 8), 2}, "unlike": {unlike(), 2}, "one-sided": {oneSided(), 2},
		"9 rates": {told(3, 9), 3}, "24 ways": {told(24, 2), 3}, "nothing": {empty, 2},
	}
}

func TestPages(t *testing.T) {
	for name, test := range cases() {
		for _, size := range []paper.Size{paper.A4, paper.Letter} {
			h, _ := made(t, test.s, Options{Paper: size})
			if len(h.Pages) != test.pages {
				t.Errorf("%s on %s takes %d pages, want %d", name, size.Name, len(h.Pages), test.pages)
			}
			pdf, err := h.PDF()
			if err != nil {
				t.Fatal(err)
			}
			const most = 300 << 10
			if len(pdf) > most {
				t.Errorf("%s is %d KB", name, len(pdf)>>10)
			}
			for i, p := range h.Pages {
				if p.Size != size {
					t.Errorf("%s: page %d is %v", name, i+1, p.Size)
				}
				said := strings.Join(p.Texts(), "|")
				if foot := fmt.Sprintf("page %d of %d", i+1, test.pages); !strings.Contains(said, foot) {
					t.Errorf("%s: page %d does not say %q", name, i+1, foot)
				}
			}
		}
	}
}

// Up to 8 rates are all told on the second page, with their sources as far as three lines
// go, and up to 8 ways to buy on the first.
func TestEightOfEachFindRoom(t *testing.T) {
	for _, size := range []paper.Size{paper.A4, paper.Letter} {
		s := told(8, 8)
		h, c := made(t, s, Options{Paper: size})
		for i, r := range s.Rates {
			if text := "1 " + r.One + " = "; !strings.Contains(strings.ReplaceAll(strings.Join(h.Pages[1].Texts(), " "), "\u00a0", " "), text) {
				t.Errorf("%s: rate %d is not told", size.Name, i)
			}
		}
		front := strings.Join(h.Pages[0].Texts(), "|")
		for i := range c.Offers {
			if total := money.English.Number(c.Offers[i].Year.Total, 2); !strings.Contains(front, total) {
				t.Errorf("%s: way %d is not told", size.Name, i)
			}
		}
	}
}

// What a handout must tell stands in it, as the engine found it and as the words say it,
// in both worlds of numbers.
func TestItTellsWhatCounts(t *testing.T) {
	for _, l := range []money.Locale{"en", "de"} {
		winter := scenario.NewInHand("EUR", today, func(string) bool { return false })
		winter.Name = "Winter reel"
		hand := reels.StandAll([]scenario.InHand{winter, {Name: "Odd one"}}, scenario.CheckReels([]scenario.InHand{winter, {Name: "Odd one"}}))
		h, c := made(t, demo(), Options{Locale: l, InHand: hand})
		var all []string
		for _, p := range h.Pages {
			all = append(all, p.Texts()...)
		}
		said := strings.NewReplacer("\u00a0", " ", "\u2212", "–").Replace(strings.Join(all, " "))
		want := []string{c.Scenario.Name, words.Verdict(c, l).Text, "43 rolls a year", "20 Nov 2026, typed",
			"Winter reel – " + words.ReelHeadline(&hand[0], l), "Odd one – ",
			words.CostTitle(c, l), words.SpendTitle(c, l), "Reelworth 0.1.0, 25 Nov 2026"}
		for i := range c.Offers {
			o := &c.Offers[i]
			want = append(want, o.Name, l.Number(o.PerRoll.Total, 2), l.Number(o.Year.Total, 2), l.Number(o.Year.Cost, 2))
		}
		for _, row := range words.Receipt(c, 2, l) {
			want = append(want, row.Label, row.Home)
		}
		for _, w := range c.Warnings {
			want = append(want, strings.Fields(words.Warning(w, c, l))[1])
		}
		for _, text := range want {
			text = strings.ReplaceAll(text, "\u00a0", " ")
			if !strings.Contains(said, text) {
				t.Errorf("%s: %q is not said in\n%s", l, text, said)
			}
		}
	}
}

// In another currency every amount is in it, the receipts and what would change the answer
// too, and the page says at which rate.
func TestItIsInTheCurrencyShown(t *testing.T) {
	c := compare.Compare(demo(), nil, today)
	h, err := Make(context.Background(), c.In("USD", exact.Ratio(10_000, 8_875)), Options{Locale: money.English})
	if err != nil {
		t.Fatal(err)
	}
	front, back := strings.Join(h.Pages[0].Texts(), " "), strings.Join(h.Pages[1].Texts(), " ")
	for _, want := range []string{"saves USD 238 in cash", "Shown in USD at 1 EUR = 1.12676 USD", "USD a roll"} {
		if said := strings.ReplaceAll(front, "\u00a0", " "); !strings.Contains(said, want) {
			t.Errorf("%q is not said in %s", want, said)
		}
	}
	for _, long := range regexp.MustCompile(`\d\.\d{5,}`).FindAllString(front+back, -1) {
		if long != "1.12676" {
			t.Errorf("an amount is told as %s…", long)
		}
	}
	if got := strings.Count(front, "EUR"); got != 3 { // the rate, what the notes are of, and a price of the seller's
		t.Errorf("EUR is said %d times in %s", got, front)
	}
}

// What would change the answer stands there, the nearest first.
func TestItTellsWhatWouldChangeTheAnswer(t *testing.T) {
	h, c := made(t, demo(), Options{})
	c, err := compare.LookAtPair(context.Background(), c)
	if err != nil {
		t.Fatal(err)
	}
	said := strings.Join(h.Pages[1].Texts(), " ")
	pair := c.Outlook.Pair
	want := words.VolumeLines(c, pair, money.English)
	if len(want) < 2 {
		t.Fatalf("the demo's answer does not turn with volume: %q", want)
	}
	for _, text := range words.Flips(c, pair, money.English)[:5] {
		if !strings.Contains(text, "rolls a year") {
			want = append(want, text)
		}
	}
	for _, text := range want {
		if !strings.Contains(said, strings.ReplaceAll(text, "\u00a0", " ")) && !strings.Contains(said, text) {
			t.Errorf("%q is not said", text)
		}
	}
}

// Letters that no typeface of ours has are told.
func TestLettersThatAreLackingAreTold(t *testing.T) {
	s := demo()
	s.Name = "Café Łódź 映画"
	h, _ := made(t, s, Options{})
	if got := string(h.Lacking); got != "映画" {
		t.Errorf("lacking are %q", got)
	}
}

func TestTheSameComparisonIsTheSameFile(t *testing.T) {
	var first []byte
	for range 2 {
		h, _ := made(t, demo(), Options{})
		pdf, err := h.PDF()
		if err != nil {
			t.Fatal(err)
		}
		if first != nil && !bytes.Equal(first, pdf) {
			t.Error("another file for the same comparison")
		}
		first = pdf
	}
}

func TestItStopsWhenNobodyWaits(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	c := compare.Compare(demo(), nil, today)
	if _, err := Make(ctx, &c, Options{}); err == nil {
		t.Error("a handout was made for nobody")
	}
}
