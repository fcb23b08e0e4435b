package words

import "reelworth/internal/catalogue"

// KeysOfFile explains the keys of a scenario file, table by table.
func KeysOfFile() []Passage {
	list := []Passage{{Paragraphs: []string{"A scenario file is plain text in TOML. In brackets stand the unit and what counts where a key is left out. " +
		"Decimals are in quotation marks: \"14.80\"."}}}
	for _, t := range catalogue.Tables() {
		p := Passage{Heading: t.Header}
		for _, r := range t.Rows {
			p.Paragraphs = append(p.Paragraphs, r.Field.Key+": "+r.Told())
		}
		list = append(list, p)
	}
	return list
}
