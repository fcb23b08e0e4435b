package words

import (
	"fmt"
	"strings"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// ShootingSummary is a year's shooting in short: "43 rolls".
func ShootingSummary(s *scenario.Scenario, l money.Locale) string {
	return voice{s: s, l: l}.counted(yearShot(s), "roll")
}

// LoadingSummary is what cassettes cost, in short: "10 cassettes, 1.20 each".
func LoadingSummary(s *scenario.Scenario, l money.Locale) string {
	v := voice{s: s, l: l}
	return fmt.Sprintf("%s, %s each", v.counted(exact.Int(int64(s.Loading.CassettePack)), "cassette"),
		v.home(exact.FromDecimal(s.Loading.CassettePrice)))
}

// DevelopingSummary is how many processes there are: "2 ways".
func DevelopingSummary(s *scenario.Scenario) string {
	switch n := len(s.Developing); n {
	case 0:
		return "not counted"
	case 1:
		return "1 way"
	default:
		return fmt.Sprintf("%d ways", n)
	}
}

// BorderSummary is what is due at the border, in short: "tax 23 %, duty over 150".
func BorderSummary(s *scenario.Scenario, l money.Locale) string {
	v := voice{s: s, l: l}
	b := &s.Border
	var parts []string
	if !b.TaxPercent.IsZero() {
		parts = append(parts, "tax "+v.percent(exact.FromDecimal(b.TaxPercent)))
	}
	switch {
	case b.DutyPercent.IsZero():
	case b.DutyFreeUpTo.IsZero():
		parts = append(parts, "duty "+v.percent(exact.FromDecimal(b.DutyPercent)))
	default:
		parts = append(parts, "duty over "+v.plain(exact.FromDecimal(b.DutyFreeUpTo), 2))
	}
	if len(parts) == 0 {
		return "nothing due"
	}
	return strings.Join(parts, ", ")
}

// RatesSummary is the first quote: "1 USD = 0.8875 EUR, 20 Nov".
func RatesSummary(s *scenario.Scenario, l money.Locale) string {
	if len(s.Rates) == 0 {
		return "none"
	}
	r := s.Rates[0]
	text := voice{s: s, l: l}.quote(r.One, r.Equals, r.In)
	if r.Date != (scenario.Date{}) {
		text += ", " + dayOfYear(r.Date)
	}
	return text
}

// OfferSubtitle is what stands under an offer's name in the list: "boxed · from JPY",
// "boxed · compared with".
func OfferSubtitle(s *scenario.Scenario, o *scenario.Offer) string {
	text := string(o.Kind)
	if o.Currency != s.Home && o.Currency != "" {
		text += " · from " + o.Currency
	}
	if o.Name == s.Baseline {
		text += " · compared with"
	}
	return text
}
