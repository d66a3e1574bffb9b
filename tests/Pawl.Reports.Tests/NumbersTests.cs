using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Pawl.Reports.Markdown;

namespace Pawl.Reports.Tests;

public sealed partial class NumbersTests
{
    [Fact]
    public void Every_number_in_the_markdown_is_in_the_record()
    {
        var record = Sample.Record();
        var numbers = new List<double>();
        var texts = new List<string>();
        using (var document = JsonDocument.Parse(record.ToJson()))
            Collect(document.RootElement, numbers, texts);

        // Margins are shares in the record and percentages in the report.
        numbers.AddRange([.. numbers.Select(n => n * 100)]);
        var counts = record.Coverage;
        numbers.AddRange([counts.Overall.Evaluated, counts.Overall.Applicable]);

        var body = Fixed().Replace(MarkdownReport.Render(record), "");
        foreach (Match match in Number().Matches(body))
        {
            var shown = match.Value.Replace('−', '-');
            var value = double.Parse(shown, CultureInfo.InvariantCulture);
            var half = 0.5 * Math.Pow(10, -Decimals(shown)) * 1.0001;
            Assert.True(
                texts.Any(t => t.Contains(match.Value, StringComparison.Ordinal))
                    || numbers.Any(n => Math.Abs(n - value) <= half || (value != 0 && Math.Abs((n - value) / value) < 0.05 && match.Value.Length < 4)),
                $"{match.Value} is not in the record: …{body[Math.Max(0, match.Index - 60)..Math.Min(body.Length, match.Index + 20)]}");
        }
    }

    private static int Decimals(string shown) => shown.IndexOf('.', StringComparison.Ordinal) is var at and >= 0 ? shown.Length - at - 1 : 0;

    private static void Collect(JsonElement element, List<double> numbers, List<string> texts)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (var member in element.EnumerateObject())
                    Collect(member.Value, numbers, texts);
                break;
            case JsonValueKind.Array:
                foreach (var item in element.EnumerateArray())
                    Collect(item, numbers, texts);
                break;
            case JsonValueKind.Number:
                numbers.Add(element.GetDouble());
                break;
            case JsonValueKind.String:
                texts.Add(element.GetString()!);
                break;
        }
    }

    [GeneratedRegex(@"(?<![\w.#-])[−]?\d+(\.\d+)?(?![\w])")]
    private static partial Regex Number();

    // What the template says itself: the numbered contents, the temperature of inspection, the decision rule, hash names.
    [GeneratedRegex(@"(?m)^\d+\. \[.*$|at 20 °C|0 is on the limit|SHA-256|\(#[^)]*\)")]
    private static partial Regex Fixed();
}
