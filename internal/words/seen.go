package words

import (
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// What the question about prices seen says.
const (
	SawIt      = "Saw it at another price…" // the link beside a price
	SeenTitle  = "Prices seen"
	SeenAt     = "Saw it at"
	SeenOn     = "on"
	SeenNote   = "Note"
	SeenKeep   = "Keep it"
	SeenUse    = "Put in use"
	SeenForget = "Forget"
	SeenNoDay  = "write the day as 2026-11-20"
)

// SeenFinding names the lowest and the highest price that was seen of an offer, and where
// its own stands among them: "Seen 4 times, USD 99.00 (3 May 2026) to 129.00 (1 Nov 2026);
// 3 were lower than 118.00, 1 higher."; "" where none was.
func SeenFinding(o *scenario.Offer, l money.Locale) string {
	if len(o.Seen) == 0 {
		return ""
	}
	v := voice{l: l}
	price := func(d scenario.Decimal) string { return v.bare(exact.FromDecimal(d), o.Currency) }
	var low, high *scenario.Seen
	lower, higher := 0, 0
	for _, i := range o.SeenPlaces() {
		p := &o.Seen[i]
		if low == nil || p.Price.LessThan(low.Price) {
			low = p
		}
		if high == nil || high.Price.LessThan(p.Price) {
			high = p
		}
		switch p.Price.Cmp(o.Price) {
		case -1:
			lower++
		case 1:
			higher++
		}
	}
	text := fmt.Sprintf("Seen once, at %s on %s", l.Amount(exact.FromDecimal(low.Price), o.Currency), Day(low.Date))
	if len(o.Seen) > 1 {
		text = fmt.Sprintf("Seen %d times, %s (%s) to %s (%s)", len(o.Seen),
			l.Amount(exact.FromDecimal(low.Price), o.Currency), Day(low.Date), price(high.Price), Day(high.Date))
	}
	return sentence(text + "; " + seenPlace(len(o.Seen), lower, higher, price(o.Price)))
}

// seenPlace says where a price stands among those seen.
func seenPlace(all, lower, higher int, price string) string {
	switch {
	case all == 1 && lower == 1:
		return "lower than " + price
	case all == 1 && higher == 1:
		return "higher than " + price
	case lower == 0 && higher == 0:
		return "the same as " + price
	case lower == 0:
		return "none was lower than " + price
	case higher == 0:
		return "none was higher than " + price
	}
	return fmt.Sprintf("%s lower than %s, %d higher", wasOrWere(lower), price, higher)
}

func wasOrWere(n int) string {
	if n == 1 {
		return "1 was"
	}
	return fmt.Sprintf("%d were", n)
}

// SeenLine is one price that was seen, in a list: "USD 99.00 on 3 May 2026, in a sale".
func SeenLine(o *scenario.Offer, i int, l money.Locale) string {
	p := &o.Seen[i]
	text := fmt.Sprintf("%s on %s", l.Amount(exact.FromDecimal(p.Price), o.Currency), Day(p.Date))
	if p.Note != "" {
		text += ", " + p.Note
	}
	return text
}
