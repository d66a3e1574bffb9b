using System.Globalization;
using Pawl.Reports.Drawing;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Scriban.Runtime;
using static Pawl.Reports.Markdown.MarkdownText;

namespace Pawl.Reports.Sheets;

/// <summary>What the templates of the sheets show of a record: texts in Markdown, in the order of the sheet.</summary>
internal sealed partial class SheetModel
{
    private readonly ConformanceRecord _record;
    private readonly Declared _declared;
    private readonly PartOf _partOf;
    private readonly ImmutableArray<Feature> _features;
    private readonly List<Figure> _figures = [];

    public SheetModel(ConformanceRecord record)
    {
        (_record, _declared) = (record, new(record));
        _partOf = new(_declared);
        _features = FeatureList.Of(record);
    }

    /// <summary>What has been drawn so far; each id stands once.</summary>
    public ImmutableArray<Figure> Drawn => [.. _figures];

    /// <summary>Ids of the parts that have something to be made to.</summary>
    public ImmutableArray<string> Parts => [.. _features.Select(static f => f.Part).Distinct(StringComparer.Ordinal)];

    public ScriptObject Head(string title)
    {
        var identity = _record.Identity;
        return Row(
            ("title", Escape(title)),
            ("banner", Banner.Markdown(_record)),
            ("variant", Escape($"{identity.Family} {identity.Variant}")),
            ("description", Escape(identity.Description)),
            ("drawing", Said(identity.Drawing)),
            ("revision", Said(identity.Revision)),
            ("part_number", Said(identity.PartNumber)),
            ("file", Code(identity.File)),
            ("report", Code(_record.Id)),
            ("as_of", _record.AsOf.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
    }

    public ScriptObject Inspection() => new()
    {
        ["count"] = Phrase.Whole(_features.Length),
        ["parts"] = List(Parts, (part, n) =>
        {
            var at = _features.Where(f => f.Part == part).ToList();
            var row = PartHead(part);
            row["features"] = List(at, (feature, i) => FeatureRow(feature, $"{Phrase.Whole(n + 1)}.{Phrase.Whole(i + 1)}"));
            return row;
        }),
    };

    private ScriptObject PartHead(string part)
    {
        var numbers = _record.Parts.FirstOrDefault(p => p.Subject == part);
        return Row(("id", Code(part)), ("drawing", Said(numbers?.Drawing)), ("revision", Said(numbers?.Revision)), ("part_number", Said(numbers?.PartNumber)));
    }

    private static ScriptObject FeatureRow(Feature feature, string number) => Row(
        ("number", number),
        ("title", Escape(feature.Title)),
        ("nominal", feature.Nominal),
        ("least", feature.Least.Length > 0 ? feature.Least : "–"),
        ("greatest", feature.Greatest.Length > 0 ? feature.Greatest : "–"),
        ("unit", Escape(feature.Unit)),
        ("grounds", Escape(feature.Grounds)),
        ("paths", string.Join(", ", feature.Paths.Select(Code))));

    private IEnumerable<SubjectRecord> Subjects(string kind) => _record.Subjects.Where(s => s.Kind == kind);

    private static QuantityRecord? Find(SubjectRecord subject, string name) => subject.Quantities.FirstOrDefault(q => q.Name == name);

    /// <summary>A quantity as a report shows it, as written where it is declared; a dash without one.</summary>
    private static string Shown(SubjectRecord subject, string name) => Find(subject, name) switch
    {
        null => "–",
        { Value.Reasons.IsEmpty: false } => "not evaluated",
        { Origin: OriginWord.Declared, Written: { Length: > 0 } written, Value.IsNumber: true } => Escape(written),
        var quantity => Escape(Figures.Of(quantity.Value)) + (quantity.Origin == OriginWord.Assumed ? " (assumed)" : ""),
    };

    private static string Range(SubjectRecord subject, string name) => Find(subject, name)?.Value is { IsNumber: true } value ? Escape(Figures.Limits(value)) : "–";

    private string Stated(string path) => Said(_declared[path]);

    private static string Said(string? text) => string.IsNullOrWhiteSpace(text) ? "–" : Escape(text);

    private static ScriptArray List<T>(IEnumerable<T> items, Func<T, int, object> show)
    {
        var list = new ScriptArray();
        foreach (var item in items)
            list.Add(show(item, list.Count));
        return list;
    }

    private static ScriptObject Row(params ReadOnlySpan<(string Key, string Text)> cells)
    {
        var row = new ScriptObject();
        foreach (var (key, text) in cells)
            row[key] = text;
        return row;
    }
}
