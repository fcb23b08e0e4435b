package words

import (
	"fmt"
	"strings"

	"reelworth/internal/scenario"
)

// saying is what is said of a fault: what is wrong, and what to write instead.
type saying struct {
	joins         joint
	wrong, remedy string
}

// joint is how what is wrong goes with the name of the field it is about.
type joint int

const (
	alone     joint = iota // "no rate between CAD and EUR": it needs no name
	predicate              // "is missing": it only makes sense after the name
	value                  // `"x" is no month`: it says what is wrong with what stands there
)

func whole(wrong, remedy string) saying { return saying{alone, wrong, remedy} }
func lacks(wrong, remedy string) saying { return saying{predicate, wrong, remedy} }
func finds(wrong, remedy string) saying { return saying{value, wrong, remedy} }

// sayingOf is what is said of a fault; of a code without words of its own, the code.
func sayingOf(f *scenario.Fault) saying {
	if say, known := sayings[f.Code]; known {
		return say(f)
	}
	return whole(string(f.Code), "")
}

// sayings are what is said of each kind of fault.
var sayings = map[scenario.Code]func(f *scenario.Fault) saying{
	scenario.FileTooLarge: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("the file is larger than %d MiB", f.Most), "split it into several files")
	},
	scenario.NULByte: func(*scenario.Fault) saying {
		return whole("the file holds a NUL byte, so it is no text in UTF-8", "open a scenario file, or save this one as UTF-8 text")
	},
	scenario.NotUTF8: func(f *scenario.Fault) saying {
		return whole("the byte "+f.Got+" is no text in UTF-8", "save the file as UTF-8 text")
	},
	scenario.TooDeep: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("tables or lists inside one another are more than %d deep", f.Most), likeTheDemo)
	},
	scenario.TooManyKeys: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("a table has more than %d keys", f.Most), likeTheDemo)
	},
	scenario.TooManyItems: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("a list has more than %d elements", f.Most), likeTheDemo)
	},
	scenario.KeysTooLong: func(*scenario.Fault) saying {
		return whole("the keys are too long and too many", likeTheDemo)
	},
	scenario.NotLocated: func(*scenario.Fault) saying {
		return whole("this line is written in a way that cannot be located", `write it plainly: key = "value"`)
	},
	scenario.GivenUp: func(*scenario.Fault) saying {
		return whole("the TOML reader gave up on this file", "write it the way the demo scenario is written")
	},
	scenario.MoreFaults: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("there are %d faults, more than %d", f.Have, f.Most), "correct those before this line first")
	},
	scenario.NoSchema: func(f *scenario.Fault) saying {
		return lacks("is missing", "write "+f.Example+" as the first line")
	},
	scenario.WrongSchema: func(f *scenario.Fault) saying {
		return lacks("is no version of the file format", "write "+f.Example)
	},
	scenario.NewerSchema: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("the file is of schema %d, newer than this program, which reads up to %d", f.Have, f.Most),
			"open it with a newer Reelworth")
	},
	scenario.ScenarioMost: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("there are %d scenarios, more than %d", f.Have, f.Most), "split the file")
	},

	scenario.NotTOML:        noTOML(`write key = "value", one to a line, with text in quotation marks`),
	scenario.NotTOMLTwice:   noTOML("keep one of the two"),
	scenario.NotTOMLLine:    noTOML("end the text with a quotation mark on the same line"),
	scenario.NotTOMLOpen:    noTOML("close what is left open: a quotation mark or a bracket"),
	scenario.NotTOMLEscape:  noTOML(`write \\ for a backslash, or put the text between single quotation marks`),
	scenario.NotTOMLZero:    noTOML(`put numbers in quotation marks, such as "0.5"`),
	scenario.NotTOMLDate:    noTOML("write a date as 2027-01-31"),
	scenario.NotTOMLLarge:   noTOML("write a smaller number, in quotation marks"),
	scenario.NotTOMLControl: noTOML("take the character out"),
	scenario.NotTOMLNoValue: noTOML(`write a value after the equals sign: "text", a number, true or false`),

	scenario.Missing: func(f *scenario.Fault) saying { return lacks("is missing", "write "+f.Example) },
	scenario.MissingTable: func(f *scenario.Fault) saying {
		return lacks("is missing", fmt.Sprintf("write a %s table with %s", f.Example, listed(f.Keys, "and")))
	},
	scenario.NotTable: func(f *scenario.Fault) saying {
		return lacks("is no table", "write "+f.Example+" with its keys below it")
	},
	scenario.NotTables: func(f *scenario.Fault) saying {
		return lacks("is no list of tables", "write "+f.Example+" above each of them")
	},
	scenario.TooMany: func(f *scenario.Fault) saying {
		if strings.HasPrefix(f.Path, "reel[") {
			return whole(fmt.Sprintf("there are %d, more than %d", f.Have, f.Most), "keep those that still matter, and note the others as one")
		}
		return whole(fmt.Sprintf("there are %d, more than %d in one scenario", f.Have, f.Most), "move some to another scenario")
	},
	scenario.WrongKind: wrongKind,
	scenario.WrongCount: func(f *scenario.Fault) saying {
		return lacks(fmt.Sprintf("has %d numbers, not %d", f.Have, f.Most), twelveNumbers)
	},
	scenario.NotMonth: func(f *scenario.Fault) saying {
		return finds(inQuotes(f.Got)+" is no month", "write "+f.Example)
	},
	scenario.NotDate: func(f *scenario.Fault) saying { return finds(clip(f.Got)+" is no date", "write "+f.Example) },
	scenario.NoSuchMonth: func(f *scenario.Fault) saying {
		return whole("there is no such month", "write "+f.Example)
	},
	scenario.NoSuchDay: func(f *scenario.Fault) saying { return whole("there is no such day", "write "+f.Example) },
	scenario.NotNumber: func(f *scenario.Fault) saying {
		return finds(inQuotes(f.Got)+" is no plain number", plainSpelling(f.Guess))
	},
	scenario.Unquoted: func(f *scenario.Fault) saying {
		return finds(clip(f.Got)+" stands without quotation marks, which loses digits", plainSpelling(f.Guess))
	},
	scenario.TooLong: func(f *scenario.Fault) saying {
		wrong := fmt.Sprintf("has more than %d digits before or after the point", f.Most)
		remedy := fmt.Sprintf("write at most %d digits on either side of the point", f.Most)
		if f.Got == "" {
			return lacks(wrong, remedy)
		}
		return finds(clip(f.Got)+" "+wrong, remedy)
	},
	scenario.TextTooLong: func(f *scenario.Fault) saying {
		return lacks(fmt.Sprintf("has %d letters, more than %d", f.Have, f.Most), fmt.Sprintf("write at most %d", f.Most))
	},
	scenario.Empty: func(f *scenario.Fault) saying { return lacks("is empty", "write "+f.Example) },
	scenario.NotAmong: func(f *scenario.Fault) saying {
		return finds(inQuotes(f.Got)+" is none of the words for it", "write "+f.Example)
	},
	scenario.CurrencyCase: func(f *scenario.Fault) saying {
		return finds(inQuotes(f.Got)+" is no currency code", `write "`+f.Guess+`"`)
	},
	scenario.NoCurrency: func(f *scenario.Fault) saying {
		return finds(inQuotes(f.Got)+" is no currency code in use today", `write its three-letter ISO 4217 code, such as "EUR"`)
	},
	scenario.BelowMin: outOfBounds("below"),
	scenario.NotAbove: outOfBounds("not above"),
	scenario.AboveMax: outOfBounds("above"),
	scenario.NotBelow: outOfBounds("not below"),

	scenario.SameCurrencies: func(f *scenario.Fault) saying {
		return whole("both sides are "+inQuotes(f.Got), "write two different currencies, or take this rate out")
	},
	scenario.TwoRates: func(f *scenario.Fault) saying {
		if f.Other == 0 {
			return whole(fmt.Sprintf("two rates between %s and %s", f.From, f.To), "keep one of the two")
		}
		return whole(fmt.Sprintf("%s and %s have another rate, rate[%d]", f.From, f.To, f.Other), "keep one of the two")
	},
	scenario.AbovePrice: func(f *scenario.Fault) saying {
		return finds(fmt.Sprintf("%s is more than the price, %s", scenario.Spell(f.Number), scenario.Spell(f.Bound)), "write at most the price")
	},
	scenario.NameTaken: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("%s[%d] is named %s too", f.Table, f.Other, inQuotes(f.Got)), "give each a name of its own")
	},
	scenario.TooGood: func(f *scenario.Fault) saying {
		return finds(fmt.Sprintf("%d good exposures are more than these cassettes can hold, %d", f.Have, f.Most), "write those of all of them together, or correct the cassettes")
	},
	scenario.NotLoaded: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("%d cassettes of %d exposures are developed, but only %d were loaded", f.Have, f.Other, f.Most), "correct this result, or note the load that is missing")
	},
	scenario.LoadsBeyond: func(f *scenario.Fault) saying {
		return whole("with this load the reel is used up and "+f.Missing.Text(1)+" mm are missing", "correct the loads, or measure what is left and note that as a recount")
	},
	scenario.RecountBeyond: func(f *scenario.Fault) saying {
		return finds("this is "+f.Missing.Text(1)+" mm more than the whole reel", "write what is left on the reel, in millimetres")
	},
	scenario.WastesBeyond: func(f *scenario.Fault) saying {
		return whole("start waste, end waste and test exposures are "+f.Missing.Text(1)+" mm more than the reel", "write a longer length, or less waste")
	},
	scenario.CounterTooFine: func(f *scenario.Fault) saying {
		return finds(fmt.Sprintf("a roll would take more than %d counts", f.Most), "write how many millimetres of film one count winds")
	},
	scenario.NoBaseline: func(f *scenario.Fault) saying {
		remedy := "add the offer that the others are compared with"
		if f.Name != "" {
			remedy = "write the name of one of the offers, such as " + inQuotes(f.Name)
		}
		return whole("no offer is named "+inQuotes(f.Got), remedy)
	},
	scenario.NoOffer: func(f *scenario.Fault) saying {
		return whole("no offer is named "+inQuotes(f.Got), "write the name of an offer, or leave the key out for all")
	},
	scenario.NoProcess: func(f *scenario.Fault) saying {
		remedy := "add a [[scenario.developing]] of that name, or leave the key out"
		if f.Name != "" {
			remedy = "write the name of a way of developing, such as " + inQuotes(f.Name) + ", or leave the key out"
		}
		return whole("no way of developing is named "+inQuotes(f.Got), remedy)
	},
	scenario.NoRate: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("no rate between %s and %s", f.From, f.To),
			fmt.Sprintf("add a [[scenario.rate]] with one = %q and in = %q", f.From, f.To))
	},
	scenario.WrongTable: func(f *scenario.Fault) saying {
		return lacks(fmt.Sprintf("does not belong in an offer of kind %q", f.Got), fmt.Sprintf("take the table out, or write kind = %q", f.Guess))
	},
	scenario.NoRoll: func(f *scenario.Fault) saying {
		return whole("the reel gives no roll: "+f.Missing.Text(1)+" mm are missing to the shortest roll that would be loaded",
			"write a longer length, fewer exposures, or less waste")
	},
	scenario.NothingGood: func(*scenario.Fault) saying {
		return whole("no exposure of it is good", "write less that is spoiled, or more to begin with")
	},
	scenario.NoInput: noInput,
	scenario.NotForInput: func(f *scenario.Fault) saying {
		return finds(fmt.Sprintf("%s cannot be %s", scenario.Spell(f.Number), f.Name), "write "+bounds("a number", f.Rule))
	},
	scenario.RangeNotUp: func(f *scenario.Fault) saying {
		high, low := scenario.Spell(f.Number), scenario.Spell(f.Bound)
		return finds(fmt.Sprintf("%s is not above low, %s", high, low), "write a number above "+low)
	},
	scenario.RangeTwice: func(f *scenario.Fault) saying {
		return whole(fmt.Sprintf("range[%d] is of this input too", f.Other), "keep one of the two")
	},
}

const (
	likeTheDemo   = "write tables the way the demo scenario has them"
	twelveNumbers = "write 12 numbers in quotation marks, one for each month from first_month on"
)

func noTOML(remedy string) func(*scenario.Fault) saying {
	return func(f *scenario.Fault) saying { return whole("this is no TOML: "+clip(f.Got), remedy) }
}

// plainSpelling says how to write a number.
func plainSpelling(guess string) string {
	if guess != "" {
		return `write "` + guess + `"`
	}
	return `write digits with a point if need be, such as "14.80"`
}

// wrongKind says what stands there, what should, and how that is written.
func wrongKind(f *scenario.Fault) saying {
	if f.Wanted == scenario.ValueWhole && f.Is == scenario.ValueNumber {
		return finds(clip(f.Got)+" is no whole number", "write "+f.Example+", without a point")
	}
	is := map[scenario.ValueKind]string{
		scenario.ValueText: inQuotes(f.Got) + " is text", scenario.ValueNumber: clip(f.Got) + " is a number",
		scenario.ValueTruth: clip(f.Got) + " is true-or-false", scenario.ValueTime: clip(f.Got) + " is a date or a time",
		scenario.ValueTable: "it is a table", scenario.ValueList: "it is a list",
	}[f.Is]
	not := map[scenario.ValueKind]string{
		scenario.ValueText: "text", scenario.ValueTruth: "true or false", scenario.ValueNumber: "a number",
		scenario.ValueWhole: "a whole number", scenario.ValueMonth: "a month in quotation marks",
		scenario.ValueDate: "a date", scenario.ValueList: "a list of numbers",
	}[f.Wanted]
	remedy := "write " + f.Example
	switch f.Wanted {
	case scenario.ValueNumber:
		remedy = `write a number in quotation marks, such as "14.80"`
	case scenario.ValueList:
		remedy = twelveNumbers
	case scenario.ValueWhole, scenario.ValueTruth, scenario.ValueDate:
		if f.Is == scenario.ValueText {
			remedy += ", without quotation marks"
		}
	}
	return finds(is+", not "+not, remedy)
}

func outOfBounds(is string) func(*scenario.Fault) saying {
	return func(f *scenario.Fault) saying {
		noun := "a number"
		if f.Wanted == scenario.ValueWhole {
			noun = "a whole number"
		}
		return finds(fmt.Sprintf("%s is %s %s", scenario.Spell(f.Number), is, f.Bound), "write "+bounds(noun, f.Rule))
	}
}

// bounds is what a number may be: "a number from 0 to below 100".
func bounds(noun string, r *scenario.Rule) string {
	switch {
	case r == nil:
		return noun + " that makes sense here"
	case r.Min != nil && r.Max != nil:
		return fmt.Sprintf("%s from %s to %s", noun, r.Min, r.Max)
	case r.Min != nil && r.Below != nil:
		return fmt.Sprintf("%s from %s to below %s", noun, r.Min, r.Below)
	case r.Min != nil:
		return fmt.Sprintf("%s of at least %s", noun, r.Min)
	case r.Above != nil:
		return fmt.Sprintf("%s above %s", noun, r.Above)
	case r.Max != nil:
		return fmt.Sprintf("%s of at most %s", noun, r.Max)
	}
	return noun + " that makes sense here"
}

func noInput(f *scenario.Fault) saying {
	wrong := "there is no input " + inQuotes(f.Got)
	if f.Guess != "" {
		return whole(wrong, fmt.Sprintf("write a rate as it stands above, such as %q, not %s", f.Guess, inQuotes(f.Got)))
	}
	return whole(wrong, `write one of "`+strings.Join(f.Keys, `", "`)+`" or a rate like "rate:USD/EUR"`)
}

// listed is "a", "a and b", "a, b and c".
func listed(words []string, last string) string {
	n := len(words)
	if n < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:n-1], ", ") + " " + last + " " + words[n-1]
}
