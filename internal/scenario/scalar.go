package scenario

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/tomltext"
)

// scalar reads a value that is no table and no list.
func (r *reader) scalar(f *field, v reflect.Value, value any, n *tomltext.Node) {
	switch f.form {
	case formText:
		if text, ok := value.(string); ok {
			v.SetString(text)
			return
		}
		r.kind(ValueText, value, n, requote(f, n))
	case formWhole:
		if i, ok := r.whole(f, value, n); ok {
			v.SetInt(i)
		}
	case formTruth:
		if b, ok := value.(bool); ok {
			v.SetBool(b)
			return
		}
		r.kind(ValueTruth, value, n, example(f))
	case formNumber:
		if d, ok := r.number(value, n); ok {
			v.Set(reflect.ValueOf(d))
		}
	case formMaybe:
		if d, ok := r.number(value, n); ok {
			v.Set(reflect.ValueOf(Maybe{d, true}))
		}
	case formMaybeWhole:
		if i, ok := r.whole(f, value, n); ok {
			v.Set(reflect.ValueOf(MaybeWhole{int(i), true}))
		}
	case formMonth:
		r.month(f, v, value, n)
	case formDate:
		r.date(f, v, value, n)
	}
}

// number reads a decimal: text, or a whole number. A float has lost digits already.
func (r *reader) number(value any, n *tomltext.Node) (d Decimal, ok bool) {
	switch x := value.(type) {
	case string:
		d, code := parseNumber(x)
		switch code {
		case NotNumber:
			r.wrong(code, Args{Got: x, Guess: plainGuess(x)})
		case TooLong:
			r.wrong(code, Args{Got: x, Most: maxDigits})
		}
		return d, code == ""
	case int64:
		if x >= 1e12 || x <= -1e12 {
			r.wrong(TooLong, Args{Got: spelt(n), Most: maxDigits})
			return d, false
		}
		return decimal.New(x, 0), true
	case float64:
		r.wrong(Unquoted, Args{Got: spelt(n), Guess: plainGuess(spelt(n))})
	default:
		r.kind(ValueNumber, value, n, "")
	}
	return d, false
}

func (r *reader) whole(f *field, value any, n *tomltext.Node) (int64, bool) {
	switch x := value.(type) {
	case int64:
		if x < 1e12 && x > -1e12 {
			return x, true
		}
		r.wrong(TooLong, Args{Got: spelt(n), Most: maxDigits})
	case string:
		write := example(f)
		if _, err := strconv.ParseInt(x, 10, 32); err == nil {
			write = f.key + " = " + strings.TrimPrefix(x, "+")
		}
		r.kind(ValueWhole, value, n, write)
	default:
		r.kind(ValueWhole, value, n, example(f))
	}
	return 0, false
}

func (r *reader) month(f *field, v reflect.Value, value any, n *tomltext.Node) {
	text, ok := value.(string)
	if !ok {
		r.kind(ValueMonth, value, n, example(f))
		return
	}
	m, err := ParseMonth(text)
	if err != nil {
		r.wrong(NotMonth, Args{Got: text, Example: example(f)})
		return
	}
	v.Set(reflect.ValueOf(m))
}

func (r *reader) date(f *field, v reflect.Value, value any, n *tomltext.Node) {
	text, isText := value.(string)
	if !isText {
		text = spelt(n)
	}
	d, err := ParseDate(text)
	switch {
	case err != nil && isText:
		r.kind(ValueDate, value, n, example(f))
	case err != nil:
		r.wrong(NotDate, Args{Got: text, Example: example(f)})
	case isText:
		r.kind(ValueDate, value, n, f.key+" = "+text)
	default:
		v.Set(reflect.ValueOf(d))
	}
}

// spelt is a scalar as it stands in the file.
func spelt(n *tomltext.Node) string {
	if n == nil {
		return ""
	}
	return n.Raw
}

// kind reports a value of another kind than wanted; write would do instead.
func (r *reader) kind(wanted ValueKind, value any, n *tomltext.Node, write string) {
	got := spelt(n)
	if text, ok := value.(string); ok {
		got = text
	}
	r.wrong(WrongKind, Args{Got: got, Is: kindOf(value), Wanted: wanted, Example: write})
}

// kindOf is the kind of a value as the TOML library gives it.
func kindOf(value any) ValueKind {
	switch value.(type) {
	case string:
		return ValueText
	case int64, float64:
		return ValueNumber
	case bool:
		return ValueTruth
	case map[string]any, []map[string]any:
		return ValueTable
	case []any:
		return ValueList
	}
	return ValueTime
}

// requote is the assignment of a scalar put in quotation marks.
func requote(f *field, n *tomltext.Node) string {
	if raw := spelt(n); raw != "" && len(f.rule.OneOf) == 0 && !f.rule.Currency {
		return f.key + ` = "` + raw + `"`
	}
	return example(f)
}

// example is an assignment that would do.
func example(f *field) string {
	switch f.form {
	case formText:
		if len(f.rule.OneOf) > 0 {
			last := len(f.rule.OneOf) - 1
			return f.key + ` = "` + strings.Join(f.rule.OneOf[:last], `", "`) + `" or "` + f.rule.OneOf[last] + `"`
		}
		if f.rule.Currency {
			return f.key + ` = "EUR"`
		}
		return f.key + ` = "…"`
	case formWhole, formMaybeWhole:
		n := int64(1)
		if f.rule.Min != nil {
			n = f.rule.Min.IntPart()
		}
		switch {
		case f.key == "exposures" || f.key == "roll_exposures":
			n = 36
		case f.key == "lasts_rolls":
			n = 200
		case f.key == "months" || f.key == "good":
			n = 12
		case f.key == "speed":
			n = 400
		case f.key == "chemistry_rolls":
			n = 16
		}
		return fmt.Sprintf("%s = %d", f.key, n)
	case formTruth:
		return fmt.Sprintf("%s = true or %[1]s = false", f.key)
	case formNumber, formMaybe:
		if f.key == "length" {
			return `length = "100"`
		}
		return f.key + ` = "14.80"`
	case formNumbers:
		return f.key + ` = ["2", "2", "3", …]`
	case formMonth:
		return f.key + ` = "2027-01"`
	case formDate:
		return f.key + " = 2027-01-31"
	}
	return f.key
}
