using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Fits;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;

namespace Pawl.Analysis;

/// <summary>An analysis in the making: turns what the spec states into quantities, and notes what it leaves out.</summary>
internal sealed class AnalysisContext
{
    private readonly SortedSet<string> _tables = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Subject> _byPath = new(StringComparer.Ordinal);
    private readonly Dictionary<SubjectKind, List<Subject>> _byKind = [];
    private readonly Dictionary<(Subject, Type), object> _solved = [];
    private readonly Lazy<TrainForces?> _forces;
    private readonly Lazy<HeldBodies?> _held;
    private int _serial;

    public AnalysisContext(GearboxSpec spec)
    {
        Spec = spec;
        _forces = new(() => Train is null ? null : TrainForces.Build(this, spec.Train!, Train));
        _held = new(() => Train is null ? null : SupportBuilder.Build(this, Train));
    }

    public GearboxSpec Spec { get; }

    public List<Subject> Subjects { get; } = [];

    /// <summary>The train with its solution; null without one.</summary>
    public TrainBuilder? Train { get; set; }

    /// <summary>How bearings hold the bodies; null without bearings.</summary>
    public HeldBodies? Held => _held.Value;

    /// <summary>What teeth, orbit, weight and the coupled machines lay on every body; null without a train.</summary>
    public TrainForces? Forces => _forces.Value;

    public ImmutableArray<string> TablesUsed => [.. _tables];

    /// <summary>Notes a table for the record.</summary>
    public void Uses(string table) => _tables.Add(table);

    /// <summary>What is solved once for all quantities of a subject.</summary>
    public T Once<T>(Subject subject, Func<Subject, T> solve)
        where T : class
    {
        if (_solved.TryGetValue((subject, typeof(T)), out var known))
            return (T)known;
        var solved = solve(subject);
        _solved.Add((subject, typeof(T)), solved);
        return solved;
    }

    public Subject Begin(SubjectKind kind, string path, SourceSpan span, object? model = null, string? keys = null) =>
        Register(Make(kind, path, span, model, keys));

    /// <summary>A subject that is not yet part of the analysis.</summary>
    public Subject Make(SubjectKind kind, string path, SourceSpan span, object? model = null, string? keys = null) =>
        new(kind, path, span) { Model = model ?? "", Context = this, Keys = keys ?? path };

    public Subject Register(Subject subject)
    {
        Subjects.Add(subject);
        if (!_byKind.TryGetValue(subject.Kind, out var alike))
            _byKind.Add(subject.Kind, alike = []);
        alike.Add(subject);
        _byPath.Add(subject.Path, subject);
        return subject;
    }

    /// <summary>All subjects of a kind, in the order of the spec.</summary>
    public IReadOnlyList<Subject> Of(SubjectKind kind) => _byKind.TryGetValue(kind, out var alike) ? alike : [];

    /// <summary>The subject of a kind with that name, or null.</summary>
    public Subject? Find(SubjectKind kind, string path) => _byPath.GetValueOrDefault(path) is { } found && found.Kind == kind ? found : null;

    /// <summary>A stated amount; absent: not evaluated, with the key that is missing.</summary>
    public Quantity Amount(QuantityKind kind, Stated<Amount>? stated, string key) =>
        stated is null ? Missing(kind, key) : Leaf(kind, Declared(stated), Extent.Exactly(stated.Value.Coherent));

    /// <summary>A stated number; absent: not evaluated, with the key that is missing.</summary>
    public Quantity Number(QuantityKind kind, Stated<double>? stated, string key) =>
        stated is null ? Missing(kind, key) : Leaf(kind, Declared(stated), Extent.Exactly(stated.Value));

    public Quantity Number(QuantityKind kind, Stated<int> stated) => Leaf(kind, Declared(stated), Extent.Exactly(stated.Value));

    /// <summary>A stated amount, or a default in coherent units that the report lists.</summary>
    public Quantity Amount(QuantityKind kind, Stated<Amount>? stated, double otherwise, string basis) =>
        stated is null ? Assumed(kind, otherwise, basis) : Amount(kind, stated, "");

    /// <summary>A default in coherent units that the report lists.</summary>
    public Quantity Assumed(QuantityKind kind, double value, string basis) =>
        Leaf(kind, new Origin.Assumed(basis), Extent.Exactly(value));

    public static Quantity Missing(QuantityKind kind, string key) => Quantity.NotEvaluated(kind, [], $"{key} is not stated");

    public static Quantity Text(QuantityKind kind, Stated<string>? stated, string key) =>
        stated is null ? Missing(kind, key) : Quantity.OfText(kind, Declared(stated), stated.Value, []);

    public static Quantity Text(QuantityKind kind, Stated<string>? stated, string otherwise, string basis) =>
        stated is null ? Quantity.OfText(kind, new Origin.Assumed(basis), otherwise, []) : Text(kind, stated, "");

    public static Quantity Truth(QuantityKind kind, Stated<bool>? stated, bool otherwise, string basis) => stated is null
        ? Quantity.OfTruth(kind, new Origin.Assumed(basis), otherwise, [])
        : Quantity.OfTruth(kind, Declared(stated), stated.Value, []);

    /// <summary>A value between two stated ones, nominal where given; the least and greatest move as one.</summary>
    public Quantity Between(QuantityKind kind, Origin origin, double nominal, double least, double greatest) =>
        Leaf(kind, origin, new(nominal, least, greatest));

    /// <summary>A dimension with its limits: its own, its class of ISO 286, or the general tolerance of ISO 2768-1.</summary>
    public Quantity Dimension(QuantityKind kind, Stated<Toleranced>? stated, string key)
    {
        if (stated is null)
            return Missing(kind, key);

        var nominal = stated.Value.Nominal.Coherent;
        return stated.Value.Tolerance switch
        {
            Tolerance.Deviations own => Leaf(
                kind, Declared(stated, "as written"), new(nominal, nominal + own.Lower, nominal + own.Upper)),
            Tolerance.ToleranceClass iso => OfClass(kind, stated, iso, nominal),
            Tolerance.Fit => Quantity.NotEvaluated(kind, [], $"{key} is `{stated.Text}`: a fit names two parts, this is one dimension"),
            _ => Untoleranced(kind, stated, nominal),
        };
    }

    private Quantity OfClass(QuantityKind kind, Stated<Toleranced> stated, Tolerance.ToleranceClass iso, double nominal)
    {
        _tables.UnionWith(Iso286.Tables);
        return Iso286.TryLimits(iso.Letters, iso.Grade, nominal, out var limits, out var reason)
            ? Leaf(kind, Declared(stated, $"ISO 286-1, class {iso}"), new(nominal, nominal + limits.Lower, nominal + limits.Upper))
            : Quantity.NotEvaluated(kind, [], $"{stated.Text}: {reason}");
    }

    private Quantity Untoleranced(QuantityKind kind, Stated<Toleranced> stated, double nominal)
    {
        if (Spec.Tolerances?.General is not { } general)
            return Leaf(kind, Declared(stated, "none stated: taken as exact"), Extent.Exactly(nominal));

        _tables.Add(GeneralTolerance.LinearTable);
        return GeneralTolerance.TryLinear(general.Value, Math.Abs(nominal), out var deviation, out _)
            ? Leaf(kind, Declared(stated, $"ISO 2768-1, class {general.Value}"), new(nominal, nominal - deviation, nominal + deviation))
            : Leaf(kind, Declared(stated, $"ISO 2768-1, class {general.Value} sets none: taken as exact"), Extent.Exactly(nominal));
    }

    /// <summary>General tolerance of a computed size, about zero; null where the spec states no class.</summary>
    public Quantity? GeneralDeviation(QuantityKind kind, double size)
    {
        if (Spec.Tolerances?.General is not { } general)
            return null;

        _tables.Add(GeneralTolerance.LinearTable);
        return GeneralTolerance.TryLinear(general.Value, Math.Abs(size), out var deviation, out _)
            ? Leaf(kind, Declared(general, $"ISO 2768-1, class {general.Value}"), new(0, -deviation, deviation))
            : null;
    }

    private Quantity Leaf(QuantityKind kind, Origin origin, Extent value) => Quantity.Leaf(kind, origin, value, _serial++);

    public static Origin.Declared Declared<T>(Stated<T> stated, string tolerance = "") => new(stated.Span, stated.Text, tolerance);
}
