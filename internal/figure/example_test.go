package figure_test

import (
	"bytes"
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/figure"
	"reelworth/internal/money"
	"reelworth/internal/palette"
	"reelworth/internal/scenario"
)

// A figure says its finding, holds its numbers as a table, and is written without a screen.
func ExampleCostPerRoll() {
	s := scenario.Demo().Scenarios[0]
	c := compare.Compare(s, nil, scenario.Date{})
	d := figure.CostPerRoll(&c, "", 800, figure.CostHeight(len(c.Offers)), figure.Style{Theme: palette.Paper, Locale: money.English})
	fmt.Println(d.Title())
	fmt.Printf("%s, %d rows\n", d.Table().Header[0], len(d.Table().Rows))
	var svg bytes.Buffer
	if err := d.WriteSVG(&svg); err != nil {
		fmt.Println(err)
	}
	fmt.Println(bytes.HasPrefix(svg.Bytes(), []byte("<?xml")))
	// Output:
	// A roll from the reel costs 10.40 less than the best boxed roll
	// EUR per roll of 36, 3 rows
	// true
}
