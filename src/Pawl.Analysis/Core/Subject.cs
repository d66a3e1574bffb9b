using Pawl.Specs.Text;

namespace Pawl.Analysis.Core;

/// <summary>A thing that rules speak of, with its quantities and its relations to other things.</summary>
/// <param name="kind">What sort of thing.</param>
/// <param name="path">Its stable name: <c>gears.input_sun</c>, <c>meshes.input_sun~long</c>. Unique in an analysis.</param>
/// <param name="span">Where the spec declares it.</param>
public sealed class Subject(SubjectKind kind, string path, SourceSpan span)
{
    private readonly Quantity?[] _quantities = new Quantity?[kind.Quantities.Length];
    private readonly State[] _states = new State[kind.Quantities.Length];
    private readonly Dictionary<string, Subject> _related = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Func<Subject?>> _pending = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Func<Subject?>> _optional = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Func<IEnumerable<Subject>>> _many = new(StringComparer.Ordinal);

    private enum State : byte
    {
        Unknown,
        Computing,
        Known,
    }

    public SubjectKind Kind { get; } = kind;

    public string Path { get; } = path;

    public SourceSpan Span { get; } = span;

    /// <summary>Where the spec states it, which its keys begin with: <c>train.gears.input_sun</c>.</summary>
    internal string Keys { get; init; } = path;

    /// <summary>The quantities that this subject has, in the order of its kind.</summary>
    public IEnumerable<Quantity> Quantities
    {
        get
        {
            foreach (var kind in Kind.Quantities)
            {
                if (Find(kind) is { } quantity)
                    yield return quantity;
            }
        }
    }

    /// <summary>The subjects that this one reaches, by role.</summary>
    public IReadOnlyDictionary<string, Subject> Related
    {
        get
        {
            foreach (var role in _pending.Keys.ToArray())
                Reach(role);
            return _related;
        }
    }

    /// <summary>What the spec says of it; for subjects whose quantities are declared.</summary>
    internal object Model { get; init; } = "";

    /// <summary>The analysis that it belongs to; a subject of its own, such as the example of a rule, has only what it is given.</summary>
    internal AnalysisContext Context { get; init; } = null!;

    /// <summary>The quantity of a kind, or null when this subject has none: then rules on it do not apply.</summary>
    /// <remarks>A declared quantity is computed on the first demand.</remarks>
    public Quantity? Find(QuantityKind kind)
    {
        if (kind.Of != Kind)
            return null;
        if (kind.Evaluate is not { } evaluate || Context is null || _states[kind.Index] == State.Known)
            return _quantities[kind.Index];
        if (_states[kind.Index] == State.Computing)
            throw new InvalidOperationException($"{Path}.{kind.Name} depends on itself.");
        _states[kind.Index] = State.Computing;
        var quantity = evaluate(this);
        _states[kind.Index] = State.Known;
        if (quantity is not null)
        {
            quantity.Subject = Path;
            _quantities[kind.Index] = quantity;
        }

        return quantity;
    }

    /// <summary>The subject in a role, or null.</summary>
    internal Subject? Reach(string role)
    {
        if (_related.TryGetValue(role, out var known))
            return known;
        if (_optional.TryGetValue(role, out var look))
            return look();
        if (!_pending.Remove(role, out var find) || find() is not { } found)
            return null;
        _related.Add(role, found);
        return found;
    }

    /// <summary>The subjects in a role of many, in the order of the spec.</summary>
    internal IEnumerable<Subject> ReachAll(string role) => _many.TryGetValue(role, out var many) ? many() : [];

    /// <summary>A role that is looked up when it is first required, so that the order of sections does not matter.</summary>
    internal Subject Relate(string role, Func<Subject?> find)
    {
        _pending[role] = find;
        return this;
    }

    /// <summary>A role that not every subject of the kind has: formulas read it, rules do not.</summary>
    internal Subject RelateOptional(string role, Func<Subject?> find)
    {
        _optional[role] = find;
        return this;
    }

    /// <summary>A role of many.</summary>
    internal Subject RelateAll(string role, Func<IEnumerable<Subject>> find)
    {
        _many[role] = find;
        return this;
    }

    /// <summary>The quantity of a kind, which this subject has.</summary>
    public Quantity this[QuantityKind kind] =>
        Find(kind) ?? throw new InvalidOperationException($"{Path} has no {kind.Name}.");

    /// <summary>Takes a quantity in.</summary>
    public Quantity Add(Quantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        if (quantity.Kind.Of != Kind)
            throw new ArgumentException($"{quantity.Kind} is no quantity of a {Kind.Name}.", nameof(quantity));
        quantity.Subject = Path;
        _quantities[quantity.Kind.Index] = quantity;
        _states[quantity.Kind.Index] = State.Known;
        return quantity;
    }

    public Subject Relate(string role, Subject subject)
    {
        _related[role] = subject;
        return this;
    }

    public override string ToString() => Path;
}
