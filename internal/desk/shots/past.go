package main

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/desk"
	"reelworth/internal/desk/pages"
	"reelworth/internal/scenario"
)

// past looks back on so many days of made-up rates.
func past(days int) func(*desk.Harness) {
	return func(h *desk.Harness) {
		dir, err := os.MkdirTemp("", "rates")
		if err != nil {
			panic(err)
		}
		defer os.RemoveAll(dir)
		path := filepath.Join(dir, "all days.csv")
		if err := os.WriteFile(path, []byte(wandering(days)), 0o600); err != nil {
			panic(err)
		}
		h.Page(pages.Past)
		h.Rates(path)
	}
}

// wandering is a made-up file of rates with so many days: dollar, yen and the others go up
// and down in waves of their own.
func wandering(days int) string {
	var b strings.Builder
	b.WriteString("Date,USD,JPY,GBP,\n")
	last := scenario.Date{Year: 2026, Month: 11, Day: 23}
	for date, i := last, 0; i < days; date = date.AddDays(-1) {
		if date.DaysUntil(last)%7 > 4 {
			continue // closed at weekends
		}
		x := float64(i)
		usd := 1.13 + 0.13*math.Sin(x/700) + 0.05*math.Sin(x/90) + 0.01*math.Sin(x/7)
		jpy := 140 + 22*math.Sin(x/1500) + 6*math.Cos(x/130) + math.Sin(x/5)
		fmt.Fprintf(&b, "%s,%.4f,%.2f,%.4f,\n", date, usd, jpy, 0.86+0.05*math.Sin(x/400))
		i++
	}
	return b.String()
}

// seen is the demo with some prices seen of its reel.
func seen() scenario.File {
	f := scenario.Demo()
	o := &f.Scenarios[0].Offers[2]
	for i, price := range []string{"124.50", "129.00", "119.00", "99.00", "109.90", "118.00"} {
		o.See(scenario.Seen{Date: scenario.Date{Year: 2026, Month: 5, Day: 3}.AddDays(34 * i), Price: decimal.RequireFromString(price)})
	}
	return f
}
