package scenario

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/shopspring/decimal"
)

// CopyOffer is the offer at i under a name of its own.
func CopyOffer(s *Scenario, i int) Offer {
	o := s.Clone().Offers[i]
	o.Name = freeName(o.Name, offerNames(s))
	return o
}

// RenameOffer gives the offer at i another name, and what points at it follows.
func RenameOffer(s *Scenario, i int, name string) {
	was := s.Offers[i].Name
	s.Offers[i].Name = name
	if s.Baseline == was {
		s.Baseline = name
	}
	for r := range s.Ranges {
		if s.Ranges[r].Offer == was {
			s.Ranges[r].Offer = name
		}
	}
}

// FollowOffers are the reels in hand once the scenario at a place of f became another: a
// reel that names an offer goes by that offer's new name, unless another offer of the file
// has the old one. It is nil where none does; the reels given stay as they are.
func FollowOffers(f File, place int, before, next *Scenario, reels []InHand) []InHand {
	if len(before.Offers) != len(next.Offers) {
		return nil
	}
	renamed := map[string]string{}
	for i := range next.Offers {
		was, now := before.Offers[i].Name, next.Offers[i].Name
		if was != now && was != "" && !hasOffer(next, was) && !hasOffer(before, now) {
			renamed[was] = now
		}
	}
	if len(renamed) == 0 {
		return nil
	}
	for i := range f.Scenarios {
		for _, o := range f.Scenarios[i].Offers {
			if i != place {
				delete(renamed, o.Name)
			}
		}
	}
	var followed []InHand
	for i := range reels {
		if now, ok := renamed[reels[i].Offer]; ok {
			if followed == nil {
				followed = slices.Clone(reels)
			}
			followed[i].Offer = now
		}
	}
	return followed
}

// FreeName is name, or the first of "name (2)", "name (3)" … that no scenario of f has.
func FreeName(f File, name string) string {
	var taken []string
	for _, s := range f.Scenarios {
		taken = append(taken, s.Name)
	}
	return freeName(name, taken)
}

// FreeOfferName is name, or the first of "name (2)", "name (3)" … that no offer of s has.
func FreeOfferName(s *Scenario, name string) string { return freeName(name, offerNames(s)) }

func offerNames(s *Scenario) []string {
	var n []string
	for _, o := range s.Offers {
		n = append(n, o.Name)
	}
	return n
}

// aCopy is the name of a copy, with its number.
var aCopy = regexp.MustCompile(`^(.+) \(([2-9]|[1-9][0-9]{1,4})\)$`)

// freeName is name where it is not taken, else the first of "name (2)", "name (3)" … that
// is not. A copy of "name (2)" is counted on from there, and a name as long as a name may
// be gives way to its number.
func freeName(name string, taken []string) string {
	used := map[string]bool{}
	for _, t := range taken {
		used[t] = true
	}
	if !used[name] {
		return name
	}
	if m := aCopy.FindStringSubmatch(name); m != nil {
		name = m[1]
	}
	for n := 2; ; n++ {
		number := fmt.Sprintf(" (%d)", n)
		letters := []rune(name)
		if free := string(letters[:min(len(letters), LongestLine-len(number))]) + number; !used[free] {
			return free
		}
	}
}

// FollowLengths names each reel of next anew that was named in before by a length which it
// has no longer: "100 ft reel" of 50 ft becomes "50 ft reel".
func FollowLengths(before, next *Scenario) {
	if len(before.Offers) != len(next.Offers) {
		return
	}
	for i := range next.Offers {
		was, now := before.Offers[i].Reel, next.Offers[i].Reel
		if was == nil || now == nil || was.Length.Equal(now.Length) && was.LengthUnit == now.LengthUnit {
			continue
		}
		others := slices.Delete(offerNames(next), i, i+1)
		name := freeName(withLength(next.Offers[i].Name, was, now), others)
		if len([]rune(name)) <= LongestLine {
			RenameOffer(next, i, name)
		}
	}
}

// aLength is a length within a name: its number, the gap, its unit.
var aLength = regexp.MustCompile(`(?i)\b([0-9]+(?:[.,][0-9]+)?)([\s\x{00a0}\x{202f}-]*)(ft|feet|foot|m|metres|metre|meters|meter)\b`)

// withLength is a name with a reel's new length in the place of the old one, as it was
// before where that does not stand in it.
func withLength(name string, was, now *Reel) string {
	for _, at := range aLength.FindAllStringSubmatchIndex(name, -1) {
		number, gap, unit := name[at[2]:at[3]], name[at[4]:at[5]], name[at[6]:at[7]]
		length, err := decimal.NewFromString(strings.Replace(number, ",", ".", 1))
		if err != nil || !length.Equal(was.Length) || unitNamed(unit) != was.LengthUnit {
			continue
		}
		if now.LengthUnit != was.LengthUnit {
			unit = string(now.LengthUnit)
		}
		number = now.Length.String()
		if strings.Contains(name[at[2]:at[3]], ",") {
			number = strings.Replace(number, ".", ",", 1)
		}
		return name[:at[0]] + number + gap + unit + name[at[1]:]
	}
	return name
}

// unitNamed is the unit that a word of a name means.
func unitNamed(word string) LengthUnit {
	if strings.HasPrefix(strings.ToLower(word), "m") {
		return Metres
	}
	return Feet
}
