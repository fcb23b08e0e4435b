package session

import (
	"fmt"
	"reflect"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

func newReel(name string) scenario.InHand {
	r := scenario.Defaults[scenario.InHand]()
	r.Name, r.Length, r.LengthUnit, r.Exposures = name, decimal.NewFromInt(100), scenario.Feet, 36
	return r
}

// logging is one entry of a reel's log, or a change of it, and what it is called.
func logging(t *rapid.T, r scenario.InHand) (string, func(scenario.InHand) scenario.InHand) {
	day := scenario.Date{Year: 2027, Month: 3, Day: rapid.IntRange(1, 28).Draw(t, "day")}
	n := rapid.IntRange(1, 40).Draw(t, "number")
	row := func(of int) int { return rapid.IntRange(0, of-1).Draw(t, "row") }
	switch what := rapid.IntRange(0, 7).Draw(t, "entry"); {
	case what == 0:
		return "load", func(r scenario.InHand) scenario.InHand {
			return reels.WithLoad(r, scenario.Load{Date: day, Cassettes: n, Exposures: n, Note: "“€”"})
		}
	case what == 1:
		return "result", func(r scenario.InHand) scenario.InHand {
			return reels.WithResult(r, scenario.Result{Date: day, Cassettes: 1, Exposures: n, Good: n})
		}
	case what == 2:
		return "recount", func(r scenario.InHand) scenario.InHand {
			return reels.WithRecount(r, scenario.Recount{Date: day, LeftMM: decimal.New(int64(n), -1)})
		}
	case what == 3 && len(r.Loads) > 0:
		i := row(len(r.Loads))
		return "no load", func(r scenario.InHand) scenario.InHand { return reels.WithoutLoad(r, i) }
	case what == 4 && len(r.Results) > 0:
		i := row(len(r.Results))
		return "no result", func(r scenario.InHand) scenario.InHand { return reels.WithoutResult(r, i) }
	case what == 5 && len(r.Recounts) > 0:
		i := row(len(r.Recounts))
		return "no recount", func(r scenario.InHand) scenario.InHand { return reels.WithoutRecount(r, i) }
	}
	return "cassette", func(r scenario.InHand) scenario.InHand {
		return reels.WithCassette(r, day, n, scenario.MaybeWhole{Int: n, Set: n%2 == 0})
	}
}

// Undoing any entry of a log gives the file as it was before, byte by byte, and redoing
// it the file as it was after; whatever else was done to reels and scenarios between.
func TestUndoOfALogEntryIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := New(scenario.File{Schema: scenario.Schema, Scenarios: []scenario.Scenario{{Name: "a year"}}})
		s.PutInHand("putting a reel in hand", newReel("A"))
		s.PutInHand("putting a reel in hand", newReel("B"))
		written := func() string { return string(scenario.Write(s.Draft.File())) }
		states := []string{written()}
		for i := range rapid.IntRange(1, 15).Draw(t, "steps") {
			s.Choose(s.Chosen.reelAt(rapid.IntRange(0, 1).Draw(t, "reel")))
			switch rapid.IntRange(0, 9).Draw(t, "what") {
			case 0:
				s.Rename(fmt.Sprint("another name ", i))
			case 1:
				next, _ := s.Reel()
				next.Note = fmt.Sprint("note ", i)
				s.ChangeReel("note", s.ReelKey()+".note", next)
				s.EndField()
			default:
				r, _ := s.Reel()
				s.AlterReel(logging(t, r))
			}
			if now := written(); now != states[len(states)-1] {
				states = append(states, now)
			} else {
				t.Fatalf("step %d changed nothing", i)
			}
		}
		for i := len(states) - 2; i >= 0; i-- {
			if s.Undo(); written() != states[i] {
				t.Fatalf("undone to\n%s\nwant\n%s", written(), states[i])
			}
		}
		for i := 1; i < len(states); i++ {
			if s.Redo(); written() != states[i] {
				t.Fatalf("redone to\n%s\nwant\n%s", written(), states[i])
			}
		}
	})
}

func TestAReelPutInHandAndTakenAwayLeavesNoTrace(t *testing.T) {
	s := NewDemo()
	was := string(scenario.Write(s.Draft.File()))
	s.PutInHand("putting a reel in hand", newReel("A"))
	if r, ok := s.Reel(); !ok || r.Name != "A" {
		t.Errorf("%q is chosen", r.Name)
	}
	if !s.Undo() || string(scenario.Write(s.Draft.File())) != was || s.Draft.Modified() {
		t.Error("undone, but something is left")
	}
	if s.Clamp(); s.Acted().Topic != TopicOffer || s.Chosen.Topic != TopicOffer {
		t.Errorf("after undo the window looks at %v", s.Chosen)
	}
	if s.Redo(); s.Acted().Selection != s.Chosen.reelAt(0) {
		t.Errorf("redone, yet it looks at %v", s.Acted())
	}
	s.Choose(s.Acted().Selection)
	if s.RemoveReel("removing a reel"); string(scenario.Write(s.Draft.File())) != was {
		t.Error("taken away, but something is left")
	}
}

// Typing in one field of a reel is one step, and one reel's field is not the other's.
func TestTypingInAReelIsOneStep(t *testing.T) {
	s := NewDemo()
	s.PutInHand("a", newReel("A"))
	was := string(scenario.Write(s.Draft.File()))
	s.BeginField()
	for _, text := range []string{"x", "xy", "xyz"} {
		next := s.BaseReel()
		next.Process = text
		s.ChangeReel("process", "reel[1].process", next)
	}
	s.EndField()
	if s.Undo(); string(scenario.Write(s.Draft.File())) != was {
		t.Error("one undo does not take the typing back")
	}
	if at := s.Acted(); at.Topic != TopicReel || at.Key != "reel[1].process" {
		t.Errorf("it looks at %v", at)
	}
}

func TestFaultsOfAReelNameItsPlace(t *testing.T) {
	s := NewDemo()
	s.PutInHand("a", newReel("A"))
	s.PutInHand("b", newReel("B"))
	r, _ := s.Reel()
	if faults := s.FaultsWith(r); len(faults) > 0 {
		t.Fatal(faults)
	}
	taken, beyond := r, r
	taken.Name = "A"
	beyond.Loads = []scenario.Load{{Date: scenario.Date{Year: 2027, Month: 1, Day: 1}, Cassettes: 99, Exposures: 36}}
	for _, next := range []scenario.InHand{taken, beyond} {
		got, want := s.FaultsWith(next), scenario.CheckReels([]scenario.InHand{s.Reels()[0], next})
		if len(want) != 1 || !reflect.DeepEqual(got, want) {
			t.Errorf("%+v, a whole check says %+v", got, want)
		}
	}
}
