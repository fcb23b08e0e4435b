package workbook

import (
	"image/color"

	"github.com/xuri/excelize/v2"

	"reelworth/internal/exact"
	"reelworth/internal/palette"
	"reelworth/internal/words"
)

// chart is a native chart on the first sheet.
type chart struct {
	at     string // its corner
	form   *excelize.Chart
	series []series
}

// series are references to cells, in the making.
type series struct {
	name, categories, values string
	colour                   string
}

// addCharts adds what a roll costs, part by part, and the cash spent so far.
func (b *book) addCharts(s *sheet, offers []*offer, head int) {
	if len(offers) == 0 {
		return
	}
	first, last := head+1, head+len(offers)
	cost := chart{at: place(compareName, s.next()+1), form: chartForm(excelize.BarStacked, words.SheetCostChart, b.home)}
	for i, part := range words.CostParts() {
		if !anyHas(offers, part) {
			continue
		}
		c := compareParts + i
		cost.series = append(cost.series, series{s.reference(c, head),
			s.area(compareName, first, compareName, last), s.area(c, first, c, last), hex(partColour(part))})
	}
	cost.form.YAxis.ReverseOrder, cost.form.XAxis.ReverseOrder = false, true
	cost.form.Dimension.Height = uint(140 + 40*len(offers))
	spend := chart{at: place(compareSavedRoll-3, s.next()+1), form: chartForm(excelize.Line, words.SheetSpendChart, b.home)}
	for i, o := range offers {
		y := &o.year
		spend.series = append(spend.series, series{s.reference(compareName, first+i),
			b.months.area(monthName, y.first, monthName, y.soFarTo), b.months.area(monthSoFar, y.first, monthSoFar, y.soFarTo), ""})
	}
	b.charts = []chart{cost, spend}
}

func anyHas(offers []*offer, part words.CostPart) bool {
	for _, o := range offers {
		if o.perRoll[part].value.Cmp(exact.Fraction{}) != 0 {
			return true
		}
	}
	return false
}

func chartForm(of excelize.ChartType, title, unit string) *excelize.Chart {
	sameColours := false
	return &excelize.Chart{
		VaryColors: &sameColours,
		Type:       of,
		Title:      []excelize.RichTextRun{{Text: title + ", " + unit}},
		Legend:     excelize.ChartLegend{Position: "bottom"},
		Dimension:  excelize.ChartDimension{Width: 760, Height: 380},
		YAxis:      excelize.ChartAxis{MajorGridLines: true},
	}
}

// partColour is the colour a part of a roll's cost has everywhere.
func partColour(part words.CostPart) color.Color {
	t := palette.Paper
	return map[words.CostPart]color.Color{words.PartFilm: t.Film, words.PartShipping: t.Shipping, words.PartTax: t.Tax, words.PartFees: t.Fees,
		words.PartLoading: t.Loading, words.PartEquipment: t.Equipment, words.PartDeveloping: t.Developing, words.PartTime: t.Time}[part]
}
