package pages

import (
	"slices"

	"reelworth/internal/desk/kit"
)

// Notices are what there is to say of the work, wherever a person looks: what endangers
// it, and what was done last.
type Notices struct {
	warning string     // stays true until another; "" for none
	said    []kit.Span // once, until the next change
	objects bool       // what was said is that something is wrong
	state   [2]uint64  // of the work, to know the next change by
	offer   invitation // while there is nothing else to say, until the next change
	told    func()     // there is something else to say
}

// invitation is an offer with the link that takes it.
type invitation struct {
	text, link string
	take       func() // nil for none
}

// NewNotices has nothing to say yet; told is called whenever that changes.
func NewNotices(told func()) *Notices { return &Notices{told: told} }

// Warn says something that stays true until Warn is called again; "" ends it. Nothing
// takes its place.
func (n *Notices) Warn(text string) {
	n.warning = text
	n.told()
}

// Announce says that something was done, until the next change.
func (n *Notices) Announce(text string) {
	n.said, n.objects = []kit.Span{{Text: "✓ ", Color: kit.Good, Bold: true}, {Text: text, Color: kit.Muted}}, false
	n.told()
}

// Invite offers something beside a link while there is nothing to tell, until the next
// change.
func (n *Notices) Invite(text, link string, take func()) {
	n.offer = invitation{text, link, func() {
		n.offer = invitation{}
		n.told()
		take()
	}}
	n.told()
}

// Object says that something is wrong, until the next change.
func (n *Notices) Object(text string) {
	n.said, n.objects = []kit.Span{{Text: "✗ ", Color: kit.Fault, Bold: true}, {Text: text, Color: kit.Fault}}, true
	n.told()
}

// Now ends what was said once, if the state of the work is another than it was.
func (n *Notices) Now(epoch, mark uint64) {
	if now := [2]uint64{epoch, mark}; now != n.state {
		said := n.said != nil || n.offer.take != nil
		n.state, n.said, n.offer = now, nil, invitation{}
		if said {
			n.told()
		}
	}
}

// warns is what endangers the work, empty for nothing.
func (n *Notices) warns() []kit.Span {
	if n.warning == "" {
		return nil
	}
	return []kit.Span{{Text: "! ", Color: kit.Accent, Bold: true}, {Text: n.warning, Color: kit.Muted}}
}

// Put puts what there is to say into a text: what endangers the work first, what was said
// last, and what stands there at any time.
func (n *Notices) Put(text *kit.Text, always ...kit.Span) {
	text.Set(joined(joined(n.warns(), n.said), always)...)
}

// joined is two things to say after one another.
func joined(first, then []kit.Span) []kit.Span {
	if len(first) > 0 && len(then) > 0 {
		first = append(slices.Clip(first), kit.Span{Text: " "})
	}
	return append(slices.Clip(first), then...)
}
