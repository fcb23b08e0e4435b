package scenario_test

import (
	"fmt"

	"reelworth/internal/scenario"
)

// Reading tells every fault at once, each with its line and its place.
func ExampleRead() {
	file, faults := scenario.Read([]byte(`schema = 1
[[scenario]]
name = "Two ways"
home = "EUR"
[[scenario.offer]]
name = "shop roll"
kind = "boxed"
price = "9.90"
discount_percent = "140"
[scenario.offer.boxed]
exposures = 36
rolls_per_pack = 5
`))
	fmt.Println(file.Scenarios[0].Name, "with", len(file.Scenarios[0].Offers), "offer")
	for _, f := range faults {
		fmt.Println(f.Line, f.Path, f.Code)
	}
	// Output:
	// Two ways with 1 offer
	// 2 first_month missing
	// 2 baseline missing
	// 2 shooting missing-table
	// 5 offer[1].currency missing
	// 9 offer[1].discount_percent above-max
}

// What is written reads back the same; defaults are left out.
func ExampleWrite() {
	file := scenario.Demo()
	again, faults := scenario.Read(scenario.Write(file))
	fmt.Println(again.Scenarios[0].Name == file.Scenarios[0].Name, len(faults))
	// Output: true 0
}
