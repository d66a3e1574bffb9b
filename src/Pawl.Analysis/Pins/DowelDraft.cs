using Pawl.Analysis.Core;
using Pawl.Analysis.Joints;
using Pawl.Mechanics.Joints;
using Pawl.Mechanics.Pins;
using Pawl.Specs.Model;
using J = Pawl.Analysis.Joints.JointStrengths;
using K = Pawl.Analysis.Pins.DowelQuantities;

namespace Pawl.Analysis.Pins;

/// <summary>One set of dowels.</summary>
internal sealed class DowelDraft
{
    // Common practice, no source: pulsating shear and pressure over the yield.
    private const double ShearShare = 0.4;
    private const double PressureShare = 0.5;

    private readonly Draft _draft;
    private readonly DowelSpec _spec;
    private readonly Subject _train;
    private readonly IReadOnlyDictionary<string, Subject> _bodies;
    private readonly Subject? _joint;
    private readonly Subject _s;

    private DowelDraft(Draft draft, DowelSpec spec, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        (_draft, _spec, _train, _bodies) = (draft, spec, train, bodies);
        _joint = spec.Joint is null ? null : draft.Subjects.FirstOrDefault(subject => subject.Path == $"joints.{spec.Joint.Value}");
        _s = draft.Begin(SubjectKinds.Dowel, $"dowels.{spec.Name.Value}", spec.Name.Span).Relate("train", train);
    }

    public static void AddAll(Draft draft, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        foreach (var spec in draft.Spec.Dowels.Entries)
            new DowelDraft(draft, spec, train, bodies).Add();
    }

    private string Key(string key) => $"dowels.{_spec.Name.Value}.{key}";

    private double N(QuantityKind kind) => _s[kind].Value.Nominal;

    private double Bore => _spec.Bore?.Value.Coherent ?? 0;

    private Quantity Add(QuantityKind kind, ImmutableArray<QuantityKind> inputs, Func<double> formula) =>
        _s.Add(Worked.Out(kind, [.. inputs.Select(input => _s[input])], formula));

    private void Add()
    {
        _s.Add(Draft.Text(K.Purpose, _spec.Purpose, ""));
        _s.Add(_draft.Number(K.Count, _spec.Count));
        Add(K.Effective, [K.Count], () => DowelPins.Effective(_spec.Count.Value, _spec.ReamedTogether is { Value: true }));
        _s.Add(_draft.Dimension(K.Diameter, _spec.Diameter, ""));
        _s.Add(_draft.Amount(K.Yield, _spec.Yield, Key("yield")));
        Add(K.LengthRatio, [K.Diameter], () => _spec.Parts.Min(part => part.Length.Value.Coherent) / N(K.Diameter));
        Room();
        _s.Add(Torque());
        Add(K.Force, [K.Diameter, K.CarriedTorque, K.Effective], () => ForceOf(N(K.CarriedTorque)));
        Add(K.Shear, [K.Diameter, K.Force], () => DowelPins.ShearStress(N(K.Force), N(K.Diameter), 1, Bore));
        Add(K.PressureShare, [K.Diameter, K.Force], () => Worst(N(K.Force)));
        Add(K.Capacity, [K.Diameter, K.Yield, K.Effective], () =>
        {
            var perTorque = ForceOf(1);
            return Math.Min(ShearShare * N(K.Yield) / DowelPins.ShearStress(perTorque, N(K.Diameter), 1, Bore), PressureShare / Worst(perTorque));
        });
        if (_joint is null)
            return;
        _s.Add(Friction());
        _s.Add(Path());
    }

    private double ForceOf(double torque) => DowelPins.Force(torque, (int)N(K.Effective), _spec.Circle.Value.Coherent / 2);

    /// <summary>Greatest pressure over the yield of its part.</summary>
    private double Worst(double force)
    {
        var worst = 0.0;
        for (var i = 0; i < _spec.Parts.Length; i++)
        {
            var part = _spec.Parts[i];
            var yield = part.Yield?.Value.Coherent ?? throw Worked.Lacks(Key($"parts[{i}].yield"));
            worst = Math.Max(worst, DowelPins.Pressure(force, N(K.Diameter), part.Length.Value.Coherent) / yield);
        }

        return worst;
    }

    private Quantity Torque()
    {
        if (_joint is { } joint)
        {
            return joint.Find(J.CarriedTorque) is { } carried
                ? Quantity.Compute(K.CarriedTorque, [carried], v => v[0])
                : Quantity.NotEvaluated(K.CarriedTorque, [], $"{joint.Path}.carries is not stated");
        }

        return _spec.Torque is { } torque ? _draft.Amount(K.CarriedTorque, torque, "")
            : _spec.Carries is { } body ? CarriedLoads.Torque(K.CarriedTorque, body.Value, _train, _bodies)
            : Draft.Missing(K.CarriedTorque, Key("joint"));
    }

    /// <summary>Play of the dowels in the second part, whose holes are the loose ones; reamed together they fit each other.</summary>
    private void Room()
    {
        if (_spec.Parts.Length < 2)
            return;
        var hole = _draft.Dimension(K.Diameter, _spec.Parts[1].Hole, Key("parts[1].hole"));
        var pin = _s[K.Diameter];
        if (_spec.ReamedTogether is not { Value: true })
        {
            _s.Add(Worked.Out(K.Room, [pin, hole], () => DowelPins.Room(
                hole.Value.Least - pin.Value.Greatest,
                _spec.PinPosition?.Value.Coherent ?? throw Worked.Lacks(Key("pin_position")),
                _spec.HolePosition?.Value.Coherent ?? throw Worked.Lacks(Key("hole_position")))));
        }

        _s.Add(Worked.Out(K.Turn, [pin, hole], () => DowelPins.Turn(Math.Max(0, hole.Value.Greatest - pin.Value.Least), _spec.Circle.Value.Coherent / 2)));
    }

    private Quantity Friction()
    {
        if (_joint!.Find(J.SlipTorque) is not { } slip)
            return Quantity.NotEvaluated(K.Friction, [], $"{_joint.Path}.carries is not stated");
        return Derive.From(K.Friction, slip, _joint[J.RequiredSlipSafety], (torque, safety) => torque / safety);
    }

    private Quantity Path()
    {
        ImmutableArray<Quantity> inputs = [_s[K.Purpose], _s[K.CarriedTorque], _s[K.Friction], _s[K.Capacity]];
        return Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons
            ? Quantity.NotEvaluated(K.Path, inputs, reasons)
            : Quantity.ComputedText(
                K.Path, Flange.Path(_s[K.CarriedTorque].Value.Greatest, N(K.Friction), N(K.Capacity)).ToString().ToLowerInvariant(), inputs);
    }
}
