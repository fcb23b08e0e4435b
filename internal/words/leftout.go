package words

import (
	"fmt"
	"regexp"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

// LeftOut says of every offer that could not be computed why, and which field mends it.
func LeftOut(c *compare.Comparison) []string {
	var said []string
	for i := range c.Offers {
		if o := &c.Offers[i]; o.Fault != nil {
			said = append(said, fmt.Sprintf("Without %s: %s", Called(&c.Scenario, o.Name), leftOutReason(c, i)))
		}
	}
	return said
}

// leftOutReason is why the offer at place i is left out, and what would do.
func leftOutReason(c *compare.Comparison, i int) string {
	f, in := c.Offers[i].Fault, inputs(c, i)
	if in == nil {
		in = &scenario.Offer{Kind: c.Offers[i].Kind}
	}
	switch {
	case f.Why.Code == scenario.NoRate:
		return fmt.Sprintf("no rate for %s. Add one between %s and %s under Exchange rates.",
			f.Why.From, f.Why.From, f.Why.To)
	case f.Code == compare.FaultDeveloping:
		return Reason(f, in) + ". Choose another under Developing."
	case f.Key != "" && sayingOf(&f.Why).joins != alone:
		return Reason(f, in) + "." // it names the field already
	}
	return fmt.Sprintf("%s. %s", Reason(f, in), mend(f.Key, in))
}

// Reason is why an offer is left out, without what would do: "no rate between CAD and
// EUR", "Length is missing".
func Reason(f *compare.Fault, in *scenario.Offer) string {
	s := sayingOf(&f.Why)
	switch {
	case f.Key == "" || s.joins == alone:
		return s.wrong
	case s.joins == predicate:
		return FieldName(f.Key, in) + " " + s.wrong
	}
	return FieldName(f.Key, in) + ": " + s.wrong
}

// mend says which field to change.
func mend(key string, in *scenario.Offer) string {
	if key == "" {
		return "Mend its fields."
	}
	return fmt.Sprintf("Mend %s.", FieldName(key, in))
}

// indexes are the "[2]" of a path.
var indexes = regexp.MustCompile(`\[\d+\]`)

// FieldName is what a field of an offer, or one it depends on, is called in the form.
// The key is as in the file, with or without the table it stands in; a key without a
// name of its own reads as it stands.
func FieldName(key string, in *scenario.Offer) string {
	key = indexes.ReplaceAllString(key, "")
	for _, table := range []string{"scenario.", "offer."} {
		key = strings.TrimPrefix(key, table)
	}
	if name, ok := fieldNames[key]; ok {
		return capital(strings.ReplaceAll(name, "{unit}", unitName(in)))
	}
	table, rest, nested := strings.Cut(key, ".")
	if section, ok := fieldNames[table]; nested && ok {
		return spaced(rest) + " under " + section
	}
	return spaced(key)
}

func spaced(key string) string {
	return strings.NewReplacer("_", " ", ".", " ").Replace(key)
}

// fieldNames are the fields and sections by key; {unit} is a reel, a roll or a pack.
var fieldNames = map[string]string{
	"name":                  "Name",
	"kind":                  "Kind",
	"seller":                "Seller",
	"currency":              "Currency",
	"price":                 "Price of a {unit}",
	"units":                 "{unit}s per order",
	"on_hand":               "Already there",
	"discount_percent":      "Discount",
	"shipping":              "Shipping",
	"shipping_each_extra":   "Shipping, each further {unit}",
	"free_shipping_from":    "Free shipping from",
	"sales_tax_percent":     "Sales tax",
	"sales_tax_on_shipping": "Sales tax on shipping",
	"import":                "Import tax",
	"card_fee_percent":      "Card fee",
	"price_rise_percent":    "Price rises a year",
	"keeps_months":          "Keeps",
	"developing":            "Developing",
	"reel":                  "The reel",
	"reel.length":           "Length",
	"reel.length_unit":      "Length",
	"reel.pitch":            "Perforation",
	"reel.exposures":        "Exposures in each",
	"reel.leader_mm":        "Leader",
	"reel.trailer_mm":       "Trailer",
	"reel.fogged_mm":        "Fogged end",
	"reel.start_waste_mm":   "Lost at the start",
	"reel.end_waste_mm":     "Lost at the end",
	"reel.test_exposures":   "Test exposures",
	"reel.short_roll_from":  "Short roll from",
	"reel.spoiled_percent":  "Lost to faults",
	"reel.remjet":           "Remjet backing",
	"boxed":                 "The pack",
	"boxed.rolls_per_pack":  "Rolls in a pack",
	"boxed.exposures":       "Exposures in each",
	"boxed.spoiled_percent": "Lost to faults",
	"shooting":              "The year's shooting",
	"rolls_per_month":       "The year's shooting",
	"loading":               "Loading",
	"border":                "At the border",
	"rate":                  "Exchange rates",
}
