package workbook

import (
	"fmt"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
)

// term is a piece of a formula and what it comes to: both are put together by the same
// calls, so that a cell's value cannot be another than its formula's.
type term struct {
	text  string
	binds binding
	value exact.Fraction
}

// truth is a condition of a formula, and whether it holds.
type truth struct {
	text  string
	holds bool
}

// binding is how tightly a term's outermost sign holds it together.
type binding int

const (
	bindsSum binding = iota
	bindsProduct
	bindsWhole // a number, a name, a call
)

func whole(n int64) term {
	return term{text: fmt.Sprint(n), binds: bindsWhole, value: exact.Int(n)}
}

// literal is a number from 0 up as it is written.
func literal(text string) term {
	return term{text: text, binds: bindsWhole, value: exact.FromDecimal(decimal.RequireFromString(text))}
}

// within is the text of t as an operand of a sign that binds so tightly.
func (t term) within(b binding) string {
	if t.binds < b {
		return "(" + t.text + ")"
	}
	return t.text
}

func (t term) plus(u term) term {
	return term{t.text + "+" + u.text, bindsSum, t.value.Add(u.value)}
}

func (t term) minus(u term) term {
	return term{t.text + "-" + u.within(bindsProduct), bindsSum, t.value.Sub(u.value)}
}

func (t term) times(u term) term {
	return term{t.within(bindsProduct) + "*" + u.within(bindsProduct), bindsProduct, t.value.Mul(u.value)}
}

// over is t ÷ u; what is not computed because u is 0 counts as 0, as an empty cell does.
func (t term) over(u term) term {
	q := term{text: t.within(bindsProduct) + "/" + u.within(bindsWhole), binds: bindsProduct}
	if !u.value.IsZero() {
		q.value = t.value.Quo(u.value)
	}
	return q
}

// percent is t hundredths.
func (t term) percent() term { return t.over(whole(100)) }

// rest is what is left after t percent are taken.
func (t term) rest() term { return whole(1).minus(t.percent()) }

func sum(first term, more ...term) term {
	for _, t := range more {
		first = first.plus(t)
	}
	return first
}

// call is a function of the spreadsheet, and the value it gives.
func call(name string, value exact.Fraction, args ...string) term {
	return term{name + "(" + strings.Join(args, ",") + ")", bindsWhole, value}
}

// round is t to places, half away from zero, as ROUND does.
func round(t term, places int) term {
	return call("ROUND", t.value.Round(places), t.text, fmt.Sprint(places))
}

// steady is t without the last digits, which a spreadsheet's binary numbers get wrong:
// only where a whole number is made of t next.
func steady(t term) term { return call("ROUND", t.value, t.text, "8") }

// floor is the greatest whole number not above t.
func floor(t term) term { return call("INT", t.value.Floor(), steady(t).text) }

// ceil is the least whole number not below t, which is not negative.
func ceil(t term) term { return call("ROUNDUP", t.value.Ceil(), steady(t).text, "0") }

func least(a, b term) term    { return call("MIN", exact.Min(a.value, b.value), a.text, b.text) }
func greatest(a, b term) term { return call("MAX", exact.Max(a.value, b.value), a.text, b.text) }

// when is a where the condition holds, else b.
func when(c truth, a, b term) term {
	value := b.value
	if c.holds {
		value = a.value
	}
	return call("IF", value, c.text, a.text, b.text)
}

func above(a, b term) truth {
	return truth{a.text + ">" + b.text, b.value.Less(a.value)}
}

func atLeast(a, b term) truth {
	return truth{a.text + ">=" + b.text, !a.value.Less(b.value)}
}

func both(a, b truth) truth {
	return truth{"AND(" + a.text + "," + b.text + ")", a.holds && b.holds}
}

func either(a, b truth) truth {
	return truth{"OR(" + a.text + "," + b.text + ")", a.holds || b.holds}
}

// quoted is text as a formula holds it.
func quoted(text string) string { return `"` + strings.ReplaceAll(text, `"`, `""`) + `"` }
