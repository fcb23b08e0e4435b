package handout

import (
	"slices"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// back is the receipts of the two best, what would change the answer, what is assumed,
// and what to be careful about.
func (m *maker) back() {
	m.newPage()
	m.receipts()
	left, right := m.halves()
	top := m.y
	rates := words.RateLines(m.c, m.o.Locale)
	shown := rates[:min(len(rates), ratesInBack)]
	m.column(right, words.HandoutAssumed, words.AssumedInShort(m.c, m.o.Locale), 45)
	m.column(right, words.HandoutRates, shown, 95)
	m.column(right, words.HandoutInHand, words.ReelsInHand(m.o.InHand, m.o.Locale), 30)
	below := m.y
	m.y = top
	m.column(left, words.HandoutVolumes, m.volumes(), 32)
	m.column(left, words.HandoutFlips, m.flips(), 78)
	m.y = max(m.y, below)
	if cautions := m.cautions(); len(cautions) > 0 && m.room() > 12 {
		m.heading(m.whole(), words.HandoutCautions)
		m.items(m.whole(), cautions, cautionLines, m.room(), words.MoreCautions)
	}
	if more := rates[len(shown):]; len(more) > 0 {
		m.newPage()
		m.column(m.whole(), words.HandoutRates, more, m.room()-10)
	}
}

// ratesInBack is how many rates the second page always has room for.
const ratesInBack = 8

// column sets a section in a block, as high as most millimetres at the most.
func (m *maker) column(b block, title string, texts []string, most float64) {
	if len(texts) == 0 {
		return
	}
	m.heading(b, title)
	m.items(b, texts, itemLines, min(most, m.room()-10), words.More)
}

// receipts are those of the pair, side by side; of the one where there is only one.
func (m *maker) receipts() {
	left, right := m.halves()
	top, lowest := m.y, m.y
	b := left
	for _, name := range []string{m.c.Verdict.Reel, m.c.Verdict.Boxed} {
		for i := range m.c.Offers {
			if o := &m.c.Offers[i]; name != "" && o.Name == name && o.Fault == nil {
				m.y = top
				m.receipt(b, i)
				lowest, b = max(lowest, m.y), right
			}
		}
	}
	m.y = lowest
}

func (m *maker) receipt(b block, i int) {
	m.heading(b, m.c.Offers[i].Name)
	seller, home := words.ReceiptColumns(m.c, i)
	head := []string{"", home}
	if seller != "" {
		head = []string{"", seller, home}
	}
	var rows []tableRow
	for _, r := range words.Receipt(m.c, i, m.o.Locale) {
		cells := []string{r.Label, r.Home}
		if seller != "" {
			cells = []string{r.Label, r.Seller, r.Home}
		}
		rows = append(rows, tableRow{cells, r.Strong})
	}
	m.table(b, head, rows)
}

// flips are the sentences on what would change the answer, the nearest first, but for the
// rolls a year: the ranges beside them tell the whole of those.
func (m *maker) flips() []string {
	if m.pair == nil || m.c.Verdict.Kind == compare.VerdictUnlike {
		return nil
	}
	other := *m.pair
	other.Flips = slices.DeleteFunc(slices.Clone(other.Flips), func(f compare.Flip) bool { return f.Input == scenario.InputRollsAYear })
	return words.Flips(m.c, &other, m.o.Locale)
}

// volumes are the ranges of rolls a year, and who is cheaper in each.
func (m *maker) volumes() []string {
	if m.pair == nil || m.c.Verdict.Kind == compare.VerdictUnlike {
		return nil
	}
	return words.VolumeLines(m.c, m.pair, m.o.Locale)
}

func (m *maker) cautions() (texts []string) {
	for _, w := range m.c.Warnings {
		texts = append(texts, words.Warning(w, m.c, m.o.Locale))
	}
	return texts
}
