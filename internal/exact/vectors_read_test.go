package exact

import (
	"bufio"
	"math/big"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// vector is one case of the General Decimal Arithmetic test vectors (Mike Cowlishaw,
// speleotrove.com/decimal), which github.com/cockroachdb/apd/v3 carries as testdata.
type vector struct {
	file, id, op string
	args         []string
	result       string
	conditions   []string
	precision    int // significant digits to round to
	rounding     string
}

// readVectors reads every file of vectors in the module's folder.
func readVectors(t *testing.T) (list []vector) {
	t.Helper()
	dir, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", "github.com/cockroachdb/apd/v3").Output()
	if err != nil {
		t.Fatalf("the module with the vectors is not there: %v", err)
	}
	files, _ := filepath.Glob(filepath.Join(strings.TrimSpace(string(dir)), "testdata", "*.decTest"))
	for _, name := range files {
		f, err := os.Open(name)
		if err != nil {
			t.Fatal(err)
		}
		list = append(list, readFile(t, f)...)
		f.Close()
	}
	return list
}

// word is a bare or a quoted token of a line; two quotes stand for one.
var word = regexp.MustCompile(`'(?:[^']|'')*'|"(?:[^"]|"")*"|\S+`)

func readFile(t *testing.T, f *os.File) (list []vector) {
	at := vector{file: strings.TrimSuffix(filepath.Base(f.Name()), ".decTest")}
	for lines := bufio.NewScanner(f); lines.Scan(); {
		words := word.FindAllString(lines.Text(), -1)
		for i, w := range words {
			if strings.HasPrefix(w, "--") {
				words = words[:i]
				break
			}
		}
		switch {
		case len(words) == 0:
		case strings.HasSuffix(words[0], ":"):
			switch strings.ToLower(words[0]) {
			case "precision:":
				at.precision, _ = strconv.Atoi(words[1])
			case "rounding:":
				at.rounding = strings.ToLower(words[1])
			}
		default:
			list = append(list, at.with(t, words))
		}
	}
	return list
}

// with is the case of a line: id operation operand… -> result condition…
func (v vector) with(t *testing.T, words []string) vector {
	v.id, v.op = words[0], strings.ToLower(words[1])
	for i, w := range words[2:] {
		if w == "->" {
			rest := words[2+i+1:]
			v.result = unquoted(rest[0])
			for _, c := range rest[1:] {
				v.conditions = append(v.conditions, strings.ToLower(c))
			}
			return v
		}
		v.args = append(v.args, unquoted(w))
	}
	t.Fatalf("%s %s: no result", v.file, v.id)
	return v
}

func unquoted(w string) string {
	if n := len(w); n > 1 && (w[0] == '\'' || w[0] == '"') && w[0] == w[n-1] {
		return strings.ReplaceAll(w[1:n-1], w[:1]+w[:1], w[:1])
	}
	return w
}

// finite matches a number in the vectors' notation: its coefficient and its exponent.
var finite = regexp.MustCompile(`^[+-]?([0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE]([+-]?[0-9]+))?$`)

// exponent is the power of ten of a number's last digit; ok is false for no number.
func exponent(number string) (e int, ok bool) {
	m := finite.FindStringSubmatch(number)
	if m == nil {
		return 0, false
	}
	if m[2] != "" {
		var err error
		if e, err = strconv.Atoi(m[2]); err != nil {
			return 0, false
		}
	}
	if _, decimals, pointed := strings.Cut(m[1], "."); pointed {
		e -= len(decimals)
	}
	return e, true
}

// rational is a number of the vectors by math/big, which knows their notation.
func rational(t *testing.T, number string) *big.Rat {
	r, ok := new(big.Rat).SetString(number)
	if !ok {
		t.Fatalf("%q is no number", number)
	}
	return r
}
