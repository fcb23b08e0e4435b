package figure

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"reelworth/internal/palette"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// The figures of the built-in demo, worked out apart from this program; they are the
// ones published with its example.
var demoCosts = [][]string{
	{"Marigold 400, shop roll", "24.70", "14.80", "0.00", "0.00", "0.00", "0.00", "0.00", "9.90"},
	{"Marigold 400, pack of 5 by post", "25.52", "10.35", "1.65", "2.76", "0.86", "0.00", "0.00", "9.90"},
	{demoReel, "14.30", "5.70", "1.75", "1.71", "0.50", "0.40", "0.26", "3.97"},
}

func TestTheTableSaysWhatTheBarsShow(t *testing.T) {
	d := CostPerRoll(compared(demo()), demoReel, 640, 260, english(palette.Paper))
	header := []string{"EUR per roll of 36", "total", "film", "shipping", "tax", "fees", "cassettes", "equipment", "developing"}
	if got := d.Table(); !slices.Equal(got.Header, header) || !slices.EqualFunc(got.Rows, demoCosts, slices.Equal) {
		t.Errorf("the table is %q", got)
	}
}

func TestTheTableSaysWhatTheStepsShow(t *testing.T) {
	table := Spend(compared(demo()), demoReel, 640, 260, english(palette.Paper)).Table()
	want := map[int][]string{
		0:  {"January 2027", "49.40", "2", "175.98", "1", "317.87", "1"},
		6:  {"July 2027", "642.20", "6", "725.94", "1", "592.34", "0"},
		11: {"December 2027", "1,062.10", "2", "1,206.60", "0", "851.26", "0"},
		12: {"film left, worth", "0.00", "", "109.33", "", "93.35", ""},
	}
	for row, cells := range want {
		if !slices.Equal(table.Rows[row], cells) {
			t.Errorf("row %d is %q, want %q", row, table.Rows[row], cells)
		}
	}
}

func TestTheStripsTableAddsUpToTheReel(t *testing.T) {
	table := Strip(compared(demo()).Find(demoReel), 640, StripHeight, english(palette.Paper)).Table()
	want := [][]string{
		{"waste at the start", "1", "100.0", "100.0"},
		{"leader", "18", "160.0", "2,880.0"},
		{"36 exposures each", "18", "1,365.1", "24,572.2"},
		{"trailer and fogged end", "18", "122.0", "2,196.0"},
		{"left over", "1", "531.8", "531.8"},
		{"waste at the end", "1", "200.0", "200.0"}, // 30,480 mm in all
	}
	if !slices.EqualFunc(table.Rows, want, slices.Equal) {
		t.Errorf("the table is %q", table.Rows)
	}
}

func TestEveryPartCanBeReadOutHoweverSmall(t *testing.T) {
	d := CostPerRoll(compared(demo()), demoReel, 400, 260, english(palette.Paper))
	for _, part := range words.CostParts() {
		found := slices.ContainsFunc(d.Hits(), func(h Hit) bool { return h.Offer == demoReel && h.Part == part })
		if found == (part == words.PartTime) { // nobody's time is valued in the demo
			t.Errorf("part %s: found is %v", part, found)
		}
	}
	for _, h := range d.Hits() {
		got, ok := d.At(h.Rect.X+h.Rect.W/2, h.Rect.Y+h.Rect.H/2)
		if !ok || got != h {
			t.Errorf("in the middle of %q the pointer finds %q", h.Text, got.Text)
		}
	}
	if _, ok := d.At(390, 5); ok {
		t.Error("an empty corner is read out")
	}
}

func TestTheReadoutSaysMonthAmountAndOrders(t *testing.T) {
	d := Spend(compared(demo()), demoReel, 640, 260, english(palette.Paper))
	for _, h := range d.Hits() {
		if h.Offer == demoReel && h.Month == 6 {
			got, ok := d.At(h.Rect.X+h.Rect.W/2, h.Rect.Y+h.Rect.H/2)
			want := demoReel + ", June: EUR 551.70 so far, 187.78 of it this month, with 1 film order"
			if !ok || spaces.Replace(got.Text) != want {
				t.Errorf("the read-out says %q, want %q", got.Text, want)
			}
			return
		}
	}
	t.Error("June of the reel cannot be read out")
}

func TestWhatIsDrawnIsAlsoWritten(t *testing.T) {
	c := compared(demo())
	for fig, wanted := range map[string][]string{
		"cost":  {"A roll from the reel costs 10.40 less than the best boxed roll", "compared with", "24.70", "25.52", "14.30", "2.76", "film", "developing"},
		"spend": {"From July on the reel has cost less cash", "ahead from July", "851", "100 ft reel", "and 9 rolls, worth 93, left", "1,207", "Jan", "Dec", "1,250"},
		"strip": {"The reel, 30.48 m", "1", "18", "leader", "36 exposures each", "waste, 0.53 m over"},
	} {
		d := figures(c, demoReel, 640, 260, english(palette.Paper))[fig]
		for _, text := range wanted {
			if !slices.ContainsFunc(d.Texts(), func(b TextBox) bool { return b.Text == text }) {
				t.Errorf("%s: %q is not written", fig, text)
			}
		}
		if slices.ContainsFunc(d.Texts(), func(b TextBox) bool { return b.Text == "time" }) {
			t.Errorf("%s: the legend names a part that does not occur", fig)
		}
	}
}

func TestTheLegendNamesEveryPartOnANarrowCanvasToo(t *testing.T) {
	d := CostPerRoll(compared(demo()), demoReel, 300, 260, english(palette.Paper))
	for _, name := range []string{"film", "shipping", "tax", "fees", "cassettes", "equipment", "developing"} {
		if !slices.ContainsFunc(d.Texts(), func(b TextBox) bool { return b.Text == name }) {
			t.Errorf("%q is not in the legend", name)
		}
	}
}

func TestAFaultIsListedWithASignAndItsReason(t *testing.T) {
	c := odd()["one fault"]
	for fig, d := range figures(c, demoReel, 640, 260, english(palette.Paper)) {
		if fig == "strip" {
			continue
		}
		if !slices.ContainsFunc(d.Texts(), func(b TextBox) bool {
			return strings.Contains(b.Text, "not computed: no rate between USD and EUR") && b.colour == palette.Paper.Fault
		}) {
			t.Errorf("%s does not say why the reel is left out", fig)
		}
	}
}

func TestQuietLinesDifferWithoutColour(t *testing.T) {
	c := compared(manyOffers(8, 30, "EUR"))
	ch := &spendChart{sheet: newSheet(640, 260, english(palette.Paper)), c: c, months: 12}
	ch.collect(c.Offers[1].Name)
	seen := map[string]string{}
	for _, l := range ch.lines {
		look := strings.Join(strings.Fields(fmt.Sprint(l.pen.width, l.pen.dash)), " ")
		if other, twice := seen[look]; twice {
			t.Errorf("%s and %s are both drawn as %s", other, l.offer.Name, look)
		}
		seen[look] = l.offer.Name
	}
	if ch.lines[0].role != roleChosen || ch.lines[0].pen.colour != palette.Paper.Accent {
		t.Error("the chosen offer is not the first, in the accent colour")
	}
}

func TestALitPartIsMarkedInEveryBar(t *testing.T) {
	c := compared(scenario.Demo().Scenarios[0])
	marks := func(lit words.CostPart) (n int) {
		s := english(palette.Paper)
		s.Lit = lit
		for _, sh := range CostPerRoll(c, "", 640, 260, s).shapes {
			if sh.colour == palette.Paper.Accent {
				n++
			}
		}
		return n
	}
	if got := marks(words.PartFilm) - marks(""); got != len(c.Offers) {
		t.Errorf("%d bars are marked of %d", got, len(c.Offers))
	}
}
