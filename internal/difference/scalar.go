package difference

import (
	"fmt"
	"reflect"
	"strconv"

	"reelworth/internal/scenario"
)

// isScalar says whether a field is one value and no table, list or row.
func isScalar(t reflect.Type) bool {
	switch t.Kind() {
	case reflect.String, reflect.Int, reflect.Bool:
		return true
	}
	switch t {
	case reflect.TypeFor[scenario.Decimal](), reflect.TypeFor[scenario.Maybe](), reflect.TypeFor[scenario.MaybeWhole](),
		reflect.TypeFor[scenario.Month](), reflect.TypeFor[scenario.Date]():
		return true
	}
	return false
}

// spelt is a scalar as text, "" where it is left open.
func spelt(v reflect.Value) string {
	number := func(d scenario.Decimal) string { return d.StringFixed(max(0, -d.Exponent())) }
	switch x := v.Interface().(type) {
	case scenario.Decimal:
		return number(x)
	case scenario.Maybe:
		if !x.Set {
			return ""
		}
		return number(x.Decimal)
	case scenario.MaybeWhole:
		if !x.Set {
			return ""
		}
		return strconv.Itoa(x.Int)
	case bool:
		return strconv.FormatBool(x)
	case fmt.Stringer:
		return x.String()
	case int:
		return strconv.Itoa(x)
	}
	return v.String()
}
