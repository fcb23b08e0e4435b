package catalogue

var fileFields = []Entry{
	{"schema", None, "Version", "version of the file format", "version of the file format, 1; the first line", ""},
}

var scenarioFields = []Entry{
	{"name", None, "Name", "name of the scenario", "what you call it; each name once",
		"What you call this scenario, such as A year in colour. Each name stands once in a file."},
	{"note", None, "Note", "note", "anything",
		"Whatever you want to remember about this scenario. It changes no figure."},
	{"home", None, "Home currency", "home currency", "the currency of every result, ISO 4217",
		"The currency you pay in at home, such as EUR. Every result is told in it, and so is all you type outside the ways to buy."},
	{"first_month", None, "First month", "first month", "the month it begins with, as `\"2027-01\"`",
		"The month the comparison begins with, as year and month: 2027-01. The twelve figures of the months begin with it."},
	{"months", Months, "Look ahead", "months to look ahead", "how many to look ahead, 1 to 60",
		"How many months to look ahead, 1 to 60; 12 for a year. Looking further gives equipment more rolls to pay for itself."},
	{"roll_exposures", Exposures, "A roll is", "exposures of a standard roll", "the standard roll that all costs per roll are told for, 1 to 100",
		"Exposures of the standard roll, usually 36. Rolls you shoot are counted in it, and every cost per roll is told for it."},
	{"baseline", None, "Compared with", "what the others are compared with", "the offer the others are compared with",
		"The way to buy that the others are compared with, usually what you buy now. Every saving is told against it."},
	{"shooting.rolls_per_month", Rolls, "Rolls in a month", "rolls per month", "twelve numbers; the first is for `first_month`",
		"Standard rolls you shoot in this month, 0 for none. It decides when film runs out and more is ordered."},
	{RollsAYear, Rolls, "Rolls a year", "rolls a year", "the sum of the twelve months",
		"Standard rolls you shoot in a year, such as 40. They are spread over the months in today's pattern."},
	{RollsAMonth, Rolls, "Rolls a month", "rolls a month", "what each month has in which anything is shot",
		"Standard rolls you shoot in a month, the same in each month of the season. The months themselves stand below."},
	{SeasonFrom, None, "Shot from", "first month of the season", "the first month in which anything is shot",
		"The first month of the year in which you shoot. In the months outside the season nothing is shot."},
	{SeasonUntil, None, "until", "last month of the season", "the last month in which anything is shot",
		"The last month of the year in which you shoot. It may be before the first one: from October until March."},
}

var rateFields = []Entry{
	{"rate.one", None, "One", "first currency of the exchange rate", "in \"1 `one` is `equals` `in`\"",
		"The currency whose worth the exchange rate tells: EUR in 1 EUR = 163 JPY."},
	{"rate.equals", None, "Rate", "exchange rate", "what one of the first currency is in the second",
		"What one of the first currency is in the second, as on your bank's page. What the card takes on top belongs under Card fee."},
	{"rate.in", None, "in", "second currency of the exchange rate", "the other currency",
		"The currency the rate is told in: JPY in 1 EUR = 163 JPY. A pair of currencies may stand either way round, but only once."},
	{"rate.date", None, "Date", "date of the exchange rate", "the day it is of",
		"The day the rate is of, such as 2026-11-20. It changes no figure; you are told when it is more than 30 days old."},
	{"rate.source", None, "Source", "source of the exchange rate", "where it is from",
		"Where the rate is from, such as your bank's page, to find it again. It changes no figure."},
}

var rangeFields = []Entry{
	{"range.input", None, "Figure", "figure of the range", "a figure of \"What changes the answer\"; they are listed below",
		"The figure that may be higher or lower, such as offer.price or rate:USD/EUR. The tab What changes it tries it from low to high."},
	{"range.offer", None, "Way to buy", "way to buy of the range", "only while that offer is compared with the baseline; without it for all",
		"The way to buy the range is for, by its name. Left empty, it is for all of them."},
	{"range.low", None, "Low", "low end of the range", "the least it may come to, where you know better than 10 % down",
		"The least this figure may come to, in its own unit. Without a range mostly 10 % less than today is tried."},
	{"range.high", None, "High", "high end of the range", "the most it may come to",
		"The most this figure may come to, in its own unit. Without a range mostly 10 % more than today is tried."},
}
