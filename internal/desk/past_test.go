package desk

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"

	"reelworth/internal/desk/pages"
	"reelworth/internal/history"
	"reelworth/internal/rates"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// wobbling is a file of so many days of made-up rates, the last on the day of the tests.
func wobbling(t *testing.T, days int) string {
	t.Helper()
	var b strings.Builder
	b.WriteString("Date,USD,JPY,\n")
	for i := range days {
		fmt.Fprintf(&b, "%s,%d.%02d,%d,\n", scenario.DateOf(noon).AddDays(-i), 1, 5+i*7%40, 130+i*11%50)
	}
	path := filepath.Join(t.TempDir(), "rates.csv")
	if err := os.WriteFile(path, []byte(b.String()), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestThePastIsTheHistoryOfWhatStandsInTheWindow(t *testing.T) {
	h := open(t)
	path := wobbling(t, 900)
	file, err := rates.Load(path)
	if err != nil {
		t.Fatal(err)
	}
	h.Page(pages.Past)
	h.Rates(path)
	s := demo()
	agrees := func(span history.Span) {
		t.Helper()
		want, err := history.Of(context.Background(), s, nil, file, span, nil)
		if err != nil {
			t.Fatal(err)
		}
		page := h.answer.Past
		if got, said := page.Figure.Drawing.Title(), words.HistoryTitle(want, h.session.ChosenOffer(), "en"); got != said {
			t.Errorf("the page says %q, the days say %q", got, said)
		}
	}
	agrees(history.Span{Years: 5})
	h.mustType(t, "offer[3].price", "190")
	h.Settle()
	s.Offers[2].Price = decimalOf("190")
	agrees(history.Span{Years: 5})
	h.answer.Past.Span.Choose("1")
	h.Settle()
	agrees(history.Span{Years: 1})
	h.SetTheme("safelight") // drawn again, not worked out again
	was := h.back.back.Past.History
	h.SetTheme("paper")
	if h.back.back.Past.History != was {
		t.Error("the days are worked out again for another colour")
	}
}

func TestThePastCanBecomeTheSwingsRange(t *testing.T) {
	h := open(t)
	h.Page(pages.Past)
	h.Rates(wobbling(t, 400))
	if len(h.answer.Past.Swings) != 2 {
		t.Fatalf("%d ranges are offered for two quotes", len(h.answer.Past.Swings))
	}
	past := h.back.back.Past.History
	h.answer.Past.Swings[0].Do()
	h.Settle()
	low, high, _ := past.Range(0)
	got := h.session.Current().Ranges
	if len(got) != 1 || got[0].Input != past.Quotes[0].Input || !got[0].Low.Equal(low.Decimal(6)) || !got[0].High.Equal(high.Decimal(6)) {
		t.Errorf("%+v, want %s to %s", got, low, high)
	}
	h.undo()
	if len(h.session.Current().Ranges) != 0 {
		t.Error("it is not one step to take back")
	}
}

func TestWhereThereIsNoPastThePageSaysWhy(t *testing.T) {
	h := open(t)
	h.Page(pages.Past)
	if said := h.answer.Past.State.String(); said != words.NoMarket {
		t.Errorf("%q", said)
	}
	h.market.Fetch()
	h.Settle()
	if said := h.market.Wrong; !strings.HasPrefix(said, "The bank cannot be reached") {
		t.Errorf("%q", said)
	}
	h.Page(pages.Charts)
	h.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(wobbling(t, 1))})
	h.Settle()
	if h.answer.At() != pages.Past || h.back.back.Past == nil || len(h.back.back.Past.History.Dates) != 1 {
		t.Error("a file of rates that was let fall on the window is not looked back on")
	}
}

func TestEscGivesTheDaysUp(t *testing.T) {
	h := open(t)
	h.Page(pages.Past)
	h.Rates(wobbling(t, 40))
	h.pipeline.gate.Lock() // so that it stays under way
	h.answer.Past.Span.Choose("3")
	onScreen{h.Desk}.escape(&fyne.KeyEvent{Name: fyne.KeyEscape})
	h.pipeline.gate.Unlock()
	h.Settle()
	if said := h.answer.Past.State.String(); said != words.PastStopped {
		t.Errorf("%q", said)
	}
	h.mustType(t, "offer[3].price", "150") // it goes on with the next change
	h.Settle()
	if h.answer.Past.State.Visible() || h.back.back.Past.History.Span.Years != 3 {
		t.Error("it does not go on")
	}
}
