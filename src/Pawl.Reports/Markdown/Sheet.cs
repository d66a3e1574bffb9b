using Pawl.Reports.Records;
using Pawl.Reports.Rendering;
using Scriban.Runtime;

namespace Pawl.Reports.Markdown;

/// <summary>Subjects of one kind side by side: a row for each quantity, a column for each subject, few enough for a page.</summary>
internal static class Sheet
{
    private const int MostColumns = 4;

    public static ScriptArray Of(List<SubjectRecord> subjects, Anchors anchors, Markup markup)
    {
        var sheets = new ScriptArray();
        for (var from = 0; from < subjects.Count; from += MostColumns)
            sheets.Add(One(subjects.GetRange(from, Math.Min(MostColumns, subjects.Count - from)), anchors, markup));
        return sheets;
    }

    private static ScriptObject One(List<SubjectRecord> subjects, Anchors anchors, Markup markup)
    {
        var heads = new ScriptArray();
        foreach (var subject in subjects)
            heads.Add(markup.Code(subject.Path));

        var rows = new ScriptArray();
        foreach (var (name, label) in Names(subjects, markup))
        {
            var cells = new ScriptArray();
            foreach (var subject in subjects)
                cells.Add(Cell(subject, name, anchors, markup));
            rows.Add(new ScriptObject { ["name"] = label, ["cells"] = cells });
        }

        return new() { ["heads"] = heads, ["rows"] = rows };
    }

    private static List<(string Name, string Label)> Names(List<SubjectRecord> subjects, Markup markup)
    {
        List<(string Name, string Label)> names = [];
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var subject in subjects)
        {
            foreach (var quantity in subject.Quantities)
            {
                if (seen.Add(quantity.Name))
                    names.Add((quantity.Name, markup.Escape(Titled(quantity))));
            }
        }

        return names;
    }

    public static string Titled(QuantityRecord quantity) =>
        quantity.Symbol.Length == 0 ? quantity.Title : $"{quantity.Title} {quantity.Symbol}";

    private static string Cell(SubjectRecord subject, string name, Anchors anchors, Markup markup)
    {
        foreach (var quantity in subject.Quantities)
        {
            if (quantity.Name == name)
                return markup.Link(markup.Escape(Figures.Of(quantity.Value)), anchors.Quantity($"{subject.Path}.{name}"));
        }

        return "–";
    }
}
