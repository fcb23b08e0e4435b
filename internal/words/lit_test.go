package words

import "testing"

func TestPartOf(t *testing.T) {
	for key, want := range map[string]CostPart{
		"offer[3].shipping": PartShipping, "offer[1].price": PartFilm, "offer[2].reel.exposures": "", "border.tax_percent": PartTax,
		"border.handling_fee": PartFees, "loading.cassette_price": PartLoading, "loading.equipment[2].price": PartEquipment,
		"developing[2].extra_per_roll": PartDeveloping, "developing[1].equipment[1].resale": PartEquipment,
		"developing[2].minutes_per_roll": PartTime, "loading.hourly_value": PartTime, "rate[1].equals": "", "months": "",
	} {
		if got := PartOf(key); got != want {
			t.Errorf("%s moves %q, want %q", key, got, want)
		}
	}
}
