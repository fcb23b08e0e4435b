// Package hold keeps the module list complete while packages are being written.
package hold

import (
	_ "fyne.io/fyne/v2/app"
	_ "fyne.io/fyne/v2/test"
	_ "github.com/BurntSushi/toml"
	_ "github.com/bojanz/currency"
	_ "github.com/cockroachdb/apd/v3"
	_ "github.com/natefinch/atomic"
	_ "github.com/rogpeppe/go-internal/testscript"
	_ "github.com/shopspring/decimal"
	_ "github.com/toml-lang/toml-test"
	_ "github.com/xuri/excelize/v2"
	_ "golang.org/x/image/font/sfnt"
	_ "golang.org/x/text/currency"
	_ "golang.org/x/text/language"
	_ "gonum.org/v1/plot"
	_ "gonum.org/v1/plot/cmpimg"
	_ "gonum.org/v1/plot/vg/vgpdf"
	_ "gonum.org/v1/plot/vg/vgsvg"
	_ "pgregory.net/rapid"
)
