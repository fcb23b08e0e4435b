package desk

import (
	"fmt"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"reelworth/internal/scenario"
)

// faultList is what stands in the window for a file with faults: what is wrong in
// which line, and what to write instead.
type faultList struct {
	content *fyne.Container
	count   int
}

func newFaultList(path string, faults []scenario.Fault, again, back func()) *faultList {
	name := filepath.Base(path)
	title := fmt.Sprintf("%s has %d faults", name, len(faults))
	if len(faults) == 1 {
		title = name + " has a fault"
	}
	list := inset(newStack(0, 12), 40, 32, 40, 32)
	list.Add(newProse(sizeAnswer, span{text: title, bold: true}))
	list.Add(newProse(sizeText, span{text: path + " – nothing in it was changed. Mend it in a text editor, then read it again.", color: colMuted}))
	list.Add(newLine(24, newLink("Read it again", again), newLink("Back to what was open", back)))
	for _, f := range faults {
		where := f.Path
		if f.Line > 0 {
			where = fmt.Sprintf("line %d: %s", f.Line, f.Path)
		}
		list.Add(newStack(0, 0,
			newProse(sizeText, span{text: "✗ ", bold: true, color: colFault}, span{text: where, bold: true}),
			newProse(sizeText, span{text: f.Wrong + "; "}, span{text: f.Remedy}),
		))
	}
	return &faultList{container.NewStack(container.NewVScroll(list)), len(faults)}
}
