using System.Text.RegularExpressions;

namespace Pawl.Reports.Tests.Machine;

/// <summary>A workflow command as a runner takes it.</summary>
internal sealed record ReadCommand(string Name, IReadOnlyDictionary<string, string> Properties, string Message);

/// <summary>
/// Reads a line of a log by the public description of workflow commands: after spaces <c>::name key=value,key=value::message</c>, values
/// parted by commas, and %25, %0D, %0A, in values also %3A and %2C, decoded in one pass. Written after that description and not after the writer.
/// </summary>
internal static partial class CommandLineReader
{
    public static ReadCommand? Read(string line)
    {
        var text = line.TrimStart();
        if (!text.StartsWith("::", StringComparison.Ordinal) || text.IndexOf("::", 2, StringComparison.Ordinal) is not (> 2 and var end))
            return null;
        var head = text[2..end];
        var space = head.IndexOf(' ', StringComparison.Ordinal);
        var properties = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var pair in space < 0 ? [] : head[(space + 1)..].Split(',', StringSplitOptions.RemoveEmptyEntries))
        {
            var at = pair.IndexOf('=', StringComparison.Ordinal);
            if (at > 0)
                properties[pair[..at].Trim()] = Decoded(pair[(at + 1)..]);
        }

        return new(space < 0 ? head : head[..space], properties, Decoded(text[(end + 2)..]));
    }

    private static string Decoded(string text) => Code().Replace(text, m => m.Value switch
    {
        "%25" => "%",
        "%0D" => "\r",
        "%0A" => "\n",
        "%3A" => ":",
        _ => ",",
    });

    [GeneratedRegex("%(?:25|0D|0A|3A|2C)")]
    private static partial Regex Code();
}
