package scenario

import (
	"os"
	"regexp"
	"strings"
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

// Every key the program writes has its line in the README's table.
func TestTheReadmeNamesEveryKey(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	key := regexp.MustCompile(`(?m)^\s*([a-z_]+) = `)
	for _, match := range key.FindAllSubmatch(Write(Demo()), -1) {
		if name := string(match[1]); !strings.Contains(string(readme), "`"+name+"`") {
			t.Errorf("the README does not name the key %s", name)
		}
	}
}
