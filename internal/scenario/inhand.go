package scenario

import (
	"time"

	"reelworth/internal/exact"
	"reelworth/internal/film"
)

// InHand is a physical reel that is being cut and loaded. It outlives the question of a
// year, so it stands beside the scenarios. How it is cut is said as in an offer.
type InHand struct {
	Name       string `toml:"name" rule:"required"`
	Note       string `toml:"note" rule:"longest=2000"`
	Offer      string `toml:"offer"` // that it was bought as; it need not be there
	Bought     Date   `toml:"bought"`
	KeepsUntil Date   `toml:"keeps_until"`
	// Paid is what this reel came to, landed, in Currency.
	Paid     Decimal `toml:"paid" rule:"min=0"`
	Currency string  `toml:"currency" rule:"currency"`
	Reel
	SessionWasteMM  Decimal    `toml:"session_waste_mm" rule:"min=0"`
	Speed           MaybeWhole `toml:"speed" rule:"min=1,max=25000"` // exposure index to set
	Process         string     `toml:"process"`
	LabelNote       string     `toml:"label_note" rule:"longest=2000"`
	CounterMM       Maybe      `toml:"counter_mm" rule:"above=0"` // of film per count
	CounterGrowthMM Decimal    `toml:"counter_growth_mm" rule:"min=0"`
	CounterZeroMM   Decimal    `toml:"counter_zero_mm" rule:"min=0"`
	CounterWraps    MaybeWhole `toml:"counter_wraps" rule:"min=2"`
	Loads           []Load     `toml:"load"`
	Results         []Result   `toml:"result"`
	Recounts        []Recount  `toml:"recount"`
	Extra           Extra
}

// MaybeWhole is a whole number that may be left unset.
type MaybeWhole struct {
	Int int
	Set bool
}

// Load is a number of cassettes loaded on one day.
type Load struct {
	Date      Date       `toml:"date" rule:"required"`
	Cassettes int        `toml:"cassettes" rule:"required,min=1,max=999"`
	Exposures int        `toml:"exposures" rule:"required,min=1,max=100"` // of each
	Counts    MaybeWhole `toml:"counts" rule:"min=0"`                     // that the counter showed
	Note      string     `toml:"note" rule:"longest=2000"`
	Extra     Extra
}

// Result is what came of cassettes once they were developed.
type Result struct {
	Date          Date   `toml:"date" rule:"required"`
	Cassettes     int    `toml:"cassettes" rule:"required,min=1,max=999"`
	Exposures     int    `toml:"exposures" rule:"required,min=1,max=100"` // of each
	Good          int    `toml:"good" rule:"required,min=0"`              // technically usable frames of all together
	LostOtherwise int    `toml:"lost_otherwise" rule:"min=0"`             // to the camera or the developing, as boxed film would have
	Note          string `toml:"note" rule:"longest=2000"`
	Extra         Extra
}

// Recount is what was measured to be left on the reel, end waste included.
type Recount struct {
	Date   Date    `toml:"date" rule:"required"`
	LeftMM Decimal `toml:"left_mm" rule:"required,min=0"`
	Note   string  `toml:"note" rule:"longest=2000"`
	Extra  Extra
}

// Film is the reel as it is used up, in millimetres.
func (r *InHand) Film() film.InHand {
	h := film.InHand{Reel: r.Cutting(), Counter: r.Counter(), SessionWaste: exact.FromDecimal(r.SessionWasteMM)}
	if len(r.Loads) > 0 {
		h.Loads = make([]film.Load, len(r.Loads))
	}
	for i, l := range r.Loads {
		h.Loads[i] = film.Load{
			Day: l.Date.number(), Cassettes: l.Cassettes, Exposures: l.Exposures, Counts: int64(l.Counts.Int), Counted: l.Counts.Set,
		}
	}
	for _, c := range r.Recounts {
		h.Recounts = append(h.Recounts, film.Recount{Day: c.Date.number(), Left: exact.FromDecimal(c.LeftMM)})
	}
	return h
}

// Counter is the loader's counter, one that is not set where there is none.
func (r *InHand) Counter() film.Counter {
	if !r.CounterMM.Set {
		return film.Counter{}
	}
	return film.Counter{
		PerCount: exact.FromDecimal(r.CounterMM.Decimal),
		Growth:   exact.FromDecimal(r.CounterGrowthMM),
		Zero:     exact.FromDecimal(r.CounterZeroMM),
		Wraps:    r.CounterWraps.Int,
	}
}

// number counts up with the days; it leaves days out.
func (d Date) number() int { return (d.Year*int(time.December)+int(d.Month))*31 + d.Day }

// Before says whether d is an earlier day than other.
func (d Date) Before(other Date) bool { return d.number() < other.number() }

// AddMonths is the day some months later, cut to that month's last; unset beyond the year
// 9999.
func (d Date) AddMonths(months int64) Date {
	if months > 12*9999 {
		return Date{}
	}
	first := time.Date(d.Year, d.Month+time.Month(months), 1, 0, 0, 0, 0, time.UTC)
	if first.Year() > 9999 {
		return Date{}
	}
	last := first.AddDate(0, 1, -1).Day()
	return Date{first.Year(), first.Month(), min(d.Day, last)}
}
