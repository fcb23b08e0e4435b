package compare

import (
	"errors"

	"reelworth/internal/exact"
	"reelworth/internal/film"
	"reelworth/internal/scenario"
)

// reelYield is what one reel gives once it is cut and loaded.
func reelYield(r *scenario.Reel) (Yield, *Fault) {
	if r == nil {
		return Yield{}, noTable("reel", "length", "length_unit", "exposures")
	}
	shape, fault := reelShape(r)
	if fault != nil {
		return Yield{}, fault
	}
	cut, err := film.Divide(shape)
	var short *film.TooShort
	switch {
	case errors.As(err, &short):
		return Yield{}, found(FaultNoYield, "reel.length", scenario.NoRoll, scenario.Args{Missing: short.Missing})
	case err != nil:
		return Yield{}, tooFew("reel.exposures", r.Exposures)
	}
	y := Yield{Exposures: int(cut.Exposures()), Cassettes: int(cut.Cassettes()), Cut: &cut}
	return y, y.spoil(r.SpoiledPercent, "reel.spoiled_percent")
}

// spoil takes what is spoiled off a yield. It is found after developing, so that the
// cassettes stay.
func (y *Yield) spoil(percent scenario.Decimal, key string) *Fault {
	y.Good = y.goodAt(exact.FromDecimal(percent))
	if y.Good.Sign() <= 0 {
		return found(FaultNoYield, key, scenario.NothingGood, scenario.Args{})
	}
	return nil
}

// goodAt is the exposures that are left when a percent of them is spoiled.
func (y *Yield) goodAt(spoiled exact.Fraction) exact.Fraction {
	return exact.Int(int64(y.Exposures)).Mul(exact.Int(100).Sub(spoiled).Percent())
}

// spoiledPercent is the percent of the exposures that is spoiled.
func (y *Yield) spoiledPercent() exact.Fraction {
	return exact.Int(100).Sub(y.Good.Quo(exact.Int(int64(y.Exposures))).Mul(exact.Int(100)))
}

// reelShape is the reel in the terms of package film.
func reelShape(r *scenario.Reel) (film.Reel, *Fault) {
	unit, ok := map[scenario.LengthUnit]exact.Fraction{scenario.Feet: film.Foot, scenario.Metres: film.Metre}[r.LengthUnit]
	if !ok {
		return film.Reel{}, badInput("reel.length_unit", scenario.NotAmong, scenario.Args{Got: string(r.LengthUnit), Example: `length_unit = "ft" or "m"`})
	}
	if r.Length.Sign() <= 0 {
		return film.Reel{}, notAbove("reel.length", r.Length)
	}
	pitch := film.LongPitch
	if r.Pitch == scenario.ShortPitch {
		pitch = film.ShortPitch
	}
	if r.Exposures < 1 {
		return film.Reel{}, tooFew("reel.exposures", r.Exposures)
	}
	return film.Reel{
		Length: exact.FromDecimal(r.Length).Mul(unit), Pitch: pitch, Exposures: r.Exposures,
		Leader: exact.FromDecimal(r.LeaderMM), Trailer: exact.FromDecimal(r.TrailerMM), Fogged: exact.FromDecimal(r.FoggedMM),
		StartWaste: exact.FromDecimal(r.StartWasteMM), EndWaste: exact.FromDecimal(r.EndWasteMM),
		TestExposures: r.TestExposures, ShortestRollWanted: r.ShortRollFrom,
	}, nil
}

// boxedYield is what one pack of ready-made rolls gives.
func boxedYield(b *scenario.Boxed) (Yield, *Fault) {
	switch {
	case b == nil:
		return Yield{}, noTable("boxed", "exposures")
	case b.RollsPerPack < 1 || b.Exposures < 1:
		return Yield{}, found(FaultNoYield, "boxed", scenario.NothingGood, scenario.Args{})
	}
	all := exact.Int(int64(b.RollsPerPack)).Mul(exact.Int(int64(b.Exposures)))
	y := Yield{Exposures: int(toInt64(all)), Cassettes: b.RollsPerPack}
	return y, y.spoil(b.SpoiledPercent, "boxed.spoiled_percent")
}
