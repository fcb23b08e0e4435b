package words

import "strings"

// Passage is a part of a text to be read: a heading, "" for none, and paragraphs. Linked
// says that the text begins with a link to it.
type Passage struct {
	Heading    string
	Paragraphs []string
	Linked     bool
}

// Plain is a text of passages without any form, as it is copied and printed.
func Plain(passages []Passage) string {
	var parts []string
	for _, p := range passages {
		if p.Heading != "" {
			parts = append(parts, strings.ToUpper(p.Heading))
		}
		parts = append(parts, p.Paragraphs...)
	}
	return strings.Join(parts, "\n\n")
}
