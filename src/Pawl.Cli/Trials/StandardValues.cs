using System.Globalization;
using System.Text.RegularExpressions;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Seals;
using Pawl.Specs;
using Pawl.Specs.Model;
using Pawl.Specs.Schema;

namespace Pawl.Cli.Trials;

/// <summary>What a value may be where it is no number: classes of ISO 286, sizes of O-rings and threads, entries of the catalogue, words.</summary>
internal static partial class StandardValues
{
    private const int FinestGrade = 5, CoarsestGrade = 11;

    // ISO 286-2, classes of the general range; which of them a table has for a size is seen when they are tried.
    private static readonly ImmutableArray<string> Letters = ["c", "d", "e", "f", "g", "h", "js", "k", "m", "n", "p", "r", "s"];

    /// <summary>The values to choose from; none for a number, whose range is searched.</summary>
    public static ImmutableArray<string> Of(SolveRequest request, string? stated, SpecTemplate template, out (string Message, string? Hint) error)
    {
        error = default;
        if (!request.Among.IsEmpty)
        {
            if (request.Classes || request.From is not null)
                error = ("--among lists all that is tried; it goes with neither --classes nor --from.", null);
            else if (Variable.Of($"{request.Key}={string.Join(',', request.Among)}", template, Solver.MostValues, out error) is { } variable)
                return variable.Values;
            return [];
        }

        if (request.Classes)
            return Classes(request, stated, out error);
        if (request.From is not null || (stated is not null && StatedNumber.Of(stated) is not null && !IsName(request.Key)))
            return [];
        return Named(request.Key, template.Original.Catalogue);
    }

    private static bool IsName(string key) => Last(key) is "as568" or "thread";

    private static string Last(string key) => key[(key.LastIndexOf('.') + 1)..];

    private static ImmutableArray<string> Named(string key, Catalogue catalogue)
    {
        var last = Last(key);
        if (last == "as568")
            return [.. ORingTable.All.Select(static ring => ring.Dash)];
        if (last == "thread")
            return [.. ThreadTable.All.Select(static thread => thread.Designation)];
        if (last == "bearing")
            return [.. catalogue.Bearings.Entries.Select(static b => b.Name.Value)];
        if (last == "lubricant")
            return [.. catalogue.Lubricants.Entries.Select(static l => l.Name.Value)];
        if (last == "material" || last.EndsWith("_material", StringComparison.Ordinal))
            return [.. catalogue.Materials.Entries.Select(static m => m.Name.Value)];
        var plain = Index().Replace(key, "");
        return SpecKeys.All.FirstOrDefault(each => !each.Words.IsEmpty && each.IsMeantBy(plain))?.Words ?? [];
    }

    private static ImmutableArray<string> Classes(SolveRequest request, string? stated, out (string Message, string? Hint) error)
    {
        error = default;
        var match = stated is null ? null : Class().Match(stated);
        if (match is not { Success: true })
        {
            error = (
                stated is null ? $"The spec states no value at {request.Key}." : $"{request.Key} states `{stated}`, which has no class of ISO 286.",
                "Write a size with a class, as 59.8 mm js6, or give --among.");
            return [];
        }

        var isBore = char.IsAsciiLetterUpper(match.Groups["letters"].Value[0]);
        return
        [
            .. Enumerable.Range(FinestGrade, CoarsestGrade - FinestGrade + 1).SelectMany(grade => Letters.Select(letters =>
                match.Groups["size"].Value + (isBore ? letters.ToUpperInvariant() : letters) + grade.ToString(CultureInfo.InvariantCulture))),
        ];
    }

    [GeneratedRegex(@"^(?<size>.*\s)(?<letters>[A-Za-z]{1,2})(?<grade>[0-9]{1,2})\s*$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Class();

    [GeneratedRegex(@"\[[^\]]*\]", RegexOptions.CultureInvariant)]
    private static partial Regex Index();
}
