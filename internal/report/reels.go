package report

import (
	"io"
	"strings"

	"reelworth/internal/money"
	"reelworth/internal/reels"
	"reelworth/internal/words"
)

// ReelsJSON writes a list with one entry for each reel in hand: figures as strings with
// at most 20 places, counts as numbers, what there is none of null; or the reel and its
// fault.
func ReelsJSON(w io.Writer, list []reels.Standing) error {
	out := make([]any, len(list))
	for i := range list {
		out[i] = jsonReelOf(&list[i])
	}
	return writeJSON(w, out)
}

type jsonReel struct {
	Reel        string   `json:"reel"`
	Left        number   `json:"left_mm"`
	Used        number   `json:"used_mm"`
	More        jsonMore `json:"more"`
	Loaded      int      `json:"loaded"`
	Developed   int      `json:"developed"`
	Undeveloped int      `json:"undeveloped"`
	Spoiled     *number  `json:"spoiled_percent"`
	Good        number   `json:"good_in_all"`
	FilmPerRoll *number  `json:"film_per_roll"`
	Planned     *number  `json:"planned_film_per_roll"`
	Currency    *string  `json:"currency"`
}

type jsonMore struct {
	Exposures int    `json:"exposures"`
	Cassettes int64  `json:"cassettes"`
	ShortRoll int    `json:"short_roll_exposures"`
	LeftOver  number `json:"left_over_mm"`
}

func jsonMoreOf(m reels.More) jsonMore {
	return jsonMore{m.Exposures, m.Cassettes, m.ShortRoll, number(m.LeftOver)}
}

func jsonReelOf(s *reels.Standing) any {
	if s.Fault != nil {
		return struct {
			Reel  string `json:"reel"`
			Fault string `json:"fault"`
		}{s.Name, words.ReelFault(s)}
	}
	r := jsonReel{
		Reel: s.Name, Left: number(s.Left), Used: number(s.Used), More: jsonMoreOf(s.More),
		Loaded: s.Loaded, Developed: s.Developed, Undeveloped: s.Undeveloped,
		Spoiled: maybe(s.Spoiled), Good: number(s.Good), FilmPerRoll: maybe(s.FilmPerRoll), Planned: maybe(s.Planned),
	}
	if s.Currency != "" {
		r.Currency = &s.Currency
	}
	return r
}

// maybe is a figure, or null.
func maybe(m reels.Maybe) *number {
	if !m.Known {
		return nil
	}
	n := number(m.Fraction)
	return &n
}

// ReelsTable writes the reels to read in a terminal, and what is worth knowing of them.
func ReelsTable(w io.Writer, list []reels.Standing, l money.Locale) error {
	g := grid{head: words.ReelsHeader(), texts: map[int]bool{2: true}}
	var worth []string
	for i := range list {
		s := &list[i]
		if s.Fault != nil {
			worth = append(worth, s.Name+": "+words.ReelFault(s))
			continue
		}
		g.rows = append(g.rows, gridRow{cells: words.ReelRow(s, l)})
		for _, warning := range s.Warnings {
			worth = append(worth, s.Name+": "+words.ReelWarning(warning, l))
		}
	}
	if len(list) == 0 {
		worth = append(worth, words.NoReels)
	}
	return writeGrid(w, g, worth)
}

// writeGrid writes a grid and lines below it.
func writeGrid(w io.Writer, g grid, below []string) error {
	var b strings.Builder
	for r := range g.rows {
		for i, cell := range g.rows[r].cells {
			g.rows[r].cells[i] = Line(spaced(cell))
		}
	}
	if len(g.rows) > 0 {
		plainGrid(&b, g)
		if len(below) > 0 {
			b.WriteString("\n")
		}
	}
	for _, line := range below {
		b.WriteString(Line(spaced(line)) + "\n")
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// PlanJSON writes a cut plan: "asked" is null where as many as fit were, "counts" where
// there is no counter.
func PlanJSON(w io.Writer, p reels.Plan) error {
	type wish struct {
		Exposures int    `json:"exposures"`
		Asked     *int64 `json:"asked"`
		Cassettes int64  `json:"cassettes"`
		Roll      number `json:"roll_length_mm"`
		Counts    *int64 `json:"counts"`
	}
	out := struct {
		Wishes  []wish   `json:"wishes"`
		Used    number   `json:"used_mm"`
		Missing number   `json:"missing_mm"`
		Rest    jsonMore `json:"rest"`
	}{[]wish{}, number(p.Used), number(p.Missing), jsonMoreOf(p.Rest)}
	for _, d := range p.Wishes {
		j := wish{Exposures: d.Exposures, Cassettes: d.Cassettes, Roll: number(d.RollLength)}
		if d.Asked > 0 {
			j.Asked = &d.Asked
		}
		if d.Counted {
			j.Counts = &d.Counts
		}
		out.Wishes = append(out.Wishes, j)
	}
	return writeJSON(w, out)
}

// PlanTable writes a cut plan to read in a terminal.
func PlanTable(w io.Writer, p reels.Plan, l money.Locale) error {
	g := grid{head: words.PlanHeader(), texts: map[int]bool{4: true}}
	for _, d := range p.Wishes {
		g.rows = append(g.rows, gridRow{cells: words.PlanRow(d, l)})
	}
	return writeGrid(w, g, []string{words.PlanOutcome(p, l)})
}

// SpeedCodeJSON writes a speed code; what there is none of is null.
func SpeedCodeJSON(w io.Writer, c reels.SpeedCode) error {
	out := struct {
		Speed *int    `json:"speed"`
		Row1  *string `json:"row1"`
		Row2  *string `json:"row2"`
		Note  string  `json:"note"`
	}{Note: words.SpeedCodeNote(c)}
	if c.Speed > 0 {
		out.Speed, out.Row1, out.Row2 = &c.Speed, &c.Row1, &c.Row2
	}
	return writeJSON(w, out)
}

// SpeedCodeTable draws a speed code in letters, with what to know of it.
func SpeedCodeTable(w io.Writer, c reels.SpeedCode) error {
	var b strings.Builder
	if c.Speed > 0 {
		b.WriteString(words.SpeedCodeTitle(c) + "\n\n")
		for _, row := range []string{c.Row1, c.Row2} {
			b.WriteString("  " + strings.NewReplacer("1", "[ ]", "0", "[#]").Replace(row) + "\n")
		}
		b.WriteString("\n" + words.SpeedCodeLegend + "\n\n")
	}
	b.WriteString(words.SpeedCodeNote(c) + "\n")
	if c.Speed > 0 {
		b.WriteString("\n")
		for _, text := range append(words.SpeedCodeCautions(), words.SpeedCodeSource) {
			b.WriteString("* " + text + "\n")
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}
