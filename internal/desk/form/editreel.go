package form

import (
	"reelworth/internal/desk/kit"
	"reelworth/internal/scenario"
	"reelworth/internal/words"
)

// editReel takes what was typed or chosen into the reel in hand that is chosen, as Edit
// does into the scenario.
func (c *Column) editReel(f *Field, text string) {
	now, l := c.win.Session(), c.win.Locale()
	before := now.BaseReel()
	next := before
	err := f.reel.set(&next, text, l)
	if q := whichNumber(f, err, ""); q != nil {
		f.ask(q)
		c.withholdReel(f, text, before)
		return
	}
	why, remedy := "", ""
	if err != nil {
		why, remedy = words.NotTaken(err)
	} else {
		why = reelFault(now.FaultsWith(next), f.Key)
		remedy = why
	}
	f.refuse(why, remedy)
	if why != "" {
		c.withholdReel(f, text, before)
		return
	}
	delete(now.Withheld, f.Key)
	now.ChangeReel(c.nameOf(f, taken{}), f.Key, next)
	if _, chosen := f.Input.(*kit.Picker); chosen {
		c.win.Changed()
		return
	}
	c.win.Typed()
}

// withholdReel is as withhold, of the reel in hand that is chosen.
func (c *Column) withholdReel(f *Field, text string, before scenario.InHand) {
	now := c.win.Session()
	now.Withheld[f.Key] = text
	now.ChangeReel(c.nameOf(f, taken{}), f.Key, before)
	c.win.Typed()
	c.win.Withheld()
}

// reelFault is the fault of a field, else the first there is; "" for none.
func reelFault(faults []scenario.Fault, key string) string {
	if len(faults) == 0 {
		return ""
	}
	at := 0
	for i, f := range faults {
		if f.Path == key {
			at = i
			break
		}
	}
	wrong, remedy := words.Fault(faults[at])
	return wrong + "; " + remedy
}
