package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"strconv"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"reelworth/internal/money"
	"reelworth/internal/scenario"
)

func TestWordsForWhatIsNotRead(t *testing.T) {
	for _, c := range []struct {
		locale     money.Locale
		text, want string
	}{
		{"de", "1.234", "“1.234” could mean 1234 or 1,234. Write the one that is meant."},
		{"en", " 12,5 ", "“12,5” is not how numbers are written here. If 12.5 is meant, write 12.5."},
		{"en", "", "Nothing is written. Write a number, such as 1,234.50."},
		{"pt", "abc", "“abc” has no digits. Write a number, such as 1.234,50."},
		{"en", "12,34,567", "The digits of “12,34,567” are not in groups of three. Write 1234567 or 1,234,567."},
		{"en", "4 %", "“4 %” has a percent sign. Leave it out: the unit stands beside the field."},
		{"en", "+4", "“+4” has a plus sign. Leave the plus sign out."},
		{"en", "1e6", "“1e6” has a power of ten or a sum in it. Write the number out in full, such as 1,234.50."},
		{"en", "3 EUR 4", "“3 EUR 4” is more than one number. Write one number, such as 1,234.50."},
		{"en", "4–", "“4–” has a dash that is not a minus in front. Write the number alone, such as 1,234.50."},
		{"en", "EUR 30 USD", "“EUR” and “USD” are two currencies. Leave one of them."},
		{"en", "30 DEM", "DEM is not an ISO 4217 currency in use today. Write the code of one that is, such as EUR."},
		{"en", "30 Taler", "“Taler” is no currency known here. Write the number alone, or with an ISO 4217 code, such as EUR."},
		{"en", "1234567890123", "“1234567890123” is too long. Write at most 12 digits before the decimal sign and 12 after it."},
		{"en", "one hundred and eighteen euros and no more", "“one hundred and eighteen euro…” has no digits. Write a number, such as 1,234.50."},
		{"en", "a\xffb", "“a\ufffdb” has no digits. Write a number, such as 1,234.50."},
	} {
		_, err := c.locale.Read(c.text)
		if err == nil {
			t.Errorf("%s %q is read", c.locale, c.text)
			continue
		}
		why, _ := NotTaken(err)
		same(t, c.text, why, c.want)
	}
}

// Every obstacle that package money knows has words of its own.
func TestEveryObstacleHasWords(t *testing.T) {
	other, _ := unread(&money.Unreadable{Text: "x", Because: money.NoForm})
	for _, name := range valuesOf(t, "../money/unclear.go", "Obstacle") {
		wrong, remedy := unread(&money.Unreadable{Text: "x", Because: money.Obstacle(name), About: []string{"a", "b"}, Example: "1.5"})
		if wrong == other && name != string(money.NoForm) || !strings.HasSuffix(wrong, ".") || !strings.HasSuffix(remedy, ".") {
			t.Errorf("%s: %s %s", name, wrong, remedy)
		}
	}
}

func TestRollsThatCannotBeSpread(t *testing.T) {
	for rolls, want := range map[int64]string{
		-1:    "rolls cannot be fewer than none; write 0 or more",
		13000: "a month would have more than 1,000 rolls; write fewer",
	} {
		_, err := scenario.Shooting{}.Spread(decimal.New(rolls, 0))
		why, remedy := NotTaken(err)
		same(t, "why", why, want)
		same(t, "remedy", remedy, want)
	}
}

// valuesOf are the texts of the constants of a type in a file.
func valuesOf(t *testing.T, path, of string) (values []string) {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	ast.Inspect(file, func(n ast.Node) bool {
		if spec, ok := n.(*ast.ValueSpec); ok {
			if named, ok := spec.Type.(*ast.Ident); ok && named.Name == of {
				text, _ := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
				values = append(values, text)
			}
		}
		return true
	})
	if len(values) < 10 {
		t.Fatalf("only %d of %s in %s", len(values), of, path)
	}
	return values
}
