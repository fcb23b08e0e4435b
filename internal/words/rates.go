package words

import (
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
)

// ForInformation stands beside every published rate.
const ForInformation = "Reference rates of the European Central Bank, published for information only: " +
	"nobody need trade at them, and a card adds to them."

// bankFile is what would do where a file does not.
const bankFile = "take the file as the European Central Bank publishes it"

// RatesFault says why a file of rates was refused, or could not be fetched, and what would
// do: "line 7: "dear" is no rate above 0; …". The line is left out where it is no line's.
func RatesFault(f *rates.Fault) string {
	wrong, remedy := ratesFault(f)
	if f.Line > 0 {
		return fmt.Sprintf("line %d: %s; %s", f.Line, wrong, remedy)
	}
	return wrong + "; " + remedy
}

func ratesFault(f *rates.Fault) (wrong, remedy string) {
	const most = rates.MaxBytes >> 20
	switch f.Code {
	case rates.FaultHead:
		return fmt.Sprintf("%q is not how a file of rates begins", f.Text), `it begins with "Date" and the currencies: ` + bankFile
	case rates.FaultCurrency:
		return fmt.Sprintf("%q is no currency of such a file, or is there twice", f.Text), bankFile
	case rates.FaultDate:
		return fmt.Sprintf("%q is no date", f.Text), bankFile
	case rates.FaultTwice:
		return f.Text + " is there twice", "keep one of the two"
	case rates.FaultValue:
		return fmt.Sprintf("%q is no rate above 0", f.Text), "write digits with a point, or N/A for none: " + bankFile
	case rates.FaultCells:
		return f.Text + " has more or fewer rates than there are currencies above", bankFile
	case rates.FaultNoDay:
		return "there is not one day in it", bankFile
	case rates.FaultTooLarge:
		return fmt.Sprintf("it is larger than %d MiB and was not read", most), bankFile
	case rates.FaultEntries:
		return fmt.Sprintf("the zip holds %s files", f.Text), "it must hold one: " + bankFile
	case rates.FaultPacked:
		return "the zip cannot be unpacked", "fetch it again, or unpack it and take what was in it"
	case rates.FaultUnpacks:
		return fmt.Sprintf("%s in the zip is larger than %d MiB once unpacked and was not read", f.Text, most), bankFile
	case rates.FaultDoctype:
		return "it has a document type, as a web page has", bankFile
	case rates.FaultXML:
		return "the XML breaks off or is not well formed", "fetch the file again"
	case rates.FaultEnvelope:
		return fmt.Sprintf("this XML is of another kind (%q)", f.Text), bankFile
	}
	return "it could not be read", bankFile
}

// FetchFault says in one sentence why nothing new was fetched, and which rates stay in
// use: those of kept, nil for none.
func FetchFault(f *rates.Fault, kept *rates.File) string {
	stay := "there are no earlier rates to use"
	if kept != nil {
		stay = "the rates of " + Day(kept.Newest().Date()) + " stay in use"
	}
	return capital(fetchFault(f)) + "; " + stay + "."
}

func fetchFault(f *rates.Fault) string {
	const most = rates.MaxBytes >> 20
	switch f.Code {
	case rates.FaultOffline:
		return "the bank cannot be reached, so you may be offline"
	case rates.FaultSlow:
		return "the bank took too long to answer"
	case rates.FaultBroken:
		return "the bank's answer broke off half-way"
	case rates.FaultStatus:
		return fmt.Sprintf("the bank answered %q in place of the rates", f.Text)
	case rates.FaultPlain:
		return "the bank's address led to one without HTTPS, which was not asked"
	case rates.FaultElsewhere:
		return fmt.Sprintf("the bank's address led to another one, %s, which was not asked", f.Text)
	case rates.FaultRedirects:
		return "the bank's address led from one to the next without end"
	case rates.FaultUntrusted:
		return "the server at the bank's address could not prove that it is the bank's"
	case rates.FaultTooLarge:
		return fmt.Sprintf("the bank's answer is larger than %d MiB and was not read", most)
	}
	wrong, _ := ratesFault(f)
	if f.Line > 0 {
		wrong = fmt.Sprintf("line %d: %s", f.Line, wrong)
	}
	return "what the bank sent cannot be used (" + wrong + ")"
}

// NoRatesOn says that a file has no day of that date, with the last one before.
func NoRatesOn(f *rates.File, date scenario.Date) string {
	if place := f.Place(date); place > 0 {
		before := f.At(place - 1).Date()
		return fmt.Sprintf("there are no rates of %s in it: the bank is closed at weekends and on some holidays; the last day before is %s (%s)",
			Day(date), Day(before), before)
	}
	return fmt.Sprintf("there are no rates of %s in it; the first day is %s (%s)", Day(date), Day(f.Oldest().Date()), f.Oldest().Date())
}

// NoPairOn says that a day does not have both of two currencies.
func NoPairOn(d rates.Day, one, in string) string {
	for _, c := range []string{one, in} {
		if _, ok := d.Rate(c); !ok {
			return fmt.Sprintf("there is no rate of %s on %s; name another day or currency", c, Day(d.Date()))
		}
	}
	return ""
}

// RateReading is a rate for reading, to six figures: "1 GBP = 2.0729 AUD".
func RateReading(one string, rate exact.Fraction, in string, l money.Locale) string {
	figures, ok := rates.SixFigures(rate)
	if !ok {
		figures = rate.Decimal(12)
	}
	return fmt.Sprintf("1 %s = %s %s", one, l.Field(figures), in)
}
