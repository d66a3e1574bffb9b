namespace Pawl.Cli.Sizing;

/// <summary>What there is to show of one question.</summary>
internal sealed record SizeAnswer
{
    public required SizeList List { get; init; }

    /// <summary>The gland that sizes were sought for.</summary>
    public required ImmutableArray<GlandLine> Gland { get; init; }

    /// <summary>The spec that declares the ring, from the project root; null where options state the gland.</summary>
    public string? Spec { get; init; }

    /// <summary>The name of the ring in the spec.</summary>
    public string? Ring { get; init; }

    /// <summary>The gland with its best size, for a spec; empty where there is none.</summary>
    public string Fragment { get; init; } = "";

    /// <summary>Rules that sizes break, with the number of sizes, the most first.</summary>
    public IEnumerable<(string Reason, string Title, int Count)> Reasons => List.Failing
        .GroupBy(size => (Id: size.FailsBy?.Rule.Id ?? size.WhyNot, Title: size.FailsBy?.Rule.Title ?? ""))
        .Select(group => (group.Key.Id, group.Key.Title, group.Count()))
        .OrderByDescending(group => group.Item3).ThenBy(group => group.Id, StringComparer.Ordinal);
}
