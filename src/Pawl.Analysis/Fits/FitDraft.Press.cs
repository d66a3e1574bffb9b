using Pawl.Analysis.Core;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Fits;
using Pawl.Quantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Fits.FitQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Fits;

/// <content>What a press fit carries, and what it costs the parts.</content>
internal sealed partial class FitDraft
{
    private const double UsualHoleRz = 0.0063;
    private const double UsualShaftRz = 0.004;
    private const double UsualSafety = 1.5;

    private void Press()
    {
        Declare();
        _s.Add(Hull(K.Interference, [_s[K.ClearanceAtRoom], _s[K.Cold], _s[K.Running], _s[K.Hot]], -1));
        _s.Add(Derive.From(K.Smoothing, _s[K.HoleRoughness], _s[K.ShaftRoughness], PressFit.Smoothing));
        _s.Add(Speed());
        ImmutableArray<Quantity> sizes = [_s[K.HubOutside], _s[K.ShaftBore], _s[K.Diameter]];
        _s.Add(Quantity.Compute(K.SpeedLoss, [_s[K.Speed], .. sizes], v =>
            Joint(v[1], v[2], v[3], 1).CentrifugalLoss(v[0], _shaft.Density, _hub.Density)));
        _s.Add(SpeedShare());
        _s.Add(Pressure(sizes));
        Capacity();
        Stresses();
        Assembly(sizes);
    }

    private void Declare()
    {
        _s.Add(_draft.Amount(K.HoleRoughness, _spec.HoleRz, UsualHoleRz, "Rz 6.3 µm, common practice, no source"));
        _s.Add(_draft.Amount(K.ShaftRoughness, _spec.ShaftRz, UsualShaftRz, "Rz 4 µm, common practice, no source"));
        _s.Add(_draft.Amount(K.HubOutside, _spec.HubOutside, Key("hub_outside")));
        _s.Add(_draft.Amount(K.ShaftBore, _spec.ShaftBore, 0, "a solid shaft, for no bore is stated"));
        _s.Add(_draft.Amount(K.JointLength, _spec.Length, Key("length")));
        _s.Add(_draft.Number(K.Friction, _spec.LeastFriction, Key("least_friction")));
        _s.Add(_draft.Amount(K.AxialForce, _spec.AxialForce, 0, "none, for none is stated"));
        _s.Add(_draft.Number(K.SlipSafetyWanted, _spec.SlipSafety, UsualSafety, "1.5, common practice, no source"));
    }

    private PressFit Joint(double outside, double bore, double diameter, double length) => new(diameter, bore, outside, length, _shaft.Elastic, _hub.Elastic);

    private Quantity Speed()
    {
        if (_spec.Speed is { } stated)
            return _draft.Amount(K.Speed, stated, "");
        var name = new[] { _spec.ShaftPart?.Value, _spec.HolePart?.Value, _spec.Carries?.Value }.FirstOrDefault(part => part is not null && _bodies.ContainsKey(part));
        if (name is null || _parts.Train is not { } train)
            return Draft.Missing(K.Speed, Key("speed"));
        if (_bodies[name].Find(BodyQuantities.Speed) is not { } speed)
            return Quantity.NotEvaluated(K.Speed, [], $"the speed of {name} is not determined");
        var fastest = Bearings.LoadShares.Of(_draft, train.Subject).Fastest;
        return Quantity.Compute(K.Speed, [speed], v => Math.Abs(v[0]) * fastest);
    }

    private Quantity SpeedShare()
    {
        ImmutableArray<Quantity> inputs = [_s[K.SpeedLoss], _s[K.Interference], _s[K.Smoothing]];
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(K.SpeedLossShare, inputs, reasons);
        var left = inputs[1].Value.Least - inputs[2].Value.Nominal;
        return left > 0
            ? Quantity.Computed(K.SpeedLossShare, inputs[0].Value.Nominal / left, inputs)
            : Quantity.NotEvaluated(K.SpeedLossShare, inputs, "no overlap is left to lose");
    }

    /// <summary>Least pressure loosest, smoothed and at speed; greatest tightest and at rest.</summary>
    private Quantity Pressure(ImmutableArray<Quantity> sizes) => Bounded(
        K.Pressure, [_s[K.Interference], _s[K.Smoothing], _s[K.SpeedLoss], .. sizes], () =>
        {
            var (overlap, smoothing, loss) = (_s[K.Interference].Value, N(K.Smoothing), Math.Max(0, N(K.SpeedLoss)));
            var joint = Joint(N(K.HubOutside), N(K.ShaftBore), N(K.Diameter), 1);
            var (least, greatest) = (joint.Pressure(overlap.Least - smoothing - loss), joint.Pressure(overlap.Greatest - smoothing));
            return new(Math.Clamp(joint.Pressure(overlap.Nominal - smoothing), least, greatest), least, greatest);
        });

    private static Quantity Bounded(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<Extent> value)
    {
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return Quantity.NotEvaluated(kind, inputs, reasons);
        try
        {
            return Quantity.Bounded(kind, value(), inputs);
        }
        catch (OutsideValidityException outside)
        {
            return Quantity.NotEvaluated(kind, inputs, outside.Message);
        }
    }

    private static Quantity Single(QuantityKind kind, ImmutableArray<Quantity> inputs, Func<double> value) => Bounded(kind, inputs, () => Extent.Exactly(value()));

    private void Capacity()
    {
        ImmutableArray<Quantity> inputs = [_s[K.Pressure], _s[K.Friction], _s[K.JointLength], _s[K.Diameter]];
        double Axial() => Joint(N(K.HubOutside), N(K.ShaftBore), N(K.Diameter), N(K.JointLength)).AxialCapacity(_s[K.Pressure].Value.Least, N(K.Friction));
        _s.Add(Single(K.AxialCapacity, inputs, Axial));
        _s.Add(Single(K.TorqueCapacity, inputs, () => Axial() * N(K.Diameter) / 2));
        _s.Add(Torque());
        ImmutableArray<Quantity> loads = [_s[K.AxialCapacity], _s[K.TorqueCarried], _s[K.AxialForce], _s[K.Diameter]];
        _s.Add(Single(K.SlipSafety, loads, () =>
            Joint(N(K.HubOutside), N(K.ShaftBore), N(K.Diameter), N(K.JointLength)).SlipSafety(
                _s[K.Pressure].Value.Least, N(K.Friction), N(K.TorqueCarried), N(K.AxialForce))));
    }

    /// <summary>The torque with K_A, or at the peak if that is more.</summary>
    private Quantity Torque()
    {
        if (_spec.Torque is { Value.Coherent: 0 } none)
            return _draft.Amount(K.TorqueCarried, none, "");
        if (_spec.Torque is null && _spec.Carries is null)
            return Draft.Missing(K.TorqueCarried, $"{Key("carries")} or {Key("torque")}");
        if (_parts.Train?.Subject is not { } train)
            return Quantity.NotEvaluated(K.TorqueCarried, [], "train is not stated");
        ImmutableArray<Quantity> factors = [train[D.ApplicationFactor], train[D.PeakTorque], train[T.InputTorque]];
        if (_spec.Torque is { } stated)
            return Quantity.Compute(K.TorqueCarried, factors, v => stated.Value.Coherent * Factor(v[0], v[1], v[2]));
        if (_bodies.GetValueOrDefault(_spec.Carries!.Value)?.Find(BodyQuantities.Torque) is not { } torque)
            return Quantity.NotEvaluated(K.TorqueCarried, [], $"the torque of {_spec.Carries.Value} is not determined");
        return Quantity.Compute(K.TorqueCarried, [torque, .. factors], v => Math.Abs(v[0]) * Factor(v[1], v[2], v[3]));

        static double Factor(double application, double peak, double rated) => Math.Max(application, peak / rated);
    }

    private void Stresses()
    {
        PressFit Plain() => Joint(N(K.HubOutside), N(K.ShaftBore), N(K.Diameter), 1);
        _s.Add(Single(K.HubStress, [_s[K.Pressure], _s[K.HubOutside], _s[K.Diameter]], () => Plain().HubStress(_s[K.Pressure].Value.Greatest)));
        _s.Add(Single(K.ShaftStress, [_s[K.Pressure], _s[K.ShaftBore], _s[K.Diameter]], () => Plain().ShaftStress(_s[K.Pressure].Value.Greatest)));
        _s.Add(_draft.Amount(K.HubYield, _spec.HubYield, Key("hub_yield")));
        _s.Add(_draft.Amount(K.ShaftYield, _spec.ShaftYield, Key("shaft_yield")));
    }

    private void Assembly(ImmutableArray<Quantity> sizes)
    {
        if (_spec.Joined is { Value: "warm" })
        {
            _s.Add(Single(K.Joining, [_s[K.ClearanceAtRoom], _s[K.HoleExpansion], _s[K.Diameter]], () =>
                Joint(2 * N(K.Diameter), 0, N(K.Diameter), 1).HubTemperature(
                    -_s[K.ClearanceAtRoom].Value.Least, N(K.Diameter) / 1000, N(K.HoleExpansion), N(K.ShaftExpansion))));
            _s.Add(_draft.Amount(K.GreatestJoining, _spec.GreatestJoining, Key("greatest_joining")));
            return;
        }

        _s.Add(_draft.Number(K.PressFriction, _spec.GreatestFriction, Key("greatest_friction")));
        _s.Add(Single(K.PressForce, [_s[K.PressFriction], _s[K.ClearanceAtRoom], _s[K.Smoothing], _s[K.JointLength], .. sizes], () =>
        {
            var joint = Joint(N(K.HubOutside), N(K.ShaftBore), N(K.Diameter), N(K.JointLength));
            return joint.AxialCapacity(joint.Pressure(-_s[K.ClearanceAtRoom].Value.Least - N(K.Smoothing)), N(K.PressFriction));
        }));
        if (_spec.GreatestPressForce is { } press)
            _s.Add(_draft.Amount(K.GreatestPressForce, press, ""));
    }
}
