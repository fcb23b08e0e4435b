package rates

import (
	"archive/zip"
	"bytes"
	"errors"
	"strconv"
)

// unzip is what the one entry of a zip holds. An entry is unpacked no further than
// MaxBytes, whatever it says of its size.
func unzip(data []byte) ([]byte, error) {
	packed, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return nil, fault(FaultPacked, 0, "")
	}
	if n := len(packed.File); n != 1 {
		return nil, fault(FaultEntries, 0, strconv.Itoa(n))
	}
	entry := packed.File[0]
	in, err := entry.Open()
	if err != nil {
		return nil, fault(FaultPacked, 0, entry.Name)
	}
	defer in.Close()
	content, err := atMost(in)
	var large *Fault
	switch {
	case errors.As(err, &large):
		return nil, fault(FaultUnpacks, 0, entry.Name)
	case err != nil:
		return nil, fault(FaultPacked, 0, entry.Name)
	}
	return content, nil
}
