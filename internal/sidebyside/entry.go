package sidebyside

import (
	"context"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// Entry is one scenario among others.
type Entry struct {
	File     string // that it is from
	Scenario string // "" where the file itself cannot be read
	// Fault is why nothing can be said of it, worded; then nothing below is there.
	Fault string

	Comparison *compare.Comparison
	Pair       *compare.PairOutlook // what would turn the verdict; nil when one-sided
	Into       Into
}

// Of looks at one scenario that has been compared. faults are those it was compared with;
// currency is the common one, "" for none; f are published rates, nil for none. Its only
// error is ctx's.
func Of(ctx context.Context, c *compare.Comparison, faults []scenario.Fault, currency string, f *rates.File) (Entry, error) {
	c, err := compare.LookAtPair(ctx, c)
	if err != nil {
		return Entry{}, err
	}
	e := Entry{Scenario: c.Scenario.Name, Comparison: c, Pair: c.Outlook.Pair}
	if currency != "" {
		e.Into = into(&c.Scenario, faults, currency, f)
	}
	return e, nil
}

// Reel is the best reel, nil where none could be computed.
func (e *Entry) Reel() *compare.Offer {
	return e.offer(func(v *compare.Verdict) string { return v.Reel })
}

// Boxed is the best boxed offer, nil where none could be computed.
func (e *Entry) Boxed() *compare.Offer {
	return e.offer(func(v *compare.Verdict) string { return v.Boxed })
}

func (e *Entry) offer(name func(*compare.Verdict) string) *compare.Offer {
	if e.Comparison == nil {
		return nil
	}
	return e.Comparison.Find(name(&e.Comparison.Verdict))
}

// Against is the best reel compared with the best boxed offer, nil when one-sided.
func (e *Entry) Against() *compare.Against {
	if e.Comparison == nil {
		return nil
	}
	return e.Comparison.Verdict.Pair
}

// Volumes are who is cheaper at how many rolls a year, nil when one-sided or nothing is shot.
func (e *Entry) Volumes() []compare.VolumeRange {
	if e.Pair == nil {
		return nil
	}
	return e.Pair.Volumes
}

// RollsAYear is how many rolls the scenario shoots in its twelve months.
func (e *Entry) RollsAYear() (sum exact.Fraction) {
	if e.Comparison == nil {
		return sum
	}
	for _, rolls := range e.Comparison.Scenario.Shooting.RollsPerMonth {
		sum = sum.Add(exact.FromDecimal(rolls))
	}
	return sum
}

// Into is how a scenario's home currency becomes the common one.
type Into struct {
	Currency string          // "" where none is asked for
	Factor   *exact.Fraction // common for 1 of home; nil where there is no way
	Day      scenario.Date   // of the published rate it is by; zero where it is by the scenario's own quotes
	Missing  Missing
}

// Missing is why there is no way from one currency to another.
type Missing string

// The reasons.
const (
	MissingQuote Missing = "quote" // the scenario has no quotes for it, and there is no file
	MissingRate  Missing = "rate"  // neither has the file a day with both
)

// into finds the way: the scenario's own quotes, else the newest day of the file that has
// both currencies.
func into(s *scenario.Scenario, faults []scenario.Fault, currency string, f *rates.File) Into {
	way := Into{Currency: currency}
	if factor, fault := compare.Into(*s, faults, currency); fault == nil {
		way.Factor = &factor
		return way
	}
	if f == nil {
		way.Missing = MissingQuote
		return way
	}
	day, ok := f.NewestWithBoth(s.Home, currency)
	if !ok {
		way.Missing = MissingRate
		return way
	}
	factor, _ := day.Cross(s.Home, currency)
	way.Factor, way.Day = &factor, day.Date()
	return way
}

// Of is an amount of the home currency in the common one; nil where there is no way.
func (w Into) Of(amount exact.Fraction) *exact.Fraction {
	if w.Factor == nil {
		return nil
	}
	shown := amount.Mul(*w.Factor)
	return &shown
}
