using System.Globalization;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Specs.Yaml;

/// <summary>
/// Reads the keys of one mapping into typed values. What is missing, misspelt or of the wrong kind becomes a diagnostic at its
/// place; <see cref="Finish"/> complains of every key that nobody asked for.
/// </summary>
/// <remarks>
/// A <c>Required…</c> call that finds nothing reports it and returns null: the caller goes on, so that one run names every fault,
/// and drops the incomplete object at the end.
/// </remarks>
public sealed class MapReader
{
    private readonly YamlMap? _map;
    private readonly MapReader? _parent;
    private readonly string _path;
    private readonly ICollection<Diagnostic> _diagnostics;
    private readonly SourceSpan _name;
    private readonly bool[] _asked;
    private readonly List<string> _known = [];

    /// <param name="node">The mapping; anything else is reported as such and reads as empty.</param>
    /// <param name="path">Dotted path for messages: <c>train.gears.input_sun</c>.</param>
    /// <param name="diagnostics">Receives complaints.</param>
    public MapReader(YamlNode node, string path, ICollection<Diagnostic> diagnostics)
        : this(node, path, diagnostics, name: null, parent: null)
    {
    }

    private MapReader(YamlNode node, string path, ICollection<Diagnostic> diagnostics, SourceSpan? name, MapReader? parent)
    {
        ArgumentNullException.ThrowIfNull(node);
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(diagnostics);
        _path = path;
        _diagnostics = diagnostics;
        _parent = parent;
        _map = node as YamlMap;
        _asked = _map is null ? [] : new bool[_map.Entries.Length];
        Span = node.Span;
        _name = name ?? node.Span with { End = node.Span.Start };
        if (_map is null)
        {
            Report(node is YamlScalar { IsNull: true }
                ? SpecDiagnostics.NullValue(_name, Title)
                : SpecDiagnostics.NotA(DiagnosticCodes.NotAMap, node, Title, "a map of `key: value`"));
        }
    }

    /// <summary>Whether this object, or one read from within it, has reported an error so far.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>Whether there is a mapping to read at all.</summary>
    public bool IsMap => _map is not null;

    public SourceSpan Span { get; }

    /// <summary>The key under which the mapping stands, for complaints about the object as a whole.</summary>
    public SourceSpan NameSpan => _name;

    /// <summary>The dotted path of this object.</summary>
    public string ObjectPath => _path;

    private string Title => _path.Length == 0 ? "The file" : _path;

    /// <summary>The dotted path of a key, for messages.</summary>
    public string PathOf(string key) => _path.Length == 0 ? key : $"{_path}.{key}";

    /// <summary>Adds a complaint of the caller's own.</summary>
    public void Report(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        _diagnostics.Add(diagnostic);
        if (diagnostic.Severity != Severity.Error)
            return;
        for (var reader = this; reader is { HasErrors: false }; reader = reader._parent)
            reader.HasErrors = true;
    }

    /// <summary>Whether a key stands there, whatever its value; marks the key as known.</summary>
    public bool Has(string key) => Find(key, out _, out _);

    /// <summary>The place of a key, or of the object when the key is absent.</summary>
    public SourceSpan KeySpan(string key) => Find(key, out var name, out _) ? name.Span : _name;

    public Stated<string>? Text(string key, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotText, "a text") is not { } scalar)
            return null;
        return AsText(scalar, PathOf(key));
    }

    /// <summary>One of a few words. A truth value or a number is never one.</summary>
    public Stated<string>? Word(string key, ReadOnlySpan<string> words, bool required = false)
    {
        return Scalar(key, required, DiagnosticCodes.UnknownWord, "one word") is { } scalar ? AsWord(scalar, PathOf(key), words) : null;
    }

    /// <summary>A list of words.</summary>
    public ImmutableArray<Stated<string>> Words(string key, ReadOnlySpan<string> words, bool required = false)
    {
        var items = List(key, required);
        var found = ImmutableArray.CreateBuilder<Stated<string>>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            var path = $"{PathOf(key)}[{i}]";
            if (items[i] is not YamlScalar { IsNull: false } scalar)
                Report(SpecDiagnostics.NotA(DiagnosticCodes.UnknownWord, items[i], path, "one word"));
            else if (AsWord(scalar, path, words) is { } word)
                found.Add(word);
        }

        return found.DrainToImmutable();
    }

    /// <summary>A name that other parts of the spec refer to: letters, digits, underscore, hyphen; starts with a letter.</summary>
    public Stated<string>? Name(string key, bool required = false)
    {
        if (Node(key, required) is not { } node)
            return null;
        if (node is YamlList list)
        {
            Report(SpecDiagnostics.NotOne(DiagnosticCodes.NotAName, list, PathOf(key), "one name"));
            return null;
        }

        return AsName(node, PathOf(key));
    }

    /// <summary>A list of names.</summary>
    public ImmutableArray<Stated<string>> Names(string key, bool required = false)
    {
        var items = List(key, required);
        var names = ImmutableArray.CreateBuilder<Stated<string>>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            if (AsName(items[i], $"{PathOf(key)}[{i}]") is { } name)
                names.Add(name);
        }

        return names.DrainToImmutable();
    }

    /// <summary>A list of texts, or one text.</summary>
    public ImmutableArray<Stated<string>> Texts(string key, bool required = false, bool orOne = false)
    {
        if (orOne && Find(key, out _, out var node) && node is YamlScalar { IsNull: false })
            return Text(key) is { } one ? [one] : [];

        var items = List(key, required);
        var texts = ImmutableArray.CreateBuilder<Stated<string>>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            var path = $"{PathOf(key)}[{i}]";
            if (items[i] is not YamlScalar { IsNull: false } scalar)
                Report(SpecDiagnostics.NotA(DiagnosticCodes.NotText, items[i], path, "a text"));
            else if (AsText(scalar, path) is { } text)
                texts.Add(text);
        }

        return texts.DrainToImmutable();
    }

    public Stated<int>? Whole(string key, int least, int most, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotAWholeNumber, "a whole number") is not { } scalar)
            return null;

        var path = PathOf(key);
        var kind = CoreSchema.KindOf(scalar);
        if (kind == ScalarKind.NotFinite)
        {
            Report(SpecDiagnostics.NotFinite(scalar.Span, path, scalar.Value));
            return null;
        }

        if (kind != ScalarKind.Whole)
        {
            Report(SpecDiagnostics.NotAWholeNumber(scalar, path, NumberHints.ForWhole(scalar)));
            return null;
        }

        if (int.TryParse(scalar.Value, NumberStyles.AllowLeadingSign, Invariant, out var value) && value >= least && value <= most)
            return new(value, scalar.Span, scalar.Value);

        var wanted = least == most ? least.ToString(Invariant) : string.Create(Invariant, $"a whole number from {least} to {most}");
        Report(SpecDiagnostics.OutOfRange(scalar.Span, path, scalar.Value, wanted));
        return null;
    }

    public Stated<bool>? Truth(string key, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotATruthValue, "true or false") is not { } scalar)
            return null;
        if (CoreSchema.KindOf(scalar) == ScalarKind.Truth)
            return new(scalar.Value[0] is 't' or 'T', scalar.Span, scalar.Value);

        Report(SpecDiagnostics.NotATruthValue(scalar, PathOf(key), NumberHints.ForTruth(scalar)));
        return null;
    }

    public Stated<double>? Number(string key, double least, double most, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotANumber, "a number") is not { } scalar)
            return null;
        return AsNumber(scalar, PathOf(key)) is { } value && IsWithin(scalar, PathOf(key), value, least, most)
            ? new(value, scalar.Span, scalar.Value)
            : null;
    }

    /// <summary>A positive number, or a fraction of two whole numbers: <c>1.8</c> or <c>9/5</c>.</summary>
    public Stated<double>? Fraction(string key, double least, double most, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotANumber, "a number or a fraction") is not { } scalar)
            return null;

        var path = PathOf(key);
        var slash = scalar.Value.IndexOf('/', StringComparison.Ordinal);
        double value;
        if (slash < 0)
        {
            if (AsNumber(scalar, path) is not { } number)
                return null;
            value = number;
        }
        else if (WholePart(scalar.Value.AsSpan(0, slash)) is { } over && WholePart(scalar.Value.AsSpan(slash + 1)) is { } under && under > 0)
        {
            value = (double)over / under;
        }
        else
        {
            Report(SpecDiagnostics.NotANumber(scalar, path, "A fraction is two whole numbers: 9/5."));
            return null;
        }

        return IsWithin(scalar, path, value, least, most) ? new(value, scalar.Span, scalar.Value) : null;
    }

    public Stated<DateOnly>? Date(string key, bool required = false)
    {
        if (Scalar(key, required, DiagnosticCodes.NotADate, "a date") is not { } scalar)
            return null;
        if (DateOnly.TryParseExact(scalar.Value, "yyyy-MM-dd", Invariant, DateTimeStyles.None, out var date))
            return new(date, scalar.Span, scalar.Value);

        Report(SpecDiagnostics.NotADate(scalar, PathOf(key)));
        return null;
    }

    /// <summary>An amount of a dimension; <paramref name="range"/> bounds it in coherent units.</summary>
    public Stated<Amount>? Amount(string key, Dimension dimension, AmountRange range = AmountRange.Any, bool required = false) =>
        Scalar(key, required, DiagnosticCodes.MalformedAmount, "a number with a unit") is { } scalar
            ? AsAmount(scalar, PathOf(key), dimension, range)
            : null;

    /// <summary>An amount between two others, both included.</summary>
    public Stated<Amount>? Amount(string key, Dimension dimension, Amount least, Amount most, bool required = false)
    {
        if (Amount(key, dimension, AmountRange.Any, required) is not { } stated)
            return null;

        // A bound written in another unit is still that bound.
        var slack = 1e-9 * (most.Coherent - least.Coherent);
        if (stated.Value.Coherent >= least.Coherent - slack && stated.Value.Coherent <= most.Coherent + slack)
            return stated;

        var share = dimension == Dimension.Ratio && stated.Value.Unit.Symbol.Length == 0 && stated.Value.Value / 100 >= least.Coherent - slack
            && stated.Value.Value / 100 <= most.Coherent + slack;
        Report(SpecDiagnostics.OutOfRange(
            stated.Span, PathOf(key), stated.Text, $"from {least} to {most}", share ? $"Did you mean {stated.Text} %?" : null));
        return null;
    }

    /// <summary>A list of amounts.</summary>
    public ImmutableArray<Stated<Amount>> Amounts(string key, Dimension dimension, AmountRange range = AmountRange.Any, bool required = false)
    {
        var items = List(key, required);
        var amounts = ImmutableArray.CreateBuilder<Stated<Amount>>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            var path = $"{PathOf(key)}[{i}]";
            if (items[i] is not YamlScalar { IsNull: false } scalar)
                Report(SpecDiagnostics.NotA(DiagnosticCodes.MalformedAmount, items[i], path, "a number with a unit"));
            else if (AsAmount(scalar, path, dimension, range) is { } amount)
                amounts.Add(amount);
        }

        return amounts.DrainToImmutable();
    }

    public Stated<Toleranced>? Toleranced(string key, Dimension dimension, AmountRange range = AmountRange.Any, bool required = false) =>
        Toleranced(key, dimension, range, required, allowFit: false);

    /// <summary>A dimension with its tolerance; a fit of two parts only where <paramref name="allowFit"/> says so.</summary>
    public Stated<Toleranced>? Toleranced(string key, Dimension dimension, AmountRange range, bool required, bool allowFit)
    {
        if (Scalar(key, required, DiagnosticCodes.MalformedAmount, "a dimension with a unit") is not { } scalar)
            return null;

        var path = PathOf(key);
        if (!Quantities.Toleranced.TryParse(scalar.Value, out var dimensioned, out var error))
        {
            ReportNotation(scalar, path, error, dimension);
            return null;
        }

        if (!IsOf(scalar, path, dimensioned.Nominal, dimension) || !IsInRange(scalar, path, dimensioned.Nominal, range))
            return null;
        if (range == AmountRange.Positive && dimensioned.Tolerance is Tolerance.Deviations { Lower: var lower } && dimensioned.Nominal.Coherent + lower <= 0)
        {
            Report(SpecDiagnostics.OutOfRange(scalar.Span, path, scalar.Value, "more than zero at its lower limit"));
            return null;
        }

        if (!allowFit && dimensioned.Tolerance is Tolerance.Fit)
        {
            Report(SpecDiagnostics.FitNotAllowed(scalar.Span, path, scalar.Value));
            return null;
        }

        return new(dimensioned, scalar.Span, scalar.Value);
    }

    /// <summary>A hardness with its window, in one of the scales that convert.</summary>
    public Stated<Hardness>? Hardness(string key)
    {
        if (Scalar(key, required: false, DiagnosticCodes.MalformedAmount, "a hardness") is not { } scalar)
            return null;
        if (Quantities.Hardness.TryParse(scalar.Value, out var hardness, out var error))
            return new(hardness, scalar.Span, scalar.Value);

        ReportNotation(scalar, PathOf(key), error, Dimension.OfHardness);
        return null;
    }

    /// <summary>The mapping under a key, or null.</summary>
    public MapReader? Map(string key, bool required = false)
    {
        if (Node(key, required) is not { } node)
            return null;
        var reader = new MapReader(node, PathOf(key), _diagnostics, KeySpan(key), this);
        return reader.IsMap ? reader : null;
    }

    /// <summary>The list under a key, or an empty one.</summary>
    public ImmutableArray<YamlNode> List(string key, bool required = false)
    {
        if (Node(key, required) is not { } node)
            return [];
        if (node is YamlList list)
            return list.Items;

        Report(SpecDiagnostics.NotA(
            DiagnosticCodes.NotAList, node, PathOf(key), "a list", node is YamlScalar scalar ? $"Put it in brackets: [{scalar.Value.Trim()}]." : null));
        return [];
    }

    /// <summary>Reads each mapping of a list; what <paramref name="read"/> drops is left out.</summary>
    public ImmutableArray<T> Items<T>(string key, Func<MapReader, T?> read, bool required = false)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(read);
        var items = List(key, required);
        var found = ImmutableArray.CreateBuilder<T>(items.Length);
        for (var i = 0; i < items.Length; i++)
        {
            var reader = new MapReader(items[i], $"{PathOf(key)}[{i}]", _diagnostics, name: null, this);
            if (reader.IsMap && read(reader) is { } item)
                found.Add(item);
        }

        return found.DrainToImmutable();
    }

    /// <summary>Reads a section of named mappings, in the order of the file; what <paramref name="read"/> drops is left out.</summary>
    public ImmutableArray<T> Named<T>(string key, Func<Stated<string>, MapReader, T?> read, bool required = false)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(read);
        if (Map(key, required)?._map is not { } map)
            return [];

        var entries = ImmutableArray.CreateBuilder<T>(map.Entries.Length);
        foreach (var (name, node) in map.Entries)
        {
            var path = $"{PathOf(key)}.{name.Value}";
            if (!IsName(name.Value))
            {
                Report(SpecDiagnostics.NotAName(name.Span, PathOf(key), name.Value));
                continue;
            }

            var reader = new MapReader(node, path, _diagnostics, name.Span, this);
            if (reader.IsMap && read(new(name.Value, name.Span, name.Value), reader) is { } entry)
                entries.Add(entry);
        }

        return entries.DrainToImmutable();
    }

    /// <summary>The raw node under a key, or null; marks the key as known.</summary>
    public YamlNode? Node(string key, bool required = false)
    {
        if (!Find(key, out var name, out var node))
        {
            if (required && _map is not null)
                Report(SpecDiagnostics.MissingKey(_name, _path, key));
            return null;
        }

        if (node is YamlScalar { IsNull: true })
        {
            Report(SpecDiagnostics.NullValue(name.Span, PathOf(key)));
            return null;
        }

        return node;
    }

    /// <summary>Complains of every key that was not asked for, with the nearest known one.</summary>
    public void Finish()
    {
        for (var i = 0; i < _asked.Length; i++)
        {
            if (_asked[i])
                continue;
            var key = _map!.Entries[i].Key;
            Report(SpecDiagnostics.UnknownKey(_path, key, Nearest.To(key.Value, _known), _known));
        }
    }

    /// <summary>Whether a text is a name: starts with a letter a to z; then letters, digits, underscores and hyphens.</summary>
    public static bool IsName(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length == 0 || !char.IsAsciiLetter(text[0]))
            return false;
        foreach (var c in text)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c is not ('_' or '-'))
                return false;
        }

        return true;
    }

    private bool Find(string key, out YamlScalar name, out YamlNode node)
    {
        if (!_known.Contains(key))
            _known.Add(key);
        if (_map is not null)
        {
            var entries = _map.Entries;
            for (var i = 0; i < entries.Length; i++)
            {
                if (entries[i].Key.Value != key)
                    continue;
                _asked[i] = true;
                (name, node) = (entries[i].Key, entries[i].Value);
                return true;
            }
        }

        (name, node) = (null!, null!);
        return false;
    }

    private YamlScalar? Scalar(string key, bool required, string code, string wanted)
    {
        if (Node(key, required) is not { } node)
            return null;
        if (node is YamlScalar scalar)
            return scalar;

        Report(SpecDiagnostics.NotA(code, node, PathOf(key), wanted));
        return null;
    }

    private Stated<string>? AsText(YamlScalar scalar, string path)
    {
        if (CoreSchema.KindOf(scalar) == ScalarKind.Truth)
        {
            Report(SpecDiagnostics.NotA(DiagnosticCodes.NotText, scalar, path, "a text", $"Put it in quotes: \"{scalar.Value}\"."));
            return null;
        }

        if (string.IsNullOrWhiteSpace(scalar.Value))
        {
            Report(SpecDiagnostics.EmptyText(scalar.Span, path));
            return null;
        }

        return new(scalar.Value, scalar.Span, scalar.Value);
    }

    private Stated<string>? AsWord(YamlScalar scalar, string path, ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (word == scalar.Value)
                return new(word, scalar.Span, scalar.Value);
        }

        Report(SpecDiagnostics.UnknownWord(scalar.Span, path, scalar.Value, Nearest.To(scalar.Value, words.ToArray()), words));
        return null;
    }

    private Stated<string>? AsName(YamlNode node, string path)
    {
        if (node is not YamlScalar { IsNull: false } scalar)
        {
            Report(SpecDiagnostics.NotA(DiagnosticCodes.NotAName, node, path, "a name"));
            return null;
        }

        if (IsName(scalar.Value) && CoreSchema.KindOf(scalar) == ScalarKind.Text)
            return new(scalar.Value, scalar.Span, scalar.Value);

        Report(SpecDiagnostics.NotAName(scalar.Span, path, scalar.Value));
        return null;
    }

    private double? AsNumber(YamlScalar scalar, string path)
    {
        if (CoreSchema.TryNumber(scalar, out var value))
            return value;

        Report(CoreSchema.KindOf(scalar) is ScalarKind.NotFinite or ScalarKind.Whole or ScalarKind.Real
            ? SpecDiagnostics.NotFinite(scalar.Span, path, scalar.Value)
            : SpecDiagnostics.NotANumber(scalar, path, NumberHints.ForNumber(scalar)));
        return null;
    }

    private bool IsWithin(YamlScalar scalar, string path, double value, double least, double most)
    {
        if (value >= least && value <= most)
            return true;

        Report(SpecDiagnostics.OutOfRange(scalar.Span, path, scalar.Value, string.Create(Invariant, $"a number from {least} to {most}")));
        return false;
    }

    private static long? WholePart(ReadOnlySpan<char> text) =>
        long.TryParse(text.Trim(), NumberStyles.None, Invariant, out var value) ? value : null;

    private Stated<Amount>? AsAmount(YamlScalar scalar, string path, Dimension dimension, AmountRange range)
    {
        if (!Quantities.Amount.TryParse(scalar.Value, out var amount, out var error))
        {
            ReportNotation(scalar, path, error, dimension);
            return null;
        }

        return IsOf(scalar, path, amount, dimension) && IsInRange(scalar, path, amount, range)
            ? new(amount, scalar.Span, scalar.Value)
            : null;
    }

    private void ReportNotation(YamlScalar scalar, string path, NotationError error, Dimension dimension)
    {
        if (CoreSchema.KindOf(scalar) == ScalarKind.NotFinite)
            Report(SpecDiagnostics.NotFinite(scalar.Span, path, scalar.Value));
        else if (string.IsNullOrWhiteSpace(scalar.Value))
            Report(SpecDiagnostics.EmptyText(scalar.Span, path));
        else
            Report(SpecDiagnostics.Notation(scalar.Part(error.Start, error.Length), path, error, dimension));
    }

    private bool IsOf(YamlScalar scalar, string path, Amount amount, Dimension dimension)
    {
        if (!double.IsFinite(amount.Coherent))
        {
            Report(SpecDiagnostics.NotFinite(scalar.Span, path, scalar.Value));
            return false;
        }

        if (amount.Dimension == dimension)
            return true;

        if (amount.Unit.Symbol.Length == 0)
        {
            Report(SpecDiagnostics.MissingUnit(scalar.Span, path, scalar.Value, dimension));
        }
        else
        {
            var unit = NumberHints.AfterNumber(scalar.Value);
            Report(SpecDiagnostics.UnitMismatch(
                scalar.Part(unit, scalar.Value.Length - unit), path, scalar.Value, dimension, amount.Dimension));
        }

        return false;
    }

    private bool IsInRange(YamlScalar scalar, string path, Amount amount, AmountRange range)
    {
        var value = amount.Coherent;
        var wanted = range switch
        {
            AmountRange.NotNegative when value < 0 => "zero or more",
            AmountRange.Positive when value <= 0 => "more than zero",
            AmountRange.NotPositive when value > 0 => "zero or less",
            _ => null,
        };
        if (wanted is null && Limits.Of(amount.Dimension) is var (least, most) && !(value >= least.Coherent && value <= most.Coherent))
            wanted = value < least.Coherent ? $"at least {least}" : $"at most {most}";
        if (wanted is null)
            return true;

        Report(SpecDiagnostics.OutOfRange(scalar.Span, path, scalar.Value, wanted));
        return false;
    }
}

/// <summary>Which amounts make sense.</summary>
public enum AmountRange
{
    Any,
    NotNegative,
    Positive,
    NotPositive,
}
