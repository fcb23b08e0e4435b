package words

import "reelworth/internal/scenario"

// ImportChoices are the choices of the import field in the order to offer them.
func ImportChoices() []scenario.Import {
	return []scenario.Import{scenario.ImportNone, scenario.ImportBorder, scenario.ImportPrepaid, scenario.ImportUndecided}
}

// ImportChoice is a choice in a person's words.
func ImportChoice(i scenario.Import) string {
	switch i {
	case scenario.ImportNone:
		return "nothing to pay"
	case scenario.ImportBorder:
		return "paid at the border"
	case scenario.ImportPrepaid:
		return "collected by the seller"
	}
	return "not decided"
}

// TakenIn is what stands beside a field that took the currency or unit written in it.
func TakenIn(unit string) string { return "taken in " + unit }

// What the program says beside the fields it cannot judge.
const (
	// ChemistryCaution belongs beside a home process.
	ChemistryCaution = "Wear gloves, keep the room ventilated, and go by the chemistry's safety data sheet. " +
		"Local rules say how it is disposed of."
	// RemjetCaution belongs beside the choice of a film with a remjet backing.
	RemjetCaution = "Remjet is a soot backing on cinema film. It spoils the baths of ordinary labs: " +
		"ask the lab before sending such film, or remove the backing first when developing at home."
	// BorderCaution belongs beside duty and tax.
	BorderCaution = "These are the percentages and limits you enter. What is due is decided by the customs authority."
)
