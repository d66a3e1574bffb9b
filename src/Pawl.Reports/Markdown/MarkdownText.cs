using System.Text;
using Pawl.Reports.Rendering;

namespace Pawl.Reports.Markdown;

/// <summary>Text of others as Markdown that shows just that text, in a paragraph, a heading or a cell of a table.</summary>
internal static class MarkdownText
{
    /// <summary>The text, escaped. An empty text stays empty.</summary>
    public static string Escape(string text)
    {
        var line = SafeText.Line(text).Trim();
        var escaped = new StringBuilder(line.Length + 8);
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            switch (c)
            {
                case '<':
                    escaped.Append("&lt;");
                    break;
                case '>':
                    escaped.Append("&gt;");
                    break;
                case '&':
                    escaped.Append("&amp;");
                    break;
                case '_' when Between(line, i):
                    // Inside a word an underscore is a letter (CommonMark, emphasis): input_sun stays readable in the source.
                    escaped.Append(c);
                    break;
                case '\\' or '`' or '*' or '_' or '[' or ']' or '|' or '~' or '$' or '@' or '!':
                    escaped.Append('\\').Append(c);
                    break;
                case ':' when i + 2 < line.Length && line[i + 1] == '/' && line[i + 2] == '/':
                case '.' when i >= 3 && line.AsSpan(i - 3, 3).Equals("www", StringComparison.OrdinalIgnoreCase):
                    // Else a bare address would turn into a link.
                    escaped.Append('\\').Append(c);
                    break;
                case '#' or '=' when i == 0:
                case '+' or '-' when i == 0 && EndsMarker(line, i):
                case '.' or ')' when i > 0 && OnlyDigits(line.AsSpan(0, i)) && EndsMarker(line, i):
                    // Only at the start of a line do these begin a heading, a list or an underline.
                    escaped.Append('\\').Append(c);
                    break;
                default:
                    escaped.Append(c);
                    break;
            }
        }

        return escaped.ToString();
    }

    /// <summary>A name of ours or of the spec: as code where it is a plain name, else as escaped text.</summary>
    public static string Code(string name) => IsName(name) ? $"`{name}`" : Escape(name);

    /// <summary>A link to an anchor of the same document. The text must be Markdown already.</summary>
    public static string Link(string markdown, string anchor) => $"[{markdown}](#{anchor})";

    private static bool Between(string text, int at) =>
        at > 0 && at + 1 < text.Length && char.IsLetterOrDigit(text[at - 1]) && char.IsLetterOrDigit(text[at + 1]);

    private static bool EndsMarker(string text, int at) => at + 1 == text.Length || text[at + 1] is ' ' or '-';

    private static bool OnlyDigits(ReadOnlySpan<char> text) => !text.ContainsAnyExceptInRange('0', '9');

    private static bool IsName(string name)
    {
        foreach (var c in name)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('_' or '-' or '.' or '/' or '~' or ':' or '[' or ']'))
                return false;
        }

        return name.Length > 0;
    }
}
