using System.Globalization;
using System.Xml.Linq;
using Pawl.Reports.Drawing;
using Pawl.Reports.Records;

namespace Pawl.Reports.Tests.Drawing;

/// <summary>Records of parts for figures, and figures read back.</summary>
internal static class DrawnRecord
{
    private static readonly PlaceRecord Place = new() { File = "f.yaml", Line = 1, Column = 1, EndLine = 1, EndColumn = 2 };

    public static ConformanceRecord Of(IEnumerable<SubjectRecord> subjects, params IEnumerable<FindingRecord> findings) =>
        Sample.Record() with { Subjects = [.. subjects], Findings = [.. findings] };

    public static SubjectRecord Part(string kind, string path, params (string Name, ValueRecord Value)[] values) => new()
    {
        Path = path,
        Kind = kind,
        Title = kind,
        Domain = "Parts",
        Place = Place,
        Quantities = [.. values.Select(v => new QuantityRecord
        {
            Name = v.Name, Title = v.Name, Value = v.Value, Origin = OriginWord.Computed, Certainty = CertaintyWord.ClosedForm,
        })],
    };

    public static ValueRecord Value(double nominal, double least, double most, string unit = "") => new() { Nominal = nominal, Min = least, Max = most, Unit = unit };

    public static ValueRecord Value(double nominal, string unit = "") => new() { Nominal = nominal, Unit = unit };

    public static ValueRecord Word(string text) => new() { Text = text };

    public static FindingRecord Finding(
        string rule, string subject, string quantity, ValueRecord value, double? least = null, double? most = null, OutcomeWord outcome = OutcomeWord.Conforms,
        double? margin = 0.1, SeverityWord severity = SeverityWord.Error, string domain = "Parts") => new()
        {
            Rule = rule,
            Subject = subject,
            Domain = domain,
            Title = "title",
            Outcome = outcome,
            Severity = severity,
            Measured = new() { Quantity = $"{subject}.{quantity}", Value = value },
            AtLeast = least is { } low ? new() { Value = Value(low, value.Unit) } : null,
            AtMost = most is { } high ? new() { Value = Value(high, value.Unit) } : null,
            Margin = margin,
            Place = Place,
        };

    public static XElement Root(this Figure figure) => XElement.Parse(figure.Inline());

    public static IReadOnlyList<XElement> Classed(this XElement root, string css) =>
        [.. root.Descendants().Where(e => (e.Attribute("class")?.Value.Split(' ') ?? []).Contains(css))];

    public static double Number(this XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    public static double Length(this XElement line) => Math.Abs(line.Number("x2") - line.Number("x1"));

    public static string Texts(this XElement root) => string.Join("\n", root.Descendants("text").Select(static t => t.Value));

    /// <summary>The numbers of a path, in their order.</summary>
    public static double[] Numbers(this XElement path) =>
        [.. path.Attribute("d")!.Value.Split([' ', 'M', 'L', 'A', 'Z'], StringSplitOptions.RemoveEmptyEntries).Select(static n => double.Parse(n, CultureInfo.InvariantCulture))];
}
