package film_test

import (
	"errors"
	"fmt"

	"reelworth/internal/exact"
	"reelworth/internal/film"
)

// A reel of 100 ft in cassettes of 36, with a leader, a trailer and what is lit while loading.
func ExampleDivide() {
	reel := film.Reel{
		Length: exact.Int(100).Mul(film.Foot), Pitch: film.LongPitch, Exposures: 36,
		Leader: exact.Int(100), Trailer: exact.Int(40), Fogged: exact.Int(60),
	}
	cut, err := film.Divide(reel)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(cut.FullRolls, "rolls of", cut.RollLength, "mm, then", cut.ShortRollExposures, "exposures,", cut.LeftOver, "mm left over")

	reel.Length = exact.Int(150)
	_, err = film.Divide(reel)
	var short *film.TooShort
	if errors.As(err, &short) {
		fmt.Println(short.Missing, "mm are missing to the shortest roll")
	}
	// Output:
	// 19 rolls of 1568 mm, then 12 exposures, 32 mm left over
	// 88 mm are missing to the shortest roll
}
