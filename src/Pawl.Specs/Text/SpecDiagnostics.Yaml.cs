using Pawl.Specs.Yaml;

namespace Pawl.Specs.Text;

/// <summary>Every complaint about what was written, worded once. This part: the text as YAML.</summary>
internal static partial class SpecDiagnostics
{
    private static Diagnostic Error(string code, SourceSpan span, string message, string? hint = null) =>
        new(code, Severity.Error, span, message, hint);

    public static Diagnostic Syntax(SourceSpan span, string problem, string? hint) =>
        Error(DiagnosticCodes.Syntax, span, $"This is not YAML: {problem}", hint);

    public static Diagnostic Tab(SourceSpan span) =>
        Error(DiagnosticCodes.Tab, span, "The line is indented with a tab.", "YAML indents with spaces. Replace each tab by spaces.");

    public static Diagnostic Empty(SourceSpan span) =>
        Error(DiagnosticCodes.Empty, span, "The file is empty.", "Start it with `pawl: 1`.");

    /// <summary>A pipe or a device cannot be told from an empty file without opening it.</summary>
    public static Diagnostic EmptyFile(SourceSpan span) =>
        Error(DiagnosticCodes.Empty, span, "The file is empty, or it is a pipe or a device.", "Name a file that starts with `pawl: 1`.");

    public static Diagnostic SeveralDocuments(SourceSpan span) =>
        Error(DiagnosticCodes.SeveralDocuments, span, "A second document starts here.", "One file holds one document. Remove the `---`, or use a file each.");

    /// <param name="file">The path that messages carry.</param>
    /// <param name="bytes">Its size, or null for a stream that was not read to its end.</param>
    public static Diagnostic TooLarge(string file, long? bytes) =>
        Error(
            DiagnosticCodes.TooLarge, SourceSpan.Whole(file),
            $"The file has {(bytes is { } known ? $"{known / 1_000_000} MB; {YamlReader.MostBytes / 1_000_000} MB are read at most" : $"more than {YamlReader.MostBytes / 1_000_000} MB, the most that is read")}.",
            "A spec has some kilobytes. Is this the right file?");

    public static Diagnostic TooManyNodes(SourceSpan span) =>
        Error(
            DiagnosticCodes.TooLarge, span, $"The file holds more than {YamlReader.MostNodes} values.",
            "A spec has some hundreds. Is this the right file?");

    public static Diagnostic TooDeep(SourceSpan span) =>
        Error(DiagnosticCodes.TooDeep, span, $"Maps and lists are nested deeper than {YamlReader.MostDepth} levels.", "A spec needs fewer than ten.");

    public static Diagnostic BadByte(SourceSpan span, byte found) =>
        Error(
            DiagnosticCodes.Encoding, span, string.Create(Invariant, $"The byte 0x{found:X2} is not UTF-8."),
            "Save the file as UTF-8. Signs such as °, µ and · are often left over from an older encoding.");

    public static Diagnostic OtherEncoding(SourceSpan span, string found) =>
        Error(DiagnosticCodes.Encoding, span, $"The file is written in {found}.", "Save it as UTF-8.");

    public static Diagnostic ControlCharacter(SourceSpan span, char found) =>
        Error(
            DiagnosticCodes.ControlCharacter, span, string.Create(Invariant, $"The invisible character U+{(int)found:X4} stands here."),
            "Delete it. What a reader cannot see does not belong in a spec.");

    public static Diagnostic UnknownAlias(SourceSpan span, string name, string? nearest) =>
        Error(DiagnosticCodes.Alias, span, $"No anchor `&{name}` stands above this alias.", nearest is null ? null : $"Did you mean `*{nearest}`?");

    public static Diagnostic AliasCycle(SourceSpan span, string name) =>
        Error(DiagnosticCodes.Alias, span, $"The alias `*{name}` stands inside what it repeats.", "Write the value out.");

    public static Diagnostic AliasBomb(SourceSpan span, string name) =>
        Error(
            DiagnosticCodes.Alias, span, $"With the alias `*{name}` written out, the file holds more than {YamlReader.MostNodes} values.",
            "Write out what you need, or put what variants share into a base file and `extends` it.");

    public static Diagnostic Tag(SourceSpan span, string tag) =>
        Error(DiagnosticCodes.Tag, span, $"The tag `{Short(tag)}` is not accepted.", "Remove it. A spec is plain text, numbers, lists and maps.");

    public static Diagnostic DuplicateKey(SourceSpan span, string key, SourceSpan first) =>
        Error(
            DiagnosticCodes.DuplicateKey, span, $"The key `{Short(key)}` stands twice in this map; the first is at line {first.Start.Line}, column {first.Start.Column}.",
            "Keep one of them.");

    public static Diagnostic MergeKey(SourceSpan span) =>
        Error(
            DiagnosticCodes.MergeKey, span, "The merge key `<<` is not part of YAML 1.2.",
            "Put what is shared into a base file and name it in `extends`.");

    public static Diagnostic ComplexKey(SourceSpan span, string found) =>
        Error(DiagnosticCodes.ComplexKey, span, $"A key is a word, but {found} stands here.", "Write `key: value`.");

    /// <summary>A text as a message quotes it: one line and not long.</summary>
    private static string Short(string text)
    {
        const int most = 60;
        if (text.Length <= most && text.AsSpan().IndexOfAny('\n', '\r', '`') < 0)
            return text;

        var shown = text.Length <= most ? text : text[..(char.IsHighSurrogate(text[most - 2]) ? most - 2 : most - 1)] + "…";
        return shown.Replace('\n', ' ').Replace('\r', ' ').Replace('`', '´');
    }
}
