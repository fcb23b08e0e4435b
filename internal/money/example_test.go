package money_test

import (
	"fmt"
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/exact"
	"reelworth/internal/money"
)

// Yen come home by way of the dollar, which has a quote with both. The second quote is
// divided by; nothing is rounded until the end.
func ExampleBook_Route() {
	book := money.Book{Home: "EUR", Quotes: []money.Quote{
		{One: "USD", Equals: decimal.RequireFromString("0.8875"), In: "EUR"},
		{One: "USD", Equals: decimal.RequireFromString("150"), In: "JPY"},
	}}
	route, err := book.Route("JPY", "EUR")
	if err != nil {
		fmt.Println(err)
		return
	}
	euros := route.Convert(exact.Int(10_140))
	fmt.Println(euros, "becomes", money.Round(euros, "EUR"))

	_, err = book.Route("GBP", "EUR")
	fmt.Println(err)
	// Output:
	// 59.995 becomes 60
	// no rate between GBP and EUR
}

// The code always stands beside the amount, on the side and with the signs of the country.
func ExampleLocale_Amount() {
	breakable := strings.NewReplacer("\u00a0", " ", "\u202f", " ")
	for _, l := range []money.Locale{"en", "de", "fr"} {
		fmt.Println(breakable.Replace(l.Amount(exact.Ratio(123_450, 100), "EUR")))
	}
	// Output:
	// EUR 1,234.50
	// 1.234,50 EUR
	// 1 234,50 EUR
}
