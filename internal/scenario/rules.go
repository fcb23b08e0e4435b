package scenario

import (
	"reflect"
	"strings"
	"time"
	"unicode/utf8"

	"github.com/shopspring/decimal"

	"reelworth/internal/money"
)

// checker holds typed tables to the rules in their tags.
type checker struct {
	*reporter
	path []step
}

func (c *checker) table(t *table, v reflect.Value) {
	for i := range t.fields {
		f := &t.fields[i]
		c.path = append(c.path, key(f.key))
		required := f.mustBeIn(v)
		if x, there := t.unread(v, f); there {
			c.again(f, x)
			required = false // that is said
		}
		c.field(f, f.of(v), required)
		c.path = c.path[:len(c.path)-1]
	}
}

func (c *checker) field(f *field, v reflect.Value, required bool) {
	switch f.form {
	case formText:
		c.text(f, v.String(), required)
	case formWhole:
		c.number(f, decimal.New(v.Int(), 0), ValueWhole)
	case formNumber:
		d := *v.Addr().Interface().(*Decimal)
		if f.rule.RequiredFor != "" && required && unset(d) {
			c.fault(c.path, Missing, Args{Example: example(f)})
			return
		}
		c.number(f, d, ValueNumber)
	case formMaybe:
		if m := v.Addr().Interface().(*Maybe); m.Set {
			c.number(f, m.Decimal, ValueNumber)
		}
	case formMaybeWhole:
		if m := v.Addr().Interface().(*MaybeWhole); m.Set {
			c.number(f, decimal.New(int64(m.Int), 0), ValueWhole)
		}
	case formNumbers:
		at := len(c.path) - 1
		for i, d := range v.Addr().Interface().(*[12]Decimal) {
			c.path[at].item = i
			c.number(f, d, ValueNumber)
		}
	case formMonth:
		c.month(f, *v.Addr().Interface().(*Month), required)
	case formDate:
		switch d := *v.Addr().Interface().(*Date); {
		case d == Date{} && required:
			c.fault(c.path, Missing, Args{Example: example(f)})
		case d != Date{} && DateOf(d.time()) != d:
			c.fault(c.path, NoSuchDay, Args{Example: example(f)})
		}
	case formTable:
		c.table(f.table, v)
	case formPointer:
		if !v.IsNil() {
			c.table(f.table, v.Elem())
		}
	case formTables:
		at := len(c.path) - 1
		for i := range v.Len() {
			c.path[at].item = i
			c.table(f.table, v.Index(i))
		}
	}
}

func (c *checker) text(f *field, text string, required bool) {
	switch {
	case strings.TrimSpace(text) == "":
		if required || text != f.defaultText && (f.rule.Currency || len(f.rule.OneOf) > 0) {
			c.fault(c.path, Empty, Args{Example: example(f)})
		}
	case f.rule.Currency:
		c.currency(text)
	case len(f.rule.OneOf) > 0:
		for _, w := range f.rule.OneOf {
			if w == text {
				return
			}
		}
		c.fault(c.path, NotAmong, Args{Got: text, Example: example(f)})
	case f.rule.Longest > 0 && utf8.RuneCountInString(text) > f.rule.Longest:
		c.fault(c.path, TextTooLong, Args{Have: utf8.RuneCountInString(text), Most: f.rule.Longest})
	}
}

func (c *checker) currency(code string) {
	if _, ok := money.Digits(code); ok {
		return
	}
	upper := strings.ToUpper(strings.TrimSpace(code))
	if _, ok := money.Digits(upper); ok {
		c.fault(c.path, CurrencyCase, Args{Got: code, Guess: upper})
		return
	}
	c.fault(c.path, NoCurrency, Args{Got: code})
}

// number holds a number to its bounds; wanted says whether it must be a whole one.
func (c *checker) number(f *field, d Decimal, wanted ValueKind) {
	if tooLong(d) {
		c.fault(c.path, TooLong, Args{Most: maxDigits}) // spelling it out may take all memory
		return
	}
	if code, bound := f.rule.Broken(d); code != "" {
		c.fault(c.path, code, Args{Number: d, Bound: *bound, Rule: &f.rule, Wanted: wanted})
	}
}

// Broken is how a number breaks the rule, and the bound it goes beyond; "" where it
// keeps to it.
func (r *Rule) Broken(d Decimal) (Code, *Decimal) {
	switch {
	case r.Min != nil && d.Cmp(*r.Min) < 0:
		return BelowMin, r.Min
	case r.Above != nil && d.Cmp(*r.Above) <= 0:
		return NotAbove, r.Above
	case r.Max != nil && d.Cmp(*r.Max) > 0:
		return AboveMax, r.Max
	case r.Below != nil && d.Cmp(*r.Below) >= 0:
		return NotBelow, r.Below
	}
	return "", nil
}

// tooLong says whether a number has more digits before or after its point than allowed.
func tooLong(d Decimal) bool {
	exp := int(d.Exponent())
	if exp >= -maxDigits && exp <= 0 && d.CoefficientInt64() < 1e12 && d.CoefficientInt64() > -1e12 && d.Coefficient().IsInt64() {
		return false
	}
	digits := len(d.Coefficient().Text(10)) // NumDigits of the library is one short near powers of ten
	if d.Sign() < 0 {
		digits--
	}
	return exp < -maxDigits || !d.IsZero() && digits+exp > maxDigits
}

func (c *checker) month(f *field, m Month, required bool) {
	switch {
	case m == Month{} && required:
		c.fault(c.path, Missing, Args{Example: example(f)})
	case m != Month{} && (m.Month < time.January || m.Month > time.December || m.Year < 1 || m.Year > 9999):
		c.fault(c.path, NoSuchMonth, Args{Example: example(f)})
	}
}
