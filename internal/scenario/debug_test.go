package scenario

import "reelworth/internal/tomltext"
import "reflect"
import "os"
import "fmt"

func debugUpdate(text string, g File) string {
	r := Inspect([]byte(text))
	out, err := tomltext.Edit(text, treeOf(&r.File, true), treeOf(&g, true))
	again := Inspect([]byte(out))
	os.WriteFile("/tmp/keeper/a.toml", []byte(text), 0o644)
	os.WriteFile("/tmp/keeper/b.toml", []byte(out), 0o644)
	os.WriteFile("/tmp/keeper/c.toml", Write(g), 0o644)
	return fmt.Sprint(err, again.Faults, same(reflect.ValueOf(g), reflect.ValueOf(again.File), "file"))
}
