package words

import (
	"testing"

	"reelworth/internal/scenario"
)

func TestPricesSeenAreSummedUp(t *testing.T) {
	seen := func(day int, price string) scenario.Seen {
		return scenario.Seen{Date: scenario.Date{Year: 2026, Month: 11, Day: day}, Price: dec(price)}
	}
	for _, test := range []struct {
		seen []scenario.Seen
		want string
	}{
		{nil, ""},
		{[]scenario.Seen{seen(3, "99")}, "Seen once, at USD 99.00 on 3 Nov 2026; lower than 118.00."},
		{[]scenario.Seen{seen(3, "120")}, "Seen once, at USD 120.00 on 3 Nov 2026; higher than 118.00."},
		{[]scenario.Seen{seen(3, "118.0")}, "Seen once, at USD 118.00 on 3 Nov 2026; the same as 118.00."},
		{[]scenario.Seen{seen(5, "99"), seen(3, "99"), seen(4, "129"), seen(9, "110")},
			"Seen 4 times, USD 99.00 (3 Nov 2026) to 129.00 (4 Nov 2026); 3 were lower than 118.00, 1 higher."},
		{[]scenario.Seen{seen(5, "120"), seen(3, "130")}, "Seen 2 times, USD 120.00 (5 Nov 2026) to 130.00 (3 Nov 2026); none was lower than 118.00."},
		{[]scenario.Seen{seen(5, "118"), seen(3, "90")}, "Seen 2 times, USD 90.00 (3 Nov 2026) to 118.00 (5 Nov 2026); none was higher than 118.00."},
	} {
		o := scenario.Offer{Currency: "USD", Price: dec("118"), Seen: test.seen}
		same(t, "finding", SeenFinding(&o, "en"), test.want)
	}
	o := scenario.Offer{Currency: "USD", Seen: []scenario.Seen{{Date: scenario.Date{Year: 2026, Month: 5, Day: 3}, Price: dec("99"), Note: "in a sale"}}}
	same(t, "line", SeenLine(&o, 0, "en"), "USD 99.00 on 3 May 2026, in a sale")
}
