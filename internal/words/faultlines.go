package words

import (
	"fmt"
	"strings"
	"unicode"

	"reelworth/internal/scenario"
)

// MostFaults is how many faults of a file are told one by one.
const MostFaults = 100

// Fault is what is wrong, and what to write instead. In a file of several scenarios
// the first says which one it is about.
func Fault(f scenario.Fault) (wrong, remedy string) {
	s := sayingOf(&f)
	return scenarioOf(&f) + s.wrong, s.remedy
}

// scenarioOf says in which scenario of several a fault is: `in "Market": `.
func scenarioOf(f *scenario.Fault) string {
	switch {
	case !f.Several:
		return ""
	case f.Scenario == "":
		return fmt.Sprintf("in scenario %d: ", f.Place.Scenario+1)
	}
	return "in " + inQuotes(f.Scenario) + ": "
}

// FaultLine is a fault as "file:line: key: what is wrong; what to write".
func FaultLine(file string, f scenario.Fault) string {
	wrong, remedy := Fault(f)
	return fmt.Sprintf("%s:%d: %s: %s; %s", file, f.Line, clip(f.Path), wrong, remedy)
}

// FaultLines are the faults of a file, a line each: the first hundred, and how many more.
func FaultLines(file string, faults []scenario.Fault) []string {
	told, more := TellFaults(faults)
	lines := make([]string, 0, len(told)+1)
	for _, f := range told {
		lines = append(lines, FaultLine(file, f))
	}
	if more > 0 {
		lines = append(lines, file+": "+FurtherFaults(more))
	}
	return lines
}

// TellFaults are the faults to tell one by one, and how many there are beside them.
func TellFaults(faults []scenario.Fault) (told []scenario.Fault, more int) {
	if len(faults) <= MostFaults {
		return faults, 0
	}
	all := len(faults)
	if last := faults[all-1]; last.Code == scenario.MoreFaults {
		all = last.Have
	}
	return faults[:MostFaults], all - MostFaults
}

// FurtherFaults says how many faults are not told.
func FurtherFaults(n int) string {
	if n == 1 {
		return "and one more fault"
	}
	return fmt.Sprintf("and %d more faults", n)
}

// Notice is what is odd about a key that is no fault.
func Notice(n scenario.Notice) string {
	text := "this key is unknown; it is kept but counts for nothing"
	if n.Near != "" {
		text += "; perhaps " + n.Near + " is meant"
	}
	return text
}

// NoticeLine is a notice as "file:line: key: what is odd".
func NoticeLine(file string, n scenario.Notice) string {
	return fmt.Sprintf("%s:%d: %s: %s", file, n.Line, clip(n.Path), Notice(n))
}

// inQuotes is a text from a file in quotation marks, fit for one line of a message.
func inQuotes(text string) string { return `"` + clip(text) + `"` }

// mostClipped is how many letters of a text from a file stand in a message.
const mostClipped = 60

// clip makes a text from a file short and printable.
func clip(text string) string {
	var b strings.Builder
	n := 0
	for _, r := range text {
		if n++; n > mostClipped {
			b.WriteString("…")
			break
		}
		switch {
		case unicode.IsSpace(r):
			r = ' '
		case !unicode.IsPrint(r):
			r = '\ufffd'
		}
		b.WriteRune(r)
	}
	return b.String()
}
