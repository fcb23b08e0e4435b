package difference

import (
	"reflect"
	"slices"
	"strings"
)

// match finds for every table of b the index in a of the one it came from, −1 for
// none: the one of the same title, or else one that is mostly the same, since what was
// given another name is no other thing. gone are those of a that are left over.
func match(a, b reflect.Value) (pairs, gone []int) {
	byTitle := map[string][]int{}
	for i := range a.Len() {
		t := title(a.Index(i))
		byTitle[t] = append(byTitle[t], i)
	}
	pairs = make([]int, b.Len())
	for j := range pairs {
		pairs[j] = -1
		t := title(b.Index(j))
		if left := byTitle[t]; len(left) > 0 {
			pairs[j], byTitle[t] = left[0], left[1:]
		}
	}
	for i := range a.Len() {
		if slices.Contains(byTitle[title(a.Index(i))], i) {
			gone = append(gone, i)
		}
	}
	const most = 50 // renamed tables looked for; beyond, the search would take long
	for j := range pairs {
		if !isNew(pairs[j]) || len(gone) > most {
			continue
		}
		if k := slices.IndexFunc(gone, func(i int) bool { return mostlySame(a.Index(i), b.Index(j)) }); k >= 0 {
			pairs[j] = gone[k]
			gone = slices.Delete(gone, k, k+1)
		}
	}
	return pairs, gone
}

func isNew(i int) bool { return i < 0 }

// mostlySame says whether more than half of the fields that say something in either
// of two tables say the same.
func mostlySame(a, b reflect.Value) bool {
	same, other := 0, 0
	for i := range a.NumField() {
		switch {
		case a.Field(i).IsZero() && b.Field(i).IsZero():
		case isScalar(a.Field(i).Type()) && spelt(a.Field(i)) == spelt(b.Field(i)),
			!isScalar(a.Field(i).Type()) && reflect.DeepEqual(a.Field(i).Interface(), b.Field(i).Interface()):
			same++
		default:
			other++
		}
	}
	return same > other
}

// title is what a table of a list is called by: its name, or else its first texts, as
// "USD, EUR" for a rate.
func title(v reflect.Value) string {
	var texts []string
	for i := range v.NumField() {
		f := v.Type().Field(i)
		if f.Tag.Get("toml") == "name" {
			return v.Field(i).String()
		}
		if f.Type.Kind() == reflect.String && strings.Contains(f.Tag.Get("rule"), "required") {
			texts = append(texts, v.Field(i).String())
		}
	}
	return strings.Join(texts, ", ")
}
