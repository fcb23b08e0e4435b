package money

import (
	"strings"

	"github.com/shopspring/decimal"
)

const (
	digits = "0123456789"
	marks  = ".,' " // all signs that separate digits, in their plain form
	most   = 12     // digits before the decimal sign, and after it
)

// groups are the locale's grouping signs, in their plain form: what CLDR writes, and
// the space that ISO 80000-1 allows everywhere.
func (l Locale) groups() []byte {
	g := l.form().kind()
	if g == " " {
		return []byte{' '}
	}
	return []byte{g[0], ' '}
}

// spelled is a number in one form.
type spelled struct {
	whole, part string // the digits before and after the decimal sign
	group       byte   // the grouping sign in use, 0 for none
}

// own is p in a stated form of the locale.
func (l Locale) own(p parts) (s spelled, ok bool) {
	if p.wide && l != "ja" {
		return s, false
	}
	decimalSign := l.form().decimal[0]
	number := p.number
	if cut, ended := strings.CutSuffix(number, string(decimalSign)); ended && !strings.Contains(cut, string(decimalSign)) {
		number = cut
	}
	if s, ok := spell(number, decimalSign, 0); ok {
		return s, true
	}
	for _, g := range l.groups() {
		if s, ok := spell(number, decimalSign, g); ok {
			return s, true
		}
	}
	return s, false
}

// elsewhere are all ways to take a number as written in any country: point or comma for
// the decimals, and any other sign for the groups.
func elsewhere(number string) (list []spelled) {
	for _, decimalSign := range []byte(".,") {
		for _, group := range []byte("\x00.,' ") {
			if group == decimalSign {
				continue
			}
			if s, ok := spell(number, decimalSign, group); ok {
				list = append(list, s)
			}
		}
	}
	return list
}

// spell takes a number in the form with one decimal and one grouping sign; with group 0
// nothing is grouped.
func spell(number string, decimalSign, group byte) (s spelled, ok bool) {
	whole, part, pointed := strings.Cut(number, string(decimalSign))
	if pointed && !onlyDigits(part) || whole == "" && !pointed {
		return s, false
	}
	if group == 0 {
		return spelled{whole: whole, part: part}, whole == "" || onlyDigits(whole)
	}
	chunks := strings.Split(whole, string(group))
	if len(chunks) < 2 {
		return s, false
	}
	for i, c := range chunks {
		if !onlyDigits(c) || len(c) > 3 || i == 0 && c[0] == '0' || i > 0 && len(c) < 3 {
			return s, false
		}
	}
	return spelled{whole: strings.Join(chunks, ""), part: part, group: group}, true
}

func onlyDigits(s string) bool { return s != "" && strings.Trim(s, digits) == "" }

func (s spelled) tooLong() bool {
	return len(strings.TrimLeft(s.whole, "0")) > most || len(s.part) > most
}

// value is the number, with as many places as were written.
func (s spelled) value(negative bool) decimal.Decimal {
	text := "0" + s.whole
	if s.part != "" {
		text += "." + s.part
	}
	v := decimal.RequireFromString(text)
	if negative {
		return v.Neg()
	}
	return v
}

// plain is text with every sign in its plain form: spaces of all kinds as ' ', both
// apostrophes as '\”, the minus sign as '-', full-width characters as their narrow
// ones. wide says that digits or number signs were full-width.
func plain(text string) (s string, wide bool) {
	s = strings.Map(func(r rune) rune {
		switch {
		case r >= '０' && r <= '９', r == '，', r == '．', r == '－':
			wide = true
			return r - 0xfee0
		case r >= 'Ａ' && r <= 'Ｚ', r >= 'ａ' && r <= 'ｚ', r == '＄', r == '％', r == '＋':
			return r - 0xfee0
		}
		switch r {
		case '\u00a0', '\u202f', '\u2009', '\u2007', '\u2008', '\u200a', '\u2002', '\u2003', '\u3000', '\t':
			return ' '
		case '’', '\u02bc':
			return '\''
		case '\u2212':
			return '-'
		case '￥':
			return '¥'
		case '￡':
			return '£'
		case '\u200e', '\u200f', '\u2060', '\ufeff': // marks of direction and joining, which copying brings along
			return -1
		}
		return r
	}, text)
	return strings.TrimSpace(s), wide
}
