package rates

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"log"
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"
	"time"
)

// bank is a server on this machine that plays the bank's, with a fetcher that trusts it
// and keeps files in a folder of the test's.
func bank(t *testing.T, answer http.HandlerFunc) Fetcher {
	t.Helper()
	server := httptest.NewUnstartedServer(answer)
	server.Config.ErrorLog = log.New(io.Discard, "", 0)
	server.StartTLS()
	t.Cleanup(server.Close)
	return Fetcher{Client: server.Client(), Address: server.URL + "/", Folder: t.TempDir()}
}

func fetch(t *testing.T, f Fetcher) (Fetched, error) {
	t.Helper()
	return f.Fetch(context.Background(), NewestDay)
}

// refuses fetches and wants this fault, and the file that was kept before to stay, to the
// byte.
func refuses(t *testing.T, f Fetcher, code FaultCode, text string) {
	t.Helper()
	before := shared(t, "day.csv")
	kept := filepath.Join(f.Folder, string(NewestDay))
	if err := os.WriteFile(kept, before, 0o644); err != nil {
		t.Fatal(err)
	}
	got, err := fetch(t, f)
	var fault *Fault
	if !errors.As(err, &fault) || fault.Code != code || fault.Text != text {
		t.Errorf("%v, want %s %q", err, code, text)
	}
	if got.Fresh || got.File == nil || got.File.Newest().Date() != may {
		t.Errorf("the last good file is not given: %+v", got)
	}
	if after, err := os.ReadFile(kept); err != nil || !bytes.Equal(before, after) {
		t.Errorf("the file that was kept has changed (%v)", err)
	}
}

func TestAGoodAnswerIsReadAndKept(t *testing.T) {
	data := shared(t, "day.xml")
	asked := ""
	f := bank(t, func(w http.ResponseWriter, r *http.Request) { asked = r.Method + " " + r.URL.String(); w.Write(data) })
	f.Folder = filepath.Join(f.Folder, "not", "there", "yet")
	got, err := fetch(t, f)
	if err != nil || !got.Fresh || got.File.Newest().Date() != may {
		t.Fatalf("%+v, %v", got, err)
	}
	if asked != "GET /eurofxref-daily.xml" {
		t.Errorf("asked %s", asked)
	}
	if k := f.Kept(NewestDay); k == nil || k.Newest().Date() != may {
		t.Error("it was not kept")
	}
	if f.Kept(AllDays) != nil {
		t.Error("a file that was never fetched was kept")
	}
}

func TestAGoodAnswerTakesThePlaceOfTheOneBefore(t *testing.T) {
	day := "2025-05-08"
	f := bank(t, func(w http.ResponseWriter, r *http.Request) { fmt.Fprintf(w, "Date,USD,\n%s,1.1,\n", day) })
	for _, day = range []string{"2025-05-08", "2025-05-09"} {
		got, err := fetch(t, f)
		if err != nil || got.File.Newest().Date().String() != day || f.Kept(NewestDay).Newest().Date().String() != day {
			t.Errorf("%s: %+v, %v", day, got, err)
		}
	}
}

func TestAFileThatCannotBeKeptIsUsedAllTheSame(t *testing.T) {
	data := shared(t, "day.xml")
	f := bank(t, func(w http.ResponseWriter, r *http.Request) { w.Write(data) })
	f.Folder = filepath.Join(f.Folder, "a file")
	if err := os.WriteFile(f.Folder, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	got, err := fetch(t, f)
	var not *NotKept
	if !errors.As(err, &not) || !got.Fresh || got.File == nil {
		t.Errorf("%+v, %v", got, err)
	}
}

func TestASlowAnswer(t *testing.T) {
	release := make(chan struct{})
	defer close(release)
	silent := func(w http.ResponseWriter, r *http.Request) { <-release }
	dripping := func(w http.ResponseWriter, r *http.Request) {
		w.Write([]byte("Date,USD,\n"))
		w.(http.Flusher).Flush()
		<-release
	}
	for _, answer := range []http.HandlerFunc{silent, dripping} {
		f := bank(t, answer)
		f.Wait = 50 * time.Millisecond
		refuses(t, f, FaultSlow, "")
	}
}

func TestWhoeverAskedCanGiveUp(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	release := make(chan struct{})
	defer close(release)
	f := bank(t, func(w http.ResponseWriter, r *http.Request) { cancel(); <-release })
	if _, err := f.Fetch(ctx, NewestDay); !errors.Is(err, context.Canceled) {
		t.Error(err)
	}
}

func TestAnAnswerCutOffHalfWay(t *testing.T) {
	data := shared(t, "day.xml")
	t.Run("of a length that was said", func(t *testing.T) {
		refuses(t, bank(t, func(w http.ResponseWriter, r *http.Request) {
			w.Header().Set("Content-Length", fmt.Sprint(len(data)))
			w.Write(data[:len(data)/2])
		}), FaultBroken, "")
	})
	t.Run("in pieces", func(t *testing.T) {
		refuses(t, bank(t, func(w http.ResponseWriter, r *http.Request) {
			w.Write(data[:len(data)/2])
			w.(http.Flusher).Flush()
			panic(http.ErrAbortHandler)
		}), FaultBroken, "")
	})
	t.Run("by a server that believes it was all", func(t *testing.T) {
		refuses(t, bank(t, func(w http.ResponseWriter, r *http.Request) { w.Write(data[:len(data)/2]) }), FaultXML, "")
	})
}

func TestAHugeAnswer(t *testing.T) {
	t.Run("of a size that is said", func(t *testing.T) {
		refuses(t, bank(t, func(w http.ResponseWriter, r *http.Request) {
			w.Header().Set("Content-Length", fmt.Sprint(MaxBytes+1))
			w.WriteHeader(http.StatusOK)
		}), FaultTooLarge, "")
	})
	t.Run("without end", func(t *testing.T) {
		blank := bytes.Repeat([]byte("\n"), 1<<20)
		refuses(t, bank(t, func(w http.ResponseWriter, r *http.Request) {
			for err := error(nil); err == nil; {
				_, err = w.Write(blank)
			}
		}), FaultTooLarge, "")
	})
}

func TestAnAnswerThatIsNoFileOfRates(t *testing.T) {
	for _, c := range []struct {
		name, body string
		code       FaultCode
		text       string
	}{
		{"a page for an error, as if all were well", "<!doctype html>\n<html><body>We are sorry.</body></html>", FaultDoctype, ""},
		{"not XML", "Rates? Which rates?", FaultHead, "Rates? Which rates?"},
		{"nothing", "", FaultHead, ""},
		{"a zip with two entries", zipped("a", "x", "b", "y"), FaultEntries, "2"},
		{"a zip that unpacks beyond measure", bomb(), FaultUnpacks, "a.csv"},
	} {
		t.Run(c.name, func(t *testing.T) {
			refuses(t, bank(t, func(w http.ResponseWriter, r *http.Request) { w.Write([]byte(c.body)) }), c.code, c.text)
		})
	}
}

func TestAnAnswerThatIsAnError(t *testing.T) {
	refuses(t, bank(t, http.NotFound), FaultStatus, "404 Not Found")
}

func TestRedirects(t *testing.T) {
	data := shared(t, "day.xml")
	var asked atomic.Int32
	hops := func(n int32) http.HandlerFunc {
		return func(w http.ResponseWriter, r *http.Request) {
			if asked.Add(1) > n {
				w.Write(data)
				return
			}
			http.Redirect(w, r, "/elsewhere", http.StatusFound)
		}
	}
	for n := range int32(mostRedirects + 1) {
		asked.Store(0)
		if got, err := fetch(t, bank(t, hops(n))); err != nil || !got.Fresh {
			t.Errorf("%d redirects within the host: %v", n, err)
		}
	}
	asked.Store(0)
	refuses(t, bank(t, hops(mostRedirects+1)), FaultRedirects, "")
	if n := asked.Load(); n != mostRedirects+1 {
		t.Errorf("asked %d times", n)
	}
	asked.Store(0)
	refuses(t, bank(t, hops(1<<30)), FaultRedirects, "")

	stranger := httptest.NewTLSServer(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { t.Error("another host was asked") }))
	defer stranger.Close()
	refuses(t, bank(t, func(w http.ResponseWriter, r *http.Request) { http.Redirect(w, r, stranger.URL, http.StatusFound) }),
		FaultElsewhere, strings.TrimPrefix(stranger.URL, "https://"))
	refuses(t, bank(t, func(w http.ResponseWriter, r *http.Request) {
		http.Redirect(w, r, "http://"+r.Host+"/", http.StatusFound)
	}), FaultPlain, "")
}

func TestWithoutHTTPSNothingIsAsked(t *testing.T) {
	server := httptest.NewServer(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { t.Error("asked") }))
	defer server.Close()
	refuses(t, Fetcher{Address: server.URL + "/", Folder: t.TempDir()}, FaultPlain, "")
}

func TestAServerThatCannotProveWhoItIs(t *testing.T) {
	f := bank(t, func(http.ResponseWriter, *http.Request) { t.Error("asked") })
	f.Client = nil
	refuses(t, f, FaultUntrusted, "")
}

func TestOffline(t *testing.T) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	address := l.Addr().String()
	l.Close() // nobody listens there any more
	refuses(t, Fetcher{Client: &http.Client{Transport: &http.Transport{}}, Address: "https://" + address + "/", Folder: t.TempDir()}, FaultOffline, "")

	nowhere := Fetcher{Client: &http.Client{Transport: &http.Transport{}}, Address: "https://" + address + "/", Folder: t.TempDir()}
	if got, err := fetch(t, nowhere); err == nil || got.File != nil {
		t.Errorf("offline, with nothing kept: %+v, %v", got, err)
	}
}

func TestAKeptFileThatIsSpoiltIsNone(t *testing.T) {
	f := Fetcher{Folder: t.TempDir()}
	if err := os.WriteFile(filepath.Join(f.Folder, string(AllDays)), []byte("PK\x03\x04"), 0o644); err != nil {
		t.Fatal(err)
	}
	if f.Kept(AllDays) != nil {
		t.Error("a spoilt file is given")
	}
}

// The bank's own address, and the cache folder of the user.
func TestWhereAFetcherGoesByItself(t *testing.T) {
	if !strings.HasPrefix(Address, "https://") || !strings.HasSuffix(Address, "/") {
		t.Error(Address)
	}
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder, err := Fetcher{}.folder()
	if cache, none := os.UserCacheDir(); err != nil || none != nil || !strings.HasPrefix(folder, cache) {
		t.Errorf("%s, %v", folder, err)
	}
}
