package pages

import (
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
	list := kit.Inset(kit.NewStack(0, 12), 40, 32, 40, 32)
	list.Add(kit.NewText(kit.SizeAnswer, kit.Span{Text: words.FaultsTitle(name, len(told)+more), Bold: true}))
	list.Add(kit.NewText(kit.SizeText, kit.Span{Text: words.FaultsHint(path), Color: kit.Muted}))
	list.Add(kit.NewLine(24, kit.NewLink(words.LinkReadAgain, again), kit.NewLink(words.LinkGoBack, back)))
	for _, f := range told {
		wrong, remedy := words.Fault(f)
		list.Add(kit.NewStack(0, 0,
			kit.NewText(kit.SizeText, kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: words.FaultPlace(f), Bold: true}),
			kit.NewText(kit.SizeText, kit.Span{Text: wrong + "; "}, kit.Span{Text: remedy}),
		))
	}
	if more > 0 {
		list.Add(kit.NewText(kit.SizeText, kit.Span{Text: words.FurtherFaults(more), Bold: true}))
	}
	return &FaultList{container.NewStack(kit.NewScroll(list)), len(faults)}
}
