package scenario

import (
	"bytes"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

// logRow is any row of a list whose rows have no names: a date, some numbers, a note.
type logRow struct {
	remark string // the comment above it; "" for a row that the text did not have
	date   int
	number int
	note   string
}

// rowLists are the lists of rows without names, each put into a file and taken out.
var rowLists = map[string]func(f *File, rows []logRow){
	"scenario.offer.seen": func(f *File, rows []logRow) {
		o := &f.Scenarios[0].Offers[0]
		o.Seen = nil
		for _, r := range rows {
			o.Seen = append(o.Seen, Seen{Date: day(r.date), Price: decimal.New(int64(r.number), 0), Note: r.note})
		}
	},
	"reel.load": func(f *File, rows []logRow) {
		f.Reels[0].Loads = nil
		for _, r := range rows {
			f.Reels[0].Loads = append(f.Reels[0].Loads, Load{Date: day(r.date), Cassettes: 1, Exposures: r.number, Note: r.note})
		}
	},
	"reel.result": func(f *File, rows []logRow) {
		f.Reels[0].Results = nil
		for _, r := range rows {
			f.Reels[0].Results = append(f.Reels[0].Results, Result{Date: day(r.date), Cassettes: 1, Exposures: 36, Good: r.number, Note: r.note})
		}
	},
	"reel.recount": func(f *File, rows []logRow) {
		f.Reels[0].Recounts = nil
		for _, r := range rows {
			f.Reels[0].Recounts = append(f.Reels[0].Recounts, Recount{Date: day(r.date), LeftMM: decimal.New(int64(r.number), 0), Note: r.note})
		}
	},
}

// day counts days, so that every number is another one.
func day(n int) Date { return Date{2026 + n/300, 1, 1}.AddMonths(int64(n % 12)).plus(n / 12 % 25) }

func (d Date) plus(days int) Date { d.Day += days; return d }

// logEditor makes rows that differ in their dates and notes.
type logEditor struct {
	t    *rapid.T
	made int
}

func (e *logEditor) row() logRow {
	e.made++
	return logRow{date: e.made, number: e.few(), note: fmt.Sprint("row ", e.made)}
}

// few are numbers that rows share by chance.
func (e *logEditor) few() int { return rapid.IntRange(1, 3).Draw(e.t, "number") }

// edit makes some changes to rows, to each one at most, or puts them into another order.
func (e *logEditor) edit(rows []logRow) []logRow {
	if len(rows) > 0 && rapid.IntRange(0, 5).Draw(e.t, "move") == 0 {
		return rapid.Permutation(rows).Draw(e.t, "order")
	}
	rows = slices.Clone(rows)
	changed := map[string]bool{} // by their notes
	for range rapid.IntRange(1, 6).Draw(e.t, "changes") {
		switch change := rapid.IntRange(0, 3).Draw(e.t, "change"); {
		case change == 0:
			rows = slicesInsert(e.t, rows, e.row())
		case len(rows) == 0:
		case change == 1:
			rows = slicesRemove(e.t, rows)
		default:
			r := &rows[rapid.IntRange(0, len(rows)-1).Draw(e.t, "row")]
			if changed[r.note] {
				continue
			}
			if changed[r.note] = true; change == 2 {
				r.number = e.few()
			} else {
				e.made++
				r.date = e.made
			}
		}
	}
	return rows
}

// remarked is a canonical text with a comment above every header of a kind that has none
// yet; the rows learn theirs.
func remarked(text []byte, header string, rows []logRow, indent string) []byte {
	var out []string
	n := 0
	for _, line := range strings.Split(string(text), "\n") {
		if strings.TrimSpace(line) == header {
			if rows[n].remark == "" {
				rows[n].remark = "# above " + rows[n].note
				out = append(out, indent+rows[n].remark)
			}
			n++
			line += " # and behind"
		}
		out = append(out, line)
	}
	return []byte(strings.Join(out, "\n"))
}

// remarksOf are what stands in the line above every header of a kind, where it is a
// comment.
func remarksOf(text []byte, header string) (list []string) {
	above := ""
	for _, line := range strings.Split(string(text), "\n") {
		line = strings.TrimSpace(line)
		if strings.HasPrefix(line, header) {
			list = append(list, above)
		}
		if above = ""; strings.HasPrefix(line, "#") {
			above = line
		}
	}
	return list
}

func TestACommentStaysAboveItsRow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		path := rapid.SampledFrom(slices.Sorted(maps.Keys(rowLists))).Draw(t, "list")
		commentsStay(t, "[["+path+"]]", rowLists[path])
	})
}

func commentsStay(t *rapid.T, header string, put func(*File, []logRow)) {
	e := &logEditor{t: t}
	var rows []logRow
	for range rapid.IntRange(0, 6).Draw(t, "rows") {
		rows = append(rows, e.row())
	}
	f, _ := Read(withScenario(inHand))
	put(&f, rows)
	text := TextOf(remarked(Write(f), header, rows, rapid.SampledFrom([]string{"", "  "}).Draw(t, "indent")))
	for range 3 {
		rows = e.edit(rows)
		f.Reels, f.Scenarios = slices.Clone(f.Reels), []Scenario{f.Scenarios[0].Clone()}
		put(&f, rows)
		next, inPlace := text.Saying(f)
		if !inPlace {
			t.Fatalf("not in place:\n%s", text.Bytes)
		}
		out := next.Bytes
		if got := remarksOf(out, header); !slices.EqualFunc(got, rows, func(g string, r logRow) bool { return g == r.remark }) {
			t.Fatalf("%v is not above %+v:\n%s\nwas\n%s", got, rows, out, text.Bytes)
		}
		if again, _ := Read(out); same(reflect.ValueOf(f), reflect.ValueOf(again), "file") != "" {
			t.Fatalf("it is not what was saved:\n%s", out)
		}
		if fresh, _ := updated(text.Bytes, f); !bytes.Equal(fresh, out) {
			t.Fatalf("read anew it is saved as\n%s\nand not\n%s", fresh, out)
		}
		text = next
	}
}

// As a person sees it: prices noted by hand, one more seen on an earlier day, one
// corrected, one gone.
func TestPricesSeenKeepTheirComments(t *testing.T) {
	const offer = `
# what it was
[[scenario.offer.seen]]
date = 2026-03-01
price = "90.00" # with a voucher

# the spring sale
[[scenario.offer.seen]]
price = "85.50"
date = 2026-04-01
shop = "by the bridge"

# back to normal
[[scenario.offer.seen]]
date = 2026-05-01
price = "92.00"
`
	text := []byte(small + offer)
	f, faults := Read(text)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	s := f.Scenarios[0].Clone()
	o := &s.Offers[len(s.Offers)-1]
	o.Seen = o.Seen[1:]
	o.Seen[1].Price = decimal.New(9300, -2)
	o.See(Seen{Date: Date{2026, 1, 15}, Price: decimal.New(99, 0)})
	f.Scenarios[0] = s
	want := strings.Replace(offer, `# what it was
[[scenario.offer.seen]]
date = 2026-03-01
price = "90.00" # with a voucher
`, `[[scenario.offer.seen]]
date = 2026-01-15
price = "99"
`, 1)
	want = strings.Replace(want, "92.00", "93.00", 1)
	if out, inPlace := updated(text, f); !inPlace || !bytes.Equal(out, []byte(small+want)) {
		t.Errorf("%s", out)
	}
}
