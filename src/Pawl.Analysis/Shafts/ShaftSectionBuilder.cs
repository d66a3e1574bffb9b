using Pawl.Analysis.Core;
using Pawl.Mechanics.Shafts;
using Pawl.Specs.Model;
using D = Pawl.Analysis.Rating.DutyQuantities;
using K = Pawl.Analysis.Shafts.ShaftSectionQuantities;
using S = Pawl.Analysis.Shafts.ShaftQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Shafts;

/// <summary>One section of a shaft: stresses, notch, safeties.</summary>
internal sealed class ShaftSectionBuilder
{
    /// <summary>Moments below this are rounding of forces that cancel, N·mm.</summary>
    private const double Nothing = 1e-3;

    private readonly AnalysisContext _context;
    private readonly ShaftBuilder _shaft;
    private readonly ShaftSectionSpec _spec;
    private readonly double? _from;
    private readonly Subject _s;

    private ShaftSectionBuilder(AnalysisContext context, ShaftBuilder shaft, ShaftSectionSpec spec, double? from)
    {
        (_context, _shaft, _spec, _from) = (context, shaft, spec, from);
        _s = context.Begin(SubjectKinds.ShaftSection, $"shafts.{shaft.Spec.Name.Value}.{spec.Name.Value}", spec.Name.Span)
            .Relate("train", shaft.Train.Subject).Relate("shaft", shaft.Subject);
    }

    public static void AddAll(AnalysisContext context, ShaftBuilder shaft)
    {
        var from = shaft.Spec.From?.Value.Coherent;
        foreach (var spec in shaft.Spec.Sections.Entries)
        {
            new ShaftSectionBuilder(context, shaft, spec, from).Add();
            from += spec.Length.Value.Coherent;
        }
    }

    private string Key(string key) => _shaft.Key($"sections.{_spec.Name.Value}.{key}");

    private NotchSpec? Notch => _spec.Notch;

    private ShaftStrength Strength(double tensile, double yield, double factor) => new(tensile * factor, yield * factor, _shaft.SteelOf());

    /// <summary>Diameter of the nominal stress: the bottom of a groove or spline, else the outside.</summary>
    private double Nominal(double outside) => Notch is { Kind.Value: "round-groove" or "square-groove" or "spline", Bottom: { } bottom } ? bottom.Value.Coherent : outside;

    private void Add()
    {
        _s.Add(_context.Dimension(K.Outside, _spec.Outside, ""));
        _s.Add(_spec.Bore is null ? _context.Assumed(K.Bore, 0, "0: a solid section") : _context.Dimension(K.Bore, _spec.Bore, ""));
        if (_spec.Bore is not null)
            _s.Add(Derive.From(K.Wall, _s[K.Outside], _s[K.Bore], (outside, bore) => (outside - bore) / (2 * outside)));
        _s.Add(_context.Amount(K.Roughness, _spec.Roughness, Key("roughness")));
        _s.Add(AnalysisContext.Text(K.Notch, Notch?.Kind, "none", "none, for none is stated"));
        var carries = _spec.CarriesTorque is not { Value: false };
        _s.Add(Derive.From(K.Torque, _shaft.Subject[S.Torque], torque => carries ? torque : 0));
        var train = _shaft.Train.Subject;
        _s.Add(_shaft.Bent(K.Moment, _shaft.Loads, () => Moment(place => _shaft.Max((torque, speed) => _shaft.Bending!.Moment(place, torque, speed)))));
        _s.Add(Peak(train[D.PeakTorque]));
        Stresses(train[D.ApplicationFactor]);
        Factors();
        Safeties(train);
    }

    private Quantity Peak(Quantity peak)
    {
        if (!peak.IsEvaluated)
            return Quantity.NotEvaluated(K.PeakMoment, [peak], peak.Reasons);
        var ratio = _shaft.Duty.Peak ?? 0;
        return _shaft.Bent(K.PeakMoment, [peak], () => Moment(place => Math.Max(
            Math.Max(At(place, ratio, 0), At(place, -ratio, 0)), Math.Max(At(place, ratio, _shaft.Duty.Fastest), At(place, -ratio, _shaft.Duty.Fastest)))));

        double At(double place, double torque, double speed) => _shaft.Bending!.Moment(place, torque, speed);
    }

    /// <summary>The greatest in the section, or that at the stated place; straight between the places, so the ends decide.</summary>
    private double Moment(Func<double, double> at)
    {
        var (from, to) = (_from!.Value, _from.Value + _spec.Length.Value.Coherent);
        if (_spec.At is { } stated)
        {
            var place = stated.Value.Coherent;
            return place >= from && place <= to
                ? at(place)
                : throw new OutsideValidityException(FormattableString.Invariant($"{Key("at")} is {place:0.###} mm, but the section lies from {from:0.###} mm to {to:0.###} mm"));
        }

        var greatest = Math.Max(at(from), at(to));
        foreach (var place in _shaft.Bending!.Places)
        {
            if (place > from && place < to)
                greatest = Math.Max(greatest, Math.Max(at(place), at(place - 1e-9)));
        }

        return greatest < Nothing ? 0 : greatest;
    }

    /// <summary>Swing of the torque over the rated one: to that in the other direction, or to none.</summary>
    private (double Swing, double Mean) Torques()
    {
        var most = _shaft.Duty.States.Max(share => Math.Abs(share.Torque));
        return (most * (1 + _shaft.Duty.Reverse) / 2, most * (1 - _shaft.Duty.Reverse) / 2);
    }

    private void Stresses(Quantity application)
    {
        _s.Add(Quantity.Compute(
            K.BendingStress, [_s[K.Outside], _s[K.Bore], _s[K.Moment]], v => new ShaftSection(Nominal(v[0]), v[1]).Stresses(0, v[2], 0).Bending));
        _s.Add(_shaft.Duty.Reasons.IsEmpty
            ? Quantity.Compute(
                K.TorsionStress, [_s[K.Outside], _s[K.Bore], _s[K.Torque], application],
                v => new ShaftSection(Nominal(v[0]), v[1]).Stresses(0, 0, v[2] * Torques().Swing).Torsion)
            : Quantity.NotEvaluated(K.TorsionStress, [], _shaft.Duty.Reasons));
    }

    private ImmutableArray<Quantity> Strengths => [_shaft.Subject[S.Tensile], _shaft.Subject[S.Yield], _shaft.Subject[S.Technological]];

    private void Factors()
    {
        if (Notch is null)
            return;
        _s.Add(Of(K.BendingNotch, notch => notch.Bending));
        _s.Add(Of(K.TorsionNotch, notch => notch.Torsion));

        Quantity Of(QuantityKind kind, Func<ShaftNotch, double> which) =>
            Quantity.Compute(kind, [_s[K.Outside], .. Strengths], v => which(NotchOf(v[0], Strength(v[1], v[2], v[3]))));
    }

    private ShaftNotch NotchOf(double outside, ShaftStrength strength) => Notch switch
    {
        null => ShaftNotch.None,
        { Kind.Value: "shoulder" } => ShaftNotch.Shoulder(Needed(Notch.Large, "large"), outside, Needed(Notch.Radius, "radius"), strength),
        { Kind.Value: "round-groove" } => ShaftNotch.RoundGroove(outside, Needed(Notch.Bottom, "bottom"), Needed(Notch.Radius, "radius"), strength),
        { Kind.Value: "square-groove" } => ShaftNotch.SquareGroove(
            outside, Needed(Notch.Bottom, "bottom"), Needed(Notch.Width, "width"), Needed(Notch.Radius, "radius"), strength),
        { Kind.Value: "keyway" } => ShaftNotch.Keyway(outside, strength, Notch.Keys?.Value ?? 1),
        { Kind.Value: "pressed-hub" } => ShaftNotch.PressedHub(outside, strength),
        _ => ShaftNotch.InvoluteSpline(Needed(Notch.Bottom, "bottom"), strength),
    };

    private double Needed(Specs.Text.Stated<Pawl.Quantities.Amount>? value, string key) =>
        value?.Value.Coherent ?? throw new OutsideValidityException($"{Key($"notch.{key}")} is not stated");

    /// <summary>A number that the notch governs: findings point there.</summary>
    private Quantity AtNotch(QuantityKind kind, ImmutableArray<Quantity> inputs, Formula formula) =>
        Quantity.Compute(kind, [_s[K.Notch], .. inputs], v => formula(v[1..]));

    private void Safeties(Subject train)
    {
        // What neither torque nor moment loads has no safety to speak of.
        if (_s[K.Torque] is { IsEvaluated: true, Value.Max: 0 } && _s[K.Moment] is { IsEvaluated: true, Value.Max: 0 } && _shaft.AxialLasting + _shaft.AxialTeeth == 0)
            return;

        var (outside, bore) = (_s[K.Outside], _s[K.Bore]);
        var (teeth, lasting) = (_shaft.AxialTeeth, _shaft.AxialLasting);
        _s.Add(AtNotch(
            K.StaticSafety, [outside, bore, _shaft.Subject[S.Yield], _s[K.PeakMoment], _s[K.Torque], train[D.PeakTorque], _shaft.Subject[S.Technological], _shaft.Subject[S.Tensile], train[T.InputTorque]],
            v =>
            {
                var strength = Strength(v[7], v[2], v[6]);
                var peak = v[5] / v[8];
                var stresses = new ShaftSection(Nominal(v[0]), v[1]).Stresses(teeth * peak + lasting, v[3], v[4] * peak);
                return ShaftFatigue.StaticSafety(strength, NotchOf(v[0], strength), stresses, v[1] > 0);
            }));
        if (!_shaft.Duty.Reasons.IsEmpty)
        {
            _s.Add(Quantity.NotEvaluated(K.FatigueSafety, [], _shaft.Duty.Reasons));
            return;
        }

        var (swing, mean) = Torques();
        _s.Add(AtNotch(
            K.FatigueSafety,
            [outside, bore, _shaft.Subject[S.Tensile], _s[K.Moment], _s[K.Torque], train[D.ApplicationFactor], _s[K.Roughness], _shaft.Subject[S.Technological], _shaft.Subject[S.Yield]],
            v =>
            {
                var strength = Strength(v[2], v[8], v[7]);
                var diameter = Nominal(v[0]);
                var section = new ShaftSection(diameter, v[1]);
                var notched = ShaftFatigue.NotchedStrength(strength, NotchOf(v[0], strength), diameter, v[6] * 1000);
                return ShaftFatigue.Safety(
                    strength, notched, section.Stresses(teeth * mean, 0, v[4] * mean), section.Stresses(teeth * swing + lasting, v[3], v[4] * swing), ShaftOverload.RatioStays);
            }));
    }
}
