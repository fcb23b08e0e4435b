package desk

// telling says what there is to say of the work where a person looks: in the answer, in
// what stands in its place, and where neither is in sight, beside the switch to them.
type telling struct{ d *Desk }

func (t telling) tell() {
	d := t.d
	if d.panes == nil {
		return // the columns are being made for the first time
	}
	d.answer.Tell()
	d.hand.column.Tell()
	d.notices.Put(d.panes.said)
	d.panes.root.Refresh()
}
