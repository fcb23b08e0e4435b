package words

// ModelHelp is how the program computes, in plain words. The README tells the same in short.
func ModelHelp() []Passage {
	return []Passage{
		{Heading: "Exact until it is billed", Paragraphs: []string{
			"Every figure is kept as an exact fraction until a rule rounds it. Whatever somebody bills is rounded to the currency's smallest coin, " +
				"half away from zero, as a till does. A receipt therefore adds up, and equals the card statement.",
		}},
		{Heading: "An order", Paragraphs: []string{
			"The film less its discount, shipping, the seller's own tax, and a tax it collects for the border make one amount in the seller's currency, " +
				"which is converted once. Then come the card's fee, duty, import tax on the film, its shipping and the duty, and the carrier's fee if anything was due.",
			"Free limits are compared with the value of the film alone; above one the charge is on the whole.",
			"A rate is multiplied with or divided by. No inverse rate is made and rounded. A pair of currencies without a rate goes through a third.",
		}},
		{Heading: "A reel", Paragraphs: []string{
			"A reel loses its start and its end. Of the rest as many full rolls are cut as fit, each with its leader, its trailer and the end fogged in daylight, " +
				"then one short roll if it is long enough to be worth it.",
			"A frame is eight perforations: 38.00 mm at the long pitch, 37.92 mm at the short one.",
		}},
		{Heading: "The cost per roll", Paragraphs: []string{
			"It is told for the long run, for a standard roll of good exposures: film, shipping, tax, fees, cassettes, the wear of equipment, developing and your time. " +
				"Film that gets too old before you shoot it is paid for by the rolls you do shoot.",
		}},
		{Heading: "The year", Paragraphs: []string{
			"It is told month by month in cash. Film, cassettes and chemistry are bought when they run out, the oldest is used first, and what is too old is thrown away. " +
				"Equipment is bought when it is first needed.",
			"At the end, what is left is worth what it cost, as far as you would use it in the two years after. Cash is what leaves your wallet; " +
				"all counted also counts what is left, what equipment would sell for, and your time.",
		}},
		{Heading: "The verdict", Paragraphs: []string{
			"The best reel is held against the best boxed film. Less than 5 % apart is about the same. Where one counts developing and the other does not, no winner is named.",
			"What changes the answer looks for the nearest value of each figure at which the answer turns, and for how far each figure moves it.",
		}},
	}
}

// Source is what a part of the model is checked against, and where that was published.
type Source struct{ What, From string }

// Sources are what the computation is checked against in the project's own tests.
var Sources = []Source{
	{"perforation pitch, frame length", "SMPTE ST 139 (long pitch, 0.1870 in), SMPTE ST 93 (short pitch, 0.1866 in), tolerance in SMPTE 102-2002"},
	{"rolls from a reel", "a working lab's cut length, apug.org post 1270032; a bulk-loading FAQ, ccs.neu.edu/home/genie/bulk.html, archived 2006-01-27; " +
		"about 18 rolls of 36 from 100 ft is common practice, no source"},
	{"film fogged when loading in daylight", "2 in, from a camera manual of the 1950s, p. 16"},
	{"duty and import tax", "A New Tax System (Goods and Services Tax) Act 1999 (Australia), s 13-20, with a customs worked example; " +
		"an official-information release of the New Zealand Customs Service; a worked example of the Canada Border Services Agency"},
	{"conversion and rounding", "Council Regulation (EC) No 1103/97, articles 4 and 5"},
	{"cross rates", "the European Central Bank's euro foreign exchange reference rates of 2025-05-09"},
	{"smallest coins", "ISO 4217, as in the Unicode CLDR"},
	{"payback", "a managerial accounting textbook, Penn State acctg 211, § 7.2"},
	{"decimal arithmetic", "the General Decimal Arithmetic test vectors"},
}

// SourcesHelp are the sources as a passage.
func SourcesHelp() Passage {
	p := Passage{Heading: "What it is checked against", Linked: true}
	for _, s := range Sources {
		p.Paragraphs = append(p.Paragraphs, capital(s.What)+": "+s.From+".")
	}
	p.Paragraphs = append(p.Paragraphs, "Some of the official examples were read in copies, not at their publishers. How often a cassette can be reused, or how many frames "+
		"fog at a reel's ends in your loader, nobody publishes: those figures are yours, and what stands there at first is common practice, no source.")
	return p
}
