using Pawl.Analysis.Bearings;
using Pawl.Mechanics.Bearings;
using Pawl.Mechanics.Shafts;

namespace Pawl.Analysis.Shafts;

/// <summary>A body bent by its loads, cause by cause, at any torque and speed.</summary>
/// <remarks>Each cause is linear: what the teeth and the orbit do is added as vectors; what has no known direction, in size.</remarks>
internal sealed class BodyBending
{
    private readonly BentShaft _radial;
    private readonly BentShaft _tangential;
    private readonly BentShaft _orbit;
    private readonly ImmutableArray<BentShaft> _sharing;
    private readonly ImmutableArray<BentShaft> _lasting;

    private BodyBending(HeldBodies held, string body, double start, IReadOnlyList<ShaftSegment> segments, double modulus)
    {
        var forces = held.Forces.Of(body);
        ImmutableArray<ShaftSupport> supports = [.. held.SupportsOf(body).Select(each => new ShaftSupport(each.Position, false))];
        var leaning = held.LeaningOn(body);
        _radial = Bent([.. forces.TeethRadial, .. Pressing(load => load.Radial)]);
        _tangential = Bent([.. forces.TeethTangential, .. Pressing(load => load.Tangential)]);
        _orbit = Bent([.. forces.Orbit, .. Pressing(load => load.Orbit)]);
        _sharing = [.. forces.Sharing.Concat(Sized(load => load.Sharing)).Select(load => Bent([load]))];
        _lasting = [.. forces.Lasting.Concat(Sized(load => load.Lasting)).Select(load => Bent([load]))];
        Places = [.. supports.Select(each => each.Position), .. forces.TeethRadial.Concat(forces.Orbit).Concat(forces.Lasting).Concat(forces.Sharing).Select(load => load.Position), .. leaning.Select(each => each.Support!.Position)];

        BentShaft Bent(IReadOnlyList<ShaftLoad> loads) => BentShaft.Of(start, segments, modulus, supports, [.. loads.Select(load => load with { Axial = 0 })]);

        IEnumerable<ShaftLoad> Pressing(Func<SupportLoad, Reaction> of) => leaning.Where(each => each.Load is not null)
            .Select(each => new ShaftLoad(each.Support!.Position, -of(each.Load!.Value).X, -of(each.Load!.Value).Y));

        IEnumerable<ShaftLoad> Sized(Func<SupportLoad, double> of) => leaning.Where(each => each.Load is not null && of(each.Load.Value) != 0)
            .Select(each => new ShaftLoad(each.Support!.Position, of(each.Load!.Value), 0));
    }

    /// <summary>Where the moment may have a corner.</summary>
    public ImmutableArray<double> Places { get; }

    /// <summary>The bent body, or why it is not known.</summary>
    public static BodyBending? Of(
        HeldBodies? held, string body, double? start, IReadOnlyList<ShaftSegment> segments, double modulus, out ImmutableArray<string> reasons)
    {
        reasons = held is null ? [$"no bearing holds {body}"] : held.ReasonsOf(body);
        if (!reasons.IsEmpty || held is null)
            return null;
        try
        {
            return new(held, body, start ?? 0, segments, modulus);
        }
        catch (OutsideValidityException outside)
        {
            reasons = [outside.Message];
            return null;
        }
    }

    /// <summary>Bending moment at a place, N·mm.</summary>
    /// <param name="place">Along the axis, mm.</param>
    /// <param name="torque">Torque over the rated one, with its direction.</param>
    /// <param name="speed">Speed over the rated one.</param>
    /// <param name="overload">Machine and weight over their lasting size.</param>
    public double Moment(double place, double torque, double speed, double overload = 1) => Sum(torque, speed, bent => bent.MomentAt(place), overload);

    /// <summary>Slope at a place, rad.</summary>
    public double Slope(double place, double torque, double speed) => Sum(torque, speed, bent => bent.SlopeAt(place));

    /// <summary>Deflection at a place, mm.</summary>
    public double Deflection(double place, double torque, double speed) => Sum(torque, speed, bent => bent.DeflectionAt(place));

    private double Sum(double torque, double speed, Func<BentShaft, ShaftVector> of, double overload = 1)
    {
        var size = Math.Abs(torque);
        var (radial, tangential, orbit) = (of(_radial), of(_tangential), of(_orbit));
        return double.Hypot(
                (size * radial.X) + (torque * tangential.X) + (speed * speed * orbit.X),
                (size * radial.Y) + (torque * tangential.Y) + (speed * speed * orbit.Y))
            + (size * _sharing.Sum(bent => of(bent).Magnitude)) + (overload * _lasting.Sum(bent => of(bent).Magnitude));
    }
}
