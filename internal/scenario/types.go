package scenario

import (
	"github.com/shopspring/decimal"
)

// Decimal is a number as it was typed: "118.00" keeps its two places.
type Decimal = decimal.Decimal

// Maybe is a decimal that may be left unset.
type Maybe struct {
	Decimal
	Set bool
}

// The struct tags below are the one place that says a field's key and its rules.
// Reading, writing, checking and the window's forms all go by them.
//
//	toml:"key"        the key in the file
//	rule:"..."        comma-separated:
//	  required        must be there (text: must not be empty)
//	  required-for=w  must be there where the table's way is w
//	  min=, max=      inclusive bounds
//	  above=, below=  exclusive bounds
//	  one-of=a|b      the words allowed
//	  currency        an ISO 4217 code in use today
//	  longest=        letters a text may have; without it 200
//	default:"..."     what a missing key means; without it the zero value

// File is everything in one scenario file.
type File struct {
	Schema    int        `toml:"schema" rule:"required"`
	Reels     []InHand   `toml:"reel"` // in hand
	Scenarios []Scenario `toml:"scenario"`
	Extra     Extra
}

// Extra holds the keys of one table that this version does not know, as read, so
// that they are written again.
type Extra map[string]any

// Scenario is one named set of prices and habits. Treat it as immutable: copy
// with Clone before changing.
type Scenario struct {
	Name          string       `toml:"name" rule:"required"`
	Note          string       `toml:"note" rule:"longest=2000"`
	Home          string       `toml:"home" rule:"required,currency"`
	FirstMonth    Month        `toml:"first_month" rule:"required"`
	Months        int          `toml:"months" rule:"min=1,max=60" default:"12"`
	RollExposures int          `toml:"roll_exposures" rule:"min=1,max=100" default:"36"`
	Baseline      string       `toml:"baseline" rule:"required"`
	Rates         []Rate       `toml:"rate"`
	Shooting      Shooting     `toml:"shooting" rule:"required"`
	Border        Border       `toml:"border"`
	Loading       Loading      `toml:"loading"`
	Developing    []Developing `toml:"developing"`
	Offers        []Offer      `toml:"offer"`
	Ranges        []Range      `toml:"range"`
	Extra         Extra
}

// Rate is a quote: 1 One = Equals In.
type Rate struct {
	One    string  `toml:"one" rule:"required,currency"`
	Equals Decimal `toml:"equals" rule:"required,above=0"`
	In     string  `toml:"in" rule:"required,currency"`
	Date   Date    `toml:"date"`
	Source string  `toml:"source"`
	Extra  Extra
}

// Shooting is how much is shot: rolls of Scenario.RollExposures in each month of a
// year, the first being Scenario.FirstMonth.
type Shooting struct {
	RollsPerMonth [12]Decimal `toml:"rolls_per_month" rule:"required,min=0,max=1000"`
	Extra         Extra
}

// Border is what the customs authority takes, in the home currency.
type Border struct {
	DutyPercent    Decimal `toml:"duty_percent" rule:"min=0"`
	DutyFreeUpTo   Decimal `toml:"duty_free_up_to" rule:"min=0"`
	DutyOnShipping bool    `toml:"duty_on_shipping" default:"true"`
	TaxPercent     Decimal `toml:"tax_percent" rule:"min=0"`
	TaxFreeUpTo    Decimal `toml:"tax_free_up_to" rule:"min=0"`
	TaxOnShipping  bool    `toml:"tax_on_shipping" default:"true"`
	HandlingFee    Decimal `toml:"handling_fee" rule:"min=0"`
	Extra          Extra
}

// Loading is what it takes to cut a reel and load cassettes; money in the home
// currency.
type Loading struct {
	CassettePrice      Decimal     `toml:"cassette_price" rule:"min=0"`
	CassetteLoads      int         `toml:"cassette_loads" rule:"min=1" default:"1"`
	CassettePack       int         `toml:"cassette_pack" rule:"min=1" default:"1"`
	CassettesOwned     int         `toml:"cassettes_owned" rule:"min=0"`
	ConsumablesPerRoll Decimal     `toml:"consumables_per_roll" rule:"min=0"`
	MinutesPerReel     Decimal     `toml:"minutes_per_reel" rule:"min=0"`
	MinutesPerRoll     Decimal     `toml:"minutes_per_roll" rule:"min=0"`
	HourlyValue        Decimal     `toml:"hourly_value" rule:"min=0"`
	Equipment          []Equipment `toml:"equipment"`
	Extra              Extra
}

// Equipment is bought once, in the home currency.
type Equipment struct {
	Name       string  `toml:"name" rule:"required"`
	Price      Decimal `toml:"price" rule:"required,min=0"`
	Resale     Decimal `toml:"resale" rule:"min=0"`
	LastsRolls int     `toml:"lasts_rolls" rule:"required,min=1"`
	Owned      bool    `toml:"owned"`
	Extra      Extra
}

// Way is how film is developed.
type Way string

// The ways of developing.
const (
	Lab  Way = "lab"
	Home Way = "home"
)

// Developing is one process an offer can name; money in the home currency.
type Developing struct {
	Name                string      `toml:"name" rule:"required"`
	Way                 Way         `toml:"way" rule:"required,one-of=lab|home"`
	Price               Decimal     `toml:"price" rule:"required-for=lab,min=0"`
	ChemistryPrice      Decimal     `toml:"chemistry_price" rule:"required-for=home,min=0"`
	ChemistryRolls      int         `toml:"chemistry_rolls" rule:"required-for=home,min=1" default:"1"`
	ChemistryKeepsMonth Maybe       `toml:"chemistry_keeps_months" rule:"above=0"`
	ExtraPerRoll        Decimal     `toml:"extra_per_roll" rule:"min=0"`
	MinutesPerRoll      Decimal     `toml:"minutes_per_roll" rule:"min=0"`
	Equipment           []Equipment `toml:"equipment"`
	Extra               Extra
}

// Kind is what an offer sells.
type Kind string

// The kinds of offers.
const (
	KindReel  Kind = "reel"
	KindBoxed Kind = "boxed"
)

// Import is who collects import tax, if anybody.
type Import string

// The import choices; the zero value is not decided.
const (
	ImportUndecided Import = ""
	ImportNone      Import = "none"
	ImportBorder    Import = "border"
	ImportPrepaid   Import = "prepaid"
)

// Offer is one way to buy film, priced in the seller's Currency.
type Offer struct {
	Name               string  `toml:"name" rule:"required"`
	Kind               Kind    `toml:"kind" rule:"required,one-of=reel|boxed"`
	Seller             string  `toml:"seller"`
	Currency           string  `toml:"currency" rule:"required,currency"`
	Price              Decimal `toml:"price" rule:"required,above=0"`
	Units              int     `toml:"units" rule:"min=1,max=100" default:"1"`
	OnHand             Decimal `toml:"on_hand" rule:"min=0"`
	DiscountPercent    Decimal `toml:"discount_percent" rule:"min=0,max=100"`
	Shipping           Decimal `toml:"shipping" rule:"min=0"`
	ShippingEachExtra  Decimal `toml:"shipping_each_extra" rule:"min=0"`
	FreeShippingFrom   Maybe   `toml:"free_shipping_from" rule:"min=0"`
	SalesTaxPercent    Decimal `toml:"sales_tax_percent" rule:"min=0"`
	SalesTaxOnShipping bool    `toml:"sales_tax_on_shipping"`
	CardFeePercent     Decimal `toml:"card_fee_percent" rule:"min=0"`
	PriceRisePercent   Decimal `toml:"price_rise_percent"`
	Import             Import  `toml:"import" rule:"one-of=none|border|prepaid"`
	KeepsMonths        Maybe   `toml:"keeps_months" rule:"above=0"`
	Developing         string  `toml:"developing"`
	Reel               *Reel   `toml:"reel"`
	Boxed              *Boxed  `toml:"boxed"`
	Seen               []Seen  `toml:"seen"`
	Extra              Extra
}

// Seen is a price that an offer had on a day, in the seller's currency. It counts for
// nothing until it becomes the offer's price.
type Seen struct {
	Date  Date    `toml:"date" rule:"required"`
	Price Decimal `toml:"price" rule:"required,above=0"`
	Note  string  `toml:"note" rule:"longest=2000"`
	Extra Extra
}

// Reel says how a long film is cut. Lengths in millimetres unless named
// otherwise; ends are per cassette, wastes per reel. The defaults of leader,
// trailer, fogged end and waste are common practice, no source; they give about
// 18 rolls of 36 from 100 ft.
type Reel struct {
	Length         Decimal    `toml:"length" rule:"required,above=0"`
	LengthUnit     LengthUnit `toml:"length_unit" rule:"required,one-of=ft|m"`
	Pitch          Pitch      `toml:"pitch" rule:"one-of=long|short" default:"long"`
	Exposures      int        `toml:"exposures" rule:"required,min=1,max=100"`
	LeaderMM       Decimal    `toml:"leader_mm" rule:"min=0" default:"160"`
	TrailerMM      Decimal    `toml:"trailer_mm" rule:"min=0" default:"72"`
	FoggedMM       Decimal    `toml:"fogged_mm" rule:"min=0" default:"50"`
	StartWasteMM   Decimal    `toml:"start_waste_mm" rule:"min=0" default:"100"`
	EndWasteMM     Decimal    `toml:"end_waste_mm" rule:"min=0" default:"200"`
	TestExposures  int        `toml:"test_exposures" rule:"min=0"`
	ShortRollFrom  int        `toml:"short_roll_from" rule:"min=0" default:"12"`
	SpoiledPercent Decimal    `toml:"spoiled_percent" rule:"min=0,below=100"`
	Remjet         bool       `toml:"remjet"`
	Extra          Extra
}

// LengthUnit is the unit of a reel's length.
type LengthUnit string

// The units of length.
const (
	Feet   LengthUnit = "ft"
	Metres LengthUnit = "m"
)

// Pitch names a perforation pitch.
type Pitch string

// The perforation pitches.
const (
	LongPitch  Pitch = "long"
	ShortPitch Pitch = "short"
)

// Boxed says what one pack holds.
type Boxed struct {
	RollsPerPack   int     `toml:"rolls_per_pack" rule:"min=1" default:"1"`
	Exposures      int     `toml:"exposures" rule:"required,min=1"`
	SpoiledPercent Decimal `toml:"spoiled_percent" rule:"min=0,below=100"` // of old or doubtful film
	Extra          Extra
}

// Range is how far an input may go, where the user knows better than 10 % up and down.
type Range struct {
	Input Input   `toml:"input" rule:"required"`
	Offer string  `toml:"offer"` // only while this offer is compared with the baseline; "" for all
	Low   Decimal `toml:"low" rule:"required"`
	High  Decimal `toml:"high" rule:"required"`
	Extra Extra
}
