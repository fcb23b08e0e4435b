package money

import "testing"

func TestEveryCurrencyHasANameOfItsOwn(t *testing.T) {
	seen := map[string]string{}
	for _, code := range Codes() {
		name := Name(code)
		if name == "" {
			t.Error(code, "has no name")
		}
		if other := seen[name]; other != "" {
			t.Errorf("%s and %s are both called %s", code, other, name)
		}
		seen[name] = code
	}
	if len(names) != len(Codes()) {
		t.Errorf("%d names for %d currencies", len(names), len(Codes()))
	}
}
