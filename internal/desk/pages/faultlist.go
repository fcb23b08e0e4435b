package pages

import (
	"fmt"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// FaultList is what stands in the window for a file with faults: what is wrong in
// which line, and what to write instead.
type FaultList struct {
	Content *fyne.Container
	Count   int
}

// NewFaultList lists the faults of a file, with ways to read it again and to go back.
func NewFaultList(path string, faults []scenario.Fault, again, back func()) *FaultList {
	name := filepath.Base(path)
	told, more := words.TellFaults(faults)
	title := fmt.Sprintf("%s has %d faults", name, len(told)+more)
	if len(faults) == 1 {
		title = name + " has a fault"
	}
	list := kit.Inset(kit.NewStack(0, 12), 40, 32, 40, 32)
	list.Add(kit.NewText(kit.SizeAnswer, kit.Span{Text: title, Bold: true}))
	list.Add(kit.NewText(kit.SizeText, kit.Span{Text: path + " – nothing in it was changed. Mend it in a text editor, then read it again.", Color: kit.Muted}))
	list.Add(kit.NewLine(24, kit.NewLink("Read it again", again), kit.NewLink("Back to what was open", back)))
	for _, f := range told {
		where := f.Path
		if f.Line > 0 {
			where = fmt.Sprintf("line %d: %s", f.Line, f.Path)
		}
		wrong, remedy := words.Fault(f)
		list.Add(kit.NewStack(0, 0,
			kit.NewText(kit.SizeText, kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: where, Bold: true}),
			kit.NewText(kit.SizeText, kit.Span{Text: wrong + "; "}, kit.Span{Text: remedy}),
		))
	}
	if more > 0 {
		list.Add(kit.NewText(kit.SizeText, kit.Span{Text: words.FurtherFaults(more), Bold: true}))
	}
	return &FaultList{container.NewStack(container.NewVScroll(list)), len(faults)}
}
