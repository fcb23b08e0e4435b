package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Headline is the answer in words.
type Headline struct {
	Text   string
	Strong string // the amount within Text, "" if none
	Saves  bool   // Strong is saved, so that it may have the colour of a saving
	Under  string // what stands below it, smaller; "" if nothing
}

// headlines is what is said of each verdict.
var headlines = map[compare.VerdictKind]func(pair) Headline{
	compare.VerdictReel:       pair.buyReel,
	compare.VerdictBoxed:      pair.buyBoxed,
	compare.VerdictClose:      pair.either,
	compare.VerdictReelIfKept: pair.reelIfKept,
	compare.VerdictUnlike:     pair.unlike,
	compare.VerdictOneSided:   pair.oneSided,
}

// Verdict is the headline of a comparison.
func Verdict(c *compare.Comparison, l money.Locale) Headline {
	p := pair{
		voice:   voiceOf(c, l),
		kind:    c.Verdict.Kind,
		reel:    c.Find(c.Verdict.Reel),
		boxed:   c.Find(c.Verdict.Boxed),
		against: c.Verdict.Pair,
	}
	if p.reel == nil && p.boxed == nil {
		return p.nothing(OnlyUnpriced(c))
	}
	if shot(&c.Scenario).IsZero() {
		return p.idle()
	}
	say, known := headlines[p.kind]
	if !known || p.reel == nil || p.boxed == nil || p.against == nil {
		return p.oneSided()
	}
	h := say(p)
	if p.kind != compare.VerdictClose {
		h.Under = join(h.Under, Changing(c, l))
	}
	return h
}

// pair is the best reel and the best boxed offer, and what is said of them.
type pair struct {
	voice
	kind        compare.VerdictKind
	reel, boxed *compare.Offer   // nil where there is none
	against     *compare.Against // the reel against the boxed
}

func (p pair) buyReel() Headline {
	strong := p.whole(p.against.SavingCash) + " in cash"
	text := fmt.Sprintf("%s saves %s %s", p.begin(p.reel), strong, period(p.s.Months))
	if over := p.over(); over != "" {
		text += " and leaves " + over + " over"
	}
	return Headline{
		Text:   join(text+".", p.ahead()),
		Strong: strong,
		Saves:  p.against.SavingCash.Sign() > 0,
		Under:  join(p.allCounted(), p.paid()),
	}
}

func (p pair) buyBoxed() Headline {
	cash := p.against.SavingCash
	h := Headline{}
	switch cash.Sign() {
	case -1:
		h.Strong = p.whole(cash.Neg()) + " more"
		h.Text = fmt.Sprintf("Buy boxed: %s would cost %s %s.", p.called(p.reel), h.Strong, period(p.s.Months))
	case 0:
		h.Strong = p.whole(p.against.Saving.Neg()) + " more"
		h.Text = fmt.Sprintf("Buy boxed: %s would cost the same in cash %s, all counted %s.",
			p.called(p.reel), period(p.s.Months), h.Strong)
	default:
		h.Strong = p.whole(p.against.Saving.Neg()) + " more"
		h.Text = fmt.Sprintf("Buy boxed: %s would save %s in cash %s, but all counted cost %s.",
			p.called(p.reel), p.whole(cash), period(p.s.Months), h.Strong)
	}
	h.Under = join(p.inCash(), p.allCounted(), p.longRun(), p.cheapestBoxed())
	return h
}

func (p pair) either() Headline {
	cost := p.whole(p.boxed.Year.Cost)
	return Headline{
		Text:   fmt.Sprintf("About the same: %s either way. Decide by effort and taste.", cost),
		Strong: cost,
		Under:  sentence(fmt.Sprintf("%s %s; in cash, %s", p.counted(), period(p.s.Months), p.difference(p.against.SavingCash))),
	}
}

func (p pair) reelIfKept() Headline {
	cash := p.against.SavingCash.Neg()
	strong := p.whole(cash) + " in cash more"
	if cash.IsZero() {
		strong = "the same in cash"
	}
	text := fmt.Sprintf("%s only pays if you shoot what is left: %s %s", p.begin(p.reel), strong, period(p.s.Months))
	if over := p.over(); over != "" {
		text += ", " + over + " over"
	} else {
		left := p.reel.Year.LeftBesideFilm()
		text = fmt.Sprintf("%s only pays if what is left gets used or sold: %s %s, supplies and equipment worth %s over",
			p.begin(p.reel), strong, period(p.s.Months), p.whole(left))
	}
	return Headline{Text: text + ".", Strong: strong, Under: join(p.allCounted(), p.paid())}
}

func (p pair) unlike() Headline {
	lacking, counting := p.reel, p.boxed
	if p.reel.CountsDeveloping {
		lacking, counting = p.boxed, p.reel
	}
	return Headline{
		Text: "Not comparable yet: one counts developing, the other does not.",
		Under: fmt.Sprintf("Choose Developing for %s, or leave it out for %s too.",
			p.called(lacking), p.called(counting)),
	}
}

func (p pair) oneSided() Headline {
	only, missing := p.reel, scenario.KindBoxed
	if only == nil {
		only, missing = p.boxed, scenario.KindReel
	}
	roll := p.amount(only.PerRoll.Total) + " a roll"
	h := Headline{
		Text: fmt.Sprintf("%s, %s %s. %s", roll, p.whole(only.Year.Total), perPeriod(p.s.Months),
			p.completion(missing)),
		Strong: roll,
	}
	if !only.Year.Cost.Equal(only.Year.Total) {
		h.Under = fmt.Sprintf("That is cash. All counted, %s%s.", p.whole(only.Year.Cost), p.withOver(only))
	}
	return h
}

// idle is said when nothing is shot, so that there is no year to compare.
func (p pair) idle() Headline {
	h := Headline{Text: "Nothing is shot yet: enter the rolls you shoot in a month."}
	if !yearShot(p.s).IsZero() {
		h.Text = fmt.Sprintf("Nothing is shot yet %s: enter rolls, or compare more months.", period(p.s.Months))
	}
	if p.reel != nil && p.boxed != nil {
		h.Under = fmt.Sprintf("In the long run a roll from %s costs %s, boxed %s.",
			p.called(p.reel), p.amount(p.reel.PerRoll.Total), p.amount(p.boxed.PerRoll.Total))
	}
	return h
}

// completion says what makes a one-sided answer a comparison.
func (p pair) completion(missing scenario.Kind) string {
	add := map[scenario.Kind]string{
		scenario.KindReel:  "Add a reel to compare.",
		scenario.KindBoxed: "Add boxed rolls to compare.",
	}
	for i := range p.s.Offers {
		if p.s.Offers[i].Kind == missing {
			return fmt.Sprintf("Complete %s to compare.", Called(p.s, p.s.Offers[i].Name))
		}
	}
	return add[missing]
}

func (p pair) begin(o *compare.Offer) string  { return begin(p.s, o.Name) }
func (p pair) called(o *compare.Offer) string { return Called(p.s, o.Name) }

// over is the rolls the reel leaves, "" when they round to none.
func (p pair) over() string { return p.rollsOver(p.reel) }

func (p pair) rollsOver(o *compare.Offer) string {
	if o.Year.FilmLeftRolls.Round(0).Sign() <= 0 {
		return ""
	}
	return p.rolls(o.Year.FilmLeftRolls)
}

func (p pair) withOver(o *compare.Offer) string {
	if over := p.rollsOver(o); over != "" {
		return ", with " + over + " over"
	}
	return ""
}

// ahead says from when on the reel has cost less cash.
func (p pair) ahead() string {
	switch p.against.EvenMonth {
	case 0:
		return ""
	case 1:
		return "It is ahead from the start."
	}
	return fmt.Sprintf("It is ahead from %s on.", MonthName(p.s, p.against.EvenMonth))
}

// inCash says that a boxed headline spoke of cash, where all counted differs from it.
func (p pair) inCash() string {
	if p.against.SavingCash.Sign() < 0 {
		return "That is cash" + p.withOver(p.reel) + "."
	}
	return ""
}

// allCounted is the saving with what is left over, who saves it against whom, and where it
// comes from.
func (p pair) allCounted() string {
	text := p.counted()
	if parts := p.parts(); parts != "" {
		text += ": " + parts
	}
	return sentence(text)
}

// counted says what the reel costs against the boxed film, with what is left over.
func (p pair) counted() string {
	if p.against.Saving.IsZero() {
		return fmt.Sprintf("All counted, %s costs the same as %s", p.called(p.reel), p.called(p.boxed))
	}
	return fmt.Sprintf("All counted, %s costs %s than %s", p.called(p.reel), p.difference(p.against.Saving), p.called(p.boxed))
}

// parts says how much of the saving comes from the film and how much from developing.
func (p pair) parts() string {
	if !p.reel.CountsDeveloping {
		return ""
	}
	film, dev := p.filmPart(), p.against.SavingDeveloping
	way := p.developingWay()
	switch {
	case film.IsZero() && dev.IsZero():
		return ""
	case dev.IsZero():
		return "all of it by loading yourself"
	case film.IsZero():
		return "all of it by " + way
	case film.Sign() > 0 && dev.Sign() > 0:
		return fmt.Sprintf("%s of it by loading yourself, %s by %s", p.bareWhole(film), p.bareWhole(dev), way)
	case film.Sign() < 0 && dev.Sign() < 0:
		return fmt.Sprintf("loading yourself costs %s more, %s %s more",
			p.bareWhole(film.Neg()), way, p.bareWhole(dev.Neg()))
	case film.Sign() > 0:
		return fmt.Sprintf("loading yourself saves %s, %s costs %s more", p.bareWhole(film), way, p.bareWhole(dev.Neg()))
	}
	return fmt.Sprintf("%s saves %s, loading yourself costs %s more", way, p.bareWhole(dev), p.bareWhole(film.Neg()))
}

// filmPart is what of the saving comes from the film, such that in whole units it and the
// part from developing add up to the saving said.
func (p pair) filmPart() exact.Fraction {
	film, dev, all := p.against.SavingFilm, p.against.SavingDeveloping, p.against.Saving
	if p.tiny(film) || p.tiny(dev) || p.tiny(all) {
		return film
	}
	if part := all.Round(0).Sub(dev.Round(0)); part.Sign() == film.Sign() {
		return part
	}
	return film
}

// developingWay names how the reel's developing differs from the boxed one's.
func (p pair) developingWay() string {
	reel, boxed := p.process(p.reel), p.process(p.boxed)
	switch {
	case reel == nil || boxed == nil || reel.Name == boxed.Name:
		return "developing"
	case reel.Way == boxed.Way:
		return "developing differently"
	case reel.Way == scenario.Home:
		return "developing at home"
	}
	return "having it developed"
}

func (p pair) process(o *compare.Offer) *scenario.Developing {
	if offer := offerNamed(p.s, o.Name); offer != nil {
		return processNamed(p.s, offer.Developing)
	}
	return nil
}

// paid says after how many rolls the equipment has paid for itself; "" when there is
// none to pay, or when it never does.
func (p pair) paid() string {
	r := p.against.PaybackRolls
	if r == nil || r.Sign() <= 0 {
		return ""
	}
	return fmt.Sprintf("Equipment paid after %s.", p.rolls(*r))
}

// longRun says what would turn a boxed verdict, as far as one roll tells.
func (p pair) longRun() string {
	if p.against.SavingPerRoll.Sign() <= 0 {
		return fmt.Sprintf("Roll for roll, %s is no cheaper either.", p.called(p.reel))
	}
	text := fmt.Sprintf("In the long run a roll from %s costs %s less", p.called(p.reel), p.amount(p.against.SavingPerRoll))
	if r := p.against.PaybackRolls; r != nil && r.Sign() > 0 {
		return text + fmt.Sprintf(", and its equipment is paid after %s.", p.rolls(*r))
	}
	return text + "."
}

// cheapestBoxed names the boxed offer to buy where there are several.
func (p pair) cheapestBoxed() string {
	if p.called(p.boxed) != p.boxed.Name {
		return ""
	}
	return sentence("The cheapest boxed is " + p.boxed.Name)
}

// difference is a saving as what the reel costs: "EUR 12 more", "EUR 3 less".
func (p pair) difference(saving exact.Fraction) string {
	switch saving.Sign() {
	case -1:
		return p.whole(saving.Neg()) + " more"
	case 1:
		return p.whole(saving) + " less"
	}
	return "the same"
}

// shot is what is shot in the scenario's months, in rolls.
func shot(s *scenario.Scenario) exact.Fraction { return exact.FromDecimal(s.RollsShot()) }

// yearShot is what is shot in a year, in rolls.
func yearShot(s *scenario.Scenario) exact.Fraction {
	return exact.FromDecimal(s.Shooting.RollsAYear())
}
