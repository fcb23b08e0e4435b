package inhand

import (
	"strconv"

	"github.com/shopspring/decimal"

	"reelworth/internal/desk/form"
	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/exact"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// entries asks for the entries of the chosen reel's log: with what is likeliest filled in,
// so that two clicks do.
type entries struct {
	win Window
	on  *kit.Dialogs
}

// load asks for a load; row is the one to change, −1 for a new one.
func (e *entries) load(row int) {
	r, ok := e.win.Session().Reel()
	if !ok {
		return
	}
	x := scenario.Load{Date: e.win.Today(), Cassettes: 1, Exposures: r.Exposures}
	if row >= 0 {
		x = r.Loads[row]
	}
	e.ask(entry{
		title: words.AskLoaded, step: words.StepLoad, row: row, key: "load",
		fields: []entryField{
			e.day("reel.load.date", &x.Date),
			e.count("reel.load.cassettes", &x.Cassettes),
			e.count("reel.load.exposures", &x.Exposures),
			e.maybeCount("reel.load.counts", &x.Counts),
			e.text("reel.load.note", &x.Note),
		},
		add:    func(r scenario.InHand) scenario.InHand { return reels.WithLoad(r, x) },
		change: func(r scenario.InHand) scenario.InHand { return reels.ChangedLoad(r, row, x) },
		remove: func(r scenario.InHand) scenario.InHand { return reels.WithoutLoad(r, row) },
		at:     len(r.Loads),
	})
}

// result asks for what came of cassettes.
func (e *entries) result(row int) {
	r, ok := e.win.Session().Reel()
	if !ok {
		return
	}
	x, undeveloped := reels.NextResult(&r, e.win.Today())
	switch {
	case row >= 0:
		x = r.Results[row]
	case !undeveloped:
		e.on.Tell(words.NothingToDevelop.Title, words.NothingToDevelop.Text)
		return
	}
	e.ask(entry{
		title: words.AskDeveloped, step: words.StepResult, row: row, key: "result",
		fields: []entryField{
			e.day("reel.result.date", &x.Date),
			e.count("reel.result.cassettes", &x.Cassettes),
			e.count("reel.result.exposures", &x.Exposures),
			e.count("reel.result.good", &x.Good),
			e.count("reel.result.lost_otherwise", &x.LostOtherwise),
			e.text("reel.result.note", &x.Note),
		},
		follow: followGood,
		add:    func(r scenario.InHand) scenario.InHand { return reels.WithResult(r, x) },
		change: func(r scenario.InHand) scenario.InHand { return reels.ChangedResult(r, row, x) },
		remove: func(r scenario.InHand) scenario.InHand { return reels.WithoutResult(r, row) },
		at:     len(r.Results),
	})
}

// followGood lets the good exposures follow the cassettes as long as nobody said how many
// there are: else three cassettes would pass for two that failed.
func followGood(boxes map[string]*kit.TextBox) {
	cassettes, exposures, good := boxes["reel.result.cassettes"], boxes["reel.result.exposures"], boxes["reel.result.good"]
	product := func() (string, bool) {
		n, err := strconv.Atoi(cassettes.Entry.Text)
		m, wrong := strconv.Atoi(exposures.Entry.Text)
		return strconv.Itoa(n * m), err == nil && wrong == nil
	}
	last, _ := product()
	follow := func(string) {
		if next, ok := product(); ok {
			if good.Entry.Text == last {
				good.Set(next)
			}
			last = next
		}
	}
	cassettes.Changed, exposures.Changed = follow, follow
}

// recount asks for what was measured.
func (e *entries) recount(row int) {
	r, ok := e.win.Session().Reel()
	if !ok {
		return
	}
	x := scenario.Recount{Date: e.win.Today(), LeftMM: thereNow(&r)}
	if row >= 0 {
		x = r.Recounts[row]
	}
	e.ask(entry{
		title: words.AskMeasured, step: words.StepRecount, row: row, key: "recount",
		fields: []entryField{
			e.day("reel.recount.date", &x.Date),
			e.number("reel.recount.left_mm", &x.LeftMM),
			e.text("reel.recount.note", &x.Note),
		},
		add:    func(r scenario.InHand) scenario.InHand { return reels.WithRecount(r, x) },
		change: func(r scenario.InHand) scenario.InHand { return reels.ChangedRecount(r, row, x) },
		remove: func(r scenario.InHand) scenario.InHand { return reels.WithoutRecount(r, row) },
		at:     len(r.Recounts),
	})
}

// thereNow is the film on the reel as computed, its end included, in whole millimetres.
func thereNow(r *scenario.InHand) scenario.Decimal {
	h := r.Film()
	rest, err := h.Remaining()
	if err != nil {
		return decimal.Zero
	}
	return exact.Min(h.Length.Sub(rest.Used), h.Length).Decimal(0)
}

// put makes a change of the chosen reel as one step.
func (e *entries) put(step string, do func(scenario.InHand) scenario.InHand) {
	e.win.Change(func(s *session.Session) {
		r, _ := s.Reel()
		s.AlterReel(words.Of(step, r.Name), do)
	})
}

func (e *entries) day(key string, at *scenario.Date) entryField {
	return entryField{key: key, text: at.String(), set: func(text string) (err error) {
		*at, err = form.ReadDay(text)
		return err
	}}
}

func (e *entries) count(key string, at *int) entryField {
	return entryField{key: key, text: strconv.Itoa(*at), figure: true, set: func(text string) (err error) {
		*at, err = form.ReadCount(text, e.win.Locale())
		return err
	}}
}

func (e *entries) maybeCount(key string, at *scenario.MaybeWhole) entryField {
	f := entryField{key: key, figure: true, set: func(text string) error {
		*at = scenario.MaybeWhole{}
		if text == "" {
			return nil
		}
		n, err := form.ReadCount(text, e.win.Locale())
		*at = scenario.MaybeWhole{Int: n, Set: err == nil}
		return err
	}}
	if at.Set {
		f.text = strconv.Itoa(at.Int)
	}
	return f
}

func (e *entries) number(key string, at *scenario.Decimal) entryField {
	return entryField{key: key, text: e.win.Locale().Field(*at), figure: true, set: func(text string) (err error) {
		*at, err = form.ReadNumber(text, e.win.Locale())
		return err
	}}
}

func (e *entries) text(key string, at *string) entryField {
	return entryField{key: key, text: *at, set: func(text string) error {
		*at = text
		return nil
	}}
}
