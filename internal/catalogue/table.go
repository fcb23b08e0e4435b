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

// Markdown is the table of all keys for the README.
func Markdown() string {
	var b strings.Builder
	b.WriteString("| table | key | what it is | in | if left out |\n|---|---|---|---|---|\n")
	above := "none yet"
	for _, r := range Rows() {
		table := ""
		if r.Table != above {
			above, table = r.Table, header(r.Table)
			if r.Table != "" {
				table = "`" + table + "`"
			}
		}
		fmt.Fprintf(&b, "| %s | `%s` | %s | %s | %s |\n", table, r.Field.Key, r.What, r.Unit, r.unset())
	}
	return b.String()
}

// Plaintext is the table of all keys for a terminal.
func Plaintext() string {
	var b strings.Builder
	w := tabwriter.NewWriter(&b, 0, 0, 2, ' ', 0)
	above := "none yet"
	for _, r := range Rows() {
		if r.Table != above {
			w.Flush()
			fmt.Fprintf(&b, "\n%s\n", header(r.Table))
			above = r.Table
		}
		what := strings.ReplaceAll(r.What, "`", "")
		in, unset := string(r.Unit), r.unset()
		switch {
		case in != "" && unset != "":
			what += " (" + in + "; " + unset + ")"
		case in+unset != "":
			what += " (" + in + unset + ")"
		}
		fmt.Fprintf(w, "  %s\t%s\n", r.Field.Key, what)
	}
	w.Flush()
	return strings.TrimPrefix(b.String(), "\n")
}
