package walls

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// putsUp is how source gives a canvas.Image another picture.
var putsUp = regexp.MustCompile(`(?m)^\s*([\w.]+)\.Image(?:, [\w.]+)* = [^&]`)

// The screen keeps the picture it has of an image until that image itself is refreshed; a
// window in memory draws it anew each time, so that no test of what is seen would tell.
func TestAPictureThatIsReplacedIsRefreshed(t *testing.T) {
	found := 0
	err := filepath.WalkDir("../desk", func(path string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		data, err := os.ReadFile(path)
		for _, m := range putsUp.FindAllSubmatch(data, -1) {
			found++
			if !strings.Contains(string(data), string(m[1])+".Refresh()") {
				t.Errorf("%s: %s gets another picture and is not refreshed", path, m[1])
			}
		}
		return err
	})
	if err != nil || found < 4 {
		t.Errorf("%d places found: %v", found, err)
	}
}
