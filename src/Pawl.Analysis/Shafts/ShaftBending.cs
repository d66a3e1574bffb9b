using Pawl.Analysis.Bearings;
using Pawl.Analysis.Core;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Shafts;
using Pawl.Specs.Model;

namespace Pawl.Analysis.Shafts;

/// <summary>A shaft bent by its loads, at nominal dimensions: solved once for all its quantities.</summary>
internal sealed class ShaftBending
{
    /// <summary>Greatest length of a slice of the shaft's own mass, mm.</summary>
    private const double Slice = 10;

    /// <summary>Moments below this are rounding of forces that cancel, N·mm.</summary>
    private const double Nothing = 1e-3;

    private readonly AnalysisContext _context;
    private readonly Subject _shaft;
    private readonly ShaftSpec _spec;
    private readonly HeldBodies? _held;
    private readonly LoadShares _duty;
    private readonly ImmutableArray<ShaftSegment> _segments;
    private readonly BodyBending? _bent;
    private readonly ImmutableArray<string> _reasons;

    private ShaftBending(Subject shaft)
    {
        (_context, _shaft, _spec) = (shaft.Context, shaft, (ShaftSpec)shaft.Model);
        _held = _context.Held;
        _duty = LoadShares.Of(shaft.Reach("train")!);
        _segments = [.. _spec.Sections.Entries.Select(each => new ShaftSegment(
            each.Length.Value.Coherent, new(each.Outside.Value.Nominal.Coherent, each.Bore?.Value.Nominal.Coherent ?? 0)))];
        (_bent, _reasons) = Bend();
    }

    public static ShaftBending Of(Subject shaft) => shaft.Context.Once(shaft, static each => new ShaftBending(each));

    /// <summary>Why nothing is known of how it bends; empty when it is.</summary>
    public ImmutableArray<string> Reasons => [.. _reasons, .. _duty.Reasons];

    /// <summary>Axial force of the teeth at the rated torque, N.</summary>
    public double AxialTeeth => _held is null ? 0 : Math.Abs(_held.Forces.Of(Body).AxialTeeth);

    /// <summary>Axial forces that stay, N.</summary>
    public double AxialLasting => _held?.Forces.Of(Body).AxialLasting ?? 0;

    private string Body => _spec.Body.Value;

    private double Modulus => _shaft[ShaftQuantities.Modulus].Value.Nominal;

    private (BodyBending?, ImmutableArray<string>) Bend()
    {
        if (_segments.IsEmpty)
            return (null, [$"{_shaft.Keys}.sections is not stated"]);
        if (_spec.From is null)
            return (null, [$"{_shaft.Keys}.from is not stated"]);
        if (!_shaft[ShaftQuantities.Modulus].IsEvaluated)
            return (null, _shaft[ShaftQuantities.Modulus].Reasons);
        if (_context.Spec.Train!.Fixed.Any(each => each.Value == Body))
            return (null, [$"{Body} is held; what bends it is not computed"]);
        return (BodyBending.Of(_held, Body, _spec.From.Value.Coherent, _segments, Modulus, out var reasons), reasons);
    }

    /// <summary>Greatest slope at a bearing, rad.</summary>
    public double BearingSlope() => Bearings.Max(place => SlopeAt(place.Support!.Position));

    /// <summary>Greatest slope at a bearing over what its kind stands; null where no kind is known.</summary>
    public double? BearingSlopeShare() => Bearings.Where(place => place.Type is not null).ToImmutableArray() is { IsEmpty: false } known
        ? known.Max(place => SlopeAt(place.Support!.Position) / SlopeLimits.OfBearing(place.Type!.Kind))
        : null;

    /// <summary>Whether a gear with a place sits on it.</summary>
    public bool HasGears => !Gears.IsEmpty;

    /// <summary>Greatest slope at a gear, rad.</summary>
    public double GearSlope() => Gears.Max(SlopeAt);

    /// <summary>Greatest deflection at a gear, mm.</summary>
    public double GearDeflection() => Gears.Max(place => Max((torque, speed) => _bent!.Deflection(place, torque, speed)));

    /// <summary>Greatest bending moment in a section over all states of the duty, N·mm.</summary>
    public double Moment(Subject section) => InSection(section, place => Max((torque, speed) => _bent!.Moment(place, torque, speed)));

    /// <summary>Greatest bending moment in a section at the peak torque, standing or turning, N·mm.</summary>
    public double PeakMoment(Subject section)
    {
        var ratio = _duty.Peak ?? 0;
        return InSection(section, place => Math.Max(
            Math.Max(At(place, ratio, 0), At(place, -ratio, 0)), Math.Max(At(place, ratio, _duty.Fastest), At(place, -ratio, _duty.Fastest))));

        double At(double place, double torque, double speed) => _bent!.Moment(place, torque, speed, BearingLoads.Overload(ratio));
    }

    /// <summary>Lowest critical speed in bending, rad/s.</summary>
    public double CriticalSpeed() => Lowest(springs: null);

    /// <summary>Lowest critical speed in bending on two bearings that give way, rad/s.</summary>
    public double CriticalSpeedOnSprings() => Lowest([.. Springs.Select(each => new ShaftSpring(
        each.Support!.Position, StiffnessOf(each)!.Value.Nominal))]);

    /// <summary>Whether two bearings hold it and the stiffness of both is known.</summary>
    public bool IsOnSprings => Springs is [var one, var other] && StiffnessOf(one) is { IsEvaluated: true } && StiffnessOf(other) is { IsEvaluated: true };

    private ImmutableArray<BearingPlace> Springs => Reasons.IsEmpty ? Bearings : [];

    private Quantity? StiffnessOf(BearingPlace place) =>
        _context.Find(SubjectKinds.Bearing, $"bearings.{place.Name}")?.Find(BearingStiffnessQuantities.RadialStiffness);

    private double Lowest(ShaftSpring[]? springs)
    {
        var start = _spec.From!.Value.Coherent;
        var masses = Mechanics.Shafts.CriticalSpeed.OwnMass(start, _segments, _shaft[ShaftQuantities.Density].Value.Nominal, Slice);
        var own = masses.Sum(mass => mass.Mass);
        if (_context.Spec.Train!.Bodies.Find(Body) is { Mass: { } stated, MassAt: { } at } && stated.Value.Coherent > own)
            masses = masses.Add(new(at.Value.Coherent, stated.Value.Coherent - own));
        ImmutableArray<ShaftSupport> supports = [.. _held!.SupportsOf(Body).Select(each => new ShaftSupport(each.Position, false))];
        // A mass right over a stiff bearing does not move, and whirls at no speed.
        if (springs is null)
            masses = [.. masses.Where(mass => supports.All(support => Math.Abs(support.Position - mass.Position) > 1e-9))];
        var influences = Mechanics.Shafts.CriticalSpeed.Influences(start, _segments, Modulus, supports, masses);
        if (springs is [var one, var other])
            influences = Mechanics.Shafts.CriticalSpeed.OnSprings(influences, masses, one, other);
        return Mechanics.Shafts.CriticalSpeed.Lowest(influences, [.. masses.Select(mass => mass.Mass)]);
    }

    private ImmutableArray<BearingPlace> Bearings => _held?.Holding(Body) ?? [];

    private ImmutableArray<double> Gears =>
        [.. _context.Train!.GearsOn(Body).Select(TrainForces.PlaceOf).OfType<Quantity>().Select(place => place.Value.Nominal)];

    private double SlopeAt(double place) => Max((torque, speed) => _bent!.Slope(place, torque, speed));

    /// <summary>The greatest of a value over all states of the duty, in both directions of drive.</summary>
    private double Max(Func<double, double, double> value)
    {
        var greatest = 0.0;
        foreach (var share in _duty.States)
            greatest = Math.Max(greatest, Math.Max(value(share.Torque, share.Speed), _duty.Reverse == 0 ? 0 : value(-share.Torque * _duty.Reverse, share.Speed)));
        return greatest;
    }

    /// <summary>The greatest in the section, or that at the stated place; straight between the places, so the ends decide.</summary>
    private double InSection(Subject section, Func<double, double> at)
    {
        var spec = (ShaftSectionSpec)section.Model;
        var from = _spec.From!.Value.Coherent;
        foreach (var each in _spec.Sections.Entries.TakeWhile(each => each != spec))
            from += each.Length.Value.Coherent;
        var to = from + spec.Length.Value.Coherent;
        if (spec.At is { } stated)
        {
            var place = stated.Value.Coherent;
            return place >= from && place <= to
                ? at(place)
                : throw new OutsideValidityException(FormattableString.Invariant(
                    $"{section.Keys}.at is {place:0.###} mm, but the section lies from {from:0.###} mm to {to:0.###} mm"));
        }

        var greatest = Math.Max(at(from), at(to));
        foreach (var place in _bent!.Places)
        {
            if (place > from && place < to)
                greatest = Math.Max(greatest, Math.Max(at(place), at(place - 1e-9)));
        }

        return greatest < Nothing ? 0 : greatest;
    }
}
