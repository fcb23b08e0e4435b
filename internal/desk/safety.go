package desk

import (
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"reelworth/internal/desk/kit"
	"reelworth/internal/draft"
	"reelworth/internal/library"
)

// keepEvery is how long unsaved work may be younger than what is kept of it, and
// lookEvery how often the window looks whether its file is in other hands too.
const (
	keepEvery = 2 * time.Second
	lookEvery = 4 * time.Second
)

// safety keeps unsaved work where it outlives a crash, and notices who else works on
// the file.
type safety struct {
	dir      string // "" keeps nothing
	recovery *library.Recovery
	claim    *library.Claim
	kept     draft.Mark // what is written down, where isKept
	isKept   bool
	due      bool          // keeping is on its way
	turn     chan struct{} // closed when what was asked of the recovery before is done
	told     string
}

// secure begins the recovery of this window. Without a folder for it the window works
// on, and says that it does so without a net.
func (d *Desk) secure() {
	if d.State == "" {
		return
	}
	d.safety.dir = d.State
	r, err := library.NewRecovery(d.State)
	if err != nil {
		d.answer.warn("Unsaved work would not outlive a crash: " + err.Error())
		return
	}
	d.safety.recovery = r
	d.offerLeftovers()
	d.lookAround()
}

// keep writes unsaved work down soon.
func (d *Desk) keep() {
	s := &d.safety
	if s.recovery == nil || s.due || !d.session.draft.Modified() || s.isKept && d.session.draft.Mark() == s.kept {
		return
	}
	s.due = true
	time.AfterFunc(keepEvery, func() { d.Post(d.keepNow) })
}

// keepNow writes unsaved work down.
func (d *Desk) keepNow() {
	s := &d.safety
	s.due = false
	if s.recovery == nil || !d.session.draft.Modified() {
		return
	}
	doc, file, mark, at := d.session.doc, d.session.draft.File(), d.session.draft.Mark(), d.Now()
	s.kept, s.isKept = mark, true
	r := s.recovery
	d.inTurn(func() func() {
		err := r.Keep(doc, file, at)
		return func() {
			if err != nil {
				d.answer.announce("Unsaved work is not kept: " + err.Error())
			}
			d.keep() // what was typed meanwhile
		}
	})
}

// inTurn is background for what is asked of the recovery: one after another, so that
// work kept before a save is not there again after it.
func (d *Desk) inTurn(do func() (then func())) {
	before, done := d.safety.turn, make(chan struct{})
	d.safety.turn = done
	d.background(func() func() {
		if before != nil {
			<-before
		}
		defer close(done)
		return do()
	})
}

// dropKept forgets what was kept: it is saved, or not wanted.
func (d *Desk) dropKept() {
	d.safety.isKept = false
	if r := d.safety.recovery; r != nil {
		d.inTurn(func() func() {
			err := r.Drop()
			return func() {
				if err != nil {
					d.dialogs.Report("Old unsaved work stays", err)
				}
			}
		})
	}
}

// claimFile says to other windows that this one works on a file.
func (d *Desk) claimFile(path string) {
	s := &d.safety
	if s.dir == "" || s.recovery == nil {
		return
	}
	if s.claim != nil {
		s.claim.Release()
	}
	s.claim, _ = library.NewClaim(s.dir, path, d.Now()) // without a claim nobody is noticed, and nothing is lost
	s.told = ""
	d.look()
}

// lookAround looks again and again.
func (d *Desk) lookAround() {
	time.AfterFunc(lookEvery, func() {
		d.Post(func() {
			if d.safety.recovery != nil {
				d.look()
				d.lookAround()
			}
		})
	})
}

// look says when another window works on the file, or another program changed it.
func (d *Desk) look() {
	claim, doc := d.safety.claim, d.session.doc
	d.background(func() func() {
		text := ""
		if claim != nil && len(claim.Others()) > 0 {
			text = "Another window has this file open: the last one to save asks before it overwrites."
		}
		if doc != nil && doc.Changed() {
			text = "Another program changed this file: saving asks before it overwrites."
		}
		return func() {
			if d.saving || doc != d.session.doc {
				return // it looked at what is no more
			}
			if text != d.safety.told {
				d.safety.told = text
				d.answer.warn(text)
				d.status()
			}
		}
	})
}

// release ends it all when the window closes as it should.
func (d *Desk) release() {
	s := &d.safety
	if s.claim != nil {
		s.claim.Release()
	}
	if s.recovery != nil {
		s.recovery.Close() // what could not be removed is offered at the next start
	}
	s.recovery, s.claim = nil, nil
}

// offerLeftovers offers what windows that crashed had not saved.
func (d *Desk) offerLeftovers() {
	r := d.safety.recovery
	d.background(func() func() {
		found, err := r.Leftovers()
		var offers []leftover
		for _, l := range found {
			if l.OnDisk == library.HoldsWork && l.Discard() == nil {
				continue // it was saved after all
			}
			offers = append(offers, leftover{l, leftoverText(l)})
		}
		return func() {
			if err != nil {
				d.dialogs.Report("Unsaved work of an earlier window cannot be read", err)
			}
			d.offerLeftover(offers)
		}
	})
}

// leftover is unsaved work and what to say about it.
type leftover struct {
	library.Leftover
	text string
}

// offerLeftover asks about the first of them, then about the next.
func (d *Desk) offerLeftover(found []leftover) {
	if len(found) == 0 {
		return
	}
	l, rest := found[0], found[1:]
	replies := []kit.Reply{
		{Label: "Not now", Do: func() { d.offerLeftover(rest) }},
		{Label: "Discard", Do: func() {
			if err := l.Discard(); err != nil {
				d.dialogs.Report("It was not removed", err)
				return
			}
			d.offerLeftover(rest)
		}},
	}
	if len(l.File.Scenarios) > 0 && len(l.Faults) == 0 {
		replies = append(replies, kit.Reply{Label: "Take it up", Do: func() { d.takeUp(l.Leftover) }})
	}
	d.dialogs.Ask("Unsaved work was found", kit.Paragraphs(l.text, 520*kit.TextFactor), nil, replies...)
}

// leftoverText says what was found, and how it differs from the file.
func leftoverText(l library.Leftover) string {
	what := "Work that was in no file yet"
	if l.Path != "" {
		what = "Changes to " + filepath.Base(l.Path)
	}
	text := fmt.Sprintf("%s, of %s, were not saved when the window ended.", what, l.When.Local().Format("2 Jan 2006, 15:04"))
	if l.Path == "" {
		text = strings.Replace(text, "were not saved", "was not saved", 1)
	}
	if l.Damaged != nil {
		text += "\n\n" + l.Damaged.Error()
	}
	if l.Path != "" {
		if doc, err := library.Open(l.Path); err == nil {
			if diff := l.Differences(doc.File); len(diff) > 0 {
				text += "\n\n" + strings.Join(diff, "\n\n")
			}
		}
	}
	return text
}

// takeUp goes on with work that was left, as unsaved.
func (d *Desk) takeUp(l library.Leftover) {
	if d.session.draft.Modified() {
		d.leaving(func() { d.takeUpNow(l) })
		return
	}
	d.takeUpNow(l)
}

func (d *Desk) takeUpNow(l library.Leftover) {
	d.showColumns()
	doc := l.Document()
	d.session = newSession(doc.File)
	d.safety.isKept = false
	if doc.Path != "" {
		d.session.doc = doc
	}
	d.session.draft.Unsaved()
	d.shown = nil
	d.session.reshaped()
	d.rebuild()
	r, file, kept, at := d.safety.recovery, doc.File, d.session.doc, d.Now()
	d.inTurn(func() func() {
		err := r.Keep(kept, file, at)
		if err == nil {
			err = l.Discard()
		}
		return func() {
			if err != nil {
				d.dialogs.Report("The recovery file stays", err)
			}
		}
	})
	if doc.Path != "" {
		d.claimFile(doc.Path)
	}
}
