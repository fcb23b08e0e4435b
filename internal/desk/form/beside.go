package form

import (
	"slices"
	"strings"

	"reelworth/internal/desk/kit"
	"reelworth/internal/desk/session"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// stand puts what is wrong with what the scenario holds beside the fields that it is
// about, and on top what has no field here.
func (f *Form) stand(faults []scenario.Fault, chosen session.Selection) {
	beside := map[*Field]string{}
	var onTop []string
	for i := range faults {
		fault := faults[i]
		if words.Asked(fault) {
			continue // in a way of its own
		}
		if fd := f.about(fault.Path); fd != nil {
			if beside[fd] == "" {
				beside[fd] = words.Beside(fault)
			}
		} else if isOf(&fault, chosen) {
			onTop = append(onTop, words.OnTop(fault))
		}
	}
	for _, fd := range f.fields {
		fd.stand(beside[fd])
	}
	f.top(onTop)
}

// about is the field that a fault at a path is to be shown beside, nil where there is none:
// its own, or else the nearest to it.
func (f *Form) about(path string) *Field {
	for _, fd := range f.fields {
		if fd.Key == path {
			return fd
		}
	}
	for _, fd := range f.fields {
		if isWithin(fd.Key, path) || isWithin(path, fd.Key) {
			return fd
		}
	}
	return nil
}

// isWithin says whether a key is of something inside the one at a path.
func isWithin(key, path string) bool {
	rest, ok := strings.CutPrefix(key, path)
	return ok && rest != "" && (rest[0] == '.' || rest[0] == '[') && path != ""
}

// isOf says whether a fault is of what is chosen.
func isOf(f *scenario.Fault, chosen session.Selection) bool {
	if f.Place.Part == scenario.PartRange {
		return false // it has no form
	}
	topic := session.TopicOf(f.Path)
	return topic == chosen.Topic && (topic != session.TopicOffer || f.Place.Part == scenario.PartOffer && f.Place.Index == chosen.Offer)
}

// top lists above the fields what is wrong.
func (f *Form) top(sentences []string) {
	if slices.Equal(sentences, f.wrongs) {
		return
	}
	f.wrongs = sentences
	f.wrong.RemoveAll()
	for _, s := range sentences {
		f.wrong.Add(kit.NewText(kit.SizeSmall+1, kit.Span{Text: "✗ ", Bold: true, Color: kit.Fault}, kit.Span{Text: s, Color: kit.Fault}))
	}
}

// unfoldFaulty opens the groups in which something is wrong.
func (f *Form) unfoldFaulty(faults []scenario.Fault) {
	for i := range faults {
		for j := range f.groups {
			g := &f.groups[j]
			for _, fd := range g.fields {
				if fd.Key == faults[i].Path || fd.beside != nil && fd.beside.Key == faults[i].Path {
					g.open = g.fold != ""
				}
			}
		}
	}
}

// stand shows what is wrong with the value that the scenario has, "" for nothing.
func (f *Field) stand(why string) {
	was := f.blame
	f.blame = why
	if f.Problem != "" || why == "" && was == "" {
		return
	}
	f.Input.SetFaulty(why != "")
	switch {
	case f.prompting:
	case why != "":
		f.Row.Complain(why)
	default:
		f.Row.Say("")
	}
}

// isBlamed says whether something is wrong in the field's row.
func (f *Field) isBlamed() bool {
	return f.Problem != "" || f.blame != "" || f.beside != nil && (f.beside.Problem != "" || f.beside.blame != "")
}

// IsBlamed says whether something is wrong with the value that the scenario itself has.
func (f *Field) IsBlamed() bool { return f.blame != "" }
