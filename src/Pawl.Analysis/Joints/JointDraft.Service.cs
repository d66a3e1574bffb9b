using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Joints;
using B = Pawl.Analysis.Bearings.BearingQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Joints.JointQuantities;
using P = Pawl.Analysis.Joints.JointStrengthQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;
using Value = Pawl.Quantities.Extent;

namespace Pawl.Analysis.Joints;

/// <content>What becomes of the preload in service.</content>
internal sealed partial class JointDraft
{
    private bool CarriesTorque => _spec.Carries is not null || _spec.Torque is not null;

    // Interfaces between the layers, and the one to the tapped part or to the shoulder; a pack of k shims has k + 1 faces instead of two.
    private int Interfaces => _spec.Clamped.Length - 1 + (IsCentral || _spec.Tapped is not null ? 1 : 0) + Math.Max(0, (_spec.Shims?.Value ?? 0) - 1);

    private void Losses()
    {
        _draft.Uses(Mechanics.Joints.Embedding.TableId);
        Add(K.Embedding, [], () => Mechanics.Joints.Embedding.Amount(
            _spec.Roughness?.Value.Coherent ?? throw Worked.Lacks(Key("roughness")), _spec.Tapped is not null || IsCentral ? 1 : 2, Interfaces, CarriesTorque));
        Add(K.EmbeddingLoss, [K.Embedding, K.BoltStiffness, K.PartsStiffness], () => ClampForce.EmbeddingLoss(N(K.Embedding), Bolted, Parts));
        Add(K.EmbeddingShare, [K.EmbeddingLoss, K.LeastPreload], () => N(K.EmbeddingLoss) / N(K.LeastPreload));
        _s.Add(ThermalChange());
        _s.Add(AxialForce());
    }

    private Quantity ThermalChange()
    {
        ImmutableArray<Quantity> inputs = [_s[K.BoltStiffness], _s[K.PartsStiffness]];
        var oil = _draft.Spec.Duty?.Oil;
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(K.ThermalChange, inputs, reasons);
        if (oil?.Coldest is null || oil.Hottest is null)
            return Draft.Missing(K.ThermalChange, oil?.Coldest is null ? "duty.oil.coldest" : "duty.oil.hottest");
        try
        {
            var assembly = _spec.AssemblyTemperature?.Value.Coherent ?? Room;
            var (cold, hot) = (Change(oil.Coldest.Value.Coherent - assembly), Change(oil.Hottest.Value.Coherent - assembly));
            var nominal = oil.Running is { } running ? Change(running.Value.Coherent - assembly) : 0;
            return Quantity.Bounded(K.ThermalChange, new Value(nominal, Math.Min(0, Math.Min(cold, hot)), Math.Max(0, Math.Max(cold, hot))), inputs);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(K.ThermalChange, inputs, outside.Message);
        }
    }

    private double Change(double rise)
    {
        var expansion = _spec.Shaft is { } shaft ? Expansion(shaft.Material) : SteelExpansion;
        return ClampForce.ThermalChange(Layers, rise, expansion, rise, Bolted, Parts);
    }

    private double Cold => _s[K.ThermalChange].Value.Least;

    private double Hot => _s[K.ThermalChange].Value.Greatest;

    private Quantity AxialForce()
    {
        if (_spec.Bearing is { } name)
        {
            if (_draft.Subjects.FirstOrDefault(subject => subject.Path == $"bearings.{name.Value}")?.Find(B.AxialLoad) is not { } load)
                return Quantity.NotEvaluated(K.AxialForce, [], $"the axial load of bearing {name.Value} is not known");
            var more = _spec.AxialForce?.Value.Coherent ?? 0;
            var peak = PeakOverRated(_train);
            return Quantity.Compute(K.AxialForce, [load], v => v[0] * peak + more);
        }

        if (_spec.AxialForce is { } force)
            return IsCentral ? _draft.Amount(K.AxialForce, force, "") : Worked.Out(K.AxialForce, [_s[K.Bolts]], () => force.Value.Coherent / Bolts);
        return IsCentral ? Draft.Missing(K.AxialForce, Key("bearing")) : _draft.Assumed(K.AxialForce, 0, "none, for nothing is stated");
    }

    /// <summary>Peak over the rated torque with its application factor; no less than 1.</summary>
    public static double PeakOverRated(Subject train) =>
        train.Find(D.PeakTorque) is { IsEvaluated: true } peak && train.Find(T.InputTorque) is { IsEvaluated: true } torque
        && train.Find(D.ApplicationFactor) is { IsEvaluated: true } application
            ? Math.Max(1, peak.Value.Nominal / (torque.Value.Nominal * application.Value.Nominal))
            : 1;

    private void Service()
    {
        Add(K.Clamp, [K.LeastPreload, K.EmbeddingLoss, K.ThermalChange, K.LoadFactor, K.AxialForce], () =>
            ClampForce.Residual(N(K.LeastPreload), N(K.EmbeddingLoss), Cold, IsCentral ? 0 : N(K.LoadFactor), N(K.AxialForce)));
        if (!_s[K.AxialForce].IsEvaluated || N(K.AxialForce) > 0)
        {
            Add(K.PartingSafety, [K.LeastPreload, K.EmbeddingLoss, K.ThermalChange, K.LoadFactor, K.AxialForce], () => ClampForce.SeparatingLoad(
                N(K.LeastPreload), N(K.EmbeddingLoss), Cold, IsCentral ? 0 : N(K.LoadFactor)) / N(K.AxialForce));
        }

        Add(K.ServiceSafety, [K.GreatestPreload, K.Yield, K.Section, K.LeastFriction, K.ThermalChange, K.LoadFactor, K.AxialForce], () => N(K.Yield)
            / Tightening.ServiceStress(Thread, Tightening.ThreadTorque(Thread, N(K.LeastFriction), N(K.GreatestPreload)), Force(), N(K.Section)));
    }

    /// <summary>Greatest force in the bolt in service, N.</summary>
    private double Force() => ClampForce.BoltForce(N(K.GreatestPreload), Hot, N(K.LoadFactor), N(K.AxialForce));

    private void Across()
    {
        if (!CarriesTorque)
            return;
        _s.Add(Carried());
        var reversing = _train.Find(D.ReverseTorque) is not { IsEvaluated: true, Value.Nominal: 0 };
        _s.Add(_draft.Number(
            P.SlipSafetyWanted, _spec.SlipSafety, reversing ? 1.8 : 1.2,
            reversing ? "1.8, VDI 2230 for torque that reverses, from memory" : "1.2, VDI 2230 for torque in one direction, from memory"));
        var dowels = _draft.Spec.Dowels.Entries.FirstOrDefault(set => set.Joint?.Value == _spec.Name.Value && set.Purpose.Value == "carry");
        _s.Add(dowels is null
            ? Quantity.OfTruth(P.DowelsCarry, Origin.Computed.Instance, false, [])
            : Quantity.OfTruth(P.DowelsCarry, Draft.Declared(dowels.Purpose), true, []));
        ImmutableArray<QuantityKind> inputs = [K.Clamp, K.Bolts];
        Add(P.SlipTorque, inputs, () =>
            Math.Max(0, Flange.FrictionTorque(Bolts, N(K.Clamp), FaceFriction, Circle) - (_spec.ForceAcross?.Value.Coherent ?? 0) * Circle / 2));
        Add(P.SlipSafety, [K.Clamp, P.CarriedTorque, K.Bolts], () =>
            Math.Max(0, N(K.Clamp)) * FaceFriction / Flange.ForceAcross(Bolts, N(P.CarriedTorque), _spec.ForceAcross?.Value.Coherent ?? 0, Circle));
    }

    private double FaceFriction => _spec.FaceFriction?.Value ?? throw Worked.Lacks(Key("face_friction"));

    private double Circle => _spec.BoltCircle?.Value.Coherent ?? throw Worked.Lacks(Key("bolt_circle"));

    private Quantity Carried() => _spec.Torque is { } torque
        ? _draft.Amount(P.CarriedTorque, torque, "")
        : CarriedTorque(P.CarriedTorque, _spec.Carries!.Value, _train, _bodies);

    /// <summary>Torque of a body with its application factor, or at the peak.</summary>
    public static Quantity CarriedTorque(QuantityKind kind, string body, Subject train, IReadOnlyDictionary<string, Subject> bodies)
    {
        if (!bodies.TryGetValue(body, out var subject))
            return Quantity.NotEvaluated(kind, [], $"the torque of {body} is not known");
        var (torque, application) = (subject[BodyQuantities.Torque], train[D.ApplicationFactor]);
        return train.Find(D.PeakTorque) is { IsEvaluated: true } peak
            ? Quantity.Compute(kind, [torque, application, peak, train[T.InputTorque]], v => Math.Abs(v[0]) * Math.Max(v[1], v[2] / v[3]))
            : Quantity.Compute(kind, [torque, application], v => Math.Abs(v[0]) * v[1]);
    }

    private void Fatigue()
    {
        if (_s[K.AxialForce] is { IsEvaluated: true, Value.Nominal: 0 })
            return;
        Add(P.Amplitude, [K.AxialForce, K.LoadFactor], () => BoltFatigue.Amplitude(
            Thread, N(K.LoadFactor), N(K.AxialForce), (_spec.LeastAxialForce?.Value.Coherent ?? 0) / Bolts));
        Add(P.PermittedAmplitude, [K.LeastPreload, K.Yield, K.LoadFactor, K.AxialForce], () => _spec.ThreadsRolled is { Value: "after" }
            ? BoltFatigue.RolledAfterTreatment(
                Thread,
                (N(K.GreatestPreload) + N(K.LoadFactor) * (N(K.AxialForce) + (_spec.LeastAxialForce?.Value.Coherent ?? 0) / Bolts) / 2) / (N(K.Yield) * Area(N(K.Section))))
            : BoltFatigue.RolledBeforeTreatment(Thread));
        Add(P.FatigueSafety, [P.Amplitude, P.PermittedAmplitude], () => N(P.PermittedAmplitude) / N(P.Amplitude));
    }
}
