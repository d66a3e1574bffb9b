namespace Pawl.Cli.Sizing;

/// <summary>A dimension or property of the gland that sizes are sought for.</summary>
/// <param name="Key">As a spec names it: <c>bore</c>, <c>oil.hottest</c>.</param>
/// <param name="Text">As a spec writes it.</param>
/// <param name="Basis">Why it is so where nobody stated it; empty: stated.</param>
internal readonly record struct GlandLine(string Key, string Text, string Basis = "")
{
    public bool IsOfOil => Key.StartsWith("oil.", StringComparison.Ordinal);
}
