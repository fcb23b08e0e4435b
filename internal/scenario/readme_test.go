package scenario

import (
	"os"
	"regexp"
	"testing"
)

// The file shown in the README is the first one most people copy.
func TestTheFileInTheReadmeIsSound(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	block := regexp.MustCompile("(?s)```toml\n(.*?)```").FindSubmatch(readme)
	if block == nil {
		t.Fatal("the README shows no scenario file")
	}
	file, faults := Read(block[1])
	for _, fault := range faults {
		t.Errorf("%+v", fault)
	}
	if len(file.Scenarios) != 1 || len(file.Scenarios[0].Offers) != 2 {
		t.Errorf("it should hold one scenario of two offers: %+v", file.Scenarios)
	}
}
