using Pawl.Analysis.Core;
using Pawl.Mechanics.Joints;
using Pawl.Specs.Model;
using Pawl.Specs.Text;
using K = Pawl.Analysis.Joints.JointQuantities;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Joints;

/// <summary>One bolted joint or central nut: tightening, stiffness, what becomes of the preload.</summary>
internal sealed partial class JointDraft
{
    // Bolts of quenched and tempered steel; handbook values, from memory.
    private const double SteelModulus = 205_000;
    private const double SteelExpansion = 11.5e-6;

    private const double Room = 20;
    private const double WrenchError = 0.04;

    private readonly Draft _draft;
    private readonly JointSpec _spec;
    private readonly Subject _train;
    private readonly IReadOnlyDictionary<string, Subject> _bodies;
    private readonly Subject _s;
    private ScrewThread? _thread;

    private JointDraft(Draft draft, JointSpec spec, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        (_draft, _spec, _train, _bodies) = (draft, spec, train, bodies);
        _s = draft.Begin(SubjectKinds.Joint, $"joints.{spec.Name.Value}", spec.Name.Span).Relate("train", train);
    }

    public static void AddAll(Draft draft, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        foreach (var spec in draft.Spec.Joints.Entries)
            new JointDraft(draft, spec, train, bodies).Add();
    }

    private bool IsCentral => _spec.Kind.Value == "central-nut";

    private ScrewThread Thread => _thread!;

    private int Bolts => _spec.Bolts?.Value ?? 1;

    private string Key(string key) => $"joints.{_spec.Name.Value}.{key}";

    private double N(QuantityKind kind) => _s[kind].Value.Nominal;

    private Quantity Add(QuantityKind kind, ImmutableArray<QuantityKind> inputs, Func<double> formula) =>
        _s.Add(Worked.Out(kind, [.. inputs.Select(input => _s[input])], formula));

    private void Add()
    {
        Declare();
        Strength();
        Face();
        Friction();
        Preload();
        Tightened();
        Stiffness();
        Losses();
        Service();
        Across();
        if (!IsCentral)
            Fatigue();
        Pressure();
        Threads();
        Kept();
        if (IsCentral)
            Path();
    }

    private void Declare()
    {
        ThreadTable.TryFind(_spec.Thread.Value, out _thread, out var unknown);
        _draft.Uses(ThreadTable.MetricTableId);
        _draft.Uses(ThreadTable.UnifiedTableId);
        _s.Add(Draft.Text(K.Kind, _spec.Kind, ""));
        _s.Add(unknown is null ? Draft.Text(K.Thread, _spec.Thread, "") : Quantity.NotEvaluated(K.Thread, [], unknown));
        _s.Add(Quantity.ComputedText(K.HeldBy, IsCentral ? "nut on a shaft" : _spec.Tapped is null ? "nut" : "tapped hole"));
        if (!IsCentral)
            _s.Add(_spec.Bolts is { } bolts ? _draft.Number(K.Bolts, bolts) : Draft.Missing(K.Bolts, Key("bolts")));
    }

    private void Strength()
    {
        if (_spec.Yield is not null)
        {
            _s.Add(_draft.Amount(K.Proof, _spec.ProofStress, Key("proof_stress")));
            _s.Add(_draft.Amount(K.Yield, _spec.Yield, ""));
            _s.Add(_draft.Amount(K.Tensile, _spec.Tensile, Key("tensile")));
        }
        else
        {
            _draft.Uses(BoltStrength.MetricTableId);
            _draft.Uses(BoltStrength.InchTableId);
            _s.Add(Draft.Text(K.Strength, _spec.Strength, Key("strength")));
            Add(K.Proof, [K.Strength, K.Thread], () => OfClass().Proof);
            Add(K.Yield, [K.Strength, K.Thread], () => OfClass().Yield);
            Add(K.Tensile, [K.Strength, K.Thread], () => OfClass().Tensile);
        }

        Add(K.Section, [K.Thread], () => IsCentral && _spec.Shaft is { } shaft
            ? CentralNut.SectionDiameter(Thread, shaft.CrossHole?.Value.Coherent ?? 0, shaft.Bore?.Value.Coherent ?? 0)
            : Thread.StressDiameter);
    }

    private BoltStrength OfClass()
    {
        BoltStrength.TryFind(_spec.Strength!.Value, Thread, out var strength, out var reason);
        return Worked.Found(strength, reason);
    }

    private BoltStrength Bolt => _spec.Yield is null ? OfClass() : new("stated", N(K.Proof), N(K.Yield), N(K.Tensile), null);

    private void Face()
    {
        if (IsCentral)
        {
            _s.Add(_draft.Amount(K.FaceOutside, _spec.Face, Key("face")));
            _s.Add(_draft.Amount(K.FaceHole, _spec.Hole ?? _spec.Clamped.FirstOrDefault()?.Inside, Key("hole")));
            return;
        }

        _draft.Uses(HeadFace.TableId);
        _s.Add(_spec.Face is { } face ? _draft.Amount(K.FaceOutside, face, "") : Worked.Out(K.FaceOutside, [_s[K.Thread]], () => Standard().Outer));
        _s.Add(_spec.Hole is { } hole ? _draft.Amount(K.FaceHole, hole, "") : Worked.Out(K.FaceHole, [_s[K.Thread]], () => Standard().Hole));
    }

    private BoltHead Head => _spec.Head is { Value: "socket" } ? BoltHead.SocketCap : BoltHead.Hexagon;

    private BearingFace Standard()
    {
        HeadFace.TryFind(Thread, Head, fineHole: false, out var face, out var reason);
        return face ?? throw new OutsideValidityException(reason);
    }

    private BearingFace Seat => new(N(K.FaceOutside), N(K.FaceHole));

    private void Friction()
    {
        if (_spec.Friction is { Class: { } name })
        {
            _draft.Uses(FrictionClass.TableId);
            FrictionClass.TryFind(name.Value, out var row, out _);
            _s.Add(Draft.Text(K.FrictionClass, name, ""));
            Add(K.LeastFriction, [K.FrictionClass], () => row!.Least);
            Add(K.GreatestFriction, [K.FrictionClass], () =>
                row!.Greatest ?? throw new OutsideValidityException($"class {name.Value} of VDI 2230 has no greatest friction: lubricate, or state what was measured"));
            return;
        }

        _s.Add(_draft.Number(K.LeastFriction, _spec.Friction?.Least, Key("friction")));
        _s.Add(_draft.Number(K.GreatestFriction, _spec.Friction?.Greatest, Key("friction")));
    }

    private bool ByTorque => _s[K.Method].Text is not ("yield controlled" or "angle controlled" or "hydraulic");

    private double Prevailing => _spec.Tightening?.Prevailing?.Value.Coherent ?? 0;

    private void Preload()
    {
        var tightening = _spec.Tightening;
        _s.Add(Draft.Text(K.Method, tightening?.Method, "torque wrench with friction estimated", "torque wrench, for nothing else is stated"));
        if (ByTorque || tightening?.Torque is not null)
            _s.Add(_draft.Amount(K.Torque, tightening?.Torque, Key("tightening.torque")));
        _draft.Uses(TighteningMethod.TableId);
        Add(K.PermittedPreload, [K.Yield, K.Section, K.LeastFriction], () => Tightening.PermittedPreload(Thread, N(K.LeastFriction), N(K.Yield), 0.9, N(K.Section)));
        var wrench = _s[K.Method].Text!.StartsWith("torque wrench", StringComparison.Ordinal);
        ImmutableArray<QuantityKind> torque = [.. ByTorque ? (QuantityKind[])[K.Torque] : [K.PermittedPreload], K.FaceOutside, K.FaceHole, K.LeastFriction, K.GreatestFriction];
        Add(K.GreatestPreload, torque, () => wrench ? Range().Greatest : ByTorque ? At(N(K.Torque), N(K.LeastFriction)) : Set());
        Add(K.LeastPreload, torque, () => wrench ? Range().Least : PreloadRange.ByTighteningFactor(N(K.GreatestPreload), Scatter()).Least);
        Add(K.Scatter, [K.GreatestPreload, K.LeastPreload], () => N(K.GreatestPreload) / N(K.LeastPreload));
    }

    private double Set() => _spec.Tightening?.Preload?.Value.Coherent ?? N(K.PermittedPreload);

    private double At(double torque, double friction) => Tightening.Preload(Thread, new(friction, friction), Seat, torque, Prevailing);

    private PreloadRange Range() => PreloadRange.ByFriction(
        Thread, Seat, N(K.Torque), _spec.Tightening?.WrenchError?.Value.Coherent ?? WrenchError,
        new(N(K.LeastFriction), N(K.LeastFriction)), new(N(K.GreatestFriction), N(K.GreatestFriction)), Prevailing);

    private double Scatter()
    {
        TighteningMethod.TryFind(_s[K.Method].Text!, out var method, out _);
        return method?.Greatest ?? throw new OutsideValidityException("nobody vouches for a preload that is set by feel: tighten by a wrench");
    }

    private void Tightened()
    {
        if (ByTorque)
        {
            Add(K.PermittedTorque, [K.PermittedPreload, K.FaceOutside, K.FaceHole, K.LeastFriction], () =>
                Tightening.Torque(Thread, new(N(K.LeastFriction), N(K.LeastFriction)), Seat, N(K.PermittedPreload)) + Prevailing);
        }

        ImmutableArray<QuantityKind> first = ByTorque ? [K.Torque] : [];
        Add(K.Utilisation, [.. first, K.GreatestPreload, K.PermittedPreload], () => N(K.GreatestPreload) / N(K.PermittedPreload));
        Add(K.YieldShare, [.. first, K.GreatestPreload, K.LeastFriction, K.Yield, K.Section], () =>
            Tightening.Utilisation(Thread, N(K.LeastFriction), N(K.Yield), N(K.GreatestPreload), N(K.Section)));
        Add(K.ProofShare, [.. first, K.GreatestPreload, K.Proof, K.Section], () => N(K.GreatestPreload) / (N(K.Proof) * Area(N(K.Section))));
    }

    private static double Area(double diameter) => Math.PI / 4 * diameter * diameter;

    private MaterialSpec Material(Stated<string> id) =>
        _draft.Spec.Catalogue.Materials.Find(id.Value) ?? throw new OutsideValidityException($"no catalogue holds the material {id.Value}");

    private double Modulus(Stated<string> id) =>
        Material(id).ElasticModulus?.Value.Coherent ?? throw Worked.Lacks($"elastic_modulus of material {id.Value} in the catalogue");

    private double Expansion(Stated<string> id) =>
        Material(id).ThermalExpansion?.Value.Coherent ?? throw Worked.Lacks($"thermal_expansion of material {id.Value} in the catalogue");

    private ImmutableArray<ClampedLayer> Layers =>
        [.. _spec.Clamped.Select(layer => new ClampedLayer(layer.Thickness.Value.Nominal.Coherent, Modulus(layer.Material), Expansion(layer.Material)))];

    private ImmutableArray<StackedRing> Stack =>
    [
        .. _spec.Clamped.Select(layer => new StackedRing(
            layer.Thickness.Value.Nominal.Coherent, layer.Outside!.Value.Coherent, layer.Inside!.Value.Coherent, Modulus(layer.Material), Expansion(layer.Material))),
    ];

    private void Stiffness()
    {
        _s.Add(ClampedLength());
        _s.Add(Derive.From(K.ClampRatio, _s[K.ClampedLength], length => length / Thread.Diameter));
        if (IsCentral)
        {
            var shaft = _spec.Shaft!;
            Add(K.BoltStiffness, [K.ClampedLength], () => 1 / CentralNut.ShaftCompliance(
                [new(N(K.ClampedLength), shaft.Diameter.Value.Coherent)], shaft.Bore?.Value.Coherent ?? 0, Modulus(shaft.Material)));
            Add(K.PartsStiffness, [K.ClampedLength], () => 1 / CentralNut.StackCompliance(Stack));
            Add(K.LoadFactor, [K.BoltStiffness, K.PartsStiffness], () => ClampForce.LoadFactor(1, Bolted, Parts));
            return;
        }

        Add(K.BoltStiffness, [K.Thread, K.ClampedLength], () =>
        {
            var shank = Math.Min(_spec.Shank?.Value.Coherent ?? 0, N(K.ClampedLength));
            return 1 / BoltCompliance.Whole(
                Thread, Head, [new(shank, Thread.Diameter)], N(K.ClampedLength) - shank, SteelModulus, _spec.Tapped is { } tapped ? Modulus(tapped.Material) : null);
        });
        Add(K.PartsStiffness, [K.FaceOutside, K.FaceHole, K.ClampedLength], () => 1 / new ClampedParts(
            Layers, Seat, _spec.Width?.Value.Coherent ?? throw Worked.Lacks(Key("width")), _spec.Tapped is not null).Compliance);
        Add(K.LoadFactor, [K.BoltStiffness, K.PartsStiffness], () => Math.Min(1, ClampForce.LoadFactor(
            _spec.LoadIntroduction?.Value ?? 1, Bolted, Parts, _spec.Tapped is { } tapped ? BoltCompliance.TappedHole(Thread, Modulus(tapped.Material)) : 0)));
    }

    private double Bolted => 1 / N(K.BoltStiffness);

    private double Parts => 1 / N(K.PartsStiffness);

    private Quantity ClampedLength()
    {
        var layers = _spec.Clamped.Select((layer, i) => _draft.Dimension(K.ClampedLength, layer.Thickness, Key($"clamped[{i}].thickness"))).ToImmutableArray();
        if (layers.IsEmpty)
            return Draft.Missing(K.ClampedLength, Key("clamped"));
        return Quantity.MissingReasons(layers) is { IsEmpty: false } reasons
            ? Quantity.NotEvaluated(K.ClampedLength, [], reasons)
            : Quantity.Bounded(
                K.ClampedLength, new Value(layers.Sum(each => each.Value.Nominal), layers.Sum(each => each.Value.Least), layers.Sum(each => each.Value.Greatest)), []);
    }
}
