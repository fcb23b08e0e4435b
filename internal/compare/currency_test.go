package compare

import (
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/money"
)

func convert(t *testing.T, b money.Book, amount, from, to string) exact.Fraction {
	t.Helper()
	route, err := b.Route(from, to)
	if err != nil {
		t.Fatal(err)
	}
	return route.Convert(frac(amount))
}

// Council Regulation (EC) No 1103/97, art. 4 and 5: rates of six significant figures,
// no inverse rates, an exact half goes up. The engine converts the same way: through
// terms, with a rate that is a fraction and never rounded.
func TestEuroRegulationConversions(t *testing.T) {
	book := money.Book{Home: "EUR", Quotes: []money.Quote{
		{One: "EUR", Equals: dec("239.640"), In: "SIT"},
		{One: "EUR", Equals: dec("1.95583"), In: "DEM"},
		{One: "EUR", Equals: dec("6.55957"), In: "FRF"},
	}}
	cents := rounding{places: 2}
	sameFigure(t, "500 at 239.640", cents.of(convert(t, book, "500", "SIT", "EUR")), "2.09")
	sameFigure(t, "1,000 at 239.640", cents.of(convert(t, book, "1000", "SIT", "EUR")), "4.17")
	sameFigure(t, "1,000 DEM in FRF through the euro", cents.of(convert(t, book, "1000", "DEM", "FRF")), "3353.85")
	sameFigure(t, "24.784", cents.of(frac("24.784")), "24.78")
	sameFigure(t, "24.785, an exact half", cents.of(frac("24.785")), "24.79")

	route, _ := book.Route("SIT", "EUR")
	offer := terms{home: cents, seller: cents, rate: route.Convert(exact.Int(1)), foreign: true, units: 1}
	sameFigure(t, "an order of 500", offer.order(exact.Int(500)).Charged, "2.09")
	sameFigure(t, "an order of 1,000", offer.order(exact.Int(1000)).Charged, "4.17")
}

// Euro foreign exchange reference rates of the European Central Bank, 2025-05-09.
func TestReferenceRatesCrossThroughTheEuro(t *testing.T) {
	book := money.Book{Home: "AUD"}
	for _, q := range [][2]string{{"USD", "1.1252"}, {"GBP", "0.8477"}, {"AUD", "1.7572"}, {"CAD", "1.5658"}, {"JPY", "163.36"}} {
		book.Quotes = append(book.Quotes, money.Quote{One: "EUR", Equals: dec(q[1]), In: q[0]})
	}
	sameFigure(t, "100 USD in AUD", convert(t, book, "100", "USD", "AUD").Round(2), "156.17")
	sameFigure(t, "GBP in AUD", convert(t, book, "1", "GBP", "AUD").Round(7), "2.0729031")
	sameFigure(t, "USD in JPY", convert(t, book, "1", "USD", "JPY").Round(6), "145.183079")
}

// 57.675 is a half that a float or a cut quotient gets wrong.
func TestRoundingDecidesOnTheExactValue(t *testing.T) {
	cents := rounding{places: 2}
	sameFigure(t, "57.675", cents.of(frac("57.675")), "57.68")
	sameFigure(t, "-57.675", cents.of(frac("-57.675")), "-57.68")
	cents.off = true
	sameFigure(t, "57.675 with rounding switched off", cents.of(frac("57.675")), "57.675")
}
