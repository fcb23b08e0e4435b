package pages

import (
	"slices"
	"strings"

	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// Without says what is not part of the answer: fields held back, offers left out.
func (a *Column) Without(withheld []string) {
	a.withheld = withheld
	a.Tell()
}

// Tell puts together what there is to say: what endangers the work first, then what was
// said last, or else what the answer lacks.
func (a *Column) Tell() {
	mend := ""
	lacks := a.lacks()
	also := a.notices.said
	if len(lacks) > 0 {
		mend = words.MendLink(a.Shown.comparison(), len(a.withheld) > 0, a.faults())
	}
	switch text := strings.Join(lacks, " "); {
	case text == "":
	case also == nil && len(a.withheld) == 0 && words.OnlyUnpriced(a.Shown.comparison()):
		also = []kit.Span{{Text: text, Color: kit.Muted}}
	case also == nil:
		also = []kit.Span{{Text: "✗ ", Color: kit.Fault, Bold: true}, {Text: text, Color: kit.Fault}}
	case a.notices.objects:
		also = append(slices.Clip(also), kit.Span{Text: " " + text, Color: kit.Fault})
	}
	if also == nil {
		also, mend = a.shownIn()
	}
	warns := a.notices.warns()
	a.Mend.Do = a.mend
	if offer := a.notices.offer; also == nil && len(warns) == 0 && offer.take != nil {
		also, mend, a.Mend.Do = []kit.Span{{Text: offer.text, Color: kit.Muted}}, offer.link, offer.take
	}
	a.Status.Set(joined(warns, also)...)
	a.offerMending(mend)
	a.Content.Refresh()
}

// shownIn says which other currency figures are shown in, or why they are not, with the
// name of the link to what would do.
func (a *Column) shownIn() (said []kit.Span, mend string) {
	an := a.Shown.answer
	switch {
	case an == nil:
		return nil, ""
	case an.NoWay:
		text := words.NotShownIn(an.Job.Scenario.Home, an.Job.In)
		return []kit.Span{{Text: "! ", Color: kit.Accent, Bold: true}, {Text: text, Color: kit.Muted}}, words.LinkAddRate
	}
	if text := words.ShownIn(an.Comparison, a.locale()); text != "" {
		said = []kit.Span{{Text: text, Color: kit.Muted}}
	}
	return said, ""
}

// lacks is what the answer does not include, and why.
func (a *Column) lacks() []string {
	var parts []string
	if len(a.withheld) > 0 {
		parts = append(parts, words.WithoutFields(a.withheld))
	}
	if c := a.Shown.comparison(); c != nil && !words.AsksForPrices(c) {
		parts = append(parts, words.LeftOut(c)...)
	}
	return append(parts, words.NotUsed(a.faults())...)
}

// faults are those of the scenario that is shown.
func (a *Column) faults() []scenario.Fault {
	if a.Shown.answer == nil {
		return nil
	}
	return a.Shown.answer.Job.Faults
}

// offerMending shows the link to what can be mended, under a name; "" takes it away.
func (a *Column) offerMending(name string) {
	if name == "" {
		a.Mend.Hide()
		return
	}
	a.Mend.Label.Set(kit.Span{Text: name, Color: kit.Accent})
	a.Mend.Show()
}
