package words

import (
	"fmt"
	"strings"

	"reelworth/internal/scenario"
)

// What is said of faults that a scenario has, and that wait to be mended in the window.

// Asked says whether a fault is only that something was not typed yet: a rate, or a price.
func Asked(f scenario.Fault) bool {
	unpriced := f.Code == scenario.NotAbove && strings.HasSuffix(f.Path, "].price") && f.Number.IsZero()
	return f.Code == scenario.NoRate || unpriced
}

// Beside is what stands beside a field whose value is at fault: what is wrong, and what
// to do there.
func Beside(f scenario.Fault) string {
	s := sayingOf(&f)
	switch f.Code {
	case scenario.Missing, scenario.Empty, scenario.MissingTable:
		return s.wrong + "; type it here"
	case scenario.WrongKind, scenario.Unquoted, scenario.NotNumber, scenario.TooLong, scenario.NotMonth, scenario.NotDate,
		scenario.NoSuchMonth, scenario.NoSuchDay, scenario.NotTable, scenario.NotTables, scenario.WrongCount:
		return s.wrong + "; type it anew"
	case scenario.NotAmong, scenario.NoCurrency, scenario.CurrencyCase, scenario.NoBaseline, scenario.NoProcess:
		return s.wrong + "; choose another"
	}
	return s.wrong + "; " + s.remedy
}

// OnTop is what is said of a fault for which the form has no field.
func OnTop(f scenario.Fault) string {
	s := sayingOf(&f)
	what := FieldName(f.Path, nil)
	switch {
	case f.Code == scenario.WrongTable, strings.HasPrefix(f.Path, "offer[") && s.joins == predicate:
		return fmt.Sprintf("%s %s; choose the other kind, then this one again.", what, s.wrong)
	case s.joins == alone:
		return capital(s.wrong) + "; " + s.remedy + "."
	}
	return what + " " + s.wrong + "; " + s.remedy + "."
}

// NotUsed says which parts of a scenario beside its offers are left out of the answer, and
// why.
func NotUsed(faults []scenario.Fault) []string {
	var said []string
	ranges := 0
	for i := range faults {
		f := &faults[i]
		switch f.Place.Part {
		case scenario.PartBaseline:
			said = append(said, "Nothing is compared: "+sayingOf(f).wrong+".")
		case scenario.PartRange:
			if ranges++; ranges == 1 {
				said = append(said, "A range is not used: "+sayingOf(f).wrong+".")
			}
		}
	}
	return said
}

// FaultsInFile says how many faults a file has that was opened with them: in the scenario
// that is shown, and in all of it.
func FaultsInFile(name string, here, all int) string {
	text := fmt.Sprintf("%s has %s; what does not depend on them is computed.", name, faults(all))
	switch {
	case here == 0:
		text += " None is in this scenario."
	case here < all:
		text += fmt.Sprintf(" %d in this scenario.", here)
	}
	return text
}

func faults(n int) string {
	if n == 1 {
		return "a fault"
	}
	return fmt.Sprintf("%d faults", n)
}
