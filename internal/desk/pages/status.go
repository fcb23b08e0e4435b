package pages

import (
	"slices"
	"strings"

	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// status is what the line under the headline has to say.
type status struct {
	warning  string     // stays true until another; "" for none
	said     []kit.Span // once, until the next change
	objects  bool       // what was said is that something is wrong
	state    [2]uint64  // of the work, to know the next change by
	withheld []string   // fields whose text is not part of the answer
}

// GoOnFrom takes over from a column that this one takes the place of.
func (a *Column) GoOnFrom(was *Column) { a.status = was.status }

// Warn says something that stays true until Warn is called again; "" ends it. Nothing
// takes its place.
func (a *Column) Warn(text string) {
	a.status.warning = text
	a.tell()
}

// Announce says that something was done, until the next change.
func (a *Column) Announce(text string) {
	a.status.said = []kit.Span{{Text: "✓ ", Color: kit.Good, Bold: true}, {Text: text, Color: kit.Muted}}
	a.status.objects = false
	a.tell()
}

// Object says that something is wrong, until the next change.
func (a *Column) Object(text string) {
	a.status.said = []kit.Span{{Text: "✗ ", Color: kit.Fault, Bold: true}, {Text: text, Color: kit.Fault}}
	a.status.objects = true
	a.tell()
}

// Now ends what was said once, if the state of the work is another than it was.
func (a *Column) Now(epoch, mark uint64) {
	if now := [2]uint64{epoch, mark}; now != a.status.state {
		a.status.state, a.status.said = now, nil
	}
}

// Without says what is not part of the answer: fields held back, offers left out.
func (a *Column) Without(withheld []string) {
	a.status.withheld = withheld
	a.tell()
}

// tell puts together what there is to say: what endangers the work first, then what was
// said last, or else what the answer lacks.
func (a *Column) tell() {
	var spans []kit.Span
	mend := ""
	if w := a.status.warning; w != "" {
		spans = append(spans, kit.Span{Text: "! ", Color: kit.Accent, Bold: true}, kit.Span{Text: w, Color: kit.Muted})
	}
	lacks := a.lacks()
	also := a.status.said
	if len(lacks) > 0 {
		mend = words.MendLink(a.Shown.comparison(), len(a.status.withheld) > 0, a.faults())
	}
	switch text := strings.Join(lacks, " "); {
	case text == "":
	case also == nil && len(a.status.withheld) == 0 && words.OnlyUnpriced(a.Shown.comparison()):
		also = []kit.Span{{Text: text, Color: kit.Muted}}
	case also == nil:
		also = []kit.Span{{Text: "✗ ", Color: kit.Fault, Bold: true}, {Text: text, Color: kit.Fault}}
	case a.status.objects:
		also = append(slices.Clip(also), kit.Span{Text: " " + text, Color: kit.Fault})
	}
	if also == nil {
		also, mend = a.shownIn()
	}
	a.Status.MaxLines = 1
	if len(spans) > 0 && len(also) > 0 {
		spans = append(spans, kit.Span{Text: " "})
		a.Status.MaxLines = 2
	}
	a.Status.Set(append(spans, also...)...)
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
	if len(a.status.withheld) > 0 {
		parts = append(parts, words.WithoutFields(a.status.withheld))
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
