package difference

import (
	"reflect"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

// Every field that the file format has is compared: each is changed alone, and told.
func TestEveryFieldIsCompared(t *testing.T) {
	told := 0
	for _, f := range scenario.Fields() {
		if f.Table == "" {
			continue // the version of the file format
		}
		from, to := everyTable(), everyTable()
		table := reflect.ValueOf(&to).Elem()
		for _, key := range strings.Split(f.Table, ".") {
			table = keyed(t, table, key)
			switch table.Kind() {
			case reflect.Slice:
				table = table.Index(0)
			case reflect.Pointer:
				table = table.Elem()
			}
		}
		alter(t, keyed(t, table, f.Key))
		// What has no name is another thing when its first words are others.
		got, _ := Between(from, to, 20)
		if len(got) == 0 || len(got) > 2 {
			t.Errorf("%s.%s: %+v", f.Table, f.Key, got)
		}
		told++
	}
	if told < 70 {
		t.Error("only", told, "fields")
	}
}

// everyTable is a file that has something in every table.
func everyTable() scenario.File {
	var fill func(v reflect.Value)
	fill = func(v reflect.Value) {
		switch {
		case v.Type() == reflect.TypeFor[scenario.Extra]() || isScalar(v.Type()):
		case v.Kind() == reflect.Struct:
			for i := range v.NumField() {
				fill(v.Field(i))
			}
		case v.Kind() == reflect.Pointer:
			if v.IsNil() {
				v.Set(reflect.New(v.Type().Elem()))
			}
			fill(v.Elem())
		case v.Kind() == reflect.Slice:
			if v.Len() == 0 {
				v.Set(reflect.MakeSlice(v.Type(), 1, 1))
			}
			for i := range v.Len() {
				fill(v.Index(i))
			}
		}
	}
	f := scenario.Demo()
	fill(reflect.ValueOf(&f).Elem())
	return f
}

func keyed(t *testing.T, table reflect.Value, key string) reflect.Value {
	for _, f := range reflect.VisibleFields(table.Type()) {
		if f.Tag.Get("toml") == key {
			return table.FieldByIndex(f.Index)
		}
	}
	t.Fatal("no field", key)
	return reflect.Value{}
}

func alter(t *testing.T, v reflect.Value) {
	switch x := v.Addr().Interface().(type) {
	case *scenario.Decimal:
		*x = x.Add(decimal.New(1, 0))
	case *scenario.Maybe:
		*x = scenario.Maybe{Decimal: x.Add(decimal.New(1, 0)), Set: true}
	case *scenario.MaybeWhole:
		*x = scenario.MaybeWhole{Int: x.Int + 1, Set: true}
	case *[12]scenario.Decimal:
		x[11] = x[11].Add(decimal.New(1, 0))
	case *scenario.Month:
		x.Year++
	case *scenario.Date:
		x.Year++
	default:
		switch v.Kind() {
		case reflect.String:
			v.SetString(v.String() + "X")
		case reflect.Int:
			v.SetInt(v.Int() + 1)
		case reflect.Bool:
			v.SetBool(!v.Bool())
		default:
			t.Fatal("no way to alter", v.Type())
		}
	}
}

// What has another name is found again where more than half of it is as it was, and no
// more than half is not enough.
func TestATableOfAnotherNameIsFoundWhileMostOfItIsTheSame(t *testing.T) {
	from, to := scenario.Demo(), scenario.Demo()
	x, y := scenario.Equipment{Name: "Loader", Price: decimal.New(80, 0), LastsRolls: 200}, scenario.Equipment{Name: "Winder", Price: decimal.New(80, 0), LastsRolls: 200}
	kinds := func() (list []Kind) {
		from.Scenarios[0].Loading.Equipment, to.Scenarios[0].Loading.Equipment = []scenario.Equipment{x}, []scenario.Equipment{y}
		found, _ := Between(from, to, 20)
		for _, d := range found {
			list = append(list, d.Kind)
		}
		return list
	}
	if got := kinds(); !reflect.DeepEqual(got, []Kind{Value}) { // two of three are the same
		t.Error(got)
	}
	y.Resale = decimal.New(10, 0) // two of four
	if got := kinds(); !reflect.DeepEqual(got, []Kind{Left, Joined}) {
		t.Error(got)
	}
}

func TestMoreThanIsAskedForIsCounted(t *testing.T) {
	from, to := scenario.Demo(), scenario.Demo()
	s := &to.Scenarios[0]
	s.Note, s.Months, s.RollExposures = "another", 13, 24
	for most, left := range map[int]int{0: 3, 2: 1, 3: 0, 4: 0} {
		if list, more := Between(from, to, most); len(list) != 3-left || more != left {
			t.Errorf("of at most %d: %d and %d more", most, len(list), more)
		}
	}
}
