package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// warnings is what is said of each: what it is, then what to do.
var warnings = map[compare.WarningCode]func(warned) string{
	compare.WarnRemjetToLab:       warned.remjetToLab,
	compare.WarnDevelopingDiffers: warned.developingDiffers,
	compare.WarnDevelopingMissing: warned.developingMissing,
	compare.WarnImportUndecided:   warned.importUndecided,
	compare.WarnChemistryExpires:  warned.chemistryExpires,
	compare.WarnFilmExpires:       warned.filmExpires,
	compare.WarnOldQuote:          warned.oldQuote,
	compare.WarnLeftLastsLong:     warned.leftLastsLong,
	compare.WarnOnHandFree:        warned.onHandFree,
	compare.WarnNearLimit:         warned.nearLimit,
	compare.WarnNoDemand:          warned.noDemand,
	compare.WarnPriceRiseStops:    warned.priceRiseStops,
}

// Warning is a warning in words, in the home currency. A code without words of its own
// reads as it stands.
func Warning(w compare.Warning, c *compare.Comparison, l money.Locale) string {
	say, known := warnings[w.Code]
	if !known {
		return string(w.Code)
	}
	c = c.AtHome()
	text := say(warned{voiceOf(c, l), c, w})
	if w.Offer == "" {
		return text
	}
	return begin(&c.Scenario, w.Offer) + ": " + text
}

// warned is one warning about a comparison.
type warned struct {
	voice
	c *compare.Comparison
	w compare.Warning
}

func (w warned) remjetToLab() string {
	return fmt.Sprintf("this film has a remjet backing, soot that spoils the baths of an ordinary lab. "+
		"Ask %s before sending it, or choose a process that removes the backing.", w.process())
}

func (w warned) developingDiffers() string {
	return fmt.Sprintf("it is developed differently from the offer it is compared with (%s)%s. "+
		"Choose the same Developing for both to compare the film alone.", w.process(), w.developingShare())
}

// developingShare says what the other developing makes of the difference.
func (w warned) developingShare() string {
	pair := w.c.Verdict.Pair
	if pair == nil || pair.SavingDeveloping.IsZero() {
		return ""
	}
	part := w.whole(pair.SavingDeveloping.Abs())
	switch {
	case pair.SavingDeveloping.Sign() < 0:
		return ", which costs " + part + " more"
	case pair.Saving.Sign() > 0:
		return ", and " + part + " of the saving comes from that"
	}
	return ", which saves " + part
}

func (w warned) developingMissing() string {
	return "developing is not counted here, but is elsewhere, so its cost per roll looks lower than it is. " +
		"Choose Developing for it, or leave it out everywhere."
}

func (w warned) importUndecided() string {
	return "import tax is not decided, and nothing is counted for it, which flatters this way to buy. " +
		"Choose Import tax. What is due is decided by the customs authority."
}

func (w warned) chemistryExpires() string {
	return fmt.Sprintf("a set of chemistry (%s) is too old after %s, though it would do %s. "+
		"Mix smaller sets, or gather rolls and develop them together. "+
		"How long it keeps and how to dispose of it stand on its safety data sheet and in the local rules.",
		w.process(), w.counted(w.w.Amount.Round(1), "roll"), w.plain(w.w.Limit, 1))
}

func (w warned) filmExpires() string {
	o := w.c.Find(w.w.Offer)
	switch {
	case w.w.Amount.Sign() > 0:
		return fmt.Sprintf("film for %s is too old before it is shot, paid for and thrown away. %s, or shoot more.",
			w.counted(w.w.Amount.Round(1), "roll"), w.buyLess())
	case o == nil:
		return "some film is too old before it is shot. Buy less at a time, or shoot more."
	}
	return fmt.Sprintf("at this pace %s of an order is shot before it is too old; the cost per roll counts the rest as thrown away. "+
		"%s, or shoot more.", w.share(o.UsedShare), w.buyLess())
}

// buyLess is how to have less film at once: one order can be no less than one.
func (w warned) buyLess() string {
	switch o := w.c.Find(w.w.Offer); {
	case o == nil:
		return "Buy less at a time"
	case o.Order.Units > 1:
		return "Order fewer at a time"
	case o.Kind == scenario.KindReel:
		return "Buy a shorter reel"
	}
	return "Buy a smaller pack"
}

func (w warned) oldQuote() string {
	quote := "The rate " + w.w.Subject
	for _, r := range w.s.Rates {
		if r.One+"/"+r.In == w.w.Subject {
			quote = fmt.Sprintf("The rate %s is of %s", w.quote(r.One, r.Equals, r.In), Day(r.Date))
			break
		}
	}
	return fmt.Sprintf("%s, %s ago. Enter today's under Exchange rates.",
		quote, w.counted(exact.Int(int64(w.w.Count)), "day"))
}

func (w warned) leftLastsLong() string {
	return fmt.Sprintf("the film left (%s) lasts longer than 24 months, and what is shot later is counted as worth nothing. "+
		"%s.", w.counted(w.w.Amount.Round(1), "roll"), w.buyLess())
}

func (w warned) onHandFree() string {
	return "it starts with film that is there already and costs nothing, which flatters it. " +
		"Set Already there to 0 to compare what is bought."
}

// limitNames are the limits an order can be near.
var limitNames = map[string]string{
	"duty_free_up_to":    "the limit below which no duty is due",
	"tax_free_up_to":     "the limit below which no import tax is due",
	"free_shipping_from": "the sum from which shipping is free",
}

func (w warned) nearLimit() string {
	currency := w.s.Home
	advice := "A small change of price or rate crosses it, and what is due is decided by the customs authority."
	if w.w.Subject == "free_shipping_from" {
		if o := offerNamed(w.s, w.w.Offer); o != nil {
			currency = o.Currency
		}
		advice = "A little more in the order would ship it free."
	}
	return fmt.Sprintf("film for %s is just below %s, %s. %s", w.l.Amount(w.w.Amount, currency),
		limitNames[w.w.Subject], w.l.Amount(w.w.Limit, currency), advice)
}

func (w warned) noDemand() string {
	return "Nothing is shot in these months, so there is no year to compare. Enter rolls under The year's shooting."
}

func (w warned) priceRiseStops() string {
	o := offerNamed(w.s, w.w.Offer)
	fall := "a falling price"
	if o != nil {
		fall = fmt.Sprintf("a price that falls by %s a year", w.percent(exact.FromDecimal(o.PriceRisePercent).Abs()))
	}
	return fall + " reaches nothing within these months and stays there. Enter a smaller fall in Price rises a year."
}

// process is the process a warning names.
func (w warned) process() string {
	if w.w.Subject == "" {
		return "the lab"
	}
	return w.w.Subject
}
