using System.Buffers;
using System.Text;
using Pawl.Specs.Schema;

namespace Pawl.Cli.Commands;

/// <summary>Every key that a spec may state as commented YAML, made of what the schema says of each.</summary>
internal static class EverySection
{
    private const string Head = """

        # Everything that a spec may state, section by section. Take the "# " away from what you need, and merge it with what stands above.
        # NAME is yours to choose; `pawl explain joints.NAME.thread` tells more of a key, docs/ what is judged by it.

        """;

    private static readonly SearchValues<char> Marks = SearchValues.Create(":#{}'\"&*!|>%@`");

    private static readonly string[] Left = ["pawl", "extends"];

    public static string Text()
    {
        var text = new StringBuilder(Head.ReplaceLineEndings("\n"));
        foreach (var key in SpecKeys.All)
        {
            var parts = key.Path.Split('.');
            if (Left.Contains(parts[0]))
                continue;
            if (parts.Length == 1)
                text.Append("#\n");
            Line(text, key, parts);
        }

        return text.ToString();
    }

    private static void Line(StringBuilder text, SpecKey key, string[] parts)
    {
        // The first key of an entry of a list bears its mark; the others stand below it.
        var indent = 2 * (parts.Length - 1);
        var isFirst = false;
        for (var i = 1; i < parts.Length; i++)
        {
            if (SpecKeys.All.FirstOrDefault(each => each.Path == string.Join('.', parts[..i])) is { IsList: true } list)
            {
                indent += 2;
                isFirst = i == parts.Length - 1 && list.Below[0] == parts[^1];
            }
        }

        var blanks = new string(' ', isFirst ? indent - 2 : indent);
        var value = key.Example.Length > 0 ? key.Example : key.Words.IsEmpty ? "" : key.Words[0];
        if (key.IsList && key.Holds.Length == 0 && value.Length > 0)
            value = $"[{value}]";
        text.Append("# ").Append(blanks).Append(isFirst ? "- " : "").Append(parts[^1]).Append(value.Length > 0 ? $": {Quoted(value)}" : ":");
        if (key.Description.Length > 0)
            text.Append("   # ").Append(key.Description.ReplaceLineEndings(" "));
        text.Append('\n');
        if (SpecKeys.All.Any(each => each.Path.StartsWith($"{key.Path}.{SpecKey.Name}.", StringComparison.Ordinal)))
            text.Append("# ").Append(' ', indent + 2).Append(SpecKey.Name).Append(":\n");
    }

    // An example with a colon, a bracket or a hash would be something else in YAML.
    private static string Quoted(string value) =>
        value.StartsWith('[') || !value.AsSpan().ContainsAny(Marks) || value.EndsWith('%') ? value : $"'{value.Replace("'", "''", StringComparison.Ordinal)}'";
}
