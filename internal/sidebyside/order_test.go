package sidebyside

import (
	"math/big"
	"slices"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/scenario"
)

// priced is the demo under another name, its shop roll at a price in another home
// currency.
func priced(t testing.TB, name, home, price string) Entry {
	s := demo()
	s.Name = name
	for i := range s.Offers {
		if s.Offers[i].Boxed != nil {
			s.Offers[i].Price = decimal.RequireFromString(price)
		}
	}
	e := entry(t, s, nil, "", nil)
	if home != s.Home {
		e.Comparison.Scenario.Home = home // as if; only how they are put in order is looked at
	}
	return e
}

func names(list []Entry) (names []string) {
	for i := range list {
		names = append(names, list[i].Scenario)
	}
	return names
}

func TestAmountsOfOneCurrencyStandTogether(t *testing.T) {
	list := []Entry{
		{Scenario: "broken", Fault: "…"}, priced(t, "b", "EUR", "30"), priced(t, "c", "AUD", "20"), priced(t, "a", "EUR", "20"), priced(t, "d", "AUD", "10"),
	}
	Order(list, ByBoxed, false)
	if want := []string{"d", "c", "a", "b", "broken"}; !slices.Equal(names(list), want) {
		t.Error(names(list), want)
	}
	Order(list, ByBoxed, true)
	if want := []string{"b", "a", "c", "d", "broken"}; !slices.Equal(names(list), want) {
		t.Error(names(list), want)
	}
	Order(list, ByName, false)
	if want := []string{"a", "b", "broken", "c", "d"}; !slices.Equal(names(list), want) {
		t.Error(names(list), want)
	}
}

// Whatever they are put in order by, nobody is lost, nobody new is there, what has nothing
// to go by is last, and amounts in the common currency rise.
func TestAnOrderLosesNobody(t *testing.T) {
	base := []Entry{
		{Scenario: "broken", Fault: "…"}, {File: "nowhere.toml", Fault: "…"},
		priced(t, "b", "EUR", "30"), priced(t, "a", "EUR", "9"), priced(t, "c", "EUR", "20"), entry(t, oneKind(), nil, "", nil),
	}
	rapid.Check(t, func(t *rapid.T) {
		list := rapid.Permutation(base).Draw(t, "list")
		by, down := Key(rapid.IntRange(int(ByFile), int(ByRollsAYear)).Draw(t, "by")), rapid.Bool().Draw(t, "down")
		for i := range list {
			list[i].Into = Into{}
			if list[i].Comparison != nil {
				list[i].Into = into(&list[i].Comparison.Scenario, nil, "USD", nil)
			}
		}
		was := names(list)
		Order(list, by, down)
		now := names(list)
		slices.Sort(was)
		if sorted := slices.Sorted(slices.Values(now)); !slices.Equal(was, sorted) {
			t.Fatalf("%v has become %v", was, now)
		}
		ended := false
		var last *big.Rat
		for i := range list {
			p := placeOf(&list[i], by)
			if p.known && ended {
				t.Fatalf("%v: one with nothing to go by is not last", now)
			}
			ended = ended || !p.known
			if by == ByReel && p.known {
				amount := list[i].Into.Of(list[i].Reel().PerRoll.Total).Rat()
				if last != nil && (amount.Cmp(last) < 0) != down && amount.Cmp(last) != 0 {
					t.Fatalf("%v: %s after %s", now, amount, last)
				}
				last = amount
			}
		}
	})
}

// oneKind is a scenario without a reel.
func oneKind() scenario.Scenario {
	s := demo()
	s.Name, s.Offers = "one kind", s.Offers[:1]
	return s
}

func TestAFileHasAnEntryForEachScenario(t *testing.T) {
	file := scenario.File{Scenarios: []scenario.Scenario{demo(), oneKind()}}
	q := Question{Empty: "nothing in it", Word: func(src Source, f scenario.Fault) string { return src.Name + ": " + string(f.Code) }}
	list, err := q.Of(t.Context(), 2, Source{Name: "a.toml", File: file, Faults: []scenario.Fault{
		{Code: scenario.MissingTable, Place: scenario.Place{Part: scenario.PartWhole, Scenario: 1}},
	}})
	if err != nil || len(list) != 2 || list[0].Comparison == nil || list[1].Comparison != nil ||
		list[1].Fault != "a.toml: "+string(scenario.MissingTable) || list[1].Scenario != "one kind" || list[1].File != "a.toml" {
		t.Errorf("%+v, %v", list, err)
	}
	list, err = q.Of(t.Context(), 2, Source{Name: "b.toml"})
	if err != nil || len(list) != 1 || list[0].Fault != "nothing in it" {
		t.Errorf("%+v, %v", list, err)
	}
}
