package scenario

import (
	"bytes"
	"errors"
	"fmt"
	"runtime"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/BurntSushi/toml"

	"reelworth/internal/tomltext"
)

// MaxBytes is the size of the largest file that is read.
const MaxBytes = 8 << 20

// decode turns a file into tables, and finds where everything in it stands. It
// returns a fault where the file is no TOML.
func decode(data []byte) (map[string]any, *tomltext.Node, *Fault) {
	if f := notText(data); f != nil {
		return nil, nil, f
	}
	text := string(data)
	where, line, scanErr := tomltext.Scan(text, "scenario")
	if scanErr != nil && !errors.Is(scanErr, tomltext.ErrSyntax) {
		return nil, nil, fileFault(line, scanErr.Error(), "write tables the way the demo scenario has them")
	}
	if scanErr != nil {
		where.Cuts = nil // the library finds out what is wrong
	}
	doc, f := decodePieces(text, where.Cuts)
	if f == nil && scanErr != nil {
		f = fileFault(line, "this line is written in a way that cannot be located", "write it plainly: key = \"value\"")
	}
	if f != nil {
		return nil, nil, f
	}
	return doc, where.Root, nil
}

// notText is the fault of a file that cannot be text.
func notText(data []byte) *Fault {
	if len(data) > MaxBytes {
		return fileFault(1, fmt.Sprintf("the file is larger than %d MiB", MaxBytes>>20), "split it into several files")
	}
	if i := bytes.IndexByte(data, 0); i >= 0 {
		return fileFault(lineAt(data, i), "the file holds a NUL byte, so it is no text in UTF-8", "open a scenario file, or save this one as UTF-8 text")
	}
	for i := 0; i < len(data); {
		r, n := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && n < 2 {
			return fileFault(lineAt(data, i), fmt.Sprintf("the byte 0x%02X is no text in UTF-8", data[i]), "save the file as UTF-8 text")
		}
		i += n
	}
	return nil
}

func lineAt(data []byte, offset int) int {
	return 1 + bytes.Count(data[:offset], []byte("\n"))
}

func fileFault(line int, wrong, remedy string) *Fault {
	return &Fault{Path: "file", Place: Place{PartFile, -1, 0}, Line: line, Wrong: wrong, Remedy: remedy}
}

// decodePieces gives the TOML library one scenario at a time, side by side: a
// [[scenario]] and what follows it is a file of its own.
func decodePieces(text string, cuts []tomltext.Cut) (map[string]any, *Fault) {
	if len(cuts) == 0 {
		return decodePiece(text, 1)
	}
	doc, f := decodePiece(text[:cuts[0].Offset], 1)
	if f != nil {
		return nil, f
	}
	scenarios := make([]map[string]any, len(cuts))
	faults := make([]*Fault, len(cuts))
	read := func(i int) {
		end := len(text)
		if i+1 < len(cuts) {
			end = cuts[i+1].Offset
		}
		piece, f := decodePiece(text[cuts[i].Offset:end], cuts[i].Line)
		if f != nil {
			faults[i] = f
			return
		}
		scenarios[i] = piece["scenario"].([]map[string]any)[0]
	}
	sideBySide(len(cuts), read)
	for _, f := range faults {
		if f != nil {
			return nil, f
		}
	}
	doc["scenario"] = scenarios
	return doc, nil
}

// sideBySide calls do for 0 to n−1 on all processors.
func sideBySide(n int, do func(i int)) {
	workers := min(runtime.GOMAXPROCS(0), n)
	var wait sync.WaitGroup
	for w := range workers {
		wait.Go(func() {
			for i := w; i < n; i += workers {
				do(i)
			}
		})
	}
	wait.Wait()
}

// decodePiece reads TOML that starts at a line of the file.
func decodePiece(text string, line int) (doc map[string]any, f *Fault) {
	// The last net: the TOML library panics on what it takes for a bug of its own,
	// and a file must never take the program down.
	defer func() {
		if recover() != nil {
			doc, f = nil, fileFault(line, "the TOML reader gave up on this file", "write it the way the demo scenario is written")
		}
	}()
	doc = map[string]any{}
	if _, err := toml.Decode(text, &doc); err != nil {
		return nil, syntaxFault(err, line)
	}
	return doc, nil
}

// syntaxFault puts an error of the TOML library into words.
func syntaxFault(err error, line int) *Fault {
	var pe toml.ParseError
	if !errors.As(err, &pe) {
		return fileFault(line, "this is no TOML: "+clip(err.Error()), `write key = "value"`)
	}
	line += max(pe.Position.Line, 1) - 1
	if strings.Contains(pe.Message, `but got '\n'`) && line > 1 {
		line-- // the library stands behind the line break that it stumbled over
	}
	f := fileFault(line, "this is no TOML: "+clip(strings.TrimSpace(pe.Message)), remedyFor(pe.Message))
	if pe.LastKey != "" {
		f.Path = clip(pe.LastKey)
	}
	return f
}

// remedies say what to do about the library's messages, by a part of each.
var remedies = []struct{ part, remedy string }{
	{"already been defined", "keep one of the two"},
	{"already created", "keep one of the two"},
	{"strings cannot contain newlines", "end the text with a quotation mark on the same line"},
	{"unexpected EOF", "close what is left open: a quotation mark or a bracket"},
	{"escape", `write \\ for a backslash, or put the text between single quotation marks`},
	{"leading zero", "put numbers in quotation marks, such as \"0.5\""},
	{"datetime", "write a date as 2027-01-31"},
	{"out of range", "write a smaller number, in quotation marks"},
	{"control characters", "take the character out"},
	{"expected value", "write a value after the equals sign: \"text\", a number, true or false"},
}

func remedyFor(message string) string {
	for _, r := range remedies {
		if strings.Contains(message, r.part) {
			return r.remedy
		}
	}
	return `write key = "value", one to a line, with text in quotation marks`
}
