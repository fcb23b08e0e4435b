package words

// What the program says beside the fields it cannot judge.
const (
	// ChemistryCaution belongs beside a home process.
	ChemistryCaution = "Wear gloves, keep the room ventilated, and go by the chemistry's safety data sheet. " +
		"Local rules say how it is disposed of."
	// RemjetCaution belongs beside the choice of a film with a remjet backing.
	RemjetCaution = "Remjet is a soot backing on cinema film. It spoils the baths of ordinary labs: " +
		"ask the lab before sending such film, or remove the backing first when developing at home."
	// FoilCaution belongs beside the speed code (common practice, no source).
	FoilCaution = "Keep the foil of a speed code off the film's mouth, and flat: a loose edge can short a camera's contacts."
	// BorderCaution belongs beside duty and tax.
	BorderCaution = "These are the percentages and limits you enter. What is due is decided by the customs authority."
)
