package compare

import (
	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Comparison is everything the engine finds out about one scenario. Money is in the
// home currency, or the one it is Shown in, unless a comment says otherwise.
type Comparison struct {
	Scenario scenario.Scenario
	Offers   []Offer // in the order of the file
	Verdict  Verdict
	Warnings []Warning
	// Outlook is what would change the answer; nil until LookAhead or PairFlips was
	// asked, which Compare does not do.
	Outlook *Outlook
	Shown   Shown       // the currency of the figures, where it is not the home one
	home    *Comparison // that this one shows; nil on that itself
}

// Baseline is the offer the others are compared with; nil when it could not be
// computed.
func (c *Comparison) Baseline() *Offer { return c.Find(c.Scenario.Baseline) }

// Find is the computed offer of that name, or nil.
func (c *Comparison) Find(name string) *Offer {
	for i := range c.Offers {
		if o := &c.Offers[i]; o.Name == name && o.Fault == nil {
			return o
		}
	}
	return nil
}

// Offer is what one way to buy comes to. With a Fault nothing but Name and Kind is
// filled in.
type Offer struct {
	Name             string
	Kind             scenario.Kind
	Fault            *Fault
	CountsDeveloping bool
	Order            Order
	Yield            Yield
	UsedShare        exact.Fraction // of what an order gives, what is shot before it is too old
	PerRoll          PerRoll
	PerExposure      exact.Fraction
	DevelopingEach   exact.Fraction // developing one cassette, in the long run; 0 where it is not counted
	Year             Year
	Against          *Against // nil on the baseline, and where there is none
}

// Fault is why an offer is left out.
type Fault struct {
	Code FaultCode
	// Key is the field that mends it, as in the file: "currency", "reel.exposures".
	Key string
	// Why is what is wrong with it. Where the scenario's own checks found it, it is theirs.
	Why scenario.Fault
}

// FaultCode names a kind of fault.
type FaultCode string

// The kinds of faults.
const (
	FaultNoRate     FaultCode = "no-rate"
	FaultNoYield    FaultCode = "no-yield"
	FaultDeveloping FaultCode = "unknown-developing"
	FaultInput      FaultCode = "input" // a field of the offer itself, or something it depends on
)

// Order is the landed cost of one order of Units units.
type Order struct {
	Units   int
	Home    Lines
	Seller  SellerLines
	Charged exact.Fraction // what the card statement says
	Landed  exact.Fraction
	Receipt []Line
	Route   money.Route // from the seller's currency to home
}

// Lines are the landed lines in the home currency; they sum to Order.Landed.
type Lines struct {
	Film, Shipping, SalesTax, CardFee, Duty, ImportTax, Handling exact.Fraction
}

// SellerLines are the lines the seller bills, in the seller's currency.
type SellerLines struct {
	Film, Shipping, SalesTax, ImportTax exact.Fraction
}

// Line is one line of the receipt, with how it came about.
type Line struct {
	Kind   LineKind
	Seller exact.Fraction // in the seller's currency; meaningless unless Billed
	Billed bool           // by the seller
	Home   exact.Fraction
	How    Formula
}

// LineKind names a line of the receipt.
type LineKind string

// The lines, in the order of the receipt. LineCharged sums the lines above it,
// LineLanded all of them but LineCharged.
const (
	LineFilm      LineKind = "film"
	LineShipping  LineKind = "shipping"
	LineSalesTax  LineKind = "sales_tax"
	LinePrepaid   LineKind = "import_tax_prepaid" // import tax that the seller collects
	LineCharged   LineKind = "charged"
	LineCardFee   LineKind = "card_fee"
	LineDuty      LineKind = "duty"
	LineImportTax LineKind = "import_tax"
	LineHandling  LineKind = "handling"
	LineLanded    LineKind = "landed"
)

// Formula is how a line came about, for words to be made of: Op says which sentence,
// the numbers fill it.
type Formula struct {
	Op      FormulaOp
	Percent exact.Fraction
	// Of is what the percent is taken of, the amount compared with Limit, or the
	// price of one unit, as Op says.
	Of exact.Fraction
	// Limit is the free limit, or what each further unit costs.
	Limit exact.Fraction
	Units int
}

// FormulaOp names a way a line comes about.
type FormulaOp string

// The ways. Amounts are in the seller's currency for the lines the seller bills,
// otherwise in the home currency.
const (
	OpNone         FormulaOp = ""              // nothing to explain
	OpPrice        FormulaOp = "price"         // Units × Of, less Percent %
	OpFree         FormulaOp = "free"          // Of reaches the Limit for free shipping
	OpShipping     FormulaOp = "shipping"      // Of, and Limit for each of Units − 1 further units
	OpPercent      FormulaOp = "percent"       // Percent % of Of
	OpWithin       FormulaOp = "within"        // film Of is within the free Limit
	OpSameCurrency FormulaOp = "same-currency" // no card fee at home
	OpConverted    FormulaOp = "converted"     // by Order.Route
	OpUndecided    FormulaOp = "undecided"     // import not decided: nothing counted
	OpNothingDue   FormulaOp = "nothing-due"   // nothing is paid at the border
)

// Yield is what one unit gives.
type Yield struct {
	Exposures int            // per unit
	Good      exact.Fraction // exposures less what is spoiled
	Cassettes int
	Cut       *film.Cut // reels only
}

// PerRoll is the cost of one standard roll in the long run, part by part.
type PerRoll struct {
	Film, Shipping, Tax, Fees, Loading, Equipment, Developing, Time, Total exact.Fraction
}

// Year is the months of the scenario, one after another.
type Year struct {
	Cash       []exact.Fraction // paid in each month
	Cumulative []exact.Fraction
	Orders     []int64 // film orders placed in each month
	Total      exact.Fraction
	Time       exact.Fraction // hours valued; never cash

	FilmLeftRolls      exact.Fraction // good exposures left, in standard rolls
	FilmLeftValue      exact.Fraction
	SuppliesLeftValue  exact.Fraction // cassette loads and chemistry
	EquipmentLeftValue exact.Fraction
	ThrownAwayRolls    exact.Fraction // film too old before it was shot, in standard rolls

	Cost           exact.Fraction // year_cost: total less what is left, plus time
	FilmCost       exact.Fraction // its film side
	DevelopingCost exact.Fraction // its developing side

	// Long says that the film left lasts longer than the 24 months it is valued for.
	Long bool
}

// Against is an offer compared with the baseline, or one offer of a pair against the
// other. Savings are positive when the offer costs less.
type Against struct {
	SavingPerRoll    exact.Fraction
	SavingPercent    *exact.Fraction // nil when the other's total is 0
	SavingCash       exact.Fraction
	Saving           exact.Fraction
	SavingFilm       exact.Fraction
	SavingDeveloping exact.Fraction
	EvenMonth        int            // 1-based; 0 for none
	Equipment        exact.Fraction // the price of what only this offer needs
	BeforeWear       exact.Fraction // SavingPerRoll without the wear of either's equipment
	PaybackExact     *exact.Fraction
	PaybackRolls     *exact.Fraction // whole
	RuinedUnits      *exact.Fraction
}

// Verdict is the answer: best reel against best boxed.
type Verdict struct {
	Kind    VerdictKind
	Reel    string   // best reel; "" when there is none
	Boxed   string   // best boxed; "" when there is none
	Pair    *Against // the reel against the boxed; nil when one-sided
	LeftOut []string // offers that could not be computed
}

// VerdictKind names the answer.
type VerdictKind string

// The verdicts.
const (
	VerdictReel       VerdictKind = "reel"
	VerdictBoxed      VerdictKind = "boxed"
	VerdictClose      VerdictKind = "close"
	VerdictReelIfKept VerdictKind = "reel-if-kept"
	VerdictUnlike     VerdictKind = "unlike"
	VerdictOneSided   VerdictKind = "one-sided" // both names empty when nothing could be computed
)

// Warning is something true and worth knowing that is no error.
type Warning struct {
	Code  WarningCode
	Offer string // "" when it is about the scenario
	// Details that the sentence names; which are set depends on Code.
	Amount, Limit exact.Fraction
	Subject       string // a process, a quote, a field
	Count         int
}

// WarningCode names a warning; the codes are part of the result's contract.
type WarningCode string

// The warnings, with the details that go with each.
const (
	WarnRemjetToLab       WarningCode = "remjet-to-lab"            // Subject: the lab's process
	WarnDevelopingDiffers WarningCode = "developing-differs"       // Offer, Subject: the verdict's reel and its process
	WarnDevelopingMissing WarningCode = "developing-missing"       // while another offer counts it
	WarnImportUndecided   WarningCode = "import-undecided"         // Subject: the field
	WarnChemistryExpires  WarningCode = "chemistry-expires"        // Subject: the process; Amount: effective rolls of Limit
	WarnFilmExpires       WarningCode = "film-expires"             // Amount: rolls thrown away, 0 when only in the long run
	WarnOldQuote          WarningCode = "old-quote"                // Subject: the quote, "USD/EUR"; Count: its age in days
	WarnLeftLastsLong     WarningCode = "left-lasts-long"          // Amount: rolls left
	WarnOnHandFree        WarningCode = "on-hand-free"             // Amount: units on hand
	WarnNearLimit         WarningCode = "near-limit"               // Subject: the limit's field; Amount: film below Limit
	WarnNoDemand          WarningCode = "no-demand"                // about the scenario
	WarnPriceRiseStops    WarningCode = "price-rise-stops-at-zero" // the price falls to 0 within the months
)
