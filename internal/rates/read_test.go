package rates

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"reelworth/internal/exact"
	"reelworth/internal/scenario"
)

// may is the day of the checks: European Central Bank, euro foreign exchange reference rates
// of 9 May 2025.
var may = scenario.Date{Year: 2025, Month: 5, Day: 9}

func shared(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "testdata", "rates", name))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func mustRead(t testing.TB, data string) *File {
	t.Helper()
	f, err := Read([]byte(data))
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func TestTheThreeFormsSayTheSame(t *testing.T) {
	// European Central Bank, reference rates of 9 May 2025.
	want := map[string]string{"EUR": "1", "USD": "1.1252", "GBP": "0.8477", "AUD": "1.7572", "CAD": "1.5658", "JPY": "163.36"}
	for _, name := range []string{"history.csv", "day.csv", "day.xml", "day.zip"} {
		f := mustRead(t, string(shared(t, name)))
		day, ok := f.On(may)
		if !ok || f.Newest().Date() != may {
			t.Fatalf("%s: the newest day is %s", name, f.Newest().Date())
		}
		for currency, rate := range want {
			if got, ok := day.Rate(currency); !ok || got.String() != rate {
				t.Errorf("%s: %s is %s, want %s", name, currency, got, rate)
			}
		}
	}
}

// Cross rates of the same day, as the bank's figures give them.
func TestCrossRatesOfTheDay(t *testing.T) {
	day := mustRead(t, string(shared(t, "day.xml"))).Newest()
	cross := func(one, in string) exact.Fraction {
		rate, ok := day.Cross(one, in)
		if !ok {
			t.Fatalf("no rate of %s in %s", one, in)
		}
		return rate
	}
	if got := exact.Int(100).Mul(cross("USD", "AUD")).Text(2); got != "156.17" {
		t.Errorf("100 USD = %s AUD", got)
	}
	if got := cross("GBP", "AUD").Text(7); got != "2.0729031" {
		t.Errorf("1 GBP = %s AUD", got)
	}
	if got := cross("USD", "JPY").Text(6); got != "145.183079" {
		t.Errorf("1 USD = %s JPY", got)
	}
	if !cross("USD", "AUD").Mul(cross("AUD", "USD")).Equal(exact.Int(1)) {
		t.Error("there and back is not 1")
	}
}

func TestWhatAHistoryHolds(t *testing.T) {
	f := mustRead(t, string(shared(t, "history.csv")))
	if f.Oldest().Date().String() != "2024-02-28" {
		t.Errorf("the oldest day is %s", f.Oldest().Date())
	}
	for _, closed := range []string{"2025-05-10", "2025-05-01", "2025-04-18", "2024-12-25"} {
		d, _ := scenario.ParseDate(closed)
		if _, ok := f.On(d); ok {
			t.Errorf("there are rates of %s, when the bank was closed", closed)
		}
	}
	if f.Has("CYP", 0, f.Len()) || !f.Has("JPY", 0, f.Len()) || !f.Has("EUR", 0, 0) || f.Has("ZAR", 0, f.Len()) {
		t.Error("has a currency it has no value of, or the other way round")
	}
	gap, _ := scenario.ParseDate("2025-04-15") // a Tuesday without a rate of the yen
	day, _ := f.On(gap)
	if _, ok := day.Cross("USD", "JPY"); ok {
		t.Error("a day gives a pair that it has only half of")
	}
	if back, ok := f.WithBoth("USD", "JPY", gap, 7); !ok || back.Date().String() != "2025-04-14" {
		t.Errorf("the last day before with both is %v", back.Date())
	}
	easter, _ := scenario.ParseDate("2025-04-21")
	if back, ok := f.WithBoth("USD", "JPY", easter, 7); !ok || back.Date().String() != "2025-04-17" {
		t.Errorf("before Easter Monday %v", back.Date())
	}
	if _, ok := f.WithBoth("USD", "JPY", may.AddDays(8), 7); ok {
		t.Error("a rate of more than a week before was taken")
	}
	if d, ok := f.WithBoth("USD", "JPY", may.AddDays(7), 7); !ok || d.Date() != may {
		t.Error("a rate of a week before was not taken")
	}
	if d, ok := f.NewestWithBoth("JPY", "EUR"); !ok || d.Date() != may {
		t.Error("the newest day with both is not found")
	}
	if _, ok := f.NewestWithBoth("CYP", "EUR"); ok {
		t.Error("a currency without a value has a newest day")
	}
}

func TestARateIsReadExactly(t *testing.T) {
	for _, text := range []string{"1.10", "0.000001234567890123", "123456789012345678901234567890.5", "99999999999999999", "100000000000000000", "0.1234567890123456"} {
		f := mustRead(t, "Date,USD,\n2025-05-09, "+text+" ,\n")
		rate, _ := f.Newest().Rate("USD")
		if got := rate.Text(40); got != strings.TrimSuffix(text, "0") && got != text {
			t.Errorf("%s was read as %s", text, got)
		}
	}
}

func TestWhatIsTakenThoughUntidy(t *testing.T) {
	for name, data := range map[string]string{
		"a mark of the byte order": "\ufeffDate,USD,\n2025-05-09,1.1,\n",
		"lines that end with CR":   "Date,USD,\r\n2025-05-09,1.1,\r\n",
		"no comma at the end":      "Date,USD\n2025-05-09,1.1\n",
		"no line end at the end":   "Date,USD,\n2025-05-09,1.1,",
		"blank lines":              "\nDate,USD,\n\n2025-05-09,1.1,\n  \n",
		"oldest first":             "Date,USD,\n2025-05-08,1.2,\n2025-05-09,1.1,\n",
		"blanks around every cell": " Date , USD ,\n 2025-05-09 ,\t1.1 , \n",
	} {
		f, err := Read([]byte(data))
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if rate, _ := f.Newest().Rate("USD"); rate.String() != "1.1" {
			t.Errorf("%s: %s", name, rate)
		}
	}
}

func TestRefusalsNameTheLine(t *testing.T) {
	xml := func(inner string) string {
		return "<?xml version=\"1.0\"?>\n<gesmes:Envelope xmlns:gesmes=\"x\">\n<Cube>\n" + inner + "\n</Cube>\n</gesmes:Envelope>\n"
	}
	for _, c := range []struct {
		name, data string
		code       FaultCode
		line       int
		text       string
	}{
		{"nothing", "", FaultHead, 1, ""},
		{"another head", "Day,USD,\n", FaultHead, 1, "Day,USD,"},
		{"a head without currencies", "Date,\n2025-05-09,\n", FaultHead, 1, "Date,"},
		{"a currency twice", "Date,USD,JPY,USD,\n", FaultCurrency, 1, "USD"},
		{"the euro as a column", "Date,EUR,\n", FaultCurrency, 1, "EUR"},
		{"no currency in between", "Date,USD,,JPY,\n", FaultCurrency, 1, ""},
		{"small letters", "Date,usd,\n", FaultCurrency, 1, "usd"},
		{"a head alone", "Date,USD,\n", FaultNoDay, 0, ""},
		{"a date twice", "Date,USD,\n2025-05-09,1.1,\n2025-05-08,1.1,\n2025-05-09,1.1,\n", FaultTwice, 4, "2025-05-09"},
		{"a date twice in two forms", "Date,USD,\n2025-05-09,1.1,\n9 May 2025,1.1,\n", FaultTwice, 3, "2025-05-09"},
		{"no such day", "Date,USD,\n2025-02-30,1.1,\n", FaultDate, 2, "2025-02-30"},
		{"no date", "Date,USD,\nmore,1.1,\n", FaultDate, 2, "more"},
		{"a word for a rate", "Date,USD,\n2025-05-09,1.1,\n2025-05-08,dear,\n", FaultValue, 3, "dear"},
		{"nothing for a rate", "Date,USD,JPY,\n2025-05-09,,1.1,\n", FaultValue, 2, ""},
		{"a rate of nought", "Date,USD,\n2025-05-09,0.000,\n", FaultValue, 2, "0.000"},
		{"a rate below nought", "Date,USD,\n2025-05-09,-1.1,\n", FaultValue, 2, "-1.1"},
		{"a plus sign", "Date,USD,\n2025-05-09,+1.1,\n", FaultValue, 2, "+1.1"},
		{"an exponent", "Date,USD,\n2025-05-09,1e9999,\n", FaultValue, 2, "1e9999"},
		{"two points", "Date,USD,\n2025-05-09,1.1.1,\n", FaultValue, 2, "1.1.1"},
		{"digits without end", "Date,USD,\n2025-05-09," + strings.Repeat("9", 101) + ",\n", FaultValue, 2, strings.Repeat("9", 59) + "…"},
		{"a cell too few", "Date,USD,JPY,\n2025-05-09,1.1,\n", FaultCells, 2, "2025-05-09"},
		{"a cell too many", "Date,USD,\n2025-05-09,1.1,2,\n", FaultCells, 2, "2025-05-09"},

		{"a web page", "<!DOCTYPE html>\n<html></html>", FaultDoctype, 1, ""},
		{"a web page without a type", "<html><body>We are sorry.</body></html>", FaultEnvelope, 1, "html"},
		{"a document type of its own", "<?xml version=\"1.0\"?>\n<!DOCTYPE Envelope [<!ENTITY a \"b\">]>\n<Envelope/>", FaultDoctype, 2, ""},
		{"XML that breaks off", "<Envelope>\n<Cube>\n", FaultXML, 3, ""},
		{"elements that cross", "<Envelope>\n<Cube>\n</Envelope></Cube>", FaultXML, 3, ""},
		{"an endless depth", "<Envelope>" + strings.Repeat("<a>", 40), FaultXML, 1, ""},
		{"an entity", xml("<Cube time='2025-05-09'><Cube currency='&usd;' rate='1'/></Cube>"), FaultXML, 4, ""},
		{"no day in XML", xml(""), FaultNoDay, 0, ""},
		{"a date twice in XML", xml("<Cube time='2025-05-09'/>\n<Cube time='2025-05-09'/>"), FaultTwice, 5, "2025-05-09"},
		{"a currency twice in XML", xml("<Cube time='2025-05-09'>\n<Cube currency='USD' rate='1'/>\n<Cube currency='USD' rate='1'/></Cube>"), FaultCurrency, 6, "USD"},
		{"a word for a rate in XML", xml("<Cube time='2025-05-09'>\n<Cube currency='USD' rate='dear'/></Cube>"), FaultValue, 5, "dear"},
		{"no rate in XML", xml("<Cube time='2025-05-09'>\n<Cube currency='USD'/></Cube>"), FaultValue, 5, ""},
		{"a rate outside a day", xml("<Cube currency='USD' rate='1'/>"), FaultDate, 4, ""},
		{"no such day in XML", xml("<Cube time='2025-13-09'/>"), FaultDate, 4, "2025-13-09"},

		{"a zip with nothing in it", zipped(), FaultEntries, 0, "0"},
		{"a zip with two entries", zipped("a.csv", "Date,USD,\n2025-05-09,1,\n", "b.csv", "Date,USD,\n2025-05-09,1,\n"), FaultEntries, 0, "2"},
		{"a zip with something else", zipped("a.txt", "Dear reader"), FaultHead, 1, "Dear reader"},
		{"a zip that breaks off", zipped("a.csv", strings.Repeat("Date", 50))[:60], FaultPacked, 0, ""},
		{"a zip that claims less than it holds", lying(zipped("a.csv", "Date,USD,\n2025-05-09,1,\n")), FaultPacked, 0, "a.csv"},
		{"a zip that unpacks beyond measure", bomb(), FaultUnpacks, 0, "a.csv"},
		{"too much", "Date,USD,\n" + strings.Repeat("\n", MaxBytes), FaultTooLarge, 0, ""},
	} {
		_, err := Read([]byte(c.data))
		var f *Fault
		if !errors.As(err, &f) {
			t.Errorf("%s: %v", c.name, err)
		} else if f.Code != c.code || f.Line != c.line || f.Text != c.text {
			t.Errorf("%s: %s in line %d, %q; want %s in line %d, %q", c.name, f.Code, f.Line, f.Text, c.code, c.line, c.text)
		}
	}
}

// zipped is a zip of entries, name and content in turn.
func zipped(entries ...string) string {
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for i := 0; i < len(entries); i += 2 {
		e, err := w.Create(entries[i])
		if err == nil {
			_, err = e.Write([]byte(entries[i+1]))
		}
		if err != nil {
			panic(err)
		}
	}
	if err := w.Close(); err != nil {
		panic(err)
	}
	return b.String()
}

// bomb is a small zip whose entry unpacks beyond MaxBytes.
var bomb = sync.OnceValue(func() string { return zipped("a.csv", strings.Repeat("\n", MaxBytes+1)) })

// lying is a zip whose directory says that its entry unpacks to one byte: at offset 24 of
// a central directory header, by the published ZIP format (APPNOTE.TXT 4.3.12).
func lying(z string) string {
	b := []byte(z)
	at := bytes.LastIndex(b, []byte("PK\x01\x02"))
	copy(b[at+24:], []byte{1, 0, 0, 0})
	return string(b)
}

func TestXMLCannotAskForMoreRoomThanItHas(t *testing.T) {
	var b strings.Builder
	b.WriteString("<Envelope>")
	day := scenario.Date{Year: 1900, Month: 1, Day: 1}
	for i := range 6_500 {
		if i == 4*26*26+20*26+17 {
			continue // EUR
		}
		fmt.Fprintf(&b, "<Cube time='%s'><Cube currency='%c%c%c' rate='1'/></Cube>", day.AddDays(i), 'A'+i/676, 'A'+i/26%26, 'A'+i%26)
	}
	b.WriteString("</Envelope>")
	var f *Fault
	if _, err := Read([]byte(b.String())); !errors.As(err, &f) || f.Code != FaultTooLarge {
		t.Error(err)
	}
}

// FuzzRead: whatever the bytes, a file is read or refused; what is read is in order, and
// every rate in it is above 0.
func FuzzRead(f *testing.F) {
	for _, name := range []string{"day.csv", "day.xml", "day.zip"} {
		f.Add(shared(f, name))
	}
	f.Add([]byte("Date,USD,\n2025-05-09,N/A,\n2025-05-08,1.2,"))
	f.Add([]byte("<Envelope><Cube><Cube time='2025-05-09'><Cube currency='USD' rate='1.1'/></Cube></Cube></Envelope>"))
	f.Fuzz(func(t *testing.T, data []byte) { holds(t, data) })
}

// FuzzReadCSV and FuzzReadXML are FuzzRead past what tells the forms apart.
func FuzzReadCSV(f *testing.F) {
	f.Add("USD,JPY,", "2025-05-09, 1.1, 2.2,\n")
	f.Fuzz(func(t *testing.T, head, rows string) { holds(t, []byte("Date,"+head+"\n"+rows)) })
}

func FuzzReadXML(f *testing.F) {
	f.Add("<Cube><Cube time='2025-05-09'><Cube currency='USD' rate='1.1'/></Cube></Cube>")
	f.Fuzz(func(t *testing.T, inner string) { holds(t, []byte("<Envelope>"+inner+"</Envelope>")) })
}

func FuzzReadZip(f *testing.F) {
	f.Add("day.csv", "Date,USD,\n2025-05-09,1.1,\n", 30, byte(1))
	f.Fuzz(func(t *testing.T, name, content string, at int, change byte) {
		if strings.HasSuffix(name, "/") {
			return // a folder holds no rates
		}
		z := []byte(zipped(name, content))
		if at >= 0 {
			z[at%len(z)] ^= change
		}
		holds(t, z)
	})
}

func holds(t *testing.T, data []byte) {
	f, err := Read(data)
	if err != nil {
		var fault *Fault
		if !errors.As(err, &fault) {
			t.Fatalf("%v is no Fault", err)
		}
		return
	}
	for i := range f.Len() {
		day := f.At(i)
		if i > 0 && f.At(i-1).Date().Compare(day.Date()) >= 0 {
			t.Fatalf("%s stands after %s", day.Date(), f.At(i-1).Date())
		}
		for _, c := range day.Currencies() {
			if rate, ok := day.Rate(c); !ok || rate.Sign() <= 0 {
				t.Fatalf("%s of %s is %s", c, day.Date(), rate)
			}
		}
	}
}
