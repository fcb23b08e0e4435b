package words

import (
	"fmt"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

// Sizing is what is said of the sizes of an offer's order.
type Sizing struct {
	voice
	c     *compare.Comparison
	name  string
	offer *compare.Offer // nil where it is not computed
	sizes []compare.OrderSize
}

// SizingOf speaks about the sizes of an order of an offer of a comparison.
func SizingOf(c *compare.Comparison, offer string, sizes []compare.OrderSize, l money.Locale) Sizing {
	return Sizing{voiceOf(c, l), c, offer, c.Find(offer), sizes}
}

// Title is the finding, without a full stop.
func (s Sizing) Title() string {
	best, today := s.best(), s.today()
	switch {
	case s.offer == nil:
		return notComputedTitle(s.c, s.name)
	case best == nil:
		return "No size of order to compare"
	case best.MonthsToShoot == nil:
		return "Nothing is shot yet, so no size of order is best"
	case s.TooLong(best):
		return fmt.Sprintf("Even %s last%s longer than the %s compared", s.units(best.Units), choice(best.Units == 1, "s", ""),
			s.counted(exact.Int(int64(s.s.Months)), "month"))
	case s.alike():
		return "However many in an order, a roll costs " + s.home(best.TotalPerRoll)
	case best.Units == s.offer.Order.Units:
		return fmt.Sprintf("Today's order of %s is best", s.units(best.Units))
	}
	text := fmt.Sprintf("An order of %s is best", s.units(best.Units))
	if today == nil {
		return text + ": " + s.home(best.TotalPerRoll) + " a roll"
	}
	switch less := best.SavingOver(today); {
	case s.TooLong(today):
		return text + ", today's lasts too long"
	case less.Round(s.places()).Sign() > 0:
		return fmt.Sprintf("%s: a roll costs %s less than today", text, s.home(less))
	}
	return text + ": " + s.home(best.TotalPerRoll) + " a roll"
}

func (s Sizing) best() *compare.OrderSize {
	for i := range s.sizes {
		if s.sizes[i].Best {
			return &s.sizes[i]
		}
	}
	return nil
}

func (s Sizing) today() *compare.OrderSize {
	for i := range s.sizes {
		if s.Today(&s.sizes[i]) {
			return &s.sizes[i]
		}
	}
	return nil
}

// alike says whether a roll costs the same whatever the order.
func (s Sizing) alike() bool {
	for i := range s.sizes {
		if !s.sizes[i].TotalPerRoll.Equal(s.sizes[0].TotalPerRoll) {
			return false
		}
	}
	return true
}

// Today says whether a size is today's.
func (s Sizing) Today(size *compare.OrderSize) bool {
	return s.offer != nil && size.Units == s.offer.Order.Units
}

// TooLong says whether a size lasts longer than the months compared.
func (s Sizing) TooLong(size *compare.OrderSize) bool {
	return size.MonthsToShoot != nil && exact.Int(int64(s.s.Months)).Less(*size.MonthsToShoot)
}

// Under is the line under the title: what is drawn.
func (s Sizing) Under() string {
	return fmt.Sprintf("%s per roll of %d from %s, by the %ss in one order", s.shown(), s.s.RollExposures, Called(s.s, s.name), s.noun())
}

// noun is one unit of the offer: "reel", "pack", "box".
func (s Sizing) noun() string {
	o := offerNamed(s.s, s.name)
	switch {
	case o != nil && o.Kind == scenario.KindReel:
		return "reel"
	case o != nil && o.Boxed != nil && o.Boxed.RollsPerPack > 1:
		return "pack"
	}
	return "roll"
}

func (s Sizing) units(n int) string { return s.counted(exact.Int(int64(n)), s.noun()) }

// Units, Landed and Months head what stands under the bars.
func (s Sizing) Units() string  { return s.noun() + "s" }
func (s Sizing) Landed() string { return "a " + s.noun() + ", landed" }
func (s Sizing) Months() string { return "months to shoot" }

// TooLongText marks the sizes that last longer than the months compared.
func (s Sizing) TooLongText() string { return "lasts too long" }

// Number, Roll, Unit and Lasts are a size's units, what a roll and a unit cost, and how
// many months it lasts; "–" where nothing is shot.
func (s Sizing) Number(size *compare.OrderSize) string {
	return s.l.Number(exact.Int(int64(size.Units)), 0)
}
func (s Sizing) Roll(size *compare.OrderSize) string { return s.home(size.TotalPerRoll) }
func (s Sizing) Unit(size *compare.OrderSize) string { return s.home(size.LandedPerUnit) }
func (s Sizing) Lasts(size *compare.OrderSize) string {
	if size.MonthsToShoot == nil {
		return "–"
	}
	return s.plain(size.MonthsToShoot.Round(1), 1)
}

// Readout says what a size comes to.
func (s Sizing) Readout(size *compare.OrderSize) string {
	text := fmt.Sprintf("%s in one order: %s a roll, %s landed a %s", s.units(size.Units), s.amount(size.TotalPerRoll),
		s.home(size.LandedPerUnit), s.noun())
	if size.MonthsToShoot != nil {
		text += ", " + s.counted(size.MonthsToShoot.Round(1), "month") + " to shoot"
	}
	if size.Best {
		text += "; best"
	}
	if why := SizeReason(s.c, *size, s.l); why != "" {
		text += choice(size.Best, ": ", "; ") + why
	}
	return text
}

// Header heads the table of the sizes.
func (s Sizing) Header() []string {
	return []string{s.Units() + " in one order", s.shown() + " " + s.Landed(), s.shown() + " a roll", s.Months(), "best", "why"}
}

// Row is one size in the table.
func (s Sizing) Row(size *compare.OrderSize) []string {
	return []string{s.Number(size), s.Unit(size), s.Roll(size), s.Lasts(size), choice(size.Best, "best", ""), SizeReason(s.c, *size, s.l)}
}
