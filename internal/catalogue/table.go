package catalogue

import (
	"fmt"
	"reflect"
	"strings"
	"text/tabwriter"

	"reelworth/internal/scenario"
)

// lists are the tables of which a file may have several.
var lists = map[string]bool{
	"scenario": true, "scenario.rate": true, "scenario.loading.equipment": true, "scenario.developing": true,
	"scenario.developing.equipment": true, "scenario.offer": true, "scenario.offer.seen": true, "scenario.range": true,
	"reel": true, "reel.load": true, "reel.result": true, "reel.recount": true,
}

// header is the line that stands over a table in the file.
func header(table string) string {
	switch {
	case table == "":
		return "the top"
	case lists[table]:
		return "[[" + table + "]]"
	}
	return "[" + table + "]"
}

// unset is what a key means that is not there, "" where What says so.
func (r Row) unset() string {
	switch {
	case r.Rule.Required:
		return "required"
	case strings.Contains(r.What, "required "), strings.Contains(r.What, "without it"):
		return ""
	case r.Default != "":
		return r.Default
	case r.Type.Kind() == reflect.Int, r.Type == reflect.TypeFor[scenario.Decimal]():
		return "0"
	case r.Type.Kind() == reflect.Bool:
		return "false"
	}
	return ""
}

// Told is what a key is, with its unit and what counts where it is left out.
func (r Row) Told() string {
	what := strings.ReplaceAll(r.What, "`", "")
	in, unset := string(r.Unit), r.unset()
	switch {
	case in != "" && unset != "":
		what += " (" + in + "; " + unset + ")"
	case in+unset != "":
		what += " (" + in + unset + ")"
	}
	return what
}

// Table is a table of the file with its keys.
type Table struct {
	Header string // as it stands over them in the file
	Rows   []Row
}

// Tables are all keys of the file, by the tables they stand in.
func Tables() (list []Table) {
	above := "none yet"
	for _, r := range Rows() {
		if r.Table != above {
			above = r.Table
			list = append(list, Table{Header: header(r.Table)})
		}
		t := &list[len(list)-1]
		t.Rows = append(t.Rows, r)
	}
	return list
}

// Plaintext is the table of all keys for a terminal.
func Plaintext() string {
	var b strings.Builder
	w := tabwriter.NewWriter(&b, 0, 0, 2, ' ', 0)
	for _, t := range Tables() {
		fmt.Fprintf(&b, "\n%s\n", t.Header)
		for _, r := range t.Rows {
			fmt.Fprintf(w, "  %s\t%s\n", r.Field.Key, r.Told())
		}
		w.Flush()
	}
	return strings.TrimPrefix(b.String(), "\n")
}
