package words

import "fmt"

// What to type instead of what is no value.
const (
	TypeNumber = "a number is missing; 0 for none"
	TypeWhole  = "a whole number, such as 2"
	TypeMonth  = "a month as 2027-01"
	TypeDay    = "a day such as 2026-11-20"
	NoMoney    = "this is no amount of money; write the number alone"
)

// InFull asks for a number without an exponent.
func InFull(text string) string { return fmt.Sprintf("write %s in full", clip(text)) }

// FixedCurrency says that an amount cannot be in another currency.
func FixedCurrency(code string) string { return "this is in " + code + "; write the amount in it" }

// AnswerInCurrency offers the currency that was typed with an amount.
func AnswerInCurrency(code string) string { return "in " + code + "?" }

// TypedByHand is the source of a rate that was typed.
const TypedByHand = "typed"

// OneIs is the label of a rate: "1 EUR is".
func OneIs(code string) string { return "1 " + code + " is" }

// RateIn is which rate it is: "USD in EUR".
func RateIn(one, in string) string { return one + " in " + in }

// What to say beside a rate that is missing, and the answers beside currencies.
const (
	WantedRate     = "type today's rate"
	WantedOtherWay = "or the other way round"
	WantedFurther  = "type a rate to add it"
	WantedPrice    = "type the price"
	WantedMonth    = "the same in each"
	AnswerAddRate  = "add its rate"
	AnswerSwap     = "swap the two?"
)

// SameOnBothSides says that a rate is of one currency with itself.
func SameOnBothSides(code string) string { return code + " stands on both sides" }

// Of says what something belongs to: "price of the tank".
func Of(what, whose string) string { return what + " of " + whose }

// Both are two things together: "price and currency".
func Both(one, other string) string { return one + " and " + other }

// TakenIn is what stands beside a field that took the currency or unit written in it.
func TakenIn(unit string) string { return "taken in " + unit }
