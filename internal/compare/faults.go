package compare

import (
	"strings"

	"github.com/shopspring/decimal"

	"reelworth/internal/scenario"
)

// spoilt is what the faults of a scenario make unusable.
type spoilt struct {
	whole      *Fault
	loading    *Fault
	baseline   bool
	offers     map[int]*Fault
	rates      map[int]*Fault
	developing map[string]*Fault // by the name of the process
}

// sortFaults keeps the first fault of each part.
func sortFaults(s *scenario.Scenario, faults []scenario.Fault) spoilt {
	sp := spoilt{offers: map[int]*Fault{}, rates: map[int]*Fault{}, developing: map[string]*Fault{}}
	for _, f := range faults {
		i := f.Place.Index
		switch f.Place.Part {
		case scenario.PartFile, scenario.PartWhole:
			keep(&sp.whole, f)
		case scenario.PartLoading:
			keep(&sp.loading, f)
		case scenario.PartBaseline:
			sp.baseline = true
		case scenario.PartOffer:
			keepAt(sp.offers, i, f)
		case scenario.PartRate:
			keepAt(sp.rates, i, f)
		case scenario.PartDeveloping:
			if i >= 0 && i < len(s.Developing) {
				keepAt(sp.developing, s.Developing[i].Name, f)
			}
		}
	}
	return sp
}

func keep(slot **Fault, f scenario.Fault) {
	if *slot == nil {
		*slot = inputFault(f)
	}
}

func keepAt[K comparable](m map[K]*Fault, key K, f scenario.Fault) {
	if m[key] == nil {
		m[key] = inputFault(f)
	}
}

// inputFault is a fault of the scenario as the reason to leave an offer out.
func inputFault(f scenario.Fault) *Fault {
	return &Fault{FaultInput, fieldOf(f.Path), f}
}

// sharper is the more telling of the fault that the scenario's checks found in an
// offer and the one the engine found: the engine's where both are about one field and
// it has a name for it. Either may be nil.
func sharper(given, found *Fault) *Fault {
	if given == nil || found != nil && found.Code != FaultInput && strings.HasPrefix(found.Key, given.Key) {
		return found
	}
	return given
}

// found is a fault that the engine found itself, in a scenario that was never checked or
// by a reckoning of its own.
func found(kind FaultCode, key string, code scenario.Code, args scenario.Args) *Fault {
	return &Fault{kind, key, scenario.Fault{Code: code, Path: key, Args: args}}
}

// badInput is the fault of a field that makes no sense.
func badInput(key string, code scenario.Code, args scenario.Args) *Fault {
	return found(FaultInput, key, code, args)
}

// tooFew is the fault of a count that must be at least 1.
func tooFew(key string, have int) *Fault {
	one := scenario.Decimal(decimal.New(1, 0))
	return badInput(key, scenario.BelowMin, scenario.Args{
		Number: decimal.New(int64(have), 0), Bound: one, Rule: &scenario.Rule{Min: &one}, Wanted: scenario.ValueWhole,
	})
}

// notAbove is the fault of a number that must be above 0.
func notAbove(key string, have scenario.Decimal) *Fault {
	var none scenario.Decimal
	return badInput(key, scenario.NotAbove, scenario.Args{Number: have, Rule: &scenario.Rule{Above: &none}, Wanted: scenario.ValueNumber})
}

// noTable is the fault of an offer that lacks the table of its kind.
func noTable(key string, needs ...string) *Fault {
	return badInput(key, scenario.MissingTable, scenario.Args{Example: "[scenario.offer." + key + "]", Keys: needs})
}

// fieldOf is the key of a fault without the table it stands in: "reel.exposures" of
// "offer[2].reel.exposures".
func fieldOf(path string) string {
	for _, table := range []string{"scenario[", "offer["} {
		if rest, ok := strings.CutPrefix(path, table); ok {
			_, path, _ = strings.Cut(rest, ".")
		}
	}
	return path
}
