package market

import (
	"cmp"
	"context"
	"errors"
	"path/filepath"

	"reelworth/internal/desk/jobs"
	"reelworth/internal/history"
	"reelworth/internal/rates"
	"reelworth/internal/words"
)

// Market is the published rates in use, and what is being done about others. Its methods
// belong to the interface thread.
type Market struct {
	File  *rates.File // nil while there are none
	From  string      // the name of the file they were read from, "" for the bank's own
	Wrong string      // why the last ones asked for are not in use, worded; "" for nothing
	Busy  Busy
	Span  history.Span // the days that are looked back on

	bank    Bank
	work    *jobs.Background
	changed func()
	stop    context.CancelFunc // of what is under way, nil for nothing
	asked   int                // rises with everything asked for; what came before is stale
	looked  bool               // for what was fetched before
}

// Bank is who publishes rates; rates.Fetcher is the real one.
type Bank interface {
	Fetch(context.Context, rates.Publication) (rates.Fetched, error)
	Kept(rates.Publication) *rates.File // the last good ones, nil for none
}

// Busy is what is under way.
type Busy int

// What can be under way.
const (
	Idle Busy = iota
	Reading
	Fetching
)

// New is a market without rates; changed is called on the interface thread when anything
// of it is another.
func New(bank Bank, work *jobs.Background, changed func()) *Market {
	return &Market{Span: history.Span{Years: 5}, bank: bank, work: work, changed: changed}
}

// Folder is where the bank's files are kept, "" for nowhere.
func (m *Market) Folder() string {
	if b, keeps := m.bank.(interface{ Where() string }); keeps {
		return b.Where()
	}
	return ""
}

// Recall takes the last good rates that were fetched, if nothing is in use yet. It looks
// for them once.
func (m *Market) Recall() {
	if m.looked || m.File != nil || m.Busy != Idle {
		return
	}
	m.looked = true
	m.do(Reading, func(context.Context) result { return result{file: m.bank.Kept(rates.AllDays)} })
}

// Read takes the rates of a file.
func (m *Market) Read(path string) {
	m.do(Reading, func(context.Context) result {
		file, err := rates.Load(path)
		if err != nil {
			return result{wrong: words.RatesNotRead(filepath.Base(path), err)}
		}
		return result{file: file, from: filepath.Base(path), fresh: true}
	})
}

// Fetch asks the bank for its rates of all days, now.
func (m *Market) Fetch() {
	inUse := m.File
	m.do(Fetching, func(ctx context.Context) result {
		got, err := m.bank.Fetch(ctx, rates.AllDays)
		var own *rates.Fault
		var unkept *rates.NotKept
		r := result{file: got.File, fresh: got.Fresh}
		switch {
		case errors.As(err, &own):
			r.wrong = words.FetchFault(own, cmp.Or(inUse, got.File))
		case errors.As(err, &unkept):
			r.wrong = words.RatesNotKept
		}
		return r
	})
}

// Stop gives up what is under way; the rates in use stay.
func (m *Market) Stop() {
	if m.stop == nil {
		return
	}
	m.end()
	m.asked++
	m.changed()
}

// result is what came of a job.
type result struct {
	file  *rates.File // nil for none
	from  string
	fresh bool // it is what was asked for
	wrong string
}

// do works something out away from the interface thread, in the place of what is under
// way.
func (m *Market) do(what Busy, job func(context.Context) result) {
	if m.stop != nil {
		m.stop()
	}
	ctx, cancel := context.WithCancel(context.Background())
	m.asked++
	mine := m.asked
	m.Busy, m.stop, m.Wrong = what, cancel, ""
	m.changed()
	m.work.Do(func() func() {
		r := job(ctx)
		return func() {
			if mine != m.asked {
				return
			}
			m.end()
			m.take(r)
			m.changed()
		}
	})
}

// take puts what came of a job in use; what is in use stays where nothing came.
func (m *Market) take(r result) {
	m.Wrong = r.wrong
	if r.file != nil && (r.fresh || m.File == nil) {
		m.File, m.From = r.file, r.from
	}
}

func (m *Market) end() {
	m.stop()
	m.Busy, m.stop = Idle, nil
}
