package words

import (
	"fmt"
	"strings"

	"reelworth/internal/catalogue"
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

// MendLink is what the link says that leads to what is to be mended: what a field holds and
// cannot be taken, or why the first offer is left out, or which of the faults keeps none
// out. c may be nil.
func MendLink(c *compare.Comparison, withheld bool, faults []scenario.Fault) string {
	if c == nil || withheld {
		return "Show it"
	}
	for i := range c.Offers {
		if f := c.Offers[i].Fault; f != nil && f.Why.Code == scenario.NoRate {
			return "Add the rate"
		} else if f != nil {
			return "Show it"
		}
	}
	for _, f := range faults {
		switch f.Place.Part {
		case scenario.PartRange:
			return "Take it out"
		case scenario.PartBaseline:
			return "Show it"
		}
	}
	return "Show it"
}

// leftOutReason is why the offer at place i is left out, and what would do.
func leftOutReason(c *compare.Comparison, i int) string {
	f, in := c.Offers[i].Fault, inputs(c, i)
	if in == nil {
		in = &scenario.Offer{Kind: c.Offers[i].Kind}
	}
	switch {
	case Unpriced(c, i):
		return Reason(f, in) + "."
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
	case isUnpriced(f, in):
		return "no price yet"
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
		return "Correct its fields."
	}
	return fmt.Sprintf("Correct %s.", FieldName(key, in))
}

// FieldName is what a field of an offer, or one it depends on, is called in the form.
// The key is as in the file, with or without the table it stands in; a key without a
// name of its own reads as it stands.
func FieldName(key string, in *scenario.Offer) string {
	plain := strings.TrimPrefix(catalogue.Plain(key), "offer.")
	if e, ok := catalogue.Of("offer." + plain); ok {
		return capital(e.LabelFor(UnitName(in)))
	}
	if section := catalogue.Section(plain); section != "" {
		return section
	}
	table, _, nested := strings.Cut(plain, ".")
	section := catalogue.Section(table)
	switch e, ok := catalogue.Of(plain); {
	case ok && strings.Contains(plain, ".equipment."):
		return capital(e.Label) + " of equipment under " + section
	case ok && nested && section != "":
		return capital(e.Label) + " under " + section
	case ok:
		return e.Label
	}
	return spaced(plain)
}

func spaced(key string) string {
	return strings.NewReplacer("_", " ", ".", " ").Replace(key)
}
