package words

// The steps that can be taken back, as the menu names them after Undo and Redo. A change
// of one field has the field's own name.
const (
	StepTurnRate = "turning a rate round"
)
