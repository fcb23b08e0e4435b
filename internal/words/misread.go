package words

import (
	"errors"
	"fmt"
	"strings"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// NotTaken is why a text that was typed is no value, and what to type instead, for where
// there is room for that alone.
func NotTaken(err error) (why, remedy string) {
	var unreadable *money.Unreadable
	var unclear *money.Unclear
	var uneven *scenario.Uneven
	switch {
	case errors.As(err, &unreadable):
		wrong, remedy := unread(unreadable)
		return wrong + " " + remedy, remedy
	case errors.As(err, &unclear):
		why = WhichNumber(unclear)
	case errors.As(err, &uneven) && uneven.Negative:
		why = "rolls cannot be fewer than none; write 0 or more"
	case errors.As(err, &uneven):
		why = fmt.Sprintf("a month would have more than %s rolls; write fewer", money.English.Number(exact.Int(int64(uneven.Most)), 0))
	default:
		why = err.Error()
	}
	return why, why
}

// WhichNumber says what a text is that may be two numbers, or one written otherwise.
func WhichNumber(u *money.Unclear) string {
	if len(u.Meanings) == 1 {
		return fmt.Sprintf("%s is not how numbers are written here. If %[2]s is meant, write %[2]s.", curly(u.Text), u.Meanings[0].Spelling)
	}
	var spellings []string
	for _, m := range u.Meanings {
		spellings = append(spellings, m.Spelling)
	}
	return fmt.Sprintf("%s could mean %s. Write the one that is meant.", curly(u.Text), listed(spellings, "or"))
}

// unread is why a text is no number, and what to write.
func unread(e *money.Unreadable) (wrong, remedy string) {
	text, about := curly(e.Text), append(e.About, "", "")
	switch e.Because {
	case money.NothingWritten:
		return "Nothing is written.", "Write a number, such as " + e.Example + "."
	case money.NoDigits:
		return text + " has no digits.", "Write a number, such as " + e.Example + "."
	case money.PowerOrSum:
		return text + " has a power of ten or a sum in it.", "Write the number out in full, such as " + e.Example + "."
	case money.SeveralNumbers:
		return text + " is more than one number.", "Write one number, such as " + e.Example + "."
	case money.PlusSign:
		return text + " has a plus sign.", "Leave the plus sign out."
	case money.PercentSign:
		return text + " has a percent sign.", "Leave it out: the unit stands beside the field."
	case money.StrayDash:
		return text + " has a dash that is not a minus in front.", "Write the number alone, such as " + e.Example + "."
	case money.StrayMark:
		return text + " has a stray sign beside the number.", "Write the number alone, such as " + e.Example + "."
	case money.TooLong:
		return text + " is too long.", "Write at most 12 digits before the decimal sign and 12 after it."
	case money.WrongGroups:
		return "The digits of " + text + " are not in groups of three.", "Write " + listed(e.About, "or") + "."
	case money.TwoCurrencies:
		return curly(about[0]) + " and " + curly(about[1]) + " are two currencies.", "Leave one of them."
	case money.NoSuchCode:
		return about[0] + " is not an ISO 4217 currency in use today.", "Write the code of one that is, such as EUR."
	case money.NoSuchSign:
		return curly(about[0]) + " is no currency known here.", "Write the number alone, or with an ISO 4217 code, such as EUR."
	}
	return text + " is not a number in any form known here.", "Write it such as " + e.Example + "."
}

// curly is text in quotation marks, cut to what fits beside a field.
func curly(text string) string {
	const most = 30
	r := []rune(strings.ToValidUTF8(strings.TrimSpace(text), "\ufffd"))
	if len(r) > most {
		r = append(r[:most-1], '…')
	}
	return "“" + string(r) + "”"
}
