package rates

import (
	"context"
	"crypto/tls"
	"errors"
	"io"
	"net/http"
	"time"
)

// Address is where the European Central Bank publishes its reference rates for everybody
// to take (from memory).
const Address = "https://www.ecb.europa.eu/stats/eurofxref/"

// Publication is one of the files that the bank publishes there, by its name (from memory).
type Publication string

// The publications.
const (
	NewestDay Publication = "eurofxref-daily.xml"
	AllDays   Publication = "eurofxref-hist.zip" // since 1999
)

// The limits of a fetch, beside MaxBytes.
const (
	patience      = 10 * time.Second
	mostRedirects = 3
)

// Fetcher fetches published rates and keeps the last good file of each publication. Its
// zero value fetches from the bank and keeps files in the user's cache folder.
type Fetcher struct {
	Client  *http.Client  // whose transport is used; nil for one of its own
	Address string        // ends in a slash; "" for Address
	Wait    time.Duration // for the whole answer; 0 for 10 seconds
	Folder  string        // of the files kept; "" for the one in the user's cache folder
}

// Fetched is a file and whether it has just been fetched.
type Fetched struct {
	File  *File // nil where there is none, not even an old one
	Fresh bool
}

// Fetch fetches a publication, now, and keeps it. Where that fails, it gives the last good
// one, if any, beside the error. Errors: *Fault; ctx's, when that is done before it is;
// *NotKept, beside a fresh file, when that could not be written.
func (f Fetcher) Fetch(ctx context.Context, p Publication) (Fetched, error) {
	data, err := f.get(ctx, p)
	if err == nil {
		var file *File
		if file, err = Read(data); err == nil {
			return Fetched{file, true}, f.keep(p, data)
		}
	}
	return Fetched{File: f.Kept(p)}, err
}

// get is what the server sends.
func (f Fetcher) get(ctx context.Context, p Publication) ([]byte, error) {
	wait, address := f.Wait, f.Address
	if wait == 0 {
		wait = patience
	}
	if address == "" {
		address = Address
	}
	limited, cancel := context.WithTimeout(ctx, wait)
	defer cancel()
	request, err := http.NewRequestWithContext(limited, http.MethodGet, address+string(p), nil)
	if err != nil || request.URL.Scheme != "https" {
		return nil, fault(FaultPlain, 0, "")
	}
	request.Header.Set("User-Agent", "Reelworth")
	answer, err := f.client(request.URL.Host).Do(request)
	if err != nil {
		return nil, whyNot(ctx, limited, err, FaultOffline)
	}
	defer answer.Body.Close()
	switch {
	case answer.StatusCode != http.StatusOK:
		return nil, fault(FaultStatus, 0, answer.Status)
	case answer.ContentLength > MaxBytes:
		return nil, fault(FaultTooLarge, 0, "")
	}
	data, err := atMost(answer.Body)
	if err != nil {
		return nil, whyNot(ctx, limited, err, FaultBroken)
	}
	return data, nil
}

// client follows redirects only by HTTPS, within the host, and not for ever.
func (f Fetcher) client(host string) *http.Client {
	c := &http.Client{}
	if f.Client != nil {
		c.Transport = f.Client.Transport
	} else {
		c.Transport = &http.Transport{Proxy: http.ProxyFromEnvironment, DisableKeepAlives: true}
	}
	c.CheckRedirect = func(next *http.Request, via []*http.Request) error {
		switch {
		case next.URL.Scheme != "https":
			return fault(FaultPlain, 0, "")
		case next.URL.Host != host:
			return fault(FaultElsewhere, 0, next.URL.Host)
		case len(via) > mostRedirects:
			return fault(FaultRedirects, 0, "")
		}
		return nil
	}
	return c
}

// whyNot is the error of a fetch as a Fault of the kind given, unless it says better, or as
// the error of whoever gave up waiting.
func whyNot(asked, limited context.Context, err error, code FaultCode) error {
	var own *Fault
	switch {
	case asked.Err() != nil:
		return asked.Err()
	case errors.As(err, &own):
		return own
	case limited.Err() != nil:
		return fault(FaultSlow, 0, "")
	case untrusted(err):
		return fault(FaultUntrusted, 0, "")
	case errors.Is(err, io.ErrUnexpectedEOF):
		return fault(FaultBroken, 0, "")
	}
	return fault(code, 0, "")
}

// untrusted says whether the server could not prove who it is.
func untrusted(err error) bool {
	var unproven *tls.CertificateVerificationError
	return errors.As(err, &unproven)
}
