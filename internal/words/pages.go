package words

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// The pages of the answer.
const (
	PageCharts  = "Charts"
	PageReceipt = "Receipt"
	PageChanges = "What changes it"
	PageSizes   = "Order and cut"
	PageTables  = "Tables"
)

// PageNotes is the page of what is left out and warned of, with how many notes it has.
func PageNotes(n int) string {
	if n == 0 {
		return "Notes"
	}
	return fmt.Sprintf("Notes (%d)", n)
}

// What stands on a page that has nothing to show, and its links.
const (
	NoNotes       = "Nothing to point out."
	NothingToSize = "Choose a way to buy that can be computed."
	LinkRange     = "Set how far a figure may go…"
	Copied        = "Copied, to paste into a spreadsheet"
)

// WithoutFields says which fields hold what could not be taken into the answer.
func WithoutFields(fields []string) string {
	return "What stands in these fields is not in the answer: " + strings.Join(fields, ", ") + "."
}

// ChangesIntro says which two offers the page of what changes the answer is about, and
// what of one of them is best known beside the flips. p is nil where there are not two.
func ChangesIntro(c *compare.Comparison, p *compare.PairOutlook, l money.Locale) string {
	if p == nil {
		return "Nothing to compare yet: add a reel and a boxed roll that can be computed."
	}
	text := Pairing(p) + "."
	if len(compare.Crossings(p.Flips)) == 0 {
		return join(text, "No single figure changes the answer within ten times what it is today.")
	}
	text = join(text, "One figure changed, everything else as it is; the nearest first.")
	if o := c.Find(p.Offer); o != nil && o.Against != nil && p.Other == c.Scenario.Baseline {
		text = join(text, Payback(&c.Scenario, o.Against, l))
		text = join(text, Ceiling(c, p.Offer, c.Outlook.Of(p.Offer).Ceiling, l))
	}
	return text
}

// BestOrder says which size of order is the best for an offer, and why.
func BestOrder(c *compare.Comparison, o *scenario.Offer, size compare.OrderSize, l money.Locale) string {
	return fmt.Sprintf("Best: %s in one order: %s.", Units(size.Units, o), SizeReason(c, size, l))
}

// LinkOrder takes the size of an order into the offer.
func LinkOrder(units int, o *scenario.Offer) string {
	return fmt.Sprintf("Order %s at a time", Units(units, o))
}

// What stands beside the faults of a file that cannot be computed at all.
const (
	LinkReadAgain = "Read it again"
	LinkGoBack    = "Back to what was open"
)

// FaultsTitle says how many faults a file has.
func FaultsTitle(file string, n int) string {
	if n == 1 {
		return file + " has a fault"
	}
	return fmt.Sprintf("%s has %d faults", file, n)
}

// FaultsHint says what to do about a file with faults.
func FaultsHint(path string) string {
	return path + ": nothing in it was changed. Correct it in a text editor, then read it again."
}

// FaultPlace is where a fault is: "line 7: offer[1].price".
func FaultPlace(f scenario.Fault) string {
	if f.Line == 0 {
		return f.Path
	}
	return fmt.Sprintf("line %d: %s", f.Line, f.Path)
}
