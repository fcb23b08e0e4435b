package scenario

import (
	"reflect"
	"strconv"
	"strings"
	"time"

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
		c.field(f, v.Field(f.index), f.mustBeIn(v))
		c.path = c.path[:len(c.path)-1]
	}
}

func (c *checker) field(f *field, v reflect.Value, required bool) {
	switch f.form {
	case formText:
		c.text(f, v.String(), required)
	case formWhole:
		c.number(f, decimal.New(v.Int(), 0), "a whole number ")
	case formNumber:
		d := *v.Addr().Interface().(*Decimal)
		if f.rule.RequiredFor != "" && required && unset(d) {
			c.fault(c.path, "is missing", "write "+example(f))
			return
		}
		c.number(f, d, "a number ")
	case formMaybe:
		if m := v.Addr().Interface().(*Maybe); m.Set {
			c.number(f, m.Decimal, "a number ")
		}
	case formNumbers:
		at := len(c.path) - 1
		for i, d := range v.Addr().Interface().(*[12]Decimal) {
			c.path[at].item = i
			c.number(f, d, "a number ")
		}
	case formMonth:
		c.month(f, *v.Addr().Interface().(*Month), required)
	case formDate:
		if d := *v.Addr().Interface().(*Date); d != (Date{}) && DateOf(d.time()) != d {
			c.fault(c.path, "there is no such day", "write "+example(f))
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
			c.fault(c.path, "is empty", "write "+example(f))
		}
	case f.rule.Currency:
		c.currency(text)
	case len(f.rule.OneOf) > 0:
		for _, w := range f.rule.OneOf {
			if w == text {
				return
			}
		}
		c.fault(c.path, quote(text)+" is none of the words for it", "write "+example(f))
	}
}

func (c *checker) currency(code string) {
	if _, ok := money.Digits(code); ok {
		return
	}
	upper := strings.ToUpper(strings.TrimSpace(code))
	if _, ok := money.Digits(upper); ok {
		c.fault(c.path, quote(code)+" is no currency code", `write "`+upper+`"`)
		return
	}
	c.fault(c.path, quote(code)+" is no currency code in use today", `write its three-letter ISO 4217 code, such as "EUR"`)
}

// number holds a number to its bounds; noun says what to write, "a number ".
func (c *checker) number(f *field, d Decimal, noun string) {
	if wrong := tooLong(d); wrong != "" {
		c.fault(c.path, wrong, "write at most 12 digits on either side of the point")
		return
	}
	r := &f.rule
	wrong := ""
	switch {
	case r.Min != nil && d.Cmp(*r.Min) < 0:
		wrong = " is below " + r.Min.String()
	case r.Above != nil && d.Cmp(*r.Above) <= 0:
		wrong = " is not above " + r.Above.String()
	case r.Max != nil && d.Cmp(*r.Max) > 0:
		wrong = " is above " + r.Max.String()
	case r.Below != nil && d.Cmp(*r.Below) >= 0:
		wrong = " is not below " + r.Below.String()
	default:
		return
	}
	c.fault(c.path, spell(d)+wrong, "write "+noun+r.bounds())
}

// tooLong says what is wrong with a number of too many digits.
func tooLong(d Decimal) string {
	exp := int(d.Exponent())
	if exp >= -maxDigits && exp <= 0 && d.CoefficientInt64() < 1e12 && d.CoefficientInt64() > -1e12 && d.Coefficient().IsInt64() {
		return ""
	}
	digits := len(d.Coefficient().Text(10)) // NumDigits of the library is one short near powers of ten
	if d.Sign() < 0 {
		digits--
	}
	switch {
	case exp < -maxDigits:
		return "it has " + strconv.Itoa(-exp) + " digits after the point"
	case !d.IsZero() && digits+exp > maxDigits:
		return "it has " + strconv.Itoa(digits+exp) + " digits before the point"
	}
	return ""
}

// bounds is what a number may be, after "a number".
func (r *Rule) bounds() string {
	switch {
	case r.Min != nil && r.Max != nil:
		return "from " + r.Min.String() + " to " + r.Max.String()
	case r.Min != nil && r.Below != nil:
		return "from " + r.Min.String() + " to below " + r.Below.String()
	case r.Min != nil:
		return "of at least " + r.Min.String()
	case r.Above != nil:
		return "above " + r.Above.String()
	}
	return "that makes sense here"
}

func (c *checker) month(f *field, m Month, required bool) {
	switch {
	case m == Month{} && required:
		c.fault(c.path, "is missing", "write "+example(f))
	case m != Month{} && (m.Month < time.January || m.Month > time.December || m.Year < 1 || m.Year > 9999):
		c.fault(c.path, "there is no such month", "write "+example(f))
	}
}
