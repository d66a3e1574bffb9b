using System.Text.RegularExpressions;

namespace Pawl.Reports.Rendering;

/// <summary>Text on its way into the log of a build service, where some lines are commands.</summary>
/// <remarks>
/// By the public documentation of the services: <c>::name::</c> at the start of a line after any spaces, and <c>##name[</c> or
/// <c>##[</c> anywhere in a line. What is done here keeps a text that a person can still read, or one that a parser reads as the same.
/// </remarks>
public static partial class LogText
{
    /// <summary>One line of plain text: a space parts what would be a command.</summary>
    public static string Line(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var start = line.AsSpan().TrimStart();
        if (start.StartsWith("::", StringComparison.Ordinal))
            line = string.Concat(line.AsSpan(0, line.Length - start.Length), ": :", start[2..]);
        return HasMark(line) ? Mark().Replace(line, "## $1[") : line;
    }

    /// <summary>Many lines of plain text or Markdown.</summary>
    public static string Lines(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Contains("::", StringComparison.Ordinal) || HasMark(text) ? string.Join('\n', text.Split('\n').Select(Line)) : text;
    }

    /// <summary>JSON: the bracket is written as its code, which reads as the same.</summary>
    public static string Json(string json) => Coded(json, "##$1\\u005b");

    /// <summary>XML or HTML: the bracket is written as its code, which reads as the same.</summary>
    public static string Markup(string markup) => Coded(markup, "##$1&#91;");

    /// <summary>Whether a bracket at this place ends the start of a command.</summary>
    public static bool EndsMark(ReadOnlySpan<char> before) => before.TrimEnd(Letters).EndsWith("##", StringComparison.Ordinal);

    private const string Letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private static string Coded(string text, string coded)
    {
        ArgumentNullException.ThrowIfNull(text);
        return HasMark(text) ? Mark().Replace(text, coded) : text;
    }

    private static bool HasMark(string text) => text.Contains("##", StringComparison.Ordinal);

    [GeneratedRegex(@"##([A-Za-z]*)\[", RegexOptions.CultureInvariant)]
    private static partial Regex Mark();
}
