using Pawl.Analysis.Core;
using Pawl.Mechanics.Fits;
using Pawl.Quantities;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using K = Pawl.Analysis.Fits.FitQuantities;

namespace Pawl.Analysis.Fits;

/// <summary>One fit: play and overlap at every temperature.</summary>
internal sealed partial class FitDraft
{
    private readonly Draft _draft;
    private readonly Parts _parts;
    private readonly FitSpec _spec;
    private readonly Subject _s;
    private readonly IReadOnlyDictionary<string, Subject> _bodies;
    private readonly PartMaterial _hub;
    private readonly PartMaterial _shaft;

    private FitDraft(Parts parts, FitSpec spec, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        (_draft, _parts, _spec, _bodies) = (parts.Draft, parts, spec, bodies);
        _hub = parts.MaterialOf(spec.HolePart?.Value, spec.HoleMaterial);
        _shaft = parts.MaterialOf(spec.ShaftPart?.Value, spec.ShaftMaterial);
        _s = _draft.Begin(SubjectKinds.Fit, $"fits.{spec.Name.Value}", spec.Name.Span).Relate("train", train);
    }

    public static void AddAll(Parts parts, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        foreach (var spec in parts.Draft.Spec.Fits.Entries)
            new FitDraft(parts, spec, train, bodies).Add();
    }

    private string Key(string key) => $"fits.{_spec.Name.Value}.{key}";

    private double N(QuantityKind kind) => _s[kind].Value.Nominal;

    private void Add()
    {
        _s.Add(Draft.Text(K.Function, _spec.Function, ""));
        _s.Add((_spec.Size ?? _spec.Hole ?? _spec.Shaft) is { } nominal
            ? _draft.Between(K.Diameter, Draft.Declared(nominal), nominal.Value.Nominal.Coherent, nominal.Value.Nominal.Coherent, nominal.Value.Nominal.Coherent)
            : Draft.Missing(K.Diameter, $"{Key("size")} or {Key("hole")}"));
        var (hole, shaft) = Sizes();
        _s.Add(hole);
        _s.Add(shaft);
        _s.Add(Expansion(K.HoleExpansion, _spec.HolePart, _spec.HoleMaterial, _hub));
        _s.Add(Expansion(K.ShaftExpansion, _spec.ShaftPart, _spec.ShaftMaterial, _shaft));
        _s.Add(Derive.From(K.ClearanceAtRoom, hole, shaft, (d, s) => d - s));
        var room = _s[K.ClearanceAtRoom];
        _s.Add(FromLimits(K.Kind, limits => limits.Kind switch
        {
            FitKind.Clearance => "clearance",
            FitKind.Interference => "interference",
            _ => "transition",
        }));
        _s.Add(FromLimits(K.Contradiction, Contradiction));
        _s.Add(At(K.Cold, _parts.Coldest(), _parts.Coldest()));
        _s.Add(At(K.Running, _parts.Running(_spec.HoleRunning), _parts.Running(_spec.ShaftRunning)));
        _s.Add(At(K.Hot, _parts.Hottest(_spec.HoleRunning), _parts.Hottest(_spec.ShaftRunning)));
        _s.Add(Hull(K.Clearance, [room, _s[K.Cold], _s[K.Running], _s[K.Hot]], 1));
        if (_spec.LeastClearance is { } least)
            _s.Add(_draft.Amount(K.LeastClearance, least, ""));
        else if (_spec.Function.Value == "slide")
            _s.Add(_draft.Assumed(K.LeastClearance, 0, "0, for it must move"));
        if (_spec.GreatestClearance is { } greatest)
            _s.Add(_draft.Amount(K.GreatestClearance, greatest, ""));
        if (_spec is { Function.Value: "register", HolePart: { } hub, ShaftPart: { } inner })
            _s.Add(Quantity.Computed(K.Rivals, _draft.Spec.Fits.Entries.Count(other => other != _spec && Joins(other, hub.Value, inner.Value)), []));
        if (_spec.Function.Value == "press")
            Press();
    }

    private static bool Joins(FitSpec other, string one, string two) =>
        other is { Function.Value: "register", HolePart: { } hole, ShaftPart: { } shaft }
        && ((hole.Value == one && shaft.Value == two) || (hole.Value == two && shaft.Value == one));

    /// <summary>Hole and shaft of two dimensions, or of one size with two classes.</summary>
    private (Quantity Hole, Quantity Shaft) Sizes()
    {
        if (_spec.Size is not { Value: { Tolerance: Tolerance.Fit fit } } size)
        {
            return (
                Middled(_draft.Dimension(K.Hole, _spec.Hole, $"{Key("size")} or {Key("hole")}")),
                Middled(_draft.Dimension(K.Shaft, _spec.Shaft, $"{Key("size")} or {Key("shaft")}")));
        }

        return (Middled(_draft.Dimension(K.Hole, Part(fit.Hole), "")), Middled(_draft.Dimension(K.Shaft, Part(fit.Shaft), "")));

        Stated<Toleranced> Part(Tolerance.ToleranceClass one) => new(new(size.Value.Nominal, one), size.Span, size.Text);
    }

    private Quantity Expansion(QuantityKind kind, Stated<string>? part, Stated<string>? material, PartMaterial found) => material is null
        ? _draft.Assumed(kind, found.Expansion, part is null ? "of steel, for no material is stated" : $"of {part.Value}, or of steel where its material is not stated")
        : _draft.Between(kind, Draft.Declared(material), found.Expansion, found.Expansion, found.Expansion);

    /// <summary>A size in the middle of its limits: the nominal size of a press lies outside of them, and no part has it.</summary>
    private Quantity Middled(Quantity size) => !size.IsEvaluated
        ? size
        : _draft.Between(size.Kind, size.Origin, (size.Value.Least + size.Value.Greatest) / 2, size.Value.Least, size.Value.Greatest);

    private Quantity FromLimits(QuantityKind kind, Func<FitLimits, string> text)
    {
        var room = _s[K.ClearanceAtRoom];
        return room.IsEvaluated
            ? Quantity.ComputedText(kind, text(new(Clean(room.Value.Least), Clean(room.Value.Greatest))), [_s[K.Hole], _s[K.Shaft]])
            : Quantity.NotEvaluated(kind, [_s[K.Hole], _s[K.Shaft]], room.Reasons);
    }

    // 25.021 − 25.021 is not quite 0 in binary.
    private static double Clean(double value) => Math.Round(value, 9);

    private string Contradiction(FitLimits limits) => (_spec.Function.Value, limits.Kind) switch
    {
        ("slide", FitKind.Transition) => "a slide that some pairs of parts jam",
        ("slide", FitKind.Interference) => "a slide without play",
        ("press", FitKind.Clearance) => "a press with play",
        ("press", FitKind.Transition) => "a press that some pairs of parts leave loose",
        ("locate", FitKind.Interference) => "a locating fit that is a press: it comes apart by force only",
        ("register", FitKind.Interference) => "a register that is a press: it comes apart by force only",
        _ => "none",
    };

    /// <summary>Play with both parts at their temperatures.</summary>
    private Quantity At(QuantityKind kind, (double Temperature, string? Missing) hole, (double Temperature, string? Missing) shaft)
    {
        var room = _s[K.ClearanceAtRoom];
        ImmutableArray<string> reasons = [.. new[] { hole.Missing, shaft.Missing }.OfType<string>().Distinct()];
        if (!reasons.IsEmpty)
            return Quantity.NotEvaluated(kind, [room], reasons);
        return Quantity.Compute(kind, [_s[K.HoleExpansion], _s[K.ShaftExpansion], _s[K.Hole], _s[K.Shaft], _s[K.Diameter]], v =>
        {
            var play = v[2] - v[3];
            return new FitLimits(play, play).At(v[4], v[0], hole.Temperature, v[1], shaft.Temperature).Least;
        });
    }

    /// <summary>Least and greatest of several states; nominal is that of the first.</summary>
    private static Quantity Hull(QuantityKind kind, ImmutableArray<Quantity> states, int sign)
    {
        if (Quantity.MissingReasons(states) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(kind, states, reasons);
        var (least, greatest) = (states.Min(state => state.Value.Least), states.Max(state => state.Value.Greatest));
        return Quantity.Bounded(
            kind, sign > 0 ? new(states[0].Value.Nominal, least, greatest) : new(-states[0].Value.Nominal, -greatest, -least), states);
    }
}
