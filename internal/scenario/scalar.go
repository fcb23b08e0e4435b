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
		r.wrong(kindOf(value, n)+", not text", "write "+requote(f, n))
	case formWhole:
		if i, ok := r.whole(f, value, n); ok {
			v.SetInt(i)
		}
	case formTruth:
		if b, ok := value.(bool); ok {
			v.SetBool(b)
			return
		}
		r.wrong(kindOf(value, n)+", not true or false", fmt.Sprintf("write %s = true or %s = false, without quotation marks", f.key, f.key))
	case formNumber:
		if d, ok := r.number(value, n); ok {
			v.Set(reflect.ValueOf(d))
		}
	case formMaybe:
		if d, ok := r.number(value, n); ok {
			v.Set(reflect.ValueOf(Maybe{d, true}))
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
		d, wrong, remedy := parseNumber(x)
		if wrong != "" {
			r.wrong(wrong, remedy)
			return d, false
		}
		return d, true
	case int64:
		if x >= 1e12 || x <= -1e12 {
			r.wrong(fmt.Sprintf("%d has more than 12 digits", x), "write at most 12 digits on either side of the point")
			return d, false
		}
		return decimal.New(x, 0), true
	case float64:
		r.wrong(clip(spelt(n))+" stands without quotation marks, which loses digits", numberRemedy(spelt(n)))
	default:
		r.wrong(kindOf(value, n)+", not a number", `write a number in quotation marks, such as "14.80"`)
	}
	return d, false
}

func (r *reader) whole(f *field, value any, n *tomltext.Node) (int64, bool) {
	switch x := value.(type) {
	case int64:
		if x < 1e12 && x > -1e12 {
			return x, true
		}
		r.wrong(fmt.Sprintf("%d has more than 12 digits", x), "write "+example(f))
	case string:
		if _, err := strconv.ParseInt(x, 10, 32); err == nil {
			r.wrong(quote(x)+" is text, not a whole number", "write "+f.key+" = "+strings.TrimPrefix(x, "+")+", without quotation marks")
		} else {
			r.wrong(quote(x)+" is text, not a whole number", "write "+example(f)+", without quotation marks")
		}
	case float64:
		r.wrong(clip(spelt(n))+" is no whole number", "write "+example(f)+", without a point")
	default:
		r.wrong(kindOf(value, n)+", not a whole number", "write "+example(f))
	}
	return 0, false
}

func (r *reader) month(f *field, v reflect.Value, value any, n *tomltext.Node) {
	text, ok := value.(string)
	if !ok {
		r.wrong(kindOf(value, n)+", not a month in quotation marks", "write "+example(f))
		return
	}
	m, err := ParseMonth(text)
	if err != nil {
		r.wrong(quote(text)+" is no month", "write "+example(f))
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
		r.wrong(quote(text)+" is text, not a date", "write "+example(f)+", without quotation marks")
	case err != nil:
		r.wrong(clip(text)+" is no date", "write "+example(f))
	case isText:
		r.wrong(quote(text)+" is text, not a date", "write "+f.key+" = "+text+", without quotation marks")
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

// kindOf says what a value is, for "…, not text".
func kindOf(value any, n *tomltext.Node) string {
	switch x := value.(type) {
	case string:
		return quote(x) + " is text"
	case int64, float64:
		return clip(spelt(n)) + " is a number"
	case bool:
		return fmt.Sprintf("%t is true-or-false", x)
	case map[string]any, []map[string]any:
		return "it is a table"
	case []any:
		return "it is a list"
	}
	return clip(spelt(n)) + " is a date or a time"
}

// requote is the assignment of a scalar put in quotation marks.
func requote(f *field, n *tomltext.Node) string {
	if raw := spelt(n); raw != "" && len(f.rule.OneOf) == 0 && !f.rule.Currency {
		return f.key + ` = "` + clip(raw) + `"`
	}
	return example(f)
}

// example is an assignment that would do.
func example(f *field) string {
	switch f.form {
	case formText:
		if len(f.rule.OneOf) > 0 {
			return f.key + " = " + choices(f.rule.OneOf)
		}
		if f.rule.Currency {
			return f.key + ` = "EUR", or the code of another currency`
		}
		return f.key + ` = "…"`
	case formWhole:
		n := int64(1)
		if f.rule.Min != nil {
			n = f.rule.Min.IntPart()
		}
		switch {
		case f.key == "exposures" || f.key == "roll_exposures":
			n = 36
		case f.key == "lasts_rolls":
			n = 200
		case f.key == "months":
			n = 12
		case f.key == "chemistry_rolls":
			n = 16
		}
		return fmt.Sprintf("%s = %d", f.key, n)
	case formTruth:
		return f.key + " = true"
	case formNumber, formMaybe:
		if f.key == "length" {
			return `length = "100"`
		}
		return f.key + ` = "14.80"`
	case formNumbers:
		return f.key + ` = ["2", "2", "3", …], 12 numbers`
	case formMonth:
		return f.key + ` = "2027-01"`
	case formDate:
		return f.key + " = 2027-01-31"
	}
	return f.key
}

// choices is `"a" or "b"`.
func choices(words []string) string {
	quoted := make([]string, len(words))
	for i, w := range words {
		quoted[i] = `"` + w + `"`
	}
	if len(quoted) == 1 {
		return quoted[0]
	}
	last := len(quoted) - 1
	return strings.Join(quoted[:last], ", ") + " or " + quoted[last]
}
