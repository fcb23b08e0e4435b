package words

import (
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"reelworth/internal/catalogue"
	"reelworth/internal/scenario"
)

func help(key string) string {
	e, _ := catalogue.Of(key)
	return e.Help
}

// helped are the keys of all fields that need help, without indexes: all of the file
// but its version, and the yearly rolls.
func helped() map[string]scenario.Field {
	keys := map[string]scenario.Field{catalogue.RollsAYear: {}}
	for _, f := range scenario.Fields() {
		if f.Table == "" {
			continue
		}
		table := strings.TrimPrefix(strings.TrimPrefix(f.Table, "scenario"), ".")
		keys[strings.TrimPrefix(table+"."+f.Key, ".")] = f
	}
	return keys
}

func TestEveryFieldHasHelpThatFitsItsStrip(t *testing.T) {
	const most = 160 // characters
	if len(helped()) < 80 {
		t.Fatalf("only %d fields found, so most would go unchecked", len(helped()))
	}
	said := map[string]string{}
	for key := range helped() {
		text := help(key)
		if text == "" {
			t.Errorf("%s has no help", key)
			continue
		}
		if n := utf8.RuneCountInString(text); n > most {
			t.Errorf("%s: %d characters, at most %d: %s", key, n, most, text)
		}
		if asOffered := help("offer." + key); strings.HasPrefix(key, "reel.") && text == asOffered {
			continue // a reel in hand is cut as one that is offered
		}
		if other, twice := said[text]; twice {
			t.Errorf("%s says the same as %s: %s", key, other, text)
		}
		said[text] = key
		plainlySaid(t, key, text)
	}
}

func TestHelpDoesNotGoByIndexes(t *testing.T) {
	for with, without := range map[string]string{
		"offer[3].reel.leader_mm":              "offer.reel.leader_mm",
		"shooting.rolls_per_month[6]":          "shooting.rolls_per_month",
		"loading.equipment[1].resale":          "loading.equipment.resale",
		"developing[12].equipment[40].resale":  "developing.equipment.resale",
		"developing[2].equipment.resale":       "developing.equipment.resale",
		"developing[2].chemistry_keeps_months": "developing.chemistry_keeps_months",
		"rate[1].equals":                       "rate.equals",
	} {
		if help(without) == "" {
			t.Errorf("%s has no help", without)
		}
		same(t, with, help(with), help(without))
	}
}

func TestUnknownFieldsHaveNoHelp(t *testing.T) {
	for _, key := range []string{"", "schema", "offer", "offer[1]", "offer[x].price", "offer[].price", "offer[1]price",
		"price", "reel.leader", "offer.reel", "Months", " months", "[1]"} {
		same(t, key, help(key), "")
	}
}

// The help names usual figures, which are those that a file without the key has, and
// bounds, which are those that are checked.
func TestHelpNamesTheFiguresOfTheFile(t *testing.T) {
	fields := helped()
	for _, key := range []string{"months", "roll_exposures", "offer.reel.leader_mm", "offer.reel.trailer_mm", "offer.reel.fogged_mm",
		"offer.reel.start_waste_mm", "offer.reel.end_waste_mm", "offer.reel.short_roll_from"} {
		names(t, key, help(key), fields[key].Default)
	}
	names(t, "months", help("months"), fields["months"].Rule.Min.String())
	names(t, "months", help("months"), fields["months"].Rule.Max.String())
}

// names complains where text does not have the number by itself.
func names(t *testing.T, what, text, number string) {
	t.Helper()
	if number == "" || !regexp.MustCompile(`\b`+regexp.QuoteMeta(number)+`\b`).MatchString(text) {
		t.Errorf("%s: %q is not named in: %s", what, number, text)
	}
}

func TestHelpExplainsTheWordsOfTheTrade(t *testing.T) {
	for key, word := range map[string]string{
		"offer.reel.leader_mm":              "leader is",
		"offer.reel.trailer_mm":             "trailer is",
		"offer.reel.fogged_mm":              "fogged end is",
		"offer.reel.pitch":                  "Perforation pitch is",
		"offer.reel.remjet":                 "Remjet is",
		"offer.reel.short_roll_from":        "short roll is",
		"offer.reel.test_exposures":         "Test exposures are",
		"offer.units":                       "landed cost, which is",
		"offer.keeps_months":                "used share, what is",
		"offer.price_rise_percent":          "Price rise is",
		"offer.on_hand":                     "on hand already",
		"offer.import":                      "collected by the seller",
		"border.duty_percent":               "Duty is",
		"border.duty_free_up_to":            "free limit: ",
		"border.tax_percent":                "Import tax is",
		"border.tax_free_up_to":             "free limit: ",
		"loading.cassette_price":            "cassette is",
		"loading.equipment.resale":          "Resale value is",
		"loading.equipment.lasts_rolls":     "rolls it lasts",
		"developing.equipment.resale":       "Resale value is",
		"developing.equipment.lasts_rolls":  "rolls it lasts",
		"developing.chemistry_price":        "Chemistry is",
		"developing.chemistry_rolls":        "Chemistry rolls are",
		"developing.chemistry_keeps_months": "keeps",
	} {
		if !strings.Contains(help(key), word) {
			t.Errorf("%s does not explain its word (%q): %s", key, word, help(key))
		}
	}
}

// Chemicals, remjet and customs are others' to judge, and nothing else is.
func TestHelpCautionsWhereItBelongs(t *testing.T) {
	for caution, keys := range map[string][]string{
		"safety data sheet": {"developing.chemistry_price"},
		"local rules":       {"developing.chemistry_keeps_months"},
		"ask your lab":      {"offer.reel.remjet", "reel.remjet"},
		"customs authority": {"border.duty_percent", "border.duty_free_up_to", "border.duty_on_shipping", "border.tax_percent"},
	} {
		want := map[string]bool{}
		for _, key := range keys {
			want[key] = true
		}
		for key := range helped() {
			if got := strings.Contains(help(key), caution); got != want[key] {
				t.Errorf("%s: %q is said: %v, want %v: %s", key, caution, got, want[key], help(key))
			}
		}
	}
}

// plainlySaid complains where a text leaves the rules of the wording.
func plainlySaid(t *testing.T, what, text string) {
	t.Helper()
	if !strings.HasSuffix(text, ".") || strings.HasSuffix(text, "..") {
		t.Errorf("%s does not end with one full stop: %s", what, text)
	}
	if strings.TrimSpace(text) != text || strings.Contains(text, "  ") {
		t.Errorf("%s has a space too many: %q", what, text)
	}
	if strings.ContainsAny(text, "!$€£—\n") {
		t.Errorf("%s has a sign that has no place in it: %s", what, text)
	}
	if regexp.MustCompile(`[^ ]%`).MatchString(text) {
		t.Errorf("%s has a percent sign without a space before: %s", what, text)
	}
	if word := regexp.MustCompile(`(?i)\b(color|meters?|e\.g|i\.e|etc|simply|just|please)\b`).FindString(text); word != "" {
		t.Errorf("%s says %q: %s", what, word, text)
	}
}
