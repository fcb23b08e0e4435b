package rates

import (
	"strings"
	"time"

	"reelworth/internal/scenario"
)

// readCSV reads the bank's CSV: a head of "Date" and currencies with a comma after the
// last, then a row for each day that it is open, N/A where there is no rate. Blanks
// around cells are dropped, and so are lines with nothing in them.
func readCSV(f *File, data []byte) error {
	head := true
	var lines []int
	number := 0
	for line := range strings.Lines(string(data)) {
		number++
		line = strings.Trim(line, blanks)
		if line == "" {
			continue
		}
		if head {
			if err := f.readHead(line, number); err != nil {
				return err
			}
			head = false
			continue
		}
		if err := f.readRow(line, number); err != nil {
			return err
		}
		lines = append(lines, number)
	}
	if head {
		return fault(FaultHead, 1, "")
	}
	return f.sort(lines)
}

func (f *File) readHead(line string, number int) error {
	first, rest, more := nextCell(dropLast(line))
	if first != "Date" || !more {
		return fault(FaultHead, number, line)
	}
	for more {
		var code string
		code, rest, more = nextCell(rest)
		if !f.addCurrency(code) {
			return fault(FaultCurrency, number, code)
		}
	}
	return nil
}

func (f *File) readRow(line string, number int) error {
	first, rest, more := nextCell(dropLast(line))
	date, ok := readDate(first)
	if !ok {
		return fault(FaultDate, number, first)
	}
	cells := make([]cell, len(f.currencies))
	for i := range cells {
		if !more {
			return fault(FaultCells, number, first)
		}
		var text string
		text, rest, more = nextCell(rest)
		if cells[i], ok = f.cell(text); !ok {
			return fault(FaultValue, number, text)
		}
	}
	if more {
		return fault(FaultCells, number, first)
	}
	f.days = append(f.days, row{date, cells})
	return nil
}

// dropLast drops the comma after the last cell.
func dropLast(line string) string { return strings.TrimSuffix(line, ",") }

// nextCell is the first cell of a line without the blanks around it, and what follows.
func nextCell(line string) (text, rest string, more bool) {
	text, rest, more = strings.Cut(line, ",")
	return strings.Trim(text, blanks), rest, more
}

// readDate reads a day as the bank writes it: "2020-12-24" where there are many,
// "24 December 2020" where there is one.
func readDate(text string) (d scenario.Date, ok bool) {
	for _, form := range []string{time.DateOnly, "2 January 2006"} {
		if t, err := time.Parse(form, text); err == nil && t.Year() > 0 {
			return scenario.DateOf(t), true
		}
	}
	return d, false
}
