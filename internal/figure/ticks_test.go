package figure

import (
	"math"
	"slices"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

func TestAmountsOnTheAxisAreRound(t *testing.T) {
	for _, c := range []struct {
		high         float64
		most, digits int
		want         []string
	}{
		{1206.6, 5, 2, []string{"0", "250", "500", "750", "1,000", "1,250"}},
		{480000, 5, 0, []string{"0", "100,000", "200,000", "300,000", "400,000", "500,000"}},
		{2.2, 5, 3, []string{"0.000", "0.500", "1.000", "1.500", "2.000", "2.500"}},
		{0.02, 5, 2, []string{"0.00", "0.01", "0.02"}},
		{3, 5, 0, []string{"0", "1", "2", "3"}},
		{0.004, 5, 3, []string{"0.000", "0.001", "0.002", "0.003", "0.004"}},
	} {
		var got []string
		for _, tick := range (amounts{most: c.most, digits: c.digits, locale: "en"}).ticks(0, c.high) {
			got = append(got, tick.label)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("up to %v: %q, want %q", c.high, got, c.want)
		}
	}
}

func TestTheAxisCoversItsAmountsInFewSteps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := -rapid.Float64Range(0, 1e9).Draw(t, "below zero")
		high := rapid.Float64Range(0.01, 1e9).Draw(t, "above zero")
		a := amounts{most: rapid.IntRange(1, 8).Draw(t, "steps"), digits: rapid.IntRange(0, 3).Draw(t, "digits"), locale: "en"}
		ticks := a.ticks(low, high)
		first, last := ticks[0].value, ticks[len(ticks)-1].value
		slack := 1e-6 * (high - low)
		if first > low+slack || last < high-slack {
			t.Fatalf("%v to %v does not cover %v to %v", first, last, low, high)
		}
		if len(ticks) > a.most+3 { // the steps, the ends, and one more either side
			t.Fatalf("%d ticks for %d steps", len(ticks), a.most)
		}
		if !slices.ContainsFunc(ticks, func(k tick) bool { return k.value == 0 }) {
			t.Fatalf("no tick at zero: %v", ticks)
		}
		for _, k := range ticks {
			if minor := k.value * math.Pow10(a.digits); math.Abs(minor-math.Round(minor)) > 1e-3 {
				t.Fatalf("%v cannot be paid with %d digits", k.value, a.digits)
			}
		}
	})
}

func TestShortenedTextFitsAndIsCutBetweenCharacters(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := tidy(rapid.String().Draw(t, "text"))
		width := rapid.Float64Range(0, 300).Draw(t, "width")
		f := face{bold: rapid.Bool().Draw(t, "bold"), size: 12}
		got := f.fit(text, width)
		if !utf8.ValidString(got) || f.width(got) > width {
			t.Fatalf("%q at %v is %q, %v wide", text, width, got, f.width(got))
		}
		for _, line := range f.wrap(text, width, 2) {
			if f.width(line) > width {
				t.Fatalf("the line %q is wider than %v", line, width)
			}
		}
	})
}

func TestLabelsPushedApartKeepTheirOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		labels := make([]endLabel, rapid.IntRange(1, 9).Draw(t, "labels"))
		for i := range labels {
			labels[i].want = rapid.Float64Range(0, 300).Draw(t, "want")
			labels[i].height = labelRow
		}
		pushApart(labels, 0, 300)
		end, want := 0.0, math.Inf(-1)
		for _, l := range labels {
			if l.y < end-1e-9 || l.y+l.height > 300+1e-9 || l.want < want {
				t.Fatalf("labels at %v", labels)
			}
			end, want = l.y+l.height, l.want
		}
	})
}
