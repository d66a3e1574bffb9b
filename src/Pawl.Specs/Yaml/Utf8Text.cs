using System.Buffers;
using System.Text;
using System.Text.Unicode;
using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <summary>Bytes to text: UTF-8 and nothing else, without characters that a reader cannot see.</summary>
internal static class Utf8Text
{
    // Control characters but tab and line ends, the line ends on which YAML 1.1 and 1.2 disagree (U+0085, U+2028, U+2029), and the
    // marks that turn the direction of writing, by which a text can look other than it is.
    private static readonly SearchValues<char> Invisible = SearchValues.Create(
        "\0\u0001\u0002\u0003\u0004\u0005\u0006\u0007\u0008\u000B\u000C\u000E\u000F\u0010\u0011\u0012\u0013\u0014\u0015\u0016\u0017"
        + "\u0018\u0019\u001A\u001B\u001C\u001D\u001E\u001F\u007F\u0080\u0081\u0082\u0083\u0084\u0085\u0086\u0087\u0088\u0089\u008A"
        + "\u008B\u008C\u008D\u008E\u008F\u0090\u0091\u0092\u0093\u0094\u0095\u0096\u0097\u0098\u0099\u009A\u009B\u009C\u009D\u009E"
        + "\u009F\u2028\u2029\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069\uFEFF\uFFFE\uFFFF");

    /// <summary>The text without its byte-order mark, or null with the reason in <paramref name="diagnostics"/>.</summary>
    public static string? Decode(string file, ReadOnlySpan<byte> bytes, ICollection<Diagnostic> diagnostics)
    {
        if (bytes.Length > YamlReader.MostBytes)
        {
            diagnostics.Add(SpecDiagnostics.TooLarge(file, bytes: null));
            return null;
        }

        if (OtherEncoding(bytes) is { } encoding)
        {
            diagnostics.Add(SpecDiagnostics.OtherEncoding(SourceSpan.Whole(file), encoding));
            return null;
        }

        if (bytes.StartsWith("\uFEFF"u8))
            bytes = bytes[3..];

        if (!Utf8.IsValid(bytes))
        {
            var good = FirstBadByte(bytes);
            diagnostics.Add(SpecDiagnostics.BadByte(At(file, Encoding.UTF8.GetString(bytes[..good])), bytes[good]));
            return null;
        }

        var text = Encoding.UTF8.GetString(bytes);
        var invisible = text.AsSpan().IndexOfAny(Invisible);
        if (invisible >= 0)
        {
            diagnostics.Add(SpecDiagnostics.ControlCharacter(At(file, text.AsSpan(0, invisible)), text[invisible]));
            return null;
        }

        return text;
    }

    private static string? OtherEncoding(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0]) || bytes.StartsWith((ReadOnlySpan<byte>)[0, 0, 0xFE, 0xFF]))
            return "UTF-32";

        return bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ? "UTF-16" : null;
    }

    private static int FirstBadByte(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == OperationStatus.Done)
            at += length;
        return at;
    }

    /// <summary>The place right after a text.</summary>
    private static SourceSpan At(string file, ReadOnlySpan<char> before)
    {
        var line = 1;
        var start = 0;
        for (var i = 0; i < before.Length; i++)
        {
            // A lone carriage return ends a line in YAML as well.
            if (before[i] == '\n' || (before[i] == '\r' && (i + 1 == before.Length || before[i + 1] != '\n')))
            {
                line++;
                start = i + 1;
            }
        }

        var column = before.Length - start + 1;
        return new(file, new(line, column), new(line, column + 1));
    }
}
