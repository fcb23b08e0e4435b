package scenario

import (
	"strings"
	"testing"
)

// withRange is the small file with tables of ranges at its end.
func withRange(tables ...string) []byte {
	text := small
	for _, t := range tables {
		text += "\n  [[scenario.range]]\n  " + strings.ReplaceAll(t, "; ", "\n  ") + "\n"
	}
	return []byte(text)
}

func TestRangesAreReadAndWritten(t *testing.T) {
	f, faults := Read(withRange(
		`input = "rate:USD/EUR"; low = "0.80"; high = "1"`,
		`input = "offer.price"; offer = "Box"; low = 12; high = "16.50"`,
		`input = "offer.price"; low = "10"; high = "20"`,
		`input = "shooting.rolls_a_year"; low = "0"; high = "60"; colour = "blue"`))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	r := f.Scenarios[0].Ranges
	if len(r) != 4 || r[0].Input != "rate:USD/EUR" || Spell(r[0].Low) != "0.80" || r[1].Offer != "Box" || r[3].Extra["colour"] != "blue" {
		t.Errorf("%+v", r)
	}
	roundTrips(t, f)
	c := f.Scenarios[0].Clone()
	c.Ranges[0].Offer = "changed"
	c.Ranges[3].Extra["colour"] = "red"
	if r[0].Offer != "" || r[3].Extra["colour"] != "blue" {
		t.Error("changing a copy changes the ranges it was copied from")
	}
}

func TestFaultsOfRanges(t *testing.T) {
	for name, c := range map[string]struct {
		table, path string
		code        Code
	}{
		"no such input":        {`input = "offer.colour"; low = "1"; high = "2"`, "range[1].input", NoInput},
		"no such rate":         {`input = "rate:EUR/USD"; low = "1"; high = "2"`, "range[1].input", NoInput},
		"no input at all":      {`low = "1"; high = "2"`, "range[1].input", Missing},
		"no low":               {`input = "offer.price"; high = "2"`, "range[1].low", Missing},
		"upside down":          {`input = "offer.price"; low = "3"; high = "2"`, "range[1].high", RangeNotUp},
		"no range":             {`input = "offer.price"; low = "3"; high = "3.0"`, "range[1].high", RangeNotUp},
		"a price of nothing":   {`input = "offer.price"; low = "0"; high = "2"`, "range[1].low", NotForInput},
		"a rate of nothing":    {`input = "rate:USD/EUR"; low = "0"; high = "2"`, "range[1].low", NotForInput},
		"less than nothing":    {`input = "offer.shipping"; low = "-1"; high = "2"`, "range[1].low", NotForInput},
		"every roll is ruined": {`input = "offer.spoiled_percent"; low = "1"; high = "100"`, "range[1].high", NotForInput},
		"no such offer":        {`input = "offer.price"; low = "1"; high = "2"; offer = "Bag"`, "range[1].offer", NoOffer},
	} {
		t.Run(name, func(t *testing.T) {
			_, faults := Read(withRange(c.table))
			if len(faults) != 1 {
				t.Fatalf("%v", faults)
			}
			f := faults[0]
			if f.Path != c.path || f.Code != c.code || f.Line == 0 {
				t.Errorf("%+v", f)
			}
			if f.Place.Part != PartRange {
				t.Error("more than the range is spoilt")
			}
		})
	}
	_, faults := Read(withRange(`input = "offer.price"; low = "1"; high = "2"`, `input = "offer.price"; low = "1"; high = "3"`))
	if len(faults) != 1 || faults[0].Path != "range[2]" || faults[0].Place.Part != PartRange {
		t.Error(faults)
	}
}
