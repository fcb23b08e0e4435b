package figure

import (
	"image"
	"sync"
)

// Shelf keeps the pixels of pictures that nothing shows any more, to draw others on. A
// picture has megabytes of them, and each key in the window draws two. The zero Shelf is
// empty; goroutines may share one.
type Shelf struct {
	mu    sync.Mutex
	lying []*image.RGBA
}

// most is how many pictures lie on a shelf: those of a page in sight. While one set is up
// and the next is drawn, more would only lie there.
const most = 2

// Give lays a picture down. Nothing may show it any more.
func (s *Shelf) Give(picture *image.RGBA) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if len(s.lying) == most {
		s.lying = append(s.lying[:0], s.lying[1:]...)
	}
	s.lying = append(s.lying, picture)
}

// Clear lets go of all that lies there.
func (s *Shelf) Clear() {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.lying = nil
}

// Pixels is how many lie there.
func (s *Shelf) Pixels() (n int) {
	s.mu.Lock()
	defer s.mu.Unlock()
	for _, p := range s.lying {
		n += cap(p.Pix) / 4
	}
	return n
}

// take is a picture of a size to draw on, with whatever is on it; of pixels that lie here
// where they are enough and not far too many.
func (s *Shelf) take(w, h int) *image.RGBA {
	need := 4 * w * h
	s.mu.Lock()
	defer s.mu.Unlock()
	for i, p := range s.lying {
		if have := cap(p.Pix); need <= have && have <= 2*need {
			s.lying = append(s.lying[:i], s.lying[i+1:]...)
			return &image.RGBA{Pix: p.Pix[:need], Stride: 4 * w, Rect: image.Rect(0, 0, w, h)}
		}
	}
	return image.NewRGBA(image.Rect(0, 0, w, h))
}
