package report

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"io"
	"strings"
	"testing"

	"reelworth/internal/compare"
	"reelworth/internal/scenario"
)

// https://owasp.org/www-community/attacks/CSV_Injection lists the signs a formula starts
// with: = + - @, tab and carriage return (read from memory).
func TestNoNameBecomesAFormula(t *testing.T) {
	for typed, want := range map[string]string{
		"=1+1": "'=1+1", "+1": "'+1", "-1": "'-1", "@SUM(A1)": "'@SUM(A1)", "\t=1": "' =1", "\r=1": "'\ufffd=1", "a\x1bb": "a\ufffdb", "a\nb": "a b",
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
		{1, "scenario", "'=1+1 | a\ufffd[2Jb"}, {1, "offer", "'@SUM(A1) <b>*bold*</b>"}, {1, "is_baseline", "yes"},
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

// Many spreadsheets split at semicolons or tabs; between quotes they leave them be.
func TestACellWithAnotherSeparatorIsQuoted(t *testing.T) {
	for cell, want := range map[string]string{
		"a;=1+1": `"a;=1+1"`, "a\t=1": "\"a\t=1\"", "a,b": `"a,b"`, `a"b`: `"a""b"`, "a\r\nb": "\"a\r\nb\"", " a": `" a"`,
		"": "", "a b": "a b", "a|b": "a|b", "1.5": "1.5",
	} {
		var out bytes.Buffer
		c := newCells(&out)
		c.row([]string{"x", cell})
		if err := c.end(); err != nil || out.String() != "x,"+want+"\r\n" {
			t.Errorf("%q is written %q, %v", cell, out.String(), err)
		}
	}
}

// steering are the signs that steer a terminal or turn the direction of writing, of
// those a file of TOML can hold: C0 of ISO 646, DEL, C1 of ISO 6429, and the signs that
// Unicode names Bidi_Control.
func steering() []rune {
	signs := []rune{0x7f, 0x061c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069}
	for r := rune(0); r < 0x20; r++ {
		signs = append(signs, r)
	}
	for r := rune(0x80); r < 0xa0; r++ {
		signs = append(signs, r)
	}
	return signs
}

func TestNoFormOfOutputHoldsASignThatSteers(t *testing.T) {
	forms := map[string]func(io.Writer, []compare.Comparison) error{
		"table":    func(w io.Writer, cs []compare.Comparison) error { return Table(w, cs, "en") },
		"markdown": func(w io.Writer, cs []compare.Comparison) error { return Markdown(w, cs, "en") },
		"json":     JSON,
		"csv":      CSV,
	}
	endings := strings.NewReplacer("\r\n", "", "\n", "") // of lines, which every form has
	for _, sign := range steering() {
		name := "before" + string(sign) + "after"
		c := demo(func(s *scenario.Scenario) {
			s.Name, s.Note = name, name
			s.Offers[0].Name, s.Baseline, s.Offers[1].Name = name, name, "second "+name
			s.Rates = s.Rates[:1]
		})
		for form, write := range forms {
			var out bytes.Buffer
			if err := write(&out, []compare.Comparison{ahead(c)}); err != nil {
				t.Fatal(err)
			}
			if at := strings.IndexFunc(endings.Replace(out.String()), steers); at >= 0 {
				t.Errorf("%U reaches %s: %.40q", sign, form, endings.Replace(out.String())[max(at-20, 0):])
			}
			if form == "json" {
				var back []struct{ Scenario string }
				if err := json.Unmarshal(out.Bytes(), &back); err != nil || back[0].Scenario != name {
					t.Errorf("%U in JSON reads back as %q, %v", sign, back, err)
				}
			}
		}
	}
}

func TestALineSteersNothing(t *testing.T) {
	if got := Line("a\nb\tc\x00d\u202ee\u009bf"); got != "a b c\ufffdd\ufffde\ufffdf" {
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
