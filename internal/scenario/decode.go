package scenario

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/BurntSushi/toml"

	"reelworth/internal/parallel"
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
	where, line, scanErr := tomltext.Scan(text, pieces...)
	var beyond *tomltext.LimitError
	if errors.As(scanErr, &beyond) {
		return nil, nil, fileFault(line, limits[beyond.Of], Args{Most: beyond.Most})
	}
	if scanErr != nil {
		where.Cuts = nil // the library finds out what is wrong
	}
	doc, f := decodePieces(text, where.Cuts)
	if f == nil && scanErr != nil {
		f = fileFault(line, NotLocated, Args{})
	}
	if f != nil {
		return nil, nil, f
	}
	return doc, where.Root, nil
}

// limits are the faults of a text beyond what is read.
var limits = map[tomltext.Limit]Code{
	tomltext.LimitDepth: TooDeep, tomltext.LimitKeys: TooManyKeys, tomltext.LimitItems: TooManyItems, tomltext.LimitWork: KeysTooLong,
}

// notText is the fault of a file that cannot be text.
func notText(data []byte) *Fault {
	if len(data) > MaxBytes {
		return fileFault(1, FileTooLarge, Args{Most: MaxBytes >> 20})
	}
	if i := bytes.IndexByte(data, 0); i >= 0 {
		return fileFault(lineAt(data, i), NULByte, Args{})
	}
	for i := 0; i < len(data); {
		r, n := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && n < 2 {
			return fileFault(lineAt(data, i), NotUTF8, Args{Got: fmt.Sprintf("0x%02X", data[i])})
		}
		i += n
	}
	return nil
}

func lineAt(data []byte, offset int) int {
	return 1 + bytes.Count(data[:offset], []byte("\n"))
}

func fileFault(line int, code Code, args Args) *Fault {
	return &Fault{Code: code, Path: "file", Place: Place{PartFile, -1, 0}, Line: line, Args: args}
}

// pieces are the tables that a file may be cut at.
var pieces = []string{"scenario", "reel"}

// decodePieces gives the TOML library one scenario or reel in hand at a time, side by
// side: a [[scenario]] and what follows it is a file of its own.
func decodePieces(text string, cuts []tomltext.Cut) (map[string]any, *Fault) {
	if len(cuts) == 0 {
		return decodePiece(text, 1)
	}
	doc, f := decodePiece(text[:cuts[0].Offset], 1)
	if f != nil {
		return nil, f
	}
	tables := make([]map[string]any, len(cuts))
	faults := make([]*Fault, len(cuts))
	read := func(i int) error {
		end := len(text)
		if i+1 < len(cuts) {
			end = cuts[i+1].Offset
		}
		piece, f := decodePiece(text[cuts[i].Offset:end], cuts[i].Line)
		if f != nil {
			faults[i] = f
			return errFault
		}
		tables[i] = piece[cuts[i].Key].([]map[string]any)[0]
		return nil
	}
	_ = parallel.Each(parallel.All(), len(cuts), read) // faults says more
	for _, f := range faults {
		if f != nil {
			return nil, f
		}
	}
	for i, t := range tables {
		list, _ := doc[cuts[i].Key].([]map[string]any)
		doc[cuts[i].Key] = append(list, t)
	}
	return doc, nil
}

// errFault stops the reading of pieces.
var errFault = errors.New("scenario: a piece has a fault")

// decodePiece reads TOML that starts at a line of the file.
func decodePiece(text string, line int) (doc map[string]any, f *Fault) {
	// The last net: the TOML library panics on what it takes for a bug of its own,
	// and a file must never take the program down.
	defer func() {
		if recover() != nil {
			doc, f = nil, fileFault(line, GivenUp, Args{})
		}
	}()
	if doc, simple := tomltext.Simple(text); simple {
		return doc, nil
	}
	doc = map[string]any{}
	if _, err := toml.Decode(text, &doc); err != nil {
		return nil, syntaxFault(err, line)
	}
	return doc, nil
}

// syntaxFault is an error of the TOML library as a fault.
func syntaxFault(err error, line int) *Fault {
	var pe toml.ParseError
	if !errors.As(err, &pe) {
		return fileFault(line, NotTOML, Args{Got: err.Error()})
	}
	line += max(pe.Position.Line, 1) - 1
	if strings.Contains(pe.Message, `but got '\n'`) && line > 1 {
		line-- // the library stands behind the line break that it stumbled over
	}
	f := fileFault(line, slipOf(pe.Message), Args{Got: strings.TrimSpace(pe.Message)})
	if pe.LastKey != "" {
		f.Path = pe.LastKey
	}
	return f
}

// messages tell the TOML library's errors apart, by a part of each: it has no codes.
var messages = []struct {
	part string
	code Code
}{
	{"already been defined", NotTOMLTwice},
	{"already created", NotTOMLTwice},
	{"strings cannot contain newlines", NotTOMLLine},
	{"unexpected EOF", NotTOMLOpen},
	{"escape", NotTOMLEscape},
	{"leading zero", NotTOMLZero},
	{"datetime", NotTOMLDate},
	{"out of range", NotTOMLLarge},
	{"control characters", NotTOMLControl},
	{"expected value", NotTOMLNoValue},
}

func slipOf(message string) Code {
	for _, m := range messages {
		if strings.Contains(message, m.part) {
			return m.code
		}
	}
	return NotTOML
}
