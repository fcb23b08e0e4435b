package rates

import "fmt"

// MaxBytes is the size of the largest file that is read, of a zip's entry once unpacked,
// and of what is fetched.
const MaxBytes = 64 << 20

// Fault is why a file is refused, or could not be fetched.
type Fault struct {
	Code FaultCode
	Line int    // in the file, or in the zip's entry, from 1; 0 where it is no line's
	Text string // what stands there, or what it is about, as Code says
}

// FaultCode names a kind of fault.
type FaultCode string

// The faults of a file.
const (
	FaultHead     FaultCode = "head"      // Text: the head, which is not "Date" and currencies
	FaultCurrency FaultCode = "currency"  // Text: a currency that is named twice, or is none
	FaultDate     FaultCode = "date"      // Text: what is no date
	FaultTwice    FaultCode = "twice"     // Text: the date that was there already
	FaultValue    FaultCode = "value"     // Text: what is no positive decimal
	FaultCells    FaultCode = "cells"     // Text: the date of a row with more or fewer cells than the head
	FaultNoDay    FaultCode = "no-day"    // the file is sound and has no day
	FaultTooLarge FaultCode = "too-large" // more than MaxBytes
	FaultEntries  FaultCode = "entries"   // Text: the number of entries of a zip, which is not 1
	FaultPacked   FaultCode = "packed"    // a zip that cannot be unpacked
	FaultUnpacks  FaultCode = "unpacks"   // Text: the name of an entry that unpacks beyond MaxBytes
	FaultDoctype  FaultCode = "doctype"   // XML with a document type
	FaultXML      FaultCode = "xml"       // XML that breaks off or is not well formed
	FaultEnvelope FaultCode = "envelope"  // Text: the outermost element of another kind of XML
)

// The faults of a fetch, beside those of the file that is sent.
const (
	FaultOffline   FaultCode = "offline"   // the server cannot be reached
	FaultSlow      FaultCode = "slow"      // it took too long
	FaultBroken    FaultCode = "broken"    // the answer broke off
	FaultStatus    FaultCode = "status"    // Text: what the server answers in place of the file, "404 Not Found"
	FaultPlain     FaultCode = "plain"     // it would have gone on without HTTPS
	FaultElsewhere FaultCode = "elsewhere" // Text: the other host it was sent to
	FaultRedirects FaultCode = "redirects" // it was sent on too often
	FaultUntrusted FaultCode = "untrusted" // the server could not prove who it is
)

// Error is the fault for a programmer; package words says it to a person.
func (f *Fault) Error() string {
	text := "rates: " + string(f.Code)
	if f.Line > 0 {
		text += fmt.Sprintf(" in line %d", f.Line)
	}
	if f.Text != "" {
		text += fmt.Sprintf(": %q", f.Text)
	}
	return text
}

// mostShown is how much of what stands in a file a fault repeats.
const mostShown = 60

// fault makes a Fault with no more text than is worth showing.
func fault(code FaultCode, line int, text string) *Fault {
	if runes := []rune(text[:min(len(text), 4*mostShown)]); len(runes) > mostShown {
		text = string(runes[:mostShown-1]) + "…"
	}
	return &Fault{Code: code, Line: line, Text: text}
}
