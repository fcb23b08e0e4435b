package scenario

// Code names what is wrong. It does not change from version to version.
type Code string

// What is wrong with a file as a whole.
const (
	FileTooLarge Code = "file-too-large" // Most: MiB
	NULByte      Code = "nul-byte"
	NotUTF8      Code = "not-utf-8"       // Got: the byte
	TooDeep      Code = "too-deep"        // Most: tables or lists inside one another
	TooManyKeys  Code = "too-many-keys"   // Most: keys in a table
	TooManyItems Code = "too-many-items"  // Most: elements in a list
	KeysTooLong  Code = "keys-too-long"   // together
	NotLocated   Code = "not-located"     // TOML, but in no form that can be located
	GivenUp      Code = "given-up"        // the TOML library failed
	MoreFaults   Code = "more-faults"     // Have: faults in all, Most: how many are kept
	NoSchema     Code = "no-schema"       // Example
	WrongSchema  Code = "wrong-schema"    // Example
	NewerSchema  Code = "newer-schema"    // Have: its schema, Most: the newest known
	ScenarioMost Code = "scenarios-limit" // Have, Most
)

// What is no TOML; Got is what the TOML library says.
const (
	NotTOML        Code = "not-toml"
	NotTOMLTwice   Code = "not-toml-twice"    // a key or table stands twice
	NotTOMLLine    Code = "not-toml-line"     // text goes on over the end of a line
	NotTOMLOpen    Code = "not-toml-open"     // a quotation mark or bracket is not closed
	NotTOMLEscape  Code = "not-toml-escape"   // after a backslash
	NotTOMLZero    Code = "not-toml-zero"     // a number begins with 0
	NotTOMLDate    Code = "not-toml-date"     // a date that is none
	NotTOMLLarge   Code = "not-toml-large"    // a number too large
	NotTOMLControl Code = "not-toml-control"  // a control character
	NotTOMLNoValue Code = "not-toml-no-value" // nothing after the equals sign
)

// What is wrong with the value of one key, or with a table.
const (
	Missing      Code = "missing"       // Example
	MissingTable Code = "missing-table" // Example: its header; Keys: those it must have
	NotTable     Code = "not-table"     // Example: the header
	NotTables    Code = "not-tables"    // Example: the header of each
	TooMany      Code = "too-many"      // tables of a kind: Have, Most
	WrongKind    Code = "wrong-kind"    // Got, Is, Wanted, Example
	WrongCount   Code = "wrong-count"   // of a list: Have, Most
	NotMonth     Code = "not-month"     // Got, Example
	NotDate      Code = "not-date"      // Got, Example
	NoSuchMonth  Code = "no-such-month" // Example
	NoSuchDay    Code = "no-such-day"   // Example
	NotNumber    Code = "not-number"    // Got; Guess: the spelling meant, "" where it cannot be told
	Unquoted     Code = "unquoted"      // a number with a point but no quotation marks: likewise
	TooLong      Code = "too-long"      // a number: Got, "" where it has no file; Most: digits on either side of the point
	TextTooLong  Code = "text-too-long" // Have, Most: letters
	Empty        Code = "empty"         // Example
	NotAmong     Code = "not-among"     // Got, Example
	CurrencyCase Code = "currency-case" // Got, Guess
	NoCurrency   Code = "no-currency"   // Got
	BelowMin     Code = "below-min"     // Number, Bound, Rule, Wanted: for this and the next three
	NotAbove     Code = "not-above"
	AboveMax     Code = "above-max"
	NotBelow     Code = "not-below"
)

// What does not make sense together.
const (
	SameCurrencies Code = "same-currencies"  // Got
	TwoRates       Code = "two-rates"        // From, To; Other: the other rate, 0 where it is not known
	AbovePrice     Code = "above-price"      // a resale: Number; Bound: the price
	NameTaken      Code = "name-taken"       // Got; Table and Other: which has it too
	NoBaseline     Code = "no-such-baseline" // Got; Name: an offer's, "" where there is none
	NoOffer        Code = "no-such-offer"    // Got
	NoProcess      Code = "no-such-process"  // Got; Name: a process's, "" where there is none
	NoRate         Code = "no-rate"          // From, To
	WrongTable     Code = "wrong-table"      // Got: the kind of the offer, Guess: the kind whose table this is
	NoRoll         Code = "no-roll"          // of a reel; Missing: to the shortest roll
	NothingGood    Code = "nothing-good"     // every exposure is spoiled
	NoInput        Code = "no-such-input"    // Got; Keys: the inputs there are; Guess: a rate, where one is meant
	NotForInput    Code = "not-for-input"    // an end of a range: Number; Name: the input; Rule
	RangeNotUp     Code = "range-not-up"     // Number: high, Bound: low
	RangeTwice     Code = "range-twice"      // Other
	TooGood        Code = "too-good"         // good exposures of a result: Have, Most
	NotLoaded      Code = "not-loaded"       // cassettes of a result: Have, Most; Other: their exposures
	LoadsBeyond    Code = "loads-beyond"     // the reel; Missing: by how much
	RecountBeyond  Code = "recount-beyond"   // the reel; Missing: by how much
	WastesBeyond   Code = "wastes-beyond"    // the reel; Missing: by how much
	CounterTooFine Code = "counter-too-fine" // Most: counts
)

// Codes are all codes, for those who must have a sentence for each.
func Codes() []Code {
	return []Code{
		FileTooLarge, NULByte, NotUTF8, TooDeep, TooManyKeys, TooManyItems, KeysTooLong, NotLocated, GivenUp, MoreFaults,
		NoSchema, WrongSchema, NewerSchema, ScenarioMost,
		NotTOML, NotTOMLTwice, NotTOMLLine, NotTOMLOpen, NotTOMLEscape, NotTOMLZero, NotTOMLDate, NotTOMLLarge, NotTOMLControl,
		NotTOMLNoValue,
		Missing, MissingTable, NotTable, NotTables, TooMany, WrongKind, WrongCount, NotMonth, NotDate, NoSuchMonth, NoSuchDay,
		NotNumber, Unquoted, TooLong, TextTooLong, Empty, NotAmong, CurrencyCase, NoCurrency, BelowMin, NotAbove, AboveMax, NotBelow,
		SameCurrencies, TwoRates, AbovePrice, NameTaken, NoBaseline, NoOffer, NoProcess, NoRate, WrongTable, NoRoll, NothingGood,
		NoInput, NotForInput, RangeNotUp, RangeTwice,
		TooGood, NotLoaded, LoadsBeyond, RecountBeyond, WastesBeyond, CounterTooFine,
	}
}
