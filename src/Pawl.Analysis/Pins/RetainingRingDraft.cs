using Pawl.Analysis.Core;
using Pawl.Analysis.Joints;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Pins;
using Pawl.Specs.Model;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using K = Pawl.Analysis.Pins.RetainingRingQuantities;

namespace Pawl.Analysis.Pins;

/// <summary>One retaining ring.</summary>
internal sealed class RetainingRingDraft
{
    private readonly Draft _draft;
    private readonly RetainingRingSpec _spec;
    private readonly Subject _train;
    private readonly IReadOnlyDictionary<string, Subject> _bodies;
    private readonly Subject _s;
    private readonly RetainingRing? _row;
    private readonly string? _unknown;

    private RetainingRingDraft(Draft draft, RetainingRingSpec spec, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        (_draft, _spec, _train, _bodies) = (draft, spec, train, bodies);
        _s = draft.Begin(SubjectKinds.RetainingRing, $"retaining_rings.{spec.Name.Value}", spec.Name.Span).Relate("train", train);
        draft.Uses(OnShaft ? RetainingRing.ShaftTableId : RetainingRing.BoreTableId);
        if (OnShaft)
            RetainingRing.TryFindShaft(spec.Diameter.Value.Coherent, out _row, out _unknown);
        else
            RetainingRing.TryFindBore(spec.Diameter.Value.Coherent, out _row, out _unknown);
    }

    public static void AddAll(Draft draft, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        foreach (var spec in draft.Spec.RetainingRings.Entries)
            new RetainingRingDraft(draft, spec, train, bodies).Add();
    }

    private bool OnShaft => _spec.Sits.Value == "shaft";

    private string Key(string key) => $"retaining_rings.{_spec.Name.Value}.{key}";

    private double N(QuantityKind kind) => _s[kind].Value.Nominal;

    private Quantity Add(QuantityKind kind, ImmutableArray<QuantityKind> inputs, Func<double> formula) =>
        _s.Add(Worked.Out(kind, [.. inputs.Select(input => _s[input])], formula));

    /// <summary>Ring and groove as they are: the groove may be the shop's own.</summary>
    private RetainingRing Ring => new(N(K.Diameter), N(K.Groove), _row?.GrooveWidth ?? 0, _row?.Thickness ?? 0, _row?.Load, _row?.Corner, _row?.CornerLoad);

    private void Add()
    {
        _s.Add(Draft.Text(K.Sits, _spec.Sits, ""));
        _s.Add(_draft.Amount(K.Diameter, _spec.Diameter, ""));
        _s.Add(_spec.Groove is { } groove
            ? _draft.Amount(K.Groove, groove, "")
            : Worked.Out(K.Groove, [_s[K.Diameter]], () => Worked.Found(_row, _unknown).Groove));
        _s.Add(AxialForce());
        _s.Add(_draft.Amount(K.Land, _spec.Land, Key("land")));
        Add(K.LandRatio, [K.Land, K.Groove], () => Ring.EdgeRatio(N(K.Land)));
        Add(K.GrooveLoad, [K.Land, K.Groove], () => Ring.GrooveLoad(_spec.Yield?.Value.Coherent ?? throw Worked.Lacks(Key("yield")), N(K.Land)));
        _s.Add(_spec.RingLoad is { } load
            ? _draft.Amount(K.RingLoad, load, "")
            : Worked.Out(K.RingLoad, [_s[K.Diameter]], () =>
                Worked.Found(_row, _unknown).RingLoad(_spec.Corner?.Value.Coherent ?? throw Worked.Lacks(Key("corner")))));
        if (_s[K.AxialForce] is not { IsEvaluated: true, Value.Nominal: 0 })
        {
            Add(K.GrooveSafety, [K.GrooveLoad, K.AxialForce], () => N(K.GrooveLoad) / N(K.AxialForce));
            Add(K.RingSafety, [K.RingLoad, K.AxialForce], () => N(K.RingLoad) / N(K.AxialForce));
        }

        if (OnShaft)
            Speeds();
    }

    private Quantity AxialForce()
    {
        if (_spec.Bearing is not { } name)
            return _draft.Amount(K.AxialForce, _spec.AxialForce, Key("axial_force"));
        if (_draft.Subjects.FirstOrDefault(subject => subject.Path == $"bearings.{name.Value}")?.Find(B.AxialLoad) is not { } load)
            return Quantity.NotEvaluated(K.AxialForce, [], $"the axial load of bearing {name.Value} is not known");
        var peak = CarriedLoads.PeakOverRated(_train);
        return Quantity.Compute(K.AxialForce, [load], v => v[0] * peak);
    }

    private void Speeds()
    {
        if (!_bodies.TryGetValue(_spec.On.Value, out var body))
        {
            _s.Add(Quantity.NotEvaluated(K.Speed, [], $"the speed of {_spec.On.Value} is not known"));
            return;
        }

        _s.Add(Quantity.Compute(K.Speed, [body[BodyQuantities.Speed]], v => Math.Abs(v[0])));
        if (_s[K.Speed] is { IsEvaluated: true, Value.Nominal: 0 })
            return;
        Add(K.SpeedShare, [K.Speed], () => N(K.Speed) / (_spec.GreatestSpeed?.Value.Coherent ?? _row?.DetachingSpeed
            ?? throw new OutsideValidityException($"the table has no speed at which a ring of {N(K.Diameter):0.###} mm lifts off: state {Key("greatest_speed")}")));
    }
}
