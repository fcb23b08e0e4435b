package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"unicode/utf8"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/money"
	"reelworth/internal/scenario"
	"reelworth/internal/version"
	"reelworth/internal/words"
)

// JSON writes a list with one entry for each comparison. Decimals and money are strings
// in plain notation with at most 20 places, counts are numbers, what there is none of is
// null. Warnings are worded in English with English numbers.
func JSON(w io.Writer, cs []compare.Comparison) error {
	list := make([]jsonComparison, len(cs))
	for i := range cs {
		list[i] = jsonOf(&cs[i])
	}
	return writeJSON(w, list)
}

// writeJSON writes a value indented, with signs as they are; but those that steer a
// terminal, or turn the direction of writing, are escaped.
func writeJSON(w io.Writer, value any) error {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", " ")
	if err := enc.Encode(value); err != nil {
		return err
	}
	_, err := w.Write(steeringEscaped(b.Bytes()))
	return err
}

// steeringEscaped is JSON with its steering signs written as numbers. Such a sign stands
// only within strings there, line ends between them aside.
func steeringEscaped(b []byte) []byte {
	at := bytes.IndexFunc(b, steersJSON)
	if at < 0 {
		return b
	}
	var out bytes.Buffer
	for ; at >= 0; at = bytes.IndexFunc(b, steersJSON) {
		r, size := utf8.DecodeRune(b[at:])
		out.Write(b[:at])
		fmt.Fprintf(&out, "\\u%04x", r)
		b = b[at+size:]
	}
	out.Write(b)
	return out.Bytes()
}

func steersJSON(r rune) bool { return r != '\n' && steers(r) }

// The shapes below are the result's, key by key; a later version adds keys, it never
// renames or removes one.

type jsonComparison struct {
	Scenario string        `json:"scenario"`
	Home     string        `json:"home"`
	ShownIn  string        `json:"shown_in,omitempty"`
	Baseline string        `json:"baseline"`
	Offers   []jsonOffer   `json:"offers"`
	Verdict  jsonVerdict   `json:"verdict"`
	Warnings []jsonWarning `json:"warnings"`
	Version  string        `json:"version"` // of the program that computed it
}

type jsonOffer struct {
	Name string        `json:"name"`
	Kind scenario.Kind `json:"kind"`
	*jsonFigures
	Fault string `json:"fault,omitempty"`
}

// jsonFigures is what an offer without a fault carries.
type jsonFigures struct {
	Order       jsonOrder     `json:"order"`
	Yield       jsonYield     `json:"yield"`
	PerRoll     jsonPerRoll   `json:"per_roll"`
	PerExposure number        `json:"per_exposure"`
	Year        jsonYear      `json:"year"`
	Against     *jsonAgainst  `json:"against_baseline,omitempty"`
	OrderSizes  []jsonSize    `json:"order_sizes,omitempty"`
	CutSizes    []jsonCutSize `json:"cut_sizes,omitempty"`
}

type jsonOrder struct {
	Lines       jsonLines       `json:"lines"`
	SellerLines jsonSellerLines `json:"seller_lines"`
	Charged     number          `json:"charged"`
	Landed      number          `json:"landed"`
}

type jsonLines struct {
	Film      number `json:"film"`
	Shipping  number `json:"shipping"`
	SalesTax  number `json:"sales_tax"`
	CardFee   number `json:"card_fee"`
	Duty      number `json:"duty"`
	ImportTax number `json:"import_tax"`
	Handling  number `json:"handling"`
}

type jsonSellerLines struct {
	Film      number `json:"film"`
	Shipping  number `json:"shipping"`
	SalesTax  number `json:"sales_tax"`
	ImportTax number `json:"import_tax"`
}

type jsonYield struct {
	*jsonCut
	Exposures int    `json:"exposures"`
	Good      number `json:"good"`
	Cassettes int    `json:"cassettes"`
}

// jsonCut is what only a reel's yield carries.
type jsonCut struct {
	Usable    number `json:"usable_length_mm"`
	Roll      number `json:"roll_length_mm"`
	FullRolls int64  `json:"full_rolls"`
	ShortRoll int64  `json:"short_roll_exposures"`
	LeftOver  number `json:"left_over_mm"`
}

type jsonPerRoll struct {
	Film       number `json:"film"`
	Shipping   number `json:"shipping"`
	Tax        number `json:"tax"`
	Fees       number `json:"fees"`
	Loading    number `json:"loading"`
	Equipment  number `json:"equipment"`
	Developing number `json:"developing"`
	Time       number `json:"time"`
	Total      number `json:"total"`
}

type jsonYear struct {
	Cash           []number `json:"cash"`
	Cumulative     []number `json:"cumulative"`
	Orders         []int64  `json:"orders"`
	Total          number   `json:"total"`
	Time           number   `json:"time"`
	FilmLeftRolls  number   `json:"film_left_rolls"`
	FilmLeft       number   `json:"film_left_value"`
	SuppliesLeft   number   `json:"supplies_left_value"`
	EquipmentLeft  number   `json:"equipment_left_value"`
	Cost           number   `json:"year_cost"`
	FilmCost       number   `json:"film_cost"`
	DevelopingCost number   `json:"developing_cost"`
	ThrownAway     number   `json:"thrown_away_rolls"`
}

type jsonAgainst struct {
	SavingPerRoll    number  `json:"saving_per_roll"`
	SavingPercent    *number `json:"saving_percent"`
	SavingCash       number  `json:"saving_cash"`
	Saving           number  `json:"saving"`
	SavingFilm       number  `json:"saving_film"`
	SavingDeveloping number  `json:"saving_developing"`
	EvenMonth        *int    `json:"even_month"`
	PaybackExact     *number `json:"payback_exact"`
	PaybackRolls     *int64  `json:"payback_rolls"`
	RuinedUnits      *number `json:"ruined_units"`
	*jsonChanges
}

type jsonVerdict struct {
	Kind  compare.VerdictKind `json:"kind"`
	Reel  string              `json:"reel,omitempty"`
	Boxed string              `json:"boxed,omitempty"`
	*jsonPair
	Volume  *jsonVolume `json:"volume,omitempty"`
	LeftOut []string    `json:"left_out"`
}

// jsonPair is what a verdict on two offers carries.
type jsonPair struct {
	Saving           number `json:"saving"`
	SavingCash       number `json:"saving_cash"`
	SavingFilm       number `json:"saving_film"`
	SavingDeveloping number `json:"saving_developing"`
	FilmLeft         number `json:"film_left_value"`
	EvenMonth        *int   `json:"even_month"`
}

type jsonWarning struct {
	Code  compare.WarningCode `json:"code"`
	Offer string              `json:"offer"`
	Text  string              `json:"text"`
}

func numbers(fs []exact.Fraction) []number {
	list := make([]number, len(fs))
	for i, f := range fs {
		list[i] = number(f)
	}
	return list
}

func jsonOf(c *compare.Comparison) jsonComparison {
	j := jsonComparison{
		Scenario: c.Scenario.Name,
		Home:     c.Scenario.Home,
		ShownIn:  c.Shown.Currency,
		Baseline: c.Scenario.Baseline,
		Offers:   make([]jsonOffer, len(c.Offers)),
		Verdict:  verdictOf(c),
		Warnings: make([]jsonWarning, len(c.Warnings)),
		Version:  version.String(),
	}
	for i := range c.Offers {
		j.Offers[i] = offerOf(c, i)
	}
	for i, w := range c.Warnings {
		j.Warnings[i] = jsonWarning{w.Code, w.Offer, spaced(words.Warning(w, c, money.English))}
	}
	return j
}

func offerOf(c *compare.Comparison, i int) jsonOffer {
	o := &c.Offers[i]
	j := jsonOffer{Name: o.Name, Kind: o.Kind}
	if o.Fault != nil {
		j.Fault = reason(c, i)
		return j
	}
	j.jsonFigures = &jsonFigures{
		Order:       orderOf(&o.Order),
		Yield:       yieldOf(&o.Yield),
		PerRoll:     perRollOf(&o.PerRoll),
		PerExposure: number(o.PerExposure),
		Year:        yearOf(&o.Year),
		Against:     againstOf(o.Against),
	}
	if ahead := outlookOf(c, i); ahead != nil {
		j.OrderSizes, j.CutSizes = sizesOf(c, ahead), cutsOf(ahead)
		if j.Against != nil {
			j.Against.jsonChanges = changesOf(ahead)
		}
	}
	return j
}

// reason is why the offer at place i is left out.
func reason(c *compare.Comparison, i int) string {
	in := &scenario.Offer{Kind: c.Offers[i].Kind}
	if i < len(c.Scenario.Offers) {
		in = &c.Scenario.Offers[i]
	}
	return spaced(words.Reason(c.Offers[i].Fault, in))
}

func orderOf(o *compare.Order) jsonOrder {
	h, s := &o.Home, &o.Seller
	return jsonOrder{
		Lines: jsonLines{
			number(h.Film), number(h.Shipping), number(h.SalesTax), number(h.CardFee),
			number(h.Duty), number(h.ImportTax), number(h.Handling),
		},
		SellerLines: jsonSellerLines{number(s.Film), number(s.Shipping), number(s.SalesTax), number(s.ImportTax)},
		Charged:     number(o.Charged),
		Landed:      number(o.Landed),
	}
}

func yieldOf(y *compare.Yield) jsonYield {
	j := jsonYield{Exposures: y.Exposures, Good: number(y.Good), Cassettes: y.Cassettes}
	if cut := y.Cut; cut != nil {
		j.jsonCut = &jsonCut{
			number(cut.Usable), number(cut.RollLength), cut.FullRolls, cut.ShortRollExposures, number(cut.LeftOver),
		}
	}
	return j
}

func perRollOf(p *compare.PerRoll) jsonPerRoll {
	return jsonPerRoll{
		number(p.Film), number(p.Shipping), number(p.Tax), number(p.Fees), number(p.Loading),
		number(p.Equipment), number(p.Developing), number(p.Time), number(p.Total),
	}
}

func yearOf(y *compare.Year) jsonYear {
	orders := y.Orders
	if orders == nil {
		orders = []int64{}
	}
	return jsonYear{
		Cash: numbers(y.Cash), Cumulative: numbers(y.Cumulative), Orders: orders,
		Total: number(y.Total), Time: number(y.Time),
		FilmLeftRolls: number(y.FilmLeftRolls), FilmLeft: number(y.FilmLeftValue),
		SuppliesLeft: number(y.SuppliesLeftValue), EquipmentLeft: number(y.EquipmentLeftValue),
		Cost: number(y.Cost), FilmCost: number(y.FilmCost), DevelopingCost: number(y.DevelopingCost),
		ThrownAway: number(y.ThrownAwayRolls),
	}
}

func againstOf(a *compare.Against) *jsonAgainst {
	if a == nil {
		return nil
	}
	return &jsonAgainst{
		SavingPerRoll: number(a.SavingPerRoll), SavingPercent: numberOrNull(a.SavingPercent),
		SavingCash: number(a.SavingCash), Saving: number(a.Saving),
		SavingFilm: number(a.SavingFilm), SavingDeveloping: number(a.SavingDeveloping),
		EvenMonth: monthOrNull(a.EvenMonth), PaybackExact: numberOrNull(a.PaybackExact),
		PaybackRolls: wholeOrNull(a.PaybackRolls), RuinedUnits: numberOrNull(a.RuinedUnits),
	}
}

func verdictOf(c *compare.Comparison) jsonVerdict {
	v := &c.Verdict
	j := jsonVerdict{Kind: v.Kind, Reel: v.Reel, Boxed: v.Boxed, LeftOut: append([]string{}, v.LeftOut...)}
	reel := c.Find(v.Reel)
	if v.Kind == compare.VerdictOneSided || v.Pair == nil || reel == nil {
		return j
	}
	j.jsonPair = &jsonPair{
		Saving: number(v.Pair.Saving), SavingCash: number(v.Pair.SavingCash),
		SavingFilm: number(v.Pair.SavingFilm), SavingDeveloping: number(v.Pair.SavingDeveloping),
		FilmLeft: number(reel.Year.FilmLeftValue), EvenMonth: monthOrNull(v.Pair.EvenMonth),
	}
	j.Volume = volumeOf(c)
	return j
}

func numberOrNull(f *exact.Fraction) *number {
	if f == nil {
		return nil
	}
	n := number(*f)
	return &n
}

func monthOrNull(month int) *int {
	if month == 0 {
		return nil
	}
	return &month
}

// wholeOrNull is a whole number; null as well where it is beyond any use (2⁶³ rolls).
func wholeOrNull(f *exact.Fraction) *int64 {
	if f == nil {
		return nil
	}
	n, ok := f.Int64()
	if !ok {
		return nil
	}
	return &n
}
