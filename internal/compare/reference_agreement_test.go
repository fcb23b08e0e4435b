package compare_test

import (
	"fmt"
	"reflect"
	"strings"
	"sync"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// drawnScenarios is how many random scenarios engine and reference are held against
// each other on; the same ones in every run.
const drawnScenarios = 2000

// drawn are those scenarios with the reference's answers.
var drawn = sync.OnceValues(func() (list []scenario.Scenario, answers []refComparison) {
	list = make([]scenario.Scenario, drawnScenarios)
	answers = make([]refComparison, drawnScenarios)
	for seed := range list {
		list[seed] = anyScenario.Example(seed)
		answers[seed] = reference(list[seed])
	}
	return list, answers
})

func TestEngineAgreesWithReference(t *testing.T) {
	scenarios, answers := drawn()
	disagreements := 0
	for seed, s := range scenarios {
		wrong := disagreement(s, answers[seed])
		if len(wrong) == 0 {
			continue
		}
		t.Errorf("scenario of seed %d:\n  %s\n%s", seed, strings.Join(first(wrong, 8), "\n  "), compact(s))
		if disagreements++; disagreements == 5 {
			t.Fatal("and perhaps more")
		}
	}
}

// New scenarios every time, cut down to the smallest that shows a disagreement.
func TestEngineAgreesWithReferenceOnNewScenarios(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anyScenario.Draw(t, "scenario")
		if wrong := disagreement(s, reference(s)); len(wrong) > 0 {
			t.Fatalf("%s\n%s", strings.Join(first(wrong, 8), "\n"), compact(s))
		}
	})
}

func TestEngineAgreesWithReferenceOnTheWorkedExample(t *testing.T) {
	s := quaysideByHand()
	for _, wrong := range disagreement(s, reference(s)) {
		t.Error(wrong)
	}
}

// Paid the same, but film is left of the reel: no random scenario hits this edge.
func TestReelThatCostsTheSameCashIsWorthItOnlyIfKept(t *testing.T) {
	s := quaysideByHand()
	s.Months, s.Loading, s.Developing, s.Offers = 1, scenario.Loading{CassetteLoads: 1, CassettePack: 1}, nil, []scenario.Offer{s.Offers[0], s.Offers[2]}
	boxed, reel := &s.Offers[0], &s.Offers[1]
	boxed.Developing, reel.Developing = "", ""
	boxed.Price = dec("20")
	reel.Currency, reel.Price, reel.Import = "EUR", dec("40"), scenario.ImportNone
	reel.DiscountPercent, reel.Shipping = scenario.Decimal{}, scenario.Decimal{}
	want := reference(s)
	for _, wrong := range disagreement(s, want) {
		t.Error(wrong)
	}
	v := compare.Compare(s, nil, scenario.Date{}).Verdict
	if v.Kind != compare.VerdictReelIfKept || !v.Pair.SavingCash.IsZero() || v.Pair.Saving.Sign() <= 0 {
		t.Errorf("verdict %s, cash saved %s, saved %s", v.Kind, v.Pair.SavingCash, v.Pair.Saving)
	}
}

// disagreement lists every field in which the engine's answer is not the reference's.
func disagreement(s scenario.Scenario, want refComparison) (list []string) {
	got := compare.Compare(s, nil, scenario.Date{})
	if !reflect.DeepEqual(got.Scenario, s) {
		list = append(list, "the engine changed the scenario")
	}
	var engine, reference listing
	engine.add("", reflect.ValueOf(got))
	reference.add("", reflect.ValueOf(want))
	for _, path := range engine.paths {
		theirs, there := reference.values[path]
		if !there {
			list = append(list, path+" is not in the reference")
		} else if mine := engine.values[path]; theirs != mine && !(strings.Contains(mine, "|") && strings.Contains(theirs, mine)) {
			list = append(list, fmt.Sprintf("%s: engine %s, reference %s", path, engine.values[path], theirs))
		}
	}
	for _, path := range reference.paths {
		if _, there := engine.values[path]; !there {
			list = append(list, path+" is not in the engine's answer")
		}
	}
	for i := range got.Offers {
		if i < len(want.Offers) && got.Offers[i].Fault == nil {
			list = append(list, receiptFaults(got.Offers[i], want.Offers[i])...)
		}
	}
	return list
}

// listing is every number, word and yes or no of a value, under its path.
type listing struct {
	paths  []string
	values map[string]string
}

// notCompared are fields that say no number of their own: what was read, the quote a
// step names by its index, sentences' ingredients, and the outlook, which Compare leaves
// open. Receipts are checked apart.
var notCompared = map[string]bool{"Scenario": true, "Shown": true, "Warnings": true, "Outlook": true, "Receipt": true, "Quote": true, "Reel of Cut": true}

func (l *listing) add(path string, v reflect.Value) {
	switch x := v.Interface().(type) {
	case exact.Fraction:
		l.put(path, x.Rat().RatString())
		return
	case rat:
		l.put(path, x.String())
		return
	case *compare.Fault:
		if l.put(path, ""); x != nil {
			l.values[path] = "|" + string(x.Code) + "|"
		}
		return
	}
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() {
			l.put(path, "none")
			return
		}
		l.add(path, v.Elem())
	case reflect.Slice:
		l.put(path+".length", fmt.Sprint(v.Len()))
		for i := range v.Len() {
			l.add(fmt.Sprintf("%s[%d]", path, i), v.Index(i))
		}
	case reflect.Struct:
		for i := range v.NumField() {
			f := v.Type().Field(i)
			if f.IsExported() && !notCompared[f.Name] && !notCompared[f.Name+" of "+v.Type().Name()] {
				l.add(path+"."+f.Name, v.Field(i))
			}
		}
	default:
		l.put(path, fmt.Sprint(v.Interface()))
	}
}

func (l *listing) put(path, value string) {
	if l.values == nil {
		l.values = map[string]string{}
	}
	l.paths = append(l.paths, path)
	l.values[path] = value
}

// receiptFaults checks that the receipt says the order's lines, in order, and adds up.
func receiptFaults(o compare.Offer, want refOffer) (list []string) {
	complain := func(format string, a ...any) {
		list = append(list, o.Name+" receipt: "+fmt.Sprintf(format, a...))
	}
	home, seller := want.Order.Home, want.Order.Seller
	prepaid := seller.ImportTax
	amounts := []struct {
		kind         compare.LineKind
		home, seller rat
		billed       bool
	}{
		{compare.LineFilm, home.Film, seller.Film, true},
		{compare.LineShipping, home.Shipping, seller.Shipping, true},
		{compare.LineSalesTax, home.SalesTax, seller.SalesTax, true},
		{compare.LinePrepaid, home.ImportTax, prepaid, true},
		{compare.LineCharged, want.Order.Charged, total(seller.Film, seller.Shipping, seller.SalesTax, prepaid), true},
		{compare.LineCardFee, home.CardFee, rat{}, false},
		{compare.LineDuty, home.Duty, rat{}, false},
		{compare.LineImportTax, home.ImportTax, rat{}, false},
		{compare.LineHandling, home.Handling, rat{}, false},
		{compare.LineLanded, want.Order.Landed, rat{}, false},
	}
	var sum rat
	next := 0
	for _, line := range o.Order.Receipt {
		at := -1
		for i := next; i < len(amounts); i++ {
			if amounts[i].kind == line.Kind {
				at = i
				break
			}
		}
		if at < 0 {
			complain("%s is out of order", line.Kind)
			continue
		}
		next = at + 1
		a, says := amounts[at], rat{line.Home.Rat()}
		if !says.is(a.home) {
			complain("%s says %s, not %s", line.Kind, says, a.home)
		}
		if line.Billed != a.billed && line.Kind != compare.LineCharged {
			complain("%s billed by the seller: %v", line.Kind, line.Billed)
		}
		if line.Billed && !(rat{line.Seller.Rat()}).is(a.seller) {
			complain("%s says %s in the seller's currency, not %s", line.Kind, line.Seller, a.seller)
		}
		switch line.Kind {
		case compare.LineCharged, compare.LineLanded:
			if !sum.is(says) {
				complain("the lines above %s come to %s, it says %s", line.Kind, sum, says)
			}
		default:
			sum = sum.plus(says)
		}
	}
	if next != len(amounts) {
		complain("no landed line")
	}
	return list
}

func first(list []string, n int) []string {
	return list[:min(n, len(list))]
}

// compact is a scenario in a few lines, nothing that is 0, unset or empty.
func compact(s scenario.Scenario) string {
	return strings.TrimSpace(compactValue(reflect.ValueOf(s)))
}

func compactValue(v reflect.Value) string {
	switch x := v.Interface().(type) {
	case scenario.Decimal:
		return x.String()
	case scenario.Maybe:
		if !x.Set {
			return ""
		}
		return x.Decimal.String() + " set"
	case scenario.Month, scenario.Date:
		return fmt.Sprint(x)
	case scenario.Extra:
		return ""
	}
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() {
			return ""
		}
		return compactValue(v.Elem())
	case reflect.Slice, reflect.Array:
		var parts []string
		for i := range v.Len() {
			parts = append(parts, compactValue(v.Index(i)))
		}
		if v.Len() == 0 {
			return ""
		}
		return "[" + strings.Join(parts, " ") + "]"
	case reflect.Struct:
		var parts []string
		for i := range v.NumField() {
			value := compactValue(v.Field(i))
			if value != "" && value != "0" && value != "false" {
				parts = append(parts, v.Type().Field(i).Name+"="+value)
			}
		}
		return "\n  {" + strings.Join(parts, " ") + "}"
	}
	return fmt.Sprint(v.Interface())
}
