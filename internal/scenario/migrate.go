package scenario

// migrations bring an older file up to date: the function at n turns the tables of
// schema n into those of schema n+1. There is none yet, because 1 is the first. A
// new schema adds its step here and a sample of the old one to testdata.
var migrations = map[int]func(doc map[string]any){}

// migrate takes a file's tables from schema n to the latest, step by step. A key
// that a step renames is located by its table's header.
func migrate(doc map[string]any, n int, steps map[int]func(doc map[string]any)) {
	for ; steps[n] != nil; n++ {
		steps[n](doc)
		doc["schema"] = int64(n + 1)
	}
}
