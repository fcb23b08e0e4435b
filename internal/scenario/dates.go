package scenario

import (
	"cmp"
	"fmt"
	"time"
)

// Month is a calendar month. Its zero value is unset.
type Month struct {
	Year  int
	Month time.Month
}

// ParseMonth reads "YYYY-MM".
func ParseMonth(s string) (Month, error) {
	t, err := time.Parse("2006-01", s)
	if err != nil || t.Year() < 1 {
		return Month{}, fmt.Errorf("scenario: %q is no month", s)
	}
	return Month{t.Year(), t.Month()}, nil
}

// Add is the month n months later.
func (m Month) Add(n int) Month {
	t := time.Date(m.Year, m.Month+time.Month(n), 1, 0, 0, 0, 0, time.UTC)
	return Month{t.Year(), t.Month()}
}

// String is "YYYY-MM", or "" when unset.
func (m Month) String() string {
	if m == (Month{}) {
		return ""
	}
	return fmt.Sprintf("%04d-%02d", m.Year, int(m.Month))
}

// Date is a calendar day. Its zero value is unset.
type Date struct {
	Year  int
	Month time.Month
	Day   int
}

// DateOf is the day of t in t's own zone.
func DateOf(t time.Time) Date {
	y, m, d := t.Date()
	return Date{y, m, d}
}

// ParseDate reads "YYYY-MM-DD".
func ParseDate(s string) (Date, error) {
	t, err := time.Parse(time.DateOnly, s)
	if err != nil {
		return Date{}, fmt.Errorf("scenario: %q is no date", s)
	}
	return DateOf(t), nil
}

// DaysUntil is how many days later than d other is.
func (d Date) DaysUntil(other Date) int {
	return int(other.time().Sub(d.time()).Hours() / 24)
}

// Compare is −1, 0 or 1 as d is before, on or after other.
func (d Date) Compare(other Date) int {
	return cmp.Or(cmp.Compare(d.Year, other.Year), cmp.Compare(d.Month, other.Month), cmp.Compare(d.Day, other.Day))
}

// AddDays is the day n days later.
func (d Date) AddDays(n int) Date {
	return DateOf(time.Date(d.Year, d.Month, d.Day+n, 0, 0, 0, 0, time.UTC))
}

// YearsBefore is the same day n years earlier; 29 February becomes 28 where that year
// has none.
func (d Date) YearsBefore(n int) Date {
	b := Date{d.Year - n, d.Month, d.Day}
	if b.Month == time.February && b.Day == 29 && DateOf(b.time()) != b {
		b.Day = 28
	}
	return b
}

// String is "YYYY-MM-DD", or "" when unset.
func (d Date) String() string {
	if d == (Date{}) {
		return ""
	}
	return d.time().Format(time.DateOnly)
}

func (d Date) time() time.Time {
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC)
}
