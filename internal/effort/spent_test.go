package effort

import "testing"

func TestWorkIsCounted(t *testing.T) {
	before, sum := Spent(), 0
	for Spent() == before {
		for i := range 1 << 20 {
			sum += i
		}
	}
	if Spent() < before {
		t.Error("the time spent went back", sum)
	}
}
