package money

import (
	"maps"
	"slices"
	"strings"

	"github.com/bojanz/currency"
)

// everyday are the signs in use on price lists beside those of CLDR, with the currencies
// that share each, the likeliest first. A sign alone names a country's currency only
// where it does everywhere: £ is taken as GBP, since the other pounds are at par with it
// (FKP, GIP, SHP) or are written with a letter (E£, L£).
var everyday = map[string][]string{
	"$": {"USD", "CAD", "AUD", "NZD", "HKD", "SGD", "TWD", "MXN",
		"ARS", "BBD", "BMD", "BND", "BSD", "BZD", "CLP", "COP", "CUP", "DOP", "FJD", "GYD", "JMD", "KYD", "LRD",
		"NAD", "SBD", "SRD", "TTD", "UYU", "XCD"},
	"¥":   {"JPY", "CNY"},
	"kr":  {"SEK", "NOK", "DKK", "ISK"},
	"kr.": {"DKK", "ISK", "SEK", "NOK"},
	"Skr": {"SEK"}, "Nkr": {"NOK"}, "Dkr": {"DKK"},
	"₩": {"KRW", "KPW"}, "元": {"CNY", "TWD", "HKD"}, "円": {"JPY"}, "RMB": {"CNY"}, "yen": {"JPY"},
	"C$": {"CAD", "NIO"}, "CA$": {"CAD"}, "CAN$": {"CAD"}, "A$": {"AUD"}, "AU$": {"AUD"}, "US$": {"USD"}, "U$S": {"USD"},
	"NZ$": {"NZD"}, "HK$": {"HKD"}, "S$": {"SGD", "SRD"}, "SG$": {"SGD"}, "NT$": {"TWD"}, "MX$": {"MXN"}, "R$": {"BRL"},
	"€": {"EUR"}, "euro": {"EUR"}, "euros": {"EUR"}, "£": {"GBP"}, "stg": {"GBP"}, "GB£": {"GBP"}, "UK£": {"GBP"},
	"Fr": {"CHF"}, "Fr.": {"CHF"}, "SFr": {"CHF"}, "SFr.": {"CHF"}, "zł": {"PLN"}, "Kč": {"CZK"}, "Ft": {"HUF"},
	"lei": {"RON", "MDL"}, "₺": {"TRY"}, "₴": {"UAH"}, "₽": {"RUB"}, "₹": {"INR"},
	"Rs": {"INR", "PKR", "LKR", "NPR", "MUR"}, "Rs.": {"INR", "PKR", "LKR", "NPR", "MUR"}, "₨": {"PKR", "LKR", "NPR", "MUR", "INR"},
	"R": {"ZAR"}, "RM": {"MYR"}, "Rp": {"IDR"}, "฿": {"THB"}, "₪": {"ILS"}, "₫": {"VND"}, "₱": {"PHP"}, "S/": {"PEN"},
}

// symbols are everyday and CLDR's signs in the locales known here, each as plain and
// squeeze leave it; lower holds the same in lower case.
var symbols, lower = func() (m, lower map[string][]string) {
	m = map[string][]string{}
	add := func(sign, code string) {
		if s, _ := plain(sign); !slices.Contains(m[squeeze(s)], code) {
			m[squeeze(s)] = append(m[squeeze(s)], code)
		}
	}
	for sign, list := range everyday {
		for _, code := range list {
			add(sign, code)
		}
	}
	for _, code := range codes {
		for _, l := range locales {
			if sign, ok := currency.GetSymbol(code, currency.NewLocale(string(l))); ok && sign != code {
				add(sign, code)
			}
		}
	}
	lower = map[string][]string{}
	for _, sign := range slices.Sorted(maps.Keys(m)) {
		for _, code := range m[sign] {
			if k := strings.ToLower(sign); !slices.Contains(lower[k], code) {
				lower[k] = append(lower[k], code)
			}
		}
	}
	return m, lower
}()

// at are the currencies whose sign a locale's people write bare.
var at = map[Locale]string{"sv": "SEK", "ja": "JPY"}

// currencies are those that stand before and after a number, what both have in common if
// both are there; none if nothing is there. Errors: *Unreadable.
func (l Locale) currencies(p parts) ([]string, error) {
	var list []string
	for _, sign := range []string{p.front, p.back} {
		if sign == "" {
			continue
		}
		found := named(sign)
		if found == nil {
			return nil, l.unknown(p.text, sign)
		}
		if list != nil {
			found = slices.DeleteFunc(slices.Clone(found), func(c string) bool { return !slices.Contains(list, c) })
			if len(found) == 0 {
				return nil, l.unreadable(p.text, TwoCurrencies, p.front, p.back)
			}
		}
		list = found
	}
	if i := slices.Index(list, at[l]); i > 0 {
		list = append([]string{at[l]}, slices.Delete(slices.Clone(list), i, i+1)...)
	}
	return slices.Clone(list), nil
}

// named are the currencies of a code or a sign.
func named(sign string) []string {
	if list, ok := symbols[sign]; ok {
		return list
	}
	if code := strings.ToUpper(sign); len(code) == 3 {
		if _, ok := Digits(code); ok {
			return []string{code}
		}
	}
	return lower[strings.ToLower(sign)]
}

func (l Locale) unknown(text, sign string) error {
	if code := strings.ToUpper(sign); len(code) == 3 && strings.Trim(code, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == "" {
		return l.unreadable(text, NoSuchCode, code)
	}
	return l.unreadable(text, NoSuchSign, sign)
}
