package compare_test

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"testing"

	"github.com/xuri/excelize/v2"

	"reelworth/internal/compare"
	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// spreadsheet is a sheet of named rows with live formulas. A formula names other rows
// in braces.
type spreadsheet struct {
	file *excelize.File
	rows map[string]int
}

var rowName = regexp.MustCompile(`\{[^}]*\}`)

func (s *spreadsheet) row(t *testing.T, name string) string {
	n, there := s.rows[name]
	if !there {
		n = len(s.rows) + 1
		s.rows[name] = n
		if err := s.file.SetCellValue("Sheet1", fmt.Sprintf("A%d", n), name); err != nil {
			t.Fatal(err)
		}
	}
	return fmt.Sprintf("B%d", n)
}

// put fills a row with a number, or with a formula in which rows are named.
func (s *spreadsheet) put(t *testing.T, name string, value any) {
	t.Helper()
	cell := s.row(t, name)
	var err error
	switch v := value.(type) {
	case scenario.Decimal:
		err = s.file.SetCellValue("Sheet1", cell, v.InexactFloat64())
	case int:
		err = s.file.SetCellValue("Sheet1", cell, v)
	case string:
		err = s.file.SetCellFormula("Sheet1", cell, "="+rowName.ReplaceAllStringFunc(v, func(name string) string {
			name = name[1 : len(name)-1]
			if _, there := s.rows[name]; !there {
				t.Fatalf("the formula %s names the row %q, which is not there", v, name)
			}
			return s.row(t, name)
		}))
	default:
		t.Fatalf("%s: a %T fits no cell", name, value)
	}
	if err != nil {
		t.Fatal(err)
	}
}

// value recomputes a row.
func (s *spreadsheet) value(t *testing.T, name string) float64 {
	t.Helper()
	text, err := s.file.CalcCellValue("Sheet1", s.row(t, name), excelize.Options{RawCellValue: true})
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return v
}

// The worked example's reel, rebuilt as somebody would with a spreadsheet and computed
// by one (excelize), gives the engine's landed lines, yield and cost per roll.
func TestSpreadsheetAgrees(t *testing.T) {
	s := quaysideByHand()
	o := s.Offers[2]
	comparison := compare.Compare(s, nil, scenario.Date{})
	got := comparison.Find(o.Name)
	if got == nil {
		t.Fatal("the engine left the reel out")
	}
	sheet := reelSpreadsheet(t, s, o)
	h, p, y := got.Order.Home, got.PerRoll, got.Yield
	for name, engine := range map[string]exact.Fraction{
		"film landed": h.Film, "shipping landed": h.Shipping, "card fee": h.CardFee, "duty": h.Duty, "tax": h.ImportTax,
		"handling": h.Handling, "charged": got.Order.Charged, "landed": got.Order.Landed,
		"film at the seller": got.Order.Seller.Film, "shipping at the seller": got.Order.Seller.Shipping,
		"usable": y.Cut.Usable, "roll length": y.Cut.RollLength, "cassettes": exact.Int(int64(y.Cassettes)), "good": y.Good,
		"film a roll": p.Film, "shipping a roll": p.Shipping, "tax a roll": p.Tax, "fees a roll": p.Fees, "loading a roll": p.Loading,
		"equipment a roll": p.Equipment, "developing a roll": p.Developing, "time a roll": p.Time, "total a roll": p.Total,
		"an exposure": got.PerExposure,
	} {
		cell := sheet.value(t, name)
		if math.Abs(cell-engine.Float()) > 1e-11*math.Max(1, math.Abs(cell)) {
			t.Errorf("%s: engine %s, spreadsheet %v", name, engine, cell)
		}
	}
}

// The spreadsheet is alive: another price gives other figures, the engine's again,
// here with time valued and film that ages before all of it is shot.
func TestSpreadsheetFollowsThePrice(t *testing.T) {
	s := quaysideByHand()
	s.Loading.HourlyValue = dec("9")
	o := &s.Offers[2]
	o.KeepsMonths = set("4")
	sheet := reelSpreadsheet(t, s, *o)
	for _, price := range []string{"59.90", "231.07", "245.00"} {
		o.Price = dec(price)
		comparison := compare.Compare(s, nil, scenario.Date{})
		got := comparison.Find(o.Name)
		sheet.put(t, "price", o.Price)
		for name, engine := range map[string]exact.Fraction{"landed": got.Order.Landed, "duty": got.Order.Home.Duty, "total a roll": got.PerRoll.Total} {
			if cell := sheet.value(t, name); math.Abs(cell-engine.Float()) > 1e-11*math.Max(1, cell) {
				t.Errorf("%s at %s: engine %s, spreadsheet %v", name, price, engine, cell)
			}
		}
	}
}

func reelSpreadsheet(t *testing.T, s scenario.Scenario, o scenario.Offer) *spreadsheet {
	sheet := &spreadsheet{excelize.NewFile(), map[string]int{}}
	t.Cleanup(func() { _ = sheet.file.Close() })
	d := refProcess(s, o)
	var rolls scenario.Decimal
	for _, month := range s.Shooting.RollsPerMonth {
		rolls = rolls.Add(month)
	}
	loader, bag, tank := s.Loading.Equipment[0], s.Loading.Equipment[1], d.Equipment[0]
	for _, row := range []struct {
		name  string
		value any
	}{
		// What is typed in.
		{"price", o.Price}, {"units", o.Units}, {"discount", o.DiscountPercent}, {"shipping", o.Shipping},
		{"shipping each extra", o.ShippingEachExtra}, {"card fee percent", o.CardFeePercent}, {"keeps", o.KeepsMonths.Decimal},
		{"euros for a dollar", s.Rates[0].Equals},
		{"duty percent", s.Border.DutyPercent}, {"duty free", s.Border.DutyFreeUpTo},
		{"tax percent", s.Border.TaxPercent}, {"tax free", s.Border.TaxFreeUpTo}, {"handling fee", s.Border.HandlingFee},
		{"feet", o.Reel.Length}, {"exposures", o.Reel.Exposures}, {"leader", o.Reel.LeaderMM}, {"trailer", o.Reel.TrailerMM},
		{"fogged", o.Reel.FoggedMM}, {"start waste", o.Reel.StartWasteMM}, {"end waste", o.Reel.EndWasteMM},
		{"test exposures", o.Reel.TestExposures}, {"short roll from", o.Reel.ShortRollFrom}, {"spoiled percent", o.Reel.SpoiledPercent},
		{"cassette price", s.Loading.CassettePrice}, {"cassette loads", s.Loading.CassetteLoads}, {"consumables", s.Loading.ConsumablesPerRoll},
		{"minutes a reel", s.Loading.MinutesPerReel}, {"minutes loading", s.Loading.MinutesPerRoll}, {"hourly value", s.Loading.HourlyValue},
		{"loader price", loader.Price}, {"loader resale", loader.Resale}, {"loader lasts", loader.LastsRolls},
		{"bag price", bag.Price}, {"bag resale", bag.Resale}, {"bag lasts", bag.LastsRolls},
		{"tank price", tank.Price}, {"tank resale", tank.Resale}, {"tank lasts", tank.LastsRolls},
		{"chemistry price", d.ChemistryPrice}, {"chemistry rolls", d.ChemistryRolls}, {"chemistry keeps", d.ChemistryKeepsMonth.Decimal},
		{"extra a roll", d.ExtraPerRoll}, {"minutes developing", d.MinutesPerRoll},
		{"standard roll", s.RollExposures}, {"rolls a year", rolls},
		{"demand a month", "{rolls a year}/12*{standard roll}"},
		// What the reel yields.
		{"frame", "8*4.74"},
		{"ends", "{leader}+{trailer}+{fogged}"},
		{"roll length", "{ends}+{exposures}*{frame}"},
		{"usable", "{feet}*304.8-{start waste}-{end waste}-{test exposures}*{frame}"},
		{"full rolls", "INT({usable}/{roll length})"},
		{"left", "{usable}-{full rolls}*{roll length}"},
		{"short roll fits", "MIN({exposures}-1,MAX(0,INT(({left}-{ends})/{frame})))"},
		{"short roll", "IF({short roll fits}>={short roll from},{short roll fits},0)"},
		{"cassettes", "{full rolls}+IF({short roll}>0,1,0)"},
		{"good", "({full rolls}*{exposures}+{short roll})*(1-{spoiled percent}/100)"},
		{"std", "{good}/{standard roll}"},
		// What an order costs.
		{"film at the seller", "ROUND({units}*{price}*(1-{discount}/100),2)"},
		{"shipping at the seller", "ROUND({shipping}+({units}-1)*{shipping each extra},2)"},
		{"charged", "ROUND(({film at the seller}+{shipping at the seller})*{euros for a dollar},2)"},
		{"shipping landed", "ROUND({shipping at the seller}*{euros for a dollar},2)"},
		{"film landed", "{charged}-{shipping landed}"},
		{"card fee", "ROUND({card fee percent}/100*{charged},2)"},
		{"duty", "IF({film landed}>{duty free},ROUND({duty percent}/100*({film landed}+{shipping landed}),2),0)"},
		{"tax", "IF({film landed}>{tax free},ROUND({tax percent}/100*({film landed}+{shipping landed}+{duty}),2),0)"},
		{"handling", "IF({duty}+{tax}>0,ROUND({handling fee},2),0)"},
		{"landed", "{charged}+{card fee}+{duty}+{tax}+{handling}"},
		// What a roll costs.
		{"used", "MIN(1,{keeps}*{demand a month}/({units}*{good}))"},
		{"film a roll", "{film landed}/{units}/{used}/{std}"},
		{"shipping a roll", "{shipping landed}/{units}/{used}/{std}"},
		{"tax a roll", "({duty}+{tax})/{units}/{used}/{std}"},
		{"fees a roll", "({card fee}+{handling})/{units}/{used}/{std}"},
		{"loading a roll", "{cassettes}*({cassette price}/{cassette loads}+{consumables})/{std}"},
		{"wear", "({loader price}-{loader resale})/{loader lasts}+({bag price}-{bag resale})/{bag lasts}+({tank price}-{tank resale})/{tank lasts}"},
		{"equipment a roll", "{cassettes}*{wear}/{std}"},
		{"effective rolls", "MIN({chemistry rolls},MAX(1,{chemistry keeps}*{demand a month}*{cassettes}/{good}))"},
		{"developing a roll", "{cassettes}*({chemistry price}/{effective rolls}+{extra a roll})/{std}"},
		{"minutes", "{minutes a reel}/{used}+{cassettes}*({minutes loading}+{minutes developing})"},
		{"time a roll", "{hourly value}/60*{minutes}/{std}"},
		{"total a roll", "SUM({film a roll},{shipping a roll},{tax a roll},{fees a roll},{loading a roll},{equipment a roll},{developing a roll},{time a roll})"},
		{"an exposure", "{total a roll}/{standard roll}"},
	} {
		sheet.put(t, row.name, row.value)
	}
	return sheet
}
