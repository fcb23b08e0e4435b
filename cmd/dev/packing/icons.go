package packing

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
)

type icon struct {
	size int
	data []byte
}

// shrunk is a PNG of 512 × 512 with its halves down to 32.
func shrunk(data []byte) ([]icon, error) {
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	icons := []icon{{img.Bounds().Dx(), data}}
	for img.Bounds().Dx() > 32 {
		img = half(img)
		var b bytes.Buffer
		if err := png.Encode(&b, img); err != nil {
			return nil, err
		}
		icons = append(icons, icon{img.Bounds().Dx(), b.Bytes()})
	}
	return icons, nil
}

// half is an image half as wide and high, each pixel the mean of four.
func half(img image.Image) image.Image {
	b := img.Bounds()
	out := image.NewRGBA(image.Rect(0, 0, b.Dx()/2, b.Dy()/2))
	for y := range b.Dy() / 2 {
		for x := range b.Dx() / 2 {
			var sum [4]uint32
			for k := range 4 {
				r, g, bl, a := img.At(b.Min.X+2*x+k%2, b.Min.Y+2*y+k/2).RGBA()
				sum[0], sum[1], sum[2], sum[3] = sum[0]+r, sum[1]+g, sum[2]+bl, sum[3]+a
			}
			mean := func(i int) uint8 { return uint8(sum[i] / 4 >> 8) }
			out.SetRGBA(x, y, color.RGBA{R: mean(0), G: mean(1), B: mean(2), A: mean(3)})
		}
	}
	return out
}
