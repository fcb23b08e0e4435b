package report

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"
	"unicode"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

// https://owasp.org/www-community/attacks/CSV_Injection lists the signs a formula starts
// with: = + - @, tab and carriage return (read from memory).
func TestNoNameBecomesAFormula(t *testing.T) {
	for typed, want := range map[string]string{
		"=1+1": "'=1+1", "+1": "'+1", "-1": "'-1", "@SUM(A1)": "'@SUM(A1)", "\t=1": "'\t=1", "\r=1": "'\r=1",
		"  =1": "'  =1", "＝1": "'＝1", "'=1": "''=1", "": "", " ": " ", "a=1": "a=1", "Marigold 400": "Marigold 400",
	} {
		if got := text(typed); got != want {
			t.Errorf("%q becomes %q, want %q", typed, got, want)
		}
	}
}

func TestCSVReadsBack(t *testing.T) {
	c := hostile()
	var out bytes.Buffer
	if err := CSV(&out, []compare.Comparison{c, demo(nil)}); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(bytes.NewReader(out.Bytes())).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) != 1+3+3 {
		t.Fatalf("%d rows", len(rows))
	}
	for _, row := range rows {
		if len(row) != len(Columns()) {
			t.Errorf("a row of %d cells under %d columns: %q", len(row), len(Columns()), row)
		}
	}
	at := func(row int, column string) string {
		for i, name := range rows[0] {
			if name == column {
				return rows[row][i]
			}
		}
		t.Fatalf("no column %s", column)
		return ""
	}
	for _, test := range []struct {
		row          int
		column, want string
	}{
		{1, "scenario", "'=1+1 | a\x1b[2Jb"}, {1, "offer", "'@SUM(A1) <b>*bold*</b>"}, {1, "is_baseline", "yes"},
		{1, "saving", ""}, {2, "fault", "no rate between JPY and EUR"}, {2, "roll_total", ""}, {2, "landed", ""},
		{3, "landed", "168.82"}, {3, "saving", "374.35"}, {3, "even_month", "7"},
		{5, "saving", "-35.17"}, {5, "even_month", ""}, {5, "roll_total", "25.518"},
	} {
		if got := at(test.row, test.column); got != test.want {
			t.Errorf("row %d, %s: %q, want %q", test.row, test.column, got, test.want)
		}
	}
	if bytes.Count(out.Bytes(), []byte("\r\n")) < len(rows) {
		t.Error("lines do not end with CR LF")
	}
}

func TestNothingSteersTheTerminal(t *testing.T) {
	var out bytes.Buffer
	if err := Table(&out, []compare.Comparison{hostile()}, "en"); err != nil {
		t.Fatal(err)
	}
	if err := Markdown(&out, []compare.Comparison{hostile()}, "en"); err != nil {
		t.Fatal(err)
	}
	for _, r := range out.String() {
		if r != '\n' && (unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r)) {
			t.Errorf("%U is printed", r)
		}
	}
	if got := Line("a\nb\tc\x00d\u202ee\x9bf"); got != "a b c\ufffdd\ufffde\ufffdf" {
		t.Errorf("got %q", got)
	}
}

func TestMarkdownEscapes(t *testing.T) {
	for typed, want := range map[string]string{
		"a | b": `a \| b`, "*a* _b_": `\*a\* \_b\_`, "<b>": `\<b\>`, "[a](b)": `\[a\](b)`, "`x`": "\\`x\\`",
		`a\|b`: `a\\\|b`, "# a": `\# a`, "&amp;": `\&amp;`, "1. a": `1\. a`, "- a": `\- a`, "-1": "-1", "18 rolls, 5 %": "18 rolls, 5 %",
	} {
		if got := paragraph(typed); got != want {
			t.Errorf("%q becomes %q, want %q", typed, got, want)
		}
	}
}

// Every row of a Markdown table has as many cells as its head, whatever the names are.
func TestMarkdownTablesAreWhole(t *testing.T) {
	var out bytes.Buffer
	if err := Markdown(&out, []compare.Comparison{hostile()}, "en"); err != nil {
		t.Fatal(err)
	}
	cells, rows := 0, 0
	for line := range strings.Lines(out.String()) {
		if !strings.HasPrefix(line, "|") {
			cells = 0
			continue
		}
		rows++
		n := strings.Count(strings.ReplaceAll(strings.ReplaceAll(line, `\\`, ""), `\|`, ""), "|")
		if cells == 0 {
			cells = n
		}
		if n != cells {
			t.Errorf("%d bars instead of %d in %s", n, cells, line)
		}
	}
	if rows < 20 {
		t.Errorf("only %d rows", rows)
	}
}

func TestTableColumnsStandUnderEachOther(t *testing.T) {
	g := grid{head: []string{"", "USD", "how"}, texts: map[int]bool{2: true}, rows: []gridRow{
		{cells: []string{"フィルム", "1,234.50", "a"}}, {cells: []string{"Shipping", "2.00", ""}},
	}}
	var b strings.Builder
	plainGrid(&b, g)
	want := "               USD  how\nフィルム  1,234.50  a\nShipping      2.00\n"
	if b.String() != want {
		t.Errorf("got:\n%s\nwant:\n%s", b.String(), want)
	}
}

// With many offers the months go in blocks, so that no line outgrows a terminal.
func TestManyOffers(t *testing.T) {
	c := demo(func(s *scenario.Scenario) {
		for i := range 17 {
			o := s.Offers[0]
			o.Name = "Shop " + string(rune('A'+i))
			s.Offers = append(s.Offers, o)
		}
	})
	d := documentOf(&c, "en")
	if n := len(d.sections[3].grids); n != 4 {
		t.Errorf("%d blocks of months for 20 offers", n)
	}
}
