package desk

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"reelworth/internal/desk/pages"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
)

// replaced is the demo's file with some of its lines written otherwise.
func replaced(t *testing.T, pairs ...string) string {
	t.Helper()
	text := string(scenario.Write(scenario.Demo()))
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatal("the demo has no", pairs[i])
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

func TestAFileWithFaultsOpensWithWhatCanBeComputed(t *testing.T) {
	h := open(t)
	path := write(t, replaced(t, `price = "118.00"`, `price = 118.00 # bare`, `shipping = "34.50"`, `shipping = "-3"`))
	h.Open(path)
	h.Settle()
	v := h.View()
	if v.Faults != 0 || v.Title != "Reelworth – file.toml" || strings.Contains(v.State, "unsaved") {
		t.Fatalf("%+v", v)
	}
	if !strings.Contains(v.Status, "2 faults") {
		t.Error("nothing is said of them:", v.Status)
	}
	if v.Offers[2].PerRoll != "–" || v.Offers[0].PerRoll == "–" || v.Offers[1].PerRoll == "–" {
		t.Errorf("%+v", v.Offers)
	}
	h.Topic("offer", 2)
	price, shipping := h.field(t, "offer[3].price"), h.field(t, "offer[3].shipping")
	if price.Text != "118.00" || !strings.Contains(price.Beside, "quotation") || !price.Blamed {
		t.Errorf("%+v", price)
	}
	if shipping.Text != "\u22123" || !strings.Contains(shipping.Beside, "below 0") || !shipping.Blamed {
		t.Errorf("%+v", shipping)
	}
	h.mustType(t, "offer[3].shipping", "5")
	h.Settle()
	if f := h.field(t, "offer[3].shipping"); f.Blamed || strings.Contains(f.Beside, "below") {
		t.Errorf("mended, but %+v", f)
	}
	if v := h.View(); !strings.Contains(v.Status, "Price") || strings.Contains(v.Status, "faults") {
		t.Error("what is left is not said:", v.Status)
	}
	h.mustType(t, "offer[3].price", "118")
	h.Settle()
	if v := h.View(); v.Status != "" || v.Offers[2].PerRoll == "–" {
		t.Errorf("all is mended, but %+v", v)
	}
	h.files.save(nil)
	h.Settle()
	if after := string(read(t, path)); !strings.Contains(after, `price = "118" # bare`) || !strings.Contains(after, `shipping = "5"`) {
		t.Error(after)
	}
}

// What is wrong outside the offers stands in its form, and "Show it" leads there.
func TestEveryFaultCanBeReached(t *testing.T) {
	for name, c := range map[string]struct{ old, new, topic, key string }{
		"home":      {`home = "EUR"`, `home = "EURO"`, "shooting", "home"},
		"a month":   {`rolls_per_month = ["2", "2"`, `rolls_per_month = ["2", "x"`, "shooting", "shooting.rolls_per_month[2]"},
		"the year":  {`rolls_per_month = ["2", `, `rolls_per_month = [`, "shooting", "shooting.rolls_per_month[1]"},
		"baseline":  {`baseline = "`, `baseline = "no `, "shooting", "baseline"},
		"kind":      {`kind = "reel"`, `kind = "real"`, "", "offer[3].kind"},
		"currency":  {`currency = "USD"`, `currency = "USDOLLAR"`, "", "offer[3].currency"},
		"a lab":     {`way = "lab"`, `way = "laboratory"`, "Developing", "developing[1].way"},
		"equipment": {`lasts_rolls = 200`, `lasts_rolls = "many"`, "Loading", ""},
	} {
		t.Run(name, func(t *testing.T) {
			h := open(t)
			h.Open(write(t, replaced(t, c.old, c.new)))
			h.Settle()
			h.answer.Mend.Tapped(nil)
			h.Settle()
			v := h.View()
			if c.topic != "" && !strings.Contains(v.Form, c.topic) {
				t.Errorf("it leads to %q: %s", v.Form, v.Status)
			}
			blamed := ""
			for _, f := range v.Fields {
				if f.Blamed {
					blamed += " " + f.Key
				}
			}
			if !strings.Contains(blamed, c.key) || blamed == "" {
				t.Errorf("blamed are%s", blamed)
			}
		})
	}
}

func TestARangeThatIsNotUsedCanBeTakenOut(t *testing.T) {
	h := open(t)
	text := string(scenario.Write(scenario.Demo())) + "\n  [[scenario.range]]\n  input = \"rate:CAD/EUR\"\n  low = \"1\"\n  high = \"2\"\n"
	h.Open(write(t, text))
	h.Settle()
	h.mustType(t, h.firstNumber(), "3") // what was said of opening goes
	h.Settle()
	if !strings.Contains(h.View().Status, "range is not used") {
		t.Fatal(h.View().Status)
	}
	h.answer.Mend.Tapped(nil)
	h.Settle()
	if len(h.Session().Current().Ranges) != 0 || h.View().Status != "" {
		t.Error(h.Session().Current().Ranges, h.View().Status)
	}
	h.undo()
	h.Settle()
	if len(h.Session().Current().Ranges) != 1 {
		t.Error("it cannot be undone")
	}
}

// firstNumber is the key of a number's field in the form.
func (h *Harness) firstNumber() string {
	for _, f := range h.View().Fields {
		if strings.HasSuffix(f.Key, ".units") {
			return f.Key
		}
	}
	return ""
}

// Only what cannot be shown at all gets the list of faults, and is left alone.
func TestWhatIsNoScenarioFileGetsTheListOfFaults(t *testing.T) {
	for name, text := range map[string]string{
		"no TOML":         "schema = 1\nhome = \n",
		"newer":           strings.Replace(string(scenario.Write(scenario.Demo())), "schema = 1", "schema = 99", 1),
		"no scenario":     "schema = 1\n",
		"too many offers": string(scenario.Write(manyOffers())),
	} {
		t.Run(name, func(t *testing.T) {
			h := open(t)
			path := write(t, text)
			h.Open(path)
			h.Settle()
			if h.View().Faults == 0 {
				t.Fatalf("%+v", h.View())
			}
			if string(read(t, path)) != text {
				t.Error("the file was changed")
			}
		})
	}
}

// manyOffers has one offer more than a scenario may have.
func manyOffers() scenario.File {
	f := scenario.Demo()
	s := f.Scenarios[0].Clone()
	for i := 0; len(s.Offers) <= scenario.MaxOffers; i++ {
		o := scenario.CopyOffer(&s, 0)
		o.Name = fmt.Sprint("one more ", i)
		s.Offers = append(s.Offers, o)
	}
	f.Scenarios = []scenario.Scenario{s}
	return f
}

// junk is what may stand where something else should.
var junk = []string{`14.80`, `-3`, `true`, `"x"`, `""`, `"1,5"`, `[]`, `["a"]`, `{}`, `{a = 1}`, `2026-01-31`, `"9999999"`, `0`, `99`}

// Whatever stands in a file that is TOML and of this schema, the window opens it, shows
// every form and page, and saves it as it stands.
func TestAnySpoiltFileIsShownAndSavedAsItStands(t *testing.T) {
	h := open(t)
	path := filepath.Join(t.TempDir(), "spoilt.toml")
	rapid.Check(t, func(rt *rapid.T) {
		lines := strings.Split(string(scenario.Write(scenario.Demo())), "\n")
		for range rapid.IntRange(1, 6).Draw(rt, "slips") {
			i := rapid.IntRange(1, len(lines)-1).Draw(rt, "line")
			key, _, isPair := strings.Cut(lines[i], " = ")
			if isPair && rapid.IntRange(0, 3).Draw(rt, "slip") > 0 {
				lines[i] = key + " = " + rapid.SampledFrom(junk).Draw(rt, "junk")
			} else {
				lines[i] = ""
			}
		}
		text := strings.Join(lines, "\n")
		r := scenario.Inspect([]byte(text))
		if len(r.File.Scenarios) == 0 {
			return
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			rt.Fatal(err)
		}
		h.Open(path)
		h.Settle()
		if h.View().Faults != 0 || h.Session().Draft.Modified() {
			rt.Fatalf("%+v", h.View())
		}
		for i := range h.Session().Current().Offers {
			h.Topic("offer", i)
		}
		for _, topic := range []session.Topic{session.TopicShooting, session.TopicLoading, session.TopicDeveloping, session.TopicBorder, session.TopicRates} {
			h.Topic(string(topic), 0)
		}
		h.Page(rapid.IntRange(0, len(h.answer.Names())-1).Draw(rt, "page"))
		h.Page(pages.Charts)
		h.files.save(nil)
		h.Settle()
		if after := string(read(t, path)); after != text {
			rt.Fatalf("saving changed it to\n%s", after)
		}
	})
}
