package scenario

import (
	"strconv"

	"github.com/shopspring/decimal"
)

// standardRoll is the exposures of a full cassette.
const standardRoll = 36

// NewInHand is a reel in hand to begin with, of 100 ft as reels mostly are (common
// practice, no source); taken says which names are.
func NewInHand(home string, bought Date, taken func(name string) bool) InHand {
	r := Defaults[InHand]()
	r.Length, r.LengthUnit, r.Exposures = decimal.New(100, 0), Feet, standardRoll
	r.Currency, r.Bought = home, bought
	for n := 1; ; n++ {
		if r.Name = "Reel " + strconv.Itoa(n); !taken(r.Name) {
			return r
		}
	}
}
