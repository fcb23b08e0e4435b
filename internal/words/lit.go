package words

import (
	"strings"

	"reelworth/internal/catalogue"
)

// PartOf is the part of a roll's cost that a field of the scenario moves, "" for one
// that moves several or none. The key is as in the file: "offer[3].shipping".
func PartOf(key string) CostPart {
	table, name, _ := strings.Cut(catalogue.Plain(key), ".")
	switch table {
	case "border":
		if name == "handling_fee" {
			return PartFees
		}
		return PartTax
	case "developing":
		if strings.HasPrefix(name, "equipment.") {
			return PartEquipment
		}
		if name == "minutes_per_roll" {
			return PartTime
		}
		return PartDeveloping
	case "loading":
		switch {
		case strings.HasPrefix(name, "equipment."):
			return PartEquipment
		case strings.HasPrefix(name, "minutes_"), name == "hourly_value":
			return PartTime
		}
		return PartLoading
	case "offer":
		return offerParts[name]
	}
	return ""
}

var offerParts = map[string]CostPart{
	"price": PartFilm, "discount_percent": PartFilm,
	"shipping": PartShipping, "shipping_each_extra": PartShipping, "free_shipping_from": PartShipping,
	"sales_tax_percent": PartTax, "sales_tax_on_shipping": PartTax, "import": PartTax,
	"card_fee_percent": PartFees,
	"developing":       PartDeveloping,
}
