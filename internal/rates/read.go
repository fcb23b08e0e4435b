package rates

import (
	"bytes"
	"io"
	"os"
	"slices"
)

// Load reads the file at a path. Its errors are those of Read and of the file system.
func Load(path string) (*File, error) {
	in, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer in.Close()
	return ReadFrom(in)
}

// ReadFrom reads a file from a stream. Its errors are those of Read and of the stream.
func ReadFrom(in io.Reader) (*File, error) {
	data, err := atMost(in)
	if err != nil {
		return nil, err
	}
	return Read(data)
}

// atMost reads a stream to its end; a *Fault where that is beyond MaxBytes.
func atMost(in io.Reader) ([]byte, error) {
	data, err := io.ReadAll(io.LimitReader(in, MaxBytes+1))
	if err == nil && len(data) > MaxBytes {
		return nil, fault(FaultTooLarge, 0, "")
	}
	return data, err
}

// Read reads a file in any of the bank's forms: the XML in its envelope, the CSV of all
// days or of one, or that CSV in a zip. The days may stand in any order. Its errors are
// *Fault.
func Read(data []byte) (*File, error) {
	if len(data) > MaxBytes {
		return nil, fault(FaultTooLarge, 0, "")
	}
	read := readCSV
	plain := bytes.TrimPrefix(data, []byte("\ufeff"))
	switch {
	case bytes.HasPrefix(data, []byte("PK\x03\x04")), bytes.HasPrefix(data, []byte("PK\x05\x06")):
		entry, err := unzip(data)
		if err != nil {
			return nil, err
		}
		plain = bytes.TrimPrefix(entry, []byte("\ufeff"))
	case bytes.HasPrefix(bytes.TrimLeft(plain, blanks), []byte("<")):
		read = readXML
	}
	f := &File{column: map[string]int{}}
	if err := read(f, plain); err != nil {
		return nil, err
	}
	if len(f.days) == 0 {
		return nil, fault(FaultNoDay, 0, "")
	}
	return f, nil
}

// blanks are what may stand around a cell and between elements.
const blanks = " \t\r\n"

// addCurrency adds a column; false where the file has it, or it is no currency.
func (f *File) addCurrency(code string) bool {
	if len(code) != 3 || code == Euro {
		return false
	}
	for i := range len(code) {
		if code[i] < 'A' || code[i] > 'Z' {
			return false
		}
	}
	if _, twice := f.column[code]; twice {
		return false
	}
	f.column[code] = len(f.currencies)
	f.currencies = append(f.currencies, code)
	return true
}

// sort brings the days in order; a *Fault where one is there twice. lines are those that
// the days stand in, and are sorted along.
func (f *File) sort(lines []int) error {
	order := make([]int, len(f.days))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return f.days[a].date.Compare(f.days[b].date) })
	days := make([]row, len(order))
	var twice *Fault
	for to, from := range order {
		days[to] = f.days[from]
		if to > 0 && days[to].date == days[to-1].date && (twice == nil || lines[from] < twice.Line) {
			twice = fault(FaultTwice, lines[from], days[to].date.String())
		}
	}
	f.days = days
	if twice != nil {
		return twice
	}
	return nil
}
