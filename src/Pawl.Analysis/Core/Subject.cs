using Pawl.Specs.Text;

namespace Pawl.Analysis.Core;

/// <summary>A thing that rules speak of, with its quantities and its relations to other things.</summary>
/// <param name="kind">What sort of thing.</param>
/// <param name="path">Its stable name: <c>gears.input_sun</c>, <c>meshes.input_sun~long</c>. Unique in an analysis.</param>
/// <param name="span">Where the spec declares it.</param>
public sealed class Subject(SubjectKind kind, string path, SourceSpan span)
{
    private readonly Quantity?[] _quantities = new Quantity?[kind.Quantities.Length];
    private readonly Dictionary<string, Subject> _related = new(StringComparer.Ordinal);

    public SubjectKind Kind { get; } = kind;

    public string Path { get; } = path;

    public SourceSpan Span { get; } = span;

    /// <summary>The quantities that this subject has, in the order of its kind.</summary>
    public IEnumerable<Quantity> Quantities
    {
        get
        {
            foreach (var quantity in _quantities)
            {
                if (quantity is not null)
                    yield return quantity;
            }
        }
    }

    /// <summary>The subjects that this one reaches, by role.</summary>
    public IReadOnlyDictionary<string, Subject> Related => _related;

    /// <summary>The quantity of a kind, or null when this subject has none: then rules on it do not apply.</summary>
    public Quantity? Find(QuantityKind kind) => kind.Of == Kind ? _quantities[kind.Index] : null;

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
        return quantity;
    }

    public Subject Relate(string role, Subject subject)
    {
        _related[role] = subject;
        return this;
    }

    public override string ToString() => Path;
}
