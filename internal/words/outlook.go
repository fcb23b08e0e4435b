package words

import (
	"fmt"
	"strings"

	"reelworth/internal/compare"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Flips says what would change the answer of a pair, the nearest first: one sentence for
// each of its crossings. nil for no pair.
func Flips(c *compare.Comparison, p *compare.PairOutlook, l money.Locale) (list []string) {
	if p == nil {
		return nil
	}
	r := rivals{voiceOf(c, l), p.Offer, p.Other}
	for _, x := range compare.Crossings(p.Flips) {
		if x.Input == scenario.InputRollsAYear {
			list = append(list, r.volumes(p.Volumes).crossing(x))
		} else {
			list = append(list, r.crossing(x, p.Saving.Sign()))
		}
	}
	return list
}

// crossing is the sentence of one crossing, but for one of the rolls a year.
func (r rivals) crossing(x compare.Crossing, sign int) string {
	text := r.iff(x, sign)
	if !x.At.Equal(x.Today) {
		text += "; today " + r.today(x)
	}
	return text + "."
}

// iff is crossing without today's value and without a full stop.
func (r rivals) iff(x compare.Crossing, sign int) string {
	then := r.offer
	if sign > 0 {
		then = r.other
	}
	winner := r.is(then)
	if x.Input == scenario.InputOfferPrice && then == r.offer || x.Input == scenario.InputBaselinePrice && then == r.other {
		winner = "it is"
	}
	return fmt.Sprintf("If %s, %s cheaper", r.condition(x), winner)
}

// is is an offer as the subject of a sentence with its verb.
func (r rivals) is(name string) string {
	called := Called(r.s, name)
	if called == "the boxed rolls" {
		return called + " are"
	}
	return called + " is"
}

// condition is what must come about. Of what goes in steps it claims that step alone.
func (r rivals) condition(x compare.Crossing) string {
	switch x.Input {
	case scenario.InputRollsAYear:
		return fmt.Sprintf("you shoot %s rolls a year", r.plain(x.At, 0))
	case scenario.InputSpoiledPercent:
		return fmt.Sprintf("%s %s %% of %s is spoiled", choice(x.Up, "as much as", "only"), r.plain(x.At, 1), Called(r.s, r.offer))
	}
	subject := r.subject(x.Input)
	at, back := r.stretch(x)
	end := ""
	if back != nil {
		end = choice(x.Up, " and less than ", " and more than ") + r.asTyped(x.Input, *back)
	}
	if x.At.Equal(x.Today) {
		return subject + choice(x.Up, " goes up at all", " goes down at all") + strings.Replace(end, " and", ", but", 1)
	}
	verb := "costs"
	switch x.Input {
	case scenario.InputDutyPercent, scenario.InputTaxPercent:
		verb = "is"
	case scenario.InputHourlyValue:
		verb = "is worth"
	}
	if at.IsZero() {
		return subject + " " + verb + " nothing"
	}
	return fmt.Sprintf("%s %s %s than %s", subject, verb, choice(x.Up, "more", "less"), r.asTyped(x.Input, at)) + end
}

// subject is an input as the subject of a condition.
func (r rivals) subject(input scenario.Input) string {
	switch input {
	case scenario.InputOfferPrice:
		return r.unitOf(r.offer)
	case scenario.InputBaselinePrice:
		return r.unitOf(r.other)
	case scenario.InputOfferDeveloping:
		return "developing a cassette of " + Called(r.s, r.offer) + r.besides(r.offer)
	case scenario.InputBaselineDeveloping:
		return "developing a cassette of " + Called(r.s, r.other) + r.besides(r.other)
	}
	return r.name(input)
}

// unitOf is what one price buys.
func (r rivals) unitOf(name string) string {
	called := Called(r.s, name)
	if called == "the boxed rolls" {
		return "a boxed roll"
	}
	return called
}

func joinUnit(currency, number string) string {
	if currency == "" {
		return number
	}
	return currency + " " + number
}

// today is an input's value today, as it was typed; what is brought to another currency is
// rounded like any amount.
func (r rivals) today(x compare.Crossing) string {
	if r.in.Currency != "" && compare.InHome(x.Input) {
		return r.bareValue(x.Input, x.Today)
	}
	if r.currency(x.Input) != "" || x.Quote >= 0 {
		return r.bareAsTyped(x.Input, x.Today)
	}
	return r.asTyped(x.Input, x.Today)
}

func choice(yes bool, a, b string) string {
	if yes {
		return a
	}
	return b
}

// AheadLeftOut says that a table of more than so many scenarios leaves out what would change
// their answers.
func AheadLeftOut(most int) string {
	return fmt.Sprintf("What would change the answer, and how many to order at once, is left out of tables of more than %d scenarios. Name one scenario to see it.", most)
}

// Changing is what would change the verdict in short: the rolls a year, and the nearest
// other input. It is "" until an outlook was asked for, and where no winner is named.
func Changing(c *compare.Comparison, l money.Locale) string {
	if c.Outlook == nil || c.Outlook.Pair == nil || c.Verdict.Kind == compare.VerdictUnlike {
		return ""
	}
	p := c.Outlook.Pair
	r := rivals{voiceOf(c, l), p.Offer, p.Other}
	text := r.volumes(p.Volumes).sentence()
	for _, x := range compare.Crossings(p.Flips) {
		if x.Input != scenario.InputRollsAYear {
			return join(text, r.iff(x, p.Saving.Sign())+".")
		}
	}
	return text
}

// Payback says after how many rolls the equipment that only this offer needs is paid,
// and in which month that is at the scenario's pace; "" where it never is.
func Payback(s *scenario.Scenario, a *compare.Against, l money.Locale) string {
	switch {
	case a == nil || a.PaybackRolls == nil:
		return ""
	case a.PaybackRolls.Sign() <= 0:
		return "There is no equipment to pay for."
	}
	text := "Equipment paid after " + voice{s: s, l: l}.rolls(*a.PaybackRolls)
	if m := compare.MonthShot(s, *a.PaybackRolls); m > 0 {
		text += ", in " + MonthAndYear(s, m) + " at this pace"
	}
	return text + "."
}

// Ceiling says up to which price an offer still saves a percent of a roll, which is another
// measure than the year that flips go by.
func Ceiling(c *compare.Comparison, offer string, ceiling *compare.Ceiling, l money.Locale) string {
	if ceiling == nil {
		return ""
	}
	v := voiceOf(c, l)
	return fmt.Sprintf("Roll for roll, in the long run, %s saves %s up to a price of %s.",
		Called(v.s, offer), v.percent(ceiling.SavingPercent), l.Amount(ceiling.Price, ceiling.Currency))
}

// NothingToDraw is why there is no chart of what would change the answer.
const NothingToDraw = "there is nothing to draw: choose a way to buy that can be computed and compared with another"
