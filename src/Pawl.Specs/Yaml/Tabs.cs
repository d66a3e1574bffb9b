using Pawl.Specs.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Pawl.Specs.Yaml;

/// <summary>Tabs in front of a line's text, which YAML forbids and editors hide.</summary>
internal static class Tabs
{
    /// <summary>The first tab that indents a line outside literal and folded scalars, or null.</summary>
    public static SourceSpan? InIndentation(string file, string text, bool alsoBlankLines)
    {
        ImmutableArray<(long From, long To)>? blocks = null;
        var (at, line, counted) = (0, 1, 0);
        while (text.IndexOf('\t', at) is >= 0 and var tab)
        {
            var start = tab;
            while (start > 0 && text[start - 1] is ' ' or '\t')
                start--;
            at = tab;
            while (at < text.Length && text[at] is ' ' or '\t')
                at++;

            line += text.AsSpan(counted, start - counted).Count('\n');
            counted = start;

            var isBlank = at == text.Length || text[at] is '\n' or '\r' or '#';
            var indents = (start == 0 || text[start - 1] is '\n' or '\r') && (alsoBlankLines || !isBlank);
            if (indents && !Holds(blocks ??= BlockScalars(text), line))
                return new(file, new(line, tab - start + 1), new(line, at - start + 1));
        }

        return null;
    }

    private static bool Holds(ImmutableArray<(long From, long To)> blocks, int line)
    {
        foreach (var (from, to) in blocks)
        {
            if (from < line && line <= to)
                return true;
        }

        return false;
    }

    private static ImmutableArray<(long From, long To)> BlockScalars(string text)
    {
        var blocks = ImmutableArray.CreateBuilder<(long, long)>();
        try
        {
            var parser = new Parser(new StringReader(text));
            for (var events = 0; events < 3 * YamlReader.MostNodes && parser.MoveNext(); events++)
            {
                if (parser.Current is Scalar { Style: ScalarStyle.Literal or ScalarStyle.Folded } block)
                    blocks.Add((block.Start.Line, block.End.Column > 1 ? block.End.Line : block.End.Line - 1));
            }
        }
        catch (Exception exception) when (TreeBuilder.IsParserFailure(exception))
        {
            // The text breaks off here; the tab that is looked for stands before or at this place.
        }

        return blocks.DrainToImmutable();
    }
}
