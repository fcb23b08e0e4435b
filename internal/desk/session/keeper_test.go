package session

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"reelworth/internal/desk/jobs"
	"reelworth/internal/scenario"
)

// heard is what a keeper said.
type heard struct{ warning, report string }

func (h *heard) Warn(text string)         { h.warning = text }
func (h *heard) Report(title, why string) { h.report += title }

// keeping is a keeper of changed work, with what waits for the interface thread.
func keeping(t *testing.T, dir string) (k *Keeper, h *heard, settle func()) {
	t.Helper()
	work := jobs.NewBackground(nil)
	post := make(chan func(), 100)
	work.Post = func(f func()) { post <- f }
	h = &heard{}
	s := NewDemo()
	k = NewKeeper(h, func() *Session { return s }, func() bool { return false }, func() time.Time { return time.Unix(0, 0) }, work)
	k.Begin(dir)
	s.Rename("Changed")
	return k, h, func() {
		work.Wait()
		for {
			select {
			case f := <-post:
				f()
			default:
				return
			}
		}
	}
}

func TestAWriteThatFailedIsTriedAgainAndSaidUntilItIsDone(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "state")
	k, h, settle := keeping(t, dir)
	if err := os.RemoveAll(dir); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(dir, []byte("in the way"), 0o600); err != nil {
		t.Fatal(err)
	}
	k.KeepNow()
	settle()
	if h.warning == "" || !k.due || k.isKept {
		t.Fatalf("said %q, to be tried again: %v", h.warning, k.due)
	}
	why := h.warning
	k.Look() // what else there is to say does not take its place
	settle()
	if h.warning != why {
		t.Errorf("it says %q", h.warning)
	}
	if err := os.Remove(dir); err != nil {
		t.Fatal(err)
	}
	k.KeepNow() // as the clock does
	settle()
	if h.warning != "" || !k.isKept {
		t.Errorf("kept, but it says %q", h.warning)
	}
	kept, err := filepath.Glob(filepath.Join(dir, "unsaved-*.toml"))
	if err != nil || len(kept) != 1 {
		t.Fatal(kept, err)
	}
	if data, err := os.ReadFile(kept[0]); err != nil || !strings.Contains(string(data), "Changed") {
		t.Error(err)
	}
	k.End()
}

func TestWorkThatIsTakenBackIsKeptNoMore(t *testing.T) {
	dir := t.TempDir()
	k, _, settle := keeping(t, dir)
	k.KeepNow()
	settle()
	k.work().Undo()
	k.Keep()
	settle()
	if kept, err := filepath.Glob(filepath.Join(dir, "unsaved-*.toml")); err != nil || len(kept) != 0 {
		t.Error("a crash would offer what was taken back:", kept, err)
	}
	k.End()
}

func TestRangesGoWithARateOrAWayToBuyInOneStep(t *testing.T) {
	s := NewDemo()
	rate := scenario.RateInput(s.Current().Rates[0])
	low, high := s.Current().Rates[0].Equals, s.Current().Offers[0].Price
	s.Alter("ranges", func(s *scenario.Scenario) {
		s.Ranges = []scenario.Range{{Input: rate, Low: low, High: high}, {Input: "offer.price", Offer: s.Offers[2].Name, Low: low, High: high}}
	})
	s.RemoveQuote(0)
	if r := s.Current().Ranges; len(r) != 1 || r[0].Input == rate {
		t.Error("the rate is gone, its range is not:", r)
	}
	s.Choose(offerAt(2))
	s.RemoveOffer()
	if r := s.Current().Ranges; len(r) != 0 {
		t.Error("the way to buy is gone, its range is not:", r)
	}
	s.Undo()
	s.Undo()
	if len(s.Current().Ranges) != 2 {
		t.Error("undone, but the ranges are gone")
	}
}
