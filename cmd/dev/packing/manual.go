package packing

import (
	"fmt"
	"strings"
)

// windowManual is the manual page of the window.
func (g *Goods) windowManual() []byte {
	return g.page("reelworth", "compare film you load yourself with ready-made rolls", ".B reelworth\n.RI [ FILE ]\n.br\n.B reelworth \\-\\-version",
		section("DESCRIPTION", "Opens the window, on FILE if one is named, else where one left off, else on a built\\-in example. FILE holds scenarios\n"+
			"as TOML; its name ends in .reelworth.toml or .toml.")+
			section("OPTIONS", ".TP\n.B \\-\\-version\nPrint the version and end."))
}

// commandManual is the manual page of the command line program: what it says of itself.
func (g *Goods) commandManual() []byte {
	var b strings.Builder
	b.WriteString(section("DESCRIPTION", verbatim(g.Manual.Overview)))
	b.WriteString(".SH COMMANDS\n")
	for _, c := range g.Manual.Commands {
		fmt.Fprintf(&b, ".SS %s\n%s\n", roff(c.Name), verbatim(c.Help))
	}
	return g.page("reelworth-cli", "compare ways to buy film from the command line",
		".B reelworth\\-cli\n.I COMMAND FILE\n.RI [ flags ]", b.String())
}

func (g *Goods) page(name, does, synopsis, rest string) []byte {
	other := "reelworth-cli"
	if name == other {
		other = "reelworth"
	}
	return []byte(fmt.Sprintf(".TH %s 1 %s \"Reelworth %s\" \"User Commands\"\n", strings.ToUpper(roff(name)), g.Made.Format("2006-01-02"), g.Version) +
		section("NAME", roff(name)+` \- `+does) + section("SYNOPSIS", synopsis) + rest +
		section("SEE ALSO", ".BR "+roff(other)+" (1)"))
}

func section(title, text string) string { return ".SH " + title + "\n" + text + "\n" }

// verbatim is text set as it stands.
func verbatim(text string) string { return ".nf\n" + roff(strings.TrimRight(text, "\n")) + "\n.fi" }

// roff is text with the signs escaped that steer the formatter.
func roff(text string) string {
	text = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(text)
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		if strings.HasPrefix(line, ".") || strings.HasPrefix(line, "'") {
			lines[i] = `\&` + line
		}
	}
	return strings.Join(lines, "\n")
}
