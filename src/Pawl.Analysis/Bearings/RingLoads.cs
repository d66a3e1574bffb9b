using Pawl.Analysis.Core;
using Pawl.Analysis.Gears;
using Pawl.Analysis.Trains;
using Pawl.Mechanics.Bearings;
using B = Pawl.Analysis.Bearings.BearingQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>How the loads of a bearing lie to its rings: what goes round with the carrier, and what stands still in space.</summary>
/// <remarks>Tooth forces of central shafts stand still to the carrier, machine and weight to the housing.</remarks>
internal sealed class RingLoads
{
    /// <summary>Least part of the dynamic rating that counts as a load.</summary>
    /// <remarks>Common practice, no source: below one hundredth of the rating balls and needles slide.</remarks>
    public const double Meaningful = 0.01;

    private readonly AnalysisContext _context;
    private readonly Subject _bearing;
    private readonly TrainBuilder _train;
    private readonly BearingPlace _place;
    private readonly LoadShares _duty;
    private readonly string? _planet;
    private readonly double? _carrier;

    private RingLoads(Subject bearing)
    {
        (_context, _bearing, _train, _place) = (bearing.Context, bearing, bearing.Context.Train!, B.PlaceOf(bearing));
        _duty = LoadShares.Of(_train.Subject);
        _planet = BearingWork.Of(bearing).Planet;
        _carrier = CarrierSpeed();
        // Of a load that is not known, the direction is taken as that of central shafts.
        Turning = _planet is null && _carrier is not null && _place.Load is { } load && _duty.Reasons.IsEmpty ? Ways(load) : null;
    }

    /// <summary>Least and greatest part of the radial load that goes round with the carrier, N, of all states; null where none can or the loads are not known.</summary>
    public (double Least, double Greatest)? Turning { get; }

    /// <summary>The part that stands still in space, N.</summary>
    public double Standing => _place.Load?.Lasting ?? 0;

    public bool SpeedsKnown => !double.IsNaN(SpeedOf(_place.Spec.Shaft.Value) + SpeedOf(_place.Spec.Housing.Value) + (_carrier ?? 0));

    public static RingLoads Of(Subject bearing) => bearing.Context.Once(bearing, static each => new RingLoads(each));

    /// <summary>How the load lies to the inner ring: rotating, stationary or negligible.</summary>
    public string OnInner() => On(_place.Spec.Shaft.Value);

    /// <summary>How the load lies to the outer ring.</summary>
    public string OnOuter() => On(_place.Spec.Housing.Value);

    /// <summary>Greatest speed of the direction of the load against the inner ring, over that of the input.</summary>
    public double SpeedOnInner() => SpeedOn(_place.Spec.Shaft.Value);

    /// <summary>Greatest speed of the direction of the load against the outer ring, over that of the input.</summary>
    public double SpeedOnOuter() => SpeedOn(_place.Spec.Housing.Value);

    private string On(string ring) =>
        _bearing.Find(B.LoadShare) is { IsEvaluated: true } share && share.Value.Nominal < Meaningful ? "negligible"
        : Directions().Any(direction => RingSeat.NeedsInterference(RingSeat.Of(SpeedOf(ring), direction))) ? "rotating"
        : "stationary";

    private double SpeedOn(string ring) => Directions().Max(direction => Math.Abs(SpeedOf(ring) - direction));

    /// <summary>Speeds at which the load can go round, over that of the input: in a state that its turning part rules, in one that its standing part does.</summary>
    private ImmutableArray<double> Directions()
    {
        if (_planet is not null)
            return [_carrier!.Value];
        if (Turning is not var (least, greatest))
            return [0];
        var floor = _bearing.Find(B.SetRating) is { IsEvaluated: true } rating ? Meaningful * rating.Value.Nominal : 0;
        var turns = greatest > Standing && greatest >= floor && greatest > 0;
        var stands = Standing >= least && Standing >= floor && Standing > 0;
        return (turns, stands) switch
        {
            (true, true) => [0, _carrier!.Value],
            (true, false) => [_carrier!.Value],
            _ => [0],
        };
    }

    // What equal planets leave of thousands of newtons by rounding, N.
    private const double Numerical = 1e-3;

    private (double Least, double Greatest) Ways(SupportLoad load)
    {
        ImmutableArray<double> loads =
        [
            .. _duty.States.SelectMany(share => _duty.Reverse == 0
                ? [load.Turning(share.Torque, share.Speed)]
                : (double[])[load.Turning(share.Torque, share.Speed), load.Turning(-share.Torque * _duty.Reverse, share.Speed)]),
        ];
        return (Rounded(loads.Min()), Rounded(loads.Max()));

        static double Rounded(double load) => load < Numerical ? 0 : load;
    }

    /// <summary>Speed of the carrier whose planets the body of the bearing is, carries or meshes with, over that of the input; null where there is none.</summary>
    private double? CarrierSpeed()
    {
        if (_planet is not null)
            return SpeedOf(_train.PlanetSet(_planet)!.Carrier.Value);
        foreach (var set in _context.Spec.Train!.Planets.Entries)
        {
            if (set.Carrier.Value == _place.Holds || _train.Meshes.Any(mesh => Joins(mesh, _place.Holds, set.Name.Value)))
                return SpeedOf(set.Carrier.Value);
        }

        return null;

        static bool Joins(MeshBuilder mesh, string? body, string planet) =>
            (mesh.First.Spec.On.Value == body && mesh.Second.Spec.On.Value == planet) || (mesh.Second.Spec.On.Value == body && mesh.First.Spec.On.Value == planet);
    }

    private double SpeedOf(string body) => _train.Solution?.Speeds?.Of(body)?.Speed.ToDouble() ?? double.NaN;
}
