using Pawl.Reports.Markdown;
using Pawl.Reports.Records;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Sheets;

/// <summary>Whether a sheet may be worked from, said at its top and on each printed page.</summary>
internal static class Banner
{
    /// <summary>Whether the rules let the sheet be released.</summary>
    public static bool IsOpen(ConformanceRecord record) => record.Verdict.Word is not (VerdictWord.Conforms or VerdictWord.ConformsUnderConcession);

    /// <summary>In plain text, with a sign in front.</summary>
    public static string Of(ConformanceRecord record)
    {
        var word = Labels.Of(record.Verdict);
        return IsOpen(record)
            ? $"{Labels.Symbol(record.Verdict)} Not released for manufacture: {word}"
            : $"{Labels.Symbol(record.Verdict)} {char.ToUpperInvariant(word[0])}{word[1..]}; released by the signatures below alone";
    }

    /// <summary>As Markdown, with the statement of the verdict.</summary>
    public static string Markdown(ConformanceRecord record) => $"**{MarkdownText.Escape(Of(record))}.** {MarkdownText.Escape(record.Verdict.Statement)}";
}
