package main

import (
	"slices"
	"strings"
	"testing"
)

// A package that draws bears the seed, another does not know the flag.
func TestPackagesThatDrawAreToldFromTheOthers(t *testing.T) {
	draw, others, err := drawers()
	if err != nil {
		t.Fatal(err)
	}
	for _, pkg := range []string{"reelworth/internal/scenario", "reelworth/internal/compare"} {
		if !slices.Contains(draw, pkg) || slices.Contains(others, pkg) {
			t.Errorf("%s draws, and is not listed so: %v", pkg, draw)
		}
	}
	if pkg := "reelworth/cmd/dev"; slices.Contains(draw, pkg) || !slices.Contains(others, pkg) {
		t.Errorf("%s does not draw, and is listed so: %v", pkg, draw)
	}
}

func TestARacedPackageThatDrawsBearsTheSeedOnABuildServer(t *testing.T) {
	draw := []string{"reelworth/internal/desk"}
	for _, c := range []struct {
		ci, pkg string
		want    bool
	}{{"true", "./internal/desk", true}, {"true", "./internal/desk/jobs", false}, {"", "./internal/desk", false}} {
		t.Setenv("CI", c.ci)
		if args := (race{pkg: c.pkg}).args(draw); strings.HasSuffix(strings.Join(args, " "), seed) != c.want {
			t.Errorf("CI=%q, %s: %v", c.ci, c.pkg, args)
		}
	}
}
