package session

import (
	"strings"
	"time"

	"reelworth/internal/desk/jobs"
	"reelworth/internal/draft"
	"reelworth/internal/library"
	"reelworth/internal/words"
)

// keepEvery is how long unsaved work may be younger than what is kept of it, and
// lookEvery how often the window looks whether its file is in other hands too.
const (
	keepEvery = 2 * time.Second
	lookEvery = 4 * time.Second
)

// Teller hears what the keeper has to say.
type Teller interface {
	Warn(text string)         // stays true until the next; "" ends it
	Report(title, why string) // something failed
}

// Keeper keeps unsaved work where it outlives a crash, and notices who else works on the
// file.
type Keeper struct {
	teller  Teller
	work    func() *Session // what is kept
	saving  func() bool     // the file is being written
	now     func() time.Time
	in      *jobs.Background
	inOrder *jobs.Sequence // what is asked of the recovery

	dir      string // "" keeps nothing
	recovery *library.Recovery
	claim    *library.Claim
	mark     draft.Mark // of what is written down, where isKept
	note     string     // what stays true while the window is open
	unkept   string     // why what is unsaved is not kept, "" while it is
	aside    string     // who else works on the file
	isKept   bool
	due      bool // keeping is on its way
}

// NewKeeper keeps the work there is at any time; saving says whether its file is being written.
func NewKeeper(t Teller, work func() *Session, saving func() bool, now func() time.Time, in *jobs.Background) *Keeper {
	return &Keeper{teller: t, work: work, saving: saving, now: now, in: in, inOrder: jobs.NewSequence(in)}
}

// Begin begins the recovery of this window in a folder; it says whether it could. Without
// one the window works on, and says that it does so without a net.
func (k *Keeper) Begin(dir string) bool {
	if dir == "" {
		return false
	}
	k.dir = dir
	r, err := library.NewRecovery(dir)
	if err != nil {
		k.unkept = words.NoRecovery(err)
		k.warn()
		return false
	}
	k.recovery = r
	k.lookAround()
	return true
}

// Folder is where unsaved work is kept, "" while none is.
func (k *Keeper) Folder() string {
	if k.recovery == nil {
		return ""
	}
	return k.dir
}

// Keep writes unsaved work down soon.
func (k *Keeper) Keep() {
	d := k.work().Draft
	switch {
	case k.recovery == nil || k.due:
		return
	case !d.Modified():
		if k.isKept { // it was taken back
			k.Drop()
		}
		return
	case k.isKept && d.Mark() == k.mark:
		return
	}
	k.due = true
	time.AfterFunc(keepEvery, func() { k.in.Post(k.KeepNow) })
}

// KeepNow writes unsaved work down.
func (k *Keeper) KeepNow() {
	k.due = false
	s := k.work()
	if k.recovery == nil || !s.Draft.Modified() {
		return
	}
	doc, file, mark, at := s.Doc, s.Draft.File(), s.Draft.Mark(), k.now()
	k.mark, k.isKept = mark, true
	r := k.recovery
	k.inOrder.Do(func() func() {
		err := r.Keep(doc, file, at)
		return func() {
			k.kept(mark, err)
			k.Keep() // what was typed meanwhile, or what could not be kept, once more
		}
	})
}

// kept says what came of writing a state down.
func (k *Keeper) kept(mark draft.Mark, err error) {
	was := k.unkept
	k.unkept = ""
	if err != nil {
		k.unkept = words.NotKept(err)
		if k.mark == mark {
			k.isKept = false
		}
	}
	if k.unkept != was {
		k.warn()
	}
}

// warn says what endangers the work.
func (k *Keeper) warn() {
	k.teller.Warn(strings.Join(strings.Fields(k.note+" "+k.unkept+" "+k.aside), " "))
}

// Note says something that stays true while the window is open.
func (k *Keeper) Note(text string) {
	k.note = strings.TrimSpace(k.note + " " + text)
	k.warn()
}

// Last keeps what is unsaved before it returns, when the program is ended from outside.
func (k *Keeper) Last() {
	if s := k.work(); k.recovery != nil && s.Draft.Modified() {
		_ = k.recovery.Keep(s.Doc, s.Draft.File(), k.now()) // nobody is left to be told
	}
}

// Forget says that what is written down is of other work.
func (k *Keeper) Forget() { k.isKept = false }

// Drop removes what was kept: it is saved, or not wanted.
func (k *Keeper) Drop() {
	k.Forget()
	if r := k.recovery; r != nil {
		if k.unkept != "" {
			k.unkept = ""
			k.warn()
		}
		k.inOrder.Do(func() func() {
			err := r.Drop()
			return func() {
				if err != nil {
					k.teller.Report(words.OldWorkStays, words.Failure(err))
				}
			}
		})
	}
}

// Adopt keeps what an earlier window had left as this one's, and removes it there.
func (k *Keeper) Adopt(l library.Leftover, s *Session) {
	r, file, doc, at := k.recovery, s.Draft.File(), s.Doc, k.now()
	k.inOrder.Do(func() func() {
		err := r.Keep(doc, file, at)
		if err == nil {
			err = l.Discard()
		}
		return func() {
			if err != nil {
				k.teller.Report(words.RecoveryStays, words.Failure(err))
			}
		}
	})
}

// Leftovers finds what windows that crashed had not saved, away from the interface thread;
// describe is called there, then with all of it on the interface thread.
func (k *Keeper) Leftovers(describe func(library.Leftover) string, then func([]library.Leftover, []string)) {
	r := k.recovery
	k.in.Do(func() func() {
		found, err := r.Leftovers()
		var left []library.Leftover
		var texts []string
		for _, l := range found {
			if l.OnDisk == library.HoldsWork && l.Discard() == nil {
				continue // it was saved after all
			}
			left, texts = append(left, l), append(texts, describe(l))
		}
		return func() {
			if err != nil {
				k.teller.Report(words.RecoveryUnread, words.Failure(err))
			}
			then(left, texts)
		}
	})
}

// End ends it all when the window closes as it should.
func (k *Keeper) End() {
	if k.claim != nil {
		k.claim.Release()
	}
	if k.recovery != nil {
		k.recovery.Close() // what could not be removed is offered at the next start
	}
	k.recovery, k.claim = nil, nil
}

// Crash stops as a crash does, for tests: nothing is dropped.
func (k *Keeper) Crash() { k.recovery = nil }
