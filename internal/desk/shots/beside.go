package main

import (
	"os"
	"path/filepath"

	"github.com/shopspring/decimal"

	"reelworth/internal/desk"
	"reelworth/internal/scenario"
)

// beside sets the demo side by side with made-up files, all in a common currency.
func beside(common string) func(*desk.Harness) {
	return func(h *desk.Harness) {
		dir, err := os.MkdirTemp("", "beside")
		if err != nil {
			panic(err)
		}
		defer os.RemoveAll(dir)
		keep := func(name string, data []byte) string {
			path := filepath.Join(dir, name)
			if err := os.WriteFile(path, data, 0o600); err != nil {
				panic(err)
			}
			return path
		}
		h.Beside(common,
			keep("harbour.toml", scenario.Write(elsewhere())),
			keep("torn.toml", []byte("schema = 5\n[[scenario]\nname = \"Torn\"\n")))
	}
}

// elsewhere is the demo in another country, in a longer year, and with one kind of film.
func elsewhere() scenario.File {
	f := scenario.Demo()
	abroad := f.Scenarios[0].Clone()
	abroad.Name, abroad.Home = "Harbour year, two cameras", "AUD"
	abroad.Rates = append(abroad.Rates, scenario.Rate{One: "EUR", Equals: decimal.RequireFromString("1.7572"), In: "AUD"})
	few := f.Scenarios[0].Clone()
	few.Name = "A roll a month"
	for i := range few.Shooting.RollsPerMonth {
		few.Shooting.RollsPerMonth[i] = decimal.NewFromInt(1)
	}
	one := f.Scenarios[0].Clone()
	one.Name, one.Offers = "Shop rolls alone", one.Offers[:1]
	f.Scenarios = []scenario.Scenario{abroad, few, one}
	return f
}
