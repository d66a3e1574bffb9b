using Pawl.Quantities;
using Pawl.Specs.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Pawl.Specs.Yaml;

/// <summary>Builds the tree of one document from the parser's events.</summary>
/// <remarks>Nothing is constructed but text, lists and maps: a tag can ask for no type, an alias can repeat nothing without end.</remarks>
internal sealed class TreeBuilder(string file, string text, ICollection<Diagnostic> diagnostics)
{
    // Names that an unknown one is compared with: a hundred thousand of each would take for ever.
    private const int MostCompared = 200;

    private readonly Scanner _scanner = new(new StringReader(text));
    private readonly Stack<SourceSpan> _openFlows = new();
    private readonly Dictionary<string, Built?> _anchors = new(StringComparer.Ordinal);
    private Parser _parser = null!;
    private int _nodes;

    // Set when what was read cannot stand for what was written: more complaints would only follow from the first.
    private bool _broken;
    private bool _stopped;

    /// <summary>A node, and how large and how high it is with aliases written out.</summary>
    private readonly record struct Built(YamlNode Node, int Count, int Height);

    /// <summary>The root, or null.</summary>
    public YamlNode? Build()
    {
        if (Tabs.InIndentation(file, text, alsoBlankLines: false) is { } tab)
        {
            diagnostics.Add(SpecDiagnostics.Tab(tab));
            return null;
        }

        try
        {
            return Document();
        }
        catch (YamlException exception) when (exception.Message.Contains(" tab ", StringComparison.Ordinal)
            && Tabs.InIndentation(file, text, alsoBlankLines: true) is { } blank)
        {
            diagnostics.Add(SpecDiagnostics.Tab(blank));
        }
        catch (YamlException exception)
        {
            var start = PositionOf(exception.Start);
            var end = PositionOf(exception.End);
            Complain(new(file, start, end.Line == start.Line && end.Column > start.Column ? end : start with { Column = start.Column + 1 }), exception.Message);
        }
        catch (Exception exception) when (IsParserFailure(exception))
        {
            var at = PositionOf(_scanner.CurrentPosition);
            Complain(new(file, at, at with { Column = at.Column + 1 }), "the structure breaks off here.");
        }

        return null;
    }

    /// <summary>The ways in which the parser answers some broken texts, other than by its own exception.</summary>
    public static bool IsParserFailure(Exception exception) => exception is YamlException or InvalidOperationException or ArgumentException
        or FormatException or IndexOutOfRangeException or OverflowException or NullReferenceException;

    private void Complain(SourceSpan span, string problem)
    {
        if (_openFlows.TryPeek(out var open) && (open.Start.Line != span.Start.Line || open.Start.Column != span.Start.Column))
        {
            diagnostics.Add(SpecDiagnostics.Syntax(
                span, Sentence(problem),
                $"The bracket opened at line {open.Start.Line}, column {open.Start.Column} may lack its end, or a comma is missing."));
        }
        else
        {
            diagnostics.Add(SpecDiagnostics.Syntax(span, Sentence(problem), SyntaxHints.For(problem)));
        }
    }

    private static string Sentence(string problem)
    {
        var sentence = problem.Length == 0 ? "the structure breaks off here" : char.ToLowerInvariant(problem[0]) + problem[1..];
        return sentence.EndsWith('.') ? sentence : sentence + ".";
    }

    private YamlNode? Document()
    {
        _parser = new Parser(_scanner);
        _parser.MoveNext(); // stream start
        _parser.MoveNext();
        if (_parser.Current is not DocumentStart)
        {
            diagnostics.Add(SpecDiagnostics.Empty(SourceSpan.Whole(file)));
            return null;
        }

        _parser.MoveNext();
        var root = Node(1);
        if (_stopped)
            return null;

        _parser.MoveNext(); // document end
        _parser.MoveNext();
        if (_parser.Current is DocumentStart second)
        {
            diagnostics.Add(SpecDiagnostics.SeveralDocuments(SpanOf(second)));
            return null;
        }

        if (root is { Node: YamlScalar { IsNull: true } })
        {
            diagnostics.Add(SpecDiagnostics.Empty(SourceSpan.Whole(file)));
            return null;
        }

        return _broken ? null : root?.Node;
    }

    /// <summary>The node whose first event is current; leaves its last event current.</summary>
    private Built? Node(int depth)
    {
        var current = _parser.Current!;
        if (depth > YamlReader.MostDepth)
            return Stop(SpecDiagnostics.TooDeep(SpanOf(current)));
        if (++_nodes > YamlReader.MostNodes)
            return Stop(SpecDiagnostics.TooManyNodes(SpanOf(current)));

        if (current is AnchorAlias alias)
            return Alias(alias, depth);

        var anchor = current is NodeEvent { Anchor.IsEmpty: false } anchored ? anchored.Anchor.Value : null;
        if (anchor is not null)
            _anchors[anchor] = null;

        Built? built = current switch
        {
            Scalar scalar => Leaf(scalar),
            SequenceStart list => List(list, depth),
            MappingStart map => Map(map, depth),
            _ => throw new InvalidOperationException($"The parser gave {current.GetType().Name} where a value starts."),
        };

        if (anchor is not null)
            _anchors[anchor] = built;
        return built;
    }

    private Built? Stop(Diagnostic diagnostic)
    {
        diagnostics.Add(diagnostic);
        _stopped = true;
        return null;
    }

    private Built? Alias(AnchorAlias alias, int depth)
    {
        var name = alias.Value.Value;
        if (!_anchors.TryGetValue(name, out var target))
        {
            _broken = true;
            diagnostics.Add(SpecDiagnostics.UnknownAlias(SpanOf(alias), name, _anchors.Count > MostCompared ? null : Nearest.To(name, _anchors.Keys)));
            return Nothing(alias);
        }

        if (target is not { } repeated)
        {
            _broken = true;
            diagnostics.Add(SpecDiagnostics.AliasCycle(SpanOf(alias), name));
            return Nothing(alias);
        }

        if (depth + repeated.Height - 1 > YamlReader.MostDepth)
            return Stop(SpecDiagnostics.TooDeep(SpanOf(alias)));

        _nodes += repeated.Count - 1;
        return _nodes > YamlReader.MostNodes ? Stop(SpecDiagnostics.AliasBomb(SpanOf(alias), name)) : repeated;
    }

    private Built Nothing(ParsingEvent at) => new(new YamlScalar(SpanOf(at), "", IsQuoted: false), 1, 1);

    private Built Leaf(Scalar scalar)
    {
        CheckTag(scalar, scalar.Tag, isScalar: true, "str", "int", "float", "bool", "null");
        var isPlain = scalar.Style == ScalarStyle.Plain;
        var span = SpanOf(scalar);

        // The parser counts an anchor and a tag to the scalar.
        if (isPlain && span.Start.Line == span.End.Line && (!scalar.Anchor.IsEmpty || !scalar.Tag.IsEmpty))
            span = span with { Start = span.End with { Column = Math.Max(span.Start.Column, span.End.Column - scalar.Value.Length) } };

        var isText = !isPlain || scalar.Tag is { IsEmpty: false, Value: "!" or "tag:yaml.org,2002:str" };
        return new(new YamlScalar(span, scalar.Value, isText), 1, 1);
    }

    private Built? List(SequenceStart start, int depth)
    {
        CheckTag(start, start.Tag, isScalar: false, "seq");
        var span = SpanOf(start);
        var isFlow = start.Style == SequenceStyle.Flow;
        if (isFlow)
            _openFlows.Push(span);

        var items = ImmutableArray.CreateBuilder<YamlNode>();
        var (count, height) = (1, 0);
        for (_parser.MoveNext(); _parser.Current is not SequenceEnd; _parser.MoveNext())
        {
            if (Node(depth + 1) is not { } item)
                return null;
            items.Add(item.Node);
            count += item.Count;
            height = Math.Max(height, item.Height);
        }

        var end = isFlow ? AfterBracket() : items.Count == 0 ? span.End : items[^1].Span.End;
        if (isFlow)
            _openFlows.Pop();
        return new(new YamlList(span with { End = Later(span.Start, end) }, items.DrainToImmutable()), count, height + 1);
    }

    private Built? Map(MappingStart start, int depth)
    {
        CheckTag(start, start.Tag, isScalar: false, "map");
        var span = SpanOf(start);
        var isFlow = start.Style == MappingStyle.Flow;
        if (isFlow)
            _openFlows.Push(span);

        var entries = ImmutableArray.CreateBuilder<KeyValuePair<YamlScalar, YamlNode>>();
        var keys = new KeyIndex();
        var (count, height) = (1, 0);
        var end = span.End;
        for (_parser.MoveNext(); _parser.Current is not MappingEnd; _parser.MoveNext())
        {
            var isAlias = _parser.Current is AnchorAlias;
            if (Node(depth + 1) is not { } key)
                return null;
            _parser.MoveNext();
            if (Node(depth + 1) is not { } value)
                return null;

            count += key.Count + value.Count;
            height = Math.Max(height, Math.Max(key.Height, value.Height));
            end = value.Node.Span.End;
            if (AcceptKey(key.Node, isAlias, value.Node) is not { } name)
                continue;

            if (keys.FirstOf(entries, name) is { } first)
                diagnostics.Add(SpecDiagnostics.DuplicateKey(name.Span, name.Value, first.Span));
            else
                entries.Add(new(name, value.Node));
        }

        if (isFlow)
        {
            end = AfterBracket();
            _openFlows.Pop();
        }

        return new(new YamlMap(span with { End = Later(span.Start, end) }, entries.DrainToImmutable()), count, height + 1);
    }

    private YamlScalar? AcceptKey(YamlNode key, bool isAlias, YamlNode value)
    {
        if (key is not YamlScalar name || isAlias)
        {
            diagnostics.Add(SpecDiagnostics.ComplexKey(key.Span, isAlias ? "an alias" : key is YamlList ? "a list" : "a map"));
            return null;
        }

        if (name is { IsQuoted: false, Value: "<<" })
        {
            _broken = true;
            diagnostics.Add(SpecDiagnostics.MergeKey(name.Span));
            return null;
        }

        if (string.IsNullOrWhiteSpace(name.Value))
        {
            // The parser does not say where a key is that is not there.
            diagnostics.Add(SpecDiagnostics.ComplexKey(value.Span, "nothing"));
            return null;
        }

        return name;
    }

    private void CheckTag(ParsingEvent node, TagName tag, bool isScalar, params ReadOnlySpan<string> accepted)
    {
        if (tag.IsEmpty || (tag.Value == "!" && isScalar))
            return;

        const string core = "tag:yaml.org,2002:";
        foreach (var word in accepted)
        {
            if (tag.Value.Length == core.Length + word.Length && tag.Value.StartsWith(core, StringComparison.Ordinal)
                && tag.Value.EndsWith(word, StringComparison.Ordinal))
                return;
        }

        var shown = tag.Value.StartsWith(core, StringComparison.Ordinal) ? "!!" + tag.Value[core.Length..] : tag.Value;
        var span = SpanOf(node);
        diagnostics.Add(SpecDiagnostics.Tag(span with { End = span.Start with { Column = span.Start.Column + shown.Length } }, shown));
    }

    /// <summary>The place after the bracket that the current end event stands before.</summary>
    private Position AfterBracket()
    {
        var end = PositionOf(_parser.Current!.End);
        return end with { Column = end.Column + 1 };
    }

    private static Position Later(Position start, Position end) =>
        end.Line > start.Line || (end.Line == start.Line && end.Column > start.Column) ? end : start;

    private SourceSpan SpanOf(ParsingEvent node) => new(file, PositionOf(node.Start), PositionOf(node.End));

    private static Position PositionOf(Mark mark) => new((int)mark.Line, (int)mark.Column);
}
