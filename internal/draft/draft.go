package draft

import (
	"slices"

	"reelworth/internal/scenario"
)

// Steps is how many changes can be undone before the oldest is forgotten.
const Steps = 1000

// Draft is a scenario file being worked on. It belongs to one goroutine.
type Draft struct {
	file  scenario.File
	steps []step
	at    int  // how many of the steps are in effect
	open  bool // the last step may still grow

	first Mark // the state before all steps
	saved Mark // the state that is on disk
	last  Mark // the newest name given to a state

	onDisk *scenario.File // the saved state; nil where it is not known
	known  bool           // whether the state of this mark differs from it
	judged Mark
	differ bool
}

// Mark names one state of a draft; no two states share one.
type Mark uint64

// step replaces some of the scenarios or of the reels in hand, or of both.
type step struct {
	name, field string
	mark        Mark // the state it leads to
	at          At
	scenarios   splice[scenario.Scenario]
	reels       splice[scenario.InHand]
}

// At is what a change was about: the scenario, or the reel in hand, at an index; −1 for
// none.
type At struct{ Scenario, Reel int }

// New is a draft of f, unmodified.
func New(f scenario.File) *Draft { return &Draft{file: f, onDisk: &f} }

// File is the state now. It must not be changed.
func (d *Draft) File() scenario.File { return d.file }

// Scenario is the scenario at index.
func (d *Draft) Scenario(index int) scenario.Scenario { return d.file.Scenarios[index] }

// Reel is the reel in hand at index.
func (d *Draft) Reel(index int) scenario.InHand { return d.file.Reels[index] }

// Change puts s in the place of the scenario at index. name says what was changed,
// for the menu: "price of the reel". Changes of one field, one after another, are one
// step until Seal; field names it, "" for a step of its own. What changes nothing is no
// step. The reels in hand follow an offer's new name.
func (d *Draft) Change(name, field string, index int, s scenario.Scenario) {
	was := d.file.Scenarios[index]
	next := step{
		name: name, field: field, at: At{index, -1},
		scenarios: splice[scenario.Scenario]{index, []scenario.Scenario{was}, []scenario.Scenario{s}},
	}
	reels := d.file.Reels
	if last := d.growing(field, next.at); last != nil {
		was = last.scenarios.before[0] // what the step began with
		if len(last.reels.before) > 0 {
			reels = last.reels.before
			next.reels = splice[scenario.InHand]{0, d.file.Reels, reels}
		}
	}
	if followed := scenario.FollowOffers(d.file, index, &was, &s, reels); followed != nil {
		next.reels = splice[scenario.InHand]{0, d.file.Reels, followed}
	}
	d.put(next)
}

// ChangeReel is as Change, for the reel in hand at index.
func (d *Draft) ChangeReel(name, field string, index int, r scenario.InHand) {
	was := d.file.Reels[index]
	d.put(step{
		name: name, field: field, at: At{-1, index},
		reels: splice[scenario.InHand]{index, []scenario.InHand{was}, []scenario.InHand{r}},
	})
}

// put makes a change of one thing, as part of the last step where that may still grow.
func (d *Draft) put(s step) {
	if last := d.growing(s.field, s.at); last != nil {
		s.do(&d.file)
		last.scenarios.after = s.scenarios.after
		if len(last.reels.before) == 0 {
			last.reels = s.reels
		} else {
			last.reels.after = s.reels.after
		}
		if last.changesNothing() { // typed back to where it began
			d.steps = d.steps[:d.at-1]
			d.at--
			d.open = false
			return
		}
		last.mark = d.newMark()
		return
	}
	if s.changesNothing() {
		return
	}
	d.push(s)
	d.open = s.field != ""
}

// Insert adds s before the scenario at index, or at the end.
func (d *Draft) Insert(name string, index int, s scenario.Scenario) {
	d.push(step{name: name, at: At{index, -1}, scenarios: splice[scenario.Scenario]{index: index, after: []scenario.Scenario{s}}})
}

// Remove takes the scenario at index away.
func (d *Draft) Remove(name string, index int) {
	d.push(step{name: name, at: At{index, -1}, scenarios: splice[scenario.Scenario]{index: index, before: []scenario.Scenario{d.file.Scenarios[index]}}})
}

// InsertReel adds r before the reel in hand at index, or at the end.
func (d *Draft) InsertReel(name string, index int, r scenario.InHand) {
	d.push(step{name: name, at: At{-1, index}, reels: splice[scenario.InHand]{index: index, after: []scenario.InHand{r}}})
}

// RemoveReel takes the reel in hand at index away.
func (d *Draft) RemoveReel(name string, index int) {
	d.push(step{name: name, at: At{-1, index}, reels: splice[scenario.InHand]{index: index, before: []scenario.InHand{d.file.Reels[index]}}})
}

// Seal ends the field edit under way: the next change of the field is a step of its own.
func (d *Draft) Seal() { d.open = false }

// Undo takes the last change back, and says what it was about.
func (d *Draft) Undo() (about At, ok bool) {
	if d.at == 0 {
		return about, false
	}
	d.open = false
	d.at--
	s := &d.steps[d.at]
	s.undo(&d.file)
	return s.at, true
}

// Redo makes the last undone change again.
func (d *Draft) Redo() (about At, ok bool) {
	if d.at == len(d.steps) {
		return about, false
	}
	d.open = false
	s := &d.steps[d.at]
	d.at++
	s.do(&d.file)
	return s.at, true
}

// UndoName is what Undo would take back, "" for nothing.
func (d *Draft) UndoName() string {
	if d.at == 0 {
		return ""
	}
	return d.steps[d.at-1].name
}

// UndoField is the field that Undo would take back, "" for a change of more than one.
func (d *Draft) UndoField() string {
	if d.at == 0 {
		return ""
	}
	return d.steps[d.at-1].field
}

// RedoField is the field that Redo would change again, likewise.
func (d *Draft) RedoField() string {
	if d.at == len(d.steps) {
		return ""
	}
	return d.steps[d.at].field
}

// RedoName is what Redo would make again, "" for nothing.
func (d *Draft) RedoName() string {
	if d.at == len(d.steps) {
		return ""
	}
	return d.steps[d.at].name
}

// Modified says whether the state now differs from the saved one. Typed back to what it
// was, in however many steps, it does not.
func (d *Draft) Modified() bool {
	now := d.Mark()
	if now == d.saved || d.onDisk == nil {
		return now != d.saved
	}
	if !d.known || now != d.judged {
		d.known, d.judged, d.differ = true, now, !scenario.SameFile(d.file, *d.onDisk)
	}
	return d.differ
}

// Mark names the state now.
func (d *Draft) Mark() Mark {
	if d.at == 0 {
		return d.first
	}
	return d.steps[d.at-1].mark
}

// Saved says that the state of that mark is the one on disk.
func (d *Draft) Saved(m Mark) {
	d.saved, d.open = m, false
	d.onDisk, d.known = nil, false
	if m == d.Mark() {
		file := d.file
		d.onDisk = &file
	}
}

// Unsaved says that no state is the one on disk.
func (d *Draft) Unsaved() { d.saved, d.onDisk = d.newMark(), nil }

// growing is the last step when it is still open and about this field.
func (d *Draft) growing(field string, at At) *step {
	if !d.open || field == "" || d.at == 0 || d.at != len(d.steps) || d.Mark() == d.saved {
		return nil
	}
	last := &d.steps[d.at-1]
	if last.field != field || last.at != at {
		return nil
	}
	return last
}

func (d *Draft) push(s step) {
	s.mark = d.newMark()
	d.steps = append(d.steps[:d.at], s)
	s.do(&d.file)
	d.at++
	d.open = false
	if extra := len(d.steps) - Steps; extra > 0 {
		d.first = d.steps[extra-1].mark
		d.steps = slices.Delete(d.steps, 0, extra)
		d.at -= extra
	}
}

func (d *Draft) newMark() Mark {
	d.last++
	return d.last
}
