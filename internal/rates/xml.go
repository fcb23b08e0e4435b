package rates

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"

	"reelworth/internal/scenario"
)

// readXML reads the bank's XML: a gesmes envelope with a Cube for each day, and in it a
// Cube for each currency. A document type is refused, since it can make a small file
// endless.
func readXML(f *File, data []byte) error {
	in := xml.NewDecoder(bytes.NewReader(data))
	r := xmlReader{f: f, in: in, rates: map[scenario.Date]map[string]cell{}}
	for {
		token, err := in.RawToken()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return fault(FaultXML, r.line(), "")
		}
		if err := r.token(token); err != nil {
			return err
		}
	}
	if len(r.open) > 0 || !r.enveloped {
		return fault(FaultXML, r.line(), "")
	}
	return r.finish()
}

// xmlReader is a file of XML on its way through the reader.
type xmlReader struct {
	f         *File
	in        *xml.Decoder
	open      []string // the elements that are not closed yet, by their names without prefix
	enveloped bool
	day       scenario.Date // of the Cube that is open
	dayDepth  int
	lines     []int
	rates     map[scenario.Date]map[string]cell
}

// deepest is how many elements may stand in one another: the bank's forms have five.
const deepest = 16

func (r *xmlReader) line() int {
	line, _ := r.in.InputPos()
	return line
}

func (r *xmlReader) token(token xml.Token) error {
	switch t := token.(type) {
	case xml.Directive:
		return fault(FaultDoctype, r.line(), "")
	case xml.StartElement:
		return r.start(t)
	case xml.EndElement:
		n := len(r.open)
		if n == 0 || r.open[n-1] != t.Name.Local {
			return fault(FaultXML, r.line(), "")
		}
		r.open = r.open[:n-1]
		if n == r.dayDepth {
			r.day, r.dayDepth = scenario.Date{}, 0
		}
	}
	return nil
}

func (r *xmlReader) start(t xml.StartElement) error {
	if len(r.open) == 0 {
		if t.Name.Local != "Envelope" || r.enveloped {
			return fault(FaultEnvelope, r.line(), t.Name.Local)
		}
		r.enveloped = true
	}
	if r.open = append(r.open, t.Name.Local); len(r.open) > deepest {
		return fault(FaultXML, r.line(), "")
	}
	if t.Name.Local != "Cube" {
		return nil
	}
	said := map[string]string{}
	for _, a := range t.Attr {
		said[a.Name.Local] = string(bytes.Trim([]byte(a.Value), blanks))
	}
	if text, ok := said["time"]; ok {
		return r.startDay(text)
	}
	if code, ok := said["currency"]; ok {
		return r.rate(code, said["rate"])
	}
	return nil
}

func (r *xmlReader) startDay(text string) error {
	date, ok := readDate(text)
	if !ok || r.dayDepth > 0 {
		return fault(FaultDate, r.line(), text)
	}
	if r.rates[date] != nil {
		return fault(FaultTwice, r.line(), text)
	}
	r.day, r.dayDepth = date, len(r.open)
	r.rates[date] = map[string]cell{}
	r.f.days = append(r.f.days, row{date: date})
	r.lines = append(r.lines, r.line())
	return nil
}

func (r *xmlReader) rate(code, text string) error {
	if r.dayDepth == 0 {
		return fault(FaultDate, r.line(), "")
	}
	_, known := r.f.column[code]
	if !known && !r.f.addCurrency(code) {
		return fault(FaultCurrency, r.line(), code)
	}
	if _, twice := r.rates[r.day][code]; twice {
		return fault(FaultCurrency, r.line(), code)
	}
	c, ok := r.f.cell(text)
	if !ok {
		return fault(FaultValue, r.line(), text)
	}
	r.rates[r.day][code] = c
	return nil
}

// mostCells is how many rates a file may have room for: as many as a CSV of MaxBytes could
// hold. XML could ask for more, a currency of its own on each of its days.
const mostCells = MaxBytes / len("1,")

// finish sets the days' rates in columns, now that all currencies are known.
func (r *xmlReader) finish() error {
	if len(r.f.days)*len(r.f.currencies) > mostCells {
		return fault(FaultTooLarge, 0, "")
	}
	for i := range r.f.days {
		day := &r.f.days[i]
		day.cells = make([]cell, len(r.f.currencies))
		for code, c := range r.rates[day.date] {
			day.cells[r.f.column[code]] = c
		}
	}
	return r.f.sort(r.lines)
}
