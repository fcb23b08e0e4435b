package workbook

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf16"
)

// longestSheetName is in UTF-16 units, as spreadsheets count (ECMA-376 part 1, 18.2.19,
// sheet).
const longestSheetName = 31

// sheetNames gives sheets their names.
type sheetNames map[string]bool

// name makes a sheet's name of a text: without the signs that are forbidden, short enough, and
// unlike all others, where letter case counts for nothing.
func (n sheetNames) name(text string) string {
	clean := strings.Join(strings.Fields(strings.Map(func(r rune) rune {
		if strings.ContainsRune(`:\/?*[]'`, r) || unicode.IsControl(r) || !fitsXML(r) {
			return ' '
		}
		return r
	}, text)), " ")
	if clean == "" || strings.EqualFold(clean, "history") { // a name spreadsheets keep for themselves
		clean = strings.TrimSpace(clean + " 1")
	}
	for count := 1; ; count++ {
		suffix := ""
		if count > 1 {
			suffix = fmt.Sprintf(" (%d)", count)
		}
		name := shortened(clean, longestSheetName-len(suffix)) + suffix
		if key := strings.ToLower(name); !n[key] {
			n[key] = true
			return name
		}
	}
}

// shortened is text of at most most UTF-16 units.
func shortened(text string, most int) string {
	units := 0
	for i, r := range text {
		units += utf16.RuneLen(r)
		if units > most {
			return strings.TrimRight(text[:i], " ")
		}
	}
	return text
}

// fitsXML says whether a sign may stand in an XML text (XML 1.0, production 2).
func fitsXML(r rune) bool {
	return r == '\t' || r == '\n' || r >= 0x20 && r != 0xFFFE && r != 0xFFFF && r != unicode.ReplacementChar
}
