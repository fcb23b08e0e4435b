package money

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/bojanz/currency"
	"github.com/shopspring/decimal"
	second "golang.org/x/text/currency"

	"reelworth/internal/exact"
)

// unlikeTwo are the minor units of ISO 4217 that are not two digits, written down from
// memory of its list one; every other code in use has two.
var unlikeTwo = map[int]string{
	0: "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF",
	3: "BHD IQD JOD KWD LYD OMR TND",
}

func TestMinorUnitsAreThoseOfISO4217(t *testing.T) {
	for _, code := range Codes() {
		want := 2
		for digits, list := range unlikeTwo {
			if slices.Contains(strings.Fields(list), code) {
				want = digits
			}
		}
		got, ok := Digits(code)
		library, known := currency.GetDigits(code)
		if !ok || got != want || !known || int(library) != want {
			t.Errorf("%s: %d digits, bojanz/currency %d, ISO 4217 %d", code, got, library, want)
		}
	}
	for _, list := range unlikeTwo {
		for _, code := range strings.Fields(list) {
			if _, ok := Digits(code); !ok {
				t.Errorf("%s is missing", code)
			}
		}
	}
}

// Where golang.org/x/text/currency says otherwise, and why. It holds CLDR 32 of 2017.
// CLDR gives no digits to currencies whose coins went out of use, ISO 4217 still does,
// and banks and card statements keep to ISO.
var otherDigits = map[string]int{
	"AFN": 0, "ALL": 0, "AMD": 0, "COP": 0, "GYD": 0, "IDR": 0, "IQD": 0, "IRR": 0, "KPW": 0, "LAK": 0, "LBP": 0, "MGA": 0,
	"MMK": 0, "MNT": 0, "MUR": 0, "PKR": 0, "RSD": 0, "SOS": 0, "SYP": 0, "TZS": 0, "UZS": 0, "YER": 0,
}

// Codes that are younger than that table.
var younger = map[string]string{
	"MRU": "Mauritania, from 2018", "VES": "Venezuela, from 2018", "VED": "Venezuela, from 2021",
	"SLE": "Sierra Leone, from 2022", "ZWG": "Zimbabwe, from 2024", "XCG": "Curaçao and Sint Maarten, from 2025",
}

func TestSecondOpinionOnMinorUnits(t *testing.T) {
	for _, code := range Codes() {
		digits, _ := Digits(code)
		unit, err := second.ParseISO(code)
		if _, isYoung := younger[code]; isYoung != (err != nil) {
			t.Errorf("%s: known to x/text: %v, listed as younger: %v", code, err == nil, isYoung)
		}
		if err != nil {
			continue
		}
		theirs, _ := second.Standard.Rounding(unit)
		listed, differs := otherDigits[code]
		if differs != (theirs != digits) || differs && listed != theirs {
			t.Errorf("%s: %d digits, x/text says %d; listed as different: %v", code, digits, theirs, differs)
		}
	}
}

// What was legal tender in 2017, by x/text, and is no code in use today.
var gone = map[string]string{
	"ANG": "XCG since 2025", "BGN": "EUR since 2026", "CUC": "withdrawn in 2021", "HRK": "EUR since 2023",
	"MRO": "MRU since 2018", "SLL": "SLE since 2022", "STD": "STN since 2018", "VEF": "VES since 2018",
}

func TestNoCurrencyInUseIsMissing(t *testing.T) {
	tender := map[string]bool{}
	for i := second.Query(second.Date(time.Date(2017, 9, 1, 0, 0, 0, 0, time.UTC))); i.Next(); {
		if i.IsTender() {
			tender[i.Unit().String()] = true
		}
	}
	if len(tender) < 150 {
		t.Errorf("only %d currencies to compare with", len(tender))
	}
	for code := range tender {
		_, ok := Digits(code)
		if _, isGone := gone[code]; ok == isGone {
			t.Errorf("%s was tender in 2017; in use today: %v, listed as gone: %v", code, ok, isGone)
		}
	}
	for code := range gone {
		if !tender[code] {
			t.Errorf("%s need not be listed as gone", code)
		}
	}
}

func TestCodesAreOfMoneyPeoplePayIn(t *testing.T) {
	list := Codes()
	if len(list) != 155 || !slices.IsSorted(list) {
		t.Errorf("%d codes, sorted: %v", len(list), slices.IsSorted(list))
	}
	for _, code := range append(slices.Clone(notPaidIn), "XAU", "XAG", "XPT", "XPD", "XDR", "XSU", "XUA", "XBA", "XTS", "XXX",
		"DEM", "FRF", "BGN", "HRK", "ANG", "", "eur", "EURO") {
		if n, ok := Digits(code); ok || n != 0 || slices.Contains(list, code) {
			t.Errorf("%q is taken for a currency in use", code)
		}
	}
	for _, code := range notPaidIn {
		if !currency.IsValid(code) {
			t.Errorf("%s need not be left out: the library does not know it", code)
		}
	}
	list[0] = "changed"
	if Codes()[0] == "changed" {
		t.Error("Codes hands out its own slice")
	}
}

// Every currency that CLDR writes with a bare dollar sign in its own country shares "$".
func TestDollarSignNamesAllItsCurrencies(t *testing.T) {
	for _, l := range locales {
		for _, country := range countries {
			code, _ := currency.ForCountryCode(country)
			sign, ok := currency.GetSymbol(code, currency.Locale{Language: string(l), Territory: country})
			if _, paid := Digits(code); ok && paid && sign == "$" && !slices.Contains(symbols["$"], code) {
				t.Errorf("%s is written $ in %s-%s", code, l, country)
			}
		}
	}
	for sign, list := range symbols {
		for _, code := range list {
			if _, ok := Digits(code); !ok {
				t.Errorf("%s names %s, which is not in use", sign, code)
			}
		}
		if plainly, _ := plain(sign); squeeze(plainly) != sign {
			t.Errorf("%q cannot be met", sign)
		}
	}
}

// countries are all two-letter codes that the library knows a currency for.
var countries = func() (list []string) {
	for a := 'A'; a <= 'Z'; a++ {
		for b := 'A'; b <= 'Z'; b++ {
			if _, ok := currency.ForCountryCode(string([]rune{a, b})); ok {
				list = append(list, string([]rune{a, b}))
			}
		}
	}
	return list
}()

func TestRoundToTheMinorUnit(t *testing.T) {
	for _, c := range []struct{ in, code, want string }{
		{"57.675", "EUR", "57.68"}, {"-57.675", "EUR", "-57.68"}, {"57.674999999999999999", "EUR", "57.67"},
		{"14800.5", "JPY", "14801"}, {"14800.4", "JPY", "14800"}, {"1.2345", "KWD", "1.235"}, {"0.004", "USD", "0"},
		{"1.005", "???", "1.01"},
	} {
		if got := Round(exact.FromDecimal(decimal.RequireFromString(c.in)), c.code).String(); got != c.want {
			t.Errorf("%s %s = %s, want %s", c.code, c.in, got, c.want)
		}
	}
}
