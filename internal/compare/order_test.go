package compare

import (
	"slices"
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// parcel is a scenario with one boxed offer to land, and its border.
func parcel(home string, border scenario.Border, offer scenario.Offer, rates ...scenario.Rate) scenario.Scenario {
	offer.Name, offer.Kind, offer.Boxed = "parcel", scenario.KindBoxed, &scenario.Boxed{RollsPerPack: 1, Exposures: 36}
	if offer.Units == 0 {
		offer.Units = 1
	}
	return scenario.Scenario{
		Home: home, Months: 12, RollExposures: 36, Border: border, Rates: rates, Offers: []scenario.Offer{offer},
	}
}

// landedOrder is the order of the only offer.
func landedOrder(t *testing.T, s scenario.Scenario) Order {
	t.Helper()
	c := Compare(s, nil, scenario.Date{})
	if f := c.Offers[0].Fault; f != nil {
		t.Fatalf("not computed: %s", f.Why.Code)
	}
	return c.Offers[0].Order
}

type wantLines struct {
	film, shipping, salesTax, charged, cardFee, duty, importTax, handling, landed string
}

func checkOrder(t *testing.T, o Order, w wantLines) {
	t.Helper()
	for _, l := range []struct {
		name string
		got  exact.Fraction
		want string
	}{
		{"film", o.Home.Film, w.film}, {"shipping", o.Home.Shipping, w.shipping}, {"sales tax", o.Home.SalesTax, w.salesTax},
		{"charged", o.Charged, w.charged}, {"card fee", o.Home.CardFee, w.cardFee}, {"duty", o.Home.Duty, w.duty},
		{"import tax", o.Home.ImportTax, w.importTax}, {"handling", o.Home.Handling, w.handling}, {"landed", o.Landed, w.landed},
	} {
		if l.want == "" {
			l.want = "0"
		}
		sameFigure(t, l.name, l.got, l.want)
	}
}

// Customs worked example of the Australian authorities (read in a copy): goods USD
// 1,274.00, postage and insurance USD 118.30, A$1 = US$0.9100, duty 5 % of the goods
// only, GST 10 % on goods, transport and duty. Formula: A New Tax System (Goods and
// Services Tax) Act 1999, s 13-20.
func TestAustralianCustomsExample(t *testing.T) {
	s := parcel("AUD",
		scenario.Border{DutyPercent: dec("5"), TaxPercent: dec("10"), TaxOnShipping: true},
		scenario.Offer{Currency: "USD", Price: dec("1274.00"), Shipping: dec("118.30"), Import: scenario.ImportBorder},
		scenario.Rate{One: "AUD", Equals: dec("0.9100"), In: "USD"})
	o := landedOrder(t, s)
	checkOrder(t, o, wantLines{film: "1400", shipping: "130", charged: "1530", duty: "70", importTax: "160", landed: "1760"})
	sameFigure(t, "duty and GST", o.Home.Duty.Add(o.Home.ImportTax), "230")
}

// New Zealand Customs Service, official-information release: goods 1,000, freight
// 100, GST 15 %; without duty GST 165.00, with 5 % duty 50.00 and GST 172.50.
func TestNewZealandCustomsExample(t *testing.T) {
	offer := scenario.Offer{Currency: "NZD", Price: dec("1000"), Shipping: dec("100"), Import: scenario.ImportBorder}
	border := scenario.Border{TaxPercent: dec("15"), TaxOnShipping: true}
	checkOrder(t, landedOrder(t, parcel("NZD", border, offer)),
		wantLines{film: "1000", shipping: "100", charged: "1100", importTax: "165", landed: "1265"})
	border.DutyPercent = dec("5")
	checkOrder(t, landedOrder(t, parcel("NZD", border, offer)),
		wantLines{film: "1000", shipping: "100", charged: "1100", duty: "50", importTax: "172.50", landed: "1322.50"})
}

// Worked example of the Canada Border Services Agency (read in a copy): USD 100 at
// 1.15, duty 4 %, GST 5 % of value and duty: 115.00; 4.60; 5.98; charges 10.58.
func TestCanadianCustomsExample(t *testing.T) {
	s := parcel("CAD", scenario.Border{DutyPercent: dec("4"), TaxPercent: dec("5")},
		scenario.Offer{Currency: "USD", Price: dec("100"), Import: scenario.ImportBorder},
		scenario.Rate{One: "USD", Equals: dec("1.15"), In: "CAD"})
	o := landedOrder(t, s)
	checkOrder(t, o, wantLines{film: "115", charged: "115", duty: "4.60", importTax: "5.98", landed: "125.58"})
	sameFigure(t, "charges", o.Home.Duty.Add(o.Home.ImportTax), "10.58")
}

// Australian authorities on consignments (read in a copy): six packages of A$200 with
// transport 150 pass the A$1,000 limit, duty 5 % of 1,200 = 60, GST 10 % of 1,410 =
// 141, total 201; sent one by one they stay below it.
func TestSixPackagesTogetherPassTheLimit(t *testing.T) {
	border := scenario.Border{
		DutyPercent: dec("5"), DutyFreeUpTo: dec("1000"), TaxPercent: dec("10"), TaxFreeUpTo: dec("1000"), TaxOnShipping: true,
	}
	offer := scenario.Offer{Currency: "AUD", Price: dec("200"), Units: 6, Shipping: dec("150"), Import: scenario.ImportBorder}
	together := landedOrder(t, parcel("AUD", border, offer))
	sameFigure(t, "duty", together.Home.Duty, "60")
	sameFigure(t, "GST", together.Home.ImportTax, "141")
	sameFigure(t, "duty and GST", together.Home.Duty.Add(together.Home.ImportTax), "201")

	offer.Units, offer.Shipping = 1, dec("25")
	alone := landedOrder(t, parcel("AUD", border, offer))
	sameFigure(t, "landed alone", alone.Landed, "225")
}

// The rules of the landed cost one by one, each worked by hand.
func TestLandedCostRules(t *testing.T) {
	usd := scenario.Rate{One: "USD", Equals: dec("0.5"), In: "EUR"}
	border := scenario.Border{
		DutyPercent: dec("10"), DutyFreeUpTo: dec("50"), DutyOnShipping: true,
		TaxPercent: dec("20"), TaxFreeUpTo: dec("50"), TaxOnShipping: true, HandlingFee: dec("7.005"),
	}
	for _, c := range []struct {
		name   string
		offer  scenario.Offer
		border func(*scenario.Border)
		want   wantLines
	}{
		{"a discount and further units",
			scenario.Offer{Currency: "EUR", Price: dec("10.01"), Units: 3, DiscountPercent: dec("5"), Shipping: dec("4"), ShippingEachExtra: dec("1.50"), Import: scenario.ImportNone},
			nil, wantLines{film: "28.53", shipping: "7", charged: "35.53", landed: "35.53"}},
		{"shipping free from exactly the film's price",
			scenario.Offer{Currency: "EUR", Price: dec("40"), Shipping: dec("4"), FreeShippingFrom: maybe("40"), Import: scenario.ImportNone},
			nil, wantLines{film: "40", charged: "40", landed: "40"}},
		{"shipping not free a cent below",
			scenario.Offer{Currency: "EUR", Price: dec("39.99"), Shipping: dec("4"), FreeShippingFrom: maybe("40"), Import: scenario.ImportNone},
			nil, wantLines{film: "39.99", shipping: "4", charged: "43.99", landed: "43.99"}},
		{"sales tax on the film alone",
			scenario.Offer{Currency: "EUR", Price: dec("10"), Shipping: dec("4"), SalesTaxPercent: dec("8.25"), Import: scenario.ImportNone},
			nil, wantLines{film: "10", shipping: "4", salesTax: "0.83", charged: "14.83", landed: "14.83"}},
		{"sales tax on shipping too",
			scenario.Offer{Currency: "EUR", Price: dec("10"), Shipping: dec("4"), SalesTaxPercent: dec("8.25"), SalesTaxOnShipping: true, Import: scenario.ImportNone},
			nil, wantLines{film: "10", shipping: "4", salesTax: "1.16", charged: "15.16", landed: "15.16"}},
		{"no card fee in the home currency",
			scenario.Offer{Currency: "EUR", Price: dec("10"), CardFeePercent: dec("2"), Import: scenario.ImportNone},
			nil, wantLines{film: "10", charged: "10", landed: "10"}},
		{"a card fee on everything charged abroad",
			scenario.Offer{Currency: "USD", Price: dec("10"), Shipping: dec("5"), CardFeePercent: dec("2"), Import: scenario.ImportNone},
			nil, wantLines{film: "5", shipping: "2.50", charged: "7.50", cardFee: "0.15", landed: "7.65"}},
		{"film is what is left of the charged amount",
			// 0.01 + 0.01 USD are EUR 0.01 together; shipping alone rounds to 0.01
			scenario.Offer{Currency: "USD", Price: dec("0.01"), Shipping: dec("0.01"), Import: scenario.ImportNone},
			nil, wantLines{film: "0", shipping: "0.01", charged: "0.01", landed: "0.01"}},
		{"import not decided counts nothing",
			scenario.Offer{Currency: "USD", Price: dec("200")},
			nil, wantLines{film: "100", charged: "100", landed: "100"}},
		{"at the border, exactly at the free limits: nothing, and no handling",
			scenario.Offer{Currency: "USD", Price: dec("100"), Shipping: dec("20"), Import: scenario.ImportBorder},
			nil, wantLines{film: "50", shipping: "10", charged: "60", landed: "60"}},
		{"at the border, above: duty, tax on it, handling rounded half away from zero",
			scenario.Offer{Currency: "USD", Price: dec("100.02"), Shipping: dec("20"), Import: scenario.ImportBorder},
			nil, wantLines{film: "50.01", shipping: "10", charged: "60.01", duty: "6", importTax: "13.20", handling: "7.01", landed: "86.22"}},
		{"at the border, shipping left out of both",
			scenario.Offer{Currency: "USD", Price: dec("200"), Shipping: dec("20"), Import: scenario.ImportBorder},
			func(b *scenario.Border) { b.DutyOnShipping, b.TaxOnShipping = false, false },
			wantLines{film: "100", shipping: "10", charged: "110", duty: "10", importTax: "22", handling: "7.01", landed: "149.01"}},
		{"prepaid: the seller takes the tax, whatever the free limit; no duty, no handling",
			scenario.Offer{Currency: "USD", Price: dec("50"), Shipping: dec("10"), CardFeePercent: dec("10"), Import: scenario.ImportPrepaid},
			nil, wantLines{film: "25", shipping: "5", charged: "36", cardFee: "3.60", importTax: "6", landed: "39.60"}},
		{"prepaid above the duty limit: duty and handling at the border",
			scenario.Offer{Currency: "USD", Price: dec("200"), Shipping: dec("10"), Import: scenario.ImportPrepaid},
			nil, wantLines{film: "100", shipping: "5", charged: "126", importTax: "21", duty: "10.50", handling: "7.01", landed: "143.51"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := border
			if c.border != nil {
				c.border(&b)
			}
			checkOrder(t, landedOrder(t, parcel("EUR", b, c.offer, usd)), c.want)
		})
	}
}

// A currency without minor units is billed in whole ones: round(8,450.5 × 1) = 8,451.
func TestSellerLinesRoundToTheSellersMinorUnit(t *testing.T) {
	s := parcel("EUR", scenario.Border{}, scenario.Offer{Currency: "JPY", Price: dec("8450.5"), Import: scenario.ImportNone},
		scenario.Rate{One: "EUR", Equals: dec("100"), In: "JPY"})
	o := landedOrder(t, s)
	sameFigure(t, "film in yen", o.Seller.Film, "8451")
	sameFigure(t, "landed", o.Landed, "84.51")
}

func TestReceiptSaysHowEachLineCame(t *testing.T) {
	c := Compare(quayside(), nil, scenario.Date{})
	ops := func(o Offer) (list []string) {
		for _, l := range o.Order.Receipt {
			list = append(list, string(l.Kind)+" "+string(l.How.Op))
		}
		return list
	}
	want := []string{"film price", "shipping shipping", "sales_tax ", "charged converted", "card_fee percent",
		"duty within", "import_tax percent", "handling ", "landed "}
	if got := ops(c.Offers[2]); !slices.Equal(got, want) {
		t.Errorf("the reel's receipt: %q, want %q", got, want)
	}
	tax := c.Offers[2].Order.Receipt[6].How
	sameFigure(t, "tax percent", tax.Percent, "23")
	sameFigure(t, "taxed amount", tax.Of, "130.11")

	s := quayside()
	s.Offers[2].Import, s.Offers[2].FreeShippingFrom = scenario.ImportPrepaid, maybe("100")
	s.Offers[0].Import, s.Offers[0].CardFeePercent = scenario.ImportUndecided, dec("1")
	c = Compare(s, nil, scenario.Date{})
	want = []string{"film price", "shipping free", "sales_tax ", "import_tax_prepaid percent", "charged converted",
		"card_fee percent", "duty within", "handling nothing-due", "landed "}
	if got := ops(c.Offers[2]); !slices.Equal(got, want) {
		t.Errorf("the prepaid receipt: %q, want %q", got, want)
	}
	want = []string{"film price", "shipping ", "sales_tax ", "charged ", "card_fee same-currency",
		"duty undecided", "import_tax undecided", "handling undecided", "landed "}
	if got := ops(c.Offers[0]); !slices.Equal(got, want) {
		t.Errorf("the undecided receipt: %q, want %q", got, want)
	}
}
