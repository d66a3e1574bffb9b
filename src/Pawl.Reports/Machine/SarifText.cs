using System.Text;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Machine;

/// <summary>Texts as messages of SARIF 2.1.0, where braces are placeholders (§3.11.5) and brackets may be links (§3.11.6).</summary>
internal static class SarifText
{
    /// <summary>Text of others as a plain message: shown as it is, linking nowhere, filling in nothing.</summary>
    public static string Plain(string text)
    {
        var line = SafeText.Line(text);
        if (!line.AsSpan().ContainsAny('{', '}', ']'))
            return line;

        var plain = new StringBuilder(line.Length + 8);
        for (var i = 0; i < line.Length; i++)
        {
            plain.Append(line[i]);
            if (line[i] is '{' or '}')
                plain.Append(line[i]);
            else if (line[i] == ']' && i + 1 < line.Length && line[i + 1] == '(')
                plain.Append(' ');
        }

        return plain.ToString();
    }

    /// <summary>Markdown of ours with escaped texts in it, as a formatted message.</summary>
    public static string Formatted(string markdown) =>
        markdown.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal);
}
