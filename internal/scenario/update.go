package scenario

import (
	"reflect"

	"reelworth/internal/tomltext"
)

// Text is a file's text with what it says.
type Text struct {
	Bytes []byte
	Reading
}

// TextOf reads a text.
func TextOf(data []byte) Text { return Text{data, Inspect(data)} }

// Saying is the text, changed where f says something else than it does: comments, blanks,
// order, unknown keys and what could not be read stay where they are. Where that cannot be
// done it is the canonical form, and inPlace is false. What f shares with the text's own
// File, as a state of it that was changed in clones does, costs next to nothing.
func (t Text) Saying(f File) (next Text, inPlace bool) {
	if len(t.Bytes) == 0 {
		return TextOf(Write(f)), true
	}
	if t.File.Schema != Schema || len(t.Faults) > 0 && t.Faults[0].Path == "file" {
		return TextOf(Write(f)), false
	}
	was := t.tree()
	now := treeBeside(&f, &t.File, was)
	edited, err := tomltext.Edit(string(t.Bytes), was, now)
	switch {
	case err != nil:
		return TextOf(tomltext.Write(now)), false
	case edited == string(t.Bytes):
		return t, true
	}
	next = TextOf([]byte(edited))
	if !tomltext.Same(treeBeside(&next.File, &f, now), now) {
		return TextOf(tomltext.Write(now)), false
	}
	next.File.Reels, next.File.Scenarios = f.Reels, f.Scenarios // they say the same, and are shared
	return next, true
}

// tree is what a text says, as tables of text; its schema as it stands there.
func (r *Reading) tree() *tomltext.Table {
	t := treeOf(&r.File, true)
	for _, f := range r.Faults {
		switch f.Code {
		case NoSchema:
			t.Pairs[0].Value = nil
		case WrongSchema:
			t.Pairs[0].Value = tomltext.Plain("0") // whatever it is
		}
	}
	return t
}

// treeBeside is treeOf all that a file says, of which much may be in another one and in
// that one's tree: what is the same in both is taken from there.
func treeBeside(f, other *File, tree *tomltext.Table) *tomltext.Table {
	few := *f
	few.Reels, few.Scenarios = nil, nil
	t := treeOf(&few, true)
	for i := range t.Pairs {
		p := &t.Pairs[i]
		known, _ := valueIn(tree, p.Key).(tomltext.Tables)
		switch p.Key {
		case reelKey:
			p.Value, p.Implied = tablesBeside(f.Reels, other.Reels, known), len(f.Reels) == 0
		case scenarioKey:
			p.Value, p.Implied = tablesBeside(f.Scenarios, other.Scenarios, known), len(f.Scenarios) == 0
		}
	}
	return t
}

// tablesBeside are the tables of a list; known are those of the other one.
func tablesBeside[T any](list, others []T, known tomltext.Tables) tomltext.Tables {
	typ := tableOf(reflect.TypeFor[T]())
	tables := make(tomltext.Tables, len(list))
	for i := range list {
		if i < len(others) && i < len(known) && reflect.DeepEqual(&list[i], &others[i]) {
			tables[i] = known[i]
		} else {
			tables[i] = typ.tree(reflect.ValueOf(&list[i]).Elem(), true)
		}
	}
	return tables
}

func valueIn(t *tomltext.Table, key string) tomltext.Value {
	for _, p := range t.Pairs {
		if p.Key == key {
			return p.Value
		}
	}
	return nil
}
