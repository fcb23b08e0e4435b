package catalogue

import (
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

// Every key stands in the table once, under the table of the file that it is of, with its
// unit and what counts without it.
func TestTheTableNamesEveryKeyOnce(t *testing.T) {
	text, fields := Plaintext(), scenario.Fields()
	n := 0
	for _, table := range Tables() {
		if !strings.Contains(text, "\n"+table.Header+"\n") && !strings.HasPrefix(text, table.Header+"\n") {
			t.Errorf("%s has no heading", table.Header)
		}
		for _, row := range table.Rows {
			n++
			if header(row.Table) != table.Header || !strings.Contains(text, row.Told()) {
				t.Errorf("%s under %s: %q", row.Field.Key, table.Header, row.Told())
			}
			if told := row.Told(); !strings.Contains(told, string(row.Unit)) || row.Rule.Required && !strings.Contains(told, "required") {
				t.Errorf("%s: %q", row.Field.Key, told)
			}
		}
	}
	if n != len(fields) || n != strings.Count(text, "\n  ") {
		t.Errorf("%d keys in the tables, %d in the text, %d in the file", n, strings.Count(text, "\n  "), len(fields))
	}
}
