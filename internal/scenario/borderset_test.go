package scenario

import (
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// anyBorderSet is a set that may be kept.
func anyBorderSet(t *rapid.T, name string) BorderSet {
	yes := rapid.Bool()
	return BorderSet{
		Name: name, Date: Date{Year: rapid.IntRange(1990, 2100).Draw(t, "year"), Month: 2, Day: rapid.IntRange(1, 28).Draw(t, "day")},
		Source: rapid.StringN(0, 60, -1).Filter(func(s string) bool { return !strings.ContainsRune(s, 0) }).Draw(t, "source"), Currency: rapid.SampledFrom([]string{"EUR", "AUD", "JPY"}).Draw(t, "currency"),
		Border: Border{
			DutyPercent: anyNumber(t, "duty"), DutyFreeUpTo: anyNumber(t, "duty free"), DutyOnShipping: yes.Draw(t, "duty on shipping"),
			TaxPercent: anyNumber(t, "tax"), TaxFreeUpTo: anyNumber(t, "tax free"), TaxOnShipping: yes.Draw(t, "tax on shipping"),
			HandlingFee: anyNumber(t, "handling"),
		},
	}
}

// What is kept is read again as it was, number for number, also after another was added to
// a file that a person wrote into: their comments and keys stay.
func TestBorderSetsAreReadAsTheyWereKept(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first, second := anyBorderSet(t, "By post"), anyBorderSet(t, "By courier")
		text := UpdateBorderSets(nil, BorderSets{Sets: []BorderSet{first}})
		const own = "# asked at the counter\ndesk = \"3\"\n"
		text = append(text, own...) // of the last table
		was, faults := ReadBorderSets(text)
		if len(faults) > 0 {
			t.Fatalf("%v in\n%s", faults, text)
		}
		was.Sets = append(was.Sets, second)
		text = UpdateBorderSets(text, was)
		now, faults := ReadBorderSets(text)
		if len(faults) > 0 || len(now.Sets) != 2 || !strings.Contains(string(text), own) {
			t.Fatalf("%v in\n%s", faults, text)
		}
		now.Sets[0].Border.Extra = nil
		for i, want := range []BorderSet{first, second} {
			if got := now.Sets[i]; !HasBorderSet(&Scenario{Home: want.Currency, Border: got.Border}, &want) || got.Name != want.Name || got.Date != want.Date || got.Source != want.Source {
				t.Fatalf("kept %+v\nread %+v in\n%s", want, got, text)
			}
		}
	})
}

func TestWhatIsWrongWithBorderSetsIsSaid(t *testing.T) {
	for text, want := range map[string]Code{
		"schema = 1\n[[set]]\nname = \"a\"\ncurrency = \"EUR\"\n[set.border]\ntax_percent = \"-1\"\n": BelowMin,
		"schema = 1\n[[set]]\nname = \"a\"\n": Missing,
		"schema = 99\n":                       NewerSchema,
		"schema = 1\nset = \"x\"":             NotTables,
		"schema = \n":                         NotTOMLNoValue,
		"schema = 1\n[[set]]\nname = \"a\"\ncurrency = \"EUR\"\n[set.border]\n[[set]]\nname = \"a\"\ncurrency = \"EUR\"\n[set.border]\n": NameTaken,
	} {
		if _, faults := ReadBorderSets([]byte(text)); len(faults) == 0 || faults[0].Code != want {
			t.Errorf("%q: %v, want %s", text, faults, want)
		}
	}
	if sets, faults := ReadBorderSets(nil); len(faults) > 0 || len(sets.Sets) > 0 {
		t.Error("no file is no fault:", faults)
	}
}

// A scenario's own keys in its border stay when a set takes the place of the rest.
func TestASetLeavesKeysOfTheScenario(t *testing.T) {
	s := Demo().Scenarios[0].Clone()
	s.Border.Extra = Extra{"asked": "yes"}
	set := BorderSetOf(&s, "mine", Date{}, "")
	set.Border.TaxPercent = set.Border.TaxPercent.Add(set.Border.TaxPercent)
	next := WithBorderSet(s, set)
	if !reflect.DeepEqual(next.Border.Extra, s.Border.Extra) || !next.Border.TaxPercent.Equal(set.Border.TaxPercent) || s.Border.TaxPercent.Equal(set.Border.TaxPercent) {
		t.Errorf("%+v of %+v", next.Border, s.Border)
	}
}
