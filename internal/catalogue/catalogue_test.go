package catalogue

import (
	"flag"
	"os"
	"regexp"
	"strings"
	"testing"

	"reelworth/internal/scenario"
)

// Every field of the file has its entry, in the order of the file, and no entry is for
// another.
func TestTheCatalogueIsOfTheFieldsOfTheFile(t *testing.T) {
	fields := map[string]bool{RollsAYear: true, RollsAMonth: true, SeasonFrom: true, SeasonUntil: true}
	for _, row := range Rows() {
		key := Plain(strings.TrimPrefix(row.Table+"."+row.Field.Key, "."))
		fields[key] = true
		if row.Entry.Key != key || row.Label == "" || row.Called == "" || row.What == "" {
			t.Errorf("%s has no whole entry in the catalogue: %+v", key, row.Entry)
		}
	}
	for _, e := range entries {
		if !fields[e.Key] {
			t.Errorf("%s is no field of the file", e.Key)
		}
	}
	if len(byKey) != len(entries) {
		t.Error("two entries of one key")
	}
}

// A key that ends in its unit has that unit, and so has every percent.
func TestUnitsAreThoseOfTheKeys(t *testing.T) {
	for _, e := range entries {
		for ending, unit := range map[string]Unit{"_percent": Percent, "_mm": MM, "_months": Months, "_rolls": Rolls, "exposures": Exposures} {
			if strings.HasSuffix(e.Key, ending) && e.Unit != unit {
				t.Errorf("%s is in %q", e.Key, e.Unit)
			}
		}
		if strings.Contains(e.Key, "minutes_") != (e.Unit == Minutes) {
			t.Errorf("%s is in %q", e.Key, e.Unit)
		}
	}
}

func TestAKeyIsFoundAsFaultsAndFormsNameIt(t *testing.T) {
	for key, want := range map[string]string{
		"offer[3].reel.leader_mm": "leader", "scenario.offer.price": "price", "scenario.name": "name of the scenario",
		"developing[12].equipment[40].resale": "resale value", "months": "months to look ahead", "price": "", "offer": "", "": "",
	} {
		if e, known := Of(key); e.Called != want || known != (want != "") {
			t.Errorf("%s is called %q", key, e.Called)
		}
	}
}

// Within a sentence nothing begins with a capital, and in a form nothing but what goes on
// from the row above begins without one.
func TestNamesBeginAsTheirPlaceAsks(t *testing.T) {
	goesOn := map[string]bool{"on shipping too": true, "sold by": true, "develops": true, "each further {unit}": true, "in": true, "{unit}s per order": true, "until": true}
	for _, e := range entries {
		if strings.ToLower(e.Called[:1]) != e.Called[:1] {
			t.Errorf("%s: %q", e.Key, e.Called)
		}
		if strings.ToUpper(e.Label[:1]) != e.Label[:1] && !goesOn[e.Label] {
			t.Errorf("%s: %q", e.Key, e.Label)
		}
	}
}

var regen = flag.Bool("regen", false, "put the table of keys into the README")

func TestTheReadmeHasTheTableOfKeys(t *testing.T) {
	const name = "../../README.md"
	readme, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	there := regexp.MustCompile(`(?m)^\| table \|.*\n(\|.*\n)*`).FindString(string(readme))
	if there == Markdown() {
		return
	}
	if !*regen || there == "" {
		t.Fatal("the README's table of keys is not the catalogue's; run this test with -regen")
	}
	if err := os.WriteFile(name, []byte(strings.Replace(string(readme), there, Markdown(), 1)), 0o644); err != nil {
		t.Fatal(err)
	}
}

func TestTheTableNamesEveryKeyOnce(t *testing.T) {
	for _, table := range []string{Markdown(), Plaintext()} {
		for _, f := range scenario.Fields() {
			if !strings.Contains(table, f.Key) {
				t.Errorf("%s of %s is not in the table", f.Key, f.Table)
			}
		}
	}
}
