using System.Text;
using Pawl.Reports.Records;

namespace Pawl.Reports.Drawing;

/// <summary>The figures of a report, in the order in which they stand.</summary>
internal static class FigureList
{
    private static readonly ImmutableArray<Func<ConformanceRecord, IEnumerable<Figure>>> Kinds =
    [
        MarginBars.Of,
        TrainSchematic.Of,
        TrainView.Of,
        PowerFlow.Of,
        MeshCloseUp.Of,
        ORingSection.Of,
        JointDiagram.Of,
        BoltPattern.Of,
        FitZones.Of,
        StackWaterfall.Of,
        RuleBars.Of,
    ];

    /// <summary>All that can be drawn; each id stands once.</summary>
    public static ImmutableArray<Figure> Of(ConformanceRecord record)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        HashSet<string> taken = new(StringComparer.Ordinal);
        foreach (var figure in Kinds.SelectMany(kind => kind(record)))
        {
            var plain = Plain(figure.Id);
            var id = plain;
            for (var i = 2; !taken.Add(id); i++)
                id = $"{plain}-{Phrase.Whole(i)}";
            figures.Add(figure with { Id = id });
        }

        return figures.DrainToImmutable();
    }

    /// <summary>A name that every file system takes, whatever the spec calls its parts.</summary>
    private static string Plain(string id)
    {
        const int Longest = 80;
        var plain = new StringBuilder(id.Length);
        foreach (var c in id.AsSpan(0, Math.Min(id.Length, Longest)))
            plain.Append(char.IsAsciiLetterOrDigit(c) || c is '.' or '-' ? char.ToLowerInvariant(c) : '-');
        return plain.ToString().TrimEnd('.');
    }
}
