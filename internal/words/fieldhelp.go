package words

import (
	"regexp"
	"strings"
)

// FieldHelp says in a sentence or two what to type into a field of a scenario: where it
// stands on a seller's page, what is usual, what it does to the answer. The key is as in
// the file, with or without its indexes, "offer[3].reel.leader_mm" or "offer.reel.leader_mm";
// "shooting.rolls_a_year" is the sum of the months. It is "" for anything else.
//
// Figures in it are whole, because the reader's locale is not known here.
func FieldHelp(key string) string {
	key = index.ReplaceAllString(key, "")
	if text, known := fieldHelps[key]; known {
		return text
	}
	if text, known := reelHelps[key]; known {
		return text
	}
	if strings.HasPrefix(key, "reel.") {
		return fieldHelps["offer."+key]
	}
	return ""
}

// index is the place in an array within a key.
var index = regexp.MustCompile(`\[[0-9]+\]`)

// fieldHelps is the help by key, table by table in the order of the file.
//
// Facts of the trade in it: what a leader, a trailer, a fogged end, a short roll and test
// exposures are and how long they usually are, how often a cassette is filled, that
// remjet soils a lab's baths, that chemistry gets too old: common practice, no source.
// Which film has which pitch: SMPTE ST 93 is for camera film of the cinema, ST 139 for
// other film, from memory.
var fieldHelps = map[string]string{
	"name":           "What you call this scenario, such as A year in colour. Each name stands once in a file.",
	"note":           "Whatever you want to remember about this scenario. It changes no figure.",
	"home":           "The currency you pay in at home, such as EUR. Every result is told in it, and so is all you type outside the ways to buy.",
	"first_month":    "The month the comparison begins with, as year and month: 2027-01. The twelve figures of the months begin with it.",
	"months":         "How many months to look ahead, 1 to 60; 12 for a year. Looking further gives equipment more rolls to pay for itself.",
	"roll_exposures": "Exposures of the standard roll, usually 36. Rolls you shoot are counted in it, and every cost per roll is told for it.",
	"baseline":       "The way to buy that the others are held against, usually what you buy now. Every saving is told against it.",

	"rate.one":    "The currency whose worth the rate tells: EUR in 1 EUR = 163 JPY.",
	"rate.equals": "What one of the first currency is in the second, as on your bank's page. What the card takes on top belongs under Card fee.",
	"rate.in":     "The currency the rate is told in: JPY in 1 EUR = 163 JPY. A pair of currencies may stand either way round, but only once.",
	"rate.date":   "The day the rate is of, such as 2026-11-20. It changes no figure; you are told when it is more than 30 days old.",
	"rate.source": "Where the rate is from, such as your bank's page, to find it again. It changes no figure.",

	"shooting.rolls_per_month": "Standard rolls you shoot in this month, 0 for none. It decides when film runs out and more is ordered.",
	"shooting.rolls_a_year":    "Standard rolls you shoot in a year, such as 40. They are spread over the months in today's pattern. Little moves the answer more.",

	"border.duty_percent":     "Duty is a charge on goods from abroad. Look up film in the customs tariff; the customs authority decides what is due.",
	"border.duty_free_up_to":  "The free limit: film worth no more than this pays no duty, shipping left out. Your customs authority publishes it; 0 for none.",
	"border.duty_on_shipping": "Whether duty is taken on what shipping costs as well as on the film. The rules of your customs authority say.",
	"border.tax_percent":      "Import tax is what your country takes on goods from abroad in place of sales tax. The customs authority decides what is due.",
	"border.tax_free_up_to":   "The free limit: film worth no more than this pays no import tax, shipping left out. Type 0 where customs taxes every parcel.",
	"border.tax_on_shipping":  "Whether import tax is taken on what shipping costs as well as on the film. Customs rules differ from country to country.",
	"border.handling_fee":     "What the post or carrier asks for bringing a parcel through customs. It is paid once an order, and only if something is due.",

	"loading.cassette_price":       "A cassette is the small light-tight can that holds a roll. Type the price of an empty one, 0 if you get them for nothing.",
	"loading.cassette_loads":       "How often one cassette is filled before it is worn and lets light in, such as 5. Its price is shared by as many rolls.",
	"loading.cassette_pack":        "How many cassettes are sold together, 1 if singly. Whenever they run out, as many are bought.",
	"loading.cassettes_owned":      "Empty cassettes you have. They are used first, counted as new and as costing nothing.",
	"loading.consumables_per_roll": "Tape, a label and whatever else goes into loading one cassette. It is counted with every roll.",
	"loading.minutes_per_reel":     "Minutes a reel takes once, to set up and to clear away. They count only where your hour is worth something.",
	"loading.minutes_per_roll":     "Minutes to cut and load one cassette, such as 4. They count only where your hour is worth something.",
	"loading.hourly_value":         "What an hour of your time is worth to you, 0 if you enjoy the work. It is counted beside the cash, never as cash.",

	"loading.equipment.name":        "What you buy once to load film, such as a daylight loader or a changing bag. All reels share it.",
	"loading.equipment.price":       "What it costs new, delivered to you, in your home currency. It is paid in the first month you shoot.",
	"loading.equipment.resale":      "Resale is what you would get for it later, at most its price, 0 for nothing. Only the difference is counted as a cost.",
	"loading.equipment.lasts_rolls": "How many rolls it lasts until it is worn out, such as 200. Each roll bears its share of the price less resale.",
	"loading.equipment.owned":       "Yes if you have it. Then it costs nothing more, and loading film pays sooner.",

	"developing.name":                   "What you call this way of developing, such as Town lab, colour. Each way to buy names the one its film goes through.",
	"developing.way":                    "At a lab you pay for each cassette. At home you buy chemistry and a tank, and spend your time.",
	"developing.price":                  "What the lab asks for developing one cassette, as on its price list. Leave scans out, or count them for every way to buy.",
	"developing.chemistry_price":        "Chemistry is a set of chemicals that develops film. Type the price of one; its safety data sheet says how to handle it.",
	"developing.chemistry_rolls":        "Chemistry rolls are the rolls one set develops before it is used up, such as 16. Its instructions say.",
	"developing.chemistry_keeps_months": "Months an opened set keeps, as its instructions say; empty if for good. A new one is bought then, the old goes by local rules.",
	"developing.extra_per_roll":         "What a roll costs at home beside the chemistry, such as water, heat and a sleeve. 0 if too little to count.",
	"developing.minutes_per_roll":       "Minutes to develop one cassette, from filling the tank to hanging up the film. What your hour is worth stands under Loading.",

	"developing.equipment.name":        "What you buy once to develop film, such as a tank or a thermometer. All that is developed this way shares it.",
	"developing.equipment.price":       "What it costs new, delivered, in your home currency. It is paid in the first month you shoot, where this developing is chosen.",
	"developing.equipment.resale":      "Resale is what a buyer would give you for it later, at most its price. A tank that sells again costs less per roll.",
	"developing.equipment.lasts_rolls": "How many rolls it lasts in developing, such as 400. The more, the less each roll bears of its price.",
	"developing.equipment.owned":       "Yes if you have it. Then it costs nothing more, and developing at home pays sooner.",

	"offer.name":                  "What you call this way to buy, such as the film and its size. The list and the charts show it; each name stands once.",
	"offer.kind":                  "A reel is long film that you cut and load into cassettes yourself. Boxed rolls are ready to shoot.",
	"offer.seller":                "Who sells it, such as the shop in town. It changes no figure.",
	"offer.currency":              "The currency the seller charges, beside the price on the page, such as USD. Shipping and free shipping are in it too.",
	"offer.price":                 "What one costs on the seller's page, before a discount and before anything added at the checkout. The currency may be pasted too.",
	"offer.units":                 "How many you order at once. They share the landed cost, which is all you pay until they are in your hands.",
	"offer.on_hand":               "What you have on hand already. It is used first and costs nothing, which flatters this way to buy; 0 compares what is bought.",
	"offer.discount_percent":      "What a code or a sale takes off the price, in percent. It lowers the film, not the shipping.",
	"offer.shipping":              "What the seller asks for sending an order to you. Put one in the basket to see it; more in an order share it.",
	"offer.shipping_each_extra":   "What each further one in the same order adds to the shipping. Put two in the basket to see it; 0 for nothing.",
	"offer.free_shipping_from":    "From this sum of film on the seller sends for nothing, often said at the top of the page. Leave it empty if never.",
	"offer.sales_tax_percent":     "Tax that the seller adds at the checkout, in percent. Type 0 where the price includes it, as in most shops at home.",
	"offer.sales_tax_on_shipping": "Whether the seller adds that tax to the shipping as well. The sum at the checkout shows it.",
	"offer.card_fee_percent":      "What your card takes for paying in another currency, such as 2 %; its price list says. In your home currency nothing is taken.",
	"offer.price_rise_percent":    "Price rise is how much dearer one gets in a year, in percent, below 0 if cheaper. It is felt by what you order later.",
	"offer.import":                "Prepaid import is import tax collected by the seller at the checkout; else you pay it at the border. Not decided counts nothing.",
	"offer.keeps_months":          "Months until the film is too old, empty if never. Only the used share, what is shot by then, bears the cost of the whole.",
	"offer.developing":            "How this film is developed. Choose for every way to buy or for none, so that like is compared with like.",

	"offer.reel.length":          "How much film is on the reel, as its name or page says, such as 100 ft or 30 m. More film gives more rolls.",
	"offer.reel.length_unit":     "ft is feet, m is metres: choose the one on the seller's page. 100 ft are about 30 m.",
	"offer.reel.pitch":           "Perforation pitch is how far apart the holes at the edge are. Film for cinema cameras is mostly short, other film long.",
	"offer.reel.exposures":       "Exposures you load into each cassette, usually 36. Fewer in each mean more cassettes, and more film lost at their ends.",
	"offer.reel.leader_mm":       "The leader is the start of each roll, pulled out to thread the camera. It takes no pictures; 160 is usual.",
	"offer.reel.trailer_mm":      "The trailer is the end of each roll, taped to the spool in the cassette. It takes no pictures; 72 is usual.",
	"offer.reel.fogged_mm":       "The fogged end is the part lit while you tape film to the spool in daylight. 50 is usual, 0 if you load in the dark.",
	"offer.reel.start_waste_mm":  "What is lost once at the start of a reel, where it sees light on its way into the loader. 100 is usual.",
	"offer.reel.end_waste_mm":    "What is lost once at the end of a reel, where it is held by the core and cannot be wound off. 200 is usual.",
	"offer.reel.test_exposures":  "Test exposures are shot once a reel to try its speed and colours before the rest. They give no pictures; 0 for none.",
	"offer.reel.short_roll_from": "The short roll is the last, from what is left of the reel. Type the fewest exposures worth a cassette, such as 12.",
	"offer.reel.spoiled_percent": "Exposures of a hundred that scratches, light or a mishap in loading spoil, such as 3. The good ones bear their cost.",
	"offer.reel.remjet":          "Remjet is a black backing of soot on cinema film that spoils a lab's baths. Say yes if the film has it, and ask your lab first.",

	"offer.boxed.rolls_per_pack":  "Rolls you get for one price: 1 for a single roll, 5 for a pack of five.",
	"offer.boxed.exposures":       "Exposures of one roll, as printed on its box, such as 36 or 24. Rolls of other lengths are compared by the exposure.",
	"offer.boxed.spoiled_percent": "Exposures of a hundred that are expected to be bad, such as 10 in old film. Fresh film has 0. The good ones bear their cost.",

	"range.input": "The figure that may be higher or lower, such as offer.price or rate:USD/EUR. The tab What changes it tries it from low to high.",
	"range.offer": "The way to buy the range is for, by its name. Left empty, it is for all of them.",
	"range.low":   "The least this figure may come to, in its own unit. Without a range mostly 10 % less than today is tried.",
	"range.high":  "The most this figure may come to, in its own unit. Without a range mostly 10 % more than today is tried.",
}
