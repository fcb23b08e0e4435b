package market

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"reelworth/internal/desk/jobs"
	"reelworth/internal/rates"
)

// thread is the interface thread of a test: what is posted runs when it is run.
type thread struct{ queue chan func() }

func (t thread) post(f func()) { t.queue <- f }

func (t thread) run(work *jobs.Background) {
	work.Wait()
	for {
		select {
		case f := <-t.queue:
			f()
		default:
			return
		}
	}
}

// bank answers as a test says, once it is let.
type bank struct {
	got   rates.Fetched
	err   error
	kept  *rates.File
	asked int
	wait  chan bool // nil answers at once
}

func (b *bank) Kept(rates.Publication) *rates.File { return b.kept }
func (b *bank) Fetch(ctx context.Context, p rates.Publication) (rates.Fetched, error) {
	b.asked++
	if b.wait != nil {
		<-ctx.Done()
		return rates.Fetched{}, ctx.Err()
	}
	return b.got, b.err
}

func day(t *testing.T, date string) *rates.File {
	t.Helper()
	f, err := rates.Read([]byte("Date,USD,\n" + date + ",1.1252,\n"))
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func open(b *bank) (*Market, func()) {
	th := thread{make(chan func(), 100)}
	work := jobs.NewBackground(th.post)
	return New(b, work, func() {}), func() { th.run(work) }
}

func TestNothingIsFetchedUnlessAskedFor(t *testing.T) {
	b := &bank{}
	m, settle := open(b)
	m.Recall()
	settle()
	m.Read(filepath.Join(t.TempDir(), "none.csv"))
	settle()
	if b.asked != 0 || m.File != nil || !strings.Contains(m.Wrong, "none.csv could not be read") {
		t.Errorf("asked %d times, %q", b.asked, m.Wrong)
	}
}

func TestTheLastGoodRatesStay(t *testing.T) {
	old, fresh := day(t, "2025-05-08"), day(t, "2025-05-09")
	b := &bank{kept: old}
	m, settle := open(b)
	m.Recall()
	settle()
	if m.File != old {
		t.Fatal("what was kept is not in use")
	}
	b.got, b.err = rates.Fetched{File: old}, &rates.Fault{Code: rates.FaultOffline}
	m.Fetch()
	if m.Busy != Fetching {
		t.Error("it is not said that the bank is asked")
	}
	settle()
	if m.File != old || m.Wrong != "The bank cannot be reached, so you may be offline; the rates of 8 May 2025 stay in use." {
		t.Errorf("%q", m.Wrong)
	}
	b.got, b.err = rates.Fetched{File: fresh, Fresh: true}, &rates.NotKept{Err: os.ErrPermission}
	m.Fetch()
	settle()
	if m.File != fresh || !strings.Contains(m.Wrong, "could not be kept") {
		t.Errorf("rates that could not be kept are not in use: %q", m.Wrong)
	}
	bad := filepath.Join(t.TempDir(), "bad.csv")
	if err := os.WriteFile(bad, []byte("Date,USD,\n2025-05-09,dear,\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	m.Read(bad)
	settle()
	if m.File != fresh || !strings.Contains(m.Wrong, "bad.csv was not read: line 2:") {
		t.Errorf("%q", m.Wrong)
	}
}

func TestWhatIsFetchedCanBeStopped(t *testing.T) {
	b := &bank{wait: make(chan bool)}
	m, settle := open(b)
	m.Fetch()
	m.Stop()
	settle()
	if m.Busy != Idle || m.File != nil || m.Wrong != "" {
		t.Errorf("%v %q", m.Busy, m.Wrong)
	}
	m.Fetch() // and again, until a file takes its place
	good := filepath.Join(t.TempDir(), "good.csv")
	if err := os.WriteFile(good, []byte("Date,USD,\n2025-05-09,1.1252,\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	m.Read(good)
	settle()
	if m.Busy != Idle || m.File == nil || m.From != "good.csv" || m.Wrong != "" {
		t.Errorf("%v %q %q", m.Busy, m.From, m.Wrong)
	}
}
