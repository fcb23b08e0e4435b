package words

import (
	"fmt"
	"strings"

	"reelworth/internal/scenario"
)

// What the sheets of a spreadsheet are called.
const (
	SheetComparison = "Comparison"
	SheetInputs     = "Inputs"
	SheetMonths     = "Months"
)

// What the sheet of inputs says.
const (
	SheetInputsSay    = "Shaded cells may be changed: everything else in this file follows. An empty cell means: not set."
	SheetChanged      = "changed"
	SheetUnchanged    = "–"
	SheetChangedCount = "inputs changed"
)

// SheetInputsHead heads the columns of the inputs.
func SheetInputsHead() []string {
	return []string{"what", "value", "unit", "name in formulas", "as exported", ""}
}

// What a receipt's lines are called in a spreadsheet.
const (
	SheetOrder          = "What one order costs"
	SheetSellerFilm     = "film, as the seller bills it"
	SheetSellerShipping = "shipping, as the seller bills it"
	SheetSellerTax      = "sales tax, as the seller bills it"
	SheetSellerImport   = "import tax the seller collects"
	SheetChargedLine    = "charged, in all"
	SheetShipping       = "shipping"
	SheetSalesTax       = "sales tax"
	SheetPrepaid        = "import tax, collected by the seller"
	SheetFilm           = "film: what is left of the charge"
	SheetCardFee        = "card fee"
	SheetDuty           = "duty"
	SheetImportTax      = "import tax at the border"
	SheetHandling       = "handling"
	SheetLanded         = "landed"
)

// What a yield's lines are called in a spreadsheet.
const (
	SheetYield       = "What one unit gives"
	SheetFrame       = "one frame"
	SheetEnds        = "leader, trailer and fogged end"
	SheetRollLength  = "one cassette's film"
	SheetUsable      = "usable film"
	SheetFullRolls   = "full rolls"
	SheetLeftOfReel  = "left beyond the full rolls"
	SheetShortFits   = "exposures that fit in it"
	SheetShortRoll   = "exposures of the short roll"
	SheetCassettes   = "cassettes"
	SheetExposures   = "exposures"
	SheetGood        = "good exposures"
	SheetStandard    = "standard rolls"
	SheetDemandMonth = "shot in a month, on average"
	SheetUsedShare   = "share of an order used in time"
	SheetEffective   = "cassettes a set of chemistry develops"
)

// What the lines of the cost of a roll and of the months' sum are called.
const (
	SheetPerRoll         = "What a standard roll costs"
	SheetTotalPerRoll    = "a roll, in all"
	SheetPerExposure     = "an exposure"
	SheetYear            = "What the months come to"
	SheetCash            = "cash"
	SheetFilmLeft        = "good exposures left"
	SheetFilmLeftRolls   = "rolls left"
	SheetFilmLeftCost    = "what their order had cost"
	SheetFilmLeftUsed    = "used of that order"
	SheetFilmLeftFuture  = "used of what is left, within two years"
	SheetFilmLeftValue   = "worth of the film left"
	SheetLoadsLeft       = "cassette loads left"
	SheetLoadsLeftCost   = "what their cassettes had cost"
	SheetLoadsLeftUsed   = "used of those loads"
	SheetLoadsLeftFuture = "used of the loads left, within two years"
	SheetLoadsLeftValue  = "worth of the loads left"
	SheetBathLeft        = "cassettes the chemistry left develops"
	SheetBathLeftCost    = "what its sets had cost"
	SheetBathLeftUsed    = "used of those sets"
	SheetBathLeftFuture  = "used of the chemistry left, in time"
	SheetBathLeftValue   = "worth of the chemistry left"
	SheetEquipmentLeft   = "worth of the equipment"
	SheetTime            = "time"
	SheetYearCost        = "all counted"
	SheetDevelopingSide  = "of it, developing"
	SheetFilmSide        = "of it, film"
	SheetThrownAway      = "rolls thrown away"
)

// SheetMonthsSay explains the sheet of months.
const SheetMonthsSay = "Each way to buy alone serves all that is shot. The grey rows below the months are the two years in which what is left may be used."

// SheetMonthsHead heads the columns of the months.
func SheetMonthsHead() []string {
	return []string{"month", "number", "exposures shot", "cassettes", "price of a unit",
		SheetSellerFilm, SheetSellerShipping, SheetSellerTax, SheetSellerImport, SheetChargedLine, SheetShipping, SheetSalesTax, SheetPrepaid,
		SheetFilm, SheetCardFee, SheetDuty, SheetImportTax, SheetHandling, SheetLanded,
		"too old", "film there", "orders", "film left", "of month",
		"loads there", "packs bought", "loads left", "of month",
		"chemistry there", "sets bought", "chemistry left", "of month",
		"equipment", "per cassette", "of it, developing", "cash", "cash so far"}
}

// What the comparison says in a spreadsheet.
const (
	SheetKept       = "as the program computed it"
	SheetNoLonger   = "no longer follows: an input was changed"
	SheetFinding    = "The program's finding"
	SheetProgram    = "the program's figure"
	SheetCheck      = "check"
	SheetCostChart  = "What a standard roll costs"
	SheetSpendChart = "Cash spent, month by month"
)

// SheetStaysHome says why amounts are not in the currency that the program shows.
func SheetStaysHome(home, shown string) string {
	return fmt.Sprintf("Amounts are in %s, not in %s as the program shows them: the formulas go by what was typed.", home, shown)
}

// SheetComparisonHead heads the columns of the comparison after the parts of a roll's
// cost; against is what the offers are compared with.
func SheetComparisonHead() []string {
	return []string{SheetTotalPerRoll, "cash", "all counted", "saved a roll", "saved, cash", "saved, all counted",
		SheetProgram + ": a roll", SheetProgram + ": all counted", SheetCheck}
}

// SheetLabel is what a key of the file is called in a spreadsheet.
func SheetLabel(key string) string { return strings.ReplaceAll(key, "_", " ") }

// SheetRate heads the inputs of a rate: "1 USD in EUR".
func SheetRate(r scenario.Rate) string { return "1 " + r.One + " in " + r.In }

// moneyKeys are the keys that hold money.
var moneyKeys = map[string]bool{"price": true, "resale": true, "duty_free_up_to": true, "tax_free_up_to": true, "handling_fee": true,
	"cassette_price": true, "consumables_per_roll": true, "hourly_value": true, "chemistry_price": true, "extra_per_roll": true,
	"shipping": true, "shipping_each_extra": true, "free_shipping_from": true, "equals": true}

// SheetUnit is the unit of a key's figure, money being in the currency given; "" for a
// count or a choice.
func SheetUnit(key, currency string) string {
	switch {
	case moneyKeys[key]:
		return currency
	case strings.HasSuffix(key, "_percent"):
		return "%"
	case strings.HasSuffix(key, "_mm"):
		return "mm"
	case strings.HasSuffix(key, "_months"):
		return "months"
	case strings.HasPrefix(key, "minutes_"):
		return "minutes"
	}
	return ""
}

// SheetOfferSay stands under an offer's name: "reel, priced in USD, from a dealer".
func SheetOfferSay(o *scenario.Offer) string {
	text := string(o.Kind) + ", priced in " + o.Currency
	if o.Seller != "" {
		text += ", from " + o.Seller
	}
	if o.Developing != "" {
		text += "; developing: " + o.Developing
	}
	return text + ". Every figure is a formula of the inputs."
}
