package form

import (
	"regexp"
	"strings"

	"reelworth/internal/catalogue"
	"reelworth/internal/desk/kit"
)

// Fields with the label and the unit that the catalogue has for their key.

// number is a field for typing a number, its value set to the right.
func (b forms) number(s Binding) *Field {
	e, _ := catalogue.Of(s.Key)
	switch e.Unit {
	case catalogue.Home:
		return numberField(b.e, s.label(), "", s.atHome()).unitOf(home).means(meaningKey(s.Key))
	case catalogue.Seller:
		return numberField(b.e, s.label(), "", s).unitOf(s.code).means(meaningKey(s.Key))
	case catalogue.Paid:
		return numberField(b.e, s.label(), "", s)
	}
	return numberField(b.e, s.label(), unitBeside(e.Unit, s), s).means(meaningKey(s.Key))
}

// text is a field for typing words.
func (b forms) text(s Binding) *Field { return wordField(b.e, s.label(), s) }

// choice is a field for choosing.
func (b forms) choice(width float32, options []kit.Option, s Binding) *Field {
	return choiceField(b.e, s.label(), width, options, s).means(meaningKey(s.Key))
}

// flag is a field for yes or no.
func (b forms) flag(s Binding) *Field {
	return b.choice(kit.NumberWidth, []kit.Option{{Value: yes, Label: yes}, {Value: no, Label: no}}, s)
}

// label is the catalogue's name of the value in a form.
func (s Binding) label() string {
	e, _ := catalogue.Of(s.Key)
	return e.LabelFor(s.piece)
}

// unitBeside is the unit to show beside a value, "" where the label says it already.
func unitBeside(unit catalogue.Unit, s Binding) string {
	text := string(unit)
	if unit == catalogue.Pieces {
		text = s.piece + "s"
	}
	if strings.Contains(strings.ToLower(s.label()), text) {
		return ""
	}
	return text
}

// ofOffer is the offer that a key begins with.
var ofOffer = regexp.MustCompile(`^offer\[[0-9]+\]\.`)

// meaningKey is the key by which the meaning of an offer's field is asked for, "" for
// another's.
func meaningKey(key string) string {
	if rest := ofOffer.ReplaceAllString(key, ""); rest != key {
		return rest
	}
	return ""
}
