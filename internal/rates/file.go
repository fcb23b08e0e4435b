package rates

import (
	"slices"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// Euro is the currency that every published rate is for one of. It is 1 on every day.
const Euro = "EUR"

// File is what one file of published rates says. It is never changed once it is read, so
// that several goroutines may use it.
type File struct {
	currencies []string       // of the columns; the euro is not among them
	column     map[string]int // of each currency
	days       []row          // oldest first, at least one
	long       []exact.Fraction
}

// row is one day's rates, in the order of the columns.
type row struct {
	date  scenario.Date
	cells []cell
}

// Len is how many days the file has, at least 1.
func (f *File) Len() int { return len(f.days) }

// At is the day at a place, from 0, the oldest first.
func (f *File) At(place int) Day { return Day{f, place} }

// Newest is the last day of the file.
func (f *File) Newest() Day { return f.At(len(f.days) - 1) }

// Oldest is the first day of the file.
func (f *File) Oldest() Day { return f.At(0) }

// Currencies are those the file has a column for, the euro first.
func (f *File) Currencies() []string { return append([]string{Euro}, f.currencies...) }

// On is the day of that date; ok is false where the file has none, as for the days on
// which the bank is closed.
func (f *File) On(date scenario.Date) (d Day, ok bool) {
	place := f.Place(date)
	if place < len(f.days) && f.days[place].date == date {
		return f.At(place), true
	}
	return Day{}, false
}

// Place is where the first day stands that is not before date; Len where there is none.
func (f *File) Place(date scenario.Date) int {
	place, _ := slices.BinarySearchFunc(f.days, date, func(r row, d scenario.Date) int { return r.date.Compare(d) })
	return place
}

// WithBoth is the last day up to date, and at most so many days before it, that has a
// rate of both currencies; ok is false where there is none.
func (f *File) WithBoth(one, in string, date scenario.Date, within int) (d Day, ok bool) {
	for place := f.Place(date.AddDays(1)) - 1; place >= 0; place-- {
		d := f.At(place)
		if d.Date().DaysUntil(date) > within {
			break
		}
		if d.HasBoth(one, in) {
			return d, true
		}
	}
	return Day{}, false
}

// NewestWithBoth is the newest day that has a rate of both currencies; ok is false where
// there is none.
func (f *File) NewestWithBoth(one, in string) (d Day, ok bool) {
	for place := len(f.days) - 1; place >= 0; place-- {
		if d := f.At(place); d.HasBoth(one, in) {
			return d, true
		}
	}
	return Day{}, false
}

// Has says whether a currency has a rate on at least one day from place from on, before
// place to. The euro has.
func (f *File) Has(currency string, from, to int) bool {
	if currency == Euro {
		return true
	}
	column, there := f.column[currency]
	return there && slices.ContainsFunc(f.days[from:to], func(r row) bool { return r.cells[column] != none })
}

// Day is one day of a file.
type Day struct {
	file  *File
	place int
}

// Date is the day itself.
func (d Day) Date() scenario.Date { return d.file.days[d.place].date }

// Rate is how many of a currency make one euro; ok is false where the day has none.
func (d Day) Rate(currency string) (rate exact.Fraction, ok bool) {
	if currency == Euro {
		return exact.Int(1), true
	}
	column, there := d.file.column[currency]
	if !there {
		return rate, false
	}
	c := d.file.days[d.place].cells[column]
	if c == none {
		return rate, false
	}
	return d.file.value(c), true
}

// Cross is the rate between two currencies, 1 one = rate in: what the day says of in over
// what it says of one, never rounded. ok is false where the day does not have both.
func (d Day) Cross(one, in string) (rate exact.Fraction, ok bool) {
	a, hasOne := d.Rate(one)
	b, hasIn := d.Rate(in)
	if !hasOne || !hasIn {
		return rate, false
	}
	return b.Quo(a), true
}

// HasBoth says whether the day has a rate of both currencies.
func (d Day) HasBoth(one, in string) bool { return d.has(one) && d.has(in) }

func (d Day) has(currency string) bool { return d.file.Has(currency, d.place, d.place+1) }

// Currencies are those the day has a rate of, the euro first.
func (d Day) Currencies() []string {
	list := []string{Euro}
	for i, c := range d.file.currencies {
		if d.file.days[d.place].cells[i] != none {
			list = append(list, c)
		}
	}
	return list
}
