package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Flips says what would turn an answer, the nearest first: one sentence for each side
// of a flip. saving is what the offer saves against the other today.
func Flips(c *compare.Comparison, offer, other string, saving exact.Fraction, flips []compare.Flip, l money.Locale) []string {
	r := rivals{voiceOf(c, l), offer, other}
	var list []string
	for _, t := range compare.Turns(flips) {
		list = append(list, r.turn(t, saving.Sign()))
	}
	return list
}

// turn is the sentence of one turn.
func (r rivals) turn(t compare.Turn, sign int) string {
	then := r.offer
	if sign > 0 {
		then = r.other
	}
	winner := r.is(then)
	if t.Input == scenario.InputOfferPrice && then == r.offer || t.Input == scenario.InputBaselinePrice && then == r.other {
		winner = "it is"
	}
	text := fmt.Sprintf("If %s, %s cheaper", r.condition(t), winner)
	if !t.At.Equal(t.Today) && t.Input != scenario.InputRollsAYear {
		text += "; today " + r.today(t)
	} else if t.Input == scenario.InputRollsAYear {
		text += "; now you shoot " + r.plain(t.Today, 2)
	}
	return text + "."
}

// is is an offer as the subject of a sentence with its verb.
func (r rivals) is(name string) string {
	called := Called(r.s, name)
	if called == "the boxed rolls" {
		return called + " are"
	}
	return called + " is"
}

// condition is what must come about.
func (r rivals) condition(t compare.Turn) string {
	switch t.Input {
	case scenario.InputRollsAYear:
		return fmt.Sprintf("you shoot %s rolls a year or %s", r.plain(t.At, 0), choice(t.Up, "more", "fewer"))
	case scenario.InputSpoiledPercent:
		return fmt.Sprintf("%s %% or %s of %s is spoiled", r.plain(t.At, 1), choice(t.Up, "more", "less"), Called(r.s, r.offer))
	}
	subject := r.subject(t.Input)
	if t.At.Equal(t.Today) {
		return subject + choice(t.Up, " goes up at all", " goes down at all")
	}
	verb := "costs"
	switch t.Input {
	case scenario.InputDutyPercent, scenario.InputTaxPercent:
		verb = "is"
	case scenario.InputHourlyValue:
		verb = "is worth"
	}
	if t.At.IsZero() {
		return subject + " " + verb + " nothing"
	}
	return fmt.Sprintf("%s %s %s than %s", subject, verb, choice(t.Up, "more", "less"), r.turning(t))
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

// turning is the value a turn is at, with as many places as tell it from today's.
func (r rivals) turning(t compare.Turn) string {
	text := r.value(t.Input, t.At)
	if text == r.value(t.Input, t.Today) {
		if _, in := pairOfRate(t.Input); in != "" {
			return r.plain(t.At, 12) + noBreak + in
		}
		return joinUnit(r.currency(t.Input), r.plain(t.At, 8))
	}
	return text
}

func joinUnit(currency, number string) string {
	if currency == "" {
		return number
	}
	return currency + " " + number
}

func (r rivals) today(t compare.Turn) string {
	switch currency := r.currency(t.Input); {
	case currency != "":
		return r.bare(t.Today, currency)
	case t.Quote >= 0 && t.Quote < len(r.s.Rates):
		return r.l.Field(r.s.Rates[t.Quote].Equals)
	}
	return r.value(t.Input, t.Today)
}

func choice(yes bool, a, b string) string {
	if yes {
		return a
	}
	return b
}

// Turning is what would turn the verdict in short: the rolls a year, and the nearest
// other input. It is "" until an outlook was asked for, and where no winner is named.
func Turning(c *compare.Comparison, l money.Locale) string {
	if c.Outlook == nil || c.Outlook.Pair == nil || c.Verdict.Kind == compare.VerdictUnlike {
		return ""
	}
	p := c.Outlook.Pair
	r := rivals{voiceOf(c, l), p.Offer, p.Other}
	text := ""
	if v := p.Volume(); v != nil {
		text = r.volume(v, p.Saving.Sign())
	}
	for _, t := range compare.Turns(p.Flips) {
		if t.Input != scenario.InputRollsAYear {
			return join(text, r.turn(t, p.Saving.Sign()))
		}
	}
	return text
}

// volume says at how many rolls a year the verdict turns.
func (r rivals) volume(v *compare.Flip, sign int) string {
	then := Called(r.s, r.offer) + " is cheaper"
	if sign > 0 {
		then = "buy boxed"
	}
	one := exact.Int(1)
	switch {
	case v.Below != nil && v.Above != nil:
		return fmt.Sprintf("Below %s and from %s rolls a year on, %s.", r.plain(v.Below.Add(one), 0), r.plain(*v.Above, 0), then)
	case v.Below != nil:
		return fmt.Sprintf("Below %s rolls a year, %s.", r.plain(v.Below.Add(one), 0), then)
	case v.Above != nil:
		return fmt.Sprintf("From %s rolls a year on, %s.", r.plain(*v.Above, 0), then)
	}
	return ""
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

// Ceiling says up to which price an offer still saves.
func Ceiling(c *compare.Comparison, offer string, ceiling *compare.Ceiling, l money.Locale) string {
	if ceiling == nil {
		return ""
	}
	v := voiceOf(c, l)
	return fmt.Sprintf("Up to %s %s still saves %s a roll.",
		l.Amount(ceiling.Price, ceiling.Currency), Called(v.s, offer), v.percent(ceiling.SavingPercent))
}
