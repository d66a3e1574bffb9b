using Pawl.Analysis.Core;
using Pawl.Mechanics.Bearings;
using C = Pawl.Analysis.Rating.LoadCaseQuantities;
using D = Pawl.Analysis.Rating.DutyQuantities;
using T = Pawl.Analysis.Trains.TrainQuantities;

namespace Pawl.Analysis.Bearings;

/// <summary>A share of the service life over the rated duty.</summary>
/// <param name="Share">Of the service life, 1.</param>
/// <param name="Torque">Torque with the application factor, where it applies, over the rated torque.</param>
/// <param name="Speed">Speed over the rated speed.</param>
internal sealed record LoadShare(double Share, double Torque, double Speed);

/// <summary>The duty as bearings feel it.</summary>
internal sealed class LoadShares
{
    private LoadShares(ImmutableArray<Quantity> inputs) => Inputs = inputs;

    /// <summary>What it depends on; any of them may be missing.</summary>
    public ImmutableArray<Quantity> Inputs { get; }

    public ImmutableArray<string> Reasons { get; private init; } = [];

    /// <summary>The rated torque with the application factor, at the rated speed.</summary>
    public LoadShare Rated { get; private init; } = new(1, 1, 1);

    /// <summary>The shares of the service life; without a spectrum the rated duty alone.</summary>
    public ImmutableArray<LoadShare> Shares { get; private init; } = [];

    /// <summary>Torque in the other direction over that in the first.</summary>
    public double Reverse { get; private init; }

    /// <summary>Peak torque over the rated torque; null where it is not stated.</summary>
    public double? Peak { get; private init; }

    /// <summary>The fastest of rated speed and shares, over the rated speed.</summary>
    public double Fastest { get; private init; } = 1;

    /// <summary>Every state that a load must be looked at in: rated and shares, and each in the other direction too.</summary>
    public IEnumerable<LoadShare> States => Shares.Prepend(Rated);

    public static LoadShares Of(Subject train) => train.Context.Once(train, Build);

    private static LoadShares Build(Subject train)
    {
        var cases = train.Context.Of(SubjectKinds.LoadCase);
        ImmutableArray<Quantity> inputs =
        [
            train[T.InputTorque], train[T.InputSpeed], train[D.ApplicationFactor],
            .. cases.SelectMany(each => (Quantity[])[each[C.Share], each[C.Torque], each[C.Speed]]),
        ];
        if (Quantity.MissingReasons(inputs) is { IsEmpty: false } reasons)
            return new(inputs) { Reasons = reasons };

        var (torque, speed, application) = (inputs[0].Value.Nominal, inputs[1].Value.Nominal, inputs[2].Value.Nominal);
        var included = train.Find(D.SpectrumPeaks) is { Text: "included" };
        var shares = cases.Select(each => new LoadShare(
            each[C.Share].Value.Nominal, each[C.Torque].Value.Nominal / torque * (included ? 1 : application), each[C.Speed].Value.Nominal / speed)).ToImmutableArray();
        var rated = new LoadShare(1, application, 1);
        return new(inputs)
        {
            Rated = rated,
            Shares = shares.IsEmpty ? [rated] : shares,
            Reverse = train[D.ReverseTorque] is { IsEvaluated: true } reverse ? reverse.Value.Nominal / torque : 1,
            Peak = train[D.PeakTorque] is { IsEvaluated: true } peak ? peak.Value.Nominal / torque : null,
            Fastest = Math.Max(1, shares.IsEmpty ? 1 : shares.Max(share => share.Speed)),
        };
    }
}

/// <summary>Loads of one bearing at any torque and speed.</summary>
internal sealed class BearingLoads(BearingPlace place, double? factor, double? staticRating)
{
    private readonly BearingType _type = place.Type!;

    /// <summary>Radial load, N, the torque with its direction.</summary>
    public double Radial(double torque, double speed) => Radial(torque, speed, 1);

    private double Radial(double torque, double speed, double overload) => place.Load!.Value.At(torque, speed, overload);

    /// <summary>Axial load, N: the greatest that torque, machine and weight can make in this direction of drive.</summary>
    public double Axial(double torque, double speed) => Axial(torque, speed, 1);

    private double Axial(double torque, double speed, double overload)
    {
        if (place.Duty == "floating")
            return 0;
        if (place.Partner is not { } partner)
        {
            // One that holds one way only, without its partner, is told by a rule; here it takes all.
            return Math.Abs(torque * place.AxialTeeth) + (overload * place.AxialLasting);
        }

        var greatest = 0.0;
        foreach (var side in (ReadOnlySpan<int>)[1, -1])
        {
            var force = (torque * place.AxialTeeth) + (side * overload * place.AxialLasting);
            greatest = Math.Max(greatest, OfPair(place.Duty == "plus" ? force : -force, torque, speed, partner, overload));
        }

        return greatest;
    }

    /// <summary>Equivalent dynamic load P, N, in the worse direction.</summary>
    public double Equivalent(LoadShare share, double reverse) => Worse(share, reverse, (torque, speed) => Equivalent(Radial(torque, speed), Axial(torque, speed)));

    /// <summary>Least equivalent load, N, of both directions, without the application factor.</summary>
    public double Min(LoadShare share, double reverse, double application)
    {
        var torque = share.Torque / application;
        return reverse == 0 ? At(torque) : Math.Min(At(torque), At(-torque * reverse));

        double At(double signed) => Equivalent(place.Load!.Value.MinAt(signed, share.Speed), Axial(signed, share.Speed));
    }

    /// <summary>Greatest radial load of a share in both directions, N.</summary>
    public double MaxRadial(LoadShare share, double reverse) => Worse(share, reverse, Radial);

    /// <summary>Equivalent static load P₀ at the peak, N; standing or turning, whichever is worse.</summary>
    public double Static(double peak, double fastest) => Math.Max(Peak(peak, 0), Peak(peak, fastest));

    /// <summary>Radial load at the peak, N.</summary>
    public double PeakRadial(double peak, double fastest) => Math.Max(
        Math.Max(Radial(peak, 0, Overload(peak)), Radial(-peak, 0, Overload(peak))), Math.Max(Radial(peak, fastest, Overload(peak)), Radial(-peak, fastest, Overload(peak))));

    /// <summary>A peak of the torque pulls at belt, gear or coupling alike; what lasts is never less.</summary>
    public static double Overload(double peak) => Math.Max(1, Math.Abs(peak));

    public double Equivalent(double radial, double axial) => DynamicLoad.Equivalent(_type, radial, axial, Ratio(axial));

    /// <summary>f₀·F_a/C₀; null where f₀ or C₀ is not known.</summary>
    public double? Ratio(double axial) => axial > 0 && factor is { } known && staticRating is { } rating
        ? DynamicLoad.AxialRatio(_type, known, axial, rating)
        : null;

    private double Peak(double peak, double speed) => Math.Max(
        StaticLoad.Equivalent(_type, Radial(peak, speed, Overload(peak)), Axial(peak, speed, Overload(peak))),
        StaticLoad.Equivalent(_type, Radial(-peak, speed, Overload(peak)), Axial(-peak, speed, Overload(peak))));

    private static double Worse(LoadShare share, double reverse, Func<double, double, double> load)
    {
        var forward = load(share.Torque, share.Speed);
        return reverse == 0 ? forward : Math.Max(forward, load(-share.Torque * reverse, share.Speed));
    }

    /// <summary>Thrust of this bearing of a pair; the force is positive where it presses onto it.</summary>
    private double OfPair(double force, double torque, double speed, BearingPlace partner, double overload)
    {
        if (partner.Type is not { } other || partner.Load is not { } otherLoad)
            throw new OutsideValidityException($"the loads of {partner.Name}, its partner, are not known");

        var (own, its) = (Radial(torque, speed, overload), otherLoad.At(torque, speed, overload));
        var thrust = new PairThrust(own, its);
        // At 15° the thrust sets its own factor, so go round until it holds.
        for (var round = 0; round < 20; round++)
        {
            thrust = InducedThrust.OfPair(
                InducedThrust.Of(_type, own, Ratio(Math.Max(thrust.First, 1e-9))), InducedThrust.Of(other, its, Ratio(Math.Max(thrust.Second, 1e-9))), force);
        }

        return thrust.First;
    }
}
